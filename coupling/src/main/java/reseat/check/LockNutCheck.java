package reseat.check;

import static reseat.check.Argument.amount;

import java.util.ArrayList;
import java.util.List;
import reseat.ballmount.LockNut;
import reseat.ballmount.ThreadDuty;
import reseat.check.Finding.Sense;
import reseat.design.CheckKind;
import reseat.design.StudThread;

/**
 * What setting and locking an adjusting screw does to the height of its ball.
 *
 * <p>Advice only as long as no tolerance of height is stated.
 */
public final class LockNutCheck {

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
          CheckKind.HEIGHT_SETTING,
          Judged.FAILS,
          Subject.support(where),
          nut.clampForce(),
          nut.pushForce(),
          Sense.AT_LEAST,
          LimitBasis.MECHANICS,
          Measure.FORCE,
          Statement.of(
              Said.NUT_TOO_LOOSE,
              where,
              amount(Measure.FORCE, nut.clampForce()),
              amount(Measure.FORCE, nut.pushForce())),
          Statement.of(Said.TIGHTEN_NUT));
    }
    double left = nut.shiftUncertainty();
    if (Double.isInfinite(tolerance)) {
      return Finding.advice(
          CheckKind.HEIGHT_SETTING,
          Subject.support(where),
          left,
          0,
          Measure.LENGTH,
          shift(where, nut, 0),
          Statement.of(Said.SET_LOCK_READ));
    }
    return judged(where, left, tolerance, shift(where, nut, tolerance), Said.SET_LOCK_READ);
  }

  private static Statement shift(String where, LockNut nut, double tolerance) {
    return Statement.of(
        Said.NUT_SHIFT,
        where,
        amount(Measure.LENGTH, nut.shiftMin()),
        amount(Measure.LENGTH, nut.shiftMax()),
        amount(Measure.LENGTH, nut.shiftUncertainty()),
        amount(Measure.LENGTH, tolerance));
  }

  private static Finding hand(String where, StudThread thread, double tolerance) {
    double step = thread.limits().thread().travelPerRadian() * ThreadDuty.HAND_RESOLUTION;
    Statement said =
        Statement.of(
            Said.HAND_STEP, where, amount(Measure.LENGTH, step), amount(Measure.LENGTH, tolerance));
    return judged(where, step, tolerance, said, Said.FINER_PITCH);
  }

  private static Finding judged(
      String where, double value, double tolerance, Statement said, Said cure) {
    Judged judged = Judged.by(value, tolerance, Sense.AT_MOST, LimitBasis.COMMON_PRACTICE);
    return new Finding(
        CheckKind.HEIGHT_SETTING,
        judged,
        Subject.support(where),
        value,
        tolerance,
        Sense.AT_MOST,
        LimitBasis.COMMON_PRACTICE,
        Measure.LENGTH,
        said,
        judged == Judged.HOLDS ? Statement.NOTHING : Statement.of(cure));
  }
}
