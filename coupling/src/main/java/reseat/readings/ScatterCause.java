package reseat.readings;

/** What can make a mount come back to another place, and what to do about it first. */
public enum ScatterCause {
  /** Friction leaves the balls short of their places by a different amount each time. */
  FRICTION(
      "friction at the contacts",
      "clean and oil balls and seats, or use a smoother or lower-friction pair; seat with a light"
          + " tap or a second tightening, always in the same way"),
  /** The size of the preload differs from mount to mount. */
  PRELOAD(
      "size of the preload",
      "set the preload by spring deflection, a stop or a magnet instead of by torque"),
  /** The preload pulls along another line from mount to mount. */
  PRELOAD_LINE(
      "line of the preload",
      "let the preload pull along its axis: guide the drawbolt, seat it on a spherical washer, and"
          + " look for play and a bent spring"),
  /** Particles between ball and seat. */
  DIRT(
      "dirt on the contacts",
      "wipe and blow off balls and seats before every mount; look for a burr or a mark at each"
          + " contact"),
  /** Temperature differs from mount to mount. */
  TEMPERATURE(
      "temperature of the holder against the base",
      "let the holder soak before reading, keep hands off it, and record its temperature with every"
          + " mount"),
  /** The gauge, its stand or its cable. */
  GAUGE(
      "the gauge",
      "repeat readings of an undisturbed mount; stiffen the stand, or use a gauge of finer step"),
  /** Anything else that the prediction holds. */
  OTHER("another cause", "change one thing at a time and repeat the test");

  private final String words;
  private final String advice;

  ScatterCause(String words, String advice) {
    this.words = words;
    this.advice = advice;
  }

  /**
   * Returns the cause in words.
   *
   * @return a noun phrase
   */
  public String words() {
    return words;
  }

  /**
   * Returns what to do first if this cause is to blame: shop practice, no source.
   *
   * @return a sentence without its full stop
   */
  public String advice() {
    return advice;
  }
}
