package reseat.design;

import java.util.List;
import java.util.Objects;
import reseat.material.Material;
import reseat.numerics.Bounds;
import reseat.seat.Ball;
import reseat.seat.ConeSeat;
import reseat.seat.FlatSeat;
import reseat.seat.GrooveExtent;
import reseat.seat.Seat;
import reseat.seat.SeatFrame;
import reseat.seat.VeeGroove;
import reseat.space.Vec3;
import reseat.units.PrintedNumber;

/**
 * Three equal balls on a circle about the origin, in the coupling plane, a third of a turn apart:
 * the layouts that most couplings have, for designs built in code.
 *
 * <p>As the design file lays them out: balls counter-clockwise seen from the holder, names {@code
 * ball 1} to {@code ball 3}, or {@code cone}, {@code vee} and {@code flat}. Balls stand rigidly,
 * seats are hard right through and reach as far as they are touched; the supports that come out can
 * be changed one by one.
 *
 * @param circleDiameter diameter of the circle through the ball centres, m
 * @param firstAt direction of the first ball from x toward y, rad
 * @param ballDiameter diameter of the balls, m
 * @param ballMaterial material of the balls
 * @param flankAngle angle between a flank and the coupling plane, rad; for a cone half of what its
 *     included angle leaves of half a turn
 * @param seatMaterial material of the seats
 */
public record ClassicLayout(
    double circleDiameter,
    double firstAt,
    double ballDiameter,
    Material ballMaterial,
    double flankAngle,
    Material seatMaterial) {

  private static final double HALF_RIGHT = Math.PI / 4;

  /** Refuses sizes that are not positive and a missing material. */
  public ClassicLayout {
    Objects.requireNonNull(
        ballMaterial, "ball material of a classic layout must be given, found null");
    Objects.requireNonNull(
        seatMaterial, "seat material of a classic layout must be given, found null");
    Bounds.positive("diameter of the ball circle", circleDiameter, "m");
    Bounds.positive("ball diameter", ballDiameter, "m");
    if (!Double.isFinite(firstAt)) {
      throw new IllegalArgumentException(
          "direction of the first ball is " + PrintedNumber.shortest(firstAt) + " rad");
    }
  }

  /**
   * Starts a layout: seats of the material of the balls, flanks at 45 degrees, first ball on x.
   *
   * @param circleDiameter diameter of the circle through the ball centres, m
   * @param ballDiameter diameter of the balls, m
   * @param material material of balls and seats
   * @return the layout
   */
  public static ClassicLayout onCircle(
      double circleDiameter, double ballDiameter, Material material) {
    return new ClassicLayout(circleDiameter, 0, ballDiameter, material, HALF_RIGHT, material);
  }

  /**
   * Turns the layout.
   *
   * @param azimuth direction of the first ball from x toward y, rad
   * @return the changed copy
   */
  public ClassicLayout firstAt(double azimuth) {
    return new ClassicLayout(
        circleDiameter, azimuth, ballDiameter, ballMaterial, flankAngle, seatMaterial);
  }

  /**
   * Makes the seats of another material.
   *
   * @param material material of the seats
   * @return the changed copy
   */
  public ClassicLayout seatsOf(Material material) {
    return new ClassicLayout(
        circleDiameter, firstAt, ballDiameter, ballMaterial, flankAngle, material);
  }

  /**
   * Leans the flanks otherwise.
   *
   * @param angle angle between a flank and the coupling plane, rad
   * @return the changed copy
   */
  public ClassicLayout flanksAt(double angle) {
    return new ClassicLayout(
        circleDiameter, firstAt, ballDiameter, ballMaterial, angle, seatMaterial);
  }

  /**
   * Lays three vees, each along the line from the middle of the circle to its ball.
   *
   * @return three supports, six contacts
   * @throws IllegalArgumentException if no ball rests on flanks at that angle
   */
  public List<Support> threeVees() {
    return List.of(
        support("ball 1", 0, vee(0, centre(0))),
        support("ball 2", 1, vee(1, centre(1))),
        support("ball 3", 2, vee(2, centre(2))));
  }

  /**
   * Lays a cone under the first ball, a vee that points at it under the second, and a flat under
   * the third: three, two and one motions held.
   *
   * @return three supports, six contacts with the cone's ring counted as three
   * @throws IllegalArgumentException if no ball rests on flanks at that angle
   */
  public List<Support> coneVeeFlat() {
    double radius = ballDiameter / 2;
    Seat cone =
        ConeSeat.forBall(frame(0, centre(0)), radius, flankAngle, Double.POSITIVE_INFINITY, 0);
    Seat flat = FlatSeat.forBall(frame(2, centre(2)), radius, Double.POSITIVE_INFINITY);
    return List.of(
        support("cone", 0, cone),
        support("vee", 1, vee(1, centre(0).minus(centre(1)))),
        support("flat", 2, flat));
  }

  private Vec3 centre(int ball) {
    return Vec3.atAzimuth(firstAt + 2 * Math.PI * ball / 3).times(circleDiameter / 2);
  }

  private SeatFrame frame(int ball, Vec3 along) {
    return new SeatFrame(centre(ball), along, Vec3.Z);
  }

  private Seat vee(int ball, Vec3 along) {
    return VeeGroove.forBall(
        frame(ball, along), ballDiameter / 2, flankAngle, GrooveExtent.unlimited());
  }

  private Support support(String name, int ball, Seat seat) {
    return Support.of(
        name, new Ball(centre(ball), ballDiameter / 2), ballMaterial, seat, seatMaterial);
  }
}
