package reseat.designfile;

import reseat.units.QuantityKind;

/**
 * The values that are reckoned with at all: no measure of a machine lies outside, and inside no
 * product or power of a few of them leaves the numbers of the computer.
 */
final class ValueRange {

  private static final double GREATEST = 1e15;
  private static final double LONGEST = 1e3;
  private static final double LEAST = 1e-25;

  private ValueRange() {}

  /** Says whether an SI value is zero or of a size that is reckoned with. */
  static boolean with(double si, QuantityKind kind) {
    double size = Math.abs(si);
    double most = kind == QuantityKind.LENGTH ? LONGEST : GREATEST;
    return size == 0 || (size >= LEAST && size <= most);
  }

  /** Message about a value outside. */
  static String refusal(String written) {
    return "found " + written + ", no size that a machine can have; check the number and its unit";
  }
}
