package reseat.numerics;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;

/** Eigenvalues and orthonormal eigenvectors of a small symmetric matrix, smallest first. */
public final class SymmetricEigen {

  private final double[] values;
  private final double[][] vectors;

  private SymmetricEigen(double[] values, double[][] vectors) {
    this.values = values;
    this.vectors = vectors;
  }

  /**
   * Decomposes a matrix.
   *
   * @param matrix size x size values, row by row; not changed. The two triangles are averaged, so
   *     rounding may not make it unsymmetric
   * @param size number of rows
   * @return the decomposition
   * @throws IllegalArgumentException if the array has another size or holds a value that is not
   *     finite
   */
  public static SymmetricEigen of(double[] matrix, int size) {
    DMatrixRMaj a = DenseMatrix.symmetric(matrix, size);
    EigenDecomposition_F64<DMatrixRMaj> eigen = DecompositionFactory_DDRM.eig(size, true, true);
    if (!eigen.decompose(a)) {
      throw new IllegalArgumentException("eigenvalues did not converge for this matrix");
    }
    int[] order = new int[size];
    for (int i = 0; i < size; i++) {
      double value = eigen.getEigenvalue(i).getReal();
      int at = i;
      while (at > 0 && eigen.getEigenvalue(order[at - 1]).getReal() > value) {
        order[at] = order[at - 1];
        at--;
      }
      order[at] = i;
    }
    double[] values = new double[size];
    double[][] vectors = new double[size][];
    for (int i = 0; i < size; i++) {
      values[i] = eigen.getEigenvalue(order[i]).getReal();
      vectors[i] = DenseMatrix.signed(eigen.getEigenVector(order[i]).data.clone());
    }
    return new SymmetricEigen(values, vectors);
  }

  /**
   * Returns the number of eigenvalues.
   *
   * @return rows of the matrix
   */
  public int size() {
    return values.length;
  }

  /**
   * Returns one eigenvalue.
   *
   * @param index 0 for the smallest
   * @return the eigenvalue, in the unit of the matrix
   */
  public double value(int index) {
    return values[index];
  }

  /**
   * Returns one eigenvector.
   *
   * @param index 0 for that of the smallest eigenvalue
   * @return a copy, of unit length; its largest entry is positive, so the sign is repeatable
   */
  public double[] vector(int index) {
    return vectors[index].clone();
  }
}
