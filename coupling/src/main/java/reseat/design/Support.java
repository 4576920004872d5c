package reseat.design;

import reseat.material.Material;
import reseat.material.MaterialProperty;
import reseat.seat.Ball;
import reseat.seat.Seat;
import reseat.seat.SeatFrame;
import reseat.space.Vec3;

/**
 * One ball in one seat.
 *
 * @param name what the user calls it, for instance {@code front}
 * @param ball the ball, in the axes of the half that carries the balls
 * @param ballMaterial material of the ball
 * @param seat the seat, in the axes of the half that carries the seats
 * @param seatMaterial material of the seat's surface
 * @param caseDepth depth of the hard layer of the seat, m; infinite if hard right through
 * @param mounting how the ball gives way against the half that carries it
 */
public record Support(
    String name,
    Ball ball,
    Material ballMaterial,
    Seat seat,
    Material seatMaterial,
    double caseDepth,
    BallMounting mounting) {

  /** Refuses a nameless support and a case without depth. */
  public Support {
    if (name.isBlank()) {
      throw new IllegalArgumentException("a support needs a name");
    }
    if (!(caseDepth > 0)) {
      throw new IllegalArgumentException("case depth must be positive, found " + caseDepth + " m");
    }
  }

  /**
   * Returns how the ball grows.
   *
   * @param carrier thermal expansion of the half that carries the ball, 1/K
   * @return expansion of the ball's own material, where that is unknown that of the half, 1/K
   */
  public double ballExpansion(double carrier) {
    return ballMaterial.nominal(MaterialProperty.EXPANSION).orElse(carrier);
  }

  /**
   * Returns how a pin of the seat grows across.
   *
   * @param carrier thermal expansion of the half that carries the seat, 1/K
   * @return expansion of the seat's own material, where that is unknown that of the half, 1/K
   */
  public double pinExpansion(double carrier) {
    return seatMaterial.nominal(MaterialProperty.EXPANSION).orElse(carrier);
  }

  /**
   * Returns the support with another ball.
   *
   * @param newBall the ball
   * @return the changed copy
   */
  public Support withBall(Ball newBall) {
    return new Support(name, newBall, ballMaterial, seat, seatMaterial, caseDepth, mounting);
  }

  /**
   * Returns the support with another seat.
   *
   * @param newSeat the seat
   * @return the changed copy
   */
  public Support withSeat(Seat newSeat) {
    return new Support(name, ball, ballMaterial, newSeat, seatMaterial, caseDepth, mounting);
  }

  /**
   * Returns the support with another mounting of the ball.
   *
   * @param newMounting the mounting
   * @return the changed copy
   */
  public Support withMounting(BallMounting newMounting) {
    return new Support(name, ball, ballMaterial, seat, seatMaterial, caseDepth, newMounting);
  }

  /**
   * Returns the support with its seat turned about the line through the ball's centre along the
   * direction the seat opens to, so that a groove runs another way.
   *
   * @param axis new direction of the groove, m; only its part across the opening direction counts
   * @return the changed copy; the ball touches the turned seat where it touched it before
   */
  public Support withGrooveAlong(Vec3 axis) {
    SeatFrame f = seat.frame();
    SeatFrame turned = new SeatFrame(f.origin(), axis, f.up());
    Vec3 centre = ball.centre();
    double along = f.along(centre);
    double left = f.toLeft(centre);
    Vec3 under = f.point(along, left, 0);
    Vec3 origin = under.minus(turned.axis().times(along)).minus(turned.left().times(left));
    return withSeat(seat.withFrame(turned.at(origin)));
  }
}
