package reseat.report.form;

import java.util.ArrayList;
import java.util.List;
import reseat.report.page.Page;

/**
 * A table for the screen: columns two blanks apart, the first to the left, the others to the right
 * unless said otherwise; no lines, no colours.
 */
public final class TextTable {

  private static final String MARGIN = "  ";

  /** Least room of a last column whose texts go on in a further line. */
  private static final int ROOM = 12;

  private final String sides;
  private final List<List<String>> rows = new ArrayList<>();

  /**
   * Starts a table.
   *
   * @param sides one letter per column: {@code l} for text set to the left, {@code r} for numbers
   *     set to the right
   * @param head headings of the columns
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
   * @return letters of its longest line
   */
  public int width() {
    int[] width = widths();
    int most = 0;
    for (List<String> row : rows) {
      most = Math.max(most, length(row.get(row.size() - 1)));
    }
    return start(width) + most;
  }

  /**
   * Writes the table.
   *
   * @return lines with their ends, indented by two blanks, nothing behind the last letter of a line
   */
  public String text() {
    int[] width = widths();
    StringBuilder out = new StringBuilder();
    for (List<String> row : rows) {
      if (row == rows.get(0) && row.stream().allMatch(String::isEmpty)) {
        continue; // a table without headings
      }
      StringBuilder line = new StringBuilder();
      for (int c = 0; c < width.length; c++) {
        String cell = row.get(c);
        String pad = " ".repeat(width[c] - length(cell));
        line.append(MARGIN).append(sides.charAt(c) == 'r' ? pad + cell : cell + pad);
      }
      String whole = line.toString().stripTrailing();
      int start = start(width);
      boolean wraps = sides.endsWith("l") && start < Paragraph.WIDTH - ROOM;
      out.append(wraps && length(whole) > Paragraph.WIDTH ? wrapped(whole, start) : whole + "\n");
    }
    return out.toString();
  }

  private int[] widths() {
    int[] width = new int[sides.length()];
    for (List<String> row : rows) {
      for (int c = 0; c < width.length; c++) {
        width[c] = Math.max(width[c], length(row.get(c)));
      }
    }
    return width;
  }

  /** Where the last column begins. */
  private static int start(int[] width) {
    int start = MARGIN.length();
    for (int c = 0; c < width.length - 1; c++) {
      start += width[c] + MARGIN.length();
    }
    return start;
  }

  /** Goes on below the last column with what does not fit into the line. */
  private static String wrapped(String line, int start) {
    int from = line.offsetByCodePoints(0, start);
    String rest = Paragraph.of(" ".repeat(start), line.substring(from));
    return line.substring(0, from) + rest.stripLeading();
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
        rows.get(0),
        rows.subList(1, rows.size()).stream()
            .map(cells -> new Page.Row(cells, Page.Tone.PLAIN))
            .toList());
  }

  private static int length(String cell) {
    return cell.codePointCount(0, cell.length());
  }
}
