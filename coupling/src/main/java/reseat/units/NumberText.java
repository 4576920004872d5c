package reseat.units;

import java.math.BigDecimal;

/**
 * Reads the number at the start of a quantity: {@code 12.7}, {@code .5}, {@code 1e-3}, {@code 1/2},
 * {@code 1 1/2}, {@code 1-1/2}, with or without a sign.
 *
 * <p>Only the digits 0 to 9, a point and e or E count, whatever the locale.
 */
final class NumberText {

  /** Exponents beyond this overflow or vanish with every unit in the catalog. */
  private static final int LARGEST_EXPONENT = 400;

  private final String text;
  private int at;
  private BigDecimal value;
  private QuantityMistake slip;

  private NumberText(String text, int start) {
    this.text = text;
    this.at = start;
  }

  /**
   * Reads a number.
   *
   * @param text normalised text
   * @param start where the number should begin
   * @return what was found; {@link #slip()} is null if it is a number
   */
  static NumberText read(String text, int start) {
    NumberText number = new NumberText(text, start);
    number.read();
    return number;
  }

  /** What is wrong, or null. */
  QuantityMistake slip() {
    return slip;
  }

  /** The number; null after a mistake. */
  BigDecimal value() {
    return value;
  }

  /** Index after the number. */
  int end() {
    return at;
  }

  private void read() {
    int sign = 1;
    if (at < text.length() && (text.charAt(at) == '-' || text.charAt(at) == '+')) {
      sign = text.charAt(at) == '-' ? -1 : 1;
      at++;
      skipSpaces();
    }
    int start = at;
    skipDigits();
    boolean whole = at > start;
    if (whole && at < text.length() && text.charAt(at) == '/' && digitAt(at + 1)) {
      at = start;
      value = fraction();
    } else if (whole && mixedFollows()) {
      value = mixed(start);
    } else {
      value = decimal(start);
    }
    if (slip == null && at < text.length()) {
      slip = NumberMistakes.look(text, start, at);
    }
    if (slip != null) {
      value = null;
    } else if (sign < 0) {
      value = value.negate();
    }
  }

  private BigDecimal decimal(int start) {
    at = start;
    skipDigits();
    int digits = at - start;
    if (at < text.length() && text.charAt(at) == '.' && (digits > 0 || digitAt(at + 1))) {
      at++;
      int point = at;
      skipDigits();
      digits += at - point;
    }
    if (digits == 0) {
      return refuse(
          UnitProblem.Cause.NO_NUMBER,
          start,
          "does not start with a number",
          "write the number in digits, then the unit");
    }
    String mantissa = text.substring(start, at);
    if (at < text.length() && (text.charAt(at) == 'e' || text.charAt(at) == 'E')) {
      int sign = at + 1 < text.length() && "+-".indexOf(text.charAt(at + 1)) >= 0 ? 1 : 0;
      if (digitAt(at + 1 + sign)) {
        int exponentStart = at + 1;
        at += 1 + sign;
        skipDigits();
        return withExponent(mantissa, exponentStart);
      }
    }
    return new BigDecimal(mantissa);
  }

  private BigDecimal withExponent(String mantissa, int exponentStart) {
    BigDecimal number = new BigDecimal(mantissa);
    boolean negative = text.charAt(exponentStart) == '-';
    int exponent = 0;
    for (int i = exponentStart; i < at; i++) {
      int digit = text.charAt(i) - '0';
      if (digit >= 0 && digit <= 9 && exponent <= LARGEST_EXPONENT) {
        exponent = 10 * exponent + digit;
      }
    }
    if (exponent > LARGEST_EXPONENT && number.signum() != 0) {
      return negative
          ? refuse(
              UnitProblem.Cause.TOO_SMALL,
              exponentStart,
              "is too small a number",
              "check the exponent; write 0 for nothing")
          : refuse(
              UnitProblem.Cause.TOO_LARGE,
              exponentStart,
              "is too large a number",
              "check the exponent");
    }
    int bounded = Math.min(exponent, LARGEST_EXPONENT);
    return number.scaleByPowerOfTen(negative ? -bounded : bounded);
  }

  private boolean mixedFollows() {
    int next = at;
    if (next < text.length() && text.charAt(next) == '-') {
      next++;
    } else {
      while (next < text.length() && text.charAt(next) == ' ') {
        next++;
      }
      if (next == at) {
        return false;
      }
    }
    int numerator = next;
    while (digitAt(next)) {
      next++;
    }
    return next > numerator
        && next < text.length()
        && text.charAt(next) == '/'
        && digitAt(next + 1);
  }

  private BigDecimal mixed(int start) {
    BigDecimal wholes = new BigDecimal(text.substring(start, at));
    at++;
    skipSpaces();
    int fractionStart = at;
    BigDecimal part = fraction();
    if (slip == null && part.compareTo(BigDecimal.ONE) >= 0) {
      return refuse(
          UnitProblem.Cause.FRACTION,
          fractionStart,
          "adds a fraction of one or more to a whole number",
          "write 1 1/2 for one and a half");
    }
    return slip == null ? wholes.add(part) : null;
  }

  private BigDecimal fraction() {
    int start = at;
    skipDigits();
    BigDecimal numerator = new BigDecimal(text.substring(start, at));
    int slash = at;
    at++;
    skipDigits();
    BigDecimal denominator = new BigDecimal(text.substring(slash + 1, at));
    if (denominator.signum() == 0) {
      return refuse(
          UnitProblem.Cause.FRACTION, slash, "divides by zero", "write a fraction such as 1/2");
    }
    if (at < text.length() && (text.charAt(at) == '.' || text.charAt(at) == '/')) {
      return refuse(NumberMistakes.brokenFraction(slash));
    }
    return numerator.divide(denominator, Unit.DIGITS);
  }

  private BigDecimal refuse(UnitProblem.Cause cause, int where, String what, String instead) {
    return refuse(new QuantityMistake(cause, what, instead, where));
  }

  private BigDecimal refuse(QuantityMistake what) {
    slip = what;
    return null;
  }

  private boolean digitAt(int index) {
    return index < text.length() && text.charAt(index) >= '0' && text.charAt(index) <= '9';
  }

  private void skipDigits() {
    while (digitAt(at)) {
      at++;
    }
  }

  private void skipSpaces() {
    while (at < text.length() && text.charAt(at) == ' ') {
      at++;
    }
  }
}
