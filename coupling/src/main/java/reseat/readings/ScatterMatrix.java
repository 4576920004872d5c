package reseat.readings;

import java.util.Arrays;
import java.util.List;
import reseat.units.PrintedNumber;

/**
 * Covariance of the scatter over several axes: how much, and in which directions.
 *
 * <p>A matrix is symmetric; the difference of two need not be positive, so that only a measured or
 * predicted one has standard deviations.
 */
public final class ScatterMatrix {

  private final List<String> axes;
  private final double[] c;

  private ScatterMatrix(List<String> axes, double[] c) {
    this.axes = List.copyOf(axes);
    this.c = c;
  }

  /**
   * Returns a matrix from its values.
   *
   * @param axes names of the axes
   * @param covariance as many rows and columns, symmetric, squared unit of the readings; copied
   * @return the matrix
   */
  public static ScatterMatrix of(List<String> axes, double[][] covariance) {
    int d = axes.size();
    double[] c = new double[d * d];
    if (d == 0 || covariance.length != d) {
      throw new IllegalArgumentException(
          d + " axes need as many rows of covariance, found " + covariance.length);
    }
    for (int i = 0; i < d; i++) {
      if (covariance[i].length != d) {
        throw new IllegalArgumentException("a covariance must be square");
      }
      for (int j = 0; j < d; j++) {
        double here = covariance[i][j];
        double scale = Math.sqrt(Math.abs(covariance[i][i] * covariance[j][j]));
        if (!Double.isFinite(here) || Math.abs(here - covariance[j][i]) > 1e-9 * scale) {
          throw new IllegalArgumentException(
              "a covariance must be finite and symmetric, found "
                  + PrintedNumber.shortest(here)
                  + " and "
                  + PrintedNumber.shortest(covariance[j][i])
                  + " for "
                  + axes.get(i)
                  + ", "
                  + axes.get(j));
        }
        c[d * i + j] = (here + covariance[j][i]) / 2;
      }
    }
    return new ScatterMatrix(axes, c);
  }

  /**
   * Returns the covariance of a measured series.
   *
   * @param axes names of the axes
   * @param series one array of readings per axis, all of the same length, two or more
   * @return covariance with n - 1
   */
  public static ScatterMatrix ofSeries(List<String> axes, List<double[]> series) {
    int d = axes.size();
    if (series.size() != d || d == 0) {
      throw new IllegalArgumentException(d + " axes need as many series, found " + series.size());
    }
    int n = series.get(0).length;
    double[] means = new double[d];
    for (int i = 0; i < d; i++) {
      if (series.get(i).length != n) {
        throw new IllegalArgumentException("the series of all axes must have the same length");
      }
      means[i] = Repeatability.of(series.get(i)).mean();
    }
    double[] c = new double[d * d];
    for (int i = 0; i < d; i++) {
      for (int j = i; j < d; j++) {
        double sum = 0;
        for (int k = 0; k < n; k++) {
          sum += (series.get(i)[k] - means[i]) * (series.get(j)[k] - means[j]);
        }
        c[d * i + j] = sum / (n - 1);
        c[d * j + i] = c[d * i + j];
      }
    }
    return new ScatterMatrix(axes, c);
  }

  /**
   * Returns the axes.
   *
   * @return names
   */
  public List<String> axes() {
    return axes;
  }

  /**
   * Returns one entry.
   *
   * @param i row
   * @param j column
   * @return covariance of the two axes
   */
  public double get(int i, int j) {
    return c[axes.size() * i + j];
  }

  /**
   * Returns the sum of the variances of all axes.
   *
   * @return trace
   */
  public double total() {
    double sum = 0;
    for (int i = 0; i < axes.size(); i++) {
      sum += get(i, i);
    }
    return sum;
  }

  /**
   * Returns a sum with a multiple of another matrix.
   *
   * @param factor the multiple; -1 takes the other away
   * @param other matrix over the same axes
   * @return this + factor other
   */
  public ScatterMatrix plus(double factor, ScatterMatrix other) {
    if (!axes.equals(other.axes)) {
      throw new IllegalArgumentException(
          "scatter over " + axes + " cannot be combined with scatter over " + other.axes);
    }
    double[] sum = new double[c.length];
    Arrays.setAll(sum, i -> c[i] + factor * other.c[i]);
    return new ScatterMatrix(axes, sum);
  }

  /**
   * Returns the scatter over some of the axes.
   *
   * @param some names of axes that this matrix has, in the order wanted
   * @return covariance over these
   * @throws IllegalArgumentException if it has no axis of a name
   */
  public ScatterMatrix over(List<String> some) {
    double[][] part = new double[some.size()][some.size()];
    for (int i = 0; i < part.length; i++) {
      for (int j = 0; j < part.length; j++) {
        int row = axes.indexOf(some.get(i));
        int column = axes.indexOf(some.get(j));
        if (row < 0 || column < 0) {
          throw new IllegalArgumentException("no scatter over " + some + ", only over " + axes);
        }
        part[i][j] = get(row, column);
      }
    }
    return of(some, part);
  }

  /**
   * Tells how much two matrices point the same way, whatever their size.
   *
   * @param other matrix over the same axes
   * @return sum of products of entries over the root of the products of the sums of squares: 1 if
   *     one is a multiple of the other, 0 if they have nothing in common; 0 if either is zero
   */
  public double alignment(ScatterMatrix other) {
    double product = 0;
    double here = 0;
    double there = 0;
    for (int i = 0; i < c.length; i++) {
      product += c[i] * other.c[i];
      here += c[i] * c[i];
      there += other.c[i] * other.c[i];
    }
    return here > 0 && there > 0 ? product / Math.sqrt(here) / Math.sqrt(there) : 0;
  }

  /**
   * Copies the entries.
   *
   * @return values row by row
   */
  double[] toArray() {
    return c.clone();
  }
}
