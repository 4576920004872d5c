package reseat.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import reseat.design.CouplingDesign;
import reseat.design.MachineAxis;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.NoEquilibriumException;
import reseat.readings.AcceptancePlan;
import reseat.readings.Probe;
import reseat.remount.RemountPlan;
import reseat.remount.RemountSimulation;
import reseat.space.Vec3;
import reseat.study.ShopStudy;
import reseat.units.QuantityFormat;
import reseat.units.UnitCatalog;

/**
 * What an acceptance test of a design has to show: a target and an expected scatter along each
 * machine axis, and where the probes stand.
 */
final class DesignPlan {

  private final CouplingDesign design;
  private final Vec3 expected;

  private DesignPlan(CouplingDesign design, Vec3 expected) {
    this.design = design;
    this.expected = expected;
  }

  /**
   * Simulates a design.
   *
   * @param file design file
   * @param mounts tool changes to simulate
   * @param err gets what is wrong with the file
   * @return the plan
   * @throws IOException if the file cannot be read
   * @throws UnusableChoice if the design cannot be used
   */
  static DesignPlan of(Path file, int mounts, PrintWriter err) throws IOException, UnusableChoice {
    CouplingDesign design = design(file, err);
    try {
      Vec3 s =
          new RemountSimulation(CouplingModel.of(design))
              .run(RemountPlan.of(mounts, 1, Runtime.getRuntime().availableProcessors()))
              .toolPoint()
              .deviation();
      return new DesignPlan(design, s);
    } catch (IllegalArgumentException | NoEquilibriumException e) {
      throw new UnusableChoice(ReadingsChoices.AGAINST + ": " + e.getMessage(), e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    }
  }

  /**
   * Reads the design that readings are held against.
   *
   * @param file design file
   * @param err gets what is wrong with the file
   * @return the design
   * @throws IOException if the file cannot be read
   * @throws UnusableChoice if it holds no design
   */
  static CouplingDesign design(Path file, PrintWriter err) throws IOException, UnusableChoice {
    Optional<CouplingDesign> design = DesignInput.read(file, err);
    return design.orElseThrow(
        () -> new UnusableChoice(ReadingsChoices.AGAINST + ": the design cannot be used", null));
  }

  /**
   * Returns the targets of the design.
   *
   * @return largest true standard deviation by axis, m: the half-width wanted over 1.96
   */
  Map<String, Double> targets() {
    return targets(design);
  }

  /** The same of any design. */
  static Map<String, Double> targets(CouplingDesign design) {
    Map<String, Double> targets = new LinkedHashMap<>();
    for (int k = 0; k < 3; k++) {
      double limit = design.targets().repeatability().limit(k);
      if (Double.isFinite(limit)) {
        targets.put(design.axes().axis(k).name(), limit / ShopStudy.WITHIN_95);
      }
    }
    return targets;
  }

  /**
   * Lays out the test along one machine axis.
   *
   * @param axis name of the axis
   * @param target largest true standard deviation allowed, m
   * @param hope true standard deviation expected, m; 0 for the simulated one
   * @param confidence confidence of the proof
   * @param chance wanted chance of proof
   * @return the plan
   * @throws IllegalArgumentException if the design has no such axis, or is not expected to keep the
   *     target
   */
  AcceptancePlan plan(String axis, double target, double hope, double confidence, double chance) {
    for (int k = 0; k < 3; k++) {
      if (design.axes().axis(k).name().equalsIgnoreCase(axis)) {
        double s = hope > 0 ? hope : expected.component(k);
        if (!(s < target)) {
          throw new IllegalArgumentException(
              "axis "
                  + axis
                  + ": s is expected to be "
                  + QuantityFormat.significant(s, UnitCatalog.UM, 2)
                  + ", not below the target of "
                  + QuantityFormat.significant(target, UnitCatalog.UM, 2)
                  + ", so no test would prove it; 'reseat remount' says what causes the scatter");
        }
        String name = design.axes().axis(k).name();
        // An axis that the design holds still is still proven only as well as a gauge can read it.
        return AcceptancePlan.of(
            name, target, Math.max(s, 0.01 * target), confidence, chance, probes());
      }
    }
    throw new IllegalArgumentException(
        "--target: the design has no machine axis named "
            + axis
            + "; it has "
            + design.axes().first().name()
            + ", "
            + design.axes().second().name()
            + ", "
            + design.axes().third().name());
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

  /**
   * Says where targets and expectation come from.
   *
   * @param file name of the design file
   * @return one sentence each
   */
  List<String> sources(String file) {
    List<String> sources = new ArrayList<>();
    sources.add(
        "Design "
            + file
            + (design.title().isBlank() ? "" : " (" + design.title() + ")")
            + "; expected scatter: simulated tool changes.");
    List<String> wanted = new ArrayList<>();
    for (int k = 0; k < 3; k++) {
      double limit = design.targets().repeatability().limit(k);
      if (Double.isFinite(limit)) {
        wanted.add(
            design.axes().axis(k).name()
                + " \u00b1"
                + QuantityFormat.significant(limit, UnitCatalog.UM, 2));
      }
    }
    if (!wanted.isEmpty()) {
      sources.add(
          "Wanted of it, for 95 % of the mounts: "
              + String.join(", ", wanted)
              + "; the true s may be that half-width over 1.96.");
    }
    return sources;
  }
}
