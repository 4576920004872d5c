package reseat.designfile;

/**
 * Another value for a key of a design file.
 *
 * @param key the key
 * @param value as it would be typed, without quotation marks: {@code 12.7 mm}, {@code 0.12}, {@code
 *     440C}; a list or a table in TOML's own writing
 */
public record Alteration(DesignKey key, String value) {}
