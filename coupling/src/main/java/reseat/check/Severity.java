package reseat.check;

/** How much a finding matters, worst first. */
public enum Severity {
  /** A limit is broken. */
  FAIL("FAILS"),
  /** A limit is near, or a rule of thumb is broken. */
  WARNING("warning"),
  /** Worth knowing. */
  NOTE("note"),
  /** The limit is kept. */
  OK("holds");

  private final String words;

  Severity(String words) {
    this.words = words;
  }

  /**
   * Returns the severity as printed.
   *
   * @return one word
   */
  public String words() {
    return words;
  }
}
