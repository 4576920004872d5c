package reseat.design;

import reseat.units.PrintedNumber;
import java.util.Objects;

/**
 * Friction coefficient between balls and seats, as a range.
 *
 * @param low least likely value
 * @param nominal value to compute with
 * @param high greatest likely value
 * @param source where the range comes from
 */
public record Friction(double low, double nominal, double high, String source) {

  /** Refuses ranges out of order. */
  public Friction {
    Objects.requireNonNull(source, "source of a friction must be given, found null");
    if (!(low >= 0 && low <= nominal && nominal <= high) || Double.isInfinite(high)) {
      throw new IllegalArgumentException(
          "friction must satisfy 0 <= low <= nominal <= high, found "
              + PrintedNumber.shortest(low)
              + ", "
              + PrintedNumber.shortest(nominal)
              + ", "
              + PrintedNumber.shortest(high));
    }
  }
}
