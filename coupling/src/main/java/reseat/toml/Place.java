package reseat.toml;

/**
 * Where something begins.
 *
 * @param line counted from 1
 * @param column counted from 1, in characters
 */
record Place(int line, int column) {}
