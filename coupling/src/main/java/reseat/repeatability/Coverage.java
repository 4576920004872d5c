package reseat.repeatability;

/**
 * How many tool changes a half-width is to hold: a share of them, or the largest of a number.
 *
 * <p>The largest of n independent changes is itself uncertain. Its median is told: as likely as not
 * the largest of n departures from the mean is within the half-width, which then holds a share of
 * {@code 2^(-1/n)} of all changes (order statistics of n independent values).
 *
 * @param share share of all changes within the half-width, between 0 and 1
 * @param changes number of changes of which the largest is meant; 0 if a share is meant
 */
public record Coverage(double share, int changes) {

  /** 95 % of the changes: one of twenty may be outside. */
  public static final Coverage USUAL = ofShare(0.95);

  /** 99.7 % of the changes: three of a thousand may be outside. */
  public static final Coverage NEARLY_ALL = ofShare(0.997);

  /** Refuses shares of nothing and of everything. */
  public Coverage {
    if (!(share > 0 && share < 1)) {
      throw new IllegalArgumentException(
          "a coverage must be between 0 and 100 %, found " + 100 * share + " %");
    }
    if (changes < 0) {
      throw new IllegalArgumentException("at least 1 tool change, found " + changes);
    }
  }

  /**
   * A share of all changes.
   *
   * @param share between 0 and 1
   * @return the coverage
   */
  public static Coverage ofShare(double share) {
    return new Coverage(share, 0);
  }

  /**
   * The largest of a number of changes.
   *
   * @param changes 1 or more
   * @return the coverage whose half-width the largest of so many keeps as often as not
   */
  public static Coverage largestOf(int changes) {
    if (changes < 1) {
      throw new IllegalArgumentException("at least 1 tool change, found " + changes);
    }
    return new Coverage(StrictMath.pow(0.5, 1.0 / changes), changes);
  }

  /**
   * Returns the coverage in words.
   *
   * @return for instance {@code 95 % of tool changes} or {@code the largest of 20 tool changes}
   */
  public String words() {
    if (changes > 0) {
      return "the largest of " + changes + " tool changes";
    }
    double percent = StrictMath.rint(1e4 * share) / 100;
    boolean whole = percent == StrictMath.rint(percent);
    return (whole ? Long.toString((long) percent) : Double.toString(percent))
        + " % of tool changes";
  }
}
