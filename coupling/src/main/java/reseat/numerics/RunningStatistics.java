package reseat.numerics;

import reseat.units.PrintedNumber;

/**
 * Mean, variance and extremes of a stream of numbers, without keeping the numbers.
 *
 * <p>Welford's update and Chan's merge (both recalled from memory, checked against the two-pass
 * formula): no difference of large sums, so readings of 100 mm with a scatter of 10 nm keep their
 * scatter. Merging in a fixed order gives the same bits whatever the number of threads. Mutable,
 * one thread at a time.
 */
public final class RunningStatistics {

  private long count;
  private double mean;
  private double squares;
  private double minimum = Double.POSITIVE_INFINITY;
  private double maximum = Double.NEGATIVE_INFINITY;

  /**
   * Takes one number in.
   *
   * @param value a finite number
   * @throws IllegalArgumentException if the value is not finite: one such value would spoil the
   *     whole series silently
   */
  public void add(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(
          "statistics take finite values, found " + PrintedNumber.shortest(value));
    }
    count++;
    double deviation = value - mean;
    mean += deviation / count;
    squares += deviation * (value - mean);
    minimum = Math.min(minimum, value);
    maximum = Math.max(maximum, value);
  }

  /**
   * Takes in all that another instance has seen.
   *
   * @param other left unchanged
   */
  public void merge(RunningStatistics other) {
    if (other.count == 0) {
      return;
    }
    long total = count + other.count;
    double difference = other.mean - mean;
    squares += other.squares + difference * difference * count / total * other.count;
    mean += difference * other.count / total;
    count = total;
    minimum = Math.min(minimum, other.minimum);
    maximum = Math.max(maximum, other.maximum);
  }

  /**
   * Puts all that was taken in at the end of a row.
   *
   * @param row the row
   */
  public void writeTo(NumberRow row) {
    row.putCount(count);
    row.put(mean);
    row.put(squares);
    row.put(minimum);
    row.put(maximum);
  }

  /**
   * Reads what {@link #writeTo} put into a row.
   *
   * @param row the row, at the place of these sums
   * @return the same sums
   */
  public static RunningStatistics readFrom(NumberRow row) {
    RunningStatistics s = new RunningStatistics();
    s.count = row.nextCount();
    s.mean = row.next();
    s.squares = row.next();
    s.minimum = row.next();
    s.maximum = row.next();
    return s;
  }

  /**
   * Returns how many numbers were taken in.
   *
   * @return the count
   */
  public long count() {
    return count;
  }

  /**
   * Returns the mean.
   *
   * @return arithmetic mean
   * @throws IllegalStateException if nothing was taken in
   */
  public double mean() {
    return require(1, mean);
  }

  /**
   * Returns the variance of the sample.
   *
   * @return sum of squared deviations over n - 1
   * @throws IllegalStateException if fewer than two numbers were taken in
   */
  public double variance() {
    return require(2, squares / (count - 1));
  }

  /**
   * Returns the standard deviation of the sample.
   *
   * @return root of the variance over n - 1
   * @throws IllegalStateException if fewer than two numbers were taken in
   */
  public double standardDeviation() {
    return Math.sqrt(variance());
  }

  /**
   * Returns the smallest number.
   *
   * @return the minimum
   * @throws IllegalStateException if nothing was taken in
   */
  public double minimum() {
    return require(1, minimum);
  }

  /**
   * Returns the largest number.
   *
   * @return the maximum
   * @throws IllegalStateException if nothing was taken in
   */
  public double maximum() {
    return require(1, maximum);
  }

  /**
   * Returns the range.
   *
   * @return maximum less minimum
   * @throws IllegalStateException if nothing was taken in
   */
  public double range() {
    return require(1, maximum - minimum);
  }

  private double require(long least, double result) {
    if (count < least) {
      throw new IllegalStateException(
          "at least " + least + " value(s) needed for this statistic, found " + count);
    }
    return result;
  }
}
