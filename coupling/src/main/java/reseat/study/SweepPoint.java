package reseat.study;

import java.util.List;
import java.util.Optional;
import reseat.check.Finding;
import reseat.check.Statement;

/**
 * The coupling at one point of a sweep.
 *
 * @param values the values as typed, one for each key
 * @param state how far the coupling got
 * @param outputs what was asked for, in order; empty where there is no such value
 * @param failing failed checks, the worst first
 * @param deciding what a person has to decide about, the worst first
 * @param reason why the coupling cannot be made or does not stand; nothing if it does
 */
public record SweepPoint(
    List<String> values,
    State state,
    List<Optional<OutputValue>> outputs,
    List<Finding> failing,
    List<Finding> deciding,
    Statement reason) {

  /** How far a coupling got. */
  public enum State {
    /** It stands and all checks hold. */
    HOLDS,
    /** It stands, no check fails, and a person has to decide about one. */
    UNDECIDED,
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
    deciding = List.copyOf(deciding);
  }
}
