package reseat.readings;

import org.apache.commons.math3.distribution.TDistribution;

/**
 * A straight line through readings, and whether its slope is more than chance.
 *
 * @param n number of readings
 * @param slope slope, unit of the readings per unit of the abscissa
 * @param intercept reading of the line where the abscissa is 0
 * @param slopeError standard error of the slope
 * @param correlation correlation coefficient, -1 to 1; 0 if either does not vary
 * @param residual standard deviation about the line, with n - 2
 * @param t slope over its standard error; the signed greatest double if the line fits exactly
 * @param p two-sided probability of a slope so steep by chance
 */
public record LinearTrend(
    int n,
    double slope,
    double intercept,
    double slopeError,
    double correlation,
    double residual,
    double t,
    double p) {

  /**
   * Fits readings against the number of the mount, counted from 1.
   *
   * @param readings three readings or more
   * @return the trend per mount
   */
  public static LinearTrend perMount(double[] readings) {
    double[] x = new double[readings.length];
    for (int i = 0; i < x.length; i++) {
      x[i] = i + 1;
    }
    return of(x, readings);
  }

  /**
   * Fits readings against an abscissa by least squares.
   *
   * @param x abscissa, not all equal
   * @param y readings, as many, three or more
   * @return the trend
   * @throws IllegalArgumentException if there are fewer than three points or x does not vary
   */
  public static LinearTrend of(double[] x, double[] y) {
    int n = y.length;
    if (n < 3 || x.length != n) {
      throw new IllegalArgumentException(
          "a trend needs at least 3 readings with as many abscissae, found " + n + ", " + x.length);
    }
    Repeatability ax = Repeatability.of(x);
    Repeatability ay = Repeatability.of(y);
    if (ax.isWithoutScatter()) {
      throw new IllegalArgumentException("a trend needs an abscissa that varies");
    }
    double sxx = ax.s() * ax.s() * (n - 1);
    double syy = ay.s() * ay.s() * (n - 1);
    double sxy = 0;
    for (int i = 0; i < n; i++) {
      sxy += (x[i] - ax.mean()) * (y[i] - ay.mean());
    }
    double slope = ay.isWithoutScatter() ? 0 : sxy / sxx;
    double intercept = ay.mean() - slope * ax.mean();
    double rest = 0;
    for (int i = 0; i < n; i++) {
      double e = y[i] - ay.mean() - slope * (x[i] - ax.mean());
      rest += e * e;
    }
    if (rest <= 1e-28 * n * syy) {
      rest = 0;
    }
    double residual = Math.sqrt(rest / (n - 2));
    double error = residual / Math.sqrt(sxx);
    double t = slope == 0 ? 0 : error == 0 ? Math.copySign(Double.MAX_VALUE, slope) : slope / error;
    double r = syy == 0 ? 0 : Math.max(-1, Math.min(1, sxy / Math.sqrt(sxx * syy)));
    return new LinearTrend(n, slope, intercept, error, r, residual, t, twoSided(t, n - 2.0));
  }

  /**
   * Returns the two-sided probability of a t value.
   *
   * @param t the value
   * @param freedom degrees of freedom
   * @return probability of a value at least as far from 0
   */
  static double twoSided(double t, double freedom) {
    if (Math.abs(t) == Double.MAX_VALUE) {
      return 0;
    }
    return Math.min(1, 2 * new TDistribution(null, freedom).cumulativeProbability(-Math.abs(t)));
  }

  /**
   * Returns the line at an abscissa.
   *
   * @param x the abscissa
   * @return the fitted reading
   */
  public double at(double x) {
    return intercept + slope * x;
  }
}
