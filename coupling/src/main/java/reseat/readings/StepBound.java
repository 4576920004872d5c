package reseat.readings;

import java.util.Arrays;
import java.util.Optional;
import org.apache.commons.math3.distribution.BetaDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * Bounds on the true standard deviation where the gauge reads in steps.
 *
 * <p>Where the true scatter is three quarters of a step or more, rounding only adds to the scatter
 * of the readings (a twelfth of the squared step, Sheppard's correction), and the usual bound
 * holds. Below that the scatter of the readings says little: with the mean in the middle of a step,
 * which hides most, a reading leaves that step with the chance 2 (1 - Phi(q / 2 sigma)), and sigma
 * is bounded by how many did (Clopper and Pearson's bound on that chance). The larger of the two
 * bounds counts then, and nothing below the rounding of one step is shown.
 *
 * <p>From below, a scatter of the readings up to half a step may be nothing but a mean between two
 * steps.
 */
final class StepBound {

  /** True scatter, in steps, from which on rounding only adds. */
  static final double FINE = 0.75;

  /** Scatter of readings, in steps, that may still come from a mean between two steps. */
  private static final double BETWEEN = 0.6;

  /** Variance of the readings, in squared steps, beyond the true one: 1/12 and what FINE leaves. */
  private static final double ROUNDING = 1.0 / 12 + 0.01;

  private StepBound() {}

  /**
   * Bounds the true scatter.
   *
   * @param s scatter of the readings, or what is left of it
   * @param of the readings themselves
   * @param step step of the gauge, 0 if it is fine
   * @param noise stated noise of the gauge, below which nothing is shown
   * @param confidence confidence level
   * @return bounds; empty if no holder was mounted twice, or nothing scatters by a gauge of unknown
   *     step
   */
  static Optional<ScatterBounds> of(
      PooledScatter s, KeptReadings of, double step, double noise, double confidence) {
    if (s.freedom() < 1 || (s.s() == 0 && step == 0)) {
      return Optional.empty();
    }
    ScatterBounds b =
        s.s() == 0
            ? ScatterBounds.ofEqualReadings(step, s.freedom() + 1, confidence)
            : s.bounds(confidence);
    if (step > 0 && s.s() > 0) {
      b = widen(b, step, off(of.values(), of.groups(), step));
    }
    return Optional.of(
        new ScatterBounds(
            b.s(),
            b.n(),
            b.confidence(),
            b.lower(),
            Math.max(noise, b.upper()),
            b.lowerOneSided(),
            Math.max(noise, b.upperOneSided())));
  }

  /**
   * Counts the readings off the step on which most of their group lie.
   *
   * @param readings readings, multiples of the step with one offset
   * @param groups group of each
   * @param step step of the gauge, positive
   * @return readings elsewhere, over all groups
   */
  static int off(double[] readings, Groups groups, double step) {
    int off = 0;
    for (double[] part : groups.split(readings)) {
      double[] sorted = part.clone();
      Arrays.sort(sorted);
      int most = 0;
      int run = 0;
      for (int i = 0; i < sorted.length; i++) {
        run = i > 0 && sorted[i] - sorted[i - 1] < step / 2 ? run + 1 : 1;
        most = Math.max(most, run);
      }
      off += sorted.length - most;
    }
    return off;
  }

  /**
   * Lets the step enter bounds on the scatter.
   *
   * @param bounds bounds as for a gauge without steps
   * @param step step of the gauge, positive, in the unit of the bounds
   * @param off readings off the step on which most lie
   * @return wider bounds where the step is not fine beside them
   */
  static ScatterBounds widen(ScatterBounds bounds, double step, int off) {
    double tail = (1 - bounds.confidence()) / 2;
    return new ScatterBounds(
        bounds.s(),
        bounds.n(),
        bounds.confidence(),
        lower(bounds.lower(), step),
        upper(bounds.upper(), step, off, bounds.n(), tail),
        lower(bounds.lowerOneSided(), step),
        upper(bounds.upperOneSided(), step, off, bounds.n(), 1 - bounds.confidence()));
  }

  private static double upper(double usual, double step, int off, int n, double tail) {
    if (usual >= FINE * step) {
      return usual;
    }
    return Math.max(Math.max(usual, counted(step, off, n, tail)), GaugeNoise.ROUNDING * step);
  }

  /** Largest scatter at which so few readings leave the middle step, with at least the tail. */
  private static double counted(double step, int off, int n, double tail) {
    if (off >= n) {
      return Double.POSITIVE_INFINITY;
    }
    double leave =
        new BetaDistribution(null, off + 1.0, n - off, 1e-12)
            .inverseCumulativeProbability(1 - tail);
    double z = new NormalDistribution(null, 0, 1).inverseCumulativeProbability(1 - leave / 2);
    return z > 0 ? step / (2 * z) : Double.POSITIVE_INFINITY;
  }

  private static double lower(double usual, double step) {
    if (usual >= 2 * step) {
      return usual;
    }
    return usual < BETWEEN * step ? 0 : Math.sqrt(usual * usual - ROUNDING * step * step);
  }
}
