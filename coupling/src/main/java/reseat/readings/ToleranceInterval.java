package reseat.readings;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.analysis.solvers.UnivariateSolverUtils;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;
import reseat.units.PrintedNumber;

/**
 * Factors k of the tolerance interval: mean plus and minus k s holds at least a share of all future
 * mounts, with a stated confidence.
 *
 * <p>The exact two-sided factor solves
 *
 * <p>integral of sqrt(n) phi(sqrt(n) x) P(chi² &gt; (n - 1) r(x)² / k²) dx = confidence,
 *
 * <p>where x is the error of the mean in standard deviations and r(x) the half width that holds the
 * share about a mean so shifted: Phi(x + r) - Phi(x - r) = share. The exact one-sided factor solves
 * the same integral with r(x) = z - x, which is the noncentral t distribution written out. Howe's
 * and Natrella's closed forms are kept because handbooks print them.
 *
 * <p>Normal readings are assumed.
 */
public final class ToleranceInterval {

  private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);
  private static final int PANELS = 16;
  private static final double REACH = 8.5;
  private static final GaussIntegratorFactory GAUSS = new GaussIntegratorFactory();

  private ToleranceInterval() {}

  /**
   * Returns the exact two-sided factor.
   *
   * @param n number of mounts, 2 or more
   * @param share share of future mounts to be held, between 0 and 1
   * @param confidence confidence level, between 0 and 1
   * @return k, multiplier of s; relative error about 1e-8
   */
  public static double twoSided(int n, double share, double confidence) {
    require(n, share, confidence);
    double start = howe(n, share, confidence);
    UnivariateFunction excess =
        k -> 2 * meanOver(n, 0, x -> chiAbove(n, halfWidth(x, share) / k)) - confidence;
    return root(excess, start);
  }

  /**
   * Returns the exact one-sided factor.
   *
   * @param n number of mounts, 2 or more
   * @param share share of future mounts to stay below mean + k s, between 0.5 and 1
   * @param confidence confidence level, between 0.5 and 1
   * @return k, multiplier of s; relative error about 1e-8
   */
  public static double oneSided(int n, double share, double confidence) {
    require(n, share, confidence);
    if (share < 0.5 || confidence < 0.5) {
      throw new IllegalArgumentException(
          "one-sided factor: share and confidence must be at least 0.5, found "
              + PrintedNumber.shortest(share)
              + " and "
              + PrintedNumber.shortest(confidence));
    }
    double z = NORMAL.inverseCumulativeProbability(share);
    UnivariateFunction excess =
        k -> meanOver(n, -1, x -> chiAbove(n, Math.max(0, (z - x) / k))) - confidence;
    return root(excess, twoSided(n, share, confidence));
  }

  /**
   * Returns Howe's approximation of the two-sided factor.
   *
   * @param n number of mounts, 2 or more
   * @param share share of future mounts to be held
   * @param confidence confidence level
   * @return z((1 + share) / 2) sqrt((n - 1)(1 + 1/n) / chi²), with the lower chi-square quantile
   */
  public static double howe(int n, double share, double confidence) {
    require(n, share, confidence);
    double z = NORMAL.inverseCumulativeProbability((1 + share) / 2);
    double chi = ScatterBounds.chiSquareQuantile(1 - confidence, n - 1.0);
    return z * Math.sqrt((n - 1) * (1 + 1.0 / n) / chi);
  }

  /**
   * Returns Natrella's approximation of the one-sided factor.
   *
   * @param n number of mounts; more than z²/2 + 1 for the confidence chosen
   * @param share share of future mounts to stay below mean + k s
   * @param confidence confidence level
   * @return the factor
   */
  public static double natrella(int n, double share, double confidence) {
    require(n, share, confidence);
    double zp = NORMAL.inverseCumulativeProbability(share);
    double zg = NORMAL.inverseCumulativeProbability(confidence);
    double a = 1 - zg * zg / (2.0 * (n - 1));
    double b = zp * zp - zg * zg / n;
    if (a <= 0) {
      throw new IllegalArgumentException(
          "the approximation does not hold for so few mounts (" + n + ")");
    }
    return (zp + Math.sqrt(zp * zp - a * b)) / a;
  }

  private static void require(int n, double share, double confidence) {
    if (n < 2) {
      throw new IllegalArgumentException(
          "a tolerance interval needs at least 2 mounts, found " + n);
    }
    if (!(share > 0 && share < 1)) {
      throw new IllegalArgumentException(
          "the share of mounts must be between 0 and 1, found " + PrintedNumber.shortest(share));
    }
    ScatterBounds.requireConfidence(confidence);
  }

  /** Integral over the error x of the mean, from 0 or from the far left, by panels. */
  private static double meanOver(int n, int from, UnivariateFunction f) {
    double root = Math.sqrt(n);
    double lo = from * REACH;
    double width = (REACH - lo) / PANELS;
    UnivariateFunction weighted = u -> NORMAL.density(u) * f.value(u / root);
    double sum = 0;
    for (int i = 0; i < PANELS; i++) {
      GaussIntegrator panel = GAUSS.legendre(10, lo + i * width, lo + (i + 1) * width);
      sum += panel.integrate(weighted);
    }
    return sum;
  }

  private static double chiAbove(int n, double ratio) {
    double nu = n - 1.0;
    return 1 - new ChiSquaredDistribution(null, nu).cumulativeProbability(nu * ratio * ratio);
  }

  /** Half width about a mean shifted by x that holds the share, all in standard deviations. */
  private static double halfWidth(double x, double share) {
    double z = NORMAL.inverseCumulativeProbability((1 + share) / 2);
    UnivariateFunction excess =
        r -> NORMAL.cumulativeProbability(x + r) - NORMAL.cumulativeProbability(x - r) - share;
    if (excess.value(z) >= 0) {
      return z;
    }
    return new BrentSolver(1e-12, 1e-14).solve(200, excess, z, z + x + 1);
  }

  private static double root(UnivariateFunction excess, double start) {
    double[] bracket = UnivariateSolverUtils.bracket(excess, start, 1e-6, 1e6, 0.1 * start, 1, 200);
    return new BrentSolver(1e-11, 1e-12).solve(200, excess, bracket[0], bracket[1]);
  }
}
