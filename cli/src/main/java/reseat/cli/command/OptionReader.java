package reseat.cli.command;

import java.io.PrintWriter;
import java.util.Arrays;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** Reads options and runs the command: everything that needs picocli. */
final class OptionReader {

  private final CommandTable table;

  OptionReader(CommandTable table) {
    // Both only look for libraries and types that no command here uses, and cost time at the start.
    System.setProperty("picocli.disable.closures", "true");
    System.setProperty("picocli.converters.excludes", "java.sql.*,java.time.*");
    this.table = table;
  }

  /**
   * Runs one command line.
   *
   * @param args the words after the program's name
   * @param out for results and help
   * @param err for one message per problem
   * @return an {@link ExitCode}
   */
  int run(String[] args, PrintWriter out, PrintWriter err) {
    CommandLine line;
    String[] rest;
    if (args.length > 0 && table.names().contains(args[0])) {
      line = one(args[0]);
      rest = Arrays.copyOfRange(args, 1, args.length);
    } else {
      line = all();
      rest = args;
    }
    return line.setOut(out)
        .setErr(err)
        .setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF))
        .setParameterExceptionHandler(OptionReader::explain)
        .setExecutionExceptionHandler(OptionReader::fail)
        .execute(rest);
  }

  /** Reads the named command alone: looking through the others for options takes time. */
  private CommandLine one(String name) {
    CommandLine line = prepared(new CommandLine(table.command(name)));
    line.setCommandName("reseat " + name);
    return line;
  }

  private CommandLine all() {
    CommandLine line = prepared(new CommandLine(new ReseatCommand()));
    for (String name : table.names()) {
      line.addSubcommand(name, prepared(new CommandLine(table.command(name))));
    }
    return line.addSubcommand("help", new HelpCommand());
  }

  private static CommandLine prepared(CommandLine line) {
    line.getCommandSpec().mixinStandardHelpOptions(true).versionProvider(new BuildVersion());
    return line.setAbbreviatedOptionsAllowed(false).setOverwrittenOptionsAllowed(false);
  }

  private static int explain(ParameterException problem, String[] args) {
    CommandLine line = problem.getCommandLine();
    String name = line.getCommandSpec().qualifiedName();
    boolean choosing = !line.getSubcommands().isEmpty();
    List<String> unmatched = line.getUnmatchedArguments();
    // A word nobody knows is reported before a missing one: it may be the missing one misspelt.
    String found = unmatched.isEmpty() ? problem.getMessage() : unknown(line, unmatched, choosing);
    line.getErr().println(name + ": " + found);
    line.getErr()
        .println(
            "'" + name + " --help' lists the " + (choosing ? "commands and options." : "options."));
    return ExitCode.BAD_INPUT;
  }

  private static String unknown(CommandLine line, List<String> words, boolean choosing) {
    String word = words.get(0);
    String what =
        word.startsWith("-") ? "no option " : choosing ? "no command " : "one word too many: ";
    List<String> known = new UnmatchedArgumentException(line, words).getSuggestions();
    String nearest = known.isEmpty() ? "" : "; did you mean " + String.join(" or ", known) + "?";
    return what + "'" + word + "'" + nearest;
  }

  private static int fail(Exception cause, CommandLine line, ParseResult parsed) {
    return Fault.report(line.getCommandSpec().qualifiedName(), cause, line.getErr());
  }
}
