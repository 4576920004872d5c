package reseat.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** One run of a command on a file that may hold anything, in a folder of its own. */
final class SpoiledRun {

  /** Stands for the spoiled file among the words of a command. */
  static final String FILE = "FILE";

  /** Begins the name of an example among the words of a command. */
  static final String EXAMPLE = "@";

  /** Stands for what the command may write. */
  static final String TARGET = "TARGET";

  static final Path EXAMPLES = Path.of("..", "docs", "examples");

  private static final Pattern NO_NUMBER =
      Pattern.compile("NaN|Infinity|Exception|(?<!\": )\\bnull\\b|\tat reseat");

  /** How it ended. */
  record Outcome(int code, String out, String err) {}

  private final Path folder;
  private final Path written;

  SpoiledRun(Path folder) throws IOException {
    this.folder = folder;
    written = Files.createDirectories(folder.resolve("written"));
  }

  /**
   * Runs the words on the bytes and says what the program did that it never may.
   *
   * @param words the command
   * @param ending of the file's name, such as {@code .toml}
   * @param bytes what the file holds
   * @param fault gets one line if the program did wrong
   * @return how it ended
   */
  Outcome run(List<String> words, String ending, byte[] bytes, List<String> fault)
      throws IOException {
    Path file = Files.write(folder.resolve("spoiled" + ending), bytes);
    List<String> args = new ArrayList<>();
    for (String word : words) {
      args.add(
          word.equals(FILE)
              ? file.toString()
              : word.equals(TARGET)
                  ? written.resolve("target").toString()
                  : word.startsWith(EXAMPLE)
                      ? EXAMPLES.resolve(word.substring(1)).toString()
                      : word);
    }
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code;
    try {
      code =
          new Dispatch()
              .run(args.toArray(String[]::new), new PrintWriter(out), new PrintWriter(err));
    } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
      fault.add("threw " + e);
      return new Outcome(-1, out.toString(), err.toString());
    }
    Outcome outcome = new Outcome(code, plain(out), plain(err));
    judge(outcome, bytes, fault);
    return outcome;
  }

  /** Without the name of the folder, which holds random digits. */
  private String plain(StringWriter said) {
    return said.toString().replace(folder.toString(), "");
  }

  private void judge(Outcome outcome, byte[] bytes, List<String> fault) throws IOException {
    if (outcome.code() < ExitCode.HOLDS || outcome.code() > ExitCode.NEEDS_DECISION) {
      fault.add("ended with " + outcome.code() + ": " + outcome.err());
    }
    // A sweep over points of which none stands shows its table all the same, and ends with 3.
    boolean told = outcome.code() == ExitCode.NO_SOLUTION && !outcome.out().isBlank();
    boolean refused =
        (outcome.code() == ExitCode.BAD_INPUT || outcome.code() == ExitCode.NO_SOLUTION) && !told;
    if (refused && outcome.err().isBlank()) {
      fault.add("refused without a word");
    }
    if (refused && !outcome.out().isEmpty()) {
      fault.add("refused, yet printed: " + outcome.out());
    }
    List<Path> files = filesWritten();
    if (refused && !files.isEmpty()) {
      fault.add("refused, yet wrote " + files);
    }
    if (!refused) {
      String own = new String(bytes, StandardCharsets.UTF_8);
      odd(outcome.out() + "\n" + outcome.err(), own, "screen", fault);
      for (Path file : files) {
        if (file.getFileName().toString().endsWith(".part")) {
          fault.add("left " + file);
        }
        if (!file.toString().endsWith(".png")) {
          odd(Files.readString(file), own, file.getFileName().toString(), fault);
        }
      }
    }
    clear();
  }

  /** A word that no output may hold, unless the user wrote it. */
  private static void odd(String text, String own, String where, List<String> fault) {
    NO_NUMBER
        .matcher(text)
        .results()
        .filter(m -> !own.contains(m.group()))
        .findFirst()
        .ifPresent(
            m ->
                fault.add(
                    where
                        + " shows "
                        + m.group()
                        + ": "
                        + text.substring(
                            Math.max(0, m.start() - 150), Math.min(text.length(), m.end() + 50))));
  }

  private List<Path> filesWritten() throws IOException {
    try (Stream<Path> files = Files.walk(written)) {
      return files.filter(Files::isRegularFile).toList();
    }
  }

  private void clear() throws IOException {
    List<Path> all;
    try (Stream<Path> files = Files.walk(written)) {
      all = files.sorted(Comparator.reverseOrder()).toList();
    }
    for (Path file : all) {
      if (!file.equals(written)) {
        Files.delete(file);
      }
    }
  }
}
