package reseat.equilibrium;

/** No state of rest was found: what was sought, and where the search stopped. */
public final class NoEquilibriumException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /**
   * Makes the exception.
   *
   * @param outcome how the search ended
   * @param sought what was sought, in words
   */
  public NoEquilibriumException(EquilibriumSolver.Outcome outcome, String sought) {
    super(sought + ": " + reason(outcome));
  }

  /**
   * Makes the exception for a coupling that has not six contacts.
   *
   * @param sought what was sought, in words
   * @param contacts number of contacts
   * @return the exception: too few leave the holder free, too many over-constrain it
   */
  public static NoEquilibriumException ofContacts(String sought, int contacts) {
    return new NoEquilibriumException(
        contacts > 6
            ? EquilibriumSolver.Outcome.OVER_CONSTRAINED
            : EquilibriumSolver.Outcome.NOT_CONSTRAINED,
        sought + " with " + contacts + " contacts (six are wanted)");
  }

  private static String reason(EquilibriumSolver.Outcome outcome) {
    return switch (outcome) {
      case NOT_CONSTRAINED -> "the contacts do not constrain all six motions of the holder";
      case OVER_CONSTRAINED ->
          "more contacts than six over-constrain the holder: which of them touch, and what each"
              + " bears, hangs on errors of making; leave six";
      case PRESSED_THROUGH -> "the load presses a ball through its seat";
      case SOLVED, NOT_FOUND -> "no pose was found in " + EquilibriumSolver.ROUNDS + " rounds";
    };
  }
}
