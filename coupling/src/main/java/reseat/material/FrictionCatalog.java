package reseat.material;

import java.util.ArrayList;
import java.util.List;

/**
 * Ranges of friction by pair of surfaces and what lies between them.
 *
 * <p>The published tables disagree by a factor of two and more for one and the same pair. The
 * ranges here span them; they are for bounds, and no substitute for a measurement.
 */
public final class FrictionCatalog {

  private static final class Standard {
    static final FrictionCatalog CATALOG = read();
  }

  private final List<FrictionPair> pairs;

  private FrictionCatalog(List<FrictionPair> pairs) {
    this.pairs = List.copyOf(pairs);
  }

  /**
   * Returns the table that ships with the program.
   *
   * @return the table
   */
  public static FrictionCatalog standard() {
    return Standard.CATALOG;
  }

  /**
   * Returns the friction between two materials.
   *
   * @param first one material
   * @param second the other
   * @param state what lies between
   * @return the range; a guess, and marked so, if the table lacks the pair
   */
  public FrictionPair between(Material first, Material second, SurfaceState state) {
    return between(first.family(), second.family(), state);
  }

  /**
   * Returns the friction between two surfaces.
   *
   * @param first a surface family of the table, such as {@code steel}, or a coating such as {@code
   *     DLC}
   * @param second the other
   * @param state what lies between
   * @return the range; a guess, and marked so, if the table lacks the pair
   */
  public FrictionPair between(String first, String second, SurfaceState state) {
    for (FrictionPair pair : pairs) {
      if (pair.state() == state && pair.isBetween(first, second)) {
        return pair;
      }
    }
    String source = "guess: no table at hand gives this pair; measure it or give your own range";
    return state == SurfaceState.DRY
        ? new FrictionPair(first, second, state, 0.15, 0.3, 0.8, Provenance.COMMON_PRACTICE, source)
        : new FrictionPair(
            first, second, state, 0.05, 0.12, 0.2, Provenance.COMMON_PRACTICE, source);
  }

  /**
   * Returns all pairs of the table.
   *
   * @return the pairs
   */
  public List<FrictionPair> pairs() {
    return pairs;
  }

  /** Row: first, second, state, low, nominal, high, mark, source. */
  private static FrictionCatalog read() {
    List<FrictionPair> pairs = new ArrayList<>();
    for (String line : TableResource.lines("friction.tsv")) {
      String[] row = TableResource.cells(line, '\t');
      pairs.add(
          new FrictionPair(
              row[0],
              row[1],
              SurfaceState.valueOf(row[2]),
              Double.parseDouble(row[3]),
              Double.parseDouble(row[4]),
              Double.parseDouble(row[5]),
              Provenance.valueOf(row[6]),
              row[7]));
    }
    return new FrictionCatalog(pairs);
  }
}
