package reseat.readings;

import java.util.Arrays;
import java.util.OptionalDouble;
import reseat.units.PrintedNumber;

/**
 * What the gauge adds to the scatter, and what is left for the mount once it is taken away.
 *
 * <p>Variances add: the mount's own standard deviation is sqrt(s² - g²), where g is the standard
 * deviation of repeated readings of an undisturbed mount. A gauge that reads in steps of q adds at
 * least q / sqrt(12) (the standard deviation of rounding); the larger of the two counts, since
 * repeated readings already contain the rounding if they move at all. If g is not below s the mount
 * cannot be told from the gauge: not resolvable.
 *
 * @param s standard deviation of the series
 * @param n number of mounts in the series
 * @param gauge standard deviation of the gauge used, same unit
 * @param resolution step of the gauge, same unit; 0 if it reads continuously
 */
public record GaugeNoise(double s, int n, double gauge, double resolution) {

  /** Standard deviation of rounding to a step of one. */
  public static final double ROUNDING = 1 / Math.sqrt(12);

  /** Fewer readings than this share a common step by chance. */
  static final int ENOUGH_TO_SHOW_A_STEP = 8;

  /** Refuses negative figures. */
  public GaugeNoise {
    if (!(s >= 0) || !(gauge >= 0) || !(resolution >= 0) || n < 2) {
      throw new IllegalArgumentException(
          "gauge noise: scatter, gauge noise and resolution must be 0 or more and mounts 2 or more,"
              + " found "
              + PrintedNumber.shortest(s)
              + ", "
              + PrintedNumber.shortest(gauge)
              + ", "
              + PrintedNumber.shortest(resolution)
              + ", "
              + n);
    }
  }

  /**
   * Returns the scatter of the mount alone.
   *
   * @return sqrt(s² - g²), or empty if the mount cannot be told from the gauge
   */
  public OptionalDouble mount() {
    return s > gauge
        ? OptionalDouble.of(Math.sqrt((s - gauge) * (s + gauge)))
        : OptionalDouble.empty();
  }

  /**
   * Returns a bound on the scatter of the mount alone.
   *
   * @param confidence confidence level
   * @return sqrt(upper bound of sigma², less g²), taking g as known; with no scatter in the
   *     readings or a bound below the gauge noise, the gauge noise itself, since nothing smaller
   *     has been shown
   */
  public double mountBelow(double confidence) {
    double upper = s * ScatterBounds.upperFactor(n, confidence);
    double left = upper > gauge ? Math.sqrt((upper - gauge) * (upper + gauge)) : 0;
    return Math.max(left, gauge);
  }

  /**
   * Tells whether the steps of the gauge are coarse beside the scatter, so that s itself is rough.
   *
   * @return true if the resolution is more than the standard deviation of the series
   */
  public boolean isCoarse() {
    return resolution > s;
  }

  /**
   * Finds the step in which a series was read: the largest step of which all differences between
   * readings are whole multiples.
   *
   * @param readings the readings
   * @param least finest step of interest, for instance a twentieth of the scatter
   * @return the step, or empty if there are fewer than {@value #ENOUGH_TO_SHOW_A_STEP} readings, if
   *     all are equal, or if they show no step as coarse as that
   */
  public static OptionalDouble stepOf(double[] readings, double least) {
    double[] sorted = readings.clone();
    Arrays.sort(sorted);
    double range = sorted.length == 0 ? 0 : sorted[sorted.length - 1] - sorted[0];
    if (!(range > 0) || sorted.length < ENOUGH_TO_SHOW_A_STEP) {
      return OptionalDouble.empty();
    }
    double slack = Math.max(1e-9 * range, 1e-3 * least);
    double step = 0;
    for (int i = 1; i < sorted.length; i++) {
      double gap = sorted[i] - sorted[i - 1];
      step = gap > slack ? commonStep(step, gap, slack) : step;
      if (step > 0 && step < least) {
        return OptionalDouble.empty();
      }
    }
    return step > 0 ? OptionalDouble.of(step) : OptionalDouble.empty();
  }

  /** Euclid's algorithm on lengths, stopped at the slack. */
  private static double commonStep(double a, double b, double slack) {
    double big = Math.max(a, b);
    double small = Math.min(a, b);
    while (small > slack) {
      double rest = big % small;
      rest = Math.min(rest, small - rest);
      big = small;
      small = rest;
    }
    return big;
  }
}
