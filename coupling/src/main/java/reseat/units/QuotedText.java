package reseat.units;

/** Text from a user's file made safe for a one-line message: no control characters, not long. */
public final class QuotedText {

  private static final int LONGEST = 60;

  private QuotedText() {}

  /**
   * Returns the text in double quotes.
   *
   * @param text anything
   * @return one line, at most about 60 characters
   */
  public static String of(String text) {
    return '"' + plain(text) + '"';
  }

  /**
   * Returns the text without quotes.
   *
   * @param text anything
   * @return one line, at most about 60 characters
   */
  public static String plain(String text) {
    StringBuilder safe = new StringBuilder();
    int shown = 0;
    int i = 0;
    while (i < text.length()) {
      if (shown == LONGEST) {
        return safe.append("...").toString();
      }
      int c = text.codePointAt(i);
      i += Character.charCount(c);
      shown++;
      if (c == '\n') {
        safe.append("\\n");
      } else if (c == '\t') {
        safe.append("\\t");
      } else if (unprintable(c)) {
        safe.append("\\u").append(Integer.toHexString(0x10000 | (c & 0xffff)).substring(1));
      } else {
        safe.appendCodePoint(c);
      }
    }
    return safe.toString();
  }

  private static boolean unprintable(int c) {
    int type = Character.getType(c);
    return type == Character.CONTROL
        || type == Character.FORMAT
        || type == Character.SURROGATE
        || type == Character.LINE_SEPARATOR
        || type == Character.PARAGRAPH_SEPARATOR;
  }
}
