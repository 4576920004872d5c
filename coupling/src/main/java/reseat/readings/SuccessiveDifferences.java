package reseat.readings;

import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * The scatter from one mount to the next, which slow drift does not swell.
 *
 * <p>The mean square successive difference gives sigma² = sum of (y[i+1] - y[i])² / (2 (n - 1)).
 * Beside the ordinary s it tells whether the series wanders: von Neumann's ratio, sum of squared
 * differences over sum of squared deviations, is near 2 for independent readings, well below for
 * drift or wear-in and well above for readings that alternate. Without a trend the ratio has mean 2
 * and variance 4 (n - 2) / (n² - 1) (normal readings, sums about their own mean), and is close to
 * normal for ten readings or more.
 *
 * @param n number of readings
 * @param sigma standard deviation from successive differences, in the unit of the readings
 * @param ratio von Neumann's ratio; 2 if the readings do not vary
 * @param p two-sided probability of a ratio so far from 2 by chance, normal approximation
 */
public record SuccessiveDifferences(int n, double sigma, double ratio, double p) {

  /**
   * Takes the differences of a series.
   *
   * @param readings three readings or more, in the order of the mounts
   * @return sigma and the ratio
   */
  public static SuccessiveDifferences of(double[] readings) {
    if (readings.length < 3) {
      throw new IllegalArgumentException(
          "successive differences need at least 3 readings, found " + readings.length);
    }
    return of(readings, Groups.one(readings.length));
  }

  /**
   * Takes the differences of neighbours of the same group.
   *
   * @param readings readings, in the order of the mounts
   * @param groups group of each, at least one degree of freedom
   * @return sigma and the ratio; variance 4 sum(n - 2) / (f (f + 2)), the sum over groups, f the
   *     degrees of freedom
   */
  static SuccessiveDifferences of(double[] readings, Groups groups) {
    double sum = 0;
    double squares = 0;
    double inner = 0;
    for (double[] part : groups.split(readings)) {
      for (int i = 1; i < part.length; i++) {
        double d = part[i] - part[i - 1];
        sum += d * d;
      }
      inner += Math.max(0, part.length - 2);
    }
    for (double d : groups.deviations(readings)) {
      squares += d * d;
    }
    double f = groups.freedom();
    double ratio = squares == 0 ? 2 : sum / squares;
    double sd = Math.sqrt(4 * inner / (f * (f + 2)));
    double p =
        sd == 0
            ? 1
            : 2
                * new NormalDistribution(null, 0, 1)
                    .cumulativeProbability(-Math.abs(ratio - 2) / sd);
    return new SuccessiveDifferences(
        readings.length, Math.sqrt(sum / (2 * f)), ratio, Math.min(1, p));
  }
}
