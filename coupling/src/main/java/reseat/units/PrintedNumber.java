package reseat.units;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * The text of a {@code double}, the same on every engine.
 *
 * <p>Everywhere the number is taken as its shortest decimal: the one with fewest digits that reads
 * back as the same double, and of those the nearest to it. What is rounded further is that decimal,
 * halves away from zero, so 81.85 to one place is 81.9. A decimal point whatever the locale.
 */
public final class PrintedNumber {

  /** As many digits as tell any two doubles apart. */
  private static final int MOST_DIGITS = 17;

  private static final int MANTISSA_BITS = 52;
  private static final long HIDDEN_BIT = 1L << MANTISSA_BITS;

  /** The step that leaves two of seventeen digits. */
  private static final long COARSEST = 1_000_000_000_000_000L;

  private static final double LOG10_OF_2 = 0.3010299956639812;

  private PrintedNumber() {}

  /**
   * Writes the shortest text that reads back as the same number.
   *
   * @param value any number
   * @return for instance {@code 0.1}, {@code 12.0} or {@code 1.0E-5}: with an exponent below 1e-3
   *     and from 1e7; {@code NaN}, {@code Infinity} and {@code -0.0} as Java calls them
   */
  public static String shortest(double value) {
    if (!(Math.abs(value) <= Double.MAX_VALUE)) {
      return notFinite(value);
    }
    String sign = negative(value) ? "-" : "";
    if (value == 0) {
      return sign + "0.0";
    }
    BigDecimal number = decimal(Math.abs(value));
    String digits = number.unscaledValue().toString();
    int exponent = digits.length() - 1 - number.scale();
    if (exponent < -3 || exponent >= 7) {
      String rest = digits.length() == 1 ? "0" : digits.substring(1);
      return sign + digits.charAt(0) + '.' + rest + 'E' + exponent;
    }
    return sign + number.setScale(Math.max(1, number.scale())).toPlainString();
  }

  /**
   * Writes a number with a fixed count of decimals.
   *
   * @param value any number
   * @param decimals digits after the point, 0 or more
   * @return for instance {@code 81.9}; a negative number that rounds to nothing keeps its sign
   */
  public static String fixed(double value, int decimals) {
    if (!(Math.abs(value) <= Double.MAX_VALUE)) {
      return notFinite(value);
    }
    String size = decimal(Math.abs(value)).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
    return negative(value) ? '-' + size : size;
  }

  /**
   * Writes a number with an exponent of at least two digits.
   *
   * @param value any number
   * @param decimals digits after the point of the mantissa, 0 or more
   * @return for instance {@code 1.3e-07}
   */
  public static String withExponent(double value, int decimals) {
    if (!(Math.abs(value) <= Double.MAX_VALUE)) {
      return notFinite(value);
    }
    String sign = negative(value) ? "-" : "";
    BigDecimal number = rounded(value, decimals + 1);
    int exponent = exponent(number);
    String mantissa =
        number.movePointLeft(exponent).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
    String size = Integer.toString(Math.abs(exponent));
    return sign + mantissa + (exponent < 0 ? "e-" : "e+") + (size.length() < 2 ? "0" : "") + size;
  }

  /**
   * Writes a number with a count of significant figures, zeros kept.
   *
   * @param value any number
   * @param figures figures, 1 or more
   * @return for instance {@code 12.7000}; with an exponent below 1e-4 and where the figures do not
   *     reach the point
   */
  public static String figures(double value, int figures) {
    if (!(Math.abs(value) <= Double.MAX_VALUE)) {
      return notFinite(value);
    }
    BigDecimal number = rounded(value, figures);
    int exponent = exponent(number);
    if (exponent < -4 || exponent >= figures) {
      return withExponent(value, figures - 1);
    }
    String size = number.setScale(figures - 1 - exponent, RoundingMode.HALF_UP).toPlainString();
    return negative(value) ? '-' + size : size;
  }

  private static BigDecimal rounded(double value, int figures) {
    return decimal(Math.abs(value)).round(new MathContext(figures, RoundingMode.HALF_UP));
  }

  /** Power of ten of the first digit; 0 of nothing. */
  private static int exponent(BigDecimal number) {
    return number.signum() == 0 ? 0 : number.precision() - number.scale() - 1;
  }

  private static boolean negative(double value) {
    return value < 0 || (value == 0 && 1 / value < 0);
  }

  private static String notFinite(double value) {
    return Double.isNaN(value) ? "NaN" : value < 0 ? "-Infinity" : "Infinity";
  }

  /**
   * Returns the shortest decimal of a number.
   *
   * @param value a finite number
   * @return the decimal, without zeros at its end; the zero of a negative zero has no sign
   * @throws IllegalArgumentException if the number is not finite
   */
  public static BigDecimal decimal(double value) {
    if (!(Math.abs(value) <= Double.MAX_VALUE)) {
      throw new IllegalArgumentException(
          "only a finite number has digits, found " + notFinite(value));
    }
    BigDecimal size = ofSize(Math.abs(value)).stripTrailingZeros();
    return value < 0 ? size.negate() : size;
  }

  /** The shortest decimal of a size. One of two digits, if nearer, stands in place of one digit. */
  private static BigDecimal ofSize(double value) {
    if (value < HIDDEN_BIT && value == (long) value) {
      // all shorter decimals are other doubles
      return BigDecimal.valueOf((long) value);
    }
    long bits = Double.doubleToRawLongBits(value);
    int power = (int) (bits >>> MANTISSA_BITS);
    long mantissa = bits & (HIDDEN_BIT - 1);
    // the double below a power of two is only half as far away as that above
    boolean lopsided = mantissa == 0 && power > 1;
    if (power > 0) {
      mantissa |= HIDDEN_BIT;
    }
    int twos = Math.max(1, power) - 1075;
    int length = 64 - Long.numberOfLeadingZeros(mantissa);
    int tens = MOST_DIGITS - 1 - (int) Math.floor((twos + length - 1) * LOG10_OF_2);
    Scaled scaled = new Scaled(mantissa, twos, tens, lopsided);
    if (scaled.steps >= 100 * COARSEST) {
      tens--;
      scaled = new Scaled(mantissa, twos, tens, lopsided);
    }
    return BigDecimal.valueOf(scaled.shortest(), tens);
  }

  /**
   * A double and the interval that reads back as it, on a scale of 17 digits.
   *
   * <p>Both are laid there exactly; then the coarsest step is taken that has a multiple in the
   * interval.
   */
  private static final class Scaled {

    /** Whole steps up to the double. */
    final long steps;

    /** Whether nothing is left beyond them, and whether half a step is: below, at, above. */
    private final boolean exact;

    private final int half;

    /** First and last whole step that read back as the double. */
    private final long first;

    private final long last;

    Scaled(long mantissa, int twos, int tens, boolean lopsided) {
      BigInteger quarter = BigInteger.TEN.pow(Math.abs(tens));
      BigInteger divisor = BigInteger.ONE;
      if (tens < 0) {
        divisor = quarter;
        quarter = BigInteger.ONE;
      }
      // in quarters of the last bit both ends of the interval are whole
      int shift = twos - 2;
      if (shift >= 0) {
        quarter = quarter.shiftLeft(shift);
      } else {
        divisor = divisor.shiftLeft(-shift);
      }
      BigInteger[] at = divided(quarter, 4 * mantissa, divisor);
      steps = at[0].longValue();
      exact = at[1].signum() == 0;
      half = at[1].shiftLeft(1).compareTo(divisor);
      // the ends read back as the double if its last bit is 0
      boolean even = (mantissa & 1) == 0;
      BigInteger[] low = divided(quarter, 4 * mantissa - (lopsided ? 1 : 2), divisor);
      first = low[0].longValue() + (low[1].signum() == 0 && even ? 0 : 1);
      BigInteger[] high = divided(quarter, 4 * mantissa + 2, divisor);
      last = high[0].longValue() - (high[1].signum() == 0 && !even ? 1 : 0);
    }

    private static BigInteger[] divided(BigInteger quarter, long times, BigInteger divisor) {
      return quarter.multiply(BigInteger.valueOf(times)).divideAndRemainder(divisor);
    }

    /** The number of steps with most zeros at its end, the nearest of them. */
    long shortest() {
      for (long step = COARSEST; step > 1; step /= 10) {
        long below = steps / step * step;
        long above = below + step;
        if (below >= first && above <= last) {
          long rest = steps - below;
          boolean odd = (below / step & 1) != 0;
          boolean up = rest > step / 2 || (rest == step / 2 && (!exact || odd));
          return up ? above : below;
        }
        if (below >= first) {
          return below;
        }
        if (above <= last) {
          return above;
        }
      }
      boolean up = half > 0 || (half == 0 && (steps & 1) != 0) || steps < first;
      return up ? steps + 1 : steps;
    }
  }
}
