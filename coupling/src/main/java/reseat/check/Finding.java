package reseat.check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import reseat.design.CheckKind;
import reseat.elementary.Elementary;
import reseat.units.PrintedNumber;

/**
 * One thing that was looked at, and how it stands: numbers and keys, no words and no units but SI.
 *
 * @param check which check
 * @param judged how it is judged
 * @param subject what it is about
 * @param value what was found, SI; finite
 * @param limit what is allowed or wanted, SI; finite; of advice a figure to compare with, 0 if none
 * @param sense on which side of the limit the value should be
 * @param basis by whose judgement the limit stands
 * @param measure what both numbers measure
 * @param said what was found
 * @param advice what to change; {@link Statement#NOTHING} if nothing need change
 * @param reason why a soft limit was accepted; empty unless accepted
 */
public record Finding(
    CheckKind check,
    Judged judged,
    Subject subject,
    double value,
    double limit,
    Sense sense,
    LimitBasis basis,
    Measure measure,
    Statement said,
    Statement advice,
    Optional<String> reason)
    implements Comparable<Finding> {

  /** On which side of the limit the value should be. */
  public enum Sense {
    /** The value should not exceed the limit. */
    AT_MOST,
    /** The value should not fall short of the limit. */
    AT_LEAST
  }

  /**
   * Refuses numbers that are not finite, a limit called kept that is not, and a hard limit put up
   * for decision.
   */
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
    boolean kept = sense == Sense.AT_MOST ? value <= limit : value >= limit;
    if (judged == Judged.HOLDS && !kept) {
      throw new IllegalArgumentException(
          check
              + " cannot hold with "
              + PrintedNumber.shortest(value)
              + " beyond its limit of "
              + PrintedNumber.shortest(limit));
    }
    if ((judged == Judged.DECIDE || judged == Judged.ACCEPTED) && basis.hard()) {
      throw new IllegalArgumentException(check + ": a hard limit is not up for decision");
    }
    if (judged == Judged.DECIDE && !mayBeAccepted(check, measure)) {
      throw new IllegalArgumentException(check + " is not known to compare " + measure);
    }
    if ((judged == Judged.ACCEPTED) != reason.isPresent()) {
      throw new IllegalArgumentException(check + ": what is accepted needs a reason, else none");
    }
  }

  /** A design file accepts shares, and what a check is known to compare. */
  private static boolean mayBeAccepted(CheckKind check, Measure measure) {
    return check == CheckKind.INPUT
        || measure.isPureNumber()
        || check.measured().stream().anyMatch(kind -> Measure.of(kind) == measure);
  }

  /**
   * A finding that nobody accepted.
   *
   * @param check which check
   * @param judged how it is judged
   * @param subject what it is about
   * @param value what was found, SI; finite
   * @param limit what is allowed or wanted, SI; finite
   * @param sense on which side of the limit the value should be
   * @param basis by whose judgement the limit stands
   * @param measure what both numbers measure
   * @param said what was found
   * @param advice what to change
   */
  public Finding(
      CheckKind check,
      Judged judged,
      Subject subject,
      double value,
      double limit,
      Sense sense,
      LimitBasis basis,
      Measure measure,
      Statement said,
      Statement advice) {
    this(
        check,
        judged,
        subject,
        value,
        limit,
        sense,
        basis,
        measure,
        said,
        advice,
        Optional.empty());
  }

  /**
   * Advice: something without a limit.
   *
   * @param check which check it belongs to
   * @param subject what it is about
   * @param value a figure, SI; finite
   * @param compareWith a figure to compare it with, SI; 0 if none
   * @param measure what both measure
   * @param said what was found
   * @param advice what could be done; {@link Statement#NOTHING} if nothing need be
   * @return the finding
   */
  public static Finding advice(
      CheckKind check,
      Subject subject,
      double value,
      double compareWith,
      Measure measure,
      Statement said,
      Statement advice) {
    return new Finding(
        check,
        Judged.ADVICE,
        subject,
        value,
        compareWith,
        Sense.AT_MOST,
        LimitBasis.COMMON_PRACTICE,
        measure,
        said,
        advice);
  }

  /**
   * The same finding, accepted.
   *
   * @param why reason that the design file gives
   * @return the finding; only one that is up for decision can be accepted
   */
  public Finding accepted(String why) {
    return new Finding(
        check,
        Judged.ACCEPTED,
        subject,
        value,
        limit,
        sense,
        basis,
        measure,
        said,
        advice,
        Optional.of(why));
  }

  /**
   * The same finding with other advice.
   *
   * @param other what to change
   * @return the finding
   */
  public Finding withAdvice(Statement other) {
    return new Finding(
        check, judged, subject, value, limit, sense, basis, measure, said, other, reason);
  }

  /**
   * The same finding without advice that was not tried.
   *
   * @return the finding; what fails or is to be decided keeps advice on handling only
   */
  public Finding withoutUntried() {
    boolean open = judged == Judged.FAILS || judged == Judged.DECIDE;
    return !open || advice.isEmpty() || advice.key().isHandling()
        ? this
        : withAdvice(Statement.NOTHING);
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
   * @return the same, worst first: by judgement, then by margin
   */
  public static List<Finding> worstFirst(List<Finding> findings) {
    List<Finding> sorted = new ArrayList<>(findings);
    Collections.sort(sorted);
    return List.copyOf(sorted);
  }

  /**
   * Orders findings worst first: by judgement, then by margin. Unequal findings may compare as
   * equal.
   */
  @Override
  public int compareTo(Finding other) {
    int byJudgement = judged.compareTo(other.judged);
    // rounded, so that findings alike by symmetry stay in the order in which they were made
    return byJudgement != 0
        ? byJudgement
        : Double.compare(Elementary.rint(1e6 * margin()), Elementary.rint(1e6 * other.margin()));
  }
}
