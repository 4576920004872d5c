package reseat.budget;

import reseat.space.Vec3;
import reseat.units.PrintedNumber;

/**
 * One line of an error budget.
 *
 * @param source what errs, in words
 * @param nature whether it differs from mount to mount or stays
 * @param input standard uncertainty of the source, in {@code unit}; zero if it has no single number
 * @param unit unit of the input, for instance {@code N}; empty if it has no single number
 * @param shape shape of its distribution, in words
 * @param contribution standard uncertainty at the tool point along the machine axes, m; not
 *     negative
 */
public record BudgetLine(
    String source, Nature nature, double input, String unit, String shape, Vec3 contribution) {

  /** Whether an error differs from mount to mount. */
  public enum Nature {
    /** Differs every time the holder is mounted: repeatability. */
    RANDOM,
    /** Stays the same for one holder: removed by its offset, apart from the calibration. */
    SYSTEMATIC
  }

  /** Refuses a nameless line and negative numbers. */
  public BudgetLine {
    if (source.isBlank()) {
      throw new IllegalArgumentException("a budget line needs a source");
    }
    if (!(input >= 0)) {
      throw new IllegalArgumentException(
          "a standard uncertainty cannot be negative: " + PrintedNumber.shortest(input));
    }
    if (contribution.x() < 0 || contribution.y() < 0 || contribution.z() < 0) {
      throw new IllegalArgumentException("contributions to a budget cannot be negative");
    }
  }

  /**
   * Returns how much the tool point answers to the source.
   *
   * @return m per unit of the input along the machine axes; zero if the source has no single number
   */
  public Vec3 sensitivity() {
    return input > 0 ? contribution.times(1 / input) : Vec3.ZERO;
  }
}
