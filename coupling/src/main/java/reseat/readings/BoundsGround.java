package reseat.readings;

import java.util.OptionalDouble;

/**
 * What the bounds on sigma rest on, and whether the readings bear it: a normal shape, and each
 * reading by itself.
 *
 * <p>An upper bound that is meant to hold 95 times in a hundred holds 77 to 80 times for readings
 * as skewed as waiting times (skewness 2) and 86 to 88 times where neighbours are correlated by
 * 0.5, of 10 to 30 mounts (simulated in the test of this class).
 *
 * @param skewness mean cube of the deviations over the cube of their standard deviation; 0 for a
 *     symmetric shape
 * @param shapeP chance of a shape so far from normal by luck ({@link NormalShape}); empty if too
 *     few mounts say anything
 * @param neighbours correlation of each reading with the next one of the same holder, lag 1; 0 for
 *     independent readings, less by about 1/n
 * @param orderP chance of neighbours so alike or so unlike by luck ({@link SuccessiveDifferences});
 *     empty if too few mounts say anything
 */
public record BoundsGround(
    double skewness, OptionalDouble shapeP, double neighbours, OptionalDouble orderP) {

  /**
   * Looks at readings that scatter.
   *
   * @param readings readings in the order of the mounts, not all equal to the mean of their group
   * @param groups holder of each
   * @param shapeP chance of the shape
   * @param orderP chance of the order
   * @return what the bounds rest on
   */
  static BoundsGround of(
      double[] readings, Groups groups, OptionalDouble shapeP, OptionalDouble orderP) {
    double[] d = groups.deviations(readings);
    double squares = 0;
    double cubes = 0;
    for (double v : d) {
      squares += v * v;
      cubes += v * v * v;
    }
    double products = 0;
    for (double[] part : groups.split(d)) {
      for (int i = 1; i < part.length; i++) {
        products += part[i] * part[i - 1];
      }
    }
    double s = Math.sqrt(squares / d.length);
    return new BoundsGround(cubes / (d.length * s * s * s), shapeP, products / squares, orderP);
  }

  /**
   * Tells whether the shape is not that of normal readings.
   *
   * @param falseAlarm chance of saying so of normal readings
   * @return true if luck alone would seldom shape them so
   */
  public boolean isNotNormal(double falseAlarm) {
    return shapeP.isPresent() && shapeP.getAsDouble() < falseAlarm;
  }

  /**
   * Tells whether the readings hang together in the order of the mounts.
   *
   * @param falseAlarm chance of saying so of independent readings
   * @return true if luck alone would seldom order them so
   */
  public boolean isNotIndependent(double falseAlarm) {
    return orderP.isPresent() && orderP.getAsDouble() < falseAlarm;
  }
}
