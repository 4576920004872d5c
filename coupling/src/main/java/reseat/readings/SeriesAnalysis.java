package reseat.readings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import reseat.units.QuantityKind;

/**
 * A whole remount series analysed: one wear-in for all probes, and each column by itself.
 *
 * <p>A mount has settled when every probe has, so the wear-in is the longest found in any column.
 * Each column is searched at the stated chance of a false alarm divided by the number of columns,
 * which keeps the chance for the whole series at the stated one.
 */
public final class SeriesAnalysis {

  private final MeasuredSeries series;
  private final AnalysisOptions options;
  private final int wearIn;
  private final boolean settled;
  private final List<ColumnAnalysis> columns;

  private SeriesAnalysis(
      MeasuredSeries series,
      AnalysisOptions options,
      int wearIn,
      boolean settled,
      List<ColumnAnalysis> columns) {
    this.series = series;
    this.options = options;
    this.wearIn = wearIn;
    this.settled = settled;
    this.columns = List.copyOf(columns);
  }

  /**
   * Analyses a series.
   *
   * @param series the series
   * @param facts what is known of each column, by the name of the column; may lack columns
   * @param options levels of the tests
   * @return the analysis
   * @throws IllegalArgumentException if the options leave out every mount
   */
  public static SeriesAnalysis of(
      MeasuredSeries series, Map<String, ColumnFacts> facts, AnalysisOptions options) {
    List<ReadingColumn> columns = series.columns();
    List<Settling> found = new ArrayList<>();
    int longest = 0;
    boolean settled = true;
    for (ReadingColumn c : columns) {
      Settling s = settling(series, c, options.falseAlarm() / columns.size());
      found.add(s);
      settled &= s.settled();
      longest = Math.max(longest, s.settled() ? s.wearIn() : 0);
    }
    int wearIn = options.wearIn() >= 0 ? options.wearIn() : settled ? longest : 0;
    if (wearIn >= series.mounts()) {
      throw new IllegalArgumentException(
          "a wear-in of " + wearIn + " mounts leaves none of the " + series.mounts() + " made");
    }
    List<ColumnAnalysis> analysed = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      ColumnFacts known = facts.getOrDefault(columns.get(i).name(), ColumnFacts.NONE);
      analysed.add(
          new ColumnAnalysis(series, columns.get(i), known, options, found.get(i), wearIn));
    }
    return new SeriesAnalysis(series, options, wearIn, settled || options.wearIn() >= 0, analysed);
  }

  /** Looks for the wear-in of a column among the mounts that were read in it. */
  private static Settling settling(MeasuredSeries series, ReadingColumn column, double level) {
    int[] read = column.read();
    double[] all = column.values();
    Settling s =
        Settling.of(
            Arrays.stream(read).mapToDouble(i -> all[i]).toArray(),
            Groups.of(series.holdersAt(read), read.length),
            level);
    int wearIn = s.wearIn() == 0 ? 0 : read[s.wearIn() - 1] + 1;
    return wearIn == s.wearIn() ? s : new Settling(wearIn, s.settled(), s.p());
  }

  /**
   * Returns the series.
   *
   * @return as read
   */
  public MeasuredSeries series() {
    return series;
  }

  /**
   * Returns the levels used.
   *
   * @return the options
   */
  public AnalysisOptions options() {
    return options;
  }

  /**
   * Returns the number of mounts at the start that the settled part leaves out.
   *
   * @return 0 if the series was settled from the start or has not settled at all
   */
  public int wearIn() {
    return wearIn;
  }

  /**
   * Tells whether the series has settled.
   *
   * @return false if a column was still running at its end, so that figures of the settled part
   *     leave nothing out and hold the run
   */
  public boolean hasSettled() {
    return settled;
  }

  /**
   * Returns the analysis of each probe.
   *
   * @return in the order of the file
   */
  public List<ColumnAnalysis> columns() {
    return columns;
  }

  /**
   * Returns the covariance of the probes that read lengths, after the wear-in, about the mean of
   * each holder, of the mounts at which all of them were read.
   *
   * @param leftOut places, from 0, of mounts not to be counted
   * @return the scatter, m²; empty if there is no such probe or no freedom is left
   */
  public Optional<ScatterMatrix> scatter(Set<Integer> leftOut) {
    int[] kept = kept(leftOut);
    List<String> names = new ArrayList<>();
    List<double[]> parts = new ArrayList<>();
    Groups groups = groups(kept);
    int freedom = groups.freedom();
    if (freedom < 1) {
      return Optional.empty();
    }
    for (ReadingColumn c : series.columns()) {
      if (c.quantity() == QuantityKind.LENGTH) {
        double[] all = c.values();
        names.add(c.name());
        parts.add(groups.deviations(Arrays.stream(kept).mapToDouble(i -> all[i]).toArray()));
      }
    }
    if (names.isEmpty()) {
      return Optional.empty();
    }
    // Deviations from several means leave fewer degrees of freedom than one mean would.
    double scale = (kept.length - 1.0) / freedom;
    ScatterMatrix plain = ScatterMatrix.ofSeries(names, parts);
    return Optional.of(scale == 1 ? plain : plain.plus(scale - 1, plain));
  }

  /**
   * Returns the degrees of freedom of that scatter.
   *
   * @param leftOut places, from 0, of mounts not to be counted
   * @return mounts counted less holders among them
   */
  public int freedom(Set<Integer> leftOut) {
    return groups(kept(leftOut)).freedom();
  }

  private int[] kept(Set<Integer> leftOut) {
    return IntStream.range(wearIn, series.mounts())
        .filter(i -> !leftOut.contains(i) && series.isComplete(i))
        .toArray();
  }

  private Groups groups(int[] kept) {
    return Groups.of(series.holdersAt(kept), kept.length);
  }
}
