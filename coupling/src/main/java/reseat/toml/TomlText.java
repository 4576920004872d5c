package reseat.toml;

import java.util.Optional;

/**
 * Changes single values in the text of a document and leaves everything else as it is: remarks,
 * blanks, order.
 *
 * <p>Places are those of the document read from the same text.
 */
public final class TomlText {

  private TomlText() {}

  /**
   * Reads a text that may be a value in TOML's own writing.
   *
   * @param text for instance {@code 2.5}, {@code true}, {@code ["1 mm", "2 mm", "0 mm"]}
   * @return the value; empty if the text is none, as {@code 12.7 mm} is not
   */
  public static Optional<TomlValue> value(String text) {
    if (text.indexOf('\n') >= 0) {
      return Optional.empty();
    }
    TomlDocument document = TomlReader.read("v = " + text);
    TomlValue.Entry entry = document.root().entries().get("v");
    return document.errors().isEmpty() && entry != null
        ? Optional.of(entry.value())
        : Optional.empty();
  }

  /**
   * Writes a text between quotation marks.
   *
   * @param text any text
   * @return the text as a basic string of TOML
   */
  public static String quoted(String text) {
    StringBuilder out = new StringBuilder(text.length() + 2).append('"');
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"' || c == '\\') {
        out.append('\\').append(c);
      } else if (c < 0x20 || c == 0x7f) {
        String code = Integer.toHexString(c);
        out.append("\\u0000", 0, 6 - code.length()).append(code);
      } else {
        out.append(c);
      }
    }
    return out.append('"').toString();
  }

  /**
   * Writes one name of a key.
   *
   * @param name any name
   * @return the name as it is if TOML allows that, else between quotation marks
   */
  public static String name(String name) {
    for (int i = 0; i < name.length(); i++) {
      if (!TomlValues.isBareKey(name.charAt(i))) {
        return quoted(name);
      }
    }
    return name.isEmpty() ? quoted(name) : name;
  }

  /**
   * Replaces a value.
   *
   * @param text the whole text
   * @param old the value to replace, as read from this text
   * @param written the new value as TOML writes it
   * @return the text with that value in its place
   */
  public static String replaced(String text, TomlValue old, String written) {
    int start = indexOf(text, old.line(), old.column());
    return text.substring(0, start) + written + text.substring(end(text, old));
  }

  /**
   * Adds a key to a table. In a table between braces it stands last there; else it gets a line of
   * its own after the last plain key of the table that a header opens.
   *
   * @param text the whole text
   * @param table the table, as read from this text: the document itself, one with a header of its
   *     own, or one between braces
   * @param headed whether a header or braces open the table; false for the document itself
   * @param key the key as TOML writes it, with dots if it leads into tables below
   * @param written the value as TOML writes it
   * @return the text with that key
   */
  public static String added(
      String text, TomlValue.Table table, boolean headed, String key, String written) {
    String statement = key + " = " + written;
    if (headed && isBraced(text, table)) {
      int close = end(text, table) - 1;
      String inside = text.substring(indexOf(text, table.line(), table.column()) + 1, close);
      String before = text.substring(0, close).stripTrailing();
      return before + (inside.isBlank() ? " " : ", ") + statement + " " + text.substring(close);
    }
    int after = headed ? indexOf(text, table.line(), table.column()) : 0;
    boolean first = !headed;
    for (TomlValue.Entry entry : table.entries().values()) {
      if (isStatement(text, entry)) {
        after = Math.max(after, end(text, entry.value()));
        first = false;
      }
    }
    if (first) {
      return statement + "\n" + text;
    }
    int lineEnd = text.indexOf('\n', after);
    return lineEnd < 0
        ? text + "\n" + statement + "\n"
        : text.substring(0, lineEnd + 1) + statement + "\n" + text.substring(lineEnd + 1);
  }

  /** Whether key and value stand together, and not as a header or by keys with dots. */
  private static boolean isStatement(String text, TomlValue.Entry entry) {
    int key = indexOf(text, entry.line(), entry.column());
    int value = indexOf(text, entry.value().line(), entry.value().column());
    // The brackets of a header stand before its key; a table made by dots begins at its key.
    return value > key;
  }

  /**
   * Counts the names in the header at which a table begins. A header opens the last one it names;
   * the tables that it only leads through begin there too.
   *
   * @param text the whole text
   * @param table a table read from it, not the document itself
   * @return number of names; 0 if the table does not begin with a header
   */
  public static int headerNames(String text, TomlValue.Table table) {
    int start = indexOf(text, table.line(), table.column());
    if (text.charAt(start) != '[') {
      return 0;
    }
    TomlCursor cursor = new TomlCursor(text);
    cursor.returnTo(start, table.line());
    cursor.advance(cursor.peek(1) == '[' ? 2 : 1);
    return new TomlValues(cursor).key().size();
  }

  /**
   * Says whether a table stands between braces.
   *
   * @param text the whole text
   * @param table a table read from it
   * @return true for {@code { ... }}
   */
  public static boolean isBraced(String text, TomlValue.Table table) {
    int at = indexOf(text, table.line(), table.column());
    return at < text.length() && text.charAt(at) == '{';
  }

  /** Where a line and column lie in a text. */
  private static int indexOf(String text, int line, int column) {
    int start = 0;
    for (int i = 1; i < line; i++) {
      start = text.indexOf('\n', start) + 1;
    }
    if (start == 0 && text.startsWith("\ufeff")) {
      start = 1;
    }
    return text.offsetByCodePoints(start, column - 1);
  }

  private static int end(String text, TomlValue value) {
    int start = indexOf(text, value.line(), value.column());
    TomlCursor cursor = new TomlCursor(text);
    cursor.returnTo(start, value.line());
    new TomlValues(cursor).value(true);
    int end = cursor.index();
    while (text.charAt(end - 1) == ' ' || text.charAt(end - 1) == '\t') {
      end--;
    }
    return end;
  }
}
