package reseat.units;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;

/** A unit: SI value = number times scale plus offset. */
public final class Unit {

  /** Digits carried in scales and in reading; far more than a double holds. */
  static final MathContext DIGITS = new MathContext(40);

  /** Digits carried in writing: more than a double holds, and few enough for 64-bit arithmetic. */
  private static final MathContext WRITTEN_DIGITS = new MathContext(18);

  private static final BigInteger INCH = BigInteger.valueOf(254);

  /** The unit of pure numbers. */
  public static final Unit ONE = new Unit("", "", Dimension.NONE, BigDecimal.ONE, BigDecimal.ZERO);

  private final String symbol;
  private final String inFull;
  private final Dimension dimension;
  private final BigDecimal scale;
  private final BigDecimal offset;
  private final BigDecimal writtenScale;

  /**
   * Makes a unit.
   *
   * @param symbol how it is printed, for instance {@code µm}
   * @param inFull the symbol with its meaning where the trade word could mislead, for instance
   *     {@code tenth (0.0001 in)}; otherwise the symbol
   * @param dimension exponents
   * @param scale SI units per this unit, exact or to 40 digits; positive
   * @param offset SI value of the number zero; not zero only for °C and °F
   */
  Unit(String symbol, String inFull, Dimension dimension, BigDecimal scale, BigDecimal offset) {
    if (scale.signum() <= 0) {
      throw new IllegalArgumentException("the scale of unit " + symbol + " must be positive");
    }
    this.symbol = symbol;
    this.inFull = inFull;
    this.dimension = dimension;
    this.scale = scale;
    this.offset = offset;
    this.writtenScale = scale.round(WRITTEN_DIGITS);
  }

  /**
   * Returns how the unit is printed.
   *
   * @return for instance {@code µm}
   */
  public String symbol() {
    return symbol;
  }

  /**
   * Returns the symbol with its meaning where the trade word could mislead.
   *
   * @return for instance {@code tenth (0.0001 in)}
   */
  public String inFull() {
    return inFull;
  }

  /**
   * Returns what the unit measures.
   *
   * @return exponents
   */
  public Dimension dimension() {
    return dimension;
  }

  /**
   * Returns the SI units per this unit.
   *
   * @return exact or to 40 digits; positive
   */
  public BigDecimal scale() {
    return scale;
  }

  /**
   * Says whether a unit of length is an inch, a part of one or a multiple.
   *
   * @return true if its scale is a decimal multiple of 25.4 mm times a whole number
   */
  public boolean isInch() {
    BigInteger digits = scale.stripTrailingZeros().unscaledValue();
    return dimension.equals(QuantityKind.LENGTH.dimension()) && digits.mod(INCH).signum() == 0;
  }

  /**
   * Returns the SI value of the number zero.
   *
   * @return not zero only for °C and °F
   */
  public BigDecimal offset() {
    return offset;
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
    return toSi(PrintedNumber.decimal(number));
  }

  /**
   * Converts from SI.
   *
   * @param si SI value; finite
   * @return decimal number in this unit, to 18 digits
   */
  BigDecimal decimalFromSi(double si) {
    BigDecimal value = PrintedNumber.decimal(si);
    if (hasOffset()) {
      value = value.subtract(offset, DIGITS);
    }
    return writtenScale.unscaledValue().equals(BigInteger.ONE)
        ? value.scaleByPowerOfTen(writtenScale.scale()).round(WRITTEN_DIGITS)
        : value.divide(writtenScale, WRITTEN_DIGITS);
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

  @Override
  public boolean equals(Object object) {
    return object instanceof Unit other
        && symbol.equals(other.symbol)
        && dimension.equals(other.dimension)
        && scale.compareTo(other.scale) == 0
        && offset.compareTo(other.offset) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * symbol.hashCode() + dimension.hashCode();
  }

  @Override
  public String toString() {
    return inFull;
  }
}
