package reseat.numerics;

import reseat.space.Vec3;

/**
 * Mean, covariance and extremes of a stream of 3-vectors, without keeping the vectors.
 *
 * <p>The method and its warnings are those of {@link RunningStatistics}. Mutable, one thread at a
 * time.
 */
public final class RunningCovariance {

  private final RunningStatistics[] component = {
    new RunningStatistics(), new RunningStatistics(), new RunningStatistics()
  };
  private double xy;
  private double xz;
  private double yz;

  /**
   * Takes one vector in.
   *
   * @param vector for example a displacement, m
   */
  public void add(Vec3 vector) {
    long n = component[0].count();
    if (n > 0) {
      double weight = n / (n + 1.0);
      double dx = vector.x() - component[0].mean();
      double dy = vector.y() - component[1].mean();
      double dz = vector.z() - component[2].mean();
      addProducts(weight, dx, dy, dz);
    }
    for (int i = 0; i < 3; i++) {
      component[i].add(vector.component(i));
    }
  }

  /**
   * Takes in all that another instance has seen.
   *
   * @param other left unchanged
   */
  public void merge(RunningCovariance other) {
    long n = count();
    long k = other.count();
    if (k > 0 && n > 0) {
      double weight = (double) n / (n + k) * k;
      Vec3 d = other.mean().minus(mean());
      addProducts(weight, d.x(), d.y(), d.z());
    }
    xy += other.xy;
    xz += other.xz;
    yz += other.yz;
    for (int i = 0; i < 3; i++) {
      component[i].merge(other.component[i]);
    }
  }

  /**
   * Puts all that was taken in at the end of a row.
   *
   * @param row the row
   */
  public void writeTo(NumberRow row) {
    for (RunningStatistics s : component) {
      s.writeTo(row);
    }
    row.put(xy);
    row.put(xz);
    row.put(yz);
  }

  /**
   * Reads what {@link #writeTo} put into a row.
   *
   * @param row the row, at the place of these sums
   * @return the same sums
   */
  public static RunningCovariance readFrom(NumberRow row) {
    RunningCovariance sums = new RunningCovariance();
    for (int i = 0; i < 3; i++) {
      sums.component[i] = RunningStatistics.readFrom(row);
    }
    sums.xy = row.next();
    sums.xz = row.next();
    sums.yz = row.next();
    return sums;
  }

  /**
   * Returns how many vectors were taken in.
   *
   * @return the count
   */
  public long count() {
    return component[0].count();
  }

  /**
   * Returns the mean vector.
   *
   * @return mean, in the unit of the vectors
   * @throws IllegalStateException if nothing was taken in
   */
  public Vec3 mean() {
    return new Vec3(component[0].mean(), component[1].mean(), component[2].mean());
  }

  /**
   * Returns one covariance.
   *
   * @param i 0 to 2
   * @param j 0 to 2
   * @return sum of products of deviations over n - 1
   * @throws IllegalStateException if fewer than two vectors were taken in
   */
  public double covariance(int i, int j) {
    if (i == j) {
      return component[i].variance();
    }
    double sum =
        switch (i + j) {
          case 1 -> xy;
          case 2 -> xz;
          case 3 -> yz;
          default -> throw new IllegalArgumentException("components 0 to 2, found " + i + ", " + j);
        };
    if (count() < 2) {
      throw new IllegalStateException("at least 2 vectors needed, found " + count());
    }
    return sum / (count() - 1);
  }

  /**
   * Returns the covariance matrix.
   *
   * @return 9 values, row by row, a new array
   */
  public double[] covariance() {
    double[] out = new double[9];
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        out[3 * i + j] = covariance(i, j);
      }
    }
    return out;
  }

  /**
   * Returns the standard deviation of each component.
   *
   * @return roots of the variances over n - 1
   */
  public Vec3 standardDeviation() {
    return new Vec3(
        component[0].standardDeviation(),
        component[1].standardDeviation(),
        component[2].standardDeviation());
  }

  /**
   * Returns the smallest value of each component.
   *
   * @return minima, not in general one of the vectors
   */
  public Vec3 minimum() {
    return new Vec3(component[0].minimum(), component[1].minimum(), component[2].minimum());
  }

  /**
   * Returns the largest value of each component.
   *
   * @return maxima, not in general one of the vectors
   */
  public Vec3 maximum() {
    return new Vec3(component[0].maximum(), component[1].maximum(), component[2].maximum());
  }

  private void addProducts(double weight, double dx, double dy, double dz) {
    xy += weight * dx * dy;
    xz += weight * dx * dz;
    yz += weight * dy * dz;
  }
}
