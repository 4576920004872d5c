package reseat.interchange;

import reseat.contact.EllipticContact;
import reseat.contact.RelativeCurvature;
import reseat.contact.RingThird;
import reseat.design.Support;
import reseat.elementary.Elementary;
import reseat.material.ElasticPair;
import reseat.seat.ConeSeat;

/**
 * How the constant of a contact's law answers to small changes of its two radii.
 *
 * <p>On a plane C goes with the square root of the ball's radius, exactly. On a cylinder ln C is
 * taken as a quadratic in the two changes, from central differences of the exact constant; what is
 * left out is of the third order in change over conformity (radius of the hollow less that of the
 * ball), so 5 µm on 0.3 mm leaves parts in a million. On a cone the slope of the law goes with the
 * ball's radius; what the changed radius does to its logarithm, and a changed angle to both, is
 * left out (parts in ten thousand of the sink).
 */
final class ApproachLaw {

  private static final double STEP = 1e-3;

  private final double nominal;
  private final double ballRadius;
  private final boolean plane;
  private final boolean ring;
  private final double ball;
  private final double flank;
  private final double ballBall;
  private final double ballFlank;
  private final double flankFlank;

  private ApproachLaw(
      double nominal,
      double ballRadius,
      boolean plane,
      boolean ring,
      double ball,
      double flank,
      double ballBall,
      double ballFlank,
      double flankFlank) {
    this.nominal = nominal;
    this.ballRadius = ballRadius;
    this.plane = plane;
    this.ring = ring;
    this.ball = ball;
    this.flank = flank;
    this.ballBall = ballBall;
    this.ballFlank = ballFlank;
    this.flankFlank = flankFlank;
  }

  static ApproachLaw of(Support s, FlankShape shape) {
    ElasticPair pair = new ElasticPair(s.ballMaterial().elastic(), s.seatMaterial().elastic());
    double r = s.ball().radius();
    if (s.seat() instanceof ConeSeat cone) {
      return new ApproachLaw(
          RingThird.of(r, cone.angle(), pair).slope(), r, true, true, 0, 0, 0, 0, 0);
    }
    if (shape.plane()) {
      double c = EllipticContact.of(RelativeCurvature.ballOnPlane(r), pair).hertzConstant();
      return new ApproachLaw(c, r, true, false, 0, 0, 0, 0, 0);
    }
    double f = shape.radius();
    double h = STEP * (shape.hollow() ? Math.min(r, f - r) : Math.min(r, f));
    double[][] ln = new double[3][3];
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        double flankRadius = f + (j - 1) * h;
        ln[i][j] =
            Elementary.log(
                EllipticContact.of(
                        RelativeCurvature.ballOnCylinder(
                            r + (i - 1) * h, shape.hollow() ? -flankRadius : flankRadius),
                        pair)
                    .hertzConstant());
      }
    }
    return new ApproachLaw(
        Elementary.exp(ln[1][1]),
        r,
        false,
        false,
        (ln[2][1] - ln[0][1]) / (2 * h),
        (ln[1][2] - ln[1][0]) / (2 * h),
        (ln[2][1] - 2 * ln[1][1] + ln[0][1]) / (h * h),
        (ln[2][2] - ln[2][0] - ln[0][2] + ln[0][0]) / (4 * h * h),
        (ln[1][2] - 2 * ln[1][1] + ln[1][0]) / (h * h));
  }

  /**
   * Returns the constant for changed radii.
   *
   * @param ballChange change of the ball's radius, m
   * @param flankChange change of the flank's radius, m; not used on a plane
   * @return C of N = C δ^(3/2), N/m^1.5; the slope of the law, N/m, on a cone
   */
  double constant(double ballChange, double flankChange) {
    if (ring) {
      return nominal * (1 + ballChange / ballRadius);
    }
    if (plane) {
      return ballChange == 0 ? nominal : nominal * Math.sqrt(1 + ballChange / ballRadius);
    }
    if (ballChange == 0 && flankChange == 0) {
      return nominal;
    }
    return nominal
        * Elementary.exp(
            ballChange * (ball + ballBall * ballChange / 2 + ballFlank * flankChange)
                + flankChange * (flank + flankFlank * flankChange / 2));
  }
}
