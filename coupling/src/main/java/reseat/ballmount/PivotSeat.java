package reseat.ballmount;

import java.util.Optional;
import reseat.contact.EllipticContact;
import reseat.elementary.Elementary;
import reseat.space.Matrix6;
import reseat.space.Vec3;
import reseat.units.FilledText;

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
          FilledText.of(
              "%s puts the flanks at %.4g deg to the plane of the seat: it must be between 3 and 85"
                  + " deg",
              words, Elementary.toDegrees(angle)));
    }
    return angle;
  }

  /**
   * Puts together the stiffness of a seat that is alike in all directions across its axis.
   *
   * @param lateral force over displacement across the axis, N/m
   * @param axial force over displacement along it, N/m
   * @param tilt moment over turn about a line across the axis through the ball centre, N m/rad
   * @param twist moment over turn about the axis, N m/rad
   * @param coupled size of the force across the axis for a tilt, N/rad
   * @return 6x6 stiffness at the ball centre, z along the axis out of the seat
   */
  static Matrix6 stiffness(
      double lateral, double axial, double tilt, double twist, double coupled) {
    double[] k = new double[36];
    k[0] = lateral;
    k[7] = lateral;
    k[14] = axial;
    k[21] = tilt;
    k[28] = tilt;
    k[35] = twist;
    k[4] = -coupled;
    k[24] = -coupled;
    k[9] = coupled;
    k[19] = coupled;
    return Matrix6.of(k, Vec3.ZERO);
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
   * Returns the greatest pressure between ball and seat with a force across the axis as well, in
   * the worst direction and without friction; a flat, which bears nothing sideways, leaves that to
   * friction. Of a seat that opens it is that of the contact pressed most, as if none had opened.
   *
   * @param force force into the seat, N
   * @param across force across the axis, N, 0 or more
   * @return Pa
   */
  double peakPressure(double force, double across);

  /**
   * Returns the force across the axis, in the worst direction and without friction, at which a part
   * of the contact opens.
   *
   * @param force force into the seat, N
   * @return N; infinite on a flat, which bears nothing sideways
   */
  double openingForce(double force);

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
