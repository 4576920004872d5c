package reseat.numerics;

/**
 * Solves a general 6x6 system without allocating: Gaussian elimination with row exchanges.
 *
 * <p>Rows are first divided by their largest entry, so that equations in newtons and in newton
 * metres are compared fairly when the pivot is chosen.
 */
public final class Solve6 {

  /** A pivot below this part of its column's largest scaled entry counts as zero. */
  private static final double PIVOT_LIMIT = 1e-14;

  private Solve6() {}

  /**
   * Solves A x = b.
   *
   * @param a 36 values, row by row; overwritten with working values
   * @param b 6 right-hand values; overwritten with the solution if true is returned, with working
   *     values if not
   * @return false if the matrix is singular to working precision or holds a value that is not
   *     finite; true does not promise that the system is well conditioned
   */
  public static boolean solve(double[] a, double[] b) {
    if (!scaleRows(a, b)) {
      return false;
    }
    for (int column = 0; column < 6; column++) {
      int pivotRow = column;
      double pivot = Math.abs(a[7 * column]);
      double columnSize = 0;
      for (int row = 0; row < 6; row++) {
        double size = Math.abs(a[6 * row + column]);
        columnSize = Math.max(columnSize, size);
        if (row > column && size > pivot) {
          pivot = size;
          pivotRow = row;
        }
      }
      if (!(pivot > PIVOT_LIMIT * columnSize)) {
        return false;
      }
      if (pivotRow != column) {
        exchange(a, b, column, pivotRow);
      }
      double inverse = 1 / a[7 * column];
      for (int row = column + 1; row < 6; row++) {
        double factor = a[6 * row + column] * inverse;
        if (factor != 0) {
          for (int j = column + 1; j < 6; j++) {
            a[6 * row + j] -= factor * a[6 * column + j];
          }
          b[row] -= factor * b[column];
        }
      }
    }
    for (int row = 5; row >= 0; row--) {
      double sum = b[row];
      for (int j = row + 1; j < 6; j++) {
        sum -= a[6 * row + j] * b[j];
      }
      b[row] = sum / a[7 * row];
    }
    return true;
  }

  private static boolean scaleRows(double[] a, double[] b) {
    for (int row = 0; row < 6; row++) {
      double size = 0;
      for (int j = 0; j < 6; j++) {
        size = Math.max(size, Math.abs(a[6 * row + j]));
      }
      if (!(size > 0 && size <= Double.MAX_VALUE)) {
        return false;
      }
      double scale = 1 / size;
      for (int j = 0; j < 6; j++) {
        a[6 * row + j] *= scale;
      }
      b[row] *= scale;
    }
    return true;
  }

  private static void exchange(double[] a, double[] b, int first, int second) {
    for (int j = 0; j < 6; j++) {
      double held = a[6 * first + j];
      a[6 * first + j] = a[6 * second + j];
      a[6 * second + j] = held;
    }
    double held = b[first];
    b[first] = b[second];
    b[second] = held;
  }
}
