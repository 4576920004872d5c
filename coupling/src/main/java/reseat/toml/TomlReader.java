package reseat.toml;

import java.util.ArrayList;
import java.util.List;

/**
 * Reads TOML 1.0.
 *
 * <p>Accepts every document of TOML 1.0.0 within three limits: lists, braced tables and parts of a
 * key nest at most 32 deep, whole numbers fit into 64 bits, and numbers are finite unless written
 * inf or nan. Dates and times are checked and kept as text. Columns count characters (code points).
 *
 * <p>After a mistake reading goes on with the next statement, so that all mistakes come out
 * together; the first {@value #MOST} are kept. A value that could not be read is kept as {@link
 * TomlValue.Unreadable} under its key, so that nobody calls the key missing.
 */
public final class TomlReader {

  /** More mistakes than this are not listed. */
  static final int MOST = 50;

  private final TomlCursor cursor;
  private final TomlValues values;
  private final TableUnderWay root;
  private final List<TomlDocument.SyntaxError> errors = new ArrayList<>();
  private TableUnderWay current;
  private int section;

  private TomlReader(String text) {
    cursor = new TomlCursor(text);
    values = new TomlValues(cursor);
    root = TableUnderWay.opened(new Place(1, 1));
    current = root;
  }

  /**
   * Reads a document.
   *
   * @param text the whole text, with or without a byte order mark, lines ended by LF or CRLF
   * @return what was understood, and the errors
   */
  public static TomlDocument read(String text) {
    TomlReader reader = new TomlReader(text);
    reader.statements();
    return new TomlDocument(reader.root.finished(), reader.errors);
  }

  private void statements() {
    while (!cursor.ended()) {
      int start = cursor.index();
      int line = cursor.line();
      try {
        statement();
      } catch (TomlMistake mistake) {
        if (errors.size() == MOST) {
          errors.add(
              new TomlDocument.SyntaxError(
                  line, 1, "more mistakes follow and are not listed; is this a TOML file?"));
          return;
        }
        errors.add(mistake.error());
        boolean nested = values.nested() || cursor.line() > line;
        new TomlRecovery(cursor, start, line).moveOn(nested);
        values.reset();
      }
    }
  }

  private void statement() {
    cursor.skipBlanks();
    if (cursor.peek() == '[') {
      header();
    } else if (cursor.peek() != '#' && !cursor.atLineEnd()) {
      keyAndValue();
    }
    cursor.skipBlanks();
    if (cursor.peek() == '#') {
      cursor.skipRemark();
    }
    if (!cursor.atLineEnd()) {
      cursor.refuseControl();
      // Values see to their own end, so this can only stand after a header.
      throw cursor.mistake(TomlWording.afterHeader(cursor.restOfLine(cursor.index())));
    }
    cursor.takeLineEnd();
  }

  private void keyAndValue() {
    List<TableUnderWay.Key> keys = values.key();
    Place place = cursor.place();
    TomlValue value;
    try {
      values.equalsSign();
      place = cursor.place();
      value = values.value(false);
    } catch (TomlMistake mistake) {
      current.put(keys, new TomlValue.Unreadable(place.line(), place.column()), section);
      throw mistake;
    }
    current.put(keys, value, section);
  }

  private void header() {
    Place place = cursor.place();
    boolean list = cursor.peek(1) == '[';
    cursor.advance(list ? 2 : 1);
    section++;
    // Keys under a header that cannot be read go nowhere, rather than into the table before it.
    current = TableUnderWay.opened(place);
    List<TableUnderWay.Key> keys = values.key();
    current = list ? root.append(keys, place) : root.open(keys, place);
    if (!cursor.startsWith(list ? "]]" : "]")) {
      throw cursor.mistake(
          list
              ? "this header is not closed; put ]] at its end"
              : "this header is not closed; put ] at its end");
    }
    cursor.advance(list ? 2 : 1);
  }
}
