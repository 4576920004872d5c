package reseat.study;

import reseat.check.Finding;
import reseat.units.PrintedNumber;

/**
 * What came out for one output.
 *
 * @param value SI; infinite if the event never happens
 * @param limit what the check that judges it allows or wants, SI; infinite if none does
 * @param sense on which side of the limit the value should be
 */
public record OutputValue(double value, double limit, Finding.Sense sense) {

  /** Refuses what is no number. */
  public OutputValue {
    if (Double.isNaN(value) || Double.isNaN(limit)) {
      throw new IllegalArgumentException(
          "an output must be a number, found " + PrintedNumber.shortest(value));
    }
  }

  /**
   * Returns a value that no check judges.
   *
   * @param value SI
   * @return the value without limit
   */
  static OutputValue free(double value) {
    return new OutputValue(value, Double.POSITIVE_INFINITY, Finding.Sense.AT_MOST);
  }

  static OutputValue atMost(double value, double limit) {
    return new OutputValue(value, limit, Finding.Sense.AT_MOST);
  }

  static OutputValue atLeast(double value, double limit) {
    return new OutputValue(value, limit, Finding.Sense.AT_LEAST);
  }

  /**
   * Says whether there is a limit.
   *
   * @return true if a check judges the value
   */
  public boolean isLimited() {
    return Double.isFinite(limit);
  }

  /**
   * Says whether the limit is kept.
   *
   * @return true also where there is none
   */
  public boolean holds() {
    return !isLimited() || (sense == Finding.Sense.AT_MOST ? value <= limit : value >= limit);
  }
}
