package reseat.equilibrium;

import java.util.concurrent.TimeUnit;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresProblem;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.MultivariateJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import reseat.design.CouplingDesign;
import reseat.designfile.DesignFile;
import reseat.designfile.Starter;
import reseat.space.Vec3;
import reseat.space.WorkingPose;
import reseat.space.Wrench;

/**
 * One full equilibrium of the pallet (six pin contacts, exact geometry): our solver against a
 * general least-squares solver of the same six equations, in the same run.
 *
 * <p>Both find the pose at which load and Hertz forces balance; ours also ends with the contact
 * stiffness. The library is given the analytic Jacobian and starts a few micrometres deep, since it
 * has no forces to see before the balls touch.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class EquilibriumBenchmark {

  private final CouplingDesign design =
      DesignFile.read(Starter.PALLET.text()).design().orElseThrow();
  private final CouplingModel model = CouplingModel.of(design);
  private final ContactGeometry geometry = model.geometry();
  private final NormalLaws laws = model.normalLaws();
  private final EquilibriumSolver solver = new EquilibriumSolver(geometry.ballCount());
  private final double[] load = flat(design.standingLoad());
  private final double[] stiffness = new double[6];
  private final LevenbergMarquardtOptimizer library = new LevenbergMarquardtOptimizer();
  private final LeastSquaresProblem problem =
      new LeastSquaresBuilder()
          .start(new double[] {0, 0, -9e-6, 0, 0, 0})
          .target(new double[6])
          .model(new Balance())
          .maxEvaluations(500)
          .maxIterations(500)
          .build();

  private static double[] flat(Wrench wrench) {
    Wrench w = wrench.movedTo(Vec3.ZERO);
    return new double[] {
      w.force().x(), w.force().y(), w.force().z(), w.moment().x(), w.moment().y(), w.moment().z()
    };
  }

  /**
   * Our solver: forces, pose and contact stiffness.
   *
   * @return something that depends on all of it
   */
  @Benchmark
  public double ours() {
    solver.solve(geometry, laws, load, null);
    double sum = 0;
    for (int i = 0; i < 6; i++) {
      stiffness[i] = 1.5 * solver.force(i) / solver.approach(i);
      sum += stiffness[i];
    }
    return sum;
  }

  /**
   * The library's solver: the pose.
   *
   * @return a component of the pose
   */
  @Benchmark
  public double levenbergMarquardt() {
    return library.optimize(problem).getPoint().getEntry(2);
  }

  /** Load and Hertz forces over the pose, and their derivative. */
  private final class Balance implements MultivariateJacobianFunction {
    private final WorkingPose pose = new WorkingPose();
    private final double[] centre = new double[3];
    private final double[] normal = new double[18];
    private final double[] ball = new double[3];

    @Override
    public Pair<RealVector, RealMatrix> value(RealVector point) {
      pose.reset();
      pose.move(point.toArray());
      double[] residual = load.clone();
      double[][] jacobian = new double[6][6];
      for (int i = 0; i < 6; i++) {
        geometry.copyBallCentre(geometry.ballOf(i), ball);
        pose.apply(ball[0], ball[1], ball[2], centre, 0);
        double d = -geometry.gap(i, centre[0], centre[1], centre[2], normal);
        if (d <= 0) {
          continue;
        }
        double force = laws.force(i, d);
        double k = 1.5 * force / d;
        double[] w = wrench(i);
        for (int r = 0; r < 6; r++) {
          residual[r] += force * w[r];
          for (int c = 0; c < 6; c++) {
            jacobian[r][c] -= k * w[r] * w[c];
          }
        }
      }
      return new Pair<>(
          new ArrayRealVector(residual, false), new Array2DRowRealMatrix(jacobian, false));
    }

    private double[] wrench(int i) {
      double nx = normal[3 * i];
      double ny = normal[3 * i + 1];
      double nz = normal[3 * i + 2];
      return new double[] {
        nx,
        ny,
        nz,
        centre[1] * nz - centre[2] * ny,
        centre[2] * nx - centre[0] * nz,
        centre[0] * ny - centre[1] * nx
      };
    }
  }
}
