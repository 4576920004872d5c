package reseat.remount;

/** What differs from one mounting to the next. */
public enum Cause {
  /** Friction coefficient of each contact. */
  FRICTION("friction", 0),
  /** Size of each preload. */
  PRELOAD_SIZE("preload size", 1),
  /** Line of action of each preload: sideways and in direction. */
  PRELOAD_LINE("preload line", 2),
  /** Which contacts close last. */
  APPROACH("approach", 3),
  /** Temperature of the holder against the post. */
  TEMPERATURE("temperature", 4),
  /** What lies in the contacts. */
  FILM("film", 5);

  private final String words;
  private final int stream;

  Cause(String words, int stream) {
    this.words = words;
    this.stream = stream;
  }

  /**
   * Returns the cause in words.
   *
   * @return for instance {@code preload size}
   */
  public String words() {
    return words;
  }

  /**
   * Returns the number of the cause's random stream within a mounting.
   *
   * @return 0 to 5; never changed, so that a seed keeps its meaning
   */
  int stream() {
    return stream;
  }
}
