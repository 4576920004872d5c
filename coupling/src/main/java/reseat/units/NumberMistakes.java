package reseat.units;

/**
 * Tells mistakes that show only right after a number: a comma, grouped digits, a range, a fraction
 * that is none.
 */
final class NumberMistakes {

  private final String text;
  private final int start;
  private final int at;

  private NumberMistakes(String text, int start, int end) {
    this.text = text;
    this.start = start;
    this.at = end;
  }

  /**
   * Looks at what follows a number.
   *
   * @param text normalised text
   * @param start where the digits begin
   * @param end index after the number; before the end of the text
   * @return the mistake, or null if a unit may follow
   */
  static QuantityMistake look(String text, int start, int end) {
    return new NumberMistakes(text, start, end).look();
  }

  /** A fraction with decimals, two slashes or blanks. */
  static QuantityMistake brokenFraction(int slash) {
    return new QuantityMistake(
        UnitProblem.Cause.FRACTION,
        "is a fraction that is not of two whole numbers",
        "write a fraction as 1/2 or 1 1/2, or a decimal as 0.5",
        slash);
  }

  private QuantityMistake look() {
    return switch (text.charAt(at)) {
      case ',' -> comma();
      case '_' -> digitAt(at + 1) ? thousands() : null;
      case '.' -> digitAt(at + 1) ? secondPoint() : null;
      case '\'' -> threeDigitsAt(at + 1) ? thousands() : null;
      case ' ' -> space();
      case '/' -> digitAt(skipSpaces(at + 1)) ? brokenFraction(at) : null;
      case '-' -> digitAt(at + 1) ? range() : null;
      default -> null;
    };
  }

  private QuantityMistake space() {
    int next = skipSpaces(at);
    if (threeDigitsAt(next)) {
      return thousands();
    }
    boolean slash = text.charAt(next) == '/' && digitAt(skipSpaces(next + 1));
    return slash ? brokenFraction(next) : null;
  }

  private QuantityMistake secondPoint() {
    int comma = text.indexOf(',', at);
    boolean pointsGroup = text.substring(start, at).indexOf('.') >= 0 && comma > 0;
    return pointsGroup
        ? decimalComma(comma, text.substring(start, comma).replace(".", ""))
        : thousands();
  }

  private QuantityMistake comma() {
    String before = text.substring(start, at);
    int end = at + 1;
    while (digitAt(end)) {
      end++;
    }
    String after = text.substring(at + 1, end);
    boolean point = before.indexOf('.') >= 0;
    boolean more = end < text.length() && (text.charAt(end) == ',' || text.charAt(end) == '.');
    if (after.length() == 3 && more && !point) {
      return thousands();
    }
    if (after.length() == 3 && !point && before.length() <= 3 && !before.startsWith("0")) {
      return new QuantityMistake(
          UnitProblem.Cause.THOUSANDS,
          "has a comma that may group thousands or start a decimal fraction",
          "write " + before + after + " or " + before + '.' + after,
          at);
    }
    if (!after.isEmpty()) {
      return decimalComma(at, before.replace(".", ""));
    }
    return new QuantityMistake(
        UnitProblem.Cause.DECIMAL_COMMA, "has a comma", "write one number and its unit", at);
  }

  private QuantityMistake decimalComma(int comma, String before) {
    int end = comma + 1;
    while (digitAt(end)) {
      end++;
    }
    return new QuantityMistake(
        UnitProblem.Cause.DECIMAL_COMMA,
        "has a decimal comma",
        "write a point: " + before + '.' + text.substring(comma + 1, end),
        comma);
  }

  private QuantityMistake thousands() {
    return new QuantityMistake(
        UnitProblem.Cause.THOUSANDS,
        "has grouped digits",
        "write the digits without separators, decimals after a point",
        at);
  }

  private QuantityMistake range() {
    return new QuantityMistake(
        UnitProblem.Cause.SEVERAL_NUMBERS,
        "is a range or a thread, not one quantity",
        "write one number and its unit",
        at);
  }

  /** Exactly three digits that are no degrees and no numerator. */
  private boolean threeDigitsAt(int index) {
    return digitAt(index)
        && digitAt(index + 1)
        && digitAt(index + 2)
        && !digitAt(index + 3)
        && !(index + 3 < text.length() && "°/".indexOf(text.charAt(index + 3)) >= 0);
  }

  private int skipSpaces(int index) {
    int next = index;
    while (next < text.length() && text.charAt(next) == ' ') {
      next++;
    }
    return next;
  }

  private boolean digitAt(int index) {
    return index < text.length() && text.charAt(index) >= '0' && text.charAt(index) <= '9';
  }
}
