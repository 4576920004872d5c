package reseat.ballmount;

import java.util.Objects;
import reseat.elementary.Elementary;
import reseat.numerics.Bounds;

/**
 * Torque to raise an axial force with a screw or a nut, three parts kept apart:
 *
 * <pre>
 *   T = F [ P/(2 pi) + (1/cos 30°)(mu_t d2/2) + mu_h Dm/2 ]
 * </pre>
 *
 * <p>the lift, the flank friction ({@code 0.577 mu_t d2}) and the friction under head or nut. The
 * common short form of VDI 2230, recalled from memory; it leaves out the product of friction and
 * lead, below 1 % for the friction of any real screw.
 *
 * @param thread the thread
 * @param threadFriction coefficient of friction of the flanks
 * @param bearingFriction coefficient of friction under head or nut; zero for a free screw end
 * @param bearingDiameter mean diameter of the face under head or nut, m; zero for a free screw end
 */
public record ThreadTorque(
    ScrewThread thread, double threadFriction, double bearingFriction, double bearingDiameter) {

  /** Checks that nothing is negative. */
  public ThreadTorque {
    Objects.requireNonNull(thread, "thread of a thread torque must be given, found null");
    Bounds.notNegative("thread friction", threadFriction, "");
    Bounds.notNegative("friction under the head", bearingFriction, "");
    Bounds.notNegative("mean diameter under the head", bearingDiameter, "m");
  }

  /**
   * Torque for each newton of axial force.
   *
   * @return torque over force, m
   */
  public double perForce() {
    return thread.travelPerRadian()
        + threadFriction
            * thread.pitchDiameter()
            / (2 * Elementary.cos(ScrewThread.HALF_FLANK_ANGLE))
        + bearingFriction * bearingDiameter / 2;
  }

  /**
   * Torque that raises an axial force.
   *
   * @param axialForce force, N
   * @return torque, N m
   */
  public double tightening(double axialForce) {
    return perForce() * axialForce;
  }

  /**
   * Axial force raised by a torque.
   *
   * @param torque torque, N m
   * @return force, N
   */
  public double force(double torque) {
    return torque / perForce();
  }

  /**
   * The nut factor K of {@code T = K d F} this friction amounts to.
   *
   * @return nut factor
   */
  public double nutFactor() {
    return perForce() / thread.diameter();
  }
}
