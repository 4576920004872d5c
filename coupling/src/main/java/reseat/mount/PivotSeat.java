package reseat.mount;

import java.util.Locale;
import java.util.Optional;
import reseat.contact.EllipticContact;
import reseat.space.Matrix6;

/**
 * What a ball turns in when a part gimbals on it, under a force that presses the ball into the
 * seat.
 *
 * <p>Axes of every matrix: z along the seat's axis out of the seat, reference point at the ball
 * centre. Force in N, positive into the seat.
 */
public sealed interface PivotSeat permits TrihedralPivot, ConePivot, SocketPivot, FlatPivot {

  /**
   * Refuses an angle at which a ball would wedge or lie on the seat's rim.
   *
   * @param words name of the angle
   * @param angle angle of the contact normals from the seat's axis, rad
   * @return the angle
   */
  static double checkedFlank(String words, double angle) {
    if (!(angle > 0.05 && angle < 1.5)) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "%s puts the flanks at %.4g deg to the plane of the seat: it must be between 3 and 85"
                  + " deg",
              words,
              Math.toDegrees(angle)));
    }
    return angle;
  }

  /**
   * Returns the radius of the ball.
   *
   * @return radius, m
   */
  double ballRadius();

  /**
   * Returns the force with which each contact presses on the ball.
   *
   * @param force force into the seat, N
   * @return N per contact point; over a ring or a land, all its normal force added up as numbers
   */
  double contactForce(double force);

  /**
   * Returns the greatest pressure between ball and seat.
   *
   * @param force force into the seat, N
   * @return Pa
   */
  double peakPressure(double force);

  /**
   * Returns the contact at one point.
   *
   * @return the contact; empty where the ball touches along a ring or over a land
   */
  Optional<EllipticContact> point();

  /**
   * Returns the stiffness while the ball slides freely in its seat.
   *
   * @param force force into the seat, above zero, N
   * @return 6x6 stiffness; empty for a closely fitting socket, which is no spring of known rate
   */
  Optional<Matrix6> slidingStiffness(double force);

  /**
   * Returns the stiffness while the contacts stick, so that small turns are held elastically.
   *
   * @param force force into the seat, above zero, N
   * @return 6x6 stiffness; empty where it is not modelled
   */
  Optional<Matrix6> stickingStiffness(double force);

  /**
   * Returns the friction against turning.
   *
   * @param force force into the seat, N
   * @param friction coefficient of friction
   * @return moments about any axis
   */
  GimbalFriction friction(double force, double friction);

  /**
   * Says whether more contact is made than three points need.
   *
   * @return true for a ring and for a land
   */
  boolean overDetermined();

  /**
   * Says whether the seat holds the ball sideways.
   *
   * @return false on a flat
   */
  boolean locates();

  /**
   * Returns what the seat is, for people.
   *
   * @return a noun with its article, for instance {@code a trihedral seat}
   */
  String words();
}
