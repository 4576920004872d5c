package reseat.numerics;

import reseat.units.FilledText;

/**
 * Refuses numbers outside the range in which a quantity means anything; the refusal names the
 * quantity, the value with its unit and the limit.
 */
public final class Bounds {

  private Bounds() {}

  /**
   * Requires a positive, finite number.
   *
   * @param quantity name of the quantity, as it should read in the message
   * @param value the value, in {@code unit}
   * @param unit unit to print, may be empty
   * @return the value
   */
  public static double positive(String quantity, double value, String unit) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw refusal(quantity, value, unit, "positive and finite");
    }
    return value;
  }

  /**
   * Requires a finite number that is not negative.
   *
   * @param quantity name of the quantity
   * @param value the value, in {@code unit}
   * @param unit unit to print, may be empty
   * @return the value
   */
  public static double notNegative(String quantity, double value, String unit) {
    if (!(value >= 0) || Double.isInfinite(value)) {
      throw refusal(quantity, value, unit, "zero or positive, and finite");
    }
    return value;
  }

  /**
   * Requires a number strictly between two limits.
   *
   * @param quantity name of the quantity
   * @param value the value, in {@code unit}
   * @param unit unit to print, may be empty
   * @param low limit the value must exceed
   * @param high limit the value must stay below
   * @return the value
   */
  public static double between(
      String quantity, double value, String unit, double low, double high) {
    if (!(value > low && value < high)) {
      throw refusal(
          quantity, value, unit, FilledText.of("between %.6g and %.6g", low, high) + spaced(unit));
    }
    return value;
  }

  /**
   * Requires a number from a limit, itself allowed, up to and not including another.
   *
   * @param quantity name of the quantity
   * @param value the value, in {@code unit}
   * @param unit unit to print, may be empty
   * @param low least value allowed
   * @param high limit the value must stay below
   * @return the value
   */
  public static double fromUpTo(
      String quantity, double value, String unit, double low, double high) {
    if (!(value >= low && value < high)) {
      throw refusal(
          quantity,
          value,
          unit,
          FilledText.of("at least %.6g and below %.6g", low, high) + spaced(unit));
    }
    return value;
  }

  private static IllegalArgumentException refusal(
      String quantity, double value, String unit, String limit) {
    return new IllegalArgumentException(
        quantity + " is " + FilledText.of("%.6g", value) + spaced(unit) + ": it must be " + limit);
  }

  private static String spaced(String unit) {
    return unit.isEmpty() ? "" : " " + unit;
  }
}
