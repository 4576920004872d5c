package reseat.cli.command;

import java.io.PrintWriter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import reseat.report.catalog.VerifyText;
import reseat.verification.CheckValue;
import reseat.verification.CheckValues;

/** Recomputes the check values and prints both numbers. */
final class VerifyCommand implements Subcommand {

  @Override
  public void describe(CommandSpec spec) {
    spec.usageMessage()
        .description(
            "Recomputes check values from outside on this machine and prints source, printed value,"
                + " computed value and difference, and how many were read, recalled or computed.");
  }

  @Override
  public int run(ParseResult given, PrintWriter out, PrintWriter err) {
    VerifyText.print(CheckValues.topics(), out);
    boolean all = CheckValues.all().stream().allMatch(CheckValue::holds);
    return all ? ExitCode.HOLDS : ExitCode.CHECK_FAILS;
  }
}
