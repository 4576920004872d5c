package reseat.readings;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import reseat.csv.CellNumber;

/** The cells of a line, split before anything is known of it. */
final class CellSplit {

  private static final Pattern NUMBER =
      Pattern.compile("[-+]?(\\d[\\d.,]*|[.,]\\d+)([eE][-+]?\\d+)?");

  private CellSplit() {}

  /**
   * Splits a line.
   *
   * @param text the line
   * @param delimiter what stands between cells, outside quote marks
   * @return tidied cells without quote marks, without the empty ones at the end
   */
  static List<String> of(String text, char delimiter) {
    List<String> cells = new ArrayList<>();
    boolean quoted = false;
    int start = 0;
    for (int i = 0; i <= text.length(); i++) {
      if (i == text.length() || (text.charAt(i) == delimiter && !quoted)) {
        cells.add(CellNumber.tidy(text.substring(start, i).replace('"', ' ')));
        start = i + 1;
      } else if (text.charAt(i) == '"') {
        quoted = !quoted;
      }
    }
    while (!cells.isEmpty() && cells.get(cells.size() - 1).isEmpty()) {
      cells.remove(cells.size() - 1);
    }
    return cells;
  }

  /**
   * Tells whether a cell holds a number, however its decimals are marked.
   *
   * @param cell the cell, tidied
   * @return true also where it is not plain which number
   */
  static boolean isNumber(String cell) {
    return NUMBER.matcher(cell).matches();
  }

  /**
   * Tells whether a cell stands for nothing.
   *
   * @param cell the cell, tidied
   * @return true for an empty cell, a dash and what programs write where there is nothing
   */
  static boolean isNothing(String cell) {
    return switch (cell) {
      case "", "-", ".", "--", "---", "n/a", "N/A", "#N/A", "NA", "NaN", "nan", "null", "NULL" ->
          true;
      default -> false;
    };
  }
}
