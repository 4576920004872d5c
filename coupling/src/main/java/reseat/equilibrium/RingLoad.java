package reseat.equilibrium;

import reseat.elementary.Elementary;

/**
 * How the load runs round a ring of contact that is told as three contacts.
 *
 * <p>The load on a ring that is pressed all round is w(θ) = w0 + w1 cos(θ - θ1), since a shift of
 * the ball presses it so to first order. Told as a force on a third of the ring it passes through
 * the forces of the three contacts at 0, 120 and 240 degrees, which fix it:
 *
 * <pre>
 *   N(θ) = mean + along cos θ + across sin θ
 *   mean = (N1 + N2 + N3)/3,  along = (2 N1 - N2 - N3)/3,  across = (N2 - N3)/sqrt 3
 * </pre>
 *
 * <p>Where the least N(θ) falls below zero a part of the ring opens, although each of the three may
 * still be pressed: under axial force F and side force H that is at H = F tan(φ)/2. Beyond that the
 * load crowds together on the other side and is greater than told here.
 */
final class RingLoad {

  private static final double THIRD = 2 * Math.PI / 3;

  private RingLoad() {}

  /** Least force on a third anywhere round the ring, N; negative where the ring opens. */
  static double least(double n1, double n2, double n3) {
    return (n1 + n2 + n3) / 3 - swing(n1, n2, n3);
  }

  private static double swing(double n1, double n2, double n3) {
    return Elementary.hypot(along(n1, n2, n3), across(n2, n3));
  }

  private static double along(double n1, double n2, double n3) {
    return (2 * n1 - n2 - n3) / 3;
  }

  private static double across(double n2, double n3) {
    return (n2 - n3) / Math.sqrt(3);
  }

  /**
   * Finds the greatest or least force on the part of the ring that belongs to one contact.
   *
   * @param n forces of the three contacts, N
   * @param third which contact, 0 to 2
   * @param sign 1 for the greatest, -1 for the least
   * @return force told as one on a third, N
   */
  static double extreme(double[] n, int third, int sign) {
    double mean = (n[0] + n[1] + n[2]) / 3;
    double swing = swing(n[0], n[1], n[2]);
    double peak = Elementary.atan2(across(n[1], n[2]), along(n[0], n[1], n[2]));
    double away = peak - third * THIRD + (sign > 0 ? 0 : Math.PI);
    away = Math.abs(Elementary.remainder(away, 2 * Math.PI));
    double nearest = Math.max(0, away - THIRD / 2);
    return mean + sign * swing * Elementary.cos(nearest);
  }

  /** Share of the force of the contact at {@code third} in the force at an azimuth. */
  static double weight(double azimuth, int third) {
    return (1 + 2 * Elementary.cos(azimuth - third * THIRD)) / 3;
  }
}
