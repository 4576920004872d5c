package reseat.numerics;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.SingularOps_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.SingularValueDecomposition_F64;

/**
 * Singular values of a matrix, largest first, with the directions that go with them.
 *
 * <p>{@code A right(i) = value(i) left(i)}. With the transposed constraint matrix of a coupling,
 * right directions of the zero singular values are its free motions.
 */
public final class SingularValues {

  private final double[] values;
  private final double[][] left;
  private final double[][] right;

  private SingularValues(double[] values, double[][] left, double[][] right) {
    this.values = values;
    this.left = left;
    this.right = right;
  }

  /**
   * Decomposes a matrix.
   *
   * @param matrix rows x columns values, row by row; not changed
   * @param rows number of rows
   * @param columns number of columns
   * @return the decomposition, with the full set of left and right directions
   * @throws IllegalArgumentException if the array has another size or holds a value that is not
   *     finite
   */
  public static SingularValues of(double[] matrix, int rows, int columns) {
    DMatrixRMaj a = DenseMatrix.of(matrix, rows, columns);
    SingularValueDecomposition_F64<DMatrixRMaj> svd =
        DecompositionFactory_DDRM.svd(rows, columns, true, true, false);
    if (!svd.decompose(a)) {
      throw new IllegalArgumentException("singular values did not converge for this matrix");
    }
    DMatrixRMaj u = svd.getU(null, false);
    DMatrixRMaj v = svd.getV(null, false);
    DMatrixRMaj w = svd.getW(null);
    SingularOps_DDRM.descendingOrder(u, false, w, v, false);
    double[] values = new double[Math.min(rows, columns)];
    for (int i = 0; i < values.length; i++) {
      values[i] = w.get(i, i);
    }
    return new SingularValues(values, columnsOf(u), columnsOf(v));
  }

  /**
   * Returns the number of singular values.
   *
   * @return the smaller of rows and columns
   */
  public int size() {
    return values.length;
  }

  /**
   * Returns one singular value.
   *
   * @param index 0 for the largest
   * @return the value, not negative
   */
  public double value(int index) {
    return values[index];
  }

  /**
   * Returns the smallest singular value.
   *
   * @return the last value
   */
  public double smallest() {
    return values[values.length - 1];
  }

  /**
   * Returns the ratio of the largest to the smallest singular value.
   *
   * @return 1 or more; {@link Double#POSITIVE_INFINITY} for a singular matrix
   */
  public double conditionNumber() {
    return smallest() == 0 ? Double.POSITIVE_INFINITY : values[0] / smallest();
  }

  /**
   * Counts the singular values that are not rounding.
   *
   * @param tolerance part of the largest value below which a value counts as zero; 1e-9 for entries
   *     exact to double precision
   * @return the rank
   */
  public int rank(double tolerance) {
    int rank = 0;
    while (rank < values.length && values[rank] > tolerance * values[0]) {
      rank++;
    }
    return rank;
  }

  /**
   * Returns a left direction.
   *
   * @param index 0 to rows - 1; those from {@link #size()} on have singular value zero
   * @return a copy, unit length
   */
  public double[] left(int index) {
    return left[index].clone();
  }

  /**
   * Returns a right direction.
   *
   * @param index 0 to columns - 1; those from {@link #size()} on have singular value zero
   * @return a copy, unit length
   */
  public double[] right(int index) {
    return right[index].clone();
  }

  private static double[][] columnsOf(DMatrixRMaj a) {
    double[][] columns = new double[a.numCols][a.numRows];
    for (int j = 0; j < a.numCols; j++) {
      for (int i = 0; i < a.numRows; i++) {
        columns[j][i] = a.get(i, j);
      }
    }
    return columns;
  }
}
