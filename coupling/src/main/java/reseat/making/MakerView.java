package reseat.making;

import reseat.design.Half;
import reseat.design.Support;
import reseat.elementary.Elementary;
import reseat.seat.Ball;
import reseat.seat.Seat;
import reseat.seat.SeatFrame;
import reseat.space.Vec3;

/**
 * How the maker of one half sees it: looking onto the face that is worked, x to the right, y up, z
 * out of the face toward the maker.
 *
 * <p>The worked face of the fixed half looks toward the holder, so its maker looks against z and
 * works in the coupling frame itself. The moving half is turned over about x for working: its maker
 * keeps x and has y and z reversed. Its plan is therefore the mirror image of the coupling's plan,
 * while the three axes that the maker works in are right-handed again.
 *
 * @param half the half that is made
 */
public record MakerView(Half half) {

  /**
   * Says whether the maker's plan is the mirror image of the coupling's plan.
   *
   * @return true for the moving half
   */
  public boolean mirrored() {
    return half == Half.HOLDER;
  }

  /**
   * Returns the direction that lies to the maker's right.
   *
   * @return unit vector in the coupling frame
   */
  public Vec3 right() {
    return Vec3.X;
  }

  /**
   * Returns the direction that points up on the maker's plan.
   *
   * @return unit vector in the coupling frame
   */
  public Vec3 up() {
    return mirrored() ? Vec3.Y.negated() : Vec3.Y;
  }

  /**
   * Returns the direction out of the worked face.
   *
   * @return unit vector in the coupling frame, toward the maker
   */
  public Vec3 outOfFace() {
    return right().cross(up());
  }

  /**
   * Tells a point or a direction in the maker's axes, or from the maker's axes in the coupling
   * frame: turning over twice changes nothing.
   *
   * @param v point or direction, m or without unit
   * @return the same in the other axes
   */
  public Vec3 turnedOver(Vec3 v) {
    return new Vec3(v.dot(right()), v.dot(up()), v.dot(outOfFace()));
  }

  /**
   * Tells the axes of a seat in the maker's axes.
   *
   * @param frame axes of the seat in the coupling frame, m
   * @return the same axes as the maker sees them
   */
  public SeatFrame turnedOver(SeatFrame frame) {
    return new SeatFrame(
        turnedOver(frame.origin()), turnedOver(frame.axis()), turnedOver(frame.up()));
  }

  /**
   * Tells a support in the maker's axes.
   *
   * @param support a ball and its seat in the coupling frame
   * @return the same with the ball's centre and the seat as the maker sees them
   */
  public Support turnedOver(Support support) {
    Ball seen = new Ball(turnedOver(support.ball().centre()), support.ball().radius());
    Seat seat = support.seat();
    return support.withBall(seen).withSeat(seat.withFrame(turnedOver(seat.frame())));
  }

  /**
   * Returns the direction of a line on the maker's plan.
   *
   * @param direction direction in the coupling frame, not along z
   * @return angle from the maker's x toward the maker's y, rad, from 0 to below a whole turn
   */
  public double azimuth(Vec3 direction) {
    Vec3 seen = turnedOver(direction);
    double angle = Elementary.atan2(seen.y(), seen.x());
    double positive = angle < 0 ? angle + 2 * Math.PI : angle;
    // what is a whole turn but for the last bits is no turn
    return 2 * Math.PI - positive < 1e-9 ? 0 : positive;
  }

  /**
   * Says in words what the maker sees.
   *
   * @return one sentence without its stop
   */
  public String words() {
    return mirrored()
        ? "view onto the worked face, along z of the coupling: mirror image of the coupling's plan,"
            + " x kept, y and z reversed"
        : "view onto the worked face, against z of the coupling: x, y and z are those of the"
            + " coupling";
  }
}
