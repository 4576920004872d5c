package reseat.units;

/**
 * A mistake at a place of a text, before it is known to whom it will be told.
 *
 * @param cause the kind of mistake
 * @param found what is wrong, to be read after the text
 * @param advice what to write instead
 * @param offset where the trouble begins, in characters from 0
 */
record QuantityMistake(UnitProblem.Cause cause, String found, String advice, int offset) {

  /** The finished problem. */
  UnitProblem in(String text, QuantityKind expected) {
    return new UnitProblem(cause, text, found, expected.allowed(), advice, offset);
  }
}
