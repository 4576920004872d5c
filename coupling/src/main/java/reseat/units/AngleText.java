package reseat.units;

import java.math.BigDecimal;

/**
 * Reads angles in degrees, minutes and seconds: {@code 44 deg 30 min}, {@code 44°30'15"}, {@code
 * 44d30m}.
 *
 * <p>Only the last part may have decimals; minutes and seconds stay below 60; a sign belongs to the
 * whole angle.
 */
final class AngleText {

  private static final BigDecimal SIXTY = new BigDecimal(60);

  private AngleText() {}

  /**
   * Says whether a text that starts with a number is an angle in parts.
   *
   * @param text normalised text
   * @param end index after the first number
   * @return true if a unit of degrees or minutes and then another number follow
   */
  static boolean inParts(String text, int end) {
    int next = afterUnit(text, skipSpaces(text, end));
    int digit = skipSpaces(text, next);
    return next > end && digit < text.length() && isDigitOrPoint(text.charAt(digit));
  }

  /**
   * Reads the parts.
   *
   * @param typed as typed
   * @param text normalised text
   * @param start where the first number (with its sign) begins
   * @return the angle or what is wrong
   */
  static QuantityReading read(String typed, String text, int start) {
    boolean negative = text.charAt(start) == '-';
    BigDecimal seconds = BigDecimal.ZERO;
    int rank = -1;
    int at = start;
    boolean decimals = false;
    while (at < text.length()) {
      NumberText number = NumberText.read(text, at);
      if (number.slip() != null) {
        return number.slip().in(typed, QuantityKind.ANGLE);
      }
      if (rank >= 0 && !isDigitOrPoint(text.charAt(at))) {
        return problem(typed, "has a sign within the angle", "put the sign first", at);
      }
      int unit = skipSpaces(text, number.end());
      int next = afterUnit(text, unit);
      int thisRank = rank(text.substring(unit, next), rank);
      if (thisRank < 0) {
        return problem(
            typed,
            "is no angle in degrees, minutes and seconds",
            "write \"44 deg 30 min\" or \"44.5 deg\"",
            unit);
      }
      if (thisRank <= rank || decimals) {
        return problem(
            typed,
            decimals ? "has decimals before its last part" : "has its parts out of order",
            "write whole degrees, then minutes, then seconds",
            at);
      }
      BigDecimal size = number.value().abs();
      if (rank >= 0 && size.compareTo(SIXTY) >= 0) {
        return problem(
            typed,
            "has 60 or more " + (thisRank == 1 ? "minutes" : "seconds"),
            "keep minutes and seconds below 60",
            at);
      }
      decimals = size.stripTrailingZeros().scale() > 0;
      seconds =
          seconds.add(
              size.multiply(BigDecimal.valueOf(thisRank == 0 ? 3600 : thisRank == 1 ? 60 : 1)));
      rank = thisRank;
      at = skipSpaces(text, next);
    }
    double value = UnitCatalog.ARC_SECOND.toSi(negative ? seconds.negate() : seconds);
    return Double.isFinite(value)
        ? new Quantity(value, QuantityKind.ANGLE, typed, UnitCatalog.DEGREE)
        : problem(typed, "is too large a number", "check the digits", start);
  }

  private static UnitProblem problem(String typed, String found, String advice, int offset) {
    return new UnitProblem(
        UnitProblem.Cause.ANGLE_PARTS, typed, found, QuantityKind.ANGLE.allowed(), advice, offset);
  }

  /** 0 for degrees, 1 for minutes, 2 for seconds, -1 for none of them. */
  private static int rank(String unit, int before) {
    return switch (unit) {
      case "°", "d", "deg", "degree", "degrees" -> 0;
      case "'", "min", "minute", "minutes", "arcmin" -> 1;
      case "\"", "''", "s", "sec", "second", "seconds", "arcsec" -> 2;
      case "m" -> before == 0 ? 1 : -1;
      default -> -1;
    };
  }

  private static int afterUnit(String text, int start) {
    int at = start;
    if (at < text.length() && text.charAt(at) == '°') {
      return at + 1;
    }
    while (at < text.length() && "'\"".indexOf(text.charAt(at)) >= 0) {
      at++;
    }
    if (at > start) {
      return at;
    }
    while (at < text.length() && Character.isLetter(text.charAt(at))) {
      at++;
    }
    return at;
  }

  private static boolean isDigitOrPoint(char c) {
    return (c >= '0' && c <= '9') || c == '.';
  }

  private static int skipSpaces(String text, int start) {
    int at = start;
    while (at < text.length() && text.charAt(at) == ' ') {
      at++;
    }
    return at;
  }
}
