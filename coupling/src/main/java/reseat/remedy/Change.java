package reseat.remedy;

/**
 * One key of a design file and its new value.
 *
 * @param key as the file words it, names with dots between them
 * @param value as it is typed, without quotation marks
 * @param was as the file has it; empty if the key is absent there, or a list or a table
 */
public record Change(String key, String value, String was) {}
