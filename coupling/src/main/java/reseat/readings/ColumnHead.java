package reseat.readings;

import java.util.Locale;
import reseat.csv.HeadCell;

/**
 * The head of a column: what it holds, its name, and its unit in square or round brackets.
 *
 * @param kind what the column holds
 * @param name name without the unit
 * @param unit unit as written, empty if none
 */
record ColumnHead(Kind kind, String name, String unit) {

  /** What a column holds. */
  enum Kind {
    /** Number of the mount. */
    CYCLE,
    /** Temperature. */
    TEMPERATURE,
    /** Time since some start. */
    TIME,
    /** Name or number of the holder. */
    HOLDER,
    /** Direction of approach. */
    DIRECTION,
    /** Text that is passed over. */
    NOTE,
    /** Readings of a probe: any other name. */
    PROBE;

    /**
     * Finds the kind of a column by its name.
     *
     * @param name name without the unit
     * @return the kind; a probe if the name is none of the others
     */
    static Kind of(String name) {
      return switch (name.toLowerCase(Locale.ROOT)) {
        case "cycle", "mount", "run", "number", "no", "no.", "n", "#" -> CYCLE;
        case "temperature", "temp", "temp." -> TEMPERATURE;
        case "time", "elapsed" -> TIME;
        case "holder", "tool", "pallet" -> HOLDER;
        case "direction", "approach", "side" -> DIRECTION;
        case "note", "notes", "remark", "remarks", "comment", "date", "clock", "operator" -> NOTE;
        default -> PROBE;
      };
    }

    /**
     * Tells whether the column holds numbers with a unit.
     *
     * @return true for probes, temperature and time
     */
    boolean hasUnit() {
      return this == PROBE || this == TEMPERATURE || this == TIME;
    }
  }

  /**
   * Reads a head.
   *
   * @param cell the cell
   * @return the head; the name may be empty
   */
  static ColumnHead of(String cell) {
    HeadCell head = HeadCell.of(cell);
    return new ColumnHead(Kind.of(head.name()), head.name(), head.unit());
  }

  /**
   * Returns an example of how the head should be written.
   *
   * @return for instance {@code X [um]}
   */
  String example() {
    return switch (kind) {
      case TEMPERATURE -> name + " [degC]";
      case TIME -> name + " [s]";
      default -> (name.isEmpty() ? "X" : name) + " [um]";
    };
  }
}
