package reseat.readings;

import java.util.Optional;
import reseat.elementary.Elementary;

/**
 * A slip of the hand that would explain why one reading is far from the others.
 *
 * @param slip what was done
 * @param meant what was then meant, m or rad
 * @param unit the slip of unit; empty for the other slips
 */
public record OutlierCause(Slip slip, double meant, Optional<UnitSlip> unit) {

  /** Standard deviations from the others within which a corrected reading fits. */
  private static final double FITS = 2.5;

  private static final int MOST_DECIMALS = 6;

  /** What was done. */
  public enum Slip {
    /** The other sign. */
    SIGN,
    /** Two neighbouring digits exchanged. */
    DIGITS,
    /** Another unit, or a decimal point one place off. */
    UNIT
  }

  /**
   * Looks for a slip.
   *
   * @param reading the reading that stands out, m or rad
   * @param usual mean of the others of its holder
   * @param s standard deviation of the others
   * @param column its column, for the digits as written
   * @return the slip with which it would fit, if there is one
   */
  static Optional<OutlierCause> of(double reading, double usual, double s, ReadingColumn column) {
    double near = FITS * s;
    // where the others lie about zero, either sign fits and tells nothing
    if (Math.abs(usual) > near && Math.abs(-reading - usual) <= near) {
      return Optional.of(new OutlierCause(Slip.SIGN, -reading, Optional.empty()));
    }
    Optional<UnitSlip> unit = UnitSlip.between(reading, usual, s);
    if (unit.isPresent()) {
      return Optional.of(new OutlierCause(Slip.UNIT, usual, unit));
    }
    double one = column.written().toSi(1) - column.written().toSi(0);
    int decimals = decimals(column.values(), one);
    double scale = Elementary.pow(10, decimals);
    long digits = (long) Elementary.rint(Math.abs(reading) / one * scale);
    double sign = reading < 0 ? -1 : 1;
    for (long place = 1; place * 10 <= digits; place *= 10) {
      long low = digits / place % 10;
      long high = digits / (place * 10) % 10;
      long other = digits + (low - high) * place * 10 + (high - low) * place;
      double meant = sign * other / scale * one;
      if (low != high && Math.abs(meant - usual) <= near) {
        return Optional.of(new OutlierCause(Slip.DIGITS, meant, Optional.empty()));
      }
    }
    return Optional.empty();
  }

  /** Decimals with which the readings were written. */
  private static int decimals(double[] values, double one) {
    for (int decimals = 0; decimals < MOST_DECIMALS; decimals++) {
      double scale = Elementary.pow(10, decimals) / one;
      boolean whole = true;
      for (int i = 0; i < values.length && whole; i++) {
        double v = values[i] * scale;
        whole = Double.isNaN(v) || Math.abs(v - Elementary.rint(v)) < 1e-6 + 1e-12 * Math.abs(v);
      }
      if (whole) {
        return decimals;
      }
    }
    return MOST_DECIMALS;
  }
}
