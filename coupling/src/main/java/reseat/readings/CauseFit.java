package reseat.readings;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * Which causes, in what amount, would give the scatter that was measured.
 *
 * <p>Each cause has a signature: the covariance it alone would give at its assumed amount. The
 * measured covariance C is fitted by Sigma = known + sum of v S with v &gt;= 0, so that sqrt(v) is
 * the multiplier of the assumed amount (friction scatter, preload scatter, ...). The fit minimises
 * (n - 1)/2 tr[(W⁻¹ (C - Sigma))²], W being the fitted Sigma of the step before, which weighs every
 * entry by its sampling error for normal readings; all subsets of causes are tried, so the
 * nonnegative optimum of each step is exact. To keep W regular, a ten-thousandth of the mean
 * variance is added to each axis of it. The minimum is close to chi-square distributed if the
 * causes explain the scatter.
 *
 * <p>Causes whose signatures are combinations of the others cannot be told apart; they are marked
 * and their bounds widened to what each could be alone.
 *
 * @param shares one per cause, in the order given
 * @param misfit minimum of the weighted sum
 * @param freedom entries of the covariance less causes in use
 * @param p probability of so large a misfit if the causes explain the scatter; 1 with no freedom
 *     left
 */
public record CauseFit(List<Share> shares, double misfit, int freedom, double p) {

  /** Most causes that may be fitted together. */
  public static final int MOST_CAUSES = 8;

  /** Correlation with the other signatures above which a cause cannot be told apart. */
  public static final double INSEPARABLE = 0.95;

  private static final int STEPS = 40;
  private static final double FLOOR = 1e-4;

  /** Copies the list. */
  public CauseFit {
    shares = List.copyOf(shares);
  }

  /**
   * What the fit says of one cause.
   *
   * @param signature the cause
   * @param multiplier measured amount of it over the assumed amount
   * @param low lower bound of the multiplier, one-sided at the confidence of the fit
   * @param high upper bound of the multiplier, one-sided
   * @param share its part of the fitted variance summed over the axes, 0 to 1
   * @param separable false if the other causes could give the same scatter
   */
  public record Share(
      CauseSignature signature,
      double multiplier,
      double low,
      double high,
      double share,
      boolean separable) {}

  /**
   * Fits a measured scatter.
   *
   * @param measured covariance of the series
   * @param mounts number of mounts in it, 3 or more
   * @param known covariance that is known to be there, for instance the gauge's; may be zero
   * @param causes one to {@value #MOST_CAUSES} causes, over the same axes
   * @param confidence confidence of the bounds, for instance 0.95
   * @return the fit
   */
  public static CauseFit of(
      ScatterMatrix measured,
      int mounts,
      ScatterMatrix known,
      List<CauseSignature> causes,
      double confidence) {
    ScatterBounds.requireConfidence(confidence);
    if (causes.isEmpty() || causes.size() > MOST_CAUSES || mounts < 3) {
      throw new IllegalArgumentException(
          "1 to "
              + MOST_CAUSES
              + " causes and at least 3 mounts are needed, found "
              + causes.size()
              + " causes, "
              + mounts
              + " mounts");
    }
    if (!(measured.total() > 0)) {
      throw new IllegalArgumentException("the measured series does not scatter");
    }
    int d = measured.axes().size();
    double floor = FLOOR * measured.total() / d;
    double[] v = new double[causes.size()];
    WeightedCauses fit = null;
    ScatterMatrix weight = measured;
    for (int step = 0; step < STEPS; step++) {
      fit = new WeightedCauses(measured.plus(-1, known), causes, weight, floor, mounts - 1);
      v = fit.best();
      ScatterMatrix model = known;
      for (int k = 0; k < v.length; k++) {
        model = model.plus(v[k], causes.get(k).scatter());
      }
      weight = model.total() > 0 ? model : measured;
    }
    return read(fit, v, causes, weight, confidence);
  }

  private static CauseFit read(
      WeightedCauses fit,
      double[] v,
      List<CauseSignature> causes,
      ScatterMatrix model,
      double confidence) {
    double z = new NormalDistribution(null, 0, 1).inverseCumulativeProbability(confidence);
    List<Share> shares = new ArrayList<>();
    int active = 0;
    for (int k = 0; k < v.length; k++) {
      boolean separable = fit.correlationWithOthers(k) <= INSEPARABLE;
      double error = separable ? fit.error(v, k) : fit.errorAlone(k);
      double most = separable ? v[k] : fit.alone(k);
      active += v[k] > 0 ? 1 : 0;
      shares.add(
          new Share(
              causes.get(k),
              Math.sqrt(v[k]),
              separable ? Math.sqrt(Math.max(0, v[k] - z * error)) : 0,
              Math.sqrt(Math.max(v[k], most + z * error)),
              v[k] * causes.get(k).scatter().total() / model.total(),
              separable));
    }
    int d = model.axes().size();
    int freedom = d * (d + 1) / 2 - active;
    double misfit = fit.misfit(v);
    double p =
        freedom < 1
            ? 1
            : 1 - new ChiSquaredDistribution(null, freedom).cumulativeProbability(misfit);
    return new CauseFit(shares, misfit, Math.max(0, freedom), p);
  }
}
