package reseat.units;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * A unit: SI value = number times scale plus offset.
 *
 * @param symbol how it is printed, for instance {@code µm}
 * @param inFull the symbol with its meaning where the trade word could mislead, for instance {@code
 *     tenth (0.0001 in)}; otherwise the symbol
 * @param dimension exponents
 * @param scale SI units per this unit, exact or to 40 digits
 * @param offset SI value of the number zero; not zero only for °C and °F
 */
public record Unit(
    String symbol, String inFull, Dimension dimension, BigDecimal scale, BigDecimal offset) {

  /** Digits carried in scales and conversions; far more than a double holds. */
  static final MathContext DIGITS = new MathContext(40);

  /** The unit of pure numbers. */
  static final Unit ONE = new Unit("", "", Dimension.NONE, BigDecimal.ONE, BigDecimal.ZERO);

  /** Refuses scales that cannot be undone. */
  public Unit {
    if (scale.signum() <= 0) {
      throw new IllegalArgumentException("the scale of unit " + symbol + " must be positive");
    }
  }

  /**
   * Says whether zero of this unit is not zero in SI, as for °C and °F.
   *
   * @return true for a scale with a zero of its own
   */
  public boolean hasOffset() {
    return offset.signum() != 0;
  }

  /**
   * Converts to SI, rounding once.
   *
   * @param number in this unit
   * @return SI value; infinite if too large
   */
  double toSi(BigDecimal number) {
    BigDecimal scaled = number.multiply(scale, DIGITS);
    return (hasOffset() ? scaled.add(offset, DIGITS) : scaled).doubleValue();
  }

  /**
   * Converts to SI.
   *
   * @param number in this unit; finite
   * @return SI value
   */
  public double toSi(double number) {
    return toSi(BigDecimal.valueOf(number));
  }

  /**
   * Converts from SI.
   *
   * @param si SI value; finite
   * @return decimal number in this unit, to 40 digits
   */
  BigDecimal decimalFromSi(double si) {
    BigDecimal value = BigDecimal.valueOf(si);
    return (hasOffset() ? value.subtract(offset, DIGITS) : value).divide(scale, DIGITS);
  }

  /**
   * Converts from SI.
   *
   * @param si SI value; finite
   * @return number in this unit
   */
  public double fromSi(double si) {
    return decimalFromSi(si).doubleValue();
  }

  /**
   * Returns a product of units; degrees of temperature then count as differences.
   *
   * @param other the other unit
   * @param exponent power of the other unit, may be negative
   * @return unit without offset and without a symbol of its own
   */
  Unit times(Unit other, int exponent) {
    BigDecimal power = other.scale.pow(Math.abs(exponent), DIGITS);
    return new Unit(
        "",
        "",
        dimension.times(other.dimension.power(exponent)),
        exponent < 0 ? scale.divide(power, DIGITS) : scale.multiply(power, DIGITS),
        BigDecimal.ZERO);
  }

  /**
   * Returns the unit under another name.
   *
   * @param name how it is printed
   * @return the renamed unit
   */
  Unit named(String name) {
    return new Unit(name, name, dimension, scale, offset);
  }
}
