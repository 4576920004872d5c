package reseat.readings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import reseat.units.PrintedNumber;

/**
 * A chart of single mounts with limits set once, to which new readings are added over months.
 *
 * <p>The scatter is taken from the moving range of neighbours, mean |y[i+1] - y[i]| / d2 with d2 =
 * 2 / sqrt(pi) = 1.128 for pairs, so that a slow drift in the baseline does not widen the limits.
 * Limits are three of these from the mean; the moving range's own upper limit is D4 = 1 + 3 sqrt(1
 * - d2²/2) sqrt(2) / d2 = 3.267 times its mean. Further rules look for runs; they are named by what
 * they detect. The rules with their counts are recalled from memory (common practice in process
 * control).
 *
 * @param mean centre line, in the unit of the readings
 * @param sigma standard deviation from the moving range
 * @param meanMovingRange mean absolute difference of neighbours
 * @param baseline number of readings that set the limits
 * @param readings all readings, the baseline first
 */
public record ControlChart(
    double mean, double sigma, double meanMovingRange, int baseline, List<Double> readings) {

  /** Mean range of two normal readings, in standard deviations. */
  public static final double D2 = 2 / Math.sqrt(Math.PI);

  /** Upper limit of the moving range over its mean. */
  public static final double D4 = 1 + 3 * Math.sqrt(2 - D2 * D2) / D2;

  /** Copies the readings. */
  public ControlChart {
    readings = List.copyOf(readings);
  }

  /** What a run of readings gives away. */
  public enum Rule {
    /** One reading outside three sigma. */
    OUT_OF_LIMITS("one mount outside the limits: not seated, chip, knock, or misread"),
    /** One moving range above its limit. */
    JUMP("a jump between neighbouring mounts"),
    /** Two of three on one side outside two sigma. */
    LARGE_SHIFT("two of three mounts far out on one side: the level is moving"),
    /** Four of five on one side outside one sigma. */
    SHIFT("four of five mounts out on one side: the level has moved"),
    /** Nine in a row on one side. */
    NEW_LEVEL("nine mounts on one side: a new level"),
    /** Six in a row rising or falling. */
    TREND("six mounts steadily rising or falling: wear or temperature"),
    /** Fourteen in a row alternating. */
    ALTERNATION(
        "fourteen mounts alternating: two states, for instance two holders or two operators"),
    /** Eight in a row outside one sigma, both sides. */
    TWO_PLACES("eight mounts with none near the middle: two resting places"),
    /** Fifteen in a row within one sigma. */
    TOO_QUIET("fifteen mounts near the middle: limits too wide, or a gauge that sticks");

    private final String words;

    Rule(String words) {
      this.words = words;
    }

    /**
     * Returns what the rule detects, in words.
     *
     * @return one clause
     */
    public String words() {
      return words;
    }
  }

  /**
   * A signal of the chart.
   *
   * @param rule what was detected
   * @param index place of the reading that completed the run, from 0
   */
  public record Signal(Rule rule, int index) {}

  /**
   * Sets the limits from a baseline.
   *
   * @param baseline three readings or more in the order of the mounts, with some scatter
   * @return the chart, holding the baseline only
   */
  public static ControlChart of(double[] baseline) {
    if (baseline.length < 3) {
      throw new IllegalArgumentException(
          "a control chart needs at least 3 readings, found " + baseline.length);
    }
    Repeatability r = Repeatability.of(baseline);
    if (r.isWithoutScatter()) {
      throw new IllegalArgumentException(
          "a control chart needs readings that scatter; all are "
              + PrintedNumber.shortest(r.mean()));
    }
    double sum = 0;
    for (int i = 1; i < baseline.length; i++) {
      sum += Math.abs(baseline[i] - baseline[i - 1]);
    }
    double range = sum / (baseline.length - 1);
    return new ControlChart(
        r.mean(), range / D2, range, baseline.length, Arrays.stream(baseline).boxed().toList());
  }

  /**
   * Adds new readings; the limits stay.
   *
   * @param more readings in the order of the mounts
   * @return a chart with the same limits and all the readings
   */
  public ControlChart with(double... more) {
    List<Double> all = new ArrayList<>(readings);
    for (double y : more) {
      all.add(y);
    }
    return new ControlChart(mean, sigma, meanMovingRange, baseline, all);
  }

  /**
   * Returns the upper limit.
   *
   * @return mean + 3 sigma
   */
  public double upperLimit() {
    return mean + 3 * sigma;
  }

  /**
   * Returns the lower limit.
   *
   * @return mean - 3 sigma
   */
  public double lowerLimit() {
    return mean - 3 * sigma;
  }

  /**
   * Returns the upper limit of the moving range.
   *
   * @return D4 times the mean moving range
   */
  public double movingRangeLimit() {
    return D4 * meanMovingRange;
  }

  /**
   * Returns all signals, in the order of the readings; a run signals once, where it is completed.
   *
   * @return the signals
   */
  public List<Signal> signals() {
    return ControlRules.signals(this);
  }
}
