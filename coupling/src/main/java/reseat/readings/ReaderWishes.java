package reseat.readings;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import reseat.csv.DecimalMark;

/**
 * What the reader of a file of readings is told because the file itself leaves it open.
 *
 * @param mark what stands before the decimals; empty to find it in the file
 * @param units unit of each probe by its name in lower case, of every probe of lengths under the
 *     empty name; counts only where the file names none
 */
public record ReaderWishes(Optional<DecimalMark> mark, Map<String, String> units) {

  /** The file says everything. */
  public static final ReaderWishes NONE = new ReaderWishes(Optional.empty(), Map.of());

  /** Copies the units. */
  public ReaderWishes {
    units = Map.copyOf(units);
  }

  /**
   * Returns the unit that is wished for a probe.
   *
   * @param name its name
   * @return unit as typed; empty if none
   */
  String unitOf(String name) {
    String own = units.get(name.toLowerCase(Locale.ROOT));
    return own == null ? units.getOrDefault("", "") : own;
  }
}
