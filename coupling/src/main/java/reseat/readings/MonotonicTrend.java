package reseat.readings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * Whether readings mostly rise or mostly fall, whatever the shape and the distribution: the
 * Mann-Kendall test, with the Theil-Sen slope.
 *
 * <p>S counts pairs in which the later reading is higher less pairs in which it is lower. Without a
 * trend its variance is (n(n - 1)(2n + 5) - sum of t(t - 1)(2t + 5)) / 18, the sum over groups of t
 * equal readings; over several groups S and variance are summed. Z = (S -+ 1) / sqrt(variance) is
 * close to normal for ten readings or more.
 *
 * @param n number of readings
 * @param score S
 * @param variance variance of S without a trend, ties allowed for
 * @param z standardised S with continuity correction
 * @param p two-sided probability of such a score by chance
 * @param slope median of the slopes of pairs of readings, per mount
 * @param everyPair true if every pair was taken for the slope; false if, in a long series, each
 *     reading was paired once with the one half the series later
 */
public record MonotonicTrend(
    int n, double score, double variance, double z, double p, double slope, boolean everyPair) {

  /** Longest series in which the slope is taken over every pair. */
  static final int EVERY_PAIR_LIMIT = 2000;

  /**
   * Tests a series.
   *
   * @param readings three readings or more, in the order of the mounts
   * @return the test; p is 1 if all readings are equal
   */
  public static MonotonicTrend of(double[] readings) {
    if (readings.length < 3) {
      throw new IllegalArgumentException(
          "a trend test needs at least 3 readings, found " + readings.length);
    }
    return of(readings, Groups.one(readings.length));
  }

  /**
   * Tests readings of several groups: pairs are taken within a group only.
   *
   * @param readings readings, in the order of the mounts
   * @param groups group of each
   * @return the test; the slope is per mount of the same group
   */
  static MonotonicTrend of(double[] readings, Groups groups) {
    double score = 0;
    double variance = 0;
    List<double[]> slopes = new ArrayList<>();
    boolean every = readings.length <= EVERY_PAIR_LIMIT;
    for (double[] part : groups.split(readings)) {
      double[] sorted = part.clone();
      double falling = inversions(sorted, new double[part.length], 0, part.length);
      score += 0.5 * part.length * (part.length - 1.0) - tiedPairs(sorted) - 2 * falling;
      variance += varianceOf(sorted);
      slopes.add(every ? slopes(part) : slopesOfHalves(part));
    }
    double z = variance > 0 ? (score - Math.signum(score)) / Math.sqrt(variance) : 0;
    double p = 2 * new NormalDistribution(null, 0, 1).cumulativeProbability(-Math.abs(z));
    double[] all = slopes.stream().flatMapToDouble(Arrays::stream).toArray();
    return new MonotonicTrend(
        readings.length,
        score,
        variance,
        z,
        Math.min(1, p),
        all.length == 0 ? 0 : median(all),
        every);
  }

  private static double tiedPairs(double[] sorted) {
    double tied = 0;
    for (int i = 0, j = 0; i < sorted.length; i = j) {
      for (j = i; j < sorted.length && sorted[j] == sorted[i]; ) {
        j++;
      }
      tied += 0.5 * (j - i) * (j - i - 1.0);
    }
    return tied;
  }

  private static double varianceOf(double[] sorted) {
    double n = sorted.length;
    double v = n * (n - 1) * (2 * n + 5);
    for (int i = 0, j = 0; i < sorted.length; i = j) {
      for (j = i; j < sorted.length && sorted[j] == sorted[i]; ) {
        j++;
      }
      double t = j - i;
      v -= t * (t - 1) * (2 * t + 5);
    }
    return v / 18;
  }

  /** Sorts a stretch by merging and counts the pairs that stood in falling order. */
  private static double inversions(double[] a, double[] spare, int from, int to) {
    if (to - from < 2) {
      return 0;
    }
    int mid = (from + to) >>> 1;
    double count = inversions(a, spare, from, mid) + inversions(a, spare, mid, to);
    int i = from;
    int j = mid;
    for (int k = from; k < to; k++) {
      if (j >= to || (i < mid && a[i] <= a[j])) {
        spare[k] = a[i++];
      } else {
        spare[k] = a[j++];
        count += mid - i;
      }
    }
    System.arraycopy(spare, from, a, from, to - from);
    return count;
  }

  private static double[] slopes(double[] y) {
    int n = y.length;
    double[] slopes = new double[n * (n - 1) / 2];
    int k = 0;
    for (int i = 0; i < n; i++) {
      for (int j = i + 1; j < n; j++) {
        slopes[k++] = (y[j] - y[i]) / (j - i);
      }
    }
    return slopes;
  }

  private static double[] slopesOfHalves(double[] y) {
    int half = Math.max(1, y.length / 2);
    double[] slopes = new double[Math.max(0, y.length - half)];
    for (int i = 0; i < slopes.length; i++) {
      slopes[i] = (y[i + half] - y[i]) / half;
    }
    return slopes;
  }

  /**
   * Returns the median.
   *
   * @param values one value or more; left sorted
   * @return middle value, or the mean of the two middle values
   */
  static double median(double[] values) {
    Arrays.sort(values);
    int h = values.length / 2;
    return values.length % 2 == 1 ? values[h] : values[h - 1] + (values[h] - values[h - 1]) / 2;
  }
}
