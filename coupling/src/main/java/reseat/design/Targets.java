package reseat.design;

import reseat.units.PrintedNumber;
import java.util.Objects;

/**
 * What the user wants of the design.
 *
 * @param repeatability wanted repeatability of the tool point along each machine axis, m, as a
 *     half-width; infinite where nothing is asked
 * @param liftOffFactor wanted ratio of the load that lifts the first contact to the load of a case
 * @param pressureShare largest share of the first-yield pressure that is wanted, at most 1
 * @param liftOffStated whether the lift-off factor is the user's own, not the default
 * @param coverage how many of the tool changes the repeatability is for
 */
public record Targets(
    AxisLimits repeatability,
    double liftOffFactor,
    double pressureShare,
    boolean liftOffStated,
    Coverage coverage) {

  /** Usual wishes where the file says nothing: factor 2 (common practice), full first yield. */
  public static final Targets DEFAULT = new Targets(AxisLimits.NONE, 2, 1, false, Coverage.USUAL);

  /** Refuses factors that no design can meet. */
  public Targets {
    Objects.requireNonNull(repeatability, "repeatability of targets must be given, found null");
    if (!(liftOffFactor >= 1) || Double.isInfinite(liftOffFactor)) {
      throw new IllegalArgumentException(
          "the lift-off factor asked for must be at least 1, found "
              + PrintedNumber.shortest(liftOffFactor));
    }
    if (!(pressureShare > 0 && pressureShare <= 2)) {
      throw new IllegalArgumentException(
          "the share of the first-yield pressure must lie between 0 and 2, found "
              + PrintedNumber.shortest(pressureShare));
    }
  }

  /**
   * Targets whose lift-off factor is stated, with the usual coverage.
   *
   * @param repeatability wanted repeatability along each machine axis, m; infinite for none
   * @param liftOffFactor wanted ratio of the load that lifts the first contact to that of a case
   * @param pressureShare largest share of the first-yield pressure that is wanted
   */
  public Targets(AxisLimits repeatability, double liftOffFactor, double pressureShare) {
    this(repeatability, liftOffFactor, pressureShare, true, Coverage.USUAL);
  }

  /**
   * One limit per machine axis.
   *
   * @param first limit along the first axis, m; infinite for none
   * @param second limit along the second axis, m
   * @param third limit along the third axis, m
   */
  public record AxisLimits(double first, double second, double third) {

    /** No limits. */
    public static final AxisLimits NONE =
        new AxisLimits(
            Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);

    /** Refuses limits that nothing can meet. */
    public AxisLimits {
      if (!(first > 0) || !(second > 0) || !(third > 0)) {
        throw new IllegalArgumentException("a wanted repeatability must be positive");
      }
    }

    /**
     * Returns a limit by its place.
     *
     * @param axis 0, 1 or 2
     * @return limit, m; infinite for none
     */
    public double limit(int axis) {
      return axis == 0 ? first : axis == 1 ? second : third;
    }
  }
}
