package reseat.ballmount;

/** What may go wrong with a bonded ball. */
public enum BondCaution {
  /** The ball does not touch metal. */
  HANGS_ON_ADHESIVE,
  /** Gap below the range of good strength. */
  GAP_STARVED,
  /** Gap above the range of precision bonds. */
  GAP_THICK,
  /** Service close to softening. */
  WARM,
  /** Sustained load too high. */
  CREEPS,
  /** Peak load too high. */
  BREAKS
}
