package reseat.csv;

import reseat.units.Quantity;
import reseat.units.QuantityKind;
import reseat.units.QuantityReading;
import reseat.units.QuantityText;
import reseat.units.Unit;
import reseat.units.UnitCatalog;
import reseat.units.UnitProblem;

/**
 * The unit in the head of a column: SI value = scale times number plus offset.
 *
 * @param quantity what the column reads
 * @param unit the unit
 * @param scale SI units per unit
 * @param offset SI value of the number zero; not zero only for degrees Celsius and Fahrenheit
 * @param problem why the unit cannot be used, empty if it can
 */
public record HeadUnit(
    QuantityKind quantity, Unit unit, double scale, double offset, String problem) {

  /** No unit. */
  public static final HeadUnit NONE =
      new HeadUnit(QuantityKind.LENGTH, UnitCatalog.METRE, 1, 0, "");

  /** Beyond this, in SI, a number is no measurement. */
  public static final double LARGEST = 1e9;

  /**
   * Finds a unit.
   *
   * @param unit unit as written in the head
   * @param first what the column may hold
   * @param others what else it may hold
   * @return the unit, or one with the problem it has as the first kind
   */
  public static HeadUnit of(String unit, QuantityKind first, QuantityKind... others) {
    HeadUnit found = ofKind(unit, first);
    for (int i = 0; i < others.length && !found.problem().isEmpty(); i++) {
      HeadUnit other = ofKind(unit, others[i]);
      found = other.problem().isEmpty() ? other : found;
    }
    return found;
  }

  private static HeadUnit ofKind(String text, QuantityKind kind) {
    QuantityReading one = QuantityText.read("1 " + text, kind);
    if (one instanceof UnitProblem wrong) {
      return new HeadUnit(kind, UnitCatalog.METRE, 1, 0, explained(text, wrong));
    }
    Unit unit = ((Quantity) one).unit();
    return new HeadUnit(kind, unit, unit.scale().doubleValue(), unit.offset().doubleValue(), "");
  }

  private static String explained(String text, UnitProblem wrong) {
    boolean unknown = wrong.cause() == UnitProblem.Cause.UNKNOWN_UNIT;
    boolean hinted =
        wrong.cause() == UnitProblem.Cause.AMBIGUOUS_UNIT || wrong.advice().endsWith("?");
    return "["
        + text
        + "] "
        + (unknown ? "is not a known unit" : wrong.found())
        + (hinted ? "; " + wrong.advice() : "")
        + " (allowed: "
        + wrong.allowed()
        + ")";
  }

  /**
   * Converts a reading.
   *
   * @param value number in this unit
   * @return SI value
   */
  public double toSi(double value) {
    return scale * value + offset;
  }
}
