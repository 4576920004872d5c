package reseat.seat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.seat.SeatClearance.Feature;
import reseat.space.Vec3;

class TrihedralSeatTest extends SeatContract {

  /** Flank angle of a cube corner stood on its tip: atan sqrt 2. */
  private static final double CUBE = Math.atan(Math.sqrt(2));

  @Override
  Seat seatAt(SeatFrame atBallCentre) {
    return TrihedralSeat.forBall(atBallCentre, BALL, CUBE, 0.012, 0.001);
  }

  @Override
  int contacts() {
    return 3;
  }

  @Test
  void flanksOfACubeCornerAreAtRightAngles() {
    List<Flank> flanks = seatAt(SeatFrame.level(Vec3.ZERO, 0)).flanks();
    Vec3 sum = Vec3.ZERO;
    for (int i = 0; i < 3; i++) {
      Vec3 n = flanks.get(i).normal(Vec3.ZERO);
      sum = sum.plus(n);
      assertThat(n.dot(flanks.get((i + 1) % 3).normal(Vec3.ZERO))).isCloseTo(0, within(1e-15));
    }
    assertThat(sum.distanceTo(new Vec3(0, 0, Math.sqrt(3)))).isLessThan(1e-14);
  }

  @Test
  void theFirstFlankPushesAlongTheAxis() {
    Vec3 n = seatAt(SeatFrame.level(Vec3.ZERO, 1.0)).flanks().get(0).normal(Vec3.ZERO);
    assertThat(Math.atan2(n.y(), n.x())).isCloseTo(1.0, within(1e-14));
  }

  @Test
  void clearancesRunUpTheFlank() {
    Seat seat = seatAt(SeatFrame.level(Vec3.ZERO, 0.3));
    Ball ball = new Ball(Vec3.ZERO, BALL);
    double touch = BALL * Math.sin(CUBE);
    for (String flank : List.of("first", "second", "third")) {
      assertThat(clearance(seat, ball, Feature.MOUTH_EDGE, flank))
          .isCloseTo((0.006 - touch) / Math.cos(CUBE), within(1e-12));
      assertThat(clearance(seat, ball, Feature.ROOT_EDGE, flank))
          .isCloseTo((touch - 0.0005) / Math.cos(CUBE), within(1e-12));
    }
  }

  @Test
  void aReliefWiderThanTheMouthIsRefused() {
    assertThatThrownBy(
            () -> TrihedralSeat.forBall(SeatFrame.level(Vec3.ZERO, 0), BALL, CUBE, 0.01, 0.011))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("narrower");
  }
}
