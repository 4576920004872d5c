package reseat.interchange;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import reseat.numerics.VectorScatter;

/**
 * What many simulated holders came to.
 *
 * <p>Shifts of the tool point in machine axes, m; rotations of the holder about the machine axes,
 * rad. Holders that do not fit have no place in the statistics: they are counted in {@code fits}.
 *
 * @param plan what was simulated
 * @param own holders against a perfect holder on the same post: interchangeability
 * @param ownInCouplingAxes the same shift along x, y, z of the coupling frame
 * @param ownRotation rotation, likewise
 * @param post perfect holders on the posts, against the drawing; one value per post
 * @param total holders against the drawing: accuracy
 * @param fits number of holders by outcome; outcomes that did not occur are left out
 * @param linear the simulation beside the linear stack
 */
public record InterchangeResult(
    InterchangePlan plan,
    VectorScatter own,
    VectorScatter ownInCouplingAxes,
    VectorScatter ownRotation,
    VectorScatter post,
    VectorScatter total,
    Map<Fit, Long> fits,
    LinearComparison linear) {

  /** Copies the counts. */
  public InterchangeResult {
    EnumMap<Fit, Long> copy = new EnumMap<>(Fit.class);
    copy.putAll(fits);
    fits = Collections.unmodifiableMap(copy);
  }

  /**
   * Returns the number of holders that do not fit.
   *
   * @return count over all kinds of misfit
   */
  public long misfits() {
    return fits.entrySet().stream()
        .filter(e -> e.getKey() != Fit.FITS)
        .mapToLong(Map.Entry::getValue)
        .sum();
  }

  /**
   * Returns the number of one outcome.
   *
   * @param fit the outcome
   * @return how many holders came out so
   */
  public long count(Fit fit) {
    return fits.getOrDefault(fit, 0L);
  }
}
