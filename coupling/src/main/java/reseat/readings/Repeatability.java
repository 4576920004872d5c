package reseat.readings;

import reseat.units.PrintedNumber;

/**
 * How well a series of mounts comes back to the same place: mean, standard deviation and range of
 * one probe.
 *
 * <p>"Repeatability" is printed in the trade as 1, 2, 4 or 6 standard deviations or as a range, and
 * rarely says which. Here the standard deviation is the figure that is kept, and each of the other
 * forms carries its multiplier. The four-standard-deviation form is that of the unidirectional
 * repeatability of ISO 230-2 (a band of plus and minus two standard deviations; recalled from
 * memory, the standard was not opened).
 *
 * @param n number of mounts
 * @param mean mean reading, in the unit of the readings
 * @param s standard deviation with n - 1, in the unit of the readings
 * @param min least reading
 * @param max greatest reading
 */
public record Repeatability(int n, double mean, double s, double min, double max) {

  /** Multiplier of the ISO 230-2 unidirectional form: a band of plus and minus two s. */
  public static final double ISO_230_MULTIPLIER = 4;

  /** Refuses fewer than two mounts and figures that are not finite. */
  public Repeatability {
    if (n < 2) {
      throw new IllegalArgumentException(
          "a standard deviation needs at least 2 mounts, found " + n);
    }
    if (!Double.isFinite(mean) || !Double.isFinite(s) || s < 0 || !(max >= min)) {
      throw new IllegalArgumentException(
          "readings must be finite, found mean "
              + PrintedNumber.shortest(mean)
              + ", standard deviation "
              + PrintedNumber.shortest(s));
    }
  }

  /**
   * Returns the figures of a series.
   *
   * <p>Sums are taken from the first reading, so that equal readings give a standard deviation of
   * exactly zero and a large common offset costs no digits.
   *
   * @param readings one reading per mount, any number from 2 up, in one unit
   * @return mean, standard deviation, least and greatest, in that unit
   * @throws IllegalArgumentException if there are fewer than two readings or one is not finite
   */
  public static Repeatability of(double[] readings) {
    int n = readings.length;
    if (n < 2) {
      throw new IllegalArgumentException(
          "a standard deviation needs at least 2 mounts, found " + n);
    }
    double first = readings[0];
    double sum = 0;
    double min = first;
    double max = first;
    for (double y : readings) {
      sum += y - first;
      min = Math.min(min, y);
      max = Math.max(max, y);
    }
    double shift = sum / n;
    double squares = 0;
    double rest = 0;
    for (double y : readings) {
      double d = y - first - shift;
      squares += d * d;
      rest += d;
    }
    double variance = Math.max(0, squares - rest * rest / n) / (n - 1);
    return new Repeatability(n, first + shift, Math.sqrt(variance), min, max);
  }

  /**
   * Returns the range.
   *
   * @return greatest less least reading
   */
  public double range() {
    return max - min;
  }

  /**
   * Returns the repeatability in the four-standard-deviation form of ISO 230-2.
   *
   * @return {@link #ISO_230_MULTIPLIER} times s
   */
  public double iso230() {
    return ISO_230_MULTIPLIER * s;
  }

  /**
   * Tells whether all readings are the same, so that the gauge has seen no scatter at all.
   *
   * @return true if the range is zero
   */
  public boolean isWithoutScatter() {
    return max == min;
  }

  /**
   * Returns what this standard deviation says of the true one.
   *
   * @param confidence confidence level, for instance 0.95
   * @return bounds on the true standard deviation
   */
  public ScatterBounds bounds(double confidence) {
    return ScatterBounds.of(s, n, confidence);
  }
}
