package reseat.readings;

import org.apache.commons.math3.distribution.TDistribution;
import reseat.elementary.Elementary;

/**
 * A straight line through readings, and whether its slope is more than chance.
 *
 * @param n number of readings
 * @param slope slope, unit of the readings per unit of the abscissa
 * @param intercept reading of the line where the abscissa is 0
 * @param slopeError standard error of the slope
 * @param correlation correlation coefficient, -1 to 1; 0 if either does not vary
 * @param residual standard deviation about the line, with n - 2 (less one for each further group)
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
    return perMount(readings, Groups.one(readings.length));
  }

  /**
   * Fits readings of several groups against the number of the mount, counted from 1 over all.
   *
   * @param readings readings
   * @param groups group of each
   * @return the trend per mount
   */
  static LinearTrend perMount(double[] readings, Groups groups) {
    double[] x = new double[readings.length];
    for (int i = 0; i < x.length; i++) {
      x[i] = i + 1;
    }
    return of(x, readings, groups);
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  /**
   * Fits one slope to readings of several groups, each with its own mean.
   *
   * @param x abscissa, varying within a group
   * @param y readings, as many
   * @param groups group of each reading, at least two degrees of freedom
   * @return the trend; the intercept is that of the mean of all readings
   */
  static LinearTrend of(double[] x, double[] y, Groups groups) {
    int n = y.length;
    if (groups.freedom() < 2 || x.length != n) {
      throw new IllegalArgumentException(
          "a trend needs at least 3 readings with as many abscissae, found " + n + ", " + x.length);
    }
    double[] dx = groups.deviations(x);
    double[] dy = groups.deviations(y);
    double sxx = dot(dx, dx);
    double syy = dot(dy, dy);
    if (sxx == 0) {
      throw new IllegalArgumentException("a trend needs an abscissa that varies");
    }
    double sxy = dot(dx, dy);
    double slope = sxy / sxx;
    double intercept = Repeatability.of(y).mean() - slope * Repeatability.of(x).mean();
    double rest = 0;
    for (int i = 0; i < n; i++) {
      double e = dy[i] - slope * dx[i];
      rest += e * e;
    }
    if (rest <= 1e-28 * n * syy) {
      rest = 0;
    }
    int freedom = groups.freedom() - 1;
    double residual = Math.sqrt(rest / freedom);
    double error = residual / Math.sqrt(sxx);
    double t =
        slope == 0 ? 0 : error == 0 ? Elementary.copySign(Double.MAX_VALUE, slope) : slope / error;
    double r = syy == 0 ? 0 : Math.max(-1, Math.min(1, sxy / Math.sqrt(sxx * syy)));
    return new LinearTrend(n, slope, intercept, error, r, residual, t, twoSided(t, freedom));
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
