package reseat.docs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A page of the guide as steps that can be followed.
 *
 * <p>A block marked {@code sh} is a list of commands; a block marked {@code text} or {@code json}
 * right after it is what they print. A remark {@code <!-- exit 1 -->} before the commands says how
 * the last one ends, if not with 0. A block marked {@code diff} changes the file in its first line,
 * {@code --- my-post.toml}. A remark {@code <!-- file x.toml -->} before any other block says that
 * its text is that file, {@code <!-- printed by COMMAND -->} that a command printed it which the
 * page shows elsewhere. A line of three points in what is printed stands for any number of lines.
 *
 * @param file the page
 * @param lines all its lines
 * @param steps what to do, in order
 */
record GuidePage(Path file, List<String> lines, List<Step> steps) {

  private static final Pattern FENCE = Pattern.compile("```(\\w*)");
  private static final Pattern REMARK = Pattern.compile("<!-- (exit|file|printed by) (.+) -->");

  /** One thing to do. */
  sealed interface Step permits Commands, Edit, Save {
    /** Line of the page on which the block begins, counted from 1. */
    int line();
  }

  /** Commands to run, and the block with what they print, if it is shown. */
  record Commands(int line, List<String> commands, int exitCode, Optional<Block> printed)
      implements Step {}

  /** Lines to change in a file. */
  record Edit(int line, String file, List<String> diff) implements Step {}

  /** A file to write. */
  record Save(int line, String file, List<String> content) implements Step {}

  /** The lines between two fences; {@code from} and {@code to} are their places in the page. */
  record Block(String language, int from, int to, List<String> lines) {}

  static GuidePage read(Path file) throws IOException {
    List<String> lines = Files.readAllLines(file);
    List<Step> steps = new ArrayList<>();
    String remark = "";
    String told = "";
    int i = 0;
    while (i < lines.size()) {
      String line = lines.get(i);
      Matcher said = REMARK.matcher(line.strip());
      if (said.matches()) {
        remark = said.group(1);
        told = said.group(2);
      } else if (FENCE.matcher(line).matches()) {
        Block block = block(lines, i);
        Optional<Block> next = block.language.equals("sh") ? printed(lines, block.to + 1) : none();
        step(block, next, remark, told).ifPresent(steps::add);
        remark = "";
        told = "";
        i = next.map(Block::to).orElse(block.to);
      }
      i++;
    }
    return new GuidePage(file, lines, List.copyOf(steps));
  }

  private static Optional<Step> step(
      Block block, Optional<Block> printed, String remark, String told) {
    int line = block.from + 1;
    if (remark.equals("file")) {
      return Optional.of(new Save(line, told, block.lines));
    }
    if (remark.equals("printed by")) {
      return Optional.of(new Commands(line, List.of(told), 0, Optional.of(block)));
    }
    return switch (block.language) {
      case "sh" -> {
        int code = remark.equals("exit") ? Integer.parseInt(told) : 0;
        yield Optional.of(new Commands(line, joined(block.lines), code, printed));
      }
      case "diff" -> {
        String file = block.lines.get(0).replace("--- ", "").strip();
        yield Optional.of(new Edit(line, file, block.lines.subList(1, block.lines.size())));
      }
      default -> Optional.empty();
    };
  }

  private static Optional<Block> none() {
    return Optional.empty();
  }

  private static Optional<Block> printed(List<String> lines, int from) {
    int i = from;
    while (i < lines.size() && lines.get(i).isBlank()) {
      i++;
    }
    if (i < lines.size() && lines.get(i).matches("```(text|json)")) {
      return Optional.of(block(lines, i));
    }
    return Optional.empty();
  }

  private static Block block(List<String> lines, int from) {
    int to = from + 1;
    while (!lines.get(to).equals("```")) {
      to++;
    }
    return new Block(lines.get(from).substring(3), from, to, lines.subList(from + 1, to));
  }

  /** Joins lines that end with a backslash to the next. */
  private static List<String> joined(List<String> lines) {
    List<String> commands = new ArrayList<>();
    StringBuilder begun = new StringBuilder();
    for (String line : lines) {
      if (line.endsWith("\\")) {
        begun.append(line, 0, line.length() - 1);
      } else if (!line.isBlank() && !line.startsWith("#")) {
        commands.add(begun.append(line).toString());
        begun.setLength(0);
      }
    }
    return List.copyOf(commands);
  }
}
