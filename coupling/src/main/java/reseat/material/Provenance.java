package reseat.material;

/** How far a printed number can be trusted. */
public enum Provenance {
  /** Read in the source named. */
  SEEN("read in the source"),
  /** Abstract or first page of the source read, not the whole. */
  ABSTRACT("abstract read"),
  /** Recalled from memory; the source was not read. */
  RECALLED("recalled, source not read"),
  /** Common practice or an estimate by rule; no source. */
  COMMON_PRACTICE("common practice, no source"),
  /** Given by the user. */
  GIVEN("given by the user");

  private final String words;

  Provenance(String words) {
    this.words = words;
  }

  /**
   * Returns the mark in words.
   *
   * @return a few words to print beside the number
   */
  public String words() {
    return words;
  }
}
