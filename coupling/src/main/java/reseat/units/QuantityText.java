package reseat.units;

import java.math.BigDecimal;
import java.util.Locale;

/**
 * Reads a number with its unit.
 *
 * <p>Independent of the locale; never guesses a unit; never throws on bad text.
 */
public final class QuantityText {

  private static final int LONGEST = 120;

  private QuantityText() {}

  /**
   * Reads a text.
   *
   * @param text as typed, for instance {@code 1/2 in}; null counts as empty
   * @param expected what must stand here
   * @return the quantity, or the one thing wrong with the text
   */
  public static QuantityReading read(String text, QuantityKind expected) {
    String normal = text == null ? "" : normal(text);
    if (normal.isEmpty()) {
      return problem(
          UnitProblem.Cause.EMPTY,
          text == null ? "" : text,
          expected,
          "is empty",
          "write a number and its unit",
          0);
    }
    if (text.length() > LONGEST) {
      return problem(
          UnitProblem.Cause.TOO_LONG,
          text,
          expected,
          "is too long for a quantity",
          "write one number and its unit",
          0);
    }
    int start = 0;
    while (normal.charAt(start) == ' ') {
      start++;
    }
    UnitProblem oddity = oddity(text, normal, start, expected);
    return oddity != null ? oddity : read(text, normal, start, expected);
  }

  /**
   * Reads a text that must be right, for values that do not come from a file.
   *
   * @param text as typed
   * @param expected what must stand here
   * @return the quantity
   * @throws IllegalArgumentException if the text is wrong, with the message of the problem
   */
  public static Quantity require(String text, QuantityKind expected) {
    QuantityReading reading = read(text, expected);
    if (reading instanceof UnitProblem problem) {
      throw new IllegalArgumentException(problem.message());
    }
    return (Quantity) reading;
  }

  private static QuantityReading read(
      String text, String normal, int start, QuantityKind expected) {
    NumberText number = NumberText.read(normal, start);
    if (number.slip() != null) {
      return number.slip().in(text, expected);
    }
    if (expected == QuantityKind.ANGLE && AngleText.inParts(normal, number.end())) {
      return AngleText.read(text, normal, start);
    }
    String typedNumber = normal.substring(start, number.end());
    int unitStart = number.end();
    while (unitStart < normal.length() && normal.charAt(unitStart) == ' ') {
      unitStart++;
    }
    Unit unit;
    if (unitStart == normal.length()) {
      if (expected != QuantityKind.RATIO) {
        return problem(
            UnitProblem.Cause.BARE_NUMBER,
            text,
            expected,
            "has no unit",
            "write " + expected.offer(typedNumber),
            start);
      }
      unit = Unit.ONE;
    } else {
      UnitExpression expression = UnitExpression.at(normal, unitStart, expected);
      unit = expression.read();
      if (unit == null) {
        return expression.slip().in(text, expected);
      }
    }
    return valued(text, typedNumber, number.value(), unit, unitStart, expected);
  }

  private static QuantityReading valued(
      String text,
      String typedNumber,
      BigDecimal number,
      Unit unit,
      int unitStart,
      QuantityKind expected) {
    double value = unit.toSi(number);
    if (!unit.dimension().equals(expected.dimension())) {
      return problem(
          UnitProblem.Cause.WRONG_DIMENSION,
          text,
          expected,
          "is " + QuantityKind.wordsFor(unit.dimension()) + ", not " + expected.words(),
          UnitAdvice.forWrong(typedNumber, value, unit, expected),
          unitStart);
    }
    if (Double.isInfinite(value)) {
      return problem(
          UnitProblem.Cause.TOO_LARGE,
          text,
          expected,
          "is too large a number",
          "check the digits and the unit",
          0);
    }
    boolean vanished = Math.abs(value) < Double.MIN_NORMAL && number.signum() != 0;
    if (vanished && !unit.hasOffset()) {
      return problem(
          UnitProblem.Cause.TOO_SMALL,
          text,
          expected,
          "is too small a number",
          "check the exponent; write 0 for nothing",
          0);
    }
    if (unit.hasOffset() && expected == QuantityKind.TEMPERATURE_DIFFERENCE) {
      return problem(
          UnitProblem.Cause.THERMOMETER_FOR_DIFFERENCE,
          text,
          expected,
          "is a temperature on the thermometer, not a temperature difference",
          "write the difference in kelvin: \""
              + QuantityFormat.significant(
                  number.multiply(unit.scale(), Unit.DIGITS).doubleValue(), UnitCatalog.KELVIN, 6)
              + '"',
          unitStart);
    }
    if (expected == QuantityKind.TEMPERATURE && value < 0) {
      return problem(
          UnitProblem.Cause.BELOW_ABSOLUTE_ZERO,
          text,
          expected,
          "is below absolute zero (0 K, -273.15 °C)",
          "check number and unit",
          0);
    }
    return new Quantity(value, expected, text, unit);
  }

  /** Tells texts that start with something that is often met and never a quantity. */
  private static UnitProblem oddity(String text, String normal, int start, QuantityKind expected) {
    String rest = normal.substring(start);
    String lower = rest.toLowerCase(Locale.ROOT);
    String unsigned = lower.startsWith("-") || lower.startsWith("+") ? lower.substring(1) : lower;
    if (rest.startsWith("±") || rest.startsWith("+/-") || rest.startsWith("+-")) {
      int skip = rest.startsWith("±") ? 1 : rest.startsWith("+-") ? 2 : 3;
      return problem(
          UnitProblem.Cause.PLUS_MINUS,
          text,
          expected,
          "starts with plus-minus",
          "write the half-width alone: " + QuotedText.of(rest.substring(skip).strip()),
          start);
    }
    if (unsigned.startsWith("nan") || unsigned.startsWith("inf") || unsigned.startsWith("∞")) {
      return problem(
          UnitProblem.Cause.NOT_FINITE,
          text,
          expected,
          "is not a finite number",
          "write a number in digits",
          start);
    }
    boolean metric = rest.length() > 1 && rest.charAt(0) == 'M' && isDigit(rest.charAt(1));
    boolean numbered = rest.length() > 1 && rest.charAt(0) == '#' && isDigit(rest.charAt(1));
    if (metric || numbered) {
      return problem(
          UnitProblem.Cause.THREAD,
          text,
          expected,
          "is a screw thread, not " + expected.words(),
          "write a number and its unit",
          start);
    }
    return null;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  /**
   * Replaces look-alikes one for one, so that places in the text stay, and drops blanks at the end.
   */
  private static String normal(String text) {
    char[] chars = text.toCharArray();
    int length = 0;
    for (int i = 0; i < chars.length; i++) {
      chars[i] = normal(chars[i]);
      if (chars[i] != ' ') {
        length = i + 1;
      }
    }
    return new String(chars, 0, length);
  }

  private static char normal(char c) {
    if (c < 0x7f) {
      return c == '*' ? '·' : c == '\t' || c == '\n' || c == '\r' ? ' ' : c;
    }
    return switch (c) {
      case '\u03bc' -> 'µ';
      case '\u00ba', '\u02da' -> '°';
      case '\u2032', '\u2019' -> '\'';
      case '\u2033', '\u201d' -> '"';
      case '\u2212' -> '-';
      case '\u22c5', '\u2219', '\u00d7' -> '·';
      default -> Character.isSpaceChar(c) ? ' ' : c;
    };
  }

  private static UnitProblem problem(
      UnitProblem.Cause cause,
      String text,
      QuantityKind expected,
      String found,
      String advice,
      int offset) {
    return new UnitProblem(cause, text, found, expected.allowed(), advice, offset);
  }
}
