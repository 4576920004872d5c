package reseat.readings;

import org.apache.commons.math3.distribution.TDistribution;

/**
 * One step of a search for outliers: the reading farthest from the mean of its group among those
 * left, with its distance in pooled standard deviations.
 *
 * <p>With f degrees of freedom and m readings left in its group, the distance over s sqrt(1 - 1/m)
 * is an internally studentised residual, whose limit is sqrt(f t² / (f - 1 + t²)), t the quantile
 * of Student's distribution with f - 1 degrees of freedom at significance / (2 n). With one group
 * that is Grubbs' test to the letter.
 *
 * @param farthest place of the reading, or -1 if nothing scatters
 * @param statistic its distance from the mean of its group, over s
 * @param share sqrt(1 - 1/m)
 * @param left readings left
 * @param freedom degrees of freedom left
 */
record OutlierStep(int farthest, double statistic, double share, int left, int freedom) {

  /**
   * Looks at the readings left.
   *
   * @param y all readings
   * @param groups group of each
   * @param gone readings already taken away
   * @return the step
   */
  static OutlierStep of(double[] y, Groups groups, boolean[] gone) {
    int[] size = new int[groups.count()];
    double[] first = new double[size.length];
    double[] sum = new double[size.length];
    int left = 0;
    for (int i = 0; i < y.length; i++) {
      if (!gone[i]) {
        int g = groups.groupOf(i);
        first[g] = size[g] == 0 ? y[i] : first[g];
        size[g]++;
        sum[g] += y[i] - first[g];
        left++;
      }
    }
    int alive = 0;
    for (int s : size) {
      alive += s > 0 ? 1 : 0;
    }
    int farthest = -1;
    double most = 0;
    double distance = 0;
    double share = 1;
    double squares = 0;
    for (int i = 0; i < y.length; i++) {
      if (!gone[i]) {
        int g = groups.groupOf(i);
        double d = Math.abs(y[i] - first[g] - sum[g] / size[g]);
        squares += d * d;
        double scale = size[g] < 3 ? 0 : Math.sqrt(1 - 1.0 / size[g]);
        if (scale > 0 && d / scale > most) {
          most = d / scale;
          distance = d;
          share = scale;
          farthest = i;
        }
      }
    }
    int freedom = left - alive;
    double s = freedom > 0 ? Math.sqrt(squares / freedom) : 0;
    return s == 0 || freedom < 2
        ? new OutlierStep(-1, 0, 1, left, freedom)
        : new OutlierStep(farthest, distance / s, share, left, freedom);
  }

  /**
   * Returns the limit of the statistic when either end may be the outlier.
   *
   * @param significance chance of a false flag
   * @return the limit
   */
  double limit(double significance) {
    double t =
        new TDistribution(null, freedom - 1.0, 1e-12)
            .inverseCumulativeProbability(1 - significance / (2.0 * left));
    return share * Math.sqrt(freedom * t * t / (freedom - 1 + t * t));
  }
}
