package reseat.toml;

/** Reads values without quotation marks: numbers, true and false, dates and times. */
final class TomlScalars {

  private static final int[] DAYS = {31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

  private TomlScalars() {}

  /**
   * Reads a word.
   *
   * @param word letters, digits and the signs + - _ . : without blanks, save the one between a date
   *     and a time
   * @param place where it begins
   * @return the value, or null if the word is none of these
   */
  static TomlValue read(String word, Place place) {
    int line = place.line();
    int column = place.column();
    if (word.equals("true") || word.equals("false")) {
      return new TomlValue.Flag(word.equals("true"), line, column);
    }
    if (word.endsWith("inf") || word.endsWith("nan")) {
      return special(word, place);
    }
    if (isMoment(word)) {
      return new TomlValue.Moment(word, line, column);
    }
    String digits = word.indexOf('_') < 0 ? word : withoutUnderscores(word);
    if (digits == null) {
      return null;
    }
    if (digits.length() > 2 && digits.charAt(0) == '0' && "xob".indexOf(digits.charAt(1)) >= 0) {
      return radix(digits, place);
    }
    int shape = decimalShape(digits);
    if (shape == 0) {
      return null;
    }
    if (shape == 1) {
      return whole(digits, 10, place);
    }
    double value = Double.parseDouble(digits);
    if (Double.isInfinite(value)) {
      throw new TomlMistake(place, "the number " + word + " is too large");
    }
    return new TomlValue.Numeral(value, false, line, column);
  }

  private static TomlValue special(String word, Place place) {
    boolean sign = word.startsWith("+") || word.startsWith("-");
    if (word.length() != (sign ? 4 : 3)) {
      return null;
    }
    double size = word.endsWith("nan") ? Double.NaN : Double.POSITIVE_INFINITY;
    double value = word.startsWith("-") ? -size : size;
    return new TomlValue.Numeral(value, false, place.line(), place.column());
  }

  private static TomlValue whole(String digits, int radix, Place place) {
    try {
      long value = Long.parseLong(digits, radix);
      return new TomlValue.Numeral(value, true, place.line(), place.column());
    } catch (NumberFormatException e) {
      throw new TomlMistake(place, "the whole number " + digits + " is too large");
    }
  }

  private static TomlValue radix(String digits, Place place) {
    int radix = digits.charAt(1) == 'x' ? 16 : digits.charAt(1) == 'o' ? 8 : 2;
    for (int i = 2; i < digits.length(); i++) {
      if (Character.digit(digits.charAt(i), radix) < 0) {
        return null;
      }
    }
    return whole(digits.substring(2), radix, place);
  }

  /** Takes underscores out; null if one does not stand between two digits. */
  private static String withoutUnderscores(String word) {
    StringBuilder digits = new StringBuilder(word.length());
    for (int i = 0; i < word.length(); i++) {
      char c = word.charAt(i);
      if (c != '_') {
        digits.append(c);
      } else if (i == 0
          || i == word.length() - 1
          || !digitBeside(word, i - 1)
          || !digitBeside(word, i + 1)) {
        return null;
      }
    }
    return digits.toString();
  }

  private static boolean digitBeside(String word, int index) {
    boolean hexadecimal = word.startsWith("0x") && index > 1;
    return Character.digit(word.charAt(index), hexadecimal ? 16 : 10) >= 0;
  }

  /** 0: no decimal number, 1: whole, 2: with a point or an exponent. */
  private static int decimalShape(String digits) {
    int at = digits.startsWith("-") || digits.startsWith("+") ? 1 : 0;
    int end = afterDigits(digits, at);
    if (end == at || (digits.charAt(at) == '0' && end > at + 1)) {
      return 0;
    }
    int shape = 1;
    if (end < digits.length() && digits.charAt(end) == '.') {
      at = end + 1;
      end = afterDigits(digits, at);
      if (end == at) {
        return 0;
      }
      shape = 2;
    }
    if (end < digits.length() && (digits.charAt(end) == 'e' || digits.charAt(end) == 'E')) {
      at = end + 1;
      if (at < digits.length() && (digits.charAt(at) == '-' || digits.charAt(at) == '+')) {
        at++;
      }
      end = afterDigits(digits, at);
      if (end == at) {
        return 0;
      }
      shape = 2;
    }
    return end == digits.length() ? shape : 0;
  }

  private static int afterDigits(String digits, int start) {
    int at = start;
    while (at < digits.length() && digits.charAt(at) >= '0' && digits.charAt(at) <= '9') {
      at++;
    }
    return at;
  }

  /** Whether a word starts as a date does, so that a blank and a time may follow. */
  static boolean isDate(String word) {
    if (!matches(word, "dddd-dd-dd")) {
      return false;
    }
    int year = Integer.parseInt(word.substring(0, 4));
    int month = two(word, 5);
    int day = two(word, 8);
    boolean leap = year % 4 == 0 && (year % 100 != 0 || year % 400 == 0);
    return month >= 1
        && month <= 12
        && day >= 1
        && day <= DAYS[month - 1]
        && (month != 2 || day < 29 || leap);
  }

  private static boolean isMoment(String word) {
    if (word.length() < 8 || word.charAt(0) > '9') {
      return false;
    }
    if (word.charAt(2) == ':') {
      return isTime(word);
    }
    if (word.length() == 10) {
      return isDate(word);
    }
    if (word.length() < 11 || "Tt ".indexOf(word.charAt(10)) < 0) {
      return false;
    }
    String time = word.substring(11);
    if (time.endsWith("Z") || time.endsWith("z")) {
      time = time.substring(0, time.length() - 1);
    } else {
      int sign = Math.max(time.indexOf('+'), time.indexOf('-'));
      if (sign >= 0) {
        String offset = time.substring(sign + 1);
        if (!matches(offset, "dd:dd") || two(offset, 0) > 23 || two(offset, 3) > 59) {
          return false;
        }
        time = time.substring(0, sign);
      }
    }
    return isDate(word.substring(0, 10)) && isTime(time);
  }

  private static boolean isTime(String word) {
    if (word.length() < 8 || !matches(word.substring(0, 8), "dd:dd:dd")) {
      return false;
    }
    boolean fraction =
        word.length() == 8
            || (word.charAt(8) == '.'
                && word.length() > 9
                && afterDigits(word, 9) == word.length());
    return fraction && two(word, 0) <= 23 && two(word, 3) <= 59 && two(word, 6) <= 59;
  }

  private static int two(String word, int at) {
    return 10 * (word.charAt(at) - '0') + word.charAt(at + 1) - '0';
  }

  private static boolean matches(String word, String shape) {
    if (word.length() != shape.length()) {
      return false;
    }
    for (int i = 0; i < shape.length(); i++) {
      char c = word.charAt(i);
      boolean fits = shape.charAt(i) == 'd' ? c >= '0' && c <= '9' : c == shape.charAt(i);
      if (!fits) {
        return false;
      }
    }
    return true;
  }
}
