package reseat.interchange;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
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
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import reseat.design.BallMounting;
import reseat.design.CouplingDesign;
import reseat.design.Preload;
import reseat.design.Support;
import reseat.design.Tolerance;
import reseat.design.ToleranceKind;
import reseat.design.Tolerances;
import reseat.equilibrium.ContactGeometry;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.EquilibriumSolver;
import reseat.equilibrium.NormalLaws;
import reseat.material.ElasticConstants;
import reseat.material.Material;
import reseat.numerics.Distribution;
import reseat.numerics.DistributionShape;
import reseat.numerics.RandomStream;
import reseat.seat.Ball;
import reseat.seat.GrooveExtent;
import reseat.seat.SeatFrame;
import reseat.seat.VeeGroove;
import reseat.space.Vec3;
import reseat.space.WorkingPose;

/**
 * The pose of one holder as made, under preload: our solver, and Levenberg-Marquardt of Commons
 * Math on the same six equations of equilibrium with an analytic Jacobian, from the same start, in
 * the same run. Both must find the same pose to a picometre, or nothing is measured.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class HolderPoseBenchmark {

  private static final double RADIUS = 0.035;
  private static final double FORCE = 600;

  /** Start of Levenberg-Marquardt, µm down: deep enough to press every contact, or it is lost. */
  private static final double DEEP = -40;

  private HolderTrial trial;
  private long holder;

  private ContactGeometry geometry;
  private EquilibriumSolver solver;
  private final double[] hertz = new double[6];
  private NormalLaws laws;
  private final double[] load = {0, 0, -FORCE, 0, 0, 0};
  private final double[] shift = new double[3];
  private final WorkingPose pose = new WorkingPose();
  private final double[] step = new double[6];
  private final double[] centre = new double[3];
  private final double[] centres = new double[18];
  private final double[] normals = new double[18];

  private static CouplingDesign design() {
    Material steel = new Material("steel", new ElasticConstants(206e9, 0.3));
    var builder = CouplingDesign.builder();
    for (int azimuth : new int[] {0, 120, 240}) {
      double a = Math.toRadians(azimuth);
      Vec3 c = Vec3.atAzimuth(a).times(RADIUS);
      builder.support(
          new Support(
              "ball " + azimuth,
              new Ball(c, 0.00635),
              steel,
              VeeGroove.forBall(
                  SeatFrame.level(c, a), 0.00635, Math.PI / 4, GrooveExtent.unlimited()),
              steel,
              1,
              BallMounting.rigid()));
    }
    return builder
        .toolPoint(new Vec3(0.047, 0, 0.0152))
        .preloads(
            List.of(
                new Preload(
                    "spring",
                    FORCE,
                    Vec3.Z.negated(),
                    Vec3.ZERO,
                    Distribution.NONE,
                    Distribution.NONE,
                    Distribution.NONE,
                    "")))
        .tolerances(
            Tolerances.of(
                Tolerance.shared(ToleranceKind.BALL_DIAMETER, 2.5e-6, DistributionShape.UNIFORM),
                Tolerance.ofEach(ToleranceKind.BALL_DIAMETER, 0.7e-6, DistributionShape.UNIFORM),
                Tolerance.ofEach(ToleranceKind.BALL_FORM, 0.35e-6, DistributionShape.UNIFORM),
                Tolerance.ofEach(ToleranceKind.BALL_ACROSS, 15e-6, DistributionShape.NORMAL),
                Tolerance.ofEach(ToleranceKind.BALL_ALONG, 15e-6, DistributionShape.NORMAL),
                Tolerance.ofEach(ToleranceKind.BALL_HEIGHT, 5e-6, DistributionShape.UNIFORM),
                Tolerance.ofEach(ToleranceKind.SEAT_DEPTH, 8e-6, DistributionShape.NORMAL),
                Tolerance.ofEach(ToleranceKind.TOOL_POINT, 50e-6, DistributionShape.UNIFORM)))
        .build();
  }

  /** Makes one holder and finds its pose by both ways. */
  @Setup
  public void prepare() {
    CouplingDesign design = design();
    ToleranceModel model = ToleranceModel.of(design);
    trial = new HolderTrial(new SimulatedCoupling(model));
    trial.drawPost(RandomStream.of(1, -1));
    trial.perfectHolder();
    RandomStream stream = RandomStream.of(2, 7);
    double[] state =
        model.state(
            model.contributors().stream().mapToDouble(c -> c.spread().draw(stream)).toArray());
    geometry = CouplingModel.of(design).geometry();
    DeviatedGeometry road = new DeviatedGeometry(design, model.layout());
    road.writeBalls(state, geometry);
    road.writeSeats(state, geometry);
    road.writeConstants(state, hertz);
    laws = CouplingModel.of(design).normalLaws();
    laws.setConstants(hertz);
    solver = new EquilibriumSolver(3);
    double[] ours = solve().clone();
    double[] theirs = levenbergMarquardt().clone();
    for (int k = 0; k < 3; k++) {
      if (!(Math.abs(ours[k] - theirs[k]) < 1e-12)) {
        throw new IllegalStateException(
            "the two ways differ by " + (ours[k] - theirs[k]) + " m along " + k);
      }
    }
  }

  /**
   * Draws a whole holder, rewrites the geometry and finds its pose.
   *
   * @return shift of the tool point
   */
  @Benchmark
  public double[] drawnHolder() {
    trial.drawHolder(RandomStream.of(1, holder++));
    return trial.shift;
  }

  /**
   * Finds the pose of the one holder.
   *
   * @return shift of the tool point
   */
  @Benchmark
  public double[] solve() {
    solver.solve(geometry, laws, load, null);
    solver.displacementOf(0.047, 0, 0.0152, shift);
    return shift;
  }

  /**
   * Finds the same pose with Commons Math.
   *
   * @return shift of the tool point
   */
  @Benchmark
  public double[] levenbergMarquardt() {
    LeastSquaresOptimizer.Optimum found =
        new LevenbergMarquardtOptimizer()
            .withCostRelativeTolerance(1e-15)
            .withParameterRelativeTolerance(1e-12)
            .withOrthoTolerance(1e-15)
            .optimize(
                new LeastSquaresBuilder()
                    .start(new double[] {0, 0, DEEP, 0, 0, 0})
                    .target(new double[6])
                    .model(this::residual)
                    .lazyEvaluation(false)
                    .maxEvaluations(1000)
                    .maxIterations(1000)
                    .build());
    place(found.getPoint());
    pose.displacement(0.047, 0, 0.0152, shift);
    return shift;
  }

  /** Unknowns in micrometres at the coupling radius, so that all six are of one size. */
  private void place(RealVector x) {
    for (int k = 0; k < 3; k++) {
      step[k] = 1e-6 * x.getEntry(k);
      step[k + 3] = 1e-6 / RADIUS * x.getEntry(k + 3);
    }
    pose.reset();
    pose.move(step);
  }

  private Pair<RealVector, RealMatrix> residual(RealVector x) {
    place(x);
    double[] r = {0, 0, -1, 0, 0, 0};
    double[][] jacobian = new double[6][6];
    double[] w = new double[6];
    for (int i = 0; i < 6; i++) {
      geometry.copyBallCentre(geometry.ballOf(i), centre);
      pose.apply(centre[0], centre[1], centre[2], centres, 3 * i);
      double px = centres[3 * i];
      double py = centres[3 * i + 1];
      double pz = centres[3 * i + 2];
      double approach = Math.max(0, -geometry.gap(i, px, py, pz, normals));
      double force = hertz[i] * approach * Math.sqrt(approach) / FORCE;
      double stiffness = 1.5 * hertz[i] * Math.sqrt(approach) / FORCE;
      w[0] = normals[3 * i];
      w[1] = normals[3 * i + 1];
      w[2] = normals[3 * i + 2];
      w[3] = (py * w[2] - pz * w[1]) / RADIUS;
      w[4] = (pz * w[0] - px * w[2]) / RADIUS;
      w[5] = (px * w[1] - py * w[0]) / RADIUS;
      for (int a = 0; a < 6; a++) {
        r[a] += w[a] * force;
        for (int b = 0; b < 6; b++) {
          jacobian[a][b] -= 1e-6 * stiffness * w[a] * w[b];
        }
      }
    }
    return new Pair<>(new ArrayRealVector(r, false), new Array2DRowRealMatrix(jacobian, false));
  }
}
