package reseat.toml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tomlj.Toml;
import org.tomlj.TomlArray;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/** Reads TOML text; the only class that knows the library which parses it. */
public final class TomlReader {

  private final String[] lines;

  private TomlReader(String text) {
    lines = text.split("\n", -1);
  }

  /**
   * Reads a document.
   *
   * @param text the whole text
   * @return what was understood, and the errors
   */
  public static TomlDocument read(String text) {
    TomlParseResult parsed = Toml.parse(text);
    List<TomlDocument.SyntaxError> errors = new ArrayList<>();
    parsed
        .errors()
        .forEach(
            e ->
                errors.add(
                    new TomlDocument.SyntaxError(
                        e.position().line(), e.position().column(), e.getMessage())));
    TomlReader reader = new TomlReader(text);
    return new TomlDocument(reader.table(parsed, 1, 1), errors);
  }

  private TomlValue.Table table(TomlTable table, int line, int column) {
    Map<String, TomlValue.Entry> entries = new LinkedHashMap<>();
    table.keySet().stream()
        .map(key -> List.of(key))
        .sorted(
            (a, b) -> {
              TomlPosition p = table.inputPositionOf(a);
              TomlPosition q = table.inputPositionOf(b);
              return p.line() != q.line()
                  ? Integer.compare(p.line(), q.line())
                  : Integer.compare(p.column(), q.column());
            })
        .forEach(
            key -> {
              TomlPosition at = table.inputPositionOf(key);
              int valueColumn = afterEquals(at);
              entries.put(
                  key.get(0),
                  new TomlValue.Entry(
                      value(table.get(key), at.line(), valueColumn), at.line(), at.column()));
            });
    return new TomlValue.Table(entries, line, column);
  }

  private int afterEquals(TomlPosition key) {
    String text = key.line() <= lines.length ? lines[key.line() - 1] : "";
    int at = text.indexOf('=', Math.min(text.length(), key.column() - 1)) + 1;
    if (at == 0) {
      return key.column();
    }
    while (at < text.length() && text.charAt(at) == ' ') {
      at++;
    }
    return at + 1;
  }

  private TomlValue value(Object value, int line, int column) {
    if (value instanceof String text) {
      return new TomlValue.Text(text, line, column);
    }
    if (value instanceof Long number) {
      return new TomlValue.Numeral(number, true, line, column);
    }
    if (value instanceof Double number) {
      return new TomlValue.Numeral(number, false, line, column);
    }
    if (value instanceof Boolean flag) {
      return new TomlValue.Flag(flag, line, column);
    }
    if (value instanceof TomlTable table) {
      return table(table, line, column);
    }
    if (value instanceof TomlArray array) {
      List<TomlValue> values = new ArrayList<>();
      for (int i = 0; i < array.size(); i++) {
        TomlPosition at = array.inputPositionOf(i);
        values.add(value(array.get(i), at.line(), at.column()));
      }
      return new TomlValue.Array(values, line, column);
    }
    return new TomlValue.Moment(String.valueOf(value), line, column);
  }
}
