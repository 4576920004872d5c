package reseat.material;

import reseat.units.PrintedNumber;
import java.util.Objects;

/**
 * Coefficient of friction between two surfaces, as a range.
 *
 * <p>Friction belongs to the system (surfaces, film, load, history) and not to the material, so a
 * table is a rough guide and a single number is wrong on principle: calculate with both ends.
 *
 * @param first one surface family
 * @param second the other
 * @param state what lies between
 * @param low lower end
 * @param nominal a middle value
 * @param high upper end
 * @param provenance how far it can be trusted; {@link Provenance#COMMON_PRACTICE} marks a guess for
 *     a pair that is not in the table
 * @param source where it comes from, for a reader
 */
public record FrictionPair(
    String first,
    String second,
    SurfaceState state,
    double low,
    double nominal,
    double high,
    Provenance provenance,
    String source) {

  /** Refuses coefficients that are negative or out of order. */
  public FrictionPair {
    Objects.requireNonNull(first, "first of a friction pair must be given, found null");
    Objects.requireNonNull(second, "second of a friction pair must be given, found null");
    Objects.requireNonNull(state, "state of a friction pair must be given, found null");
    Objects.requireNonNull(provenance, "provenance of a friction pair must be given, found null");
    Objects.requireNonNull(source, "source of a friction pair must be given, found null");
    if (!(low >= 0 && low <= nominal && nominal <= high && Double.isFinite(high))) {
      throw new IllegalArgumentException(
          "coefficients of friction must be in rising order and not negative, found "
              + PrintedNumber.shortest(low)
              + ", "
              + PrintedNumber.shortest(nominal)
              + ", "
              + PrintedNumber.shortest(high));
    }
  }

  /**
   * Tells whether these are the two surfaces, in either order.
   *
   * @param one a surface family
   * @param other the other
   * @return true if this pair is between them
   */
  public boolean isBetween(String one, String other) {
    return (first.equals(one) && second.equals(other))
        || (first.equals(other) && second.equals(one));
  }
}
