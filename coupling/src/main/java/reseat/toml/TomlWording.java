package reseat.toml;

import java.util.Locale;
import reseat.units.FilledText;

/** Words for what was found and what to write instead, for people who do not know TOML. */
final class TomlWording {

  private static final int LONGEST = 40;

  private TomlWording() {}

  /** A key as it is shown in messages. */
  static String key(String name) {
    return name.isEmpty() ? "the empty key \"\"" : shown(name);
  }

  /** A control character by its number. */
  static String code(int character) {
    return FilledText.of("U+%04X", character);
  }

  /** A piece of the file made fit for one line. */
  static String shown(String text) {
    StringBuilder safe = new StringBuilder();
    int shown = 0;
    for (int i = 0; i < text.length() && shown < LONGEST; shown++) {
      int c = text.codePointAt(i);
      i += Character.charCount(c);
      int type = Character.getType(c);
      boolean bad =
          type == Character.CONTROL || type == Character.FORMAT || type == Character.SURROGATE;
      if (bad) {
        safe.append('<').append(code(c)).append('>');
      } else {
        safe.appendCodePoint(c);
      }
    }
    return shown == LONGEST && text.codePointCount(0, text.length()) > LONGEST
        ? safe.append("...").toString()
        : safe.toString();
  }

  /** Where a key should begin, something else stands. */
  static String noKey(int c, String rest) {
    if (c == '=') {
      return "there is no key in front of the =";
    }
    if (c == ']') {
      return "a name is missing in front of the ]";
    }
    if (isTypographicQuote(c)) {
      return "found a typographic quotation mark; write plain \" marks";
    }
    if (rest.startsWith("//") || rest.startsWith(";") || rest.startsWith("--")) {
      return "write # in front of a remark";
    }
    if (Character.isLetter(c)) {
      return "a key is written with the letters A to Z without accents, digits, _ and -; put any"
          + " other between quotation marks";
    }
    return "found " + shown(rest) + " where a key should stand, as in diameter = \"12.7 mm\"";
  }

  /** A key is there and no = follows it. */
  static String noEquals(int c, String rest) {
    if (c == ':') {
      return "write = in place of :";
    }
    if (rest.isBlank() || rest.charAt(0) == '#') {
      return "this line has a key and no value; write key = \"value\", or # in front of a remark";
    }
    if (rest.indexOf('=') > 0 && rest.charAt(0) != '"' && rest.charAt(0) != '\'') {
      return "a key is one word: join the words with _, or put the key between quotation marks";
    }
    return "there is no = between the key and its value; write # in front of a remark";
  }

  /**
   * A value without quotation marks that is no number, flag or date, or that goes on after one.
   *
   * @param rest the text from the beginning of the value to the end of its line
   * @param inList whether a comma may follow the value
   */
  static String unquoted(String rest, boolean inList) {
    String value = upToEnd(rest, inList);
    if (isTypographicQuote(value.charAt(0))) {
      return "found a typographic quotation mark; write plain \" marks around text";
    }
    String lower = value.toLowerCase(Locale.ROOT);
    if (lower.equals("true") || lower.equals("false")) {
      return "write " + lower + " in small letters";
    }
    if (lower.equals("yes") || lower.equals("no") || lower.equals("on") || lower.equals("off")) {
      return "write true or false, or " + quoted(value) + " for the word";
    }
    if (!startsAsNumber(value)) {
      return hasLetterOrDigit(value)
          ? "text stands between quotation marks; write " + quoted(value)
          : "found " + shown(value) + " where a value should stand";
    }
    if (hasDecimalComma(value)) {
      String point = value.replace(',', '.');
      return isNumber(point)
          ? "found a decimal comma; write a point: " + point
          : "found a decimal comma and no quotation marks; write " + quoted(point);
    }
    return wrongNumber(value);
  }

  private static String wrongNumber(String value) {
    if (value.startsWith(".") && isNumber('0' + value)) {
      return "a number starts with a digit; write 0" + value;
    }
    if (value.endsWith(".") && isNumber(value + '0')) {
      return "a digit follows the point; write " + value + '0';
    }
    if (onlyOf(value, "+-._0123456789eExob")) {
      return value.indexOf('-', 1) > 0 && value.indexOf('e') < 0
          ? shown(value) + " is no number and no date; text stands between quotation marks"
          : "the number "
              + shown(value)
              + " has leading zeros, misplaced _ or a sign or point too many";
    }
    if (onlyOf(value, "+-.0123456789 ,\t")) {
      return "several numbers stand in a list, as in [0, 0, -1]";
    }
    return "a number with a unit stands between quotation marks; write " + quoted(value);
  }

  private static boolean hasDecimalComma(String value) {
    int comma = value.indexOf(',');
    return comma > 0
        && comma + 1 < value.length()
        && Character.isDigit(value.charAt(comma - 1))
        && Character.isDigit(value.charAt(comma + 1))
        && value.indexOf(',', comma + 1) < 0;
  }

  private static boolean hasLetterOrDigit(String value) {
    return value.codePoints().anyMatch(Character::isLetterOrDigit);
  }

  private static boolean onlyOf(String value, String characters) {
    return value.chars().allMatch(c -> characters.indexOf(c) >= 0);
  }

  /** Something stands after a finished value. */
  static String afterValue(String rest, boolean afterText) {
    if (isStray(rest)) {
      return rest.startsWith("//")
          ? "write # in front of a remark"
          : "nothing stands after a value; leave the " + rest.charAt(0) + " out";
    }
    return afterText
        ? "text goes on after its closing quotation mark; put all of it between the marks, an inch"
            + " mark as \\\" or in"
        : "found " + shown(rest) + " after the value; one key = value stands on a line";
  }

  /** Whether a comma, a semicolon, a bracket or a foreign remark stands after a right value. */
  static boolean isStray(String rest) {
    return rest.startsWith(";")
        || rest.startsWith("]")
        || rest.startsWith("}")
        || rest.strip().equals(",")
        || rest.startsWith("//");
  }

  /** Something stands after a header. */
  static String afterHeader(String rest) {
    return "found " + shown(rest) + " after the header; a header stands alone on its line";
  }

  /** Two values in a list without a comma between them. */
  static String missingComma(String rest) {
    return "a comma is missing in front of " + shown(rest);
  }

  private static String quoted(String value) {
    String shown = shown(value);
    return shown.indexOf('"') < 0 ? '"' + shown + '"' : '"' + shown.replace("\"", "\\\"") + '"';
  }

  private static String upToEnd(String rest, boolean inList) {
    int end = 0;
    while (end < rest.length()) {
      char c = rest.charAt(end);
      boolean closes = inList && (c == ',' || c == ']' || c == '}');
      if (c == '#' || closes) {
        break;
      }
      end++;
    }
    String value = rest.substring(0, end).strip();
    return value.isEmpty() ? rest.strip() : value;
  }

  private static boolean startsAsNumber(String value) {
    int at = value.startsWith("-") || value.startsWith("+") ? 1 : 0;
    at += at < value.length() && value.charAt(at) == '.' ? 1 : 0;
    return at < value.length() && value.charAt(at) >= '0' && value.charAt(at) <= '9';
  }

  private static boolean isNumber(String value) {
    try {
      Double.parseDouble(value);
      char last = value.charAt(value.length() - 1);
      return Character.isDigit(last) || last == '.';
    } catch (NumberFormatException e) {
      return false;
    }
  }

  private static boolean isTypographicQuote(int c) {
    return "\u201c\u201d\u201e\u2018\u2019\u00ab\u00bb".indexOf(c) >= 0;
  }
}
