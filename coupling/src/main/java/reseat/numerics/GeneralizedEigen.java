package reseat.numerics;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.CholeskyDecomposition_F64;

/**
 * Solves {@code K x = w^2 M x} for symmetric K and symmetric positive definite M: natural
 * frequencies and modes of a body on springs.
 *
 * <p>With M = L L^T the problem becomes the ordinary one of L^-1 K L^-T, which stays symmetric.
 */
public final class GeneralizedEigen {

  private final SymmetricEigen reduced;
  private final double[][] modes;

  private GeneralizedEigen(SymmetricEigen reduced, double[][] modes) {
    this.reduced = reduced;
    this.modes = modes;
  }

  /**
   * Solves the problem.
   *
   * @param stiffness K, size x size values, row by row
   * @param mass M, likewise
   * @param size number of rows
   * @return the solution, lowest first
   * @throws IllegalArgumentException if M is not positive definite (a body of no mass or inertia)
   */
  public static GeneralizedEigen of(double[] stiffness, double[] mass, int size) {
    DMatrixRMaj k = DenseMatrix.symmetric(stiffness, size);
    DMatrixRMaj m = DenseMatrix.symmetric(mass, size);
    CholeskyDecomposition_F64<DMatrixRMaj> cholesky = DecompositionFactory_DDRM.chol(size, true);
    if (!cholesky.decompose(m)) {
      throw new IllegalArgumentException(
          "the mass matrix is not positive definite: every mass and moment of inertia must be above"
              + " zero");
    }
    DMatrixRMaj inverse = new DMatrixRMaj(size, size);
    CommonOps_DDRM.invert(cholesky.getT(null), inverse);
    DMatrixRMaj half = new DMatrixRMaj(size, size);
    CommonOps_DDRM.mult(inverse, k, half);
    DMatrixRMaj reducedMatrix = new DMatrixRMaj(size, size);
    CommonOps_DDRM.multTransB(half, inverse, reducedMatrix);
    SymmetricEigen reduced = SymmetricEigen.of(reducedMatrix.data, size);
    double[][] modes = new double[size][];
    for (int mode = 0; mode < size; mode++) {
      DMatrixRMaj x = new DMatrixRMaj(size, 1);
      CommonOps_DDRM.multTransA(inverse, new DMatrixRMaj(size, 1, true, reduced.vector(mode)), x);
      modes[mode] = DenseMatrix.signed(x.data.clone());
    }
    return new GeneralizedEigen(reduced, modes);
  }

  /**
   * Returns the number of modes.
   *
   * @return rows of the matrices
   */
  public int size() {
    return modes.length;
  }

  /**
   * Returns one eigenvalue.
   *
   * @param index 0 for the lowest
   * @return w^2, (rad/s)^2; negative for an unstable direction
   */
  public double value(int index) {
    return reduced.value(index);
  }

  /**
   * Returns a natural frequency.
   *
   * @param index 0 for the lowest
   * @return w/(2 pi), Hz; zero if w^2 is not positive
   */
  public double frequency(int index) {
    return Math.sqrt(Math.max(0, value(index))) / (2 * Math.PI);
  }

  /**
   * Returns a mode shape.
   *
   * @param index 0 for the lowest
   * @return a copy, scaled so that x^T M x = 1, its largest entry positive
   */
  public double[] mode(int index) {
    return modes[index].clone();
  }
}
