package reseat.report.check;

import reseat.check.Measure;

/** What is said of the layout: constraint, motion under load, grooves, lift-off, stiffness. */
final class LayoutWords {

  private LayoutWords() {}

  static String of(Spoken s) {
    return switch (s.statement().key()) {
      case OVER_CONSTRAINED ->
          "over-constrained: "
              + s.amount(0)
              + " contacts for 6 motions, so the holder rocks between contacts.";
      case MOTION_FREE ->
          s.amount(0)
              + " contacts hold only "
              + s.amount(1)
              + " of 6 motions; "
              + (s.si(2) == 1
                  ? "one motion is free: "
                  : s.amount(2) + " motions are free, one of them ")
              + s.inner(3)
              + ".";
      case BARELY_HELD, BARELY_HELD_SEVERAL ->
          (s.statement().key() == reseat.check.Said.BARELY_HELD
                  ? "all 6 motions are held, but one barely: "
                  : "all 6 motions are held, but several alike barely, one of them ")
              + s.inner(0)
              + " (condition number "
              + s.amount(1)
              + ", poor above "
              + s.amount(2)
              + ").";
      case ALL_HELD ->
          "6 contacts hold all 6 motions, condition number "
              + s.amount(0)
              + " (poor above "
              + s.amount(1)
              + ").";
      case MOTION -> s.name(0);
      case LAYOUT_NOT_MADE ->
          "the seats of this file do not make it; write a file of that layout to compare.";
      case REFUSED -> s.name(0);
      case TOO_LARGE ->
          "the circle about the balls is "
              + s.beside(0, 1)
              + "; at most "
              + s.beside(1, 0)
              + " is wanted.";
      case TOO_SOFT ->
          "the softest axis has " + s.beside(0, 1) + "; at least " + s.beside(1, 0) + " is wanted.";
      case ERROR_MOTION ->
          s.name(0)
              + " moves the tool point along "
              + s.name(1)
              + " by "
              + s.amount(2)
              + " if the contacts stick, by "
              + s.beside(3, 4)
              + " if they slide; the target is "
              + s.amount(4)
              + ".";
      case GROOVES_ON_BISECTORS -> "the grooves run along the bisectors of the ball triangle.";
      case GROOVE_OFF_BISECTOR ->
          "the groove of "
              + s.name(0)
              + " runs "
              + s.amount(1)
              + " off the bisector of the ball triangle, which lies at "
              + s.amount(2)
              + "; "
              + (s.si(3) < 0.005
                  ? "no stiffness is lost."
                  : "the softest motion is "
                      + s.amount(3)
                      + " softer than with all grooves along the bisectors.");
      case TURN_TO_BISECTORS -> "Turn the grooves to the bisectors: " + s.name(0) + ".";
      case NOT_PRESSED ->
          s.name(0)
              + " is open at rest: preload and weight would have it "
              + (s.absent(1) ? "carry nothing." : "pull with " + s.amount(1) + ".");
      case LIFTS_OFF ->
          s.name(0)
              + " lifts "
              + s.name(1)
              + " off at "
              + s.amount(2)
              + " of this load; "
              + s.figures().beside(Measure.SHARE, s.si(3), s.si(2), false)
              + " is required.";
      case LIFT_OFF_FACTOR ->
          s.name(1)
              + " lifts off at "
              + s.beside(2, 3)
              + " × "
              + s.name(0)
              + " ("
              + s.beside(3, 2)
              + " × required).";
      case LITTLE_FORCE_LEFT ->
          s.name(0)
              + " leaves a contact only "
              + s.beside(1, 2)
              + " of its force at rest; "
              + s.beside(2, 1)
              + " is usual.";
      case LOAD_INSIDE, LOAD_OUTSIDE -> resultant(s);
      case WIDEN_TRIANGLE ->
          "Widen the triangle past the load, move the preload toward it, or raise the preload.";
      case MOUNTINGS_GIVE ->
          "ball mountings give "
              + s.amount(0)
              + " of the motion along "
              + s.name(2)
              + "; the contacts give the rest.";
      case SHORTEN_STUDS ->
          "Shorten or thicken the ball studs, or seat the balls in the holder itself.";
      default ->
          "the tool point is softest along "
              + s.name(0)
              + ", "
              + s.amount(1)
              + "; "
              + s.name(2)
              + " gives "
              + s.amount(4)
              + " of it.";
    };
  }

  private static String resultant(Spoken s) {
    boolean inside = s.statement().key() == reseat.check.Said.LOAD_INSIDE;
    return (s.absent(0)
            ? "the resultant of preload and weight passes "
            : "the resultant of " + s.name(0) + ", preload and weight passes ")
        + s.amount(1)
        + (inside ? " inside the edge " : " outside the edge ")
        + s.name(2)
        + " of the ball triangle.";
  }
}
