/**
 * TOML documents with the place of every key and value.
 *
 * <p>{@link reseat.toml.TomlReader} turns text into a tree of {@link reseat.toml.TomlValue}s and a
 * list of syntax errors; it never throws for bad text. Lines and columns count from 1, columns in
 * characters. Knows nothing of designs or units; imports nothing of the project.
 */
package reseat.toml;
