package reseat.cli.command;

import java.io.PrintWriter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import reseat.report.catalog.VerifyText;
import reseat.verification.PublishedValue;
import reseat.verification.PublishedValues;

/** Recomputes the published values and prints both numbers. */
final class VerifyCommand implements Subcommand {

  @Override
  public void describe(CommandSpec spec) {
    spec.usageMessage()
        .description(
            "Recomputes published check values on this machine and prints source, printed value,"
                + " computed value and difference.");
  }

  @Override
  public int run(ParseResult given, PrintWriter out, PrintWriter err) {
    VerifyText.print(PublishedValues.topics(), out);
    boolean all = PublishedValues.all().stream().allMatch(PublishedValue::holds);
    return all ? ExitCode.HOLDS : ExitCode.CHECK_FAILS;
  }
}
