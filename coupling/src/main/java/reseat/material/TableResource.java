package reseat.material;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads a tab-separated table that ships with the program; blank lines and # lines are skipped.
 *
 * <p>Lines and cells are cut by hand: at start-up a regular expression costs more than the rest of
 * the reading.
 */
final class TableResource {

  private TableResource() {}

  /** Returns the lines that hold data. */
  static List<String> lines(String name) {
    String text;
    try (InputStream in = TableResource.class.getResourceAsStream(name)) {
      text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    List<String> lines = new ArrayList<>(256);
    int start = 0;
    while (start < text.length()) {
      int end = text.indexOf('\n', start);
      end = end < 0 ? text.length() : end;
      if (end > start && text.charAt(start) != '#') {
        lines.add(text.substring(start, end));
      }
      start = end + 1;
    }
    return lines;
  }

  /** Cuts a line at a separator; empty cells stay. */
  static String[] cells(String line, char separator) {
    List<String> cells = new ArrayList<>(8);
    int start = 0;
    int end;
    while ((end = line.indexOf(separator, start)) >= 0) {
      cells.add(line.substring(start, end));
      start = end + 1;
    }
    cells.add(line.substring(start));
    return cells.toArray(new String[0]);
  }
}
