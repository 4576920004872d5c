package reseat.design;

/** The two halves of a coupling. */
public enum Half {
  /** The fixed half: post, base or wall. */
  BASE,
  /** The moving half: tool holder, pallet or bracket. */
  HOLDER
}
