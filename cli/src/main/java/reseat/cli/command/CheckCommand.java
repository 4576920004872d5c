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
import reseat.study.AssumedShares;
import reseat.study.CheckResult;
import reseat.study.CheckStudy;
import reseat.study.StatedDesign;

/** Looks at a whole design: forces, stress, stiffness, lift-off, tool changes, the verdict. */
final class CheckCommand implements FileCommand {

  private static final String NAME = "reseat check: ";
  private static final String JSON = "--json";
  static final String STATICS = "--statics";
  static final String STRICT = "--strict";

  @Override
  public void describe(CommandSpec spec) {
    spec.usageMessage()
        .description(
            "Checks a design: contact forces and pressures, stiffness at the tool point, lift-off,"
                + " error motion, tool changes, and what to change where a limit is broken.");
    spec.addPositional(Options.file("design file (see 'reseat starter')"));
    spec.addOption(Options.flag(STATICS, "look at the statics alone, not at tool changes"));
    describeStrict(spec);
    ScreenChoices.describe(spec);
    spec.addOption(Options.flag(JSON, "print the result as JSON, SI units"));
  }

  /** The option that asks for a decision on what results rest on and the file does not state. */
  static void describeStrict(CommandSpec spec) {
    spec.addOption(
        Options.flag(
            STRICT,
            "ask for a decision on every assumption that carries more than a tenth of a deciding"
                + " figure; it is taken by stating the value"));
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
    Depth depth = given.hasMatchedOption(STATICS) ? Depth.STATICS : Depth.SIMULATED;
    boolean strict = given.hasMatchedOption(STRICT);
    return check(file, depth, strict, given.hasMatchedOption(JSON), screen, out, err);
  }

  @Override
  public int run(Path file, PrintWriter out, PrintWriter err) throws IOException {
    return check(file, Depth.SIMULATED, false, false, ScreenChoices.of(file), out, err);
  }

  private static int check(
      Path file,
      Depth depth,
      boolean strict,
      boolean json,
      Screen screen,
      PrintWriter out,
      PrintWriter err)
      throws IOException {
    Optional<StatedDesign> design = DesignInput.read(file, err);
    if (design.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    try {
      CheckResult found = CheckStudy.run(design.get(), depth);
      CheckResult result = strict ? AssumedShares.strict(found) : found;
      out.print(json ? CheckJson.of(result) : CheckText.of(result, file.toString(), screen));
      return ExitCode.of(result.verdict());
    } catch (NoEquilibriumException e) {
      err.println(NAME + file + ": " + e.getMessage());
      return ExitCode.NO_SOLUTION;
    }
  }
}
