package reseat.interchange;

/** Whether a holder fits its post, and if not, why. */
public enum Fit {
  /** It stands on all its contacts. */
  FITS("fits"),
  /** No pose touches all flanks. */
  NO_POSE("no pose touches all flanks"),
  /** A contact would have to pull under preload and weight. */
  LIFTS_OFF("a contact lifts off under preload and weight"),
  /** A ball touches the floor of its seat. */
  BALL_BOTTOMS("a ball touches the floor of its seat"),
  /** A contact point lies beyond the edge or the end of its flank. */
  OFF_FLANK("a contact runs over the edge of its flank");

  private final String words;

  Fit(String words) {
    this.words = words;
  }

  /**
   * Returns the outcome in words.
   *
   * @return a clause
   */
  public String words() {
    return words;
  }
}
