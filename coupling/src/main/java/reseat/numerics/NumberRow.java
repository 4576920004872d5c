package reseat.numerics;

import java.util.Arrays;

/**
 * A row of numbers, filled at its end and read from its beginning: in it running sums travel from
 * the worker that made them to the one that joins them.
 *
 * <p>Numbers come out as the same bits. Mutable, one thread at a time.
 */
public final class NumberRow {

  /** Whole numbers up to this one are doubles without error. */
  private static final long LARGEST_WHOLE = 1L << 53;

  private double[] numbers;
  private int filled;
  private int read;

  /** Starts an empty row. */
  public NumberRow() {
    numbers = new double[64];
  }

  private NumberRow(double[] numbers) {
    this.numbers = numbers;
    filled = numbers.length;
  }

  /**
   * Starts to read a row.
   *
   * @param numbers what {@link #toArray()} gave
   * @return the row at its beginning
   */
  public static NumberRow of(double[] numbers) {
    return new NumberRow(numbers.clone());
  }

  /**
   * Puts a number at the end.
   *
   * @param number any number
   */
  public void put(double number) {
    if (filled == numbers.length) {
      numbers = Arrays.copyOf(numbers, 2 * filled);
    }
    numbers[filled++] = number;
  }

  /**
   * Puts a count at the end.
   *
   * @param count a whole number of at most 2^53 in size
   */
  public void putCount(long count) {
    if (count > LARGEST_WHOLE || count < -LARGEST_WHOLE) {
      throw new IllegalArgumentException("a count must be at most 2^53, found " + count);
    }
    put((double) count);
  }

  /**
   * Takes the next number.
   *
   * @return the number
   * @throws IllegalArgumentException if there is none: the row is not that of such sums
   */
  public double next() {
    if (read == filled) {
      throw new IllegalArgumentException("the row of numbers ends too soon, after " + read);
    }
    return numbers[read++];
  }

  /**
   * Takes the next count.
   *
   * @return the count
   * @throws IllegalArgumentException if there is none, or a broken number stands there
   */
  public long nextCount() {
    double number = next();
    if (!(Math.abs(number) <= LARGEST_WHOLE) || number != Math.floor(number)) {
      throw new IllegalArgumentException("number " + read + " of the row must be a count");
    }
    return (long) number;
  }

  /**
   * Checks that all was read.
   *
   * @throws IllegalArgumentException if numbers are left: the row is not that of such sums
   */
  public void end() {
    if (read != filled) {
      throw new IllegalArgumentException(
          "the row of numbers is too long: " + (filled - read) + " are left");
    }
  }

  /**
   * Returns the numbers.
   *
   * @return all that was put in, a new array
   */
  public double[] toArray() {
    return Arrays.copyOf(numbers, filled);
  }
}
