package reseat.readings;

/** What can make a mount come back to another place. */
public enum ScatterCause {
  /** Friction leaves the balls short of their places by a different amount each time. */
  FRICTION("friction at the contacts"),
  /** The size of the preload differs from mount to mount. */
  PRELOAD("size of the preload"),
  /** The preload pulls along another line from mount to mount. */
  PRELOAD_LINE("line of the preload"),
  /** Particles between ball and seat. */
  DIRT("dirt on the contacts"),
  /** Temperature differs from mount to mount. */
  TEMPERATURE("temperature of the holder against the base"),
  /** The gauge, its stand or its cable. */
  GAUGE("the gauge"),
  /** Anything else that the prediction holds. */
  OTHER("another cause");

  private final String words;

  ScatterCause(String words) {
    this.words = words;
  }

  /**
   * Returns the cause in words.
   *
   * @return a noun phrase
   */
  public String words() {
    return words;
  }
}
