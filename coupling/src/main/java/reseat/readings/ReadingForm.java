package reseat.readings;

import java.util.List;
import reseat.csv.DecimalMark;

/**
 * What the reader understood of a file beside its numbers: told before the result, so that a slip
 * of reading shows.
 *
 * @param delimiter what stands between cells
 * @param mark what stands before the decimals
 * @param titles lines before the head that were passed over, from 1
 * @param passedOver columns, by name, that hold words and were not read
 * @param emptyColumns probes, by name, without any reading
 * @param counter column that counts the mounts; empty if there is none
 * @param counterByLooks whether that column was known by its numbers and not by its name
 * @param unitFromElsewhere unit that stands in no head, but in a title, below the head or in an
 *     option; empty if every head has its own
 * @param takenOut mounts that the file names and that do not count
 */
public record ReadingForm(
    char delimiter,
    DecimalMark mark,
    List<Integer> titles,
    List<String> passedOver,
    List<String> emptyColumns,
    String counter,
    boolean counterByLooks,
    String unitFromElsewhere,
    List<TakenOut> takenOut) {

  /** Copies the lists. */
  public ReadingForm {
    titles = List.copyOf(titles);
    passedOver = List.copyOf(passedOver);
    emptyColumns = List.copyOf(emptyColumns);
    takenOut = List.copyOf(takenOut);
  }

  /** Why a mount does not count. */
  public enum Why {
    /** Its line starts with a hash. */
    HASH,
    /** Its row has no reading. */
    EMPTY,
    /** The numbers of the mounts leave it out. */
    NO_ROW,
    /** It is no mount but a mean or the like that a spreadsheet worked out. */
    FIGURE
  }

  /**
   * A mount that does not count.
   *
   * @param mount its number as written; empty if the file does not number mounts
   * @param line its line, from 1; 0 if it has none
   * @param why why it does not count
   */
  public record TakenOut(String mount, int line, Why why) {}
}
