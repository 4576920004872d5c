package reseat.readings;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import reseat.csv.CellNumber;
import reseat.csv.HeadCell;
import reseat.csv.HeadUnit;
import reseat.units.QuantityKind;

/**
 * The head of a column: what it holds, its name, and its unit in brackets of any kind or after a
 * slash, a comma or the word in.
 *
 * @param kind what the column holds
 * @param name name without the unit
 * @param unit unit as written, empty if none
 */
record ColumnHead(Kind kind, String name, String unit) {

  private static final Pattern COUNTER =
      Pattern.compile(
          "(?i)(cycle|mount|run|test|seating|reading|change)\\s*(no|nr|num|number|#)\\.?");

  /** A unit without brackets: after a slash, a comma or the word in. */
  private static final Pattern UNIT_BEHIND =
      Pattern.compile("(.*?\\S)\\s*(?:/|,|\\s(?i:in)\\s|_)\\s*([^\\s/,]+)");

  private static final Pattern FOR_ALL = Pattern.compile("(?i)^all\\s+(in\\s+)?");

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
        case "cycle", "mount", "run", "number", "no", "no.", "n", "#", "nr", "nr.", "num", "num." ->
            CYCLE;
        case "mounts", "cycles", "n\u00b0", "n\u00ba", "\u2116", "id", "index" -> CYCLE;
        case "temperature", "temp", "temp." -> TEMPERATURE;
        case "time", "elapsed" -> TIME;
        case "holder", "tool", "pallet" -> HOLDER;
        case "direction", "approach", "side" -> DIRECTION;
        case "note", "notes", "remark", "remarks", "comment", "date", "clock", "operator" -> NOTE;
        default -> COUNTER.matcher(name).matches() ? CYCLE : PROBE;
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
    HeadCell head = HeadCell.of(CellNumber.tidy(cell));
    Matcher behind = UNIT_BEHIND.matcher(head.name());
    if (head.unit().isEmpty() && behind.matches() && isUnit(behind.group(2))) {
      head = new HeadCell(behind.group(1), behind.group(2));
    }
    String unit = FOR_ALL.matcher(head.unit()).replaceFirst("");
    return new ColumnHead(Kind.of(head.name()), head.name(), unit);
  }

  /**
   * Looks for a unit that a head names for all columns.
   *
   * @param cell the cell
   * @return the unit of {@code Z (all in um)}; empty if it names none for all
   */
  static String unitForAll(String cell) {
    HeadCell head = HeadCell.of(CellNumber.tidy(cell));
    return FOR_ALL.matcher(head.unit()).find() ? of(cell).unit() : "";
  }

  private static boolean isUnit(String text) {
    return HeadUnit.of(text, QuantityKind.LENGTH, QuantityKind.ANGLE, QuantityKind.TEMPERATURE)
        .problem()
        .isEmpty();
  }

  /**
   * Takes the column for another kind than its name says.
   *
   * @param other what it holds
   * @return the head, without a unit if the kind has none
   */
  ColumnHead as(Kind other) {
    return new ColumnHead(other, name, other.hasUnit() ? unit : "");
  }

  /**
   * Gives the column a unit that does not stand in its head.
   *
   * @param other the unit
   * @return the head
   */
  ColumnHead in(String other) {
    return new ColumnHead(kind, name, other);
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
