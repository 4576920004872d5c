package reseat.cli.command;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The program without a command: help, version, and how a run may end. */
@Command(
    name = "reseat",
    description =
        "Designs kinematic couplings: what they carry, how stiff they are, how they repeat.",
    synopsisSubcommandLabel = "COMMAND",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:every check holds",
      "1:a check fails; the report is complete",
      "2:the command line or an input file is wrong",
      "3:there is no solution",
      "70:a fault of the program itself"
    })
final class ReseatCommand implements Runnable {

  @Spec private CommandSpec spec;

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "name a command");
  }
}
