package reseat.contact;

import reseat.elementary.Elementary;
import reseat.numerics.EllipticIntegrals;
import reseat.units.PrintedNumber;

/**
 * The shape of a contact ellipse, apart from its size: semi-axes a &gt;= b.
 *
 * <p>The shape depends on the curvatures alone, not on load or material. With {@code B(m)} and
 * {@code D(m)} of {@link EllipticIntegrals} and kc = b/a the equation is
 *
 * <pre>greater/lesser curvature = B(m)/(kc^2 D(m)),   m = 1 - kc^2</pre>
 *
 * <p>which is the usual [(a/b)^2 E - K]/(K - E) without its 0/0 at the circle.
 *
 * <p>Solved by the secant rule in ln(a/b) against the logarithm of the ratio: that curve is nearly
 * straight, its slope growing from 3/2 at the circle to 2 at the line, so the iteration cannot
 * stray. It stops when a step is below 1e-14 of 1 + ln(a/b), which takes five or six steps.
 *
 * <p>Sources: equation printed in Pilkey, Formulas for Stress, Strain and Structural Matrices,
 * table 9-4 (an extract was read); the form above is derived from it.
 */
public final class EllipseShape {

  /** Ratio of curvatures beyond which the contact is a line for every purpose. */
  private static final double RATIO_LIMIT = 1e10;

  private final double aspect;
  private final double k;
  private final double e;
  private final double b;
  private final double d;

  private EllipseShape(double aspect) {
    this.aspect = aspect;
    double mc = aspect * aspect;
    b = EllipticIntegrals.completeB(mc);
    d = EllipticIntegrals.completeD(mc);
    k = b + d;
    e = b + mc * d;
  }

  /**
   * Returns the ellipse of a pair of curvatures.
   *
   * @param ratio greater over lesser relative curvature, 1 to 1e10
   * @return the shape; relative error of a/b below 1e-13
   */
  public static EllipseShape ofCurvatureRatio(double ratio) {
    if (!(ratio >= 1 && ratio <= RATIO_LIMIT)) {
      throw new IllegalArgumentException(
          "ratio of relative curvatures is "
              + PrintedNumber.shortest(ratio)
              + ": it must be from 1 to 1e10");
    }
    double target = Elementary.log(ratio);
    double x = 2 * target / 3;
    double residual = logRatio(x) - target;
    double slope = 1.75;
    for (int i = 0; i < 40 && residual != 0; i++) {
      double step = -residual / slope;
      x = Math.max(0, x + step);
      if (Math.abs(step) <= 1e-14 * (1 + x)) {
        break;
      }
      double next = logRatio(x) - target;
      // near the end rounding spoils the quotient; the true slope is never outside these limits
      slope = Math.min(2, Math.max(1.5, (next - residual) / step));
      residual = next;
    }
    return new EllipseShape(Elementary.exp(-x));
  }

  /**
   * Returns the ellipse of a given aspect.
   *
   * @param aspect b/a, above 0 to 1
   * @return the shape
   */
  public static EllipseShape ofAspect(double aspect) {
    return new EllipseShape(aspect);
  }

  private static double logRatio(double logElongation) {
    double mc = Elementary.exp(-2 * logElongation);
    return 2 * logElongation
        + Elementary.log(EllipticIntegrals.completeB(mc) / EllipticIntegrals.completeD(mc));
  }

  /**
   * Returns the aspect.
   *
   * @return kc = b/a, above 0 to 1
   */
  public double aspect() {
    return aspect;
  }

  /**
   * Returns the elongation.
   *
   * @return a/b, 1 or more
   */
  public double elongation() {
    return 1 / aspect;
  }

  /**
   * Returns the complete integral K.
   *
   * @return K at parameter m = 1 - (b/a)^2
   */
  public double integralK() {
    return k;
  }

  /**
   * Returns the complete integral E.
   *
   * @return E at parameter m = 1 - (b/a)^2
   */
  public double integralE() {
    return e;
  }

  /**
   * Returns the complete integral B.
   *
   * @return (E - (1-m) K)/m at parameter m = 1 - (b/a)^2
   */
  public double integralB() {
    return b;
  }

  /**
   * Returns the complete integral D.
   *
   * @return (K - E)/m at parameter m = 1 - (b/a)^2
   */
  public double integralD() {
    return d;
  }
}
