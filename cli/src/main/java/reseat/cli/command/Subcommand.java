package reseat.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/**
 * One command of the program: what it accepts and what it does.
 *
 * <p>Options are described by calls, with the help of {@link Options}, and not by annotations:
 * reading annotations takes picocli about twice as long as a bare Java program takes in all.
 */
interface Subcommand {

  /**
   * Says what the command is for and what it accepts.
   *
   * @param spec filled in with description, parameters and options; {@code --help} is there already
   */
  void describe(CommandSpec spec);

  /**
   * Runs the command.
   *
   * @param given the parameters and options as read; of the types that {@link
   *     #describe(CommandSpec)} named
   * @param out for the result
   * @param err for what is wrong with the input, one message per problem
   * @return an {@link ExitCode}
   * @throws IOException if a file cannot be read or written; its message is shown to the user
   * @throws picocli.CommandLine.ParameterException if an option's value cannot be used; its message
   *     is shown to the user
   */
  int run(ParseResult given, PrintWriter out, PrintWriter err) throws IOException;
}
