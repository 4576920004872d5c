package reseat.numerics;

import java.util.Objects;

/**
 * How much a quantity scatters about its nominal value.
 *
 * @param limit half-width between the limits, in the unit of the quantity or as a ratio; zero for
 *     no scatter
 * @param shape shape between the limits
 */
public record Distribution(double limit, DistributionShape shape) {

  /** No scatter. */
  public static final Distribution NONE = new Distribution(0, DistributionShape.UNIFORM);

  /** Refuses negative limits. */
  public Distribution {
    Objects.requireNonNull(shape, "shape of a spread must be given, found null");
    Bounds.notNegative("scatter limit", limit, "");
  }

  /**
   * Returns the standard deviation.
   *
   * @return in the unit of the limit
   */
  public double standardDeviation() {
    return limit * shape.standardDeviationPerLimit();
  }

  /**
   * Draws a deviation from the nominal value.
   *
   * @param stream where the luck comes from; one uniform number is used, also if there is no
   *     scatter
   * @return deviation, in the unit of the limit
   */
  public double draw(RandomStream stream) {
    return limit * shape.draw(stream);
  }

  /**
   * Returns a spread of the same shape and another width.
   *
   * @param factor 0 or more
   * @param most greatest limit of the result, in the unit of the limit; infinite for none
   * @return limit times the factor, or {@code most} if that is less
   */
  public Distribution times(double factor, double most) {
    return new Distribution(Math.min(factor * limit, most), shape);
  }
}
