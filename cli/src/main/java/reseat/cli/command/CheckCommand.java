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
import reseat.report.form.Screen;
import reseat.study.CheckResult;
import reseat.study.CheckStudy;
import reseat.study.StatedDesign;

/** Looks at a whole design: forces, stress, stiffness, lift-off, tool changes, the verdict. */
final class CheckCommand implements FileCommand {

  private static final String NAME = "reseat check: ";
  private static final String JSON = "--json";
  static final String STATICS = "--statics";

  @Override
  public void describe(CommandSpec spec) {
    spec.usageMessage()
        .description(
            "Checks a design: contact forces and pressures, stiffness at the tool point, lift-off,"
                + " error motion, tool changes, and what to change where a limit is broken.");
    spec.addPositional(Options.file("design file (see 'reseat starter')"));
    spec.addOption(Options.flag(STATICS, "look at the statics alone, not at tool changes"));
    ScreenChoices.describe(spec);
    spec.addOption(Options.flag(JSON, "print the result as JSON, SI units"));
  }

  @Override
  public int run(ParseResult given, PrintWriter out, PrintWriter err) throws IOException {
    Depth depth = given.hasMatchedOption(STATICS) ? Depth.STATICS : Depth.SIMULATED;
    return check(given.matchedPositionalValue(0, null), given, depth, out, err);
  }

  @Override
  public int run(Path file, PrintWriter out, PrintWriter err) throws IOException {
    return check(file, null, Depth.SIMULATED, out, err);
  }

  private static int check(
      Path file, ParseResult given, Depth depth, PrintWriter out, PrintWriter err)
      throws IOException {
    Optional<StatedDesign> design = DesignInput.read(file, err);
    if (design.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    try {
      Screen screen = ScreenChoices.of(given, design.get().inInches());
      CheckResult result = CheckStudy.run(design.get(), depth);
      boolean json = given != null && given.hasMatchedOption(JSON);
      out.print(json ? CheckJson.of(result) : CheckText.of(result, file.toString(), screen));
      return ExitCode.of(result.verdict());
    } catch (UnusableChoice e) {
      err.println(NAME + e.getMessage());
      return ExitCode.BAD_INPUT;
    } catch (NoEquilibriumException e) {
      err.println(NAME + file + ": " + e.getMessage());
      return ExitCode.NO_SOLUTION;
    }
  }
}
