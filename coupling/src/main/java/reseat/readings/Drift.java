package reseat.readings;

/**
 * Whether a series drifts, told by three tests that see different things.
 *
 * <p>The slope test is the sharpest for a steady drift, Mann-Kendall holds for any rising or
 * falling shape and is not upset by one outlier, von Neumann's ratio also sees wandering to and
 * fro. Each is held to a third of the stated level, so that the chance of calling a steady series
 * anything but steady stays at or below that level.
 *
 * @param line straight line per mount
 * @param monotonic Mann-Kendall test and Theil-Sen slope
 * @param differences scatter from mount to mount and von Neumann's ratio
 * @param significance chance of a false alarm
 */
public record Drift(
    LinearTrend line,
    MonotonicTrend monotonic,
    SuccessiveDifferences differences,
    double significance) {

  /** Chance of a false alarm used unless another is asked for. */
  public static final double SIGNIFICANCE = 0.05;

  /** What the tests say. */
  public enum Verdict {
    /** No test sees anything. */
    STEADY,
    /** Readings rise with the mounts. */
    RISING,
    /** Readings fall with the mounts. */
    FALLING,
    /** No one direction, but neighbours are more alike than chance allows. */
    WANDERING,
    /** Neighbours are less alike than chance allows, as when two states alternate. */
    ALTERNATING
  }

  /**
   * Tests a series.
   *
   * @param readings three readings or more, in the order of the mounts
   * @return the tests, at the 5 % level
   */
  public static Drift of(double[] readings) {
    return of(readings, SIGNIFICANCE);
  }

  /**
   * Tests a series at a stated level.
   *
   * @param readings three readings or more, in the order of the mounts
   * @param significance chance of a false alarm, between 0 and 1
   * @return the tests
   */
  public static Drift of(double[] readings, double significance) {
    return of(readings, Groups.one(readings.length), significance);
  }

  /**
   * Tests readings of several groups, each with its own mean.
   *
   * @param readings readings in the order of the mounts
   * @param groups group of each, at least two degrees of freedom
   * @param significance chance of a false alarm, between 0 and 1
   * @return the tests
   */
  static Drift of(double[] readings, Groups groups, double significance) {
    ScatterBounds.requireConfidence(significance);
    return new Drift(
        LinearTrend.perMount(readings, groups),
        MonotonicTrend.of(readings, groups),
        SuccessiveDifferences.of(readings, groups),
        significance);
  }

  /**
   * Returns what the tests say together.
   *
   * @return a direction if slope or Mann-Kendall test see one, else what von Neumann's ratio sees
   */
  public Verdict verdict() {
    double level = significance / 3;
    if (line.p() < level) {
      return line.slope() > 0 ? Verdict.RISING : Verdict.FALLING;
    }
    if (monotonic.p() < level) {
      return monotonic.score() > 0 ? Verdict.RISING : Verdict.FALLING;
    }
    if (differences.p() < level) {
      return differences.ratio() < 2 ? Verdict.WANDERING : Verdict.ALTERNATING;
    }
    return Verdict.STEADY;
  }

  /**
   * Tells whether the readings rise or fall.
   *
   * @return true if the verdict is a direction
   */
  public boolean hasDirection() {
    return verdict() == Verdict.RISING || verdict() == Verdict.FALLING;
  }

  /**
   * Returns what the drift amounts to over the series.
   *
   * @return fitted change from the first mount to the last, with its sign, in the unit of the
   *     readings
   */
  public double change() {
    return line.slope() * (line.n() - 1);
  }
}
