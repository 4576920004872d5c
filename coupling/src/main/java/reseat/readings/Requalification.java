package reseat.readings;

import org.apache.commons.math3.distribution.FDistribution;

/**
 * Limits for a later check of an accepted mount: how far the mean of a few mounts may have moved,
 * and how much they may scatter, before the mount has changed.
 *
 * @param baseline series at acceptance
 * @param mounts mounts of each later check, 2 or more
 * @param confidence chance that an unchanged mount passes each of the two limits
 * @param meanShift largest change of the mean, either way, in the unit of the readings
 * @param scatter largest standard deviation of the check
 */
public record Requalification(
    Repeatability baseline, int mounts, double confidence, double meanShift, double scatter) {

  /**
   * Sets the limits.
   *
   * @param baseline series at acceptance
   * @param mounts mounts of each later check, 2 or more
   * @param confidence chance that an unchanged mount passes each limit, for instance 0.99
   * @return t s sqrt(1/n + 1/m) for the mean and s sqrt(F) for the scatter
   */
  public static Requalification of(Repeatability baseline, int mounts, double confidence) {
    ScatterBounds.requireConfidence(confidence);
    if (mounts < 2) {
      throw new IllegalArgumentException(
          "a re-qualification check needs at least 2 mounts, found " + mounts);
    }
    double s = baseline.s();
    double t = ScatterBounds.studentFactor(confidence, baseline.n() - 1.0);
    FDistribution f = new FDistribution(null, mounts - 1.0, baseline.n() - 1.0, 1e-12);
    return new Requalification(
        baseline,
        mounts,
        confidence,
        t * s * Math.sqrt(1.0 / baseline.n() + 1.0 / mounts),
        s * Math.sqrt(f.inverseCumulativeProbability(confidence)));
  }
}
