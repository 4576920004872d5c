package reseat.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import reseat.design.CouplingDesign;
import reseat.design.Coverage;
import reseat.equilibrium.NoEquilibriumException;
import reseat.study.AcceptanceStudy;
import reseat.study.StatedDesign;
import reseat.units.PrintedNumber;
import reseat.units.QuantityFormat;
import reseat.units.Unit;

/** The acceptance test of the design that readings are held against. */
final class DesignPlan {

  private DesignPlan() {}

  /**
   * Simulates a design.
   *
   * @param design the design
   * @return what its test has to show
   * @throws UnusableChoice if the design cannot be used
   */
  static AcceptanceStudy of(CouplingDesign design) throws UnusableChoice {
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
  static StatedDesign design(Path file, PrintWriter err) throws IOException, UnusableChoice {
    return DesignInput.read(file, err)
        .orElseThrow(
            () ->
                new UnusableChoice(ReadingsChoices.AGAINST + ": the design cannot be used", null));
  }

  /**
   * Says where targets and expectation come from.
   *
   * @param design the design to be tested
   * @param file name of its file
   * @param unit unit of its targets
   * @return one sentence each
   */
  static List<String> sources(CouplingDesign design, String file, Unit unit) {
    List<String> sources = new ArrayList<>();
    sources.add(
        "Design "
            + file
            + (design.title().isBlank() ? "" : " (" + design.title() + ")")
            + "; expected scatter: as simulated, but at least two thirds of the target.");
    Coverage coverage = design.targets().coverage();
    double within = AcceptanceStudy.within(coverage);
    List<String> wanted = new ArrayList<>();
    for (Map.Entry<String, Double> target : AcceptanceStudy.targets(design).entrySet()) {
      double width = within * target.getValue();
      wanted.add(target.getKey() + " \u00b1" + QuantityFormat.significant(width, unit, 2));
    }
    if (!wanted.isEmpty()) {
      sources.add(
          "Wanted of it, for "
              + coverage.written()
              + (coverage.isLargest() ? " mounts: " : " of the mounts: ")
              + String.join(", ", wanted)
              + "; the true s may be that half-width over "
              + PrintedNumber.shortest(within)
              + ".");
    }
    return sources;
  }
}
