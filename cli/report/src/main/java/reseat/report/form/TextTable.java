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
    int most = 0;
    for (String line : text().split("\n", -1)) {
      most = Math.max(most, length(line));
    }
    return most;
  }

  /**
   * Writes the table.
   *
   * @return lines with their ends, indented by two blanks, nothing behind the last letter of a line
   */
  public String text() {
    int[] width = new int[sides.length()];
    for (List<String> row : rows) {
      for (int c = 0; c < width.length; c++) {
        width[c] = Math.max(width[c], length(row.get(c)));
      }
    }
    StringBuilder out = new StringBuilder();
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder();
      for (int c = 0; c < width.length; c++) {
        String cell = row.get(c);
        String pad = " ".repeat(width[c] - length(cell));
        line.append(MARGIN).append(sides.charAt(c) == 'r' ? pad + cell : cell + pad);
      }
      out.append(line.toString().stripTrailing()).append('\n');
    }
    return out.toString();
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
