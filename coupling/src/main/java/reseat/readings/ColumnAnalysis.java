package reseat.readings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Everything one probe column says, computed when asked for.
 *
 * <p>Figures of "all" readings leave nothing out. Figures of the "settled" part leave out the
 * wear-in of the series, and nothing else: flagged readings stay in and are counted a second time
 * without. With several holders, scatter is taken about the mean of each holder and pooled, and the
 * tests for drift and outliers look at deviations from those means. Each test is held to the stated
 * chance of a false alarm divided by the number of columns.
 */
public final class ColumnAnalysis {

  /** Part of the scatter below which a step of the readings matters to nothing. */
  private static final double FINEST_STEP = 100;

  /** Steps within which a reading is no outlier: one, and a little for a middle between two. */
  private static final double ONE_STEP = 1.01;

  /** Skewness from which on no bound is given; at few mounts more, as chance gives as much. */
  public static final double MOST_SKEW = 1;

  private static final double SKEW_BY_CHANCE = 2.3;

  private final MeasuredSeries series;
  private final ReadingColumn column;
  private final ColumnFacts facts;
  private final AnalysisOptions options;
  private final Settling settling;
  private final int[] read;
  private final double[] all;
  private final double[] settled;
  private final List<String> names;
  private final Groups groups;
  private final Drift drift;
  private final Outliers outliers;
  private final double step;
  private final KeptReadings kept;
  private final List<SeriesVersion> versions;

  /**
   * Analyses a column.
   *
   * @param series the series
   * @param column one of its columns
   * @param facts what is known of the column
   * @param options levels of the tests
   * @param settling what the search for wear-in found in this column
   * @param wearIn mounts at the start that the settled part leaves out; less than the mounts
   */
  ColumnAnalysis(
      MeasuredSeries series,
      ReadingColumn column,
      ColumnFacts facts,
      AnalysisOptions options,
      Settling settling,
      int wearIn) {
    this.series = series;
    this.column = column;
    this.facts = facts;
    this.options = options;
    this.settling = settling;
    double[] values = column.values();
    this.read = Arrays.stream(column.read()).filter(i -> i >= wearIn).toArray();
    this.all = Arrays.stream(column.read()).mapToDouble(i -> values[i]).toArray();
    this.settled = Arrays.stream(read).mapToDouble(i -> values[i]).toArray();
    this.names = series.holdersAt(read);
    this.groups = Groups.of(names, settled.length);
    int freedom = groups.freedom();
    double level = options.falseAlarm() / series.columns().size();
    this.drift = freedom < 2 ? null : Drift.of(settled, groups, level);
    int most = Math.max(0, Math.min(Outliers.mostIn(settled.length), freedom - 2));
    double s = PooledScatter.of(settled, groups).s();
    this.step =
        facts.resolution() > 0
            ? facts.resolution()
            : GaugeNoise.stepOf(all, s / FINEST_STEP).orElse(0);
    this.outliers = beyondOneStep(Outliers.of(withoutTrend(), groups, level, most));
    Set<Integer> out = new HashSet<>();
    outliers.flagged().forEach(f -> out.add(f.index()));
    this.kept = KeptReadings.of(settled, names, out);
    this.versions = List.copyOf(counted());
  }

  /** A reading one step of the gauge off the middle of its holder's is no outlier. */
  private Outliers beyondOneStep(Outliers found) {
    if (found.flagged().isEmpty() || step == 0) {
      return found;
    }
    List<double[]> parts = groups.split(settled);
    return new Outliers(
        found.flagged().stream()
            .filter(
                f -> {
                  double middle =
                      MonotonicTrend.median(parts.get(groups.groupOf(f.index())).clone());
                  return Math.abs(settled[f.index()] - middle) > ONE_STEP * step;
                })
            .toList(),
        found.significance());
  }

  private double[] withoutTrend() {
    if (drift == null || !drift.hasDirection()) {
      return settled;
    }
    double[] rest = new double[settled.length];
    Arrays.setAll(rest, i -> settled[i] - drift.line().at(i + 1.0));
    return rest;
  }

  /**
   * Returns the column.
   *
   * @return its name, unit and readings
   */
  public ReadingColumn column() {
    return column;
  }

  /**
   * Returns the figures of all readings.
   *
   * @return nothing left out; empty with a single mount
   */
  public Optional<Repeatability> all() {
    return all.length < 2 ? Optional.empty() : Optional.of(Repeatability.of(all));
  }

  /**
   * Returns the figures of the readings after the wear-in.
   *
   * @return only the wear-in left out; empty with a single mount
   */
  public Optional<Repeatability> settled() {
    return settled.length < 2 ? Optional.empty() : Optional.of(Repeatability.of(settled));
  }

  /**
   * Returns what the search for wear-in found in this column.
   *
   * @return the change point of this column alone
   */
  public Settling settling() {
    return settling;
  }

  /**
   * Returns the scatter after the wear-in, about the mean of each holder.
   *
   * @return pooled over the holders
   */
  public PooledScatter scatter() {
    return PooledScatter.of(settled, groups);
  }

  /**
   * Returns the scatter after the wear-in without the flagged readings.
   *
   * @return pooled over the holders
   */
  public PooledScatter scatterWithoutFlagged() {
    return kept.scatter();
  }

  /**
   * Counts the series in every way that what was seen asks for: as read, without the readings that
   * stand out, without a trend, without both.
   *
   * @return as read first; the one that takes away most last
   */
  public List<SeriesVersion> versions() {
    return versions;
  }

  private List<SeriesVersion> counted() {
    KeptReadings whole = KeptReadings.of(settled, names, Set.of());
    List<SeriesVersion> ways = new ArrayList<>();
    ways.add(version(SeriesVersion.Way.AS_READ, whole.scatter(), whole));
    boolean flagged = !outliers.flagged().isEmpty();
    if (flagged) {
      ways.add(version(SeriesVersion.Way.WITHOUT_FLAGGED, kept.scatter(), kept));
    }
    if (isDirection(trend())) {
      whole
          .aboutLine()
          .ifPresent(s -> ways.add(version(SeriesVersion.Way.TREND_REMOVED, s, whole)));
      if (flagged) {
        kept.aboutLine().ifPresent(s -> ways.add(version(SeriesVersion.Way.BOTH, s, kept)));
      }
    }
    return ways;
  }

  private SeriesVersion version(SeriesVersion.Way way, PooledScatter s, KeptReadings of) {
    Optional<ScatterBounds> bounds = isSkewed() ? Optional.empty() : bounds(s, of);
    return new SeriesVersion(
        way,
        s,
        bounds,
        hasTarget() ? bounds.map(b -> ProofOfTarget.of(b, facts.target())) : Optional.empty());
  }

  private static boolean isDirection(Drift.Verdict v) {
    return v == Drift.Verdict.RISING || v == Drift.Verdict.FALLING;
  }

  /**
   * Returns what the trend tests say together, of all settled readings or, where some stand out, of
   * the others.
   *
   * @return the more telling of the two
   */
  public Drift.Verdict trend() {
    Drift.Verdict all = drift == null ? Drift.Verdict.STEADY : drift.verdict();
    if (outliers.flagged().isEmpty() || drift == null) {
      return all;
    }
    Drift.Verdict rest = kept.trend(drift.significance());
    return rest == Drift.Verdict.STEADY && isDirection(all) ? all : rest;
  }

  /**
   * Tells whether the readings, without those that stand out, are too skewed for the bounds.
   *
   * @return true if their skewness is beyond {@link #MOST_SKEW} and beyond what chance gives to so
   *     few mounts; false where a trend or the steps of the gauge shape them
   */
  public boolean isSkewed() {
    int n = kept.values().length;
    double s = kept.scatter().s();
    if (n < NormalShape.LEAST || s <= step || isDirection(trend())) {
      return false;
    }
    double chance = Math.sqrt(6 * (n - 2.0) / ((n + 1.0) * (n + 3.0)));
    return Math.abs(kept.skewness()) > Math.max(MOST_SKEW, SKEW_BY_CHANCE * chance);
  }

  /**
   * Returns the skewness of the settled readings without those that stand out.
   *
   * @return mean cube of the deviations over the cube of their standard deviation
   */
  public double skewness() {
    return kept.skewness();
  }

  /**
   * Looks for a slip of the hand that explains a reading that stands out.
   *
   * @param flag the reading
   * @return the slip, if there is one
   */
  public Optional<OutlierCause> cause(Outliers.Flag flag) {
    int group = groups.groupOf(Arrays.binarySearch(read, flag.index()));
    Set<Integer> out = new HashSet<>();
    outliers.flagged().forEach(f -> out.add(f.index()));
    double sum = 0;
    int n = 0;
    for (int i = 0; i < settled.length; i++) {
      if (groups.groupOf(i) == group && !out.contains(i)) {
        sum += settled[i];
        n++;
      }
    }
    return n == 0
        ? Optional.empty()
        : OutlierCause.of(flag.value(), sum / n, kept.scatter().s(), column);
  }

  /**
   * Returns the step in which the gauge reads.
   *
   * @return as stated, or found from the readings; 0 if none matters
   */
  public double step() {
    return step;
  }

  /**
   * Tells whether the gauge was stated.
   *
   * @return true if its noise or its step was given
   */
  public boolean isGaugeStated() {
    return facts.gaugeNoise() > 0 || facts.resolution() > 0;
  }

  /**
   * Returns the least bound that this gauge can give.
   *
   * @return the larger of its noise and the rounding of its step
   */
  double leastBound() {
    return Math.max(facts.gaugeNoise(), GaugeNoise.ROUNDING * step);
  }

  /**
   * Returns the trend tests of the settled part.
   *
   * @return the tests; empty with fewer than 3 settled mounts
   */
  public Optional<Drift> drift() {
    return Optional.ofNullable(drift);
  }

  /**
   * Returns the flagged readings of the settled part, with their places in the whole series.
   *
   * @return flags, most distant first
   */
  public List<Outliers.Flag> flagged() {
    return outliers.flagged().stream()
        .map(f -> new Outliers.Flag(read[f.index()], settled[f.index()], f.statistic(), f.limit()))
        .toList();
  }

  /**
   * Returns what the probe usually reads.
   *
   * @return median of the settled readings, m or rad
   */
  public double usual() {
    return MonotonicTrend.median(settled.clone());
  }

  /**
   * Returns the settled readings, each less the mean of its holder.
   *
   * @return deviations in the order of the mounts, m or rad
   */
  public List<Double> deviations() {
    return Arrays.stream(groups.deviations(settled)).boxed().toList();
  }

  /**
   * Tests whether the settled readings look normal.
   *
   * @return the test; empty if there are fewer than eight mounts of any holder, whose own means
   *     would pull so few together, or none that scatter
   */
  public Optional<NormalShape> shape() {
    return groups.smallest() < NormalShape.LEAST || scatter().s() == 0
        ? Optional.empty()
        : Optional.of(NormalShape.of(groups.deviations(settled)));
  }

  /**
   * Looks at what the bounds rest on: readings of normal shape, each by itself.
   *
   * @return the ground; empty if nothing scatters
   */
  public Optional<BoundsGround> ground() {
    if (scatter().s() == 0) {
      return Optional.empty();
    }
    OptionalDouble shape =
        shape().map(s -> OptionalDouble.of(s.p())).orElse(OptionalDouble.empty());
    OptionalDouble order =
        drift == null ? OptionalDouble.empty() : OptionalDouble.of(drift.differences().p());
    return Optional.of(BoundsGround.of(settled, groups, shape, order));
  }

  /**
   * Returns what the scatter says of the true one.
   *
   * @return bounds, with the step and the stated noise of the gauge in them; empty if no holder was
   *     mounted twice, if nothing scatters by a gauge of unknown step, or if the readings are too
   *     skewed for any
   */
  public Optional<ScatterBounds> bounds() {
    return versions.get(0).bounds();
  }

  private Optional<ScatterBounds> bounds(PooledScatter s, KeptReadings of) {
    return StepBound.of(s, of, step, facts.gaugeNoise(), options.confidence());
  }

  /**
   * Tells whether a target was given.
   *
   * @return true if {@link #proof()} is wanted
   */
  public boolean hasTarget() {
    return facts.target() > 0;
  }

  /**
   * Returns the target.
   *
   * @return largest standard deviation allowed, m or rad; 0 if none was stated
   */
  public double target() {
    return facts.target();
  }

  /**
   * Returns the share of the gauge in the scatter.
   *
   * @return noise as given, or from the step of the readings; empty if no holder was mounted twice
   */
  public Optional<GaugeNoise> gauge() {
    PooledScatter s = scatter();
    if (s.freedom() < 1) {
      return Optional.empty();
    }
    double noise = Math.max(facts.gaugeNoise(), GaugeNoise.ROUNDING * step);
    return Optional.of(new GaugeNoise(s.s(), s.freedom() + 1, noise, step));
  }

  /**
   * Returns whether the target is proven.
   *
   * @return the verdict; empty if no target was given or no holder was mounted twice
   */
  public Optional<ProofOfTarget> proof() {
    return versions.get(0).proof();
  }

  /**
   * Returns the factor of the tolerance interval of a single holder.
   *
   * @return k: mean plus and minus k s of the settled part holds the share of the options with its
   *     confidence; empty with several holders or if nothing scatters
   */
  public Optional<Double> toleranceFactor() {
    return scatter().s() == 0 || groups.count() > 1
        ? Optional.empty()
        : Optional.of(
            ToleranceInterval.twoSided(settled.length, options.share(), options.confidence()));
  }

  /**
   * Fits the settled part on temperature.
   *
   * @return the fit; empty if no temperature was recorded, it did not vary, or mounts are too few
   */
  public Optional<TemperatureRegression> temperature() {
    Optional<double[]> t = series.temperatures();
    if (t.isEmpty()) {
      return Optional.empty();
    }
    int[] both = Arrays.stream(read).filter(i -> !Double.isNaN(t.get()[i])).toArray();
    Groups of = Groups.of(series.holdersAt(both), both.length);
    if (of.freedom() < TemperatureRegression.LEAST - 1) {
      return Optional.empty();
    }
    double[] values = column.values();
    double[] readings = Arrays.stream(both).mapToDouble(i -> values[i]).toArray();
    double[] part = Arrays.stream(both).mapToDouble(i -> t.get()[i]).toArray();
    return PooledScatter.of(part, of).s() == 0
        ? Optional.empty()
        : Optional.of(TemperatureRegression.of(readings, part, of));
  }

  /**
   * Compares the holders after the wear-in.
   *
   * @return the analysis; empty with one holder or if none was mounted twice
   */
  public Optional<BetweenHolders> holders() {
    return groups.count() < 2 || groups.freedom() < 1
        ? Optional.empty()
        : Optional.of(BetweenHolders.of(names, settled));
  }

  /**
   * Compares two directions of approach after the wear-in, each holder about its own means.
   *
   * @return the figures; empty unless a holder has two mounts in each of two directions
   */
  public Optional<BidirectionalRepeatability> directions() {
    List<String> ways = series.directions();
    return ways.isEmpty()
        ? Optional.empty()
        : BidirectionalRepeatability.ofTwoWays(
            Arrays.stream(read).mapToObj(ways::get).toList(), names, settled);
  }

  /**
   * Sets up a control chart with the settled part as its baseline.
   *
   * @return the chart; empty with fewer than 3 mounts, several holders, or none that scatter
   */
  public Optional<ControlChart> chart() {
    boolean charted = settled.length > 2 && groups.count() == 1 && scatter().s() > 0;
    return charted ? Optional.of(ControlChart.of(settled)) : Optional.empty();
  }
}
