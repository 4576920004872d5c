package reseat.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.design.CouplingDesign;
import reseat.design.Support;
import reseat.elementary.Elementary;
import reseat.seat.Ball;
import reseat.seat.ConeSeat;
import reseat.seat.CylinderPair;
import reseat.seat.FlatSeat;
import reseat.seat.GothicGroove;
import reseat.seat.Seat;
import reseat.seat.SeatFrame;
import reseat.seat.TrihedralSeat;
import reseat.seat.VeeGroove;
import reseat.space.Vec3;

/**
 * The same coupling with balls of another size, each seat cut anew for its ball.
 *
 * <p>Ball centres, flank angles and everything else stay. Pins keep their diameter and are spaced
 * for the same contact angle; gothic flanks keep their ratio to the ball; extents of the worked
 * surfaces stay as they are, so that a ball too big for its groove shows.
 */
final class ResizedBalls {

  private ResizedBalls() {}

  /**
   * Makes the changed design.
   *
   * @param design the design; all seats made for their balls
   * @param radius radius of the new balls, m
   * @return the changed copy; empty if a seat cannot be made for such a ball
   */
  static Optional<CouplingDesign> of(CouplingDesign design, double radius) {
    try {
      return Optional.of(resized(design, radius));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private static CouplingDesign resized(CouplingDesign design, double radius) {
    List<Support> supports = new ArrayList<>();
    for (Support s : design.supports()) {
      Vec3 centre = s.ball().centre();
      supports.add(s.withBall(new Ball(centre, radius)).withSeat(seat(s.seat(), s.ball(), radius)));
    }
    return design.toBuilder().supports(supports).build();
  }

  private static Seat seat(Seat old, Ball ball, double radius) {
    SeatFrame at = old.frame().at(ball.centre());
    double ratio = radius / ball.radius();
    return old.accept(
        new Seat.Visitor<Seat>() {
          @Override
          public Seat veeGroove(VeeGroove s) {
            double angle = (s.leftAngle() + s.rightAngle()) / 2;
            return VeeGroove.forBall(at, radius, angle, s.extent());
          }

          @Override
          public Seat gothicGroove(GothicGroove s) {
            double angle = Elementary.atan2(s.axisOffset(), s.axisHeight());
            double flank = ratio * (s.leftRadius() + s.rightRadius()) / 2;
            return GothicGroove.forBall(at, radius, flank, angle, s.extent());
          }

          @Override
          public Seat cylinderPair(CylinderPair s) {
            double pin = (s.leftRadius() + s.rightRadius()) / 2;
            double spacing = 2 * (radius + pin) * Elementary.sin(s.contactAngle(ball.radius()));
            return CylinderPair.forBall(at, radius, pin, spacing, s.length(), s.floorDepth());
          }

          @Override
          public Seat trihedralSeat(TrihedralSeat s) {
            double angle = (s.firstAngle() + s.secondAngle() + s.thirdAngle()) / 3;
            return TrihedralSeat.forBall(at, radius, angle, s.mouthDiameter(), s.rootDiameter());
          }

          @Override
          public Seat coneSeat(ConeSeat s) {
            return ConeSeat.forBall(at, radius, s.angle(), s.mouthDiameter(), s.rootDiameter());
          }

          @Override
          public Seat flatSeat(FlatSeat s) {
            return FlatSeat.forBall(at, radius, s.padDiameter());
          }
        });
  }
}
