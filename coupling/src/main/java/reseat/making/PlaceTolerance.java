package reseat.making;

/**
 * How far a feature may stand from its place, in the feature's own directions.
 *
 * @param across across the groove, to either side, m; infinite if not stated
 * @param along along the groove, m; infinite if not stated
 * @param height out of the face, m; infinite if not stated
 * @param direction turn about the direction out of the face, rad; infinite if not stated
 * @param slopeAlong slope along the groove, rad; infinite if not stated
 * @param slopeAcross slope across the groove, rad; infinite if not stated
 */
public record PlaceTolerance(
    double across,
    double along,
    double height,
    double direction,
    double slopeAlong,
    double slopeAcross) {

  /** Nothing is stated. */
  public static final PlaceTolerance UNSTATED =
      new PlaceTolerance(
          Double.POSITIVE_INFINITY,
          Double.POSITIVE_INFINITY,
          Double.POSITIVE_INFINITY,
          Double.POSITIVE_INFINITY,
          Double.POSITIVE_INFINITY,
          Double.POSITIVE_INFINITY);

  /** Refuses negative tolerances. */
  public PlaceTolerance {
    if (!(across >= 0)
        || !(along >= 0)
        || !(height >= 0)
        || !(direction >= 0)
        || !(slopeAlong >= 0)
        || !(slopeAcross >= 0)) {
      throw new IllegalArgumentException("a tolerance of place must not be negative");
    }
  }
}
