package reseat.design;

import java.util.Objects;
import reseat.material.Material;
import reseat.material.MaterialProperty;
import reseat.seat.Ball;
import reseat.seat.Seat;
import reseat.seat.SeatFrame;
import reseat.space.Vec3;
import reseat.units.PrintedNumber;

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
    Objects.requireNonNull(name, "name of a support must be given, found null");
    Objects.requireNonNull(ball, "ball of a support must be given, found null");
    Objects.requireNonNull(ballMaterial, "ball material of a support must be given, found null");
    Objects.requireNonNull(seat, "seat of a support must be given, found null");
    Objects.requireNonNull(seatMaterial, "seat material of a support must be given, found null");
    Objects.requireNonNull(mounting, "mounting of a support must be given, found null");
    if (name.isBlank()) {
      throw new IllegalArgumentException("a support needs a name");
    }
    if (!(caseDepth > 0)) {
      throw new IllegalArgumentException(
          "case depth must be positive, found " + PrintedNumber.shortest(caseDepth) + " m");
    }
  }

  /**
   * A ball that stands rigidly, in a seat that is hard right through.
   *
   * @param name what the user calls it
   * @param ball the ball, in the axes of the half that carries the balls
   * @param ballMaterial material of the ball
   * @param seat the seat, in the axes of the half that carries the seats
   * @param seatMaterial material of the seat's surface
   * @return the support; {@link #withMounting} and {@link #withCaseDepth} change it
   */
  public static Support of(
      String name, Ball ball, Material ballMaterial, Seat seat, Material seatMaterial) {
    return new Support(
        name,
        ball,
        ballMaterial,
        seat,
        seatMaterial,
        Double.POSITIVE_INFINITY,
        BallMounting.rigid());
  }

  /**
   * Returns the support with another hard layer of the seat.
   *
   * @param newDepth depth of the layer, m; infinite if hard right through
   * @return the changed copy
   */
  public Support withCaseDepth(double newDepth) {
    return new Support(name, ball, ballMaterial, seat, seatMaterial, newDepth, mounting);
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
