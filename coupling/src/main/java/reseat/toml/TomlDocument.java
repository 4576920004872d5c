package reseat.toml;

import java.util.List;

/**
 * What was read from a TOML text.
 *
 * @param root the top table; holds what could be understood
 * @param errors syntax errors in the order of the text; empty for a good document
 */
public record TomlDocument(TomlValue.Table root, List<SyntaxError> errors) {

  /** Copies the list. */
  public TomlDocument {
    errors = List.copyOf(errors);
  }

  /**
   * Something that is not TOML.
   *
   * @param line line, counted from 1
   * @param column column, counted from 1
   * @param message what was found, and what is expected there
   */
  public record SyntaxError(int line, int column, String message) {}
}
