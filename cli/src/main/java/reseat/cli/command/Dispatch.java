package reseat.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;

/** Takes a command line to its command and whatever happens there to an exit code. */
public final class Dispatch {

  private final CommandTable table;

  /**
   * Sets out the commands to choose from.
   *
   * @param table the commands; nothing is built yet
   */
  public Dispatch(ShippedCommands table) {
    this((CommandTable) table);
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
    if (args.length == 2 && !args[1].startsWith("-") && table.names().contains(args[0])) {
      Callable<Integer> command = table.command(args[0]);
      if (command instanceof FileCommand onFile) {
        return runOnFile(onFile, args, out, err);
      }
    }
    return new OptionReader(table).run(args, out, err);
  }

  private static int runOnFile(
      FileCommand command, String[] args, PrintWriter out, PrintWriter err) {
    try {
      return command.run(Path.of(args[1]), out, err);
    } catch (IOException | RuntimeException e) {
      return Fault.report("reseat " + args[0], e, err);
    }
  }
}
