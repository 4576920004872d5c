package reseat.cli.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;

/** A test that types commands as their user does, run in this process, and reads the answer. */
abstract class TypedCommand {

  /** What the command typed last printed as its result. */
  final StringWriter out = new StringWriter();

  /** What the command typed last printed about its input. */
  final StringWriter err = new StringWriter();

  /**
   * Runs a command.
   *
   * @param first the first words: the command and, mostly, its file
   * @param more further words
   * @return the exit code
   */
  final int type(List<?> first, String... more) {
    out.getBuffer().setLength(0);
    err.getBuffer().setLength(0);
    List<String> words = new ArrayList<>();
    first.forEach(word -> words.add(word.toString()));
    words.addAll(List.of(more));
    return new Dispatch()
        .run(words.toArray(String[]::new), new PrintWriter(out, true), new PrintWriter(err, true));
  }
}
