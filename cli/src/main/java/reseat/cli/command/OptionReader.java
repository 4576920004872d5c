package reseat.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.Arrays;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;
import reseat.report.page.Versions;

/** Reads options with picocli and runs the command they are for. */
final class OptionReader {

  private final CommandTable table;
  private final PrintWriter out;
  private final PrintWriter err;

  OptionReader(CommandTable table, PrintWriter out, PrintWriter err) {
    // Both only look for libraries and types that no command here uses, and cost time at the start.
    System.setProperty("picocli.disable.closures", "true");
    System.setProperty("picocli.converters.excludes", "java.sql.*,java.time.*");
    this.table = table;
    this.out = out;
    this.err = err;
  }

  /**
   * Runs one command line.
   *
   * @param args the words after the program's name
   * @return an {@link ExitCode}
   */
  int run(String[] args) {
    if (args.length > 0 && args[0].equals("help")) {
      return run(
          args.length == 1
              ? new String[] {"--help"}
              : new String[] {table.named(args[1]), "--help"});
    }
    if (args.length > 0 && table.names().contains(args[0])) {
      // The named command alone is described: describing the others would only take time.
      return command(args[0], Arrays.copyOfRange(args, 1, args.length));
    }
    return program(args);
  }

  private int command(String name, String[] args) {
    Subcommand command = table.command(name);
    CommandLine line = new CommandLine(ReseatCommand.describe("reseat " + name, command));
    boolean traced = false;
    try {
      ParseResult given = line.parseArgs(args);
      traced = given.hasMatchedOption(Options.TRACE);
      if (given.isUsageHelpRequested()) {
        line.usage(out, Ansi.OFF);
        return ExitCode.HOLDS;
      }
      return command.run(given, out, err);
    } catch (ParameterException e) {
      return explain(line, e);
    } catch (IOException | RuntimeException e) {
      return traced
          ? FaultMessage.reportTraced("reseat " + name, e, err)
          : FaultMessage.report("reseat " + name, e, err);
    }
  }

  private int program(String[] args) {
    CommandLine line = new CommandLine(ReseatCommand.describe(table));
    try {
      ParseResult given = line.parseArgs(args);
      if (given.isUsageHelpRequested()) {
        line.usage(out, Ansi.OFF);
        return ExitCode.HOLDS;
      }
      if (given.isVersionHelpRequested()) {
        out.println("reseat " + Versions.program());
        return ExitCode.HOLDS;
      }
      throw new ParameterException(line, "name a command");
    } catch (ParameterException e) {
      return explain(line, e);
    } catch (RuntimeException e) {
      return FaultMessage.report("reseat", e, err);
    }
  }

  private int explain(CommandLine line, ParameterException problem) {
    String name = line.getCommandName();
    List<String> unmatched = line.getUnmatchedArguments();
    // A word nobody knows is reported before a missing one: it may be the missing one misspelt.
    err.println(
        name + ": " + (unmatched.isEmpty() ? problem.getMessage() : unknown(line, unmatched)));
    err.println("'" + name + " --help' lists what can be given.");
    return ExitCode.BAD_INPUT;
  }

  private static String unknown(CommandLine line, List<String> words) {
    String word = words.get(0);
    boolean choosing = !line.getSubcommands().isEmpty();
    String what =
        word.startsWith("-") ? "no option " : choosing ? "no command " : "one word too many: ";
    List<String> known = new UnmatchedArgumentException(line, words).getSuggestions();
    String nearest = known.isEmpty() ? "" : "; did you mean " + String.join(" or ", known) + "?";
    return what + "'" + word + "'" + nearest;
  }
}
