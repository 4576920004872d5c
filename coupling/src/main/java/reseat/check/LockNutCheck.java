package reseat.check;

import java.util.ArrayList;
import java.util.List;
import reseat.check.Finding.Sense;
import reseat.design.StudThread;
import reseat.mount.LockNut;
import reseat.mount.ThreadDuty;

/**
 * What setting and locking an adjusting screw does to the height of its ball.
 *
 * <p>A note as long as no tolerance of height is stated.
 */
public final class LockNutCheck {

  private static final String CHECK = "height setting";

  private LockNutCheck() {}

  /**
   * Judges the setting.
   *
   * @param where name of the support
   * @param thread its thread
   * @param push force that presses the stud into the body, N; negative if it pulls
   * @param tolerance height tolerance, either way, m; infinite if none is stated
   * @return findings on the lock nut, if there is one, and on what a hand can set
   */
  public static List<Finding> of(String where, StudThread thread, double push, double tolerance) {
    List<Finding> found = new ArrayList<>();
    if (thread.lockNut().isPresent()) {
      found.add(nut(where, thread.lockNut().get().withPush(push), tolerance));
    }
    if (Double.isFinite(tolerance)) {
      found.add(hand(where, thread, tolerance));
    }
    return found;
  }

  private static Finding nut(String where, LockNut nut, double tolerance) {
    if (!nut.takesUpPlay()) {
      return new Finding(
          CHECK,
          Severity.WARNING,
          where,
          nut.clampForce(),
          nut.pushForce(),
          Sense.AT_LEAST,
          Measure.FORCE,
          Sentence.of(
              "the lock nut of ",
              where,
              " pulls with ",
              Measure.FORCE.amount(nut.clampForce()),
              ", less than the ",
              Measure.FORCE.amount(nut.pushForce()),
              " that press the stud in: the play of the thread stays and the height is not fixed."),
          Sentence.of("Tighten the nut more."));
    }
    boolean judged = Double.isFinite(tolerance);
    boolean blind = judged && nut.shiftUncertainty() > tolerance;
    return new Finding(
        CHECK,
        !judged ? Severity.NOTE : blind ? Severity.WARNING : Severity.OK,
        where,
        nut.shiftUncertainty(),
        judged ? tolerance : 0,
        Sense.AT_MOST,
        Measure.LENGTH,
        Sentence.of(
            "tightening the lock nut of ",
            where,
            " moves the ball out by ",
            new SmallRange(nut.shiftMin(), nut.shiftMax()),
            judged
                ? Sentence.of(
                    ", so the first locking leaves ±",
                    Measure.LENGTH.amount(nut.shiftUncertainty()),
                    " against ±",
                    Measure.LENGTH.amount(tolerance),
                    " wanted.")
                : "."),
        blind || !judged
            ? Sentence.of("Set, lock, read, correct by the error read, and lock again.")
            : Sentence.NONE);
  }

  private static Finding hand(String where, StudThread thread, double tolerance) {
    double step = thread.limits().thread().travelPerRadian() * ThreadDuty.HAND_RESOLUTION;
    boolean coarse = step > tolerance;
    return new Finding(
        CHECK,
        coarse ? Severity.WARNING : Severity.OK,
        where,
        step,
        tolerance,
        Sense.AT_MOST,
        Measure.LENGTH,
        "a turn of 2 deg, the finest a hand sets reliably, moves the ball of "
            + where
            + " by "
            + Measure.LENGTH.show(step)
            + "; ±"
            + Measure.LENGTH.show(tolerance)
            + " is wanted.",
        coarse ? "Take a finer pitch, a differential screw or a long wrench with a scale." : "");
  }
}
