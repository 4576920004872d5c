package reseat.seat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import reseat.seat.SeatClearance.Feature;
import reseat.space.Vec3;

class ConeSeatTest extends SeatContract {

  private static final double ANGLE = Math.toRadians(45);

  @Override
  Seat seatAt(SeatFrame atBallCentre) {
    return ConeSeat.forBall(atBallCentre, BALL, ANGLE, 0.011, 0.003);
  }

  @Override
  int contacts() {
    return 3;
  }

  @Test
  void everyPlaceOfTheRingTouchesWhateverWayTheThirdsAreTurned() {
    ConeSeat cone = (ConeSeat) seatAt(SeatFrame.level(new Vec3(0.01, 0.02, 0), 0.4));
    Vec3 centre = new Vec3(0.01, 0.02, 0);
    for (int k = 0; k < 24; k++) {
      for (Flank f : cone.withThirdsTurned(0.1 * k).flanks()) {
        assertThat(f.gap(centre, BALL)).isCloseTo(0, within(1e-16));
        Vec3 touch = f.contactPoint(centre, BALL).minus(centre);
        assertThat(touch.z()).isCloseTo(-BALL * Math.cos(ANGLE), within(1e-16));
      }
    }
  }

  @Test
  void theTangentPlanesTellTheGapOfTheConeToFirstOrder() {
    // gap of a ball to a cone at azimuth t, ball centre off by (x, y, z): exactly the distance from
    // the centre to the generator's tangent plane where the offset is small against the ring
    ConeSeat cone = (ConeSeat) seatAt(SeatFrame.level(Vec3.ZERO, 0));
    Vec3 apex = cone.frame().origin();
    Vec3 off = new Vec3(3e-6, -2e-6, 1e-6);
    double least = Double.POSITIVE_INFINITY;
    for (int k = 0; k < 3600; k++) {
      Flank f = cone.withThirdsTurned(2 * Math.PI / 3 * k / 3600).flanks().get(k % 3);
      least = Math.min(least, f.gap(off, BALL));
    }
    // distance from the centre to the cone itself, along its meridian toward the offset
    double radial = Math.hypot(off.x(), off.y());
    double height = off.z() - apex.z();
    double nearest = height * Math.cos(ANGLE) - radial * Math.sin(ANGLE) - BALL;
    assertThat(least).isCloseTo(nearest, within(1e-11));
  }

  @Test
  void clearancesRunUpTheFlankAlikeOnAllThirds() {
    Seat seat = seatAt(SeatFrame.level(Vec3.ZERO, 0.3));
    Ball ball = new Ball(Vec3.ZERO, BALL);
    double touch = BALL * Math.sin(ANGLE);
    for (String third : ConeSeat.THIRDS) {
      assertThat(clearance(seat, ball, Feature.MOUTH_EDGE, third))
          .isCloseTo((0.0055 - touch) / Math.cos(ANGLE), within(1e-12));
      assertThat(clearance(seat, ball, Feature.ROOT_EDGE, third))
          .isCloseTo((touch - 0.0015) / Math.cos(ANGLE), within(1e-12));
    }
    assertThat(clearance(seat, ball, Feature.FLOOR, ""))
        .isCloseTo(BALL / Math.cos(ANGLE) - BALL - 0.0015 * Math.tan(ANGLE), within(1e-12));
  }

  @Test
  void anAngleOnWhichNoBallRestsInARingIsRefused() {
    assertThatThrownBy(
            () ->
                ConeSeat.forBall(SeatFrame.level(Vec3.ZERO, 0), BALL, Math.toRadians(88), 0.011, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("included");
  }

  @Test
  void aReliefWiderThanTheMouthIsRefused() {
    assertThatThrownBy(
            () -> ConeSeat.forBall(SeatFrame.level(Vec3.ZERO, 0), BALL, ANGLE, 0.01, 0.011))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("narrower");
  }
}
