package reseat.report.check;

import java.util.Locale;
import java.util.StringJoiner;
import reseat.ballmount.BondCaution;
import reseat.ballmount.FluidFilmPad;
import reseat.ballmount.ThreadStrength;
import reseat.check.Measure;

/** What is said of how a ball is held and set: stud, thread, lock nut, bond, pivot and pad. */
public final class BallMountWords {

  private BallMountWords() {}

  static String of(Spoken s) {
    return switch (s.statement().key()) {
      case STUD_STRESS ->
          stud(s)
              + ", "
              + s.amount(5)
              + " of the yield strength of "
              + s.name(7)
              + " ("
              + s.amount(6)
              + ").";
      case STUD_STRESS_UNJUDGED ->
          stud(s) + "; the yield strength of " + s.name(5) + " is not known.";
      case STATE_YIELD -> "State its yield strength to have it judged.";
      case THICKEN_NECK ->
          "Thicken or shorten the neck: bending stress falls with the cube of its diameter.";
      case THREAD_UNJUDGED ->
          thread(s)
              + ": stripping was not checked, for the tensile strength of "
              + s.name(2)
              + " or "
              + s.name(3)
              + " is not known.";
      case STATE_TENSILE -> "State both tensile strengths to have it judged.";
      case THREAD_SLIPS ->
          thread(s) + " does not hold itself at this friction and has no lock nut.";
      case LOCK_THREAD -> "Lock it, or take a finer pitch.";
      case THREAD_BEARS ->
          thread(s)
              + " bears "
              + s.amount(2)
              + ", where "
              + weakest((ThreadStrength.Weakest) s.term(3))
              + "; load and lock nut pull with "
              + s.amount(4)
              + ", and "
              + s.amount(5)
              + " times that is required.";
      case TIGHTEN_LESS -> "Tighten the lock nut less, or take a larger or stronger screw.";
      case ENGAGE_MORE ->
          "Engage "
              + s.amount(0)
              + " of thread ("
              + s.amount(1)
              + " for the screw to break before a thread strips), or tighten the lock nut less.";
      case NUT_TOO_LOOSE ->
          "the lock nut of "
              + s.name(0)
              + " pulls with "
              + s.beside(1, 2)
              + ", less than the "
              + s.beside(2, 1)
              + " that press the stud in: the play of the thread stays and the height is not fixed.";
      case TIGHTEN_NUT -> "Tighten the nut more.";
      case NUT_SHIFT ->
          "tightening the lock nut of "
              + s.name(0)
              + " moves the ball out by "
              + s.figures().range(s.si(1), s.si(2))
              + (s.absent(4)
                  ? "."
                  : ", so the first locking leaves about ±"
                      + s.amount(3)
                      + "; ±"
                      + s.amount(4)
                      + " is required.");
      case SET_LOCK_READ -> "Set, lock, read, correct by the error read, and lock again.";
      case HAND_STEP ->
          "the finest turn that a hand sets reliably, 2 deg, moves the ball of "
              + s.name(0)
              + " by "
              + s.beside(1, 2)
              + "; ±"
              + s.beside(2, 1)
              + " is required.";
      case FINER_PITCH -> "Take a finer pitch, a differential screw or a long wrench with a scale.";
      case BOND_USE ->
          "the bond of "
              + s.name(0)
              + " uses "
              + s.amount(1)
              + " of its design strength under "
              + (s.absent(2) ? "the load that stays, creep counted" : s.name(2))
              + " ("
              + s.name(3)
              + "; a fresh test piece of this area would break at "
              + s.amount(4)
              + ").";
      case BOND_MORE ->
          "Bond a larger area, let the ball bottom on metal, or make ball and stud one piece.";
      case BOND_CAUTION -> bond(s);
      case PIVOT_PRESSURE ->
          pivot(s)
              + ", "
              + s.amount(5)
              + " of "
              + s.amount(6)
              + ", where the weaker of ball and seat is first harmed.";
      case PIVOT_UNJUDGED ->
          pivot(s) + "; no strength is known for " + s.name(5) + " or " + s.name(6) + ".";
      case DRAWN_OUT -> s.name(0) + " draws the ball out of " + s.name(1) + ".";
      case LEAVES_PIVOT ->
          s.name(0)
              + " has "
              + s.beside(2, 3)
              + " sideways; beyond "
              + s.beside(3, 2)
              + " the ball begins to leave "
              + s.name(1)
              + ", but for friction.";
      case PRESS_HARDER -> "Press harder, or take up the load elsewhere.";
      case STATE_PIVOT_YIELD -> "State a yield strength to have it judged.";
      case EASE_PIVOT -> "Take a larger ball, a harder seat or less force.";
      case PIVOT_OVER_DETERMINED ->
          s.name(0)
              + " touches the ball along more than three points: unless both are round to less than"
              + " they press together, the ball rests on two or three places that nobody chose.";
      case TAKE_TRIHEDRAL ->
          "Where the place must repeat take a trihedral seat, which has three points.";
      case PIVOT_BY_FRICTION ->
          s.name(0) + " holds the ball by friction only; it may creep sideways.";
      case GUIDE_SIDEWAYS -> "Guide the part sideways by a flexure or a second ball.";
      case PAD_TILT ->
          "friction of the pivot can hold the pad "
              + s.amount(0)
              + " out of line (centre of pressure "
              + s.amount(1)
              + " off)"
              + (s.absent(2)
                  ? "; no tilt is allowed or forbidden in the file."
                  : ", " + s.amount(3) + " times the " + s.amount(2) + " allowed.");
      case PAD_CURES -> cures(s);
      case PAD_EDGE ->
          "that tilt takes "
              + s.amount(0)
              + " of the film at the edge of the pad"
              + (s.si(0) >= 1 ? ": it touches." : ".");
      case DO_NOT_RUN -> "Do not run the pad before this is cured.";
      default ->
          "seat and stud are "
              + s.amount(0)
              + " times as stiff as the film ("
              + s.amount(1)
              + " on "
              + s.amount(2)
              + "); together "
              + s.amount(3)
              + ", of whose give the pivot has "
              + s.amount(4)
              + ".";
    };
  }

  private static String stud(Spoken s) {
    return "the stud of "
        + s.name(0)
        + " ("
        + s.amount(1)
        + " sideways, "
        + s.amount(2)
        + " along) is stressed to "
        + s.amount(3)
        + " at the foot of its neck under "
        + (s.absent(4) ? "the load that stays" : s.name(4));
  }

  private static String pivot(Spoken s) {
    return "peak pressure in "
        + s.name(0)
        + " under "
        + s.name(1)
        + " ("
        + s.amount(2)
        + (s.absent(3) ? "" : " and " + s.amount(3) + " sideways")
        + ") is "
        + s.amount(4);
  }

  private static String thread(Spoken s) {
    return "thread " + s.name(0) + " of " + s.name(1);
  }

  /**
   * Says what gives way.
   *
   * @param weakest what does
   * @return a clause, for instance {@code the screw breaks}
   */
  public static String weakest(ThreadStrength.Weakest weakest) {
    return switch (weakest) {
      case SCREW_BREAKS -> "the screw breaks";
      case SCREW_STRIPS -> "the threads of the screw strip";
      case NUT_STRIPS -> "the threads of the tapped part strip";
    };
  }

  private static String bond(Spoken s) {
    BondCaution caution = (BondCaution) s.term(1);
    String at = s.name(0) + ": ";
    return switch (caution) {
      case GAP_STARVED ->
          at
              + "the gap of "
              + s.amount(2)
              + " may starve the joint of adhesive; "
              + s.amount(3)
              + " at least is required.";
      case GAP_THICK ->
          at
              + "the gap of "
              + s.amount(2)
              + " makes the joint softer and weaker, and it shrinks more on curing; at most "
              + s.amount(3)
              + " is required.";
      case WARM ->
          at
              + "near the softening temperature of the adhesive, only "
              + s.figures().of(Measure.SHARE, s.si(2))
              + " of its strength is counted. A bond for higher temperature is the cure.";
      case HANGS_ON_ADHESIVE, CREEPS, BREAKS ->
          at
              + caution.text().substring(0, 1).toLowerCase(Locale.ROOT)
              + caution.text().substring(1);
    };
  }

  private static String cures(Spoken s) {
    StringJoiner cures = new StringJoiner(" Or: ");
    for (int i = 0; i < s.size(); i++) {
      cures.add(((FluidFilmPad.Remedy) s.term(i)).text());
    }
    return cures.toString();
  }
}
