package reseat.designfile;

import java.util.List;
import java.util.Optional;
import reseat.units.PrintedNumber;

/**
 * What a search for the best design may vary, and what it is to look for.
 *
 * @param vary keys with their values, each as text such as {@code layout.ball.diameter =
 *     stock:ball-inch}, in the words of a sweep; several keys that take the same value are joined
 *     by {@code +}
 * @param rankBy by what the designs that keep every limit are put in order
 * @param leastStiffness least stiffness wanted of the tool point along any machine axis, N/m; 0 for
 *     none
 * @param largestSize largest circle about all balls, m; infinite for none
 * @param seatsFollowBall whether seats are cut anew for the ball and the flank angle
 */
public record SizeTargets(
    List<String> vary,
    RankBy rankBy,
    double leastStiffness,
    double largestSize,
    boolean seatsFollowBall) {

  /** By what designs are put in order. */
  public enum RankBy {
    /** The part used of the limit that is nearest, least first. */
    MARGIN("margin"),
    /** Scatter of the tool point, least first. */
    REPEATABILITY("repeatability"),
    /** Least stiffness of the tool point along a machine axis, greatest first. */
    STIFFNESS("stiffness"),
    /** Peak pressure as a part of its limit, least first. */
    PRESSURE("pressure"),
    /** Circle about all balls, least first. */
    SIZE("size");

    private final String word;

    RankBy(String word) {
      this.word = word;
    }

    /**
     * Returns the word in the file.
     *
     * @return the word
     */
    public String word() {
      return word;
    }

    /**
     * Finds a rule.
     *
     * @param word its word
     * @return the rule
     */
    public static Optional<RankBy> named(String word) {
      for (RankBy rule : values()) {
        if (rule.word.equals(word)) {
          return Optional.of(rule);
        }
      }
      return Optional.empty();
    }
  }

  /** Nothing varies, no further limit. */
  public static final SizeTargets NONE =
      new SizeTargets(List.of(), RankBy.MARGIN, 0, Double.POSITIVE_INFINITY, true);

  /** Copies the list; refuses limits that nothing can meet. */
  public SizeTargets {
    vary = List.copyOf(vary);
    if (!(leastStiffness >= 0) || Double.isInfinite(leastStiffness)) {
      throw new IllegalArgumentException(
          "the least stiffness wanted must not be negative, found "
              + PrintedNumber.shortest(leastStiffness)
              + " N/m");
    }
    if (!(largestSize > 0)) {
      throw new IllegalArgumentException(
          "the largest size must be positive, found " + PrintedNumber.shortest(largestSize) + " m");
    }
  }

  /**
   * Returns the same wish with other keys to vary.
   *
   * @param other keys with their values
   * @return the changed copy
   */
  public SizeTargets withVary(List<String> other) {
    return new SizeTargets(other, rankBy, leastStiffness, largestSize, seatsFollowBall);
  }

  /**
   * Returns the same wish with another order.
   *
   * @param other the rule
   * @return the changed copy
   */
  public SizeTargets withRankBy(RankBy other) {
    return new SizeTargets(vary, other, leastStiffness, largestSize, seatsFollowBall);
  }
}
