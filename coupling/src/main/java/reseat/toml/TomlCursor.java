package reseat.toml;

/** A place that moves through a text, knows its line and column and what may be skipped. */
final class TomlCursor {

  private final String text;
  private int at;
  private int line = 1;
  private int lineStart;

  TomlCursor(String text) {
    this.text = text;
    // A byte order mark is no part of the document.
    at = text.startsWith("\ufeff") ? 1 : 0;
    lineStart = at;
  }

  /** The character here; -1 at the end of the text. */
  int peek() {
    return peek(0);
  }

  /** A character further on; -1 beyond the end of the text. */
  int peek(int ahead) {
    return at + ahead < text.length() ? text.charAt(at + ahead) : -1;
  }

  boolean ended() {
    return at >= text.length();
  }

  /** Whether a line ends here, or the text. */
  boolean atLineEnd() {
    int c = peek();
    return c < 0 || c == '\n' || (c == '\r' && peek(1) == '\n');
  }

  boolean startsWith(String expected) {
    return text.startsWith(expected, at);
  }

  int line() {
    return line;
  }

  int index() {
    return at;
  }

  Place place() {
    return new Place(line, 1 + text.codePointCount(lineStart, at));
  }

  TomlMistake mistake(String message) {
    return new TomlMistake(place(), message);
  }

  /** Moves over one character. */
  void advance() {
    if (text.charAt(at++) == '\n') {
      line++;
      lineStart = at;
    }
  }

  void advance(int characters) {
    for (int i = 0; i < characters; i++) {
      advance();
    }
  }

  boolean take(char expected) {
    if (peek() != expected) {
      return false;
    }
    advance();
    return true;
  }

  /** Moves over the end of a line, LF or CRLF; at the end of the text does nothing. */
  void takeLineEnd() {
    take('\r');
    take('\n');
  }

  void skipBlanks() {
    while (peek() == ' ' || peek() == '\t') {
      advance();
    }
  }

  /** Skips blanks, line ends and remarks, as allowed within a list. */
  void skipBlanksAndLines() {
    while (true) {
      skipBlanks();
      if (peek() == '#') {
        skipRemark();
      } else if (ended() || !atLineEnd()) {
        return;
      } else {
        takeLineEnd();
      }
    }
  }

  /** Skips a remark up to the end of the line. */
  void skipRemark() {
    while (!atLineEnd()) {
      refuseControl();
      advance();
    }
  }

  /** Refuses a control character other than a tabulator and a line end. */
  void refuseControl() {
    int c = peek();
    if (c != '\t' && !atLineEnd() && ((c >= 0 && c < 0x20) || c == 0x7f)) {
      throw mistake(
          "found the control character "
              + TomlWording.code(c)
              + "; only plain text may stand here");
    }
  }

  /** Skips to the end of this line. */
  void skipLine() {
    while (!ended() && peek() != '\n') {
      advance();
    }
  }

  /** Returns to an earlier place. */
  void returnTo(int index, int itsLine) {
    at = index;
    line = itsLine;
    lineStart = text.lastIndexOf('\n', index - 1) + 1;
    if (lineStart == 0 && text.startsWith("\ufeff")) {
      lineStart = 1;
    }
  }

  /** The text from a place to here. */
  String since(int start) {
    return text.substring(start, at);
  }

  /** The text from a place to the end of its line. */
  String restOfLine(int start) {
    int end = text.indexOf('\n', start);
    String rest = text.substring(start, end < 0 ? text.length() : end);
    return rest.endsWith("\r") ? rest.substring(0, rest.length() - 1) : rest;
  }
}
