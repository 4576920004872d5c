package reseat.report.form;

import reseat.ballmount.LockNut;

/** The steps of setting a locked screw, as instructions for the bench, without numbers. */
public final class LockNutWords {

  private LockNutWords() {}

  /**
   * Puts a step into words.
   *
   * @param step the step
   * @return one sentence or two
   */
  public static String of(LockNut.Step step) {
    return switch (step) {
      case SET -> "Set the screw short of the wanted height by the expected shift.";
      case LOCK -> "Hold the screw against turning and tighten the nut to the stated torque.";
      case READ -> "Read the indicator again: only a reading with the nut tight counts.";
      case CORRECT ->
          "If the reading is off, loosen the nut, turn the screw by the error read, and lock again in"
              + " the same way: this screw shifts by the same amount every time.";
    };
  }
}
