package reseat.units;

import java.math.BigDecimal;

/**
 * Reads the number at the start of a quantity: {@code 12.7}, {@code .5}, {@code 1e-3}, {@code 1/2},
 * {@code 1 1/2}, {@code 1-1/2}, with or without a sign.
 *
 * <p>Only the digits 0 to 9, a point and e or E count, whatever the locale. What follows a number
 * and can only be a mistake (a comma, grouped digits, a hyphen and more digits) is told apart here
 * as well, because by then the reader knows what the number was.
 */
final class NumberText {

  /** Exponents beyond this overflow or vanish with every unit in the catalog. */
  private static final int LARGEST_EXPONENT = 400;

  private final String text;
  private int at;
  private BigDecimal value;
  private UnitProblem.Cause mistake;
  private String found = "";
  private String advice = "";

  private NumberText(String text, int start) {
    this.text = text;
    this.at = start;
  }

  /**
   * Reads a number.
   *
   * @param text normalised text
   * @param start where the number should begin
   * @return what was found; {@link #mistake()} is null if it is a number
   */
  static NumberText read(String text, int start) {
    NumberText number = new NumberText(text, start);
    number.read();
    return number;
  }

  /** What is wrong, or null. */
  UnitProblem.Cause mistake() {
    return mistake;
  }

  /** What is wrong in words. */
  String found() {
    return found;
  }

  /** What to write instead, in words. */
  String advice() {
    return advice;
  }

  /** The number; null after a mistake. */
  BigDecimal value() {
    return value;
  }

  /** Index after the number, or where the mistake begins. */
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
    if (mistake == null) {
      lookBehind(start);
    }
    if (mistake == null && sign < 0) {
      value = value.negate();
    }
    if (mistake != null) {
      value = null;
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
    return new BigDecimal(mantissa.charAt(0) == '.' ? '0' + mantissa : mantissa);
  }

  private BigDecimal withExponent(String mantissa, int exponentStart) {
    BigDecimal number = new BigDecimal(mantissa.charAt(0) == '.' ? '0' + mantissa : mantissa);
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
    if (mistake == null && part.compareTo(BigDecimal.ONE) >= 0) {
      return refuse(
          UnitProblem.Cause.FRACTION,
          fractionStart,
          "adds a fraction of one or more to a whole number",
          "write 1 1/2 for one and a half");
    }
    return mistake == null ? wholes.add(part) : null;
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
      return refuse(
          UnitProblem.Cause.FRACTION,
          slash,
          "is a fraction that is not of two whole numbers",
          "write a fraction as 1/2 or 1 1/2, or a decimal as 0.5");
    }
    return numerator.divide(denominator, Unit.DIGITS);
  }

  /** Tells mistakes that show only right after the number. */
  private void lookBehind(int start) {
    if (at == text.length()) {
      return;
    }
    char c = text.charAt(at);
    if (c == ',') {
      comma(start);
    } else if (c == '_' && digitAt(at + 1)) {
      thousands(at);
    } else if (c == '.' && digitAt(at + 1)) {
      String all = text.substring(start, at);
      if (all.indexOf('.') >= 0 && text.indexOf(',', at) > 0) {
        decimalComma(text.indexOf(',', at), all.replace(".", ""));
      } else {
        thousands(at);
      }
    } else if (c == '\'' && threeDigitsAt(at + 1)) {
      thousands(at);
    } else if (c == ' ') {
      int next = at;
      while (next < text.length() && text.charAt(next) == ' ') {
        next++;
      }
      if (threeDigitsAt(next)) {
        thousands(at);
      } else if (next < text.length() && text.charAt(next) == '/' && digitAt(next + 1)) {
        fractionMark(next);
      }
    } else if (c == '/' && (digitAt(at + 1) || (text.startsWith(" ", at + 1) && digitAt(at + 2)))) {
      fractionMark(at);
    } else if (c == '-' && digitAt(at + 1)) {
      refuse(
          UnitProblem.Cause.SEVERAL_NUMBERS,
          at,
          "is a range or a thread, not one quantity",
          "write one number and its unit");
    }
  }

  private void fractionMark(int slash) {
    refuse(
        UnitProblem.Cause.FRACTION,
        slash,
        "is a fraction that is not of two whole numbers",
        "write a fraction as 1/2 or 1 1/2, or a decimal as 0.5");
  }

  private void comma(int start) {
    String before = text.substring(start, at);
    int next = at + 1;
    int end = next;
    while (digitAt(end)) {
      end++;
    }
    boolean more = end < text.length() && (text.charAt(end) == ',' || text.charAt(end) == '.');
    if (end - next == 3 && more && before.indexOf('.') < 0) {
      thousands(at);
    } else if (end - next == 3 && before.length() <= 3 && !before.startsWith("0")) {
      refuse(
          UnitProblem.Cause.THOUSANDS,
          at,
          "has a comma that may group thousands or start a decimal fraction",
          "write "
              + before
              + text.substring(next, end)
              + " or "
              + before
              + '.'
              + text.substring(next, end));
    } else if (end > next) {
      decimalComma(at, before.replace(".", ""));
    } else {
      refuse(UnitProblem.Cause.DECIMAL_COMMA, at, "has a comma", "write one number and its unit");
    }
  }

  private void decimalComma(int comma, String before) {
    int end = comma + 1;
    while (digitAt(end)) {
      end++;
    }
    refuse(
        UnitProblem.Cause.DECIMAL_COMMA,
        comma,
        "has a decimal comma",
        "write a point: " + before + '.' + text.substring(comma + 1, end));
  }

  private void thousands(int where) {
    refuse(
        UnitProblem.Cause.THOUSANDS,
        where,
        "has grouped digits",
        "write the digits without separators, decimals after a point");
  }

  private BigDecimal refuse(UnitProblem.Cause cause, int where, String what, String instead) {
    mistake = cause;
    found = what;
    advice = instead;
    at = where;
    return null;
  }

  private boolean threeDigitsAt(int index) {
    return digitAt(index)
        && digitAt(index + 1)
        && digitAt(index + 2)
        && !digitAt(index + 3)
        && !(index + 3 < text.length() && "°/".indexOf(text.charAt(index + 3)) >= 0);
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
