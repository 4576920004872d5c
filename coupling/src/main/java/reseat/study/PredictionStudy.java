package reseat.study;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import reseat.design.CouplingDesign;
import reseat.equilibrium.CouplingModel;
import reseat.numerics.VectorScatter;
import reseat.readings.CauseFit;
import reseat.readings.CauseSignature;
import reseat.readings.ColumnAnalysis;
import reseat.readings.PredictionTest;
import reseat.readings.Repeatability;
import reseat.readings.ScatterCause;
import reseat.readings.ScatterMatrix;
import reseat.readings.SeriesAnalysis;
import reseat.remount.Cause;
import reseat.remount.RemountPlan;
import reseat.remount.RemountSimulation;

/**
 * A measured remount test beside the simulated one.
 *
 * <p>Probes are matched to machine axes by name. Each axis is tested by its variance ratio against
 * as many simulated mountings as were run; where two or more axes were measured, the directions of
 * the measured scatter are compared with those that each cause makes when it alone is at work.
 *
 * @param axes names of the machine axes that were measured, in the order of the readings
 * @param tests one test per axis
 * @param fit amounts of each cause that best explain the measured scatter; empty where one axis
 *     alone was measured or it does not scatter
 * @param mounts mountings simulated
 */
public record PredictionStudy(
    List<String> axes, List<PredictionTest> tests, Optional<CauseFit> fit, long mounts) {

  private static final Map<Cause, ScatterCause> KIN =
      Map.of(
          Cause.FRICTION, ScatterCause.FRICTION,
          Cause.PRELOAD_SIZE, ScatterCause.PRELOAD,
          Cause.PRELOAD_LINE, ScatterCause.PRELOAD,
          Cause.APPROACH, ScatterCause.FRICTION,
          Cause.TEMPERATURE, ScatterCause.TEMPERATURE,
          Cause.FILM, ScatterCause.DIRT);

  /** Copies the lists. */
  public PredictionStudy {
    axes = List.copyOf(axes);
    tests = List.copyOf(tests);
  }

  /**
   * Compares readings with a design.
   *
   * @param readings the analysed series
   * @param design the coupling that was measured
   * @param plan mountings to simulate
   * @return the comparison
   * @throws IllegalArgumentException if no probe is named like a machine axis, or the design does
   *     not scatter along one
   * @throws InterruptedException if the thread is interrupted
   */
  public static PredictionStudy of(SeriesAnalysis readings, CouplingDesign design, RemountPlan plan)
      throws InterruptedException {
    List<String> axes = new ArrayList<>();
    List<Integer> places = new ArrayList<>();
    List<ColumnAnalysis> columns = new ArrayList<>();
    for (ColumnAnalysis c : readings.columns()) {
      for (int k = 0; k < 3; k++) {
        if (design.axes().axis(k).name().equals(c.column().name())) {
          axes.add(c.column().name());
          places.add(k);
          columns.add(c);
        }
      }
    }
    if (axes.isEmpty()) {
      throw new IllegalArgumentException(
          "no probe is named like a machine axis of the design ("
              + design.axes().first().name()
              + ", "
              + design.axes().second().name()
              + ", "
              + design.axes().third().name()
              + "); name the columns so");
    }
    RemountSimulation simulation = new RemountSimulation(CouplingModel.of(design));
    VectorScatter all = simulation.run(plan).toolPoint();
    double confidence = readings.options().confidence();
    List<PredictionTest> tests = new ArrayList<>();
    for (int i = 0; i < axes.size(); i++) {
      Optional<Repeatability> settled = columns.get(i).settled();
      if (settled.isPresent()) {
        tests.add(
            PredictionTest.of(
                axes.get(i),
                settled.get(),
                all.deviation().component(places.get(i)),
                (int) Math.min(Integer.MAX_VALUE, all.count()),
                confidence));
      }
    }
    return new PredictionStudy(
        axes, tests, fit(readings, axes, places, simulation, plan, confidence), plan.mounts());
  }

  private static Optional<CauseFit> fit(
      SeriesAnalysis readings,
      List<String> axes,
      List<Integer> places,
      RemountSimulation simulation,
      RemountPlan plan,
      double confidence)
      throws InterruptedException {
    Optional<ScatterMatrix> measured = readings.scatter();
    int settled = readings.series().mounts() - readings.wearIn();
    if (axes.size() < 2
        || measured.isEmpty()
        || !measured.get().axes().equals(axes)
        || !(measured.get().total() > 0)
        || settled < 3) {
      return Optional.empty();
    }
    Map<ScatterCause, ScatterMatrix> together = new EnumMap<>(ScatterCause.class);
    for (Cause cause : Cause.values()) {
      VectorScatter alone = simulation.run(plan, c -> c == cause, done -> {}).toolPoint();
      together.merge(KIN.get(cause), matrix(axes, places, alone), (a, b) -> a.plus(1, b));
    }
    List<CauseSignature> signatures = new ArrayList<>();
    together.forEach(
        (cause, scatter) -> {
          if (scatter.total() > 0) {
            signatures.add(new CauseSignature(cause, cause.words(), scatter));
          }
        });
    if (signatures.isEmpty()) {
      return Optional.empty();
    }
    ScatterMatrix nothing = ScatterMatrix.of(axes, new double[axes.size()][axes.size()]);
    return Optional.of(CauseFit.of(measured.get(), settled, nothing, signatures, confidence));
  }

  private static ScatterMatrix matrix(
      List<String> axes, List<Integer> places, VectorScatter scatter) {
    double[][] c = new double[axes.size()][axes.size()];
    for (int i = 0; i < axes.size(); i++) {
      for (int j = 0; j < axes.size(); j++) {
        c[i][j] = covariance(scatter, places.get(i), places.get(j));
      }
    }
    return ScatterMatrix.of(axes, c);
  }

  /** Covariances are told of first with second, second with third, third with first axis. */
  private static double covariance(VectorScatter scatter, int i, int j) {
    if (i == j) {
      double s = scatter.deviation().component(i);
      return s * s;
    }
    int sum = i + j;
    return scatter.covariances().component(sum == 1 ? 0 : sum == 3 ? 1 : 2);
  }
}
