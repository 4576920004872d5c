package reseat.check;

import reseat.units.QuantityFormat;
import reseat.units.UnitCatalog;

/**
 * Two small lengths between which a third lies, both told in one unit.
 *
 * @param least the lesser, m
 * @param most the greater, m
 */
record SmallRange(double least, double most) {

  private static final int FIGURES = 3;

  /** Writes the range, for instance {@code 13.2 to 117 µm (520 to 4610 µin)}. */
  @Override
  public String toString() {
    return QuantityFormat.significantNumber(least, UnitCatalog.UM, FIGURES)
        + " to "
        + QuantityFormat.significant(most, UnitCatalog.UM, FIGURES)
        + " ("
        + QuantityFormat.significantNumber(least, UnitCatalog.UIN, FIGURES)
        + " to "
        + QuantityFormat.significant(most, UnitCatalog.UIN, FIGURES)
        + ')';
  }
}
