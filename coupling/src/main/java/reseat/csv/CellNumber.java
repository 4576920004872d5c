package reseat.csv;

import java.util.regex.Pattern;

/** A cell that should hold a plain number: read strictly, and explained when it is not one. */
public final class CellNumber {

  private static final Pattern NUMBER_THEN_UNIT =
      Pattern.compile("[-+]?(\\d+\\.?\\d*|\\.\\d+)([eE][-+]?\\d+)?\\s*[^\\d\\s.,].{0,11}");

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
   * Writes the minus signs of word processors as the plain one.
   *
   * @param text the cell
   * @return the cell without surrounding spaces, minus signs and dashes in front made plain
   */
  public static String tidy(String text) {
    String s = text.strip();
    if (!s.isEmpty() && (s.charAt(0) == '\u2212' || s.charAt(0) == '\u2013')) {
      return "-" + s.substring(1);
    }
    return s;
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
