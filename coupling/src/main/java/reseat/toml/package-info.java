/**
 * TOML 1.0 documents with the place of every key and value.
 *
 * <p>{@link reseat.toml.TomlReader} turns text into a tree of {@link reseat.toml.TomlValue}s and a
 * list of syntax errors; it never throws for bad text. Lines and columns count from 1, columns in
 * characters. Start reading there: it goes through the statements, {@code TomlValues} reads keys
 * and values (with {@code TomlStrings} and {@code TomlScalars}), {@code TableUnderWay} holds the
 * rules on what may be added to which table, {@code TomlRecovery} finds the statement after a
 * mistake and {@code TomlWording} has the words for people who do not know TOML. A mistake within a
 * statement travels as {@code TomlMistake} and never leaves the package.
 *
 * <p>Why there is a reader of our own: docs/decisions/toml-reader.md. Knows nothing of designs or
 * units; imports nothing of the project.
 */
package reseat.toml;
