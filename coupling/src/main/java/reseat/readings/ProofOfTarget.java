package reseat.readings;

import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import reseat.units.PrintedNumber;

/**
 * Whether a series proves that the true scatter is within a target, and how many more mounts it
 * would take.
 *
 * <p>Proven means: the one-sided upper bound of the true standard deviation is at or below the
 * target. Refuted means: the one-sided lower bound is above it. Between the two the series is too
 * short to tell, and as long as s is below the target a longer one with the same s would tell.
 *
 * @param target largest standard deviation allowed, same unit as s
 * @param bounds what the series says of the true standard deviation
 * @param verdict proven, refuted or open
 * @param mountsWanted number of mounts, in all, whose bound would meet the target if s stays what
 *     it is; the present number if proven, and 0 if s is not below the target, when no number would
 */
public record ProofOfTarget(
    double target, ScatterBounds bounds, Verdict verdict, int mountsWanted) {

  /** Longest series that is worth proposing. */
  static final int MOST_MOUNTS = 100_000;

  /** What the series says of the target. */
  public enum Verdict {
    /** The true scatter is within the target, with the stated confidence. */
    PROVEN,
    /** The true scatter is above the target, with the stated confidence. */
    REFUTED,
    /** The series is too short to say either. */
    OPEN
  }

  /** Refuses a target that is not positive. */
  public ProofOfTarget {
    requireTarget(target);
  }

  /**
   * Returns what a series says of a target.
   *
   * @param series the series
   * @param target largest standard deviation allowed, positive, in the unit of the series
   * @param confidence confidence level, for instance 0.95
   * @return the verdict, with the number of mounts wanted
   */
  public static ProofOfTarget of(Repeatability series, double target, double confidence) {
    return of(series.bounds(confidence), target);
  }

  /**
   * Returns what bounds on the scatter say of a target.
   *
   * @param bounds the bounds; their confidence is that of the verdict
   * @param target largest standard deviation allowed, positive, in the unit of the bounds
   * @return the verdict, with the number of mounts wanted
   */
  public static ProofOfTarget of(ScatterBounds bounds, double target) {
    requireTarget(target);
    Verdict verdict =
        bounds.upperOneSided() <= target
            ? Verdict.PROVEN
            : bounds.lowerOneSided() > target ? Verdict.REFUTED : Verdict.OPEN;
    int wanted =
        verdict == Verdict.PROVEN
            ? bounds.n()
            : bounds.s() < target ? mountsFor(bounds.s() / target, bounds.confidence()) : 0;
    return new ProofOfTarget(target, bounds, verdict, wanted);
  }

  /**
   * Returns how many more mounts are wanted.
   *
   * @return mounts beyond those made; 0 if proven or if no number would do
   */
  public int furtherMounts() {
    return Math.max(0, mountsWanted - bounds.n());
  }

  /**
   * Returns the number of mounts at which the upper bound meets the target.
   *
   * @param ratio standard deviation found over target, between 0 and 1
   * @param confidence confidence level
   * @return least number of mounts, 2 or more; 0 if it is above {@value #MOST_MOUNTS}
   */
  public static int mountsFor(double ratio, double confidence) {
    if (!(ratio >= 0 && ratio < 1)) {
      throw new IllegalArgumentException(
          "the ratio of scatter to target must be from 0 to below 1, found "
              + PrintedNumber.shortest(ratio));
    }
    if (ratio * ScatterBounds.upperFactor(MOST_MOUNTS, confidence) > 1) {
      return 0;
    }
    int lo = 1;
    int hi = MOST_MOUNTS;
    while (hi - lo > 1) {
      int mid = (lo + hi) >>> 1;
      if (ratio * ScatterBounds.upperFactor(mid, confidence) <= 1) {
        hi = mid;
      } else {
        lo = mid;
      }
    }
    return hi;
  }

  /**
   * Returns the chance that a series will prove the target.
   *
   * @param n number of mounts, 2 or more
   * @param ratio true standard deviation over target, positive
   * @param confidence confidence level of the proof
   * @return probability that the upper bound comes out at or below the target
   */
  public static double chanceOfProof(int n, double ratio, double confidence) {
    if (!(ratio > 0)) {
      throw new IllegalArgumentException(
          "the ratio of scatter to target must be positive, found "
              + PrintedNumber.shortest(ratio));
    }
    double chi = ScatterBounds.chiSquareQuantile(1 - confidence, n - 1.0);
    return new ChiSquaredDistribution(null, n - 1.0).cumulativeProbability(chi / (ratio * ratio));
  }

  private static void requireTarget(double target) {
    if (!(target > 0) || Double.isInfinite(target)) {
      throw new IllegalArgumentException(
          "the target for the standard deviation must be positive, found "
              + PrintedNumber.shortest(target));
    }
  }
}
