package reseat.numerics;

/**
 * LU factors of a general 6x6 matrix, with row exchanges, in storage that is used again and again.
 *
 * <p>For the inner loops of the equilibrium solver, where the same matrix serves to find the
 * contact forces (W N = -F) and the pose (Wᵀ x = e). Allocates nothing after construction. Not for
 * use by several threads.
 *
 * <p>Golub and Van Loan, Matrix Computations, outer-product Gaussian elimination with partial
 * pivoting (from memory).
 */
public final class Lu6 {

  private static final int N = 6;

  private final double[] lu = new double[N * N];
  private final int[] row = new int[N];
  private final double[] work = new double[N];
  private final double[] inversePivot = new double[N];

  /** Makes storage for one matrix. */
  public Lu6() {}

  /**
   * Factors a matrix.
   *
   * @param a 36 values, row by row; not changed
   * @return false if a pivot is not above 1e-14 of the largest entry: the matrix is singular to
   *     working accuracy and must not be used to solve
   */
  public boolean factor(double[] a) {
    double largest = 0;
    for (int i = 0; i < N * N; i++) {
      lu[i] = a[i];
      largest = Math.max(largest, Math.abs(a[i]));
    }
    if (!(largest > 0) || Double.isInfinite(largest)) {
      return false;
    }
    double tiny = 1e-14 * largest;
    for (int k = 0; k < N; k++) {
      int pivot = k;
      double best = Math.abs(lu[N * k + k]);
      for (int i = k + 1; i < N; i++) {
        double v = Math.abs(lu[N * i + k]);
        if (v > best) {
          best = v;
          pivot = i;
        }
      }
      if (!(best > tiny)) {
        return false;
      }
      row[k] = pivot;
      if (pivot != k) {
        for (int j = 0; j < N; j++) {
          double t = lu[N * k + j];
          lu[N * k + j] = lu[N * pivot + j];
          lu[N * pivot + j] = t;
        }
      }
      double inverse = 1 / lu[N * k + k];
      inversePivot[k] = inverse;
      for (int i = k + 1; i < N; i++) {
        double f = lu[N * i + k] * inverse;
        lu[N * i + k] = f;
        if (f != 0) {
          for (int j = k + 1; j < N; j++) {
            lu[N * i + j] -= f * lu[N * k + j];
          }
        }
      }
    }
    return true;
  }

  /**
   * Solves A x = b with the factors of the last successful {@link #factor}.
   *
   * @param b 6 values; may be the same array as x
   * @param x 6 values, overwritten
   */
  public void solve(double[] b, double[] x) {
    for (int i = 0; i < N; i++) {
      work[i] = b[i];
    }
    for (int k = 0; k < N; k++) {
      double t = work[row[k]];
      work[row[k]] = work[k];
      work[k] = t;
    }
    for (int k = 0; k < N; k++) {
      double t = work[k];
      for (int i = k + 1; i < N; i++) {
        work[i] -= lu[N * i + k] * t;
      }
    }
    for (int k = N - 1; k >= 0; k--) {
      double s = work[k];
      for (int j = k + 1; j < N; j++) {
        s -= lu[N * k + j] * work[j];
      }
      work[k] = s * inversePivot[k];
    }
    System.arraycopy(work, 0, x, 0, N);
  }

  /**
   * Solves Aᵀ x = b with the factors of the last successful {@link #factor}.
   *
   * @param b 6 values; may be the same array as x
   * @param x 6 values, overwritten
   */
  public void solveTransposed(double[] b, double[] x) {
    for (int k = 0; k < N; k++) {
      double s = b[k];
      for (int j = 0; j < k; j++) {
        s -= lu[N * j + k] * work[j];
      }
      work[k] = s * inversePivot[k];
    }
    for (int k = N - 1; k >= 0; k--) {
      double s = work[k];
      for (int i = k + 1; i < N; i++) {
        s -= lu[N * i + k] * work[i];
      }
      work[k] = s;
    }
    for (int k = N - 1; k >= 0; k--) {
      double t = work[row[k]];
      work[row[k]] = work[k];
      work[k] = t;
    }
    System.arraycopy(work, 0, x, 0, N);
  }
}
