package reseat.making;

import java.util.Optional;
import reseat.ballmount.LockNut;
import reseat.ballmount.ScrewThread;
import reseat.design.StudThread;
import reseat.space.Vec3;

/**
 * How one ball is set to height by the screw it stands on, alone.
 *
 * <p>A rise is how far the ball comes out of its half, toward the seat, along its stud. Turns are
 * seen from the foot of the stud, where a screw has its socket: clockwise drives a right-hand screw
 * and its ball out.
 *
 * @param support name of the support
 * @param thread the thread it is set by
 * @param lockNut the nut that locks it, with the force of the seat on the screw; empty without one
 * @param toolPointPerRise displacement of the tool point along the machine axes over the rise of
 *     this ball; to first order
 */
public record HeightSetting(
    String support, StudThread thread, Optional<LockNut> lockNut, Vec3 toolPointPerRise) {

  /**
   * How far to turn.
   *
   * @param clockwise whether clockwise, seen from the foot of the stud
   * @param degrees how far, degrees, not negative
   * @param clockMinutes how far in sixtieths of a turn, not negative
   */
  public record Turn(boolean clockwise, double degrees, double clockMinutes) {}

  /**
   * Returns the turn for a rise.
   *
   * @param rise how far the ball is to come out, m; negative is in
   * @return the turn
   */
  public Turn turnFor(double rise) {
    ScrewThread t = thread.limits().thread();
    double turns = rise / t.pitch() * t.hand().advanceClockwise();
    return new Turn(turns >= 0, 360 * Math.abs(turns), 60 * Math.abs(turns));
  }

  /**
   * Returns the travel of a turn.
   *
   * @return m/degree, positive
   */
  public double travelPerDegree() {
    return thread.limits().thread().travelPerDegree();
  }

  /**
   * Returns how far short of the wanted height to set the ball before locking.
   *
   * @return expected rise on locking, m; zero without a lock nut
   */
  public double shortOfHeight() {
    return lockNut.map(LockNut::shiftExpected).orElse(0.0);
  }
}
