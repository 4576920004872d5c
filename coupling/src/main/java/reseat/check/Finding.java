package reseat.check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import reseat.elementary.Elementary;
import reseat.units.PrintedNumber;

/**
 * One thing that was looked at, and how it stands.
 *
 * @param check kind of check, in a word or two, for instance {@code lift-off}
 * @param severity how much it matters
 * @param where support, contact or load case it is about; empty for the coupling as a whole
 * @param value what was found, SI; finite
 * @param limit what is allowed or wanted, SI; finite
 * @param sense on which side of the limit the value should be
 * @param measure what both numbers measure
 * @param said what was found, with number and limit, as a sentence; written when asked for by
 *     {@link #message()}
 * @param remedy what to change, as a sentence; {@link Sentence#NONE} if nothing need change
 */
public record Finding(
    String check,
    Severity severity,
    String where,
    double value,
    double limit,
    Sense sense,
    Measure measure,
    Sentence said,
    Sentence remedy)
    implements Comparable<Finding> {

  /** On which side of the limit the value should be. */
  public enum Sense {
    /** The value should not exceed the limit. */
    AT_MOST,
    /** The value should not fall short of the limit. */
    AT_LEAST
  }

  /** Refuses numbers that are not finite. */
  public Finding {
    if (!Double.isFinite(value) || !Double.isFinite(limit)) {
      throw new IllegalArgumentException(
          "finding on "
              + check
              + " needs finite numbers, found "
              + PrintedNumber.shortest(value)
              + " and "
              + PrintedNumber.shortest(limit));
    }
    if (check.isBlank()) {
      throw new IllegalArgumentException("a finding needs a check");
    }
  }

  /**
   * A finding whose words are at hand.
   *
   * @param check kind of check
   * @param severity how much it matters
   * @param where what it is about
   * @param value what was found, SI; finite
   * @param limit what is allowed or wanted, SI; finite
   * @param sense on which side of the limit the value should be
   * @param measure what both numbers measure
   * @param message what was found, as a sentence
   * @param advice what to change, as a sentence; empty if nothing need change
   */
  public Finding(
      String check,
      Severity severity,
      String where,
      double value,
      double limit,
      Sense sense,
      Measure measure,
      String message,
      String advice) {
    this(
        check,
        severity,
        where,
        value,
        limit,
        sense,
        measure,
        Sentence.of(message),
        advice.isEmpty() ? Sentence.NONE : Sentence.of(advice));
    if (message.isBlank()) {
      throw new IllegalArgumentException("a finding needs a message");
    }
  }

  /**
   * Says what was found.
   *
   * @return a sentence with number and limit
   */
  public String message() {
    return said.text();
  }

  /**
   * Says what to change.
   *
   * @return a sentence; empty if nothing need change
   */
  public String advice() {
    return remedy.text();
  }

  /**
   * Returns how much room is left.
   *
   * @return distance of the value from the limit as a part of the limit, or plainly where the limit
   *     is zero; negative where the limit is broken
   */
  public double margin() {
    double room = sense == Sense.AT_MOST ? limit - value : value - limit;
    return limit == 0 ? room : room / Math.abs(limit);
  }

  /**
   * Puts findings in order.
   *
   * @param findings findings in any order
   * @return the same, worst first: by severity, then by margin
   */
  public static List<Finding> worstFirst(List<Finding> findings) {
    List<Finding> sorted = new ArrayList<>(findings);
    Collections.sort(sorted);
    return List.copyOf(sorted);
  }

  /**
   * Orders findings worst first: by severity, then by margin. Unequal findings may compare as
   * equal.
   */
  @Override
  public int compareTo(Finding other) {
    int bySeverity = severity.compareTo(other.severity);
    // rounded, so that findings alike by symmetry stay in the order in which they were made
    return bySeverity != 0
        ? bySeverity
        : Double.compare(Elementary.rint(1e6 * margin()), Elementary.rint(1e6 * other.margin()));
  }
}
