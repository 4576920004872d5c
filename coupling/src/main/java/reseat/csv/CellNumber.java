package reseat.csv;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A cell that should hold a plain number: read strictly, and explained when it is not one. */
public final class CellNumber {

  private static final Pattern NUMBER_THEN_UNIT =
      Pattern.compile("[-+]?(\\d+\\.?\\d*|\\.\\d+)([eE][-+]?\\d+)?\\s*[^\\d\\s.,].{0,11}");

  private static final String MINUS = "\u2212\u2010\u2011\u2012\u2013\u2014\ufe58\ufe63\uff0d";

  private static final Pattern THIN =
      Pattern.compile("[\u00a0\u2009\u202f\u2007\u2006\u2008\u200a]");

  private static final Pattern GROUPED =
      Pattern.compile(
          "[-+]?\\d{1,3}([\u00a0\u2009\u202f\u2007\u2006\u2008\u200a]\\d{3})*"
              + "([.,]\\d+([\u00a0\u2009\u202f\u2007\u2006\u2008\u200a]\\d+)*)?");

  private static final Pattern COMMA_NUMBER =
      Pattern.compile("([-+]?(?:\\d{1,3}(?:\\.\\d{3})+(?=,|$)|\\d*))(?:,(\\d+))?([eE][-+]?\\d+)?");

  private static final Pattern POINT_NUMBER =
      Pattern.compile("([-+]?(?:\\d{1,3}(?:,\\d{3})+|\\d*))(?:\\.(\\d+))?([eE][-+]?\\d+)?");

  private CellNumber() {}

  /**
   * Tells whether a text is a plain decimal number: sign, digits with at most one point, exponent.
   *
   * @param text the cell without surrounding spaces
   * @return false also for hexadecimal numbers, NaN, infinity and type suffixes
   */
  public static boolean isPlain(String text) {
    int i = 0;
    int n = text.length();
    if (i < n && (text.charAt(i) == '-' || text.charAt(i) == '+')) {
      i++;
    }
    int digits = 0;
    int points = 0;
    while (i < n && (isDigit(text.charAt(i)) || text.charAt(i) == '.')) {
      if (text.charAt(i) == '.') {
        points++;
      } else {
        digits++;
      }
      i++;
    }
    if (digits == 0 || points > 1) {
      return false;
    }
    if (i == n) {
      return true;
    }
    if (text.charAt(i) != 'e' && text.charAt(i) != 'E') {
      return false;
    }
    i++;
    if (i < n && (text.charAt(i) == '-' || text.charAt(i) == '+')) {
      i++;
    }
    int start = i;
    while (i < n && isDigit(text.charAt(i))) {
      i++;
    }
    return i == n && i > start;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  /**
   * Writes a number as programs do: minus signs and dashes in front made plain, every kind of space
   * around it and thin spaces between groups of three digits taken away.
   *
   * @param text the cell
   * @return the cell; a text that is no number keeps what stands inside it
   */
  public static String tidy(String text) {
    int from = 0;
    int to = text.length();
    while (from < to && isGap(text.charAt(from))) {
      from++;
    }
    while (to > from && isGap(text.charAt(to - 1))) {
      to--;
    }
    String s = text.substring(from, to);
    if (!s.isEmpty() && MINUS.indexOf(s.charAt(0)) >= 0) {
      s = "-" + s.substring(1);
    }
    if (s.length() > 2 && (s.charAt(0) == '-' || s.charAt(0) == '+') && isGap(s.charAt(1))) {
      int digits = 1;
      while (digits < s.length() && isGap(s.charAt(digits))) {
        digits++;
      }
      s = digits < s.length() && isDigit(s.charAt(digits)) ? s.charAt(0) + s.substring(digits) : s;
    }
    return THIN.matcher(s).find() && GROUPED.matcher(s).matches()
        ? THIN.matcher(s).replaceAll("")
        : s;
  }

  /** A space of any kind, or a mark without width. */
  private static boolean isGap(char c) {
    return Character.isWhitespace(c)
        || Character.isSpaceChar(c)
        || c == '\u200b'
        || c == '\u2060'
        || c == '\ufeff';
  }

  /**
   * Writes a number with a point, whatever mark its decimals have.
   *
   * @param tidied the cell, tidied
   * @param mark what stands before its decimals
   * @param grouped whether the other mark may stand between groups of three digits
   * @return a plain number; the cell as it is if it is none written so, or nothing if it has a
   *     point where decimals have commas
   */
  public static String withPoint(String tidied, DecimalMark mark, boolean grouped) {
    if (mark == DecimalMark.POINT && !grouped) {
      return tidied;
    }
    Matcher m = (mark == DecimalMark.COMMA ? COMMA_NUMBER : POINT_NUMBER).matcher(tidied);
    if (!m.matches()) {
      return mark == DecimalMark.COMMA && tidied.indexOf('.') >= 0 ? "" : tidied;
    }
    if (m.group(1).indexOf(mark == DecimalMark.COMMA ? '.' : ',') >= 0 && !grouped) {
      return tidied;
    }
    String whole = m.group(1).replace(".", "").replace(",", "");
    return whole
        + (m.group(2) == null ? "" : "." + m.group(2))
        + (m.group(3) == null ? "" : m.group(3));
  }

  /**
   * Explains why a cell is not a plain number.
   *
   * @param text the cell, tidied
   * @param unit unit of its column, as written in the head
   * @return found, and what to do
   */
  public static String explain(String text, String unit) {
    if (text.isEmpty()) {
      return "the cell is empty; write the reading, or leave the whole row out and say so";
    }
    String found = "found \"" + text + "\"";
    if (isPlain(text)) {
      return found + ", a number too large to be a reading";
    }
    int commas = text.length() - text.replace(",", "").length();
    if (commas > 0 && isPlain(text.replace(",", ""))) {
      return found
          + ", a number with a comma; write decimals with a point (1.25) and no thousands mark";
    }
    if (isPlain(text.replace(" ", "").replace("'", "").replace("\u00a0", ""))) {
      return found + ", a number with a thousands mark; write the digits without a gap";
    }
    if (NUMBER_THEN_UNIT.matcher(text).matches()) {
      return found
          + ", a number with its own unit; cells hold plain numbers in the unit of the head"
          + (unit.isEmpty() ? "" : " (" + unit + ")")
          + ", one unit for the whole column";
    }
    return found + ", not a number; put remarks in a column named note";
  }
}
