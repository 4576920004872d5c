package reseat.readings;

import reseat.readings.ColumnHead.Kind;
import reseat.readings.ReadingColumn.Quantity;
import reseat.units.QuantityKind;
import reseat.units.QuantityReading;
import reseat.units.QuantityText;
import reseat.units.UnitProblem;

/**
 * The unit in the head of a column: SI value = scale times number plus offset.
 *
 * @param quantity what a probe column reads
 * @param scale SI units per unit
 * @param offset SI value of the number zero; not zero only for degrees Celsius and Fahrenheit
 * @param problem why the unit cannot be used, empty if it can
 */
record HeadUnit(Quantity quantity, double scale, double offset, String problem) {

  /** No unit. */
  static final HeadUnit NONE = new HeadUnit(Quantity.LENGTH, 1, 0, "");

  /** Beyond this, in SI, a number is no reading of a mount. */
  static final double LARGEST = 1e9;

  /**
   * Finds a unit.
   *
   * @param unit unit as written in the head
   * @param kind what the column holds
   * @return the unit, or one with a problem
   */
  static HeadUnit of(String unit, Kind kind) {
    return switch (kind) {
      case TEMPERATURE -> of(unit, QuantityKind.TEMPERATURE, Quantity.LENGTH);
      case TIME -> of(unit, QuantityKind.TIME, Quantity.LENGTH);
      default -> {
        HeadUnit angle = of(unit, QuantityKind.ANGLE, Quantity.ANGLE);
        HeadUnit length = of(unit, QuantityKind.LENGTH, Quantity.LENGTH);
        yield length.problem().isEmpty() || !angle.problem().isEmpty() ? length : angle;
      }
    };
  }

  private static HeadUnit of(String unit, QuantityKind kind, Quantity quantity) {
    // Two numbers tell scale and offset, whatever the unit: 0 degC is 273.15 K and 1 degC 274.15 K.
    QuantityReading one = QuantityText.read("1 " + unit, kind);
    QuantityReading none = QuantityText.read("0 " + unit, kind);
    if (one instanceof UnitProblem wrong) {
      return new HeadUnit(
          quantity,
          1,
          0,
          "the unit ["
              + unit
              + "] does not do: "
              + wrong.advice()
              + " (allowed: "
              + wrong.allowed()
              + ")");
    }
    double offset = ((reseat.units.Quantity) none).value();
    return new HeadUnit(quantity, ((reseat.units.Quantity) one).value() - offset, offset, "");
  }

  /**
   * Converts a reading.
   *
   * @param value number in this unit
   * @return SI value
   */
  double toSi(double value) {
    return scale * value + offset;
  }
}
