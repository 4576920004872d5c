package reseat.readings;

import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;

/**
 * How much of a series follows the temperature.
 *
 * <p>Readings are fitted on temperature alone, and on temperature and the number of the mount
 * together. When the temperature runs one way through the test the two cannot be told apart: the
 * correlation of temperature with the number of the mount says so, and the joint slope then has a
 * large error.
 *
 * @param alone readings on temperature, slope in the unit of the readings per kelvin
 * @param meanTemperature mean temperature of the series, K (or in degrees Celsius, as given)
 * @param temperatureRange greatest less least temperature, K
 * @param correlationWithMount correlation of temperature with the number of the mount
 * @param jointSlope slope on temperature with the number of the mount fitted beside it; equal to
 *     that of the fit alone if the two cannot be separated
 * @param jointSlopeError standard error of the joint slope
 * @param jointP two-sided probability of such a joint slope by chance
 */
public record TemperatureRegression(
    LinearTrend alone,
    double meanTemperature,
    double temperatureRange,
    double correlationWithMount,
    double jointSlope,
    double jointSlopeError,
    double jointP) {

  /** Correlation above which temperature and the number of the mount count as confounded. */
  public static final double CONFOUNDED = 0.7;

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
    int n = readings.length;
    if (n < 5 || temperatures.length != n) {
      throw new IllegalArgumentException(
          "a temperature regression needs at least 5 readings with a temperature each, found "
              + n
              + " readings, "
              + temperatures.length
              + " temperatures");
    }
    LinearTrend alone = LinearTrend.of(temperatures, readings);
    Repeatability t = Repeatability.of(temperatures);
    double correlation = LinearTrend.perMount(temperatures).correlation();
    if (Math.abs(correlation) > INSEPARABLE || Repeatability.of(readings).isWithoutScatter()) {
      return new TemperatureRegression(
          alone, t.mean(), t.range(), correlation, alone.slope(), alone.slopeError(), alone.p());
    }
    double[][] x = new double[n][2];
    for (int i = 0; i < n; i++) {
      x[i][0] = (temperatures[i] - t.mean()) / t.s();
      x[i][1] = (i + 1 - (n + 1) / 2.0) / n;
    }
    Repeatability y = Repeatability.of(readings);
    double[] scaled = new double[n];
    for (int i = 0; i < n; i++) {
      scaled[i] = (readings[i] - y.mean()) / y.s();
    }
    OLSMultipleLinearRegression fit = new OLSMultipleLinearRegression();
    fit.newSampleData(scaled, x);
    double perKelvin = y.s() / t.s();
    double slope = fit.estimateRegressionParameters()[1];
    double error = fit.estimateRegressionParametersStandardErrors()[1];
    double ratio = error > 1e-13 * Math.abs(slope) ? slope / error : Double.MAX_VALUE;
    return new TemperatureRegression(
        alone,
        t.mean(),
        t.range(),
        correlation,
        slope * perKelvin,
        error * perKelvin,
        LinearTrend.twoSided(ratio, n - 3.0));
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

  /**
   * Refers readings to one temperature, with the slope fitted on temperature alone.
   *
   * @param readings readings
   * @param temperatures temperature at each, as in the fit
   * @param reference temperature to refer to, as in the fit
   * @return readings less slope times (temperature - reference)
   */
  public double[] referredTo(double reference, double[] readings, double[] temperatures) {
    double[] out = new double[readings.length];
    for (int i = 0; i < out.length; i++) {
      out[i] = readings[i] - alone.slope() * (temperatures[i] - reference);
    }
    return out;
  }
}
