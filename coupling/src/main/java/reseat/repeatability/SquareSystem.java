package reseat.repeatability;

/**
 * Linear equations of a dozen unknowns, factored once and solved again and again.
 *
 * <p>Gaussian elimination with row exchanges (Golub and Van Loan, Matrix Computations, from
 * memory). Not for use by several threads.
 */
final class SquareSystem {

  private final int n;
  private final double[] a;
  private final int[] row;

  SquareSystem(int n) {
    this.n = n;
    a = new double[n * n];
    row = new int[n];
  }

  void set(int i, int j, double value) {
    a[n * i + j] = value;
  }

  /** Factors the matrix in place; false if it is singular to working accuracy. */
  boolean factor() {
    double largest = 0;
    for (double v : a) {
      largest = Math.max(largest, Math.abs(v));
    }
    for (int k = 0; k < n; k++) {
      int pivot = k;
      for (int i = k + 1; i < n; i++) {
        if (Math.abs(a[n * i + k]) > Math.abs(a[n * pivot + k])) {
          pivot = i;
        }
      }
      if (!(Math.abs(a[n * pivot + k]) > 1e-13 * largest)) {
        return false;
      }
      row[k] = pivot;
      for (int j = 0; j < n && pivot != k; j++) {
        double t = a[n * k + j];
        a[n * k + j] = a[n * pivot + j];
        a[n * pivot + j] = t;
      }
      for (int i = k + 1; i < n; i++) {
        double f = a[n * i + k] / a[n * k + k];
        a[n * i + k] = f;
        for (int j = k + 1; j < n && f != 0; j++) {
          a[n * i + j] -= f * a[n * k + j];
        }
      }
    }
    return true;
  }

  /** Solves in place. */
  void solve(double[] x) {
    for (int k = 0; k < n; k++) {
      double t = x[row[k]];
      x[row[k]] = x[k];
      x[k] = t;
    }
    for (int k = 0; k < n; k++) {
      for (int i = k + 1; i < n; i++) {
        x[i] -= a[n * i + k] * x[k];
      }
    }
    for (int k = n - 1; k >= 0; k--) {
      for (int j = k + 1; j < n; j++) {
        x[k] -= a[n * k + j] * x[j];
      }
      x[k] /= a[n * k + k];
    }
  }
}
