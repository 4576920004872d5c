package reseat.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import reseat.check.Depth;
import reseat.equilibrium.NoEquilibriumException;
import reseat.report.check.CheckJson;
import reseat.report.check.CheckText;
import reseat.report.check.ExplainText;
import reseat.report.form.Screen;
import reseat.study.CheckResult;
import reseat.study.CheckStudy;
import reseat.study.SeatedCheck;
import reseat.study.StatedDesign;
import reseat.units.NearestWord;

/** Looks at a whole design: forces, stress, stiffness, lift-off, tool changes, the verdict. */
final class CheckCommand implements FileCommand {

  private static final String NAME = "reseat check: ";
  private static final String JSON = "--json";
  static final String STATICS = "--statics";
  private static final String EXPLAIN = "--explain";

  @Override
  public void describe(CommandSpec spec) {
    spec.usageMessage()
        .description(
            "Checks a design: contact forces and pressures, stiffness at the tool point, lift-off,"
                + " error motion, tool changes, and what to change where a limit is broken.");
    spec.addPositional(Options.file("design file (see 'reseat starter')"));
    spec.addOption(Options.flag(STATICS, "look at the statics alone, not at tool changes"));
    ScreenChoices.describe(spec);
    spec.addOption(
        Options.text(
            EXPLAIN, "KEY", "tell one figure in full: formula, inputs, source, what is assumed"));
    spec.addOption(Options.flag(JSON, "print the result as JSON, SI units"));
  }

  @Override
  public int run(ParseResult given, PrintWriter out, PrintWriter err) throws IOException {
    Path file = given.matchedPositionalValue(0, null);
    Screen screen;
    try {
      screen = ScreenChoices.of(given, file);
    } catch (UnusableChoice e) {
      err.println(NAME + e.getMessage());
      return ExitCode.BAD_INPUT;
    }
    String key = given.matchedOptionValue(EXPLAIN, "");
    if (!key.isEmpty() && !ExplainText.keys().contains(key)) {
      err.println(
          NAME
              + EXPLAIN
              + ": no figure '"
              + key
              + "'"
              + NearestWord.to(key, ExplainText.keys())
                  .map(k -> "; did you mean " + k + "?")
                  .orElse(""));
      err.println("There are " + String.join(", ", ExplainText.keys()) + ".");
      return ExitCode.BAD_INPUT;
    }
    if (!key.isEmpty()) {
      return explain(file, key, screen, out, err);
    }
    Depth depth = given.hasMatchedOption(STATICS) ? Depth.STATICS : Depth.SIMULATED;
    return check(file, depth, given.hasMatchedOption(JSON), screen, out, err);
  }

  @Override
  public int run(Path file, PrintWriter out, PrintWriter err) throws IOException {
    return check(file, Depth.SIMULATED, false, ScreenChoices.of(file), out, err);
  }

  private static int check(
      Path file, Depth depth, boolean json, Screen screen, PrintWriter out, PrintWriter err)
      throws IOException {
    Optional<StatedDesign> design = DesignInput.read(file, err);
    if (design.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    try {
      CheckResult result = CheckStudy.run(design.get(), depth);
      out.print(json ? CheckJson.of(result) : CheckText.of(result, file.toString(), screen));
      return ExitCode.of(result.verdict());
    } catch (NoEquilibriumException e) {
      err.println(NAME + file + ": " + e.getMessage());
      return ExitCode.NO_SOLUTION;
    }
  }

  /** Tells one figure in full; that is shown or it is not, whatever the verdict. */
  private static int explain(Path file, String key, Screen screen, PrintWriter out, PrintWriter err)
      throws IOException {
    Optional<StatedDesign> design = DesignInput.read(file, err);
    if (design.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    try {
      CheckResult result = CheckStudy.run(design.get(), Depth.SIMULATED);
      if (!(result instanceof SeatedCheck seated)) {
        err.println(NAME + file + ": the coupling does not stand, so it has no such figure");
        return ExitCode.NO_SOLUTION;
      }
      Optional<String> told = ExplainText.of(seated, key, screen.figures());
      if (told.isEmpty()) {
        err.println(NAME + file + ": this design has no " + key.replace('-', ' '));
        return ExitCode.NO_SOLUTION;
      }
      out.print(told.get());
      return ExitCode.HOLDS;
    } catch (NoEquilibriumException e) {
      err.println(NAME + file + ": " + e.getMessage());
      return ExitCode.NO_SOLUTION;
    }
  }
}
