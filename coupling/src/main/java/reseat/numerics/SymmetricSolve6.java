package reseat.numerics;

/**
 * Solves a symmetric positive definite 6x6 system without allocating: A = L D L^T, unrolled.
 *
 * <p>Written out by hand because one contact equilibrium is a handful of these and nothing else; a
 * library solve of this size spends most of its time outside the arithmetic.
 */
public final class SymmetricSolve6 {

  /** A pivot below this part of its diagonal entry is rounding: the matrix is singular. */
  private static final double PIVOT_LIMIT = 1e-13;

  private SymmetricSolve6() {}

  /**
   * Factors a matrix in place.
   *
   * @param a 36 values, row by row; only the lower triangle and the diagonal are read. After a true
   *     return the strict lower triangle holds L and the diagonal the <em>inverse</em> pivots; the
   *     upper triangle is untouched. After a false return the contents are undefined
   * @return true if the matrix is positive definite, each pivot being above 1e-13 of the diagonal
   *     entry it came from; true does not promise that the system is well conditioned
   */
  public static boolean factor(double[] a) {
    double d0 = a[0];
    if (!(d0 > PIVOT_LIMIT * a[0])) {
      return false;
    }
    double r0 = 1 / d0;
    double w10 = a[6];
    double l10 = w10 * r0;
    double d1 = a[7] - l10 * w10;
    if (!(d1 > PIVOT_LIMIT * a[7])) {
      return false;
    }
    double r1 = 1 / d1;
    double w20 = a[12];
    double l20 = w20 * r0;
    double w21 = a[13] - l10 * w20;
    double l21 = w21 * r1;
    double d2 = a[14] - l20 * w20 - l21 * w21;
    if (!(d2 > PIVOT_LIMIT * a[14])) {
      return false;
    }
    double r2 = 1 / d2;
    double w30 = a[18];
    double l30 = w30 * r0;
    double w31 = a[19] - l10 * w30;
    double l31 = w31 * r1;
    double w32 = a[20] - l20 * w30 - l21 * w31;
    double l32 = w32 * r2;
    double d3 = a[21] - l30 * w30 - l31 * w31 - l32 * w32;
    if (!(d3 > PIVOT_LIMIT * a[21])) {
      return false;
    }
    double r3 = 1 / d3;
    double w40 = a[24];
    double l40 = w40 * r0;
    double w41 = a[25] - l10 * w40;
    double l41 = w41 * r1;
    double w42 = a[26] - l20 * w40 - l21 * w41;
    double l42 = w42 * r2;
    double w43 = a[27] - l30 * w40 - l31 * w41 - l32 * w42;
    double l43 = w43 * r3;
    double d4 = a[28] - l40 * w40 - l41 * w41 - l42 * w42 - l43 * w43;
    if (!(d4 > PIVOT_LIMIT * a[28])) {
      return false;
    }
    double r4 = 1 / d4;
    double w50 = a[30];
    double l50 = w50 * r0;
    double w51 = a[31] - l10 * w50;
    double l51 = w51 * r1;
    double w52 = a[32] - l20 * w50 - l21 * w51;
    double l52 = w52 * r2;
    double w53 = a[33] - l30 * w50 - l31 * w51 - l32 * w52;
    double l53 = w53 * r3;
    double w54 = a[34] - l40 * w50 - l41 * w51 - l42 * w52 - l43 * w53;
    double l54 = w54 * r4;
    double d5 = a[35] - l50 * w50 - l51 * w51 - l52 * w52 - l53 * w53 - l54 * w54;
    if (!(d5 > PIVOT_LIMIT * a[35])) {
      return false;
    }
    double r5 = 1 / d5;
    a[0] = r0;
    a[6] = l10;
    a[7] = r1;
    a[12] = l20;
    a[13] = l21;
    a[14] = r2;
    a[18] = l30;
    a[19] = l31;
    a[20] = l32;
    a[21] = r3;
    a[24] = l40;
    a[25] = l41;
    a[26] = l42;
    a[27] = l43;
    a[28] = r4;
    a[30] = l50;
    a[31] = l51;
    a[32] = l52;
    a[33] = l53;
    a[34] = l54;
    a[35] = r5;
    return true;
  }

  /**
   * Solves with a factored matrix.
   *
   * @param f what {@link #factor(double[])} left behind
   * @param b 6 right-hand values; overwritten with the solution
   */
  public static void solve(double[] f, double[] b) {
    double y0 = b[0];
    double y1 = b[1] - f[6] * y0;
    double y2 = b[2] - f[12] * y0 - f[13] * y1;
    double y3 = b[3] - f[18] * y0 - f[19] * y1 - f[20] * y2;
    double y4 = b[4] - f[24] * y0 - f[25] * y1 - f[26] * y2 - f[27] * y3;
    double y5 = b[5] - f[30] * y0 - f[31] * y1 - f[32] * y2 - f[33] * y3 - f[34] * y4;
    double x5 = y5 * f[35];
    double x4 = y4 * f[28] - f[34] * x5;
    double x3 = y3 * f[21] - f[27] * x4 - f[33] * x5;
    double x2 = y2 * f[14] - f[20] * x3 - f[26] * x4 - f[32] * x5;
    double x1 = y1 * f[7] - f[13] * x2 - f[19] * x3 - f[25] * x4 - f[31] * x5;
    double x0 = y0 * f[0] - f[6] * x1 - f[12] * x2 - f[18] * x3 - f[24] * x4 - f[30] * x5;
    b[0] = x0;
    b[1] = x1;
    b[2] = x2;
    b[3] = x3;
    b[4] = x4;
    b[5] = x5;
  }
}
