package reseat.remedy;

/**
 * A lever put to another value.
 *
 * @param lever what is changed
 * @param from as the file has it; empty if it has none, or several
 * @param to as it would be typed
 */
public record Move(Lever lever, String from, String to) {}
