package reseat.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import reseat.design.CouplingDesign;
import reseat.design.Coverage;
import reseat.design.MachineAxis;
import reseat.elementary.Elementary;
import reseat.equilibrium.CouplingModel;
import reseat.readings.AcceptancePlan;
import reseat.readings.Probe;
import reseat.remount.RemountPlan;
import reseat.remount.RemountSimulation;
import reseat.repeatability.SymmetricBand;
import reseat.space.Vec3;
import reseat.units.QuantityFormat;
import reseat.units.UnitCatalog;

/**
 * The acceptance test of a design before it is made: a target and an expected scatter along each
 * machine axis, and where the probes stand.
 *
 * <p>What is expected is the simulated scatter, but never less than {@link
 * AcceptancePlan#LEAST_SHARE} of the target: a test must have a fair chance also where the
 * simulation is too kind.
 */
public final class AcceptanceStudy {

  /** Steps in which the half-width of a normal scatter over its standard deviation is told. */
  private static final double STEPS = 100;

  /** Tool changes simulated; s comes out within 5 %, far nearer than a plan needs. */
  private static final int SIMULATED = 1000;

  private final CouplingDesign design;
  private final Vec3 simulated;

  private AcceptanceStudy(CouplingDesign design, Vec3 simulated) {
    this.design = design;
    this.simulated = simulated;
  }

  /**
   * Simulates a design.
   *
   * @param design coupling to be tested
   * @return the study
   * @throws reseat.equilibrium.NoEquilibriumException if there is no state of rest
   * @throws InterruptedException if the thread is interrupted
   */
  public static AcceptanceStudy of(CouplingDesign design) throws InterruptedException {
    RemountPlan plan = RemountPlan.of(SIMULATED, 1, Runtime.getRuntime().availableProcessors());
    return new AcceptanceStudy(
        design, new RemountSimulation(CouplingModel.of(design)).run(plan).toolPoint().deviation());
  }

  /**
   * Returns what a target stands for: the half-width of a normal scatter at its coverage.
   *
   * @param coverage how many of all tool changes the target is for
   * @return half-width over standard deviation, to hundredths; 1.96 for 95 %
   */
  public static double within(Coverage coverage) {
    return Elementary.rint(STEPS * SymmetricBand.ratio(0, coverage.share())) / STEPS;
  }

  /**
   * Returns the targets of a design.
   *
   * @param design any design
   * @return largest true standard deviation by axis, m: the half-width wanted over {@link #within}
   *     its coverage
   */
  public static Map<String, Double> targets(CouplingDesign design) {
    Map<String, Double> targets = new LinkedHashMap<>();
    for (int k = 0; k < 3; k++) {
      double limit = design.targets().repeatability().limit(k);
      if (Double.isFinite(limit)) {
        targets.put(design.axes().axis(k).name(), limit / within(design.targets().coverage()));
      }
    }
    return targets;
  }

  /**
   * Returns the design.
   *
   * @return the coupling to be tested
   */
  public CouplingDesign design() {
    return design;
  }

  /**
   * Returns the plans that the targets of the design ask for.
   *
   * @return a plan of each axis with a target that its simulated scatter keeps; may be empty
   */
  public List<AcceptancePlan> plans() {
    List<AcceptancePlan> plans = new ArrayList<>();
    targets(design)
        .forEach(
            (axis, target) -> {
              if (provable(axis, target)) {
                plans.add(
                    plan(
                        axis,
                        target,
                        0,
                        AcceptancePlan.USUAL_CONFIDENCE,
                        AcceptancePlan.USUAL_CHANCE));
              }
            });
    return plans;
  }

  /**
   * Names the axes on which no test would prove the target of the design.
   *
   * @return a sentence for each axis whose simulated scatter is not clearly below its target
   */
  public List<String> hopeless() {
    List<String> sentences = new ArrayList<>();
    targets(design)
        .forEach(
            (axis, target) -> {
              if (!provable(axis, target)) {
                sentences.add(hopeless(axis, simulated.component(index(axis)), target));
              }
            });
    return sentences;
  }

  private boolean provable(String axis, double target) {
    return simulated.component(index(axis)) < AcceptancePlan.MOST_SHARE * target;
  }

  /**
   * Lays out the test along one machine axis.
   *
   * @param axis name of the axis
   * @param target largest true standard deviation allowed, m
   * @param hope true standard deviation expected, m; 0 if that is for the study to say
   * @param confidence confidence of the proof
   * @param chance wanted chance of proof
   * @return the plan
   * @throws IllegalArgumentException if the design has no such axis, or is not expected to keep the
   *     target
   */
  public AcceptancePlan plan(
      String axis, double target, double hope, double confidence, double chance) {
    int k = index(axis);
    double s =
        hope > 0 ? hope : Math.max(simulated.component(k), AcceptancePlan.LEAST_SHARE * target);
    if (!(s < (hope > 0 ? target : AcceptancePlan.MOST_SHARE * target))) {
      throw new IllegalArgumentException(hopeless(axis, s, target));
    }
    return AcceptancePlan.of(design.axes().axis(k).name(), target, s, confidence, chance, probes());
  }

  private int index(String axis) {
    for (int k = 0; k < 3; k++) {
      if (design.axes().axis(k).name().equalsIgnoreCase(axis)) {
        return k;
      }
    }
    throw new IllegalArgumentException(
        "the design has no machine axis named "
            + axis
            + "; it has "
            + design.axes().first().name()
            + ", "
            + design.axes().second().name()
            + ", "
            + design.axes().third().name());
  }

  private static String hopeless(String axis, double s, double target) {
    return "axis "
        + axis
        + ": s is expected to be "
        + QuantityFormat.significant(s, UnitCatalog.UM, 2)
        + ", not clearly below the target of "
        + QuantityFormat.significant(target, UnitCatalog.UM, 2)
        + ", so no test of reasonable length would prove it; 'reseat remount' says what causes the"
        + " scatter";
  }

  /** One probe at the tool point along each machine axis. */
  private List<Probe> probes() {
    List<Probe> probes = new ArrayList<>();
    for (int k = 0; k < 3; k++) {
      MachineAxis axis = design.axes().axis(k);
      // The form tells places and directions only; a probe without noise cannot be made.
      probes.add(new Probe(axis.name(), design.toolPoint(), axis.direction(), 1e-9));
    }
    return probes;
  }
}
