package reseat.report.check;

import reseat.remount.Cause;

/** What is said of use: gaps, repeatability, seating in use, and doubts about the input. */
final class UseWords {

  private UseWords() {}

  static String of(Spoken s) {
    return switch (s.statement().key()) {
      case GAP ->
          "the gap at "
              + s.name(0)
              + " is "
              + s.beside(1, 2)
              + " at its smallest; "
              + s.beside(2, 1)
              + " is required, so that nothing but the balls touches.";
      case REPEATABILITY ->
          "the tool point comes back along "
              + s.name(0)
              + " within ± "
              + s.beside(1, 2)
              + " ("
              + s.name(3)
              + "); the target is ± "
              + s.beside(2, 1)
              + ". "
              + road(s);
      case AT_THE_TARGET ->
          "the tool point comes back along "
              + s.name(0)
              + " within about ± "
              + s.beside(1, 2)
              + " ("
              + s.name(3)
              + "), at the target of ± "
              + s.beside(2, 1)
              + ": decide. "
              + road(s);
      case HANG_UP ->
          s.amount(2)
              + " of "
              + s.amount(1)
              + " simulated tool changes hang up on friction ("
              + s.amount(0)
              + "); at most 0.1 % is allowed.";
      case HOLDERS_MISFIT -> s.amount(0) + " of " + s.amount(1) + " holders do not fit their post.";
      case HOLDERS_APART ->
          s.name(3)
              + " of the holders: within ± "
              + s.beside(1, 2)
              + " of their mean along "
              + s.name(0)
              + "; ± "
              + s.beside(2, 1)
              + " is wanted.";
      case SURELY_SEATS -> "every tool change seats: friction stays well below the seating limit.";
      case SEATING_NOT_LOOKED_AT ->
          "friction comes near to the seating limit, and tool changes were not simulated.";
      case MOSTLY_FROM ->
          "Most of the scatter along "
              + s.name(0)
              + " comes from "
              + ((Cause) s.term(1)).words()
              + " ("
              + s.amount(2)
              + ").";
      case SEATS_WITH ->
          s.si(1) == 0
              ? "No push by hand closes it within 200 N."
              : "It needs "
                  + s.amount(1)
                  + " of seating force to close, tried; stated is "
                  + s.amount(0)
                  + ".";
      case UNUSUAL_VALUE -> s.name(0) + ": " + s.name(1) + (s.name(1).endsWith(".") ? "" : ".");
      case MEND_OR_ACCEPT -> "Mend the value; if it is meant, write " + s.name(0) + ".";
      case RESTS_ON ->
          s.amount(3)
              + " of a deciding figure rests on "
              + s.name(0)
              + ", which the file does not state: "
              + s.name(1)
              + " ("
              + s.name(2)
              + ").";
      case STATE_IT -> "State " + s.name(0) + " in the file.";
      case ACCEPTANCE_UNUSED ->
          "the acceptance of "
              + s.name(0)
              + (s.absent(1) ? " without a place (where)" : " at " + s.name(1))
              + " applies to nothing. Name the place that is to be decided, or take it out of the"
              + " file.";
      default ->
          "accepted was up to "
              + s.beside(1, 0)
              + ", and it is now "
              + s.beside(0, 1)
              + ": decide again.";
    };
  }

  private static String road(Spoken s) {
    return s.si(5) > 0
        ? "From " + s.amount(5) + " simulated tool changes."
        : "From the closed form.";
  }
}
