package reseat.readings;

import org.apache.commons.math3.distribution.FDistribution;
import reseat.units.PrintedNumber;

/**
 * Measured scatter of one axis beside the scatter a simulation foretold, each with its own number
 * of mounts.
 *
 * <p>If both are normal with one true scatter, the ratio of their variances has an F distribution
 * with the two numbers of mounts less one. The interval of the ratio of the true standard
 * deviations follows from the same distribution. A gauge noise should be taken from the measured
 * scatter first, or added to the predicted one.
 *
 * @param axis name of the axis
 * @param measured standard deviation measured
 * @param mounts number of mounts measured
 * @param predicted standard deviation of the simulated mounts, positive, same unit
 * @param simulatedMounts number of mounts simulated
 * @param confidence confidence level of the verdict and of the interval
 * @param p two-sided probability of variances so different from one true scatter
 * @param ratioLow lower end of the interval of measured over predicted standard deviation
 * @param ratioHigh upper end of that interval
 */
public record PredictionTest(
    String axis,
    double measured,
    int mounts,
    double predicted,
    int simulatedMounts,
    double confidence,
    double p,
    double ratioLow,
    double ratioHigh) {

  /** What the test says. */
  public enum Verdict {
    /** The difference is no more than chance allows. */
    AS_PREDICTED,
    /** The mount scatters more than foretold. */
    MORE,
    /** The mount scatters less than foretold. */
    LESS
  }

  /**
   * Tests one axis.
   *
   * @param axis name of the axis
   * @param measured measured series of that axis
   * @param predicted standard deviation of the simulated mounts, positive, in the same unit
   * @param simulatedMounts number of mounts simulated, 2 or more
   * @param confidence confidence level, for instance 0.95
   * @return the test
   */
  public static PredictionTest of(
      String axis,
      Repeatability measured,
      double predicted,
      int simulatedMounts,
      double confidence) {
    return of(axis, measured.s(), measured.n() - 1, predicted, simulatedMounts, confidence);
  }

  /**
   * Tests the scatter of one axis about the means of several holders.
   *
   * @param axis name of the axis
   * @param measured pooled standard deviation
   * @param freedom its degrees of freedom, 1 or more; {@link #mounts()} becomes one more
   * @param predicted standard deviation of the simulated mounts, positive, in the same unit
   * @param simulatedMounts number of mounts simulated, 2 or more
   * @param confidence confidence level, for instance 0.95
   * @return the test
   */
  public static PredictionTest of(
      String axis,
      double measured,
      int freedom,
      double predicted,
      int simulatedMounts,
      double confidence) {
    ScatterBounds.requireConfidence(confidence);
    if (!(predicted > 0) || simulatedMounts < 2) {
      throw new IllegalArgumentException(
          "axis "
              + axis
              + ": a prediction needs a positive standard deviation from at least 2 mounts, found "
              + PrintedNumber.shortest(predicted)
              + " from "
              + simulatedMounts);
    }
    FDistribution f = new FDistribution(null, freedom, simulatedMounts - 1.0, 1e-12);
    double ratio = measured / predicted;
    double below = f.cumulativeProbability(ratio * ratio);
    double tail = (1 - confidence) / 2;
    return new PredictionTest(
        axis,
        measured,
        freedom + 1,
        predicted,
        simulatedMounts,
        confidence,
        Math.min(1, 2 * Math.min(below, 1 - below)),
        ratio / Math.sqrt(f.inverseCumulativeProbability(1 - tail)),
        ratio / Math.sqrt(f.inverseCumulativeProbability(tail)));
  }

  /**
   * Returns how many times the predicted scatter was measured.
   *
   * @return measured over predicted standard deviation
   */
  public double ratio() {
    return measured / predicted;
  }

  /**
   * Returns what the test says.
   *
   * @return the verdict at the stated confidence
   */
  public Verdict verdict() {
    if (p >= 1 - confidence) {
      return Verdict.AS_PREDICTED;
    }
    return measured > predicted ? Verdict.MORE : Verdict.LESS;
  }

  /**
   * Returns the part of the scatter that the prediction does not hold.
   *
   * @return sqrt(measured² - predicted²), or 0 if the prediction holds more
   */
  public double excess() {
    return measured > predicted ? Math.sqrt((measured - predicted) * (measured + predicted)) : 0;
  }
}
