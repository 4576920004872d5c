package reseat.seat;

import java.util.List;
import reseat.space.Vec3;

/**
 * What one ball rests in.
 *
 * <p>To add a kind: a record here, its method in {@link Visitor}, then follow the compiler.
 */
public sealed interface Seat
    permits VeeGroove, GothicGroove, CylinderPair, TrihedralSeat, ConeSeat, FlatSeat {

  /**
   * Returns the axes of the seat.
   *
   * @return the frame, in the axes of the half that carries the seat
   */
  SeatFrame frame();

  /**
   * Returns the surfaces that touch the ball.
   *
   * @return one flank per contact, always in the same order
   */
  List<Flank> flanks();

  /**
   * Returns how many surfaces touch the ball, without making them.
   *
   * @return number of {@link #flanks()}
   */
  int contacts();

  /**
   * Returns the distances from contacts and ball to what they must not reach.
   *
   * <p>Features whose extent is not stated are left out.
   *
   * @param ball the ball where it rests, in the axes of the seat's half
   * @return clearances, possibly none
   */
  List<SeatClearance> clearances(Ball ball);

  /**
   * Returns the same seat somewhere else.
   *
   * @param newFrame its axes, m
   * @return the changed copy
   */
  Seat withFrame(SeatFrame newFrame);

  /**
   * Calls the visitor's method for this kind of seat.
   *
   * @param visitor the visitor
   * @param <T> what the visitor returns
   * @return its answer
   */
  <T> T accept(Visitor<T> visitor);

  /**
   * Says whether the ball can slide along the seat without resistance but friction.
   *
   * @return true for grooves and pin pairs
   */
  default boolean isGroove() {
    return contacts() == 2;
  }

  /**
   * Says whether the ball touches the seat along a ring, which the flanks tell in thirds.
   *
   * @return true for a cone
   */
  default boolean isRing() {
    return false;
  }

  /**
   * Returns how far the underside of the ball is above a point.
   *
   * @param ball the ball
   * @param point the point, m
   * @return height along the seat's opening direction, m
   */
  default double undersideAbove(Ball ball, Vec3 point) {
    return ball.centre().minus(point).dot(frame().up()) - ball.radius();
  }

  /**
   * One method per kind of seat, so that a new kind cannot be forgotten anywhere.
   *
   * @param <T> what the visitor returns
   */
  interface Visitor<T> {
    /**
     * Visits a groove with two plane flanks.
     *
     * @param seat the seat
     * @return the answer
     */
    T veeGroove(VeeGroove seat);

    /**
     * Visits a groove with two hollow cylindrical flanks.
     *
     * @param seat the seat
     * @return the answer
     */
    T gothicGroove(GothicGroove seat);

    /**
     * Visits a pair of cylindrical pins.
     *
     * @param seat the seat
     * @return the answer
     */
    T cylinderPair(CylinderPair seat);

    /**
     * Visits a seat with three plane flanks.
     *
     * @param seat the seat
     * @return the answer
     */
    T trihedralSeat(TrihedralSeat seat);

    /**
     * Visits a cone.
     *
     * @param seat the seat
     * @return the answer
     */
    T coneSeat(ConeSeat seat);

    /**
     * Visits a flat.
     *
     * @param seat the seat
     * @return the answer
     */
    T flatSeat(FlatSeat seat);
  }
}
