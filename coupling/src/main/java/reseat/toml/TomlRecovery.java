package reseat.toml;

/** Finds the place where reading goes on after a mistake. */
final class TomlRecovery {

  /** Stands for a line that ends within a text. */
  private static final int IN_TEXT = Integer.MAX_VALUE;

  /** A line may not be longer ago than this for its bracket to be looked for. */
  private static final int FARTHEST = 50;

  private final TomlCursor cursor;
  private final int start;
  private final int line;

  /**
   * Notes where the statement is.
   *
   * @param cursor stands anywhere in the statement
   * @param start index where the statement begins
   * @param line line where the statement begins
   */
  TomlRecovery(TomlCursor cursor, int start, int line) {
    this.cursor = cursor;
    this.start = start;
    this.line = line;
  }

  /**
   * Moves to the next statement.
   *
   * <p>After a mistake on one line that is the next line. After a mistake within brackets it is the
   * line after their end. If they have none, or a text of several lines is not closed, it is the
   * next line that looks like a statement.
   *
   * @param nested whether the mistake happened within brackets or lines after the first
   */
  void moveOn(boolean nested) {
    cursor.returnTo(start, line);
    String first = cursor.restOfLine(start);
    cursor.skipLine();
    if (!nested || openBrackets(first) <= 0) {
      return;
    }
    int second = cursor.index();
    if (openBrackets(first) != IN_TEXT && skipToClosing(openBrackets(first))) {
      return;
    }
    cursor.returnTo(second, line);
    do {
      cursor.skipLine();
      cursor.takeLineEnd();
    } while (!cursor.ended() && !looksLikeStatement(cursor.restOfLine(cursor.index())));
  }

  private boolean skipToClosing(int open) {
    int depth = open;
    for (int lines = 0; lines < FARTHEST && !cursor.ended(); lines++) {
      cursor.takeLineEnd();
      String next = cursor.restOfLine(cursor.index()).strip();
      int opened = openBrackets(next);
      if (next.isEmpty()
          || opened == IN_TEXT
          || (next.startsWith("[") && looksLikeStatement(next))) {
        return false;
      }
      depth += opened;
      cursor.skipLine();
      if (depth <= 0) {
        return true;
      }
    }
    return false;
  }

  /** How many more brackets open on a line than close; those in text and remarks left out. */
  private static int openBrackets(String line) {
    int depth = 0;
    char quote = 0;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (quote != 0) {
        i += c == '\\' && quote == '"' ? 1 : 0;
        quote = c == quote ? 0 : quote;
      } else if (c == '"' || c == '\'') {
        quote = c;
      } else if (c == '#') {
        break;
      } else if (c == '[' || c == '{') {
        depth++;
      } else if (c == ']' || c == '}') {
        depth--;
      }
    }
    return quote == 0 ? depth : IN_TEXT;
  }

  /**
   * Says whether a line begins with a key and = or is a header.
   *
   * @param line a line without its end
   */
  static boolean looksLikeStatement(String line) {
    String code = line.strip();
    if (code.startsWith("[")) {
      int close = code.lastIndexOf(']');
      String name = close < 0 ? "" : code.substring(0, close).replace("[", "").replace("]", "");
      return looksLikeKey(name) && name.indexOf('"') < 0 && !startsWithDigit(name.strip());
    }
    char quote = 0;
    for (int i = 0; i < code.length(); i++) {
      char c = code.charAt(i);
      if (quote != 0) {
        quote = c == quote ? 0 : quote;
      } else if (c == '"' || c == '\'') {
        quote = c;
      } else if (c == '=') {
        return i > 0;
      } else if (!inKey(c)) {
        return false;
      }
    }
    return false;
  }

  private static boolean startsWithDigit(String name) {
    return Character.isDigit(name.charAt(0)) || name.charAt(0) == '-';
  }

  private static boolean looksLikeKey(String name) {
    for (int i = 0; i < name.length(); i++) {
      if (!inKey(name.charAt(i))) {
        return false;
      }
    }
    return !name.isBlank();
  }

  private static boolean inKey(char c) {
    return Character.isLetterOrDigit(c)
        || c == '_'
        || c == '-'
        || c == '.'
        || c == ' '
        || c == '\t';
  }
}
