package reseat.numerics;

import java.util.concurrent.TimeUnit;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * One symmetric positive definite 6x6 solve, factoring included: the unrolled one against the two
 * libraries, on the same matrix in the same run.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class SymmetricSolve6Benchmark {

  private final double[] matrix = new double[36];
  private final double[] right = new double[6];
  private final double[] factored = new double[36];
  private final double[] solution = new double[6];

  private final LinearSolverDense<DMatrixRMaj> ejml = LinearSolverFactory_DDRM.chol(6);
  private final DMatrixRMaj ejmlMatrix = new DMatrixRMaj(6, 6);
  private final DMatrixRMaj ejmlRight = new DMatrixRMaj(6, 1);
  private final DMatrixRMaj ejmlSolution = new DMatrixRMaj(6, 1);
  private final double[][] rows = new double[6][6];

  /** Fills a diagonally dominant matrix, the same in every run. */
  @Setup
  public void fill() {
    for (int i = 0; i < 6; i++) {
      right[i] = i + 1;
      ejmlRight.data[i] = right[i];
      for (int j = 0; j < 6; j++) {
        matrix[6 * i + j] = i == j ? 4 : 1.0 / (1 + i + j);
        rows[i][j] = matrix[6 * i + j];
      }
    }
  }

  /** The unrolled solve. */
  @Benchmark
  public double[] unrolled() {
    System.arraycopy(matrix, 0, factored, 0, 36);
    System.arraycopy(right, 0, solution, 0, 6);
    if (!SymmetricSolve6.factor(factored)) {
      throw new IllegalStateException("the benchmark's matrix is not positive definite");
    }
    SymmetricSolve6.solve(factored, solution);
    return solution;
  }

  /** EJML's Cholesky solver, its work space reused. */
  @Benchmark
  public DMatrixRMaj ejmlCholesky() {
    System.arraycopy(matrix, 0, ejmlMatrix.data, 0, 36);
    if (!ejml.setA(ejmlMatrix)) {
      throw new IllegalStateException("the benchmark's matrix is not positive definite");
    }
    ejml.solve(ejmlRight, ejmlSolution);
    return ejmlSolution;
  }

  /** Commons Math's Cholesky decomposition, which allocates. */
  @Benchmark
  public double[] commonsMathCholesky() {
    return new CholeskyDecomposition(new Array2DRowRealMatrix(rows, false))
        .getSolver()
        .solve(new ArrayRealVector(right, false))
        .toArray();
  }
}
