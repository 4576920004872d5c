package reseat.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;

/** Takes a command line to its command and whatever happens there to an exit code. */
public final class Dispatch {

  private final CommandTable table;

  /** Sets out the program's own commands; none is built yet. */
  public Dispatch() {
    this(new ShippedCommands());
  }

  Dispatch(CommandTable table) {
    this.table = table;
  }

  /**
   * Runs one command line. Never throws an exception; errors such as lack of memory pass through.
   *
   * @param args the words after the program's name
   * @param out for results
   * @param err for one message per problem
   * @return an {@link ExitCode}
   */
  public int run(String[] args, PrintWriter out, PrintWriter err) {
    if (args.length > 0 && !table.named(args[0]).equals(args[0])) {
      String[] shown = args.clone();
      shown[0] = table.named(args[0]);
      return run(shown, out, err);
    }
    if (args.length == 2 && !args[1].startsWith("-") && table.names().contains(args[0])) {
      if (table.command(args[0]) instanceof FileCommand onFile) {
        return runOnFile(onFile, args, out, err);
      }
    }
    return new OptionReader(table, out, err).run(args);
  }

  private static int runOnFile(
      FileCommand command, String[] args, PrintWriter out, PrintWriter err) {
    try {
      return command.run(Path.of(args[1]), out, err);
    } catch (IOException | RuntimeException e) {
      return FaultMessage.report("reseat " + args[0], e, err);
    }
  }
}
