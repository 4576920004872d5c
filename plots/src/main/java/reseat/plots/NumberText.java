package reseat.plots;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import reseat.units.FilledText;

/** Numbers as people read them: no more digits than the model deserves, never in exponents. */
public final class NumberText {

  /** A space that keeps a number and its unit on one line. */
  private static final String UNIT_GAP = "\u00a0";

  private NumberText() {}

  /**
   * Writes a number with a count of significant digits, trailing zeros dropped.
   *
   * @param value the number, finite
   * @param digits significant digits, 1 or more
   * @return for instance {@code 12.7}; negative numbers with a true minus sign
   */
  public static String significant(double value, int digits) {
    if (value == 0) {
      return "0";
    }
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(digits, RoundingMode.HALF_UP));
    return plain(rounded);
  }

  /**
   * Writes a number with a count of decimals, zeros kept.
   *
   * @param value the number, finite
   * @param decimals decimals, 0 or more
   * @return for instance {@code 2.750}; negative numbers with a true minus sign
   */
  public static String decimals(double value, int decimals) {
    String s = FilledText.of("%." + decimals + "f", value);
    if (s.startsWith("-")) {
      String size = s.substring(1);
      return size.chars().allMatch(c -> c == '0' || c == '.') ? size : "\u2212" + size;
    }
    return s;
  }

  /**
   * Writes a number along an axis: as it is, without the dust of binary fractions.
   *
   * @param value the number, finite
   * @return at most nine significant digits
   */
  public static String tick(double value) {
    return Math.abs(value) < 1e-12 ? "0" : significant(value, 9);
  }

  /**
   * Writes a number with its unit.
   *
   * @param value the number in that unit, finite
   * @param digits significant digits, 1 or more
   * @param unit the unit
   * @return number and unit on one line
   */
  public static String with(double value, int digits, String unit) {
    return significant(value, digits) + UNIT_GAP + unit;
  }

  /**
   * Writes a force.
   *
   * @param newtons N
   * @return three significant digits with the unit
   */
  public static String force(double newtons) {
    return Math.abs(newtons) >= 10e3
        ? significant(newtons / 1e3, 3) + UNIT_GAP + "kN"
        : significant(newtons, 3) + UNIT_GAP + "N";
  }

  /**
   * Writes a length of a part in mm, with inches beside it.
   *
   * @param metres m
   * @return for instance {@code 69.85 mm (2.7500 in)}
   */
  public static String length(double metres) {
    return significant(1e3 * metres, 5)
        + UNIT_GAP
        + "mm ("
        + decimals(metres / 0.0254, 4)
        + UNIT_GAP
        + "in)";
  }

  private static String plain(BigDecimal value) {
    String s = value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    return s.startsWith("-") ? "\u2212" + s.substring(1) : s;
  }
}
