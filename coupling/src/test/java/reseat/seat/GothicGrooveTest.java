package reseat.seat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import reseat.seat.SeatClearance.Feature;
import reseat.space.Vec3;

class GothicGrooveTest extends SeatContract {

  private static final double FLANK = 0.0072;

  @Override
  Seat seatAt(SeatFrame atBallCentre) {
    return GothicGroove.forBall(
        atBallCentre,
        BALL,
        FLANK,
        Math.toRadians(45),
        new GrooveExtent(0.0115, 0.02, 0.001, 0.0005));
  }

  @Override
  int contacts() {
    return 2;
  }

  @Test
  void contactNormalsStandAtTheAngleAskedFor() {
    for (Flank flank : seatAt(SeatFrame.level(Vec3.ZERO, 0)).flanks()) {
      assertThat(flank.normal(Vec3.ZERO).z()).isCloseTo(Math.sqrt(0.5), within(1e-14));
      assertThat(flank.signedRadius()).isEqualTo(-FLANK);
    }
  }

  @Test
  void clearancesRunAlongTheArc() {
    Seat seat = seatAt(SeatFrame.level(Vec3.ZERO, 0));
    Ball ball = new Ball(Vec3.ZERO, BALL);
    double offset = (FLANK - BALL) * Math.sqrt(0.5);
    double edge = Math.asin((offset + 0.00575) / FLANK);
    assertThat(clearance(seat, ball, Feature.MOUTH_EDGE, "left"))
        .isCloseTo(FLANK * (edge - Math.PI / 4), within(1e-12));
    double root = Math.asin((offset + 0.0005) / FLANK);
    assertThat(clearance(seat, ball, Feature.ROOT_EDGE, "right"))
        .isCloseTo(FLANK * (Math.PI / 4 - root), within(1e-12));
    // the arch's foot lies below the ball by what the flatter circle sags less
    double foot = offset - FLANK * Math.cos(root) - 0.0005;
    assertThat(clearance(seat, ball, Feature.FLOOR, "")).isCloseTo(-BALL - foot, within(1e-12));
  }

  @Test
  void aPatchIsLongAcrossTheGroove() {
    Seat seat = seatAt(SeatFrame.level(Vec3.ZERO, 0));
    for (Flank flank : seat.flanks()) {
      assertThat(flank.longAxis(Vec3.ZERO).dot(Vec3.X)).isCloseTo(0, within(1e-15));
    }
  }

  @Test
  void aGrooveNoWiderThanItsBallIsRefused() {
    assertThatThrownBy(
            () ->
                GothicGroove.forBall(
                    SeatFrame.level(Vec3.ZERO, 0), BALL, BALL, 0.8, GrooveExtent.unlimited()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("larger than the ball radius");
  }
}
