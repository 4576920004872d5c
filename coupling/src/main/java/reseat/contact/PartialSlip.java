package reseat.contact;

import reseat.elementary.Elementary;
import reseat.numerics.Bounds;
import reseat.units.PrintedNumber;

/**
 * Displacement of a contact under a tangential force that makes the rim of the patch slip.
 *
 * <p>With Q the tangential force, F = mu P the force of full slip, q = Q/F and k0 the stiffness at
 * no slip, the normal force staying constant:
 *
 * <pre>
 *   loading     u  = 1.5 (F/k0) [1 - (1-q)^(2/3)],  du/dQ = (1-q)^(-1/3)/k0
 *   stick core  c/a = (1-q)^(1/3)
 *   unloading   u  = 1.5 (F/k0) [2 (1 - (q*-q)/2)^(2/3) - (1-q*)^(2/3) - 1]     from q*
 *   closed loop W  = 7.2 (F^2/k0) {1 - (1-q*)^(5/3) - (5/6) q* [1 + (1-q*)^(2/3)]}
 * </pre>
 *
 * <p>Exact for the circle (with equal bodies; Cattaneo 1938, Mindlin 1949, Mindlin and Deresiewicz
 * 1953, recalled and confirmed by integrating the loop numerically). For an ellipse loaded along an
 * axis the same law holds with that axis's k0 (Deresiewicz 1957, recalled, not read); it leaves out
 * the small slip at right angles to the load.
 *
 * @param limit force of full slip mu P, N
 * @param stiffness k0, N/m
 */
public record PartialSlip(double limit, double stiffness) {

  /** Below this the loop and the residual are summed as series, which do not cancel. */
  private static final double SERIES_LIMIT = 0.1;

  /** Refuses a limit or a stiffness that is not positive. */
  public PartialSlip {
    Bounds.positive("friction limit of the contact", limit, "N");
    Bounds.positive("tangential stiffness", stiffness, "N/m");
  }

  /**
   * Returns the displacement at first loading.
   *
   * @param force tangential force, 0 to the limit, N
   * @return displacement, m
   */
  public double displacement(double force) {
    return fullSlipDisplacement() * oneLessTwoThirds(part(force));
  }

  /**
   * Returns the stiffness at first loading.
   *
   * @param force tangential force, 0 to the limit, N
   * @return dQ/du, N/m; zero at the limit
   */
  public double stiffness(double force) {
    return stiffness * Elementary.cbrt(1 - part(force));
  }

  /**
   * Returns how much of the patch still sticks.
   *
   * @param force tangential force, 0 to the limit, N
   * @return axis of the sticking core over that of the patch, 1 to 0
   */
  public double stickRatio(double force) {
    return Elementary.cbrt(1 - part(force));
  }

  /**
   * Returns the displacement at which the whole patch slips.
   *
   * @return 1.5 mu P/k0, m
   */
  public double fullSlipDisplacement() {
    return 1.5 * limit / stiffness;
  }

  /**
   * Returns what is left of the displacement when a force has come and gone.
   *
   * @param peak tangential force reached, 0 to the limit, N
   * @return displacement at zero force after unloading, m: the contact's own hysteresis
   */
  public double residual(double peak) {
    double q = part(peak);
    double sum;
    if (q < SERIES_LIMIT) {
      sum = 0;
      double term = q;
      for (int n = 1; n < 20; n++) {
        // binomial terms of -(1-q)^(2/3); the first order cancels exactly
        term *= n == 1 ? 2.0 / 3 : q * (n - 1 - 2.0 / 3) / n;
        sum += term * (1 - Elementary.scalb(1.0, 1 - n));
      }
    } else {
      sum = oneLessTwoThirds(q) - 2 * oneLessTwoThirds(q / 2);
    }
    return fullSlipDisplacement() * sum;
  }

  /**
   * Returns the energy lost in one cycle between plus and minus a force.
   *
   * @param peak amplitude of the tangential force, 0 to the limit, N
   * @return energy per cycle, J
   */
  public double loopEnergy(double peak) {
    double q = part(peak);
    return 7.2 * limit * limit / stiffness * loopBracket(q);
  }

  private static double loopBracket(double q) {
    if (q >= SERIES_LIMIT) {
      double twoThirds = Elementary.cbrt((1 - q) * (1 - q));
      return 1 - (1 - q) * twoThirds - 5 * q / 6 * (1 + twoThirds);
    }
    // with (1-q)^(2/3) = 1 - sum t_n q^n the bracket is sum over n >= 2 of
    // t_n q^(n+1) (5/6 - 5/(3 (n+1))): the terms of order 1 and 2 cancel exactly
    double sum = 0;
    double t = 2.0 / 3;
    double power = q * q;
    for (int n = 2; n < 20; n++) {
      t *= (n - 1 - 2.0 / 3) / n;
      power *= q;
      sum += t * power * (5.0 / 6 - 5.0 / (3 * (n + 1)));
    }
    return sum;
  }

  /** Returns 1 - (1-q)^(2/3), keeping its digits for small q. */
  private static double oneLessTwoThirds(double q) {
    return q == 1 ? 1 : -Elementary.expm1(Elementary.log1p(-q) * 2 / 3);
  }

  private double part(double force) {
    if (!(force >= 0 && force <= limit)) {
      throw new IllegalArgumentException(
          "tangential force is "
              + PrintedNumber.shortest(force)
              + " N: it must be from 0 to the friction limit of "
              + PrintedNumber.shortest(limit)
              + " N");
    }
    return force / limit;
  }
}
