package reseat.numerics;

/**
 * Solves a 6x6 system for six right sides at once, by 3x3 blocks and their adjugates.
 *
 * <p>No row exchanges, so only for matrices whose upper left block and the rest after eliminating
 * it are far from singular, such as the unit matrix plus a product of two positive definite ones.
 * Several times as fast as a general factorization. Storage is reused; not for use by several
 * threads.
 */
public final class BlockSolve6 {

  private static final int N = 6;

  private final double[] first = new double[9];
  private final double[] second = new double[9];
  private final double[] block = new double[9];
  private final double[] lowerByFirst = new double[9];

  /** Makes storage. */
  public BlockSolve6() {}

  /**
   * Solves M X = R.
   *
   * @param m 36 values, row by row
   * @param r 36 values, row by row, one right side per column
   * @param x 36 values, overwritten; not the same array as r
   * @return false if one of the two blocks that are inverted has no inverse
   */
  public boolean solve(double[] m, double[] r, double[] x) {
    if (!invert(
        m[0], m[1], m[2], m[N], m[N + 1], m[N + 2], m[2 * N], m[2 * N + 1], m[2 * N + 2], first)) {
      return false;
    }
    for (int i = 0; i < 3; i++) {
      int row = N * (i + 3);
      for (int j = 0; j < 3; j++) {
        lowerByFirst[3 * i + j] =
            m[row] * first[j] + m[row + 1] * first[3 + j] + m[row + 2] * first[6 + j];
      }
    }
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        block[3 * i + j] =
            m[N * (i + 3) + j + 3]
                - lowerByFirst[3 * i] * m[j + 3]
                - lowerByFirst[3 * i + 1] * m[N + j + 3]
                - lowerByFirst[3 * i + 2] * m[2 * N + j + 3];
      }
    }
    if (!invert(
        block[0], block[1], block[2], block[3], block[4], block[5], block[6], block[7], block[8],
        second)) {
      return false;
    }
    for (int c = 0; c < N; c++) {
      column(m, r, x, c);
    }
    return true;
  }

  private void column(double[] m, double[] r, double[] x, int c) {
    double a = r[c];
    double b = r[N + c];
    double d = r[2 * N + c];
    double e = r[3 * N + c] - lowerByFirst[0] * a - lowerByFirst[1] * b - lowerByFirst[2] * d;
    double f = r[4 * N + c] - lowerByFirst[3] * a - lowerByFirst[4] * b - lowerByFirst[5] * d;
    double g = r[5 * N + c] - lowerByFirst[6] * a - lowerByFirst[7] * b - lowerByFirst[8] * d;
    double u = second[0] * e + second[1] * f + second[2] * g;
    double v = second[3] * e + second[4] * f + second[5] * g;
    double w = second[6] * e + second[7] * f + second[8] * g;
    a -= m[3] * u + m[4] * v + m[5] * w;
    b -= m[N + 3] * u + m[N + 4] * v + m[N + 5] * w;
    d -= m[2 * N + 3] * u + m[2 * N + 4] * v + m[2 * N + 5] * w;
    x[c] = first[0] * a + first[1] * b + first[2] * d;
    x[N + c] = first[3] * a + first[4] * b + first[5] * d;
    x[2 * N + c] = first[6] * a + first[7] * b + first[8] * d;
    x[3 * N + c] = u;
    x[4 * N + c] = v;
    x[5 * N + c] = w;
  }

  private static boolean invert(
      double a,
      double b,
      double c,
      double d,
      double e,
      double f,
      double g,
      double h,
      double i,
      double[] out) {
    double p = e * i - f * h;
    double q = f * g - d * i;
    double s = d * h - e * g;
    double determinant = a * p + b * q + c * s;
    if (!(Math.abs(determinant) > 0) || Double.isInfinite(determinant)) {
      return false;
    }
    double t = 1 / determinant;
    out[0] = p * t;
    out[1] = (c * h - b * i) * t;
    out[2] = (b * f - c * e) * t;
    out[3] = q * t;
    out[4] = (a * i - c * g) * t;
    out[5] = (c * d - a * f) * t;
    out[6] = s * t;
    out[7] = (b * g - a * h) * t;
    out[8] = (a * e - b * d) * t;
    return true;
  }
}
