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
 */
public record Outliers(List<Flag> flagged, double significance) {

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
    return of(readings, significance, mostIn(readings.length));
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
    return of(readings, Groups.one(readings.length), significance, most);
  }

  /**
   * Returns how many outliers are searched for in a series.
   *
   * @param n number of readings
   * @return an eighth of them, at least 1 and at most 10; 0 for fewer than 5
   */
  static int mostIn(int n) {
    return n < 5 ? 0 : Math.max(1, Math.min(10, n / 8));
  }

  /**
   * Searches readings of several groups, each compared with the others of its group. Readings of
   * groups with fewer than three mounts left are not judged: of two that differ, neither is the
   * outlier.
   *
   * @param readings the readings
   * @param groups group of each
   * @param significance chance of a false flag, between 0 and 1
   * @param most most outliers searched for, at most degrees of freedom less 2
   * @return the flags
   */
  static Outliers of(double[] readings, Groups groups, double significance, int most) {
    ScatterBounds.requireConfidence(significance);
    int room = Math.max(0, groups.freedom() - 2);
    if (most < 0 || most > room) {
      throw new IllegalArgumentException(
          "of " + readings.length + " readings at most " + room + " can be tested, asked " + most);
    }
    boolean[] gone = new boolean[readings.length];
    List<Flag> steps = new ArrayList<>();
    int last = 0;
    for (int i = 0; i < most; i++) {
      OutlierStep step = OutlierStep.of(readings, groups, gone);
      if (step.farthest() < 0) {
        break;
      }
      double limit = step.limit(significance);
      steps.add(new Flag(step.farthest(), readings[step.farthest()], step.statistic(), limit));
      gone[step.farthest()] = true;
      if (step.statistic() > limit) {
        last = i + 1;
      }
    }
    return new Outliers(steps.subList(0, last), significance);
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
