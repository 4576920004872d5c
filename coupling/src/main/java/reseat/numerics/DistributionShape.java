package reseat.numerics;

import reseat.elementary.Elementary;

/** Shape of a distribution between two limits that lie evenly about its middle. */
public enum DistributionShape {
  /** Every value between the limits equally likely. */
  UNIFORM,
  /** Normal with the limits at two standard deviations, cut off at the limits. */
  NORMAL,
  /** Triangular, the middle likeliest. */
  TRIANGULAR,
  /** Arcsine, the limits likeliest (a quantity that swings, such as room temperature). */
  ARCSINE;

  /** Standard deviation of a normal distribution cut at two standard deviations, over sigma. */
  private static final double CUT_NORMAL = 0.8796256610342398;

  /** Excess kurtosis of a normal distribution cut at two standard deviations. */
  private static final double CUT_NORMAL_KURTOSIS = -0.6344632828703505;

  /**
   * Returns the standard deviation over the half-width between the limits.
   *
   * @return dimensionless; JCGM 100:2008, 4.3, for uniform, triangular and arcsine shapes
   */
  public double standardDeviationPerLimit() {
    return switch (this) {
      case UNIFORM -> 1 / Math.sqrt(3);
      case NORMAL -> CUT_NORMAL / 2;
      case TRIANGULAR -> 1 / Math.sqrt(6);
      case ARCSINE -> 1 / Math.sqrt(2);
    };
  }

  /**
   * Returns the excess kurtosis.
   *
   * @return fourth central moment over the square of the variance, less 3; closed forms of the four
   *     distributions
   */
  public double excessKurtosis() {
    return switch (this) {
      case UNIFORM -> -1.2;
      case NORMAL -> CUT_NORMAL_KURTOSIS;
      case TRIANGULAR -> -0.6;
      case ARCSINE -> -1.5;
    };
  }

  /**
   * Draws a value between the limits -1 and 1.
   *
   * @param stream where the luck comes from; one uniform number is used
   * @return a value of this shape, to be multiplied with the half-width
   */
  public double draw(RandomStream stream) {
    return switch (this) {
      case UNIFORM -> 2 * stream.uniform() - 1;
      case NORMAL -> stream.normalWithinTwo() / 2;
      case TRIANGULAR -> {
        double u = 2 * stream.uniform() - 1;
        yield u < 0 ? Math.sqrt(1 + u) - 1 : 1 - Math.sqrt(1 - u);
      }
      case ARCSINE -> Elementary.sin(Math.PI * (stream.uniform() - 0.5));
    };
  }

  /**
   * Returns the shape in words.
   *
   * @return for instance {@code normal, cut at the limits}
   */
  public String words() {
    return switch (this) {
      case UNIFORM -> "uniform";
      case NORMAL -> "normal, cut at the limits";
      case TRIANGULAR -> "triangular";
      case ARCSINE -> "arcsine";
    };
  }
}
