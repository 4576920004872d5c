package reseat.numerics;

/**
 * Inverse of a general 6x6 matrix, in storage that is used again and again.
 *
 * <p>For inner loops that solve with one matrix and its transpose several times and correct what
 * rounding left: substitution in triangular factors waits for each unknown before it finds the
 * next, a product with the inverse does not. Elsewhere {@link Lu6} loses fewer digits. Allocates
 * nothing after construction. Not for use by several threads.
 *
 * <p>Gauss-Jordan elimination in place with row exchanges (Golub and Van Loan, Matrix Computations;
 * from memory).
 */
public final class Inverse6 {

  private static final int N = 6;

  private final double[] a = new double[N * N];
  private final int[] row = new int[N];

  /** Makes storage for one matrix. */
  public Inverse6() {}

  /**
   * Inverts a matrix.
   *
   * @param matrix 36 values, row by row; not changed
   * @return false if a pivot is not above 1e-14 of the largest entry: the matrix is singular to
   *     working accuracy and must not be used to solve
   */
  public boolean invert(double[] matrix) {
    double largest = 0;
    for (int i = 0; i < N * N; i++) {
      a[i] = matrix[i];
      largest = Math.max(largest, Math.abs(matrix[i]));
    }
    if (!(largest > 0) || Double.isInfinite(largest)) {
      return false;
    }
    double tiny = 1e-14 * largest;
    for (int k = 0; k < N; k++) {
      int pivot = pivot(k);
      if (!(Math.abs(a[N * pivot + k]) > tiny)) {
        return false;
      }
      row[k] = pivot;
      if (pivot != k) {
        for (int j = 0; j < N; j++) {
          double t = a[N * k + j];
          a[N * k + j] = a[N * pivot + j];
          a[N * pivot + j] = t;
        }
      }
      eliminate(k);
    }
    undoExchanges();
    return true;
  }

  private int pivot(int k) {
    int pivot = k;
    double best = Math.abs(a[N * k + k]);
    for (int i = k + 1; i < N; i++) {
      double v = Math.abs(a[N * i + k]);
      if (v > best) {
        best = v;
        pivot = i;
      }
    }
    return pivot;
  }

  private void eliminate(int k) {
    double inverse = 1 / a[N * k + k];
    a[N * k + k] = 1;
    for (int j = 0; j < N; j++) {
      a[N * k + j] *= inverse;
    }
    for (int i = 0; i < N; i++) {
      if (i != k) {
        double f = a[N * i + k];
        a[N * i + k] = 0;
        for (int j = 0; j < N; j++) {
          a[N * i + j] -= f * a[N * k + j];
        }
      }
    }
  }

  /** Rows exchanged before the inversion are columns exchanged after it, in reverse. */
  private void undoExchanges() {
    for (int k = N - 1; k >= 0; k--) {
      int other = row[k];
      if (other != k) {
        for (int i = 0; i < N; i++) {
          double t = a[N * i + k];
          a[N * i + k] = a[N * i + other];
          a[N * i + other] = t;
        }
      }
    }
  }

  /**
   * Solves A x = b.
   *
   * @param b right-hand side, 6 values
   * @param x solution, 6 values overwritten; must not be {@code b}
   */
  public void solve(double[] b, double[] x) {
    for (int i = 0; i < N; i++) {
      double s = 0;
      for (int j = 0; j < N; j++) {
        s += a[N * i + j] * b[j];
      }
      x[i] = s;
    }
  }

  /**
   * Solves Aᵀ x = b.
   *
   * @param b right-hand side, 6 values
   * @param x solution, 6 values overwritten; must not be {@code b}
   */
  public void solveTransposed(double[] b, double[] x) {
    for (int i = 0; i < N; i++) {
      double s = 0;
      for (int j = 0; j < N; j++) {
        s += a[N * j + i] * b[j];
      }
      x[i] = s;
    }
  }
}
