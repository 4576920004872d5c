package reseat.preload;

import java.util.Locale;
import reseat.numerics.Bounds;

/**
 * Relative scatter of a force: half of its range, the shape of its distribution, and where the
 * figure comes from.
 *
 * @param halfRange half of the range over the nominal force, 0 to below 1; for {@link Shape#NORMAL}
 *     two standard deviations
 * @param shape distribution within the range
 * @param basis how the figure was obtained, to be printed beside it
 */
public record ForceScatter(double halfRange, Shape shape, String basis) {

  /** No scatter at all. */
  public static final ForceScatter NONE =
      new ForceScatter(0, Shape.RECTANGULAR, "constant by its nature");

  /** How the values lie within the range. */
  public enum Shape {
    /** Any value in the range is as likely as another. */
    RECTANGULAR(1 / Math.sqrt(3)),
    /** Values near the middle are likelier: the sum of two equal rectangular ones. */
    TRIANGULAR(1 / Math.sqrt(6)),
    /** Normal distribution, half range taken as two standard deviations. */
    NORMAL(0.5);

    private final double deviationOfUnitHalfRange;

    Shape(double deviationOfUnitHalfRange) {
      this.deviationOfUnitHalfRange = deviationOfUnitHalfRange;
    }
  }

  /** Checks the range. */
  public ForceScatter {
    Bounds.notNegative("relative scatter of the preload", halfRange, "");
    if (!(halfRange < 1)) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "relative scatter of the preload is %.6g (%.4g %%): it must be below 1, or the force"
                  + " may vanish",
              halfRange,
              100 * halfRange));
    }
    if (basis.isBlank()) {
      throw new IllegalArgumentException("the scatter of a preload needs a basis to print");
    }
  }

  /**
   * Rectangular scatter.
   *
   * @param halfRange half range over the nominal force
   * @param basis how the figure was obtained
   * @return the scatter
   */
  public static ForceScatter rectangular(double halfRange, String basis) {
    return new ForceScatter(halfRange, Shape.RECTANGULAR, basis);
  }

  /**
   * Standard deviation.
   *
   * @return standard deviation over the nominal force
   */
  public double standardDeviation() {
    return halfRange * shape.deviationOfUnitHalfRange;
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
