package reseat.search;

import reseat.designfile.SizeTargets.RankBy;

/**
 * The four qualities between which a choice has to be made.
 *
 * @param repeatability upper scale of what preload scatter and friction do to the tool point,
 *     added, along the machine axis where it is largest: as a part of the target there, or in m if
 *     the design states no target
 * @param stiffness stiffness of the tool point along the softest machine axis, contacts sliding
 *     freely, N/m
 * @param pressure highest peak pressure, at rest or under a load case, as a part of the pressure
 *     allowed there; 0 if no strength is known
 * @param size diameter of the circle about all balls, m
 */
public record Merits(double repeatability, double stiffness, double pressure, double size) {

  /** Refuses numbers that are not finite. */
  public Merits {
    if (!Double.isFinite(repeatability)
        || !Double.isFinite(stiffness)
        || !Double.isFinite(pressure)
        || !Double.isFinite(size)) {
      throw new IllegalArgumentException("the qualities of a design must be finite");
    }
  }

  /**
   * Returns what a rule puts in order.
   *
   * @param rule the rule
   * @param used part used of the limit that is nearest
   * @return a number, the smaller the better
   */
  double score(RankBy rule, double used) {
    return switch (rule) {
      case MARGIN -> used;
      case REPEATABILITY -> repeatability;
      case STIFFNESS -> -stiffness;
      case PRESSURE -> pressure;
      case SIZE -> size;
    };
  }
}
