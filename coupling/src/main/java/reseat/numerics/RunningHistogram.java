package reseat.numerics;

/**
 * Counts of one quantity in equal bins, to read bands off in flat memory.
 *
 * <p>The bins are laid by a mean and a standard deviation that are roughly known beforehand:
 * {@value #BINS} of them over {@value #REACH} standard deviations to each side, so a band is read
 * to about half a percent of the standard deviation. Values beyond are counted in the outermost
 * bins. Mutable, one thread at a time.
 */
public final class RunningHistogram {

  /** Number of bins. */
  public static final int BINS = 4096;

  /** How many standard deviations the bins reach to each side. */
  public static final double REACH = 12;

  private final double low;
  private final double width;
  private final long[] counts = new long[BINS];
  private long total;

  /**
   * Lays the bins.
   *
   * @param mean mean, roughly
   * @param deviation standard deviation, roughly; zero for a quantity that stands still
   */
  public RunningHistogram(double mean, double deviation) {
    low = mean - REACH * deviation;
    width = 2 * REACH * deviation / BINS;
  }

  /**
   * Takes one value in.
   *
   * @param value the value, in the unit of the mean
   */
  public void add(double value) {
    total++;
    if (width > 0) {
      double bin = Math.floor((value - low) / width);
      counts[(int) Math.max(0, Math.min(BINS - 1, bin))]++;
    }
  }

  /**
   * Takes in all that another instance with the same bins has seen.
   *
   * @param other left unchanged
   */
  public void merge(RunningHistogram other) {
    total += other.total;
    for (int i = 0; i < BINS; i++) {
      counts[i] += other.counts[i];
    }
  }

  /**
   * Puts all counts at the end of a row: the bins that are not empty, with their numbers.
   *
   * @param row the row
   */
  public void writeTo(NumberRow row) {
    row.putCount(total);
    int full = 0;
    for (long count : counts) {
      full += count > 0 ? 1 : 0;
    }
    row.putCount(full);
    for (int i = 0; i < BINS; i++) {
      if (counts[i] > 0) {
        row.putCount(i);
        row.putCount(counts[i]);
      }
    }
  }

  /**
   * Takes in the counts that another instance with the same bins put into a row.
   *
   * @param row the row, at the place of the counts
   */
  public void addFrom(NumberRow row) {
    total += row.nextCount();
    for (long left = row.nextCount(); left > 0; left--) {
      long bin = row.nextCount();
      if (bin < 0 || bin >= BINS) {
        throw new IllegalArgumentException("there is no bin " + bin);
      }
      counts[(int) bin] += row.nextCount();
    }
  }

  /**
   * Finds the half-width about a middle that holds a part of all values.
   *
   * @param middle middle of the band
   * @param part part to be held, 0 to 1
   * @return half-width, to the width of a bin
   */
  public double halfWidth(double middle, double part) {
    if (!(width > 0) || total == 0) {
      return 0;
    }
    double lowest = 0;
    double highest = 2 * REACH * width * BINS;
    for (int i = 0; i < 60; i++) {
      double half = (lowest + highest) / 2;
      if (below(middle + half) - below(middle - half) >= part * total) {
        highest = half;
      } else {
        lowest = half;
      }
    }
    return highest;
  }

  /** How many values lie below a limit, evenly spread inside each bin. */
  private double below(double limit) {
    double at = (limit - low) / width;
    if (at <= 0) {
      return 0;
    }
    if (at >= BINS) {
      return total;
    }
    int bin = (int) at;
    double sum = (at - bin) * counts[bin];
    for (int i = 0; i < bin; i++) {
      sum += counts[i];
    }
    return sum;
  }
}
