package reseat.docs;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import reseat.cli.command.Dispatch;

/**
 * Follows the steps of a page in the working folder, which Maven makes {@code docs/target/guide}.
 *
 * <p>Commands run in this process as the launcher would run them; {@code > file} keeps what one
 * prints. Other programs are not run.
 */
final class GuideShell {

  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|'([^']*)'|(\\S+)");
  private static final String PROGRAM = "./reseat";

  /** How a command ended and what it printed. */
  record Outcome(int code, List<String> printed) {}

  private final Path folder;

  private GuideShell(Path folder) {
    this.folder = folder;
  }

  /** A folder with nothing in it but the examples. */
  static GuideShell clean() throws IOException {
    Path folder = Path.of("").toAbsolutePath();
    if (!folder.endsWith(Path.of("target", "guide"))) {
      throw new IllegalStateException(
          "the pages write files, so their test runs in docs/target/guide only, as in the build");
    }
    List<Path> old;
    try (Stream<Path> files = Files.walk(folder)) {
      old = files.sorted(Comparator.reverseOrder()).filter(f -> !f.equals(folder)).toList();
    }
    for (Path file : old) {
      Files.delete(file);
    }
    Path examples = Files.createDirectories(folder.resolve("docs/examples"));
    try (Stream<Path> files = Files.list(ProjectFolder.examples())) {
      for (Path file : files.toList()) {
        Files.copy(file, examples.resolve(file.getFileName()));
      }
    }
    return new GuideShell(folder);
  }

  void save(GuidePage.Save step) throws IOException {
    Files.write(folder.resolve(step.file()), step.content());
  }

  /** Takes out the lines marked with a minus, together, and puts those with a plus there. */
  void edit(GuidePage.Edit step) throws IOException {
    Path file = folder.resolve(step.file());
    List<String> text = new ArrayList<>(Files.readAllLines(file));
    int at = -1;
    for (String line : step.diff()) {
      String content = line.isEmpty() ? "" : line.substring(1);
      if (line.startsWith("-")) {
        at = text.indexOf(content);
        if (at < 0) {
          throw new IllegalStateException(step.file() + " has no line: " + content);
        }
        text.remove(at);
      } else if (line.startsWith("+") && at >= 0) {
        text.add(at++, content);
      } else if (line.startsWith("+")) {
        text.add(content);
      } else {
        at = text.indexOf(content) + 1;
      }
    }
    Files.write(file, text);
  }

  /** Runs commands one after the other; all but the last must end with 0. */
  Outcome run(GuidePage.Commands step) throws IOException {
    List<String> printed = new ArrayList<>();
    int code = 0;
    for (String command : step.commands()) {
      if (code != 0) {
        throw new IllegalStateException("ended with " + code + " before: " + command);
      }
      if (command.equals("mvn -B verify")) {
        continue; // runs this very test
      }
      Outcome outcome = run(command);
      code = outcome.code();
      printed.addAll(outcome.printed());
    }
    return new Outcome(code, printed);
  }

  private Outcome run(String command) throws IOException {
    List<String> words = new ArrayList<>();
    Matcher m = WORD.matcher(command);
    while (m.find()) {
      words.add(m.group(1) != null ? m.group(1) : m.group(2) != null ? m.group(2) : m.group(3));
    }
    if (!words.remove(0).equals(PROGRAM)) {
      throw new IllegalStateException("only " + PROGRAM + " is run: " + command);
    }
    int kept = words.indexOf(">");
    StringWriter text = new StringWriter();
    PrintWriter writer = new PrintWriter(text);
    StringWriter result = new StringWriter();
    PrintWriter out = kept < 0 ? writer : new PrintWriter(result);
    List<String> args = kept < 0 ? words : words.subList(0, kept);
    int code = new Dispatch().run(args.toArray(new String[0]), out, writer);
    if (kept >= 0) {
      out.flush();
      Files.writeString(folder.resolve(words.get(kept + 1)), result.toString());
    }
    writer.flush();
    return new Outcome(code, text.toString().lines().toList());
  }
}
