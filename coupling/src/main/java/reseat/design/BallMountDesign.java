package reseat.design;

import java.util.Objects;
import java.util.Optional;
import reseat.ballmount.BondJoint;
import reseat.ballmount.ScrewThread;
import reseat.material.Material;
import reseat.numerics.Bounds;
import reseat.units.PrintedNumber;

/**
 * One ball mount by itself: the ball, what it stands on, what it turns in, how it is set, and what
 * it must bear.
 *
 * @param title what the user calls it
 * @param ballRadius radius of the ball, m
 * @param ballMaterial material of the ball
 * @param mount the stud with bond and thread
 * @param sustained load on the ball that stays
 * @param peak whole load on the ball when it is greatest; equal to the one that stays if nothing is
 *     added
 * @param otherThread a second thread to compare with; empty if there is no question
 * @param pivot the seat the ball turns in; empty if it is not looked at
 * @param adjustment three screws to be set by indicators; empty if there are none
 * @param targets what is wanted
 */
public record BallMountDesign(
    String title,
    double ballRadius,
    Material ballMaterial,
    StudMount mount,
    BondJoint.Load sustained,
    BondJoint.Load peak,
    Optional<ScrewThread> otherThread,
    Optional<PivotDuty> pivot,
    Optional<AdjustmentTask> adjustment,
    Targets targets) {

  /**
   * What is wanted of the mount.
   *
   * @param height height of the ball after locking, either way, m; infinite if not stated
   * @param tilt tilt a pad may keep, rad; infinite if not stated
   */
  public record Targets(double height, double tilt) {

    /** Refuses targets that are not above zero. */
    public Targets {
      if (!(height > 0) || !(tilt > 0)) {
        throw new IllegalArgumentException(
            "targets of a ball mount must be above zero, found "
                + PrintedNumber.shortest(height)
                + " m and "
                + PrintedNumber.shortest(tilt));
      }
    }
  }

  /** Checks that pivot and ball fit and that a comparison has something to compare with. */
  public BallMountDesign {
    Objects.requireNonNull(title, "title of a ball mount design must be given, found null");
    Objects.requireNonNull(
        ballMaterial, "ball material of a ball mount design must be given, found null");
    Objects.requireNonNull(mount, "mount of a ball mount design must be given, found null");
    Objects.requireNonNull(sustained, "sustained of a ball mount design must be given, found null");
    Objects.requireNonNull(peak, "peak of a ball mount design must be given, found null");
    Objects.requireNonNull(
        otherThread, "other thread of a ball mount design must be given, found null");
    Objects.requireNonNull(pivot, "pivot of a ball mount design must be given, found null");
    Objects.requireNonNull(
        adjustment, "adjustment of a ball mount design must be given, found null");
    Objects.requireNonNull(targets, "targets of a ball mount design must be given, found null");
    Bounds.positive("ball radius", ballRadius, "m");
    double radius = ballRadius;
    if (pivot.isPresent() && pivot.get().seat().ballRadius() != radius) {
      throw new IllegalArgumentException("the pivot seat is made for another ball");
    }
    if (otherThread.isPresent() && mount.thread().isEmpty()) {
      throw new IllegalArgumentException("a thread to compare with needs a thread of the stud");
    }
    if (pivot.isPresent() && !(sustained.pull() < 0)) {
      throw new IllegalArgumentException(
          "a seat to pivot in needs a load that presses the ball onto its stud");
    }
  }

  /**
   * Returns the force that presses the stud into its body, and the seat onto the ball.
   *
   * @return N; negative if it pulls
   */
  public double press() {
    return -sustained.pull();
  }
}
