package reseat.readings;

import java.util.Optional;

/**
 * The scatter of a column in one of the ways to count it.
 *
 * @param way what is left out or taken away
 * @param scatter scatter about the mean of each holder; a trend that is taken away costs one degree
 *     of freedom
 * @param bounds what it says of the true scatter; empty if it says nothing
 * @param proof whether a target is proven by it; empty without target or bounds
 */
public record SeriesVersion(
    Way way, PooledScatter scatter, Optional<ScatterBounds> bounds, Optional<ProofOfTarget> proof) {

  /** What is left out or taken away. */
  public enum Way {
    /** Nothing. */
    AS_READ,
    /** Readings that stand out. */
    WITHOUT_FLAGGED,
    /** A straight line over the mounts. */
    TREND_REMOVED,
    /** Both. */
    BOTH
  }
}
