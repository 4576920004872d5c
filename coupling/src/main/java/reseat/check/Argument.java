package reseat.check;

/** One thing that a statement speaks of: an amount, a name, a word of the program, a statement. */
public sealed interface Argument {

  /**
   * An amount that is stated, or whose last noughts say nothing.
   *
   * @param measure what it measures
   * @param si its value in SI; may be infinite
   * @return the argument
   */
  static Amount amount(Measure measure, double si) {
    return new Amount(measure, si, false);
  }

  /**
   * An amount that was computed.
   *
   * @param measure what it measures
   * @param si its value in SI; may be infinite
   * @return the argument
   */
  static Amount computed(Measure measure, double si) {
    return new Amount(measure, si, true);
  }

  /**
   * An amount, SI.
   *
   * @param measure what it measures
   * @param si its value; may be infinite
   * @param computed whether it was computed, not stated: a computed factor keeps the nought it ends
   *     with
   */
  record Amount(Measure measure, double si, boolean computed) implements Argument {}

  /**
   * A name that the user or the catalog gave, or several.
   *
   * @param text the name as it stands
   */
  record Name(String text) implements Argument {}

  /**
   * A word of the program: the kind of a thing.
   *
   * @param value constant that names it
   */
  record Term(Enum<?> value) implements Argument {}

  /**
   * A statement within another.
   *
   * @param statement the inner one
   */
  record Inner(Statement statement) implements Argument {}
}
