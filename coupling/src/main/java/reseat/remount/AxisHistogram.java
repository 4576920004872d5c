package reseat.remount;

/**
 * Counts of one quantity in equal bins, to read bands off in flat memory.
 *
 * <p>The bins are laid by a pilot sample: {@value #BINS} of them over {@value #REACH} standard
 * deviations to each side of its mean, so a band is read to about half a percent of the standard
 * deviation. Values beyond are counted in the outermost bins.
 */
final class AxisHistogram {

  static final int BINS = 4096;
  static final double REACH = 12;

  private final double low;
  private final double width;
  private final long[] counts = new long[BINS];
  private long total;

  /**
   * Lays the bins.
   *
   * @param mean mean of the pilot sample
   * @param deviation standard deviation of the pilot sample; zero for a quantity that stands still
   */
  AxisHistogram(double mean, double deviation) {
    low = mean - REACH * deviation;
    width = 2 * REACH * deviation / BINS;
  }

  void add(double value) {
    total++;
    if (width > 0) {
      double bin = Math.floor((value - low) / width);
      counts[(int) Math.max(0, Math.min(BINS - 1, bin))]++;
    }
  }

  void merge(AxisHistogram other) {
    total += other.total;
    for (int i = 0; i < BINS; i++) {
      counts[i] += other.counts[i];
    }
  }

  /**
   * Finds the half-width about a middle that holds a part of all values.
   *
   * @param middle middle of the band
   * @param part part to be held, 0 to 1
   * @return half-width, to the width of a bin
   */
  double halfWidth(double middle, double part) {
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
