package reseat.readings;

import java.util.Arrays;

/**
 * How much of a series follows the temperature.
 *
 * <p>Readings are fitted on temperature alone, and on temperature and the number of the mount
 * together. When the temperature runs one way through the test the two cannot be told apart: the
 * correlation of temperature with the number of the mount says so, and the joint slope then has a
 * large error.
 *
 * @param alone readings on temperature, slope in the unit of the readings per kelvin
 * @param correlationWithMount correlation of temperature with the number of the mount
 * @param jointSlope slope on temperature with the number of the mount fitted beside it; equal to
 *     that of the fit alone if the two cannot be separated
 * @param jointSlopeError standard error of the joint slope
 * @param jointP two-sided probability of such a joint slope by chance
 */
public record TemperatureRegression(
    LinearTrend alone,
    double correlationWithMount,
    double jointSlope,
    double jointSlopeError,
    double jointP) {

  /** Correlation above which temperature and the number of the mount count as confounded. */
  public static final double CONFOUNDED = 0.7;

  /** Fewest readings for a fit. */
  public static final int LEAST = 5;

  private static final double INSEPARABLE = 0.999;

  /**
   * Fits a series on its temperatures.
   *
   * @param readings readings in the order of the mounts, five or more
   * @param temperatures temperature at each, K or degrees Celsius; not all equal
   * @return the fits
   * @throws IllegalArgumentException if there are fewer than five or the temperature does not vary
   */
  public static TemperatureRegression of(double[] readings, double[] temperatures) {
    return of(readings, temperatures, Groups.one(readings.length));
  }

  /**
   * Fits readings of several groups on their temperatures, each group with its own mean.
   *
   * @param readings readings in the order of the mounts
   * @param temperatures temperature at each, varying within a group
   * @param groups group of each, at least four degrees of freedom
   * @return the fits
   */
  static TemperatureRegression of(double[] readings, double[] temperatures, Groups groups) {
    int n = readings.length;
    if (groups.freedom() < LEAST - 1 || temperatures.length != n) {
      throw new IllegalArgumentException(
          "a temperature regression needs at least "
              + LEAST
              + " readings with a temperature each, found "
              + n
              + " readings, "
              + temperatures.length
              + " temperatures");
    }
    LinearTrend alone = LinearTrend.of(temperatures, readings, groups);
    LinearTrend warming = LinearTrend.perMount(temperatures, groups);
    double correlation = warming.correlation();
    if (Math.abs(correlation) > INSEPARABLE) {
      return new TemperatureRegression(
          alone, correlation, alone.slope(), alone.slopeError(), alone.p());
    }
    // The slope beside a drift is that on the part of the temperature that does not drift.
    double[] rest = new double[n];
    Arrays.setAll(rest, i -> temperatures[i] - warming.at(i + 1.0));
    double[] steady = groups.deviations(rest);
    LinearTrend drift = LinearTrend.perMount(readings, groups);
    double[] y = new double[n];
    Arrays.setAll(y, i -> readings[i] - drift.at(i + 1.0));
    double[] left = groups.deviations(y);
    double sxx = 0;
    double sxy = 0;
    double syy = 0;
    for (int i = 0; i < n; i++) {
      sxx += steady[i] * steady[i];
      sxy += steady[i] * left[i];
      syy += left[i] * left[i];
    }
    double slope = sxy / sxx;
    int freedom = groups.freedom() - 2;
    double error = Math.sqrt(Math.max(0, syy - slope * sxy) / freedom / sxx);
    double ratio =
        slope == 0 ? 0 : error > 1e-13 * Math.abs(slope) ? slope / error : Double.MAX_VALUE;
    return new TemperatureRegression(
        alone, correlation, slope, error, LinearTrend.twoSided(ratio, freedom));
  }

  /**
   * Tells whether temperature and the number of the mount ran so much together that neither can be
   * blamed.
   *
   * @return true if their correlation exceeds {@value #CONFOUNDED} either way
   */
  public boolean isConfounded() {
    return Math.abs(correlationWithMount) > CONFOUNDED;
  }
}
