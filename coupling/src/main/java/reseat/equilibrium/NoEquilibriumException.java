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

  private static String reason(EquilibriumSolver.Outcome outcome) {
    return switch (outcome) {
      case NOT_CONSTRAINED -> "the contacts do not constrain all six motions of the holder";
      case PRESSED_THROUGH -> "the load presses a ball through its seat";
      case SOLVED, NOT_FOUND -> "no pose was found in " + EquilibriumSolver.ROUNDS + " rounds";
    };
  }
}
