package reseat.toml;

import java.util.ArrayList;
import java.util.List;

/** Reads keys and values; stops at the first mistake of a statement. */
final class TomlValues {

  /** Lists within lists, tables within tables and parts of a key. */
  private static final int DEEPEST = 32;

  private final TomlCursor cursor;
  private final TomlStrings strings;
  private int depth;

  TomlValues(TomlCursor cursor) {
    this.cursor = cursor;
    this.strings = new TomlStrings(cursor);
  }

  /** Whether the last mistake happened within a list or a braced table. */
  boolean nested() {
    return depth > 0;
  }

  /** Forgets a statement that was given up. */
  void reset() {
    depth = 0;
  }

  /** Reads the = after a key; the cursor then stands at the value. */
  void equalsSign() {
    if (!cursor.take('=')) {
      throw cursor.mistake(TomlWording.noEquals(cursor.peek(), cursor.restOfLine(cursor.index())));
    }
    cursor.skipBlanks();
    if (cursor.atLineEnd() || cursor.peek() == '#') {
      throw cursor.mistake("there is no value after the =");
    }
  }

  /** Reads a key of one or more parts with dots between them and blanks after it. */
  List<TableUnderWay.Key> key() {
    List<TableUnderWay.Key> keys = new ArrayList<>(2);
    do {
      cursor.skipBlanks();
      if (keys.size() == DEEPEST) {
        throw cursor.mistake("a key has at most " + DEEPEST + " parts");
      }
      Place place = cursor.place();
      keys.add(new TableUnderWay.Key(keyPart(), place));
      cursor.skipBlanks();
    } while (cursor.take('.'));
    return keys;
  }

  private String keyPart() {
    int c = cursor.peek();
    if (c == '"' || c == '\'') {
      return strings.oneLine((char) c);
    }
    int start = cursor.index();
    while (isBareKey(cursor.peek())) {
      cursor.advance();
    }
    if (cursor.index() == start || Character.isLetter(cursor.peek())) {
      cursor.refuseControl();
      throw cursor.mistake(
          cursor.atLineEnd()
              ? "the line ends where a key should stand"
              : TomlWording.noKey(cursor.peek(), cursor.restOfLine(cursor.index())));
    }
    return cursor.since(start);
  }

  static boolean isBareKey(int c) {
    return (c >= 'a' && c <= 'z')
        || (c >= 'A' && c <= 'Z')
        || (c >= '0' && c <= '9')
        || c == '_'
        || c == '-';
  }

  /**
   * Reads a value and the blanks after it, and sees to it that it ends there.
   *
   * @param inList whether a comma or a closing bracket may follow instead of the end of the line
   */
  TomlValue value(boolean inList) {
    Place place = cursor.place();
    int start = cursor.index();
    TomlValue value =
        switch (cursor.peek()) {
          case '"', '\'' -> new TomlValue.Text(strings.any(), place.line(), place.column());
          case '[' -> list(place);
          case '{' -> braced(place);
          default -> scalar(place, inList);
        };
    cursor.skipBlanks();
    int c = cursor.peek();
    boolean ends = cursor.atLineEnd() || c == '#' || (inList && (c == ',' || c == ']' || c == '}'));
    if (!ends) {
      throw goesOn(value, place, start, inList);
    }
    return value;
  }

  /** What is wrong if something stands right after a value. */
  private TomlMistake goesOn(TomlValue value, Place place, int start, boolean inList) {
    cursor.refuseControl();
    String rest = cursor.restOfLine(cursor.index());
    boolean blankBefore = cursor.since(start).endsWith(" ");
    if (inList && blankBefore && "\"'[{+-0123456789".indexOf(rest.charAt(0)) >= 0) {
      return cursor.mistake(TomlWording.missingComma(rest));
    }
    boolean word =
        value instanceof TomlValue.Numeral
            || value instanceof TomlValue.Moment
            || value instanceof TomlValue.Flag;
    if (word && !TomlWording.isStray(rest)) {
      return new TomlMistake(place, TomlWording.unquoted(cursor.restOfLine(start), inList));
    }
    return cursor.mistake(TomlWording.afterValue(rest, value instanceof TomlValue.Text));
  }

  private TomlValue scalar(Place place, boolean inList) {
    int start = cursor.index();
    while (isScalar(cursor.peek())) {
      cursor.advance();
    }
    String word = cursor.since(start);
    boolean timeFollows =
        cursor.peek() == ' '
            && cursor.peek(1) >= '0'
            && cursor.peek(1) <= '9'
            && TomlScalars.isDate(word);
    if (timeFollows) {
      cursor.advance();
      while (isScalar(cursor.peek())) {
        cursor.advance();
      }
      word = cursor.since(start);
    }
    TomlValue value = word.isEmpty() ? null : TomlScalars.read(word, place);
    if (value == null) {
      cursor.refuseControl();
      throw new TomlMistake(place, TomlWording.unquoted(cursor.restOfLine(start), inList));
    }
    return value;
  }

  private static boolean isScalar(int c) {
    return isBareKey(c) || c == '+' || c == '.' || c == ':';
  }

  private TomlValue list(Place place) {
    enter();
    List<TomlValue> values = new ArrayList<>();
    cursor.skipBlanksAndLines();
    while (!cursor.take(']')) {
      if (cursor.ended()) {
        throw notClosed(place);
      }
      if (cursor.peek() == ',') {
        throw cursor.mistake("a value is missing in front of the comma");
      }
      values.add(element(place));
      cursor.skipBlanksAndLines();
      if (!cursor.take(',') && cursor.peek() != ']') {
        boolean closed = !cursor.ended() && cursor.peek() != '}' && !statementHere();
        String rest = cursor.restOfLine(cursor.index());
        throw closed ? cursor.mistake(TomlWording.missingComma(rest)) : notClosed(place);
      }
      cursor.skipBlanksAndLines();
    }
    depth--;
    return new TomlValue.Array(values, place.line(), place.column());
  }

  private TomlValue element(Place list) {
    boolean laterLine = cursor.line() > list.line();
    int start = cursor.index();
    try {
      return value(true);
    } catch (TomlMistake mistake) {
      // A statement where an element should stand means that the list was not closed before it.
      throw laterLine && TomlRecovery.looksLikeStatement(cursor.restOfLine(start))
          ? notClosed(list)
          : mistake;
    }
  }

  private boolean statementHere() {
    return TomlRecovery.looksLikeStatement(cursor.restOfLine(cursor.index()));
  }

  private static TomlMistake notClosed(Place list) {
    return new TomlMistake(list, "this list is not closed; put ] at its end");
  }

  private TomlValue braced(Place place) {
    enter();
    TableUnderWay table = TableUnderWay.opened(place);
    cursor.skipBlanks();
    boolean more = !cursor.take('}');
    while (more) {
      if (cursor.atLineEnd() || cursor.peek() == '#') {
        throw new TomlMistake(
            place, "a table between { and } stands on one line; put } at its end");
      }
      if (cursor.peek() == '}' || cursor.peek() == ',') {
        throw cursor.mistake("between { and } no comma stands in front of " + (char) cursor.peek());
      }
      List<TableUnderWay.Key> keys = key();
      equalsSign();
      table.put(keys, value(true), 0);
      more = cursor.take(',');
      cursor.skipBlanks();
      if (!more && !cursor.take('}')) {
        throw new TomlMistake(
            place, "a table between { and } stands on one line; put } at its end");
      }
    }
    depth--;
    return table.finished();
  }

  private void enter() {
    cursor.advance();
    if (++depth > DEEPEST) {
      throw cursor.mistake("lists and tables are nested deeper than " + DEEPEST);
    }
  }
}
