package reseat.report.form;

import java.util.ArrayDeque;
import java.util.Deque;
import reseat.report.page.Versions;
import reseat.space.Vec3;
import reseat.units.FilledText;
import reseat.units.PrintedNumber;

/**
 * Writes JSON (RFC 8259), indented, keys in the order in which they are given.
 *
 * <p>Numbers are written so that reading them gives the same double again. Infinity has no number
 * in JSON and is written as {@code null}: there is no such limit. A value that is not a number is
 * refused.
 */
public final class JsonWriter {

  private final StringBuilder text = new StringBuilder();
  private final Deque<Character> open = new ArrayDeque<>();
  private boolean first = true;
  private boolean afterKey;

  /**
   * Opens the object that holds all others, with the versions on which its figures rest.
   *
   * @return this writer
   */
  public JsonWriter beginDocument() {
    return beginObject()
        .key("versions")
        .beginObject()
        .key("program")
        .value(Versions.program())
        .key("catalog")
        .value(Versions.catalog())
        .key("physics")
        .value(Versions.physics())
        .end();
  }

  /**
   * Opens an object.
   *
   * @return this writer
   */
  public JsonWriter beginObject() {
    return begin('{', '}');
  }

  /**
   * Opens an array.
   *
   * @return this writer
   */
  public JsonWriter beginArray() {
    return begin('[', ']');
  }

  private JsonWriter begin(char opening, char closing) {
    place();
    text.append(opening);
    open.push(closing);
    first = true;
    return this;
  }

  /**
   * Closes what was opened last.
   *
   * @return this writer
   */
  public JsonWriter end() {
    char closing = open.pop();
    if (!first) {
      newLine();
    }
    text.append(closing);
    first = false;
    return this;
  }

  /**
   * Writes a key; a value, object or array must follow.
   *
   * @param name the key
   * @return this writer
   */
  public JsonWriter key(String name) {
    place();
    quote(name);
    text.append(": ");
    afterKey = true;
    return this;
  }

  /**
   * Writes a text.
   *
   * @param value the text
   * @return this writer
   */
  public JsonWriter value(String value) {
    place();
    quote(value);
    return this;
  }

  /**
   * Writes a number.
   *
   * @param value infinity is written as {@code null}
   * @return this writer
   */
  public JsonWriter value(double value) {
    if (Double.isNaN(value)) {
      throw new IllegalArgumentException("a result must be a number, found NaN");
    }
    place();
    // adding zero turns -0.0, which says nothing to a reader, into 0.0
    text.append(Double.isInfinite(value) ? "null" : PrintedNumber.shortest(value + 0.0));
    return this;
  }

  /**
   * Writes a whole number.
   *
   * @param value the number
   * @return this writer
   */
  public JsonWriter value(long value) {
    place();
    text.append(value);
    return this;
  }

  /**
   * Writes true or false.
   *
   * @param value which
   * @return this writer
   */
  public JsonWriter value(boolean value) {
    place();
    text.append(value);
    return this;
  }

  /**
   * Writes that there is no such value.
   *
   * @return this writer
   */
  public JsonWriter none() {
    place();
    text.append("null");
    return this;
  }

  /**
   * Writes a vector as an array of three numbers.
   *
   * @param value the vector
   * @return this writer
   */
  public JsonWriter value(Vec3 value) {
    return row(value.x(), value.y(), value.z());
  }

  /**
   * Writes numbers as an array on one line.
   *
   * @param values the numbers; infinity is written as {@code null}
   * @return this writer
   */
  public JsonWriter row(double... values) {
    place();
    text.append('[');
    for (int i = 0; i < values.length; i++) {
      first = true;
      afterKey = true;
      text.append(i == 0 ? "" : ", ");
      value(values[i]);
    }
    text.append(']');
    return this;
  }

  /**
   * Returns all that was written.
   *
   * @return a whole JSON text, with an end of line
   * @throws IllegalStateException if something is still open
   */
  public String finish() {
    if (!open.isEmpty()) {
      throw new IllegalStateException("an object or array is still open");
    }
    return text.append('\n').toString();
  }

  private void place() {
    if (afterKey) {
      afterKey = false;
    } else if (!open.isEmpty()) {
      if (!first) {
        text.append(',');
      }
      newLine();
    }
    first = false;
  }

  private void newLine() {
    text.append('\n').append("  ".repeat(open.size()));
  }

  private void quote(String value) {
    text.append('"');
    for (int i = 0; i < value.length(); i++) {
      char c = value.charAt(i);
      switch (c) {
        case '"' -> text.append("\\\"");
        case '\\' -> text.append("\\\\");
        case '\n' -> text.append("\\n");
        case '\t' -> text.append("\\t");
        case '\r' -> text.append("\\r");
        default -> {
          if (c < ' ') {
            text.append(FilledText.of("\\u%04x", (int) c));
          } else {
            text.append(c);
          }
        }
      }
    }
    text.append('"');
  }
}
