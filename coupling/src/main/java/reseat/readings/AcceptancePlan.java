package reseat.readings;

import java.util.List;
import reseat.units.PrintedNumber;

/**
 * A remount test laid out before it is made: how many mounts, how many seatings to wear in first,
 * which probes, and what counts as a pass.
 *
 * <p>The number of mounts is the least whose one-sided upper bound will come out at or below the
 * target with the stated chance, if the true scatter is the one expected. The defaults for wear-in
 * and for the gauge (noise of at most a third of the target) are common practice, no source.
 *
 * @param axis name of the axis
 * @param target largest true standard deviation allowed, m (or rad)
 * @param expected true standard deviation expected, same unit, below the target
 * @param confidence confidence of the proof
 * @param chance chance that the test proves the target if the expectation holds
 * @param mounts mounts to be made after the wear-in
 * @param wearIn seatings before the first reading
 * @param probes probes and where they stand; may be empty
 */
public record AcceptancePlan(
    String axis,
    double target,
    double expected,
    double confidence,
    double chance,
    int mounts,
    int wearIn,
    List<Probe> probes) {

  /** Fewest mounts a plan asks for; below it nothing tells whether a mount has settled. */
  public static final int LEAST_MOUNTS = Settling.LEAST_MOUNTS;

  /** Seatings of wear-in unless another number is asked for: common practice, no source. */
  public static final int WEAR_IN = 50;

  /** Share of the target that the gauge noise may reach: common practice, no source. */
  public static final double GAUGE_SHARE = 1.0 / 3;

  /**
   * Least expected over allowed scatter that a test is planned for unless told, so that it is long
   * enough where a prediction was too kind; with it 23 mounts are planned. Our own choice.
   */
  public static final double LEAST_SHARE = 2.0 / 3;

  /** Expected over allowed scatter from which a test would want more than some 300 mounts. */
  public static final double MOST_SHARE = 0.9;

  /** Wanted chance of proof unless told. */
  public static final double USUAL_CHANCE = 0.8;

  /** Confidence of the proof unless told. */
  public static final double USUAL_CONFIDENCE = 0.95;

  /** Copies the probes and refuses figures that make no plan. */
  public AcceptancePlan {
    probes = List.copyOf(probes);
    ScatterBounds.requireConfidence(confidence);
    ScatterBounds.requireConfidence(chance);
    if (!(expected > 0 && expected < target) || mounts < 2 || wearIn < 0) {
      throw new IllegalArgumentException(
          "a plan needs an expected scatter above 0 and below the target, 2 mounts or more and no"
              + " negative wear-in; found expected "
              + PrintedNumber.shortest(expected)
              + ", target "
              + PrintedNumber.shortest(target)
              + ", mounts "
              + mounts
              + ", wear-in "
              + wearIn);
    }
  }

  /**
   * Lays out a test.
   *
   * @param axis name of the axis
   * @param target largest true standard deviation allowed
   * @param expected true standard deviation expected, above 0 and below the target
   * @param confidence confidence of the proof, for instance 0.95
   * @param chance wanted chance of proof, for instance 0.9
   * @param probes probes and where they stand
   * @return the plan, with {@link #WEAR_IN} seatings of wear-in
   * @throws IllegalArgumentException if the expected scatter is so near the target that no
   *     reasonable number of mounts would do
   */
  public static AcceptancePlan of(
      String axis,
      double target,
      double expected,
      double confidence,
      double chance,
      List<Probe> probes) {
    AcceptancePlan shortest =
        new AcceptancePlan(
            axis, target, expected, confidence, chance, LEAST_MOUNTS, WEAR_IN, probes);
    double ratio = expected / target;
    int hi = LEAST_MOUNTS;
    while (ProofOfTarget.chanceOfProof(hi, ratio, confidence) < chance) {
      hi *= 2;
      if (hi > ProofOfTarget.MOST_MOUNTS) {
        throw new IllegalArgumentException(
            "axis "
                + axis
                + ": the expected scatter is "
                + PrintedNumber.shortest(ratio)
                + " of the target, too near to be proven by any reasonable number of mounts");
      }
    }
    int lo = Math.max(LEAST_MOUNTS - 1, hi / 2);
    while (hi - lo > 1) {
      int mid = (lo + hi) >>> 1;
      if (ProofOfTarget.chanceOfProof(mid, ratio, confidence) < chance) {
        lo = mid;
      } else {
        hi = mid;
      }
    }
    return shortest.withMounts(hi);
  }

  /**
   * Returns the same plan with another number of mounts.
   *
   * @param n mounts, 2 or more
   * @return the changed plan
   */
  public AcceptancePlan withMounts(int n) {
    return new AcceptancePlan(axis, target, expected, confidence, chance, n, wearIn, probes);
  }

  /**
   * Returns the same plan with another wear-in.
   *
   * @param seatings seatings before the first reading, 0 or more
   * @return the changed plan
   */
  public AcceptancePlan withWearIn(int seatings) {
    return new AcceptancePlan(axis, target, expected, confidence, chance, mounts, seatings, probes);
  }

  /**
   * Returns the largest standard deviation that still passes.
   *
   * @return target over the one-sided factor for the number of mounts
   */
  public double passLimit() {
    return target / ScatterBounds.upperFactor(mounts, confidence);
  }

  /**
   * Returns the largest gauge noise with which the test should be made.
   *
   * @return a third of the target
   */
  public double gaugeLimit() {
    return GAUGE_SHARE * target;
  }

  /**
   * Returns the chance that the test passes.
   *
   * @return chance for the planned number of mounts, if the expectation holds
   */
  public double chanceOfPass() {
    return ProofOfTarget.chanceOfProof(mounts, expected / target, confidence);
  }
}
