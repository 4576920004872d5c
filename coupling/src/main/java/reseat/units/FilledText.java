package reseat.units;

import java.util.Locale;

/**
 * A sentence with gaps, filled with words and numbers, the same on every engine and in every
 * locale.
 *
 * <p>A gap is {@code %s} (a text), {@code %d} (a whole number), {@code %x} or {@code %X} (in
 * sixteens), {@code %.2f} (decimals), {@code %.4g} (figures), {@code %.1e} (with exponent); {@code
 * %%} is the sign itself. A width before the point or the letter fills up with spaces from the
 * left, with a minus sign from the right, with a zero with zeros; a plus sign puts one before
 * numbers from 0 on. Numbers are those of {@link PrintedNumber}.
 */
public final class FilledText {

  private final String pattern;
  private final Object[] values;
  private final StringBuilder out = new StringBuilder();
  private int at;
  private int used;

  private FilledText(String pattern, Object[] values) {
    this.pattern = pattern;
    this.values = values;
  }

  /**
   * Fills the gaps of a sentence.
   *
   * @param pattern the sentence
   * @param values one for each gap, in their order
   * @return the sentence with the values in place of the gaps
   * @throws IllegalArgumentException if gaps and values do not go together
   */
  public static String of(String pattern, Object... values) {
    return new FilledText(pattern, values).filled();
  }

  private String filled() {
    while (at < pattern.length()) {
      int gap = pattern.indexOf('%', at);
      if (gap < 0) {
        out.append(pattern, at, pattern.length());
        break;
      }
      out.append(pattern, at, gap);
      at = gap + 1;
      fill();
    }
    if (used < values.length) {
      throw new IllegalArgumentException("more values than gaps in: " + pattern);
    }
    return out.toString();
  }

  private void fill() {
    boolean left = take('-');
    boolean plus = take('+');
    boolean zeros = take('0');
    int width = number();
    int precision = take('.') ? number() : -1;
    char kind = at < pattern.length() ? pattern.charAt(at) : ' ';
    at++;
    if (kind == '%') {
      out.append('%');
      return;
    }
    if (used >= values.length) {
      throw new IllegalArgumentException("fewer values than gaps in: " + pattern);
    }
    Object value = values[used++];
    String text = text(kind, precision, value);
    if (plus && !text.startsWith("-")) {
      text = '+' + text;
    }
    String padding = (zeros ? "0" : " ").repeat(Math.max(0, width - text.length()));
    if (left) {
      out.append(text).append(padding);
    } else if (zeros && (text.startsWith("-") || text.startsWith("+"))) {
      out.append(text.charAt(0)).append(padding).append(text, 1, text.length());
    } else {
      out.append(padding).append(text);
    }
  }

  private String text(char kind, int precision, Object value) {
    if (kind == 's') {
      return value instanceof Double d ? PrintedNumber.shortest(d) : String.valueOf(value);
    }
    if (kind == 'd' && (value instanceof Integer || value instanceof Long)) {
      return value.toString();
    }
    if ((kind == 'x' || kind == 'X') && value instanceof Integer i) {
      String digits = Integer.toHexString(i);
      return kind == 'x' ? digits : digits.toUpperCase(Locale.ROOT);
    }
    if ("fge".indexOf(kind) >= 0 && value instanceof Double d && precision >= 0) {
      return switch (kind) {
        case 'f' -> PrintedNumber.fixed(d, precision);
        case 'g' -> PrintedNumber.figures(d, precision);
        default -> PrintedNumber.withExponent(d, precision);
      };
    }
    throw new IllegalArgumentException(
        "a gap of kind " + kind + " cannot take " + value + " in: " + pattern);
  }

  private boolean take(char wanted) {
    boolean there = at < pattern.length() && pattern.charAt(at) == wanted;
    if (there) {
      at++;
    }
    return there;
  }

  private int number() {
    int number = 0;
    while (at < pattern.length() && pattern.charAt(at) >= '0' && pattern.charAt(at) <= '9') {
      number = 10 * number + pattern.charAt(at++) - '0';
    }
    return number;
  }
}
