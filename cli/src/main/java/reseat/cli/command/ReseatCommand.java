package reseat.cli.command;

import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** The program without a command: its help, its version, and how a run may end. */
final class ReseatCommand {

  private ReseatCommand() {}

  /**
   * Describes the program with all its commands.
   *
   * @param table the commands
   * @return what help is printed from
   */
  static CommandSpec describe(CommandTable table) {
    CommandSpec program = CommandSpec.create().name("reseat").addOption(Options.help());
    program.addOption(
        OptionSpec.builder("-V", "--version")
            .type(boolean.class)
            .versionHelp(true)
            .description("Show the version.")
            .build());
    for (String name : table.names()) {
      program.addSubcommand(name, describe(name, table.command(name)));
    }
    program
        .usageMessage()
        .description(
            "Designs kinematic couplings: what they carry, how stiff they are, how they repeat.")
        .synopsisSubcommandLabel("COMMAND")
        .footer("%n'reseat COMMAND --help' explains a command.")
        .exitCodeListHeading("%nExit codes:%n")
        .exitCodeList(exitCodes());
    return program;
  }

  /**
   * Describes one command.
   *
   * @param name the name it goes by
   * @param command the command
   * @return what its help is printed from and its options are read by
   */
  static CommandSpec describe(String name, Subcommand command) {
    CommandSpec spec = CommandSpec.create().name(name);
    command.describe(spec);
    return spec.addOption(Options.trace()).addOption(Options.help());
  }

  private static Map<String, String> exitCodes() {
    Map<String, String> codes = new LinkedHashMap<>();
    codes.put(String.valueOf(ExitCode.HOLDS), "every check holds, or every decision is accepted");
    codes.put(String.valueOf(ExitCode.CHECK_FAILS), "a check fails; the report is complete");
    codes.put(String.valueOf(ExitCode.BAD_INPUT), "the command line or an input file is wrong");
    codes.put(String.valueOf(ExitCode.NO_SOLUTION), "there is no solution");
    codes.put(String.valueOf(ExitCode.NEEDS_DECISION), "a person has to decide");
    codes.put(String.valueOf(ExitCode.OUR_FAULT), "a fault of the program itself");
    return codes;
  }
}
