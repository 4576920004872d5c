package reseat.numerics;

import java.util.Arrays;

/**
 * The half-width about a middle that holds a part of all values, in flat memory.
 *
 * <p>Up to {@value #KEPT} values are kept and the band is exact; after that they lay the bins of a
 * {@link RunningHistogram}, and the band is read to about half a percent of the standard deviation.
 * Mutable, one thread at a time.
 */
public final class RunningBand {

  /** Number of values that are kept. */
  public static final int KEPT = 4096;

  private double[] values = new double[64];
  private int kept;
  private RunningHistogram bins;

  /**
   * Takes one value in.
   *
   * @param value a finite number
   */
  public void add(double value) {
    if (bins != null) {
      bins.add(value);
      return;
    }
    if (kept == values.length) {
      values = Arrays.copyOf(values, 2 * kept);
    }
    values[kept++] = value;
    if (kept == KEPT) {
      layBins();
    }
  }

  private void layBins() {
    RunningStatistics s = new RunningStatistics();
    for (int i = 0; i < kept; i++) {
      s.add(values[i]);
    }
    bins = new RunningHistogram(s.mean(), s.standardDeviation());
    for (int i = 0; i < kept; i++) {
      bins.add(values[i]);
    }
    values = new double[0];
    kept = 0;
  }

  /**
   * Takes in, in order, all that another instance has seen.
   *
   * @param other left unchanged; must have seen fewer than {@value #KEPT} values
   */
  public void merge(RunningBand other) {
    if (other.bins != null) {
      throw new IllegalArgumentException("values can be taken over only where they were kept");
    }
    for (int i = 0; i < other.kept; i++) {
      add(other.values[i]);
    }
  }

  /**
   * Puts all that was taken in at the end of a row.
   *
   * @param row the row
   * @throws IllegalStateException if {@value #KEPT} values or more were taken in
   */
  public void writeTo(NumberRow row) {
    if (bins != null) {
      throw new IllegalStateException("values can be passed on only where they were kept");
    }
    row.putCount(kept);
    for (int i = 0; i < kept; i++) {
      row.put(values[i]);
    }
  }

  /**
   * Reads what {@link #writeTo} put into a row.
   *
   * @param row the row, at the place of the band
   * @return the same band
   */
  public static RunningBand readFrom(NumberRow row) {
    RunningBand band = new RunningBand();
    for (long left = row.nextCount(); left > 0; left--) {
      band.add(row.next());
    }
    return band;
  }

  /**
   * Finds the half-width about a middle that holds a part of all values.
   *
   * @param middle middle of the band
   * @param part part to be held, 0 to 1
   * @return half-width; zero if there are no values
   */
  public double halfWidth(double middle, double part) {
    if (bins != null) {
      return bins.halfWidth(middle, part);
    }
    if (kept == 0) {
      return 0;
    }
    double[] off = new double[kept];
    for (int i = 0; i < kept; i++) {
      off[i] = Math.abs(values[i] - middle);
    }
    Arrays.sort(off);
    return off[Math.max(0, (int) Math.ceil(part * kept) - 1)];
  }
}
