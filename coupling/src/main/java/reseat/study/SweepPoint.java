package reseat.study;

import java.util.List;
import java.util.Optional;
import reseat.check.Finding;

/**
 * The coupling at one point of a sweep.
 *
 * @param values the values as typed, one for each key
 * @param state how far the coupling got
 * @param outputs what was asked for, in order; empty where there is no such value
 * @param failing failed checks, the worst first
 * @param reason why the coupling cannot be made or does not stand, as a sentence; empty if it does
 */
public record SweepPoint(
    List<String> values,
    State state,
    List<Optional<OutputValue>> outputs,
    List<Finding> failing,
    String reason) {

  /** How far a coupling got. */
  public enum State {
    /** It stands and all checks hold. */
    HOLDS,
    /** It stands and a check fails. */
    FAILS,
    /** It does not stand under preload and weight. */
    DOES_NOT_STAND,
    /** No such coupling can be made. */
    CANNOT_BE_MADE
  }

  /** Copies the lists. */
  public SweepPoint {
    values = List.copyOf(values);
    outputs = List.copyOf(outputs);
    failing = List.copyOf(failing);
  }

  /**
   * Says what is in the way.
   *
   * @return the failed check and where, or the reason; empty if all holds
   */
  public String binding() {
    if (failing.isEmpty()) {
      return reason;
    }
    Finding worst = failing.get(0);
    long others = failing.stream().map(Finding::check).distinct().count() - 1;
    return worst.check()
        + (worst.where().isEmpty() ? "" : " (" + worst.where() + ")")
        + (others > 0 ? " and " + others + " more" : "");
  }
}
