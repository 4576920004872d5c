package reseat.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;

/**
 * A command that can run on a file alone, every option at its default.
 *
 * <p>{@link Dispatch} runs {@code reseat NAME FILE} through this method without reading options,
 * and so without loading the option parser, which would be a good part of the time such a command
 * takes.
 */
interface FileCommand extends Subcommand {

  /**
   * Runs the command with every option at its default.
   *
   * @param file the file named on the command line
   * @param out for the result
   * @param err for what is wrong with the input
   * @return an {@link ExitCode}
   * @throws IOException if a file cannot be read or written; its message is shown to the user
   */
  int run(Path file, PrintWriter out, PrintWriter err) throws IOException;
}
