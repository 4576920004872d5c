package reseat.cli.command;

import reseat.study.StatedDesign;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import reseat.design.CouplingDesign;
import reseat.equilibrium.NoEquilibriumException;
import reseat.study.AcceptanceStudy;
import reseat.units.QuantityFormat;
import reseat.units.UnitCatalog;

/** The acceptance test of the design that readings are held against. */
final class DesignPlan {

  private DesignPlan() {}

  /**
   * Reads and simulates a design.
   *
   * @param file design file
   * @param err gets what is wrong with the file
   * @return what its test has to show
   * @throws IOException if the file cannot be read
   * @throws UnusableChoice if the design cannot be used
   */
  static AcceptanceStudy of(Path file, PrintWriter err) throws IOException, UnusableChoice {
    CouplingDesign design = design(file, err);
    try {
      return AcceptanceStudy.of(design);
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
    return DesignInput.read(file, err)
        .map(StatedDesign::design)
        .orElseThrow(
        () -> new UnusableChoice(ReadingsChoices.AGAINST + ": the design cannot be used", null));
  }

  /**
   * Says where targets and expectation come from.
   *
   * @param design the design to be tested
   * @param file name of its file
   * @return one sentence each
   */
  static List<String> sources(CouplingDesign design, String file) {
    List<String> sources = new ArrayList<>();
    sources.add(
        "Design "
            + file
            + (design.title().isBlank() ? "" : " (" + design.title() + ")")
            + "; expected scatter: as simulated, but at least two thirds of the target.");
    List<String> wanted = new ArrayList<>();
    for (Map.Entry<String, Double> target : AcceptanceStudy.targets(design).entrySet()) {
      double width = AcceptanceStudy.WITHIN_95 * target.getValue();
      wanted.add(
          target.getKey() + " \u00b1" + QuantityFormat.significant(width, UnitCatalog.UM, 2));
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
