package reseat.readings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
      Settling s =
          Settling.of(
              c.values(),
              Groups.of(series.holders(), series.mounts()),
              options.falseAlarm() / columns.size());
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
   * each holder.
   *
   * @return the scatter, m²; empty if there is no such probe or fewer than two settled mounts
   */
  public Optional<ScatterMatrix> scatter() {
    List<String> names = new ArrayList<>();
    List<double[]> parts = new ArrayList<>();
    int mounts = series.mounts();
    Groups groups = Groups.of(series.holders(), mounts).from(wearIn);
    for (ReadingColumn c : series.columns()) {
      if (c.quantity() == QuantityKind.LENGTH) {
        names.add(c.name());
        parts.add(groups.deviations(Arrays.copyOfRange(c.values(), wearIn, mounts)));
      }
    }
    int freedom = groups.freedom();
    if (names.isEmpty() || freedom < 1) {
      return Optional.empty();
    }
    // Deviations from several means leave fewer degrees of freedom than one mean would.
    double scale = (mounts - wearIn - 1.0) / freedom;
    ScatterMatrix plain = ScatterMatrix.ofSeries(names, parts);
    return Optional.of(scale == 1 ? plain : plain.plus(scale - 1, plain));
  }
}
