package reseat.designfile;

import java.util.LinkedHashMap;
import java.util.Map;
import reseat.toml.TomlValue;

/** Puts a value at the place in a file of the one that it replaces. */
final class ValueReplacement {

  private ValueReplacement() {}

  /** A copy of a value, and of all within it, at a place. */
  static TomlValue of(TomlValue value, int line, int column) {
    if (value instanceof TomlValue.Text v) {
      return new TomlValue.Text(v.text(), line, column);
    } else if (value instanceof TomlValue.Numeral v) {
      return new TomlValue.Numeral(v.value(), v.whole(), line, column);
    } else if (value instanceof TomlValue.Flag v) {
      return new TomlValue.Flag(v.value(), line, column);
    } else if (value instanceof TomlValue.Array v) {
      return new TomlValue.Array(
          v.values().stream().map(e -> of(e, line, column)).toList(), line, column);
    } else if (value instanceof TomlValue.Table v) {
      Map<String, TomlValue.Entry> entries = new LinkedHashMap<>();
      v.entries()
          .forEach(
              (k, e) ->
                  entries.put(k, new TomlValue.Entry(of(e.value(), line, column), line, column)));
      return new TomlValue.Table(entries, line, column);
    }
    return value;
  }
}
