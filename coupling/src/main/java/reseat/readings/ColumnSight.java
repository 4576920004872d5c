package reseat.readings;

import java.util.regex.Pattern;
import reseat.csv.CellNumber;

/** What the cells of a column look like, before anything is made of them. */
final class ColumnSight {

  private static final Pattern WHOLE = Pattern.compile("\\d{1,9}");

  /** Mounts from which numbers one above the other are a count and no readings. */
  private static final int ENOUGH = 3;

  private int numbers;
  private int words;
  private boolean counting = true;
  private long last = -1;

  /**
   * Looks at a cell.
   *
   * @param cell the cell, tidied
   */
  void look(String cell) {
    if (CellSplit.isNothing(cell)) {
      return;
    }
    if (!CellSplit.isNumber(cell)) {
      words++;
      return;
    }
    numbers++;
    if (!WHOLE.matcher(cell).matches() || !CellNumber.isPlain(cell)) {
      counting = false;
      return;
    }
    long now = Long.parseLong(cell);
    counting &= last < 0 ? now <= 1 : now == last + 1;
    last = now;
  }

  /**
   * Tells whether the column counts.
   *
   * @return true for whole numbers from 0 or 1, each one more than that before it
   */
  boolean counts() {
    return counting && numbers >= ENOUGH && words == 0;
  }

  /**
   * Tells whether the column holds words.
   *
   * @return true if no cell holds a number and one a word
   */
  boolean isWords() {
    return numbers == 0 && words > 0;
  }

  /**
   * Tells whether nothing stands in the column.
   *
   * @return true if no cell holds anything
   */
  boolean isEmpty() {
    return numbers + words == 0;
  }
}
