package reseat.units;

/**
 * A value read from a text.
 *
 * @param value in SI units (angles in rad, temperatures in K); finite
 * @param kind what was expected and found
 * @param text as typed
 * @param unit the unit that was understood
 */
public record Quantity(double value, QuantityKind kind, String text, Unit unit)
    implements QuantityReading {

  /** Refuses values that are no numbers. */
  public Quantity {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(
          kind.words() + " must be finite, found " + PrintedNumber.shortest(value));
    }
  }
}
