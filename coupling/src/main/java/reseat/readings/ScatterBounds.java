package reseat.readings;

import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.special.Gamma;
import reseat.elementary.Elementary;
import reseat.units.PrintedNumber;

/**
 * Bounds on the true standard deviation, given the one found in n mounts.
 *
 * <p>For normal readings (n - 1) s² / sigma² has a chi-square distribution with n - 1 degrees of
 * freedom, so sigma lies between s sqrt((n - 1) / chi²) at the two quantiles. Few mounts leave
 * sigma badly known: five leave it uncertain upward by a factor of 2.9, thirty by 1.34 (two-sided,
 * 95 %).
 *
 * @param s standard deviation found, with n - 1
 * @param n number of mounts
 * @param confidence confidence level, between 0 and 1
 * @param lower lower end of the two-sided interval, same unit as s
 * @param upper upper end of the two-sided interval
 * @param lowerOneSided value the true standard deviation exceeds with the stated confidence
 * @param upperOneSided value the true standard deviation stays below with the stated confidence
 */
public record ScatterBounds(
    double s,
    int n,
    double confidence,
    double lower,
    double upper,
    double lowerOneSided,
    double upperOneSided) {

  private static final double QUANTILE_ACCURACY = 1e-12;

  /**
   * Returns the bounds.
   *
   * @param s standard deviation found, 0 or more
   * @param n number of mounts, 2 or more
   * @param confidence confidence level, between 0 and 1
   * @return the bounds, in the unit of s
   */
  public static ScatterBounds of(double s, int n, double confidence) {
    requireConfidence(confidence);
    if (!(s >= 0) || Double.isInfinite(s)) {
      throw new IllegalArgumentException(
          "standard deviation must be 0 or more, found " + PrintedNumber.shortest(s));
    }
    double tail = (1 - confidence) / 2;
    return new ScatterBounds(
        s,
        n,
        confidence,
        s * factor(n, 1 - tail),
        s * factor(n, tail),
        s * factor(n, confidence),
        s * upperFactor(n, confidence));
  }

  /**
   * Returns the bounds when all readings fell on one step of the gauge.
   *
   * <p>With the true mean in the middle of a step of width q, n mounts of standard deviation sigma
   * all fall on it with probability (2 Phi(q / 2 sigma) - 1)^n; anywhere else the chance is
   * smaller. Sigma is bounded by the value at which that chance is one less the confidence.
   *
   * @param resolution step of the gauge, positive
   * @param n number of mounts, 2 or more
   * @param confidence confidence level, between 0 and 1
   * @return bounds with s and lower ends 0, in the unit of the step
   */
  public static ScatterBounds ofEqualReadings(double resolution, int n, double confidence) {
    requireConfidence(confidence);
    if (!(resolution > 0)) {
      throw new IllegalArgumentException(
          "the step of the gauge must be positive, found " + PrintedNumber.shortest(resolution));
    }
    double share = Elementary.pow(1 - confidence, 1.0 / requireTwo(n));
    double z = new NormalDistribution(null, 0, 1).inverseCumulativeProbability((1 + share) / 2);
    double sigma = resolution / (2 * z);
    return new ScatterBounds(0, n, confidence, 0, sigma, 0, sigma);
  }

  /**
   * Returns the one-sided factor: the true standard deviation is below this many times s.
   *
   * @param n number of mounts, 2 or more
   * @param confidence confidence level, between 0 and 1
   * @return multiplier of s
   */
  public static double upperFactor(int n, double confidence) {
    requireConfidence(confidence);
    return factor(n, 1 - confidence);
  }

  private static double factor(int n, double probability) {
    return Math.sqrt((n - 1) / chiSquareQuantile(probability, requireTwo(n) - 1));
  }

  /**
   * Returns a quantile of the chi-square distribution.
   *
   * @param probability lower-tail probability, between 0 and 1
   * @param freedom degrees of freedom, positive
   * @return the value that a chi-square variable stays below with that probability
   */
  public static double chiSquareQuantile(double probability, double freedom) {
    return new ChiSquaredDistribution(null, freedom, QUANTILE_ACCURACY)
        .inverseCumulativeProbability(probability);
  }

  /**
   * Returns a two-sided quantile of Student's t distribution.
   *
   * @param confidence probability of lying between minus and plus the quantile
   * @param freedom degrees of freedom, positive
   * @return the quantile
   */
  public static double studentFactor(double confidence, double freedom) {
    requireConfidence(confidence);
    return new TDistribution(null, freedom, QUANTILE_ACCURACY)
        .inverseCumulativeProbability((1 + confidence) / 2);
  }

  /**
   * Returns the mean of s / sigma for normal readings, known as c4: dividing s by it removes the
   * bias of s.
   *
   * @param n number of mounts, 2 or more
   * @return sqrt(2 / (n - 1)) Gamma(n / 2) / Gamma((n - 1) / 2)
   */
  public static double meanOfS(int n) {
    requireTwo(n);
    return Math.sqrt(2.0 / (n - 1))
        * Elementary.exp(Gamma.logGamma(n / 2.0) - Gamma.logGamma((n - 1) / 2.0));
  }

  /**
   * Returns the half width of the confidence interval of the mean.
   *
   * @param s standard deviation found
   * @param n number of mounts, 2 or more
   * @param confidence confidence level, between 0 and 1
   * @return t s / sqrt(n), in the unit of s
   */
  public static double halfWidthOfMean(double s, int n, double confidence) {
    return studentFactor(confidence, requireTwo(n) - 1.0) * s / Math.sqrt(n);
  }

  /**
   * Refuses a probability that is not strictly between 0 and 1.
   *
   * @param confidence the confidence level
   */
  static void requireConfidence(double confidence) {
    if (!(confidence > 0 && confidence < 1)) {
      throw new IllegalArgumentException(
          "confidence must be between 0 and 1, for instance 0.95, found "
              + PrintedNumber.shortest(confidence));
    }
  }

  private static int requireTwo(int n) {
    if (n < 2) {
      throw new IllegalArgumentException(
          "bounds on a standard deviation need at least 2 mounts, found " + n);
    }
    return n;
  }
}
