package reseat.preload;

import java.util.Objects;
import reseat.numerics.Bounds;
import reseat.numerics.Distribution;
import reseat.numerics.DistributionShape;
import reseat.units.FilledText;

/**
 * Relative scatter of a force: half of its range, the shape of its distribution, and where the
 * figure comes from.
 *
 * @param halfRange half of the range over the nominal force, 0 to below 1
 * @param shape distribution within the range
 * @param basis how the figure was obtained, to be printed beside it
 */
public record ForceScatter(double halfRange, DistributionShape shape, String basis) {

  /** No scatter at all. */
  public static final ForceScatter NONE =
      new ForceScatter(0, DistributionShape.UNIFORM, "constant by its nature");

  /** Checks the range. */
  public ForceScatter {
    Objects.requireNonNull(shape, "shape of a force scatter must be given, found null");
    Objects.requireNonNull(basis, "basis of a force scatter must be given, found null");
    Bounds.notNegative("relative scatter of the preload", halfRange, "");
    if (!(halfRange < 1)) {
      throw new IllegalArgumentException(
          FilledText.of(
              "relative scatter of the preload is %.6g (%.4g %%): it must be below 1, or the force"
                  + " may vanish",
              halfRange, 100 * halfRange));
    }
    if (basis.isBlank()) {
      throw new IllegalArgumentException("the scatter of a preload needs a basis to print");
    }
  }

  /**
   * Scatter with every value in the range equally likely.
   *
   * @param halfRange half range over the nominal force
   * @param basis how the figure was obtained
   * @return the scatter
   */
  public static ForceScatter uniform(double halfRange, String basis) {
    return new ForceScatter(halfRange, DistributionShape.UNIFORM, basis);
  }

  /**
   * The scatter as a share of the force, for drawing and adding up.
   *
   * @return half range and shape
   */
  public Distribution spread() {
    return new Distribution(halfRange, shape);
  }

  /**
   * Standard deviation.
   *
   * @return standard deviation over the nominal force
   */
  public double standardDeviation() {
    return spread().standardDeviation();
  }

  /**
   * Largest over smallest force, {@code (1 + x)/(1 - x)}: the tightening factor of VDI 2230.
   *
   * @return ratio, at least 1
   */
  public double largestOverSmallest() {
    return (1 + halfRange) / (1 - halfRange);
  }
}
