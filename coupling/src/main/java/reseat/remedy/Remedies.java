package reseat.remedy;

import java.util.List;
import java.util.Optional;
import reseat.design.CheckKind;

/**
 * What came of a search for remedies.
 *
 * @param state whether and why there was anything to search
 * @param remedies nearest first, at most three
 * @param conflict two checks that are at odds, if nothing helps and two are
 * @param uncured a check that nothing tried cures; empty if each is cured by something
 */
public record Remedies(
    State state, List<Remedy> remedies, Optional<Conflict> conflict, Optional<CheckKind> uncured) {

  /** Whether there was anything to search. */
  public enum State {
    /** The design holds, or remedies were not asked for. */
    NOT_SOUGHT,
    /** What is open is for a person to state, mend or accept; no other change can cure that. */
    TO_BE_STATED,
    /** Single keys were tried. */
    SINGLE_KEYS,
    /** Single keys and pairs of them were tried. */
    PAIRS
  }

  /** Nothing was sought. */
  public static final Remedies NOT_SOUGHT =
      new Remedies(State.NOT_SOUGHT, List.of(), Optional.empty(), Optional.empty());

  /** Copies the list. */
  public Remedies {
    remedies = List.copyOf(remedies);
  }
}
