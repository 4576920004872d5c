package reseat.ballmount;

import java.util.List;
import java.util.Objects;
import reseat.numerics.Bounds;
import reseat.units.PrintedNumber;

/**
 * What a lock nut does to a setting: run down against the face of the body, it pulls the screw out
 * of the body until the opposite flanks bear.
 *
 * <p>A screw pressed into the body by the seat rests on one flank; the lock nut moves it to the
 * other, by the axial play of the thread (play in pitch diameter times tan 30°). The nut also
 * stretches the screw between the two threads. Shifts are positive out of the body, toward the side
 * on which the nut sits.
 *
 * @param limits thread with its limit diameters
 * @param torque friction of the thread and under the nut
 * @param clampForce force the tightened nut puts into the screw, N
 * @param pushForce force with which the seat presses the screw into the body, N; negative if it
 *     pulls
 * @param clampLength length of screw stretched between nut and body thread, m
 * @param youngModulus of the screw, Pa
 */
public record LockNut(
    ThreadTolerance limits,
    ThreadTorque torque,
    double clampForce,
    double pushForce,
    double clampLength,
    double youngModulus) {

  /** The steps of setting a locked screw, in order. */
  public enum Step {
    /** Set short of the target by the expected shift. */
    SET,
    /** Lock, holding the screw so that it does not turn with the nut. */
    LOCK,
    /** Read the height again with the nut tight. */
    READ,
    /** Loosen, correct by the error read, lock again in the same way. */
    CORRECT
  }

  /** Checks forces and lengths. */
  public LockNut {
    Objects.requireNonNull(limits, "limits of a lock nut must be given, found null");
    Objects.requireNonNull(torque, "torque of a lock nut must be given, found null");
    Bounds.positive("force of the lock nut", clampForce, "N");
    Bounds.notNegative("length of screw under the lock nut", clampLength, "m");
    Bounds.positive("Young's modulus of the screw", youngModulus, "Pa");
    if (!Double.isFinite(pushForce)) {
      throw new IllegalArgumentException(
          "force of the seat on the screw is "
              + PrintedNumber.shortest(pushForce)
              + " N: it must be finite");
    }
  }

  /**
   * The same nut with another force of the seat on the screw.
   *
   * @param force force with which the seat presses the screw into the body, N; negative if it pulls
   * @return the nut
   */
  public LockNut withPush(double force) {
    return new LockNut(limits, torque, clampForce, force, clampLength, youngModulus);
  }

  /**
   * Whether the nut holds the screw on the flank it was pulled to: its force exceeds the push of
   * the seat. If not, the play is still there and the lock gives no fixed height.
   *
   * @return true if the play is taken out
   */
  public boolean takesUpPlay() {
    return clampForce > pushForce;
  }

  /**
   * Smallest shift out of the body on locking.
   *
   * @return shift, m
   */
  public double shiftMin() {
    return pushForce > 0 && takesUpPlay() ? stretch() + limits.axialPlayMin() : stretch();
  }

  /**
   * Largest shift out of the body on locking. Without a force that presses the screw into the body
   * nothing says on which flank it rests, so the whole play counts; a pull leaves none.
   *
   * @return shift, m
   */
  public double shiftMax() {
    return pushForce >= 0 && takesUpPlay() ? stretch() + limits.axialPlayMax() : stretch();
  }

  /**
   * Shift to allow for when setting: the middle of the range.
   *
   * @return shift, m
   */
  public double shiftExpected() {
    return (shiftMin() + shiftMax()) / 2;
  }

  /**
   * What the first locking leaves open: half the range of the shift. Once read, the shift of this
   * screw is known and repeats.
   *
   * @return half range, m
   */
  public double shiftUncertainty() {
    return (shiftMax() - shiftMin()) / 2;
  }

  /**
   * Elastic part of the shift: the stretch of the screw under the nut.
   *
   * @return stretch, m
   */
  public double stretch() {
    return clampForce * clampLength / (youngModulus * limits.thread().stressArea());
  }

  /**
   * Torque on the nut for the clamping force.
   *
   * @return torque, N m
   */
  public double tighteningTorque() {
    return torque.tightening(clampForce);
  }

  /**
   * What the screw moves if it is dragged round with the nut while locking.
   *
   * @param turn turn with the nut, rad
   * @return axial movement, m
   */
  public double movementIfTurned(double turn) {
    return turn * limits.thread().travelPerRadian();
  }

  /**
   * The steps at the bench, in order.
   *
   * @return set, lock, read, correct
   */
  public static List<Step> procedure() {
    return List.of(Step.values());
  }
}
