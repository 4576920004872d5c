package reseat.toml;

/** Reads text between quotation marks: basic, literal, and both over several lines. */
final class TomlStrings {

  private final TomlCursor cursor;

  TomlStrings(TomlCursor cursor) {
    this.cursor = cursor;
  }

  /** Reads any of the four kinds; the cursor stands at the opening quotation mark. */
  String any() {
    char quote = (char) cursor.peek();
    boolean severalLines = cursor.peek(1) == quote && cursor.peek(2) == quote;
    return severalLines ? severalLines(quote) : oneLine(quote);
  }

  /** Reads text that ends on its line, as keys must. */
  String oneLine(char quote) {
    Place start = cursor.place();
    cursor.advance();
    int first = cursor.index();
    StringBuilder text = null;
    while (cursor.peek() != quote) {
      if (cursor.atLineEnd()) {
        throw new TomlMistake(
            start, "this text has no closing quotation mark; put " + quote + " at its end");
      }
      cursor.refuseControl();
      if (quote == '"' && cursor.peek() == '\\') {
        text = text == null ? new StringBuilder(cursor.since(first)) : text;
        escape(text);
      } else {
        if (text != null) {
          text.append((char) cursor.peek());
        }
        cursor.advance();
      }
    }
    String plain = text == null ? cursor.since(first) : text.toString();
    cursor.advance();
    return plain;
  }

  private String severalLines(char quote) {
    Place start = cursor.place();
    cursor.advance(3);
    if (cursor.atLineEnd()) {
      cursor.takeLineEnd();
    }
    StringBuilder text = new StringBuilder();
    while (!closes(quote)) {
      if (cursor.ended()) {
        throw new TomlMistake(
            start,
            "this text over several lines is never closed; put "
                + ("" + quote).repeat(3)
                + " after it");
      }
      if (cursor.atLineEnd()) {
        cursor.takeLineEnd();
        text.append('\n');
      } else if (quote == '"' && cursor.peek() == '\\') {
        if (!lineContinues()) {
          escape(text);
        }
      } else {
        cursor.refuseControl();
        text.append((char) cursor.peek());
        cursor.advance();
      }
    }
    // Up to two quotation marks may stand right before the closing three.
    while (cursor.peek(3) == quote) {
      text.append(quote);
      cursor.advance();
    }
    cursor.advance(3);
    return text.toString();
  }

  private boolean closes(char quote) {
    boolean three = cursor.peek() == quote && cursor.peek(1) == quote && cursor.peek(2) == quote;
    if (three && cursor.peek(3) == quote && cursor.peek(4) == quote && cursor.peek(5) == quote) {
      throw cursor.mistake("found six quotation marks in a row; at most two may stand in the text");
    }
    return three;
  }

  /** A backslash at the end of a line swallows the line end and all blanks after it. */
  private boolean lineContinues() {
    int ahead = 1;
    while (cursor.peek(ahead) == ' ' || cursor.peek(ahead) == '\t') {
      ahead++;
    }
    boolean lineEnd =
        cursor.peek(ahead) == '\n'
            || (cursor.peek(ahead) == '\r' && cursor.peek(ahead + 1) == '\n');
    if (!lineEnd) {
      return false;
    }
    cursor.advance(ahead);
    while (!cursor.ended()) {
      if (cursor.atLineEnd()) {
        cursor.takeLineEnd();
      } else if (cursor.peek() == ' ' || cursor.peek() == '\t') {
        cursor.advance();
      } else {
        break;
      }
    }
    return true;
  }

  private void escape(StringBuilder text) {
    int letter = cursor.peek(1);
    switch (letter) {
      case 'b' -> text.append('\b');
      case 't' -> text.append('\t');
      case 'n' -> text.append('\n');
      case 'f' -> text.append('\f');
      case 'r' -> text.append('\r');
      case '"' -> text.append('"');
      case '\\' -> text.append('\\');
      case 'u' -> text.appendCodePoint(codePoint(4));
      case 'U' -> text.appendCodePoint(codePoint(8));
      default ->
          throw cursor.mistake(
              "a backslash starts a code such as \\n or \\\"; write \\\\ for a backslash, or put the"
                  + " text between ' marks");
    }
    cursor.advance(letter == 'u' ? 6 : letter == 'U' ? 10 : 2);
  }

  private int codePoint(int digits) {
    long value = 0;
    for (int i = 0; i < digits; i++) {
      int c = cursor.peek(2 + i);
      int digit = c < 0x80 ? Character.digit(c, 16) : -1;
      if (digit < 0) {
        throw cursor.mistake(
            "a backslash with u or U needs " + digits + " hexadecimal digits, as in \\u00b5 for µ");
      }
      value = 16 * value + digit;
    }
    if (value > Character.MAX_CODE_POINT || (value >= 0xd800 && value <= 0xdfff)) {
      throw cursor.mistake("this backslash code is no character");
    }
    return (int) value;
  }
}
