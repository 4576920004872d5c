package reseat.ballmount;

/** What may go wrong with a bonded ball, each with the sentence to print. */
public enum BondCaution {
  /** The ball does not touch metal. */
  HANGS_ON_ADHESIVE(
      "The ball hangs on the adhesive: its place creeps under load. Let it bottom on metal and use"
          + " the adhesive only to hold it there."),
  /** Gap below the range of good strength. */
  GAP_STARVED(
      "The gap is thinner than 0.05 mm: the joint may be starved of adhesive (0.05 to 0.125 mm gives"
          + " the best strength)."),
  /** Gap above the range of precision bonds. */
  GAP_THICK(
      "The gap is thicker than 0.2 mm: the joint is softer, shrinks more on curing and is weaker."),
  /** Service close to softening. */
  WARM("The joint works near the softening temperature of the adhesive: strength is reduced."),
  /** Sustained load too high. */
  CREEPS("The load that stays exceeds the share of the strength that is safe against creep."),
  /** Peak load too high. */
  BREAKS("The peak load exceeds the share of the strength that is safe for a bonded joint.");

  private final String text;

  BondCaution(String text) {
    this.text = text;
  }

  /**
   * The sentence to print.
   *
   * @return one or two sentences
   */
  public String text() {
    return text;
  }
}
