package reseat.numerics;

import reseat.space.Vec3;

/**
 * Scatter of a vector along three axes.
 *
 * @param count number of vectors
 * @param mean mean
 * @param deviation standard deviation
 * @param least smallest value
 * @param greatest largest value
 * @param band half-width about the mean that holds 95 % of the vectors; zero if not counted
 * @param covered half-width about the mean that holds another share of them, that of the target;
 *     zero if not counted
 * @param covariances covariances of first with second, second with third, third with first axis
 */
public record VectorScatter(
    long count,
    Vec3 mean,
    Vec3 deviation,
    Vec3 least,
    Vec3 greatest,
    Vec3 band,
    Vec3 covered,
    Vec3 covariances) {

  private static final double USUAL = 0.95;

  /**
   * Reads off running sums.
   *
   * @param sums mean, covariance and extremes
   * @param bands counts along the three axes, or none
   * @return the scatter; zeros but for mean and extremes if there are fewer than two vectors
   */
  public static VectorScatter of(RunningCovariance sums, RunningHistogram... bands) {
    return of(sums, USUAL, bands);
  }

  /**
   * Reads off running sums.
   *
   * @param sums mean, covariance and extremes
   * @param share share that {@link #covered} holds, above 0 and below 1
   * @param bands counts along the three axes, or none
   * @return the scatter; zeros but for mean and extremes if there are fewer than two vectors
   */
  public static VectorScatter of(RunningCovariance sums, double share, RunningHistogram... bands) {
    double[] band = new double[3];
    double[] covered = new double[3];
    for (int k = 0; k < bands.length && sums.count() > 1; k++) {
      band[k] = bands[k].halfWidth(sums.mean().component(k), USUAL);
      covered[k] = bands[k].halfWidth(sums.mean().component(k), share);
    }
    return of(sums, band, covered);
  }

  /**
   * Reads off running sums.
   *
   * @param sums mean, covariance and extremes
   * @param share share that {@link #covered} holds, above 0 and below 1
   * @param bands bands along the three axes
   * @return the scatter; zeros but for mean and extremes if there are fewer than two vectors
   */
  public static VectorScatter of(RunningCovariance sums, double share, RunningBand[] bands) {
    double[] band = new double[3];
    double[] covered = new double[3];
    for (int k = 0; k < 3 && sums.count() > 1; k++) {
      band[k] = bands[k].halfWidth(sums.mean().component(k), USUAL);
      covered[k] = bands[k].halfWidth(sums.mean().component(k), share);
    }
    return of(sums, band, covered);
  }

  private static VectorScatter of(RunningCovariance sums, double[] band, double[] covered) {
    if (sums.count() < 1) {
      Vec3 none = Vec3.ZERO;
      return new VectorScatter(0, none, none, none, none, none, none, none);
    }
    boolean scatters = sums.count() > 1;
    return new VectorScatter(
        sums.count(),
        sums.mean(),
        scatters ? sums.standardDeviation() : Vec3.ZERO,
        sums.minimum(),
        sums.maximum(),
        new Vec3(band[0], band[1], band[2]),
        new Vec3(covered[0], covered[1], covered[2]),
        scatters
            ? new Vec3(sums.covariance(0, 1), sums.covariance(1, 2), sums.covariance(2, 0))
            : Vec3.ZERO);
  }

  /**
   * Returns the distance between extremes.
   *
   * @return greatest less least, along each axis
   */
  public Vec3 range() {
    return greatest.minus(least);
  }
}
