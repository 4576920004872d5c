package reseat.units;

/**
 * Why a text is not the quantity that was expected.
 *
 * @param cause the kind of mistake
 * @param text the whole text as typed
 * @param found what is wrong with it, to be read after the text: {@code has no unit}
 * @param allowed what may stand there
 * @param advice what to write instead
 * @param offset where in the text the trouble begins, in characters from 0
 */
public record UnitProblem(
    Cause cause, String text, String found, String allowed, String advice, int offset)
    implements QuantityReading {

  /** Kinds of mistake. */
  public enum Cause {
    /** Nothing is written. */
    EMPTY,
    /** The text is far too long to be a quantity. */
    TOO_LONG,
    /** The text does not start with a number. */
    NO_NUMBER,
    /** A number stands alone. */
    BARE_NUMBER,
    /** A comma is used as decimal sign. */
    DECIMAL_COMMA,
    /** Digits are grouped. */
    THOUSANDS,
    /** A fraction is malformed or divides by zero. */
    FRACTION,
    /** Infinity or not a number. */
    NOT_FINITE,
    /** The number does not fit into a double. */
    TOO_LARGE,
    /** The number would become zero in a double. */
    TOO_SMALL,
    /** The text starts with plus-minus. */
    PLUS_MINUS,
    /** A screw thread stands where a quantity is expected. */
    THREAD,
    /** More than one number, a range or a product. */
    SEVERAL_NUMBERS,
    /** Degrees, minutes and seconds do not fit together. */
    ANGLE_PARTS,
    /** The unit is not known. */
    UNKNOWN_UNIT,
    /** The unit has two meanings in the trade. */
    AMBIGUOUS_UNIT,
    /** The unit measures something else. */
    WRONG_DIMENSION,
    /** Degrees Celsius or Fahrenheit where a temperature difference is expected. */
    THERMOMETER_FOR_DIFFERENCE,
    /** A temperature below absolute zero. */
    BELOW_ABSOLUTE_ZERO
  }

  /**
   * Says it all in one sentence.
   *
   * @return for instance {@code "12.7" has no unit: write "12.7 mm" or "12.7 in" (allowed: a length
   *     in mm, in, um, uin, thou (0.001 in) or tenth (0.0001 in))}
   */
  public String message() {
    return QuotedText.of(text) + ' ' + found + ": " + advice + " (allowed: " + allowed + ')';
  }
}
