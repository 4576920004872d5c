package reseat.units;

import java.util.Locale;

/**
 * Reads a unit or a product of units: {@code mm}, {@code N·m}, {@code in-lbf}, {@code um/m/K},
 * {@code kg/m^3}, {@code mm²}, {@code W/(m·K)} style brackets.
 *
 * <p>A power belongs to the unit with its prefix: mm² is (10⁻³ m)². A product after a division sign
 * is refused, as the SI brochure asks, because {@code um/m·K} has two readings. Within a product a
 * degree Celsius or Fahrenheit is a difference.
 */
final class UnitExpression {

  private static final String SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹";
  private static final int DEEPEST = 3;

  private final String text;
  private final int end;
  private final QuantityKind expected;
  private int at;
  private QuantityMistake slip;
  private String explained = "";

  private UnitExpression(String text, int start, QuantityKind expected) {
    this.text = text;
    this.at = start;
    this.end = text.length();
    this.expected = expected;
  }

  /**
   * Starts reading.
   *
   * @param text normalised text without blanks at its end
   * @param start where the unit begins
   * @param expected what the quantity should be
   * @return the reader
   */
  static UnitExpression at(String text, int start, QuantityKind expected) {
    return new UnitExpression(text, start, expected);
  }

  /** What is wrong, or null. */
  QuantityMistake slip() {
    return slip;
  }

  /**
   * Reads up to the end of the text.
   *
   * @return the unit, or null after a mistake
   */
  Unit read() {
    String whole = text.substring(at, end);
    Unit single = UnitCatalog.find(whole, expected);
    if (single != null) {
      return single;
    }
    Unit unit = product(0);
    if (slip == null && at < end) {
      refuseRest();
    }
    if (slip != null) {
      return null;
    }
    String full = whole.strip();
    return new Unit(full, full + explained, unit.dimension(), unit.scale(), unit.offset());
  }

  private Unit product(int depth) {
    Unit unit = Unit.ONE;
    boolean divide = false;
    boolean divided = false;
    skipSpaces();
    if (at < end && text.charAt(at) == '1' && nextAfter(at + 1) == '/') {
      at++;
      skipSpaces();
    }
    if (at < end && text.charAt(at) == '/') {
      divide = true;
      divided = true;
      at++;
    }
    while (slip == null) {
      unit = factor(unit, divide, depth);
      if (slip != null) {
        return unit;
      }
      boolean space = skipSpaces();
      char c = at < end ? text.charAt(at) : ')';
      if (c == ')') {
        return unit;
      }
      divide = c == '/';
      if (!divide && divided) {
        refuse(
            UnitProblem.Cause.AMBIGUOUS_UNIT,
            at,
            "has a product after a division, which has two readings",
            "repeat the slash, as in um/m/K, or use brackets, as in um/(m·K)");
      } else if (divide || c == '·' || c == '.' || c == '-') {
        at++;
      } else if (!space) {
        refuseRest();
      }
      divided |= divide;
    }
    return unit;
  }

  private Unit factor(Unit before, boolean divide, int depth) {
    skipSpaces();
    if (at < end && text.charAt(at) == '(') {
      if (depth == DEEPEST) {
        refuse(UnitProblem.Cause.UNKNOWN_UNIT, at, "has too many brackets", "use fewer brackets");
        return before;
      }
      at++;
      Unit inner = product(depth + 1);
      if (slip == null && (at == end || text.charAt(at) != ')')) {
        refuse(UnitProblem.Cause.UNKNOWN_UNIT, at, "has a bracket that is not closed", "add )");
      }
      at++;
      return slip != null ? before : before.times(inner, signed(exponent(), divide));
    }
    int start = at;
    while (at < end && inName(text.charAt(at))) {
      at++;
    }
    Unit unit = at == start ? null : UnitCatalog.find(text.substring(start, at), expected);
    if (unit == null) {
      refuseName(start, text.substring(start, at));
      return before;
    }
    if (!unit.inFull().equals(unit.symbol()) && !explained.contains(unit.inFull())) {
      explained += ", " + unit.inFull();
    }
    return before.times(unit, signed(exponent(), divide));
  }

  private static int signed(int exponent, boolean divide) {
    return divide ? -exponent : exponent;
  }

  private int exponent() {
    if (at == end) {
      return 1;
    }
    char c = text.charAt(at);
    // Not after a foot or inch mark: 5'2" is no power.
    if ((c == '2' || c == '3') && Character.isLetter(text.charAt(at - 1))) {
      at++;
      return c - '0';
    }
    boolean caret = c == '^';
    if (caret) {
      at++;
    }
    boolean negative = at < end && (caret ? text.charAt(at) == '-' : text.charAt(at) == '⁻');
    if (negative) {
      at++;
    }
    int digit = at == end ? -1 : digit(text.charAt(at), caret);
    if (digit >= 1) {
      at++;
      return negative ? -digit : digit;
    }
    if (caret || negative) {
      refuse(
          UnitProblem.Cause.UNKNOWN_UNIT,
          at,
          "has a power that is not a whole number from 1 to 9",
          "write a power as mm^2 or mm²");
    }
    return 1;
  }

  private static int digit(char c, boolean plain) {
    return plain ? Character.digit(c, 10) : SUPERSCRIPTS.indexOf(c);
  }

  private static boolean inName(char c) {
    return Character.isLetter(c) || c == '%' || c == '°' || c == '\'' || c == '"' || c == '#';
  }

  private char nextAfter(int index) {
    int next = index;
    while (next < end && text.charAt(next) == ' ') {
      next++;
    }
    return next < end ? text.charAt(next) : ' ';
  }

  private boolean skipSpaces() {
    int start = at;
    while (at < end && text.charAt(at) == ' ') {
      at++;
    }
    return at > start;
  }

  private void refuseRest() {
    refuseName(at, text.substring(at, end));
  }

  private void refuseName(int start, String name) {
    String rest = text.substring(start, end);
    if (rest.isEmpty()) {
      refuse(
          UnitProblem.Cause.UNKNOWN_UNIT,
          start,
          "ends in the middle of its unit",
          "finish the unit");
    } else if (numberFollows(rest)) {
      refuse(
          UnitProblem.Cause.SEVERAL_NUMBERS,
          start,
          "has more than one number",
          "write one number and its unit");
    } else if (name.isEmpty()) {
      refuse(
          UnitProblem.Cause.UNKNOWN_UNIT,
          start,
          "has no unit at " + QuotedText.of(rest),
          "write " + expected.allowed());
    } else if (name.toLowerCase(Locale.ROOT).equals("mil")
        || name.toLowerCase(Locale.ROOT).equals("mils")) {
      refuse(
          UnitProblem.Cause.AMBIGUOUS_UNIT,
          start,
          "uses mil, which is 0.001 in to some and a millimetre to others",
          "write thou (0.001 in) or mm");
    } else {
      refuse(
          UnitProblem.Cause.UNKNOWN_UNIT,
          start,
          "has an unknown unit " + QuotedText.of(name),
          UnitAdvice.forUnknown(name, expected));
    }
  }

  private static boolean numberFollows(String rest) {
    for (int i = 0; i < rest.length(); i++) {
      if (Character.isDigit(rest.charAt(i))
          && (i == 0 || (!Character.isLetter(rest.charAt(i - 1)) && rest.charAt(i - 1) != '^'))) {
        return true;
      }
    }
    return false;
  }

  private void refuse(UnitProblem.Cause cause, int where, String what, String instead) {
    if (slip == null) {
      slip = new QuantityMistake(cause, what, instead, Math.min(where, end));
    }
  }
}
