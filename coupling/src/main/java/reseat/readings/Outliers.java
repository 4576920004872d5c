package reseat.readings;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * Readings that do not look like the others: flagged, never removed.
 *
 * <p>A single outlier is tested by Grubbs' statistic G = max |y - mean| / s. Several outliers can
 * hide one another from it (each swells s), so the series is searched with the generalised extreme
 * deviate test of Rosner, which takes away the most distant reading up to a stated number of times,
 * tests each time with a limit made for that step, and reports as many as the last step that
 * exceeded its limit. The first step is Grubbs' test. The chance of flagging anything in a clean
 * normal series is the significance stated, for 25 readings or more; below that it is a little
 * higher.
 *
 * @param flagged readings flagged, most distant first; empty if none
 * @param significance chance of a false flag in a clean series
 * @param searched how many outliers were searched for
 */
public record Outliers(List<Flag> flagged, double significance, int searched) {

  /** Copies the list. */
  public Outliers {
    flagged = List.copyOf(flagged);
  }

  /**
   * A flagged reading.
   *
   * @param index place in the series, from 0
   * @param value the reading
   * @param statistic its distance from the mean of the readings left at that step, over their s
   * @param limit limit of the statistic at that step
   */
  public record Flag(int index, double value, double statistic, double limit) {}

  /**
   * Searches a series.
   *
   * @param readings the readings, in one unit
   * @param significance chance of a false flag, for instance 0.05
   * @return the flags; none for fewer than 5 readings or for a series without scatter
   */
  public static Outliers of(double[] readings, double significance) {
    int most = readings.length < 5 ? 0 : Math.max(1, Math.min(10, readings.length / 8));
    return of(readings, significance, most);
  }

  /**
   * Searches a series for up to a stated number of outliers.
   *
   * @param readings the readings, in one unit
   * @param significance chance of a false flag, between 0 and 1
   * @param most most outliers searched for, at most readings less 3
   * @return the flags
   */
  public static Outliers of(double[] readings, double significance, int most) {
    ScatterBounds.requireConfidence(significance);
    int n = readings.length;
    if (most < 0 || most > Math.max(0, n - 3)) {
      throw new IllegalArgumentException(
          "of " + n + " readings at most " + Math.max(0, n - 3) + " can be tested, asked " + most);
    }
    boolean[] gone = new boolean[n];
    List<Flag> steps = new ArrayList<>();
    int last = 0;
    for (int i = 0; i < most; i++) {
      Flag flag = mostDistant(readings, gone, n - i, significance);
      if (flag.statistic() == 0) {
        break;
      }
      steps.add(flag);
      gone[flag.index()] = true;
      if (flag.statistic() > flag.limit()) {
        last = i + 1;
      }
    }
    return new Outliers(steps.subList(0, last), significance, most);
  }

  private static Flag mostDistant(double[] y, boolean[] gone, int left, double significance) {
    double origin = 0;
    for (int i = 0; i < y.length; i++) {
      if (!gone[i]) {
        origin = y[i];
        break;
      }
    }
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < y.length; i++) {
      if (!gone[i]) {
        sum += y[i] - origin;
      }
    }
    double mean = sum / left;
    int far = -1;
    double distance = -1;
    for (int i = 0; i < y.length; i++) {
      if (!gone[i]) {
        double d = Math.abs(y[i] - origin - mean);
        squares += d * d;
        if (d > distance) {
          distance = d;
          far = i;
        }
      }
    }
    double s = Math.sqrt(squares / (left - 1));
    double g = s == 0 ? 0 : distance / s;
    return new Flag(far, y[far], g, grubbsTwoSided(left, significance));
  }

  /**
   * Returns Grubbs' statistic.
   *
   * @param readings three readings or more, not all equal
   * @return max |y - mean| / s
   */
  public static double statistic(double[] readings) {
    Repeatability r = Repeatability.of(readings);
    if (r.isWithoutScatter()) {
      throw new IllegalArgumentException("Grubbs' statistic needs readings that scatter");
    }
    return Math.max(r.max() - r.mean(), r.mean() - r.min()) / r.s();
  }

  /**
   * Returns the limit of Grubbs' statistic when either end may be the outlier.
   *
   * @param n number of readings, 3 or more
   * @param significance chance of a false flag
   * @return the limit
   */
  public static double grubbsTwoSided(int n, double significance) {
    return grubbsOneSided(n, significance / 2);
  }

  /**
   * Returns the limit of Grubbs' statistic when only one, stated, end may be the outlier.
   *
   * @param n number of readings, 3 or more
   * @param significance chance of a false flag
   * @return (n - 1) / sqrt(n) sqrt(t² / (n - 2 + t²)), t the upper quantile at significance / n
   */
  public static double grubbsOneSided(int n, double significance) {
    if (n < 3) {
      throw new IllegalArgumentException("Grubbs' test needs at least 3 readings, found " + n);
    }
    double t =
        new TDistribution(null, n - 2.0, 1e-12).inverseCumulativeProbability(1 - significance / n);
    return (n - 1) / Math.sqrt(n) * Math.sqrt(t * t / (n - 2 + t * t));
  }
}
