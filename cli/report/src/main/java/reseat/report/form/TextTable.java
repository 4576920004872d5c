package reseat.report.form;

import java.util.ArrayList;
import java.util.List;
import reseat.report.page.Page;

/**
 * A table for the screen: columns two blanks apart, texts to the left, numbers to the right; no
 * lines, no colours. Where it is wider than the screen its headings and then its texts go on in a
 * further line.
 */
public final class TextTable {

  private static final String MARGIN = "  ";

  /** Least room of a column whose texts go on in a further line. */
  private static final int ROOM = 12;

  /** Room of the last column below which other columns of text give of theirs. */
  private static final int COMFORT = 28;

  /** Most lines of a heading. */
  private static final int HEAD_LINES = 3;

  private final String sides;
  private final List<List<String>> rows = new ArrayList<>();

  /**
   * Starts a table.
   *
   * @param sides one letter per column: {@code l} for text set to the left, {@code r} for numbers
   *     set to the right
   * @param head headings of the columns; one with line ends in it has the lines that it says
   */
  public TextTable(String sides, String... head) {
    this.sides = sides;
    row(head);
  }

  /**
   * Adds a row.
   *
   * @param cells one text per column
   * @return this table
   */
  public TextTable row(String... cells) {
    if (cells.length != sides.length()) {
      throw new IllegalArgumentException(
          "a row of " + sides.length() + " cells is wanted, found " + cells.length);
    }
    rows.add(List.of(cells));
    return this;
  }

  /**
   * Measures the table.
   *
   * @return letters of its longest line if none of its texts goes on in a further line
   */
  public int width() {
    return total(widths(heads()));
  }

  /**
   * Writes the table.
   *
   * @return lines with their ends, indented by two blanks, nothing behind the last letter of a line
   */
  public String text() {
    List<List<String>> heads = heads();
    int[] width = narrowed(widths(heads));
    StringBuilder out = new StringBuilder();
    if (!rows.get(0).stream().allMatch(String::isEmpty)) {
      int most = heads.stream().mapToInt(List::size).max().orElse(1);
      for (int l = 0; l < most; l++) {
        List<String> line = new ArrayList<>();
        for (List<String> head : heads) {
          int from = l - (most - head.size()); // headings stand on the numbers
          line.add(from < 0 ? "" : head.get(from));
        }
        line(line, width, out);
      }
    }
    for (List<String> row : rows.subList(1, rows.size())) {
      List<List<String>> cells = new ArrayList<>();
      int most = 1;
      for (int c = 0; c < width.length; c++) {
        cells.add(broken(row.get(c), width[c]));
        most = Math.max(most, cells.get(c).size());
      }
      for (int l = 0; l < most; l++) {
        List<String> line = new ArrayList<>();
        for (List<String> cell : cells) {
          line.add(l < cell.size() ? cell.get(l) : "");
        }
        line(line, width, out);
      }
    }
    return out.toString();
  }

  private void line(List<String> cells, int[] width, StringBuilder out) {
    StringBuilder line = new StringBuilder();
    for (int c = 0; c < width.length; c++) {
      String cell = cells.get(c);
      String pad = " ".repeat(Math.max(0, width[c] - length(cell)));
      line.append(MARGIN).append(sides.charAt(c) == 'r' ? pad + cell : cell + pad);
    }
    out.append(line.toString().stripTrailing()).append('\n');
  }

  /** Headings in as few lines each as lets the table fit; at most {@value #HEAD_LINES}. */
  private List<List<String>> heads() {
    List<List<String>> heads = List.of();
    for (int most = 1; most <= HEAD_LINES; most++) {
      heads = new ArrayList<>();
      for (int c = 0; c < sides.length(); c++) {
        heads.add(head(c, most));
      }
      if (total(widths(heads)) <= Paragraph.WIDTH) {
        break;
      }
    }
    return heads;
  }

  /** A heading no wider than its column's cells if so many lines allow it. */
  private List<String> head(int column, int most) {
    String head = rows.get(0).get(column);
    if (head.contains("\n")) {
      return head.lines().toList();
    }
    int width = 1;
    for (List<String> row : rows.subList(1, rows.size())) {
      width = Math.max(width, length(row.get(column)));
    }
    List<String> lines = broken(head, width);
    while (lines.size() > most) {
      width++;
      lines = broken(head, width);
    }
    return lines;
  }

  private int[] widths(List<List<String>> heads) {
    int[] width = new int[sides.length()];
    for (int c = 0; c < width.length; c++) {
      for (String line : heads.get(c)) {
        width[c] = Math.max(width[c], length(line));
      }
      for (List<String> row : rows.subList(1, rows.size())) {
        width[c] = Math.max(width[c], length(row.get(c)));
      }
    }
    return width;
  }

  /** Takes from columns of text what is too much: first from the last, then from the widest. */
  private int[] narrowed(int[] natural) {
    int[] width = natural.clone();
    int last = width.length - 1;
    for (int over = total(width) - Paragraph.WIDTH; over > 0; over--) {
      int from = -1;
      for (int c = 0; c <= last; c++) {
        if (sides.charAt(c) == 'l'
            && width[c] > Math.max(ROOM, longestWord(c))
            && (from < 0 || width[c] >= width[from])) {
          from = c;
        }
      }
      if (sides.charAt(last) == 'l' && width[last] > Math.max(COMFORT, longestWord(last))) {
        from = last;
      }
      if (from < 0) {
        break;
      }
      width[from]--;
    }
    return width;
  }

  private int longestWord(int column) {
    int most = 0;
    for (List<String> row : rows) {
      for (String word : row.get(column).split("[ \n]", -1)) {
        most = Math.max(most, length(word));
      }
    }
    return most;
  }

  private static int total(int[] width) {
    int total = 0;
    for (int w : width) {
      total += MARGIN.length() + w;
    }
    return total;
  }

  /** Breaks a cell between words; one word alone may be wider. */
  private static List<String> broken(String cell, int width) {
    if (length(cell) <= width) {
      return List.of(cell);
    }
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : cell.split(" ", -1)) {
      if (!line.isEmpty() && length(line) + 1 + length(word) > width) {
        lines.add(line);
        line = word;
      } else {
        line = line.isEmpty() ? word : line + " " + word;
      }
    }
    lines.add(line);
    return lines;
  }

  /**
   * Sets the same table for a page.
   *
   * @param caption what it holds
   * @return its head and rows
   */
  public Page.Table forPage(String caption) {
    return new Page.Table(
        caption,
        rows.get(0).stream().map(h -> h.replace("-\n", "-").replace('\n', ' ').strip()).toList(),
        rows.subList(1, rows.size()).stream()
            .map(cells -> new Page.Row(cells, Page.Tone.PLAIN))
            .toList());
  }

  private static int length(String cell) {
    return cell.codePointCount(0, cell.length());
  }
}
