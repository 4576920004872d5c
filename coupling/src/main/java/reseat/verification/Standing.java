package reseat.verification;

/** What stands behind a check value. */
public enum Standing {
  /** The printed value was read in the source named. */
  SEEN("read in the source"),
  /** The printed value is recalled from memory and was confirmed by an independent computation. */
  RECALLED("recalled, confirmed by computation"),
  /** Computed independently, to more digits, from the formula stated in the source column. */
  COMPUTED("computed independently");

  private final String words;

  Standing(String words) {
    this.words = words;
  }

  /**
   * Returns the standing in words.
   *
   * @return a few words to print
   */
  public String words() {
    return words;
  }
}
