package reseat.study;

import reseat.design.AssumedValue;

/**
 * A value that the design file does not state, and how much of a result rests on it.
 *
 * @param value what is assumed
 * @param share the largest share of a deciding figure that rests on it, 0 to 1; see {@link
 *     AssumedShares}
 */
public record AssumedShare(AssumedValue value, double share) {

  /** Refuses a share that is none. */
  public AssumedShare {
    if (!(share >= 0 && share <= 1)) {
      throw new IllegalArgumentException("a share must lie between 0 and 1: " + value.key());
    }
  }
}
