package reseat.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import reseat.design.CouplingDesign;
import reseat.elementary.Elementary;
import reseat.equilibrium.CouplingModel;
import reseat.numerics.VectorScatter;
import reseat.readings.ColumnAnalysis;
import reseat.readings.GaugeNoise;
import reseat.readings.PredictionTest;
import reseat.readings.ScatterMatrix;
import reseat.readings.SeriesAnalysis;
import reseat.remount.RemountPlan;
import reseat.remount.RemountSimulation;
import reseat.space.Vec3;

/**
 * A measured remount test beside the simulated one.
 *
 * <p>Probes are matched to machine axes by name. Each axis is tested by its variance ratio against
 * as many simulated mountings as were run; scatter counts about the mean of each holder, and the
 * noise of the gauge is added to the simulated one. Where two or more axes were measured, the
 * amounts of each cause are sought with which the simulation scatters as measured: without the
 * mounts that stand out, which are no scatter but a thing by itself.
 *
 * @param axes names of the machine axes that were measured, in the order of the readings
 * @param tests one test per axis, of all settled mounts
 * @param flagged places, from 0, of the mounts that stand out along one of the axes
 * @param typical one test per axis without those; empty if none stands out
 * @param fit amounts of each cause that best explain the scatter of the mounts that do not stand
 *     out; empty where one axis alone was measured or it does not scatter
 * @param positions simulated places of the tool point along the machine axes, m, for a picture
 * @param places which machine axis each of {@code axes} is, 0 to 2
 * @param mounts mountings simulated
 */
public record PredictionStudy(
    List<String> axes,
    List<PredictionTest> tests,
    List<Integer> flagged,
    List<PredictionTest> typical,
    Optional<CauseCalibration> fit,
    List<Vec3> positions,
    List<Integer> places,
    long mounts) {

  private static final int CLOUD = 1500;

  /** Copies the lists. */
  public PredictionStudy {
    axes = List.copyOf(axes);
    tests = List.copyOf(tests);
    flagged = List.copyOf(flagged);
    typical = List.copyOf(typical);
    positions = List.copyOf(positions);
    places = List.copyOf(places);
  }

  /**
   * Tells whether an axis scatters more than foretold, by the mounts that do not stand out.
   *
   * @return true if there is an excess to be explained
   */
  public boolean exceeds() {
    return (flagged.isEmpty() ? tests : typical)
        .stream().anyMatch(t -> t.verdict() == PredictionTest.Verdict.MORE);
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
    Set<Integer> out = new TreeSet<>();
    columns.forEach(c -> c.flagged().forEach(f -> out.add(f.index())));
    ScatterMatrix gauge = gauge(axes, columns);
    double confidence = readings.options().confidence();
    List<PredictionTest> tests = new ArrayList<>();
    List<PredictionTest> typical = new ArrayList<>();
    Optional<ScatterMatrix> rest = readings.scatter(out).map(m -> m.over(axes));
    int freedom = readings.freedom(out);
    int simulated = (int) Math.min(Integer.MAX_VALUE, all.count());
    for (int i = 0; i < axes.size(); i++) {
      double foretold =
          Elementary.hypot(all.deviation().component(places.get(i)), Math.sqrt(gauge.get(i, i)));
      ColumnAnalysis c = columns.get(i);
      if (c.scatter().freedom() > 0) {
        tests.add(
            PredictionTest.of(
                axes.get(i),
                c.scatter().s(),
                c.scatter().freedom(),
                foretold,
                simulated,
                confidence));
      }
      if (!out.isEmpty() && rest.isPresent()) {
        typical.add(
            PredictionTest.of(
                axes.get(i),
                Math.sqrt(rest.get().get(i, i)),
                freedom,
                foretold,
                simulated,
                confidence));
      }
    }
    Optional<CauseCalibration> fit =
        axes.size() < 2 || rest.isEmpty() || !(rest.get().total() > 0) || freedom < 2
            ? Optional.empty()
            : CauseCalibration.of(rest.get(), freedom, gauge, design, places, plan, confidence);
    return new PredictionStudy(
        axes,
        tests,
        List.copyOf(out),
        typical,
        fit,
        simulation.positions(plan.seed(), (int) Math.min(CLOUD, plan.mounts())),
        places,
        plan.mounts());
  }

  private static ScatterMatrix gauge(List<String> axes, List<ColumnAnalysis> columns) {
    double[][] noise = new double[axes.size()][axes.size()];
    for (int i = 0; i < axes.size(); i++) {
      double s = columns.get(i).gauge().map(GaugeNoise::gauge).orElse(0.0);
      noise[i][i] = s * s;
    }
    return ScatterMatrix.of(axes, noise);
  }
}
