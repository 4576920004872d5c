package reseat.seat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import reseat.seat.SeatClearance.Feature;
import reseat.space.Vec3;

class VeeGrooveTest extends SeatContract {

  private static final double FORTY_FIVE = Math.toRadians(45);

  @Override
  Seat seatAt(SeatFrame atBallCentre) {
    return VeeGroove.forBall(
        atBallCentre, BALL, FORTY_FIVE, new GrooveExtent(0.01049, 0.019, 0.0015, 0.002));
  }

  @Override
  int contacts() {
    return 2;
  }

  @Test
  void aHalfInchBallInARightAngledVeeTouchesWhereTheDrawingSays() {
    // 12.7 mm ball, 90 deg included, mouth 10.49 mm: contacts R sqrt 2 = 8.98 mm apart and 1.07 mm
    // from the edge (an independent script's figures, and by hand: (10.49/2 - 4.490)/cos 45 deg)
    Seat seat = seatAt(SeatFrame.level(Vec3.ZERO, 0));
    Ball ball = new Ball(Vec3.ZERO, BALL);
    Vec3 left = seat.flanks().get(0).contactPoint(ball.centre(), BALL);
    Vec3 right = seat.flanks().get(1).contactPoint(ball.centre(), BALL);
    assertThat(left.distanceTo(right)).isCloseTo(8.98e-3, within(5e-6));
    assertThat(left.y()).as("looking along x, y is to the left").isPositive();
    assertThat(clearance(seat, ball, Feature.MOUTH_EDGE, "left")).isCloseTo(1.07e-3, within(5e-6));
    assertThat(clearance(seat, ball, Feature.END, "right")).isCloseTo(9.5e-3, within(1e-9));
    // relief 1.5 mm wide: (4.490 - 0.75) / cos 45 deg along the flank
    assertThat(clearance(seat, ball, Feature.ROOT_EDGE, "left"))
        .isCloseTo((BALL * Math.sqrt(0.5) - 0.75e-3) * Math.sqrt(2), within(1e-9));
    // underside R(sqrt 2 - 1) over the apex, flanks end 0.75 mm over it, relief 2 mm deeper
    assertThat(clearance(seat, ball, Feature.FLOOR, ""))
        .isCloseTo(BALL * (Math.sqrt(2) - 1) - 0.75e-3 + 2e-3, within(1e-9));
  }

  @Test
  void aBallTooLargeForTheMouthTouchesAboveTheEdge() {
    Seat seat = seatAt(SeatFrame.level(Vec3.ZERO, 0));
    double radius = 0.008;
    // rests R/cos 45 deg over the apex
    Ball ball = new Ball(new Vec3(0, 0, (radius - BALL) * Math.sqrt(2)), radius);
    assertThat(clearance(seat, ball, Feature.MOUTH_EDGE, "left")).isNegative();
  }

  @Test
  void aBallSlidAlongTheGrooveComesNearerToItsEnd() {
    Seat seat = seatAt(SeatFrame.level(Vec3.ZERO, 0));
    Ball ball = new Ball(new Vec3(-0.003, 0, 0), BALL);
    assertThat(clearance(seat, ball, Feature.END, "left")).isCloseTo(6.5e-3, within(1e-9));
  }

  @Test
  void anUnstatedExtentLimitsNothing() {
    Seat seat =
        VeeGroove.forBall(
            SeatFrame.level(Vec3.ZERO, 0), BALL, FORTY_FIVE, GrooveExtent.unlimited());
    assertThat(seat.clearances(new Ball(Vec3.ZERO, BALL))).isEmpty();
  }

  @Test
  void unlikeFlanksHoldTheBallOffTheMiddle() {
    SeatFrame apex = SeatFrame.level(Vec3.ZERO, 0);
    VeeGroove vee =
        new VeeGroove(apex, Math.toRadians(30), Math.toRadians(60), GrooveExtent.unlimited());
    // at right angles to each other: the ball's centre is R sqrt 2 from the apex line, and turned
    // by 15 deg toward the flatter flank
    double turn = Math.toRadians(15);
    Vec3 centre = new Vec3(0, Math.sin(turn), Math.cos(turn)).times(BALL * Math.sqrt(2));
    for (Flank flank : vee.flanks()) {
      assertThat(flank.gap(centre, BALL)).isCloseTo(0, within(1e-16));
    }
  }

  @Test
  void flanksOnWhichNoBallCanRestAreRefused() {
    for (double degrees : new double[] {0, 90, -45, Double.NaN}) {
      assertThatThrownBy(
              () ->
                  VeeGroove.forBall(
                      SeatFrame.level(Vec3.ZERO, 0),
                      BALL,
                      Math.toRadians(degrees),
                      GrooveExtent.unlimited()))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("flank angle");
    }
    assertThatThrownBy(() -> new GrooveExtent(0.005, 0.01, 0.006, 0))
        .hasMessageContaining("narrower than the mouth");
    assertThatThrownBy(() -> new SeatFrame(Vec3.ZERO, Vec3.Z, Vec3.Z))
        .hasMessageContaining("groove axis");
  }
}
