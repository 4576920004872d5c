package reseat.toml;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A value in a TOML document, with the place where it begins. */
public sealed interface TomlValue {

  /**
   * Returns the line where the value begins.
   *
   * @return counted from 1
   */
  int line();

  /**
   * Returns the column where the value begins.
   *
   * @return counted from 1, in characters
   */
  int column();

  /**
   * Names the sort of value for a message.
   *
   * @return for instance {@code a list}
   */
  String sort();

  /**
   * Text between quotation marks.
   *
   * @param text the text, escapes resolved
   * @param line line where it begins
   * @param column column of the opening quotation mark
   */
  record Text(String text, int line, int column) implements TomlValue {
    @Override
    public String sort() {
      return "text";
    }
  }

  /**
   * A bare number.
   *
   * @param value its value; not finite for inf and nan
   * @param whole whether it was written without point and exponent
   * @param line line where it begins
   * @param column column where it begins
   */
  record Numeral(double value, boolean whole, int line, int column) implements TomlValue {
    @Override
    public String sort() {
      return "a bare number";
    }
  }

  /**
   * true or false.
   *
   * @param value which
   * @param line line where it begins
   * @param column column where it begins
   */
  record Flag(boolean value, int line, int column) implements TomlValue {
    @Override
    public String sort() {
      return "true or false";
    }
  }

  /**
   * A date or a time.
   *
   * @param text as written
   * @param line line where it begins
   * @param column column where it begins
   */
  record Moment(String text, int line, int column) implements TomlValue {
    @Override
    public String sort() {
      return "a date or time";
    }
  }

  /**
   * A list of values.
   *
   * @param values in order
   * @param line line where it begins
   * @param column column of the opening bracket
   */
  record Array(List<TomlValue> values, int line, int column) implements TomlValue {

    /** Copies the list. */
    public Array {
      values = List.copyOf(values);
    }

    @Override
    public String sort() {
      return "a list";
    }
  }

  /**
   * A table of keys and values.
   *
   * @param entries by key, in the order written
   * @param line line where it begins
   * @param column column where it begins
   */
  record Table(Map<String, Entry> entries, int line, int column) implements TomlValue {

    /** Copies the map and keeps its order. */
    public Table {
      entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
    }

    @Override
    public String sort() {
      return "a table";
    }
  }

  /**
   * A value with a mistake in it; the document has an error about it.
   *
   * @param line line where it begins
   * @param column column where it begins
   */
  record Unreadable(int line, int column) implements TomlValue {
    @Override
    public String sort() {
      return "a value that cannot be read";
    }
  }

  /**
   * A key with its value.
   *
   * @param value the value
   * @param line line of the key
   * @param column column where the key begins
   */
  record Entry(TomlValue value, int line, int column) {}
}
