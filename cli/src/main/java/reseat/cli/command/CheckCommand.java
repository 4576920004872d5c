package reseat.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import reseat.design.CouplingDesign;
import reseat.equilibrium.NoEquilibriumException;
import reseat.report.check.CheckJson;
import reseat.report.check.CheckText;
import reseat.study.CheckResult;
import reseat.study.CheckStudy;

/** Looks at a whole design: forces, stress, stiffness, lift-off, motion of the tool, verdicts. */
final class CheckCommand implements FileCommand {

  private static final String JSON = "--json";

  @Override
  public void describe(CommandSpec spec) {
    spec.usageMessage()
        .description(
            "Checks a design: contact forces and pressures, stiffness at the tool point, lift-off,"
                + " error motion, and what to change where a limit is broken.");
    spec.addPositional(Options.file("design file (see 'reseat starter')"));
    spec.addOption(Options.flag(JSON, "print the result as JSON, SI units"));
  }

  @Override
  public int run(ParseResult given, PrintWriter out, PrintWriter err) throws IOException {
    Path file = given.matchedPositionalValue(0, null);
    return check(file, given.hasMatchedOption(JSON), out, err);
  }

  @Override
  public int run(Path file, PrintWriter out, PrintWriter err) throws IOException {
    return check(file, false, out, err);
  }

  private static int check(Path file, boolean json, PrintWriter out, PrintWriter err)
      throws IOException {
    Optional<CouplingDesign> design = DesignInput.read(file, err);
    if (design.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    try {
      CheckResult result = CheckStudy.run(design.get());
      out.print(json ? CheckJson.of(result) : CheckText.of(result));
      return ExitCode.of(result.verdict());
    } catch (NoEquilibriumException e) {
      err.println("reseat check: " + file + ": " + e.getMessage());
      return ExitCode.NO_SOLUTION;
    }
  }
}
