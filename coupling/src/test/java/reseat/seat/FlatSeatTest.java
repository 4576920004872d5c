package reseat.seat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import reseat.seat.SeatClearance.Feature;
import reseat.space.Vec3;

class FlatSeatTest extends SeatContract {

  @Override
  Seat seatAt(SeatFrame atBallCentre) {
    return FlatSeat.forBall(atBallCentre, BALL, 0.008);
  }

  @Override
  int contacts() {
    return 1;
  }

  @Test
  void theEndOfThePadIsMeasuredFromTheContact() {
    Seat seat = seatAt(SeatFrame.level(Vec3.ZERO, 0));
    Ball ball = new Ball(new Vec3(0.003, 0, 0), BALL);
    assertThat(clearance(seat, ball, Feature.END, "flat")).isCloseTo(0.001, within(1e-12));
    assertThat(seat.isGroove()).isFalse();
  }

  @Test
  void aPadWithoutSizeIsRefused() {
    assertThatThrownBy(() -> FlatSeat.forBall(SeatFrame.level(Vec3.ZERO, 0), BALL, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("pad diameter");
    assertThatThrownBy(() -> new Ball(Vec3.ZERO, 0)).hasMessageContaining("ball radius");
  }
}
