package reseat.numerics;

import reseat.units.PrintedNumber;

/**
 * Complete elliptic integrals in the forms that a Hertz contact needs, none of which cancels.
 *
 * <p>All are functions of the <em>complementary parameter</em> {@code mc = (b/a)^2}, with {@code a
 * >= b} the semi-axes of the ellipse. The parameter is {@code m = e^2 = 1 - mc}; the modulus is
 * {@code k = e}. Libraries and tables take any of the three, and mixing them is the commonest error
 * in this field: K is 1.685750354812596 at parameter m = 0.25 (mc = 0.75).
 *
 * <p>With {@code D(t) = sqrt(1 - m sin(t)^2)} and integrals from 0 to pi/2:
 *
 * <pre>
 *   K = int 1/D                E = int D
 *   B = int cos^2/D            = (E - (1-m) K)/m
 *   D = int sin^2/D            = (K - E)/m
 *   C = int sin^2 cos^2/D^3    = (D - B)/m
 * </pre>
 *
 * <p>The quotients at the right are 0/0 at the circle (m = 0) and lose digits near it; here each is
 * computed from its integral, a sum of positive terms, so the circle is an ordinary point: K = E =
 * pi/2, B = D = pi/4, C = pi/16.
 *
 * <p>Method: Bulirsch's {@code cel} by descending Landen steps (recalled from memory; checked
 * against 30-digit values). Relative error below 1e-15 times a few, for mc from 1 down to 1e-10 and
 * below.
 */
public final class EllipticIntegrals {

  /** Landen steps stop here; the error left is the square of this. */
  private static final double LANDEN_TOLERANCE = 1e-8;

  /** Below this parameter the series of C is used, above it the quotient, which is then safe. */
  private static final double SERIES_LIMIT = 0.05;

  private EllipticIntegrals() {}

  /**
   * The integral B = (E - (1-m) K)/m.
   *
   * @param mc complementary parameter (b/a)^2, above 0 to 1
   * @return B, from pi/4 (circle) to 1 (line)
   */
  public static double completeB(double mc) {
    return cel(Math.sqrt(checked(mc)), 1, 1, 0);
  }

  /**
   * The integral D = (K - E)/m.
   *
   * @param mc complementary parameter (b/a)^2, above 0 to 1
   * @return D, from pi/4 (circle) upward without limit (line)
   */
  public static double completeD(double mc) {
    return cel(Math.sqrt(checked(mc)), 1, 0, 1);
  }

  /**
   * The integral C = (D - B)/m.
   *
   * @param mc complementary parameter (b/a)^2, above 0 to 1
   * @return C, from pi/16 (circle) upward without limit (line)
   */
  public static double completeC(double mc) {
    double m = 1 - checked(mc);
    if (m > SERIES_LIMIT) {
      return (completeD(mc) - completeB(mc)) / m;
    }
    // sin^2 cos^2 (1 - m sin^2)^(-3/2), expanded: each term is the last one times
    // m (2n+3)/(2n+2) and the mean of sin^(2n+4) cos^2 over that of sin^(2n+2) cos^2.
    double term = Math.PI / 16;
    double sum = term;
    for (int n = 0; term > 1e-17 * sum; n++) {
      term *= m * (2 * n + 3) / (2 * n + 2) * (2 * n + 3) / (2 * n + 6);
      sum += term;
    }
    return sum;
  }

  /**
   * Bulirsch's general complete elliptic integral, the integral from 0 to pi/2 of
   *
   * <pre>(a cos^2 + b sin^2) / ((cos^2 + p sin^2) sqrt(cos^2 + kc^2 sin^2))</pre>
   *
   * @param kc complementary modulus b/a of the ellipse, above 0 to 1
   * @param p characteristic, above 0
   * @param a weight of cos^2
   * @param b weight of sin^2
   * @return the integral
   */
  public static double cel(double kc, double p, double a, double b) {
    if (!(kc > 0 && kc <= 1 && p > 0)) {
      throw new IllegalArgumentException(
          "elliptic integral wants 0 < kc <= 1 and p > 0, found kc = "
              + PrintedNumber.shortest(kc)
              + ", p = "
              + PrintedNumber.shortest(p));
    }
    double k = kc;
    double e = kc;
    double em = 1;
    double root = Math.sqrt(p);
    double s = a;
    double t = b / root;
    while (true) {
      double f = s;
      s += t / root;
      double g = e / root;
      t = 2 * (t + f * g);
      root += g;
      g = em;
      em += k;
      if (Math.abs(g - k) <= LANDEN_TOLERANCE * g) {
        return Math.PI / 2 * (t + s * em) / (em * (em + root));
      }
      k = 2 * Math.sqrt(e);
      e = k * em;
    }
  }

  private static double checked(double mc) {
    if (!(mc > 0 && mc <= 1)) {
      throw new IllegalArgumentException(
          "complementary parameter (b/a)^2 must be above 0 and at most 1, found "
              + PrintedNumber.shortest(mc));
    }
    return mc;
  }
}
