package reseat.ballmount;

import java.util.Optional;

/**
 * A Unified designation cut into the parts it is written in; what is not written is empty.
 *
 * @param screwNumber digits after a number sign
 * @param whole whole inches before a fraction
 * @param numerator numerator of the fraction
 * @param denominator its denominator
 * @param plain diameter written as a plain number, or a screw number without its sign
 * @param inches whether a mark says that the diameter is in inches
 * @param threads threads per inch
 */
record UnifiedParts(
    String screwNumber,
    String whole,
    String numerator,
    String denominator,
    String plain,
    boolean inches,
    String threads) {

  /** Cuts a designation that has lost its series and hand; empty if it is not of this kind. */
  static Optional<UnifiedParts> of(String text) {
    DesignationCursor c = new DesignationCursor(text);
    String screwNumber = "";
    String whole = "";
    String numerator = "";
    String denominator = "";
    String plain = "";
    if (c.takes("#")) {
      c.skipBlanks();
      screwNumber = c.digits();
    } else {
      whole = c.digits();
      int beforeFraction = !whole.isEmpty() && c.takesOneOf(" -") ? c.place() : 0;
      whole = beforeFraction == 0 ? "" : whole;
      c.backTo(beforeFraction);
      numerator = c.digits();
      denominator = c.takes("/") ? c.digits() : "";
      if (numerator.isEmpty() || denominator.isEmpty()) {
        whole = "";
        denominator = "";
        c.backTo(0);
        plain = c.number();
      }
    }
    if (screwNumber.isEmpty() && denominator.isEmpty() && plain.isEmpty()) {
      return Optional.empty();
    }
    c.skipBlanks();
    boolean inches = c.takes("in") || c.takes("\"");
    c.skipBlanks();
    if (!c.takes("-")) {
      return Optional.empty();
    }
    c.skipBlanks();
    String threads = c.number();
    c.skipBlanks();
    if (!c.takes("TPI")) {
      c.takes("tpi");
    }
    return threads.isEmpty() || !c.atEnd()
        ? Optional.empty()
        : Optional.of(
            new UnifiedParts(screwNumber, whole, numerator, denominator, plain, inches, threads));
  }
}
