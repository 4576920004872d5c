package reseat.contact;

import reseat.numerics.CarlsonIntegral;
import reseat.units.PrintedNumber;

/**
 * Tension at the surface just outside the ends of the contact ellipse, over the peak pressure.
 *
 * <p>The stress there is radial tension with an equal compression at right angles. With kc = b/a
 * and e^2 = 1 - kc^2 the usual forms are
 *
 * <pre>
 *   end of the major axis  (1-2nu) (kc/e^2) [atanh(e)/e - 1]         = (1-2nu) kc RD(kc^2, kc^2, 1)/3
 *   end of the minor axis  (1-2nu) (kc/e^2) [1 - (kc/e) atan(e/kc)]  = (1-2nu) kc^2 RD(1, 1, kc^2)/3
 * </pre>
 *
 * <p>The right-hand forms, used here, are ordinary numbers at the circle, (1-2nu)/3. Source:
 * Johnson, Contact Mechanics, eq. 3.62 to 3.69 (recalled, not read; circle limit checked).
 *
 * <p>The tension is very high, very shallow and falls off within a fraction of a semi-axis.
 * Comparing it with a flexural strength measured on a bar is on the safe side: a crack needs depth
 * to start.
 *
 * @param majorEnd tension at the ends of the major axis, over p0
 * @param minorEnd tension at the ends of the minor axis, over p0
 */
public record EdgeTension(double majorEnd, double minorEnd) {

  /**
   * Returns the tension at the edge of a contact of a given shape.
   *
   * @param aspect b/a, above 0 to 1
   * @param poisson Poisson's ratio of the body looked at, 0 or more and below 0.5
   * @return the tensions; they grow as Poisson's ratio falls
   */
  public static EdgeTension of(double aspect, double poisson) {
    if (!(aspect > 0 && aspect <= 1 && poisson >= 0 && poisson < 0.5)) {
      throw new IllegalArgumentException(
          "edge tension wants 0 < b/a <= 1 and 0 <= nu < 0.5, found b/a = "
              + PrintedNumber.shortest(aspect)
              + ", nu = "
              + PrintedNumber.shortest(poisson));
    }
    double mc = aspect * aspect;
    double part = (1 - 2 * poisson) / 3;
    return new EdgeTension(
        part * aspect * CarlsonIntegral.rd(mc, mc, 1), part * mc * CarlsonIntegral.rd(1, 1, mc));
  }

  /**
   * Returns the greater tension.
   *
   * @return the larger of the two, over p0
   */
  public double greatest() {
    return Math.max(majorEnd, minorEnd);
  }
}
