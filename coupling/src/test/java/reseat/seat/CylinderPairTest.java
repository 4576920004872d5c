package reseat.seat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import reseat.seat.SeatClearance.Feature;
import reseat.space.Vec3;

class CylinderPairTest extends SeatContract {

  @Override
  Seat seatAt(SeatFrame atBallCentre) {
    return CylinderPair.forBall(atBallCentre, BALL, 0.004, 0.0146, 0.02, 0.0035);
  }

  @Override
  int contacts() {
    return 2;
  }

  @Test
  void spacingSetsTheContactAngle() {
    // ball 20 mm on pins 10 mm: 21.213 mm apart gives 45 deg, 18 mm gives 53.1 deg from the
    // horizontal (an independent script's figures, and by hand: sin = 18/30)
    CylinderPair right = pair(0.021213);
    assertThat(Math.toDegrees(right.contactAngle(0.010))).isCloseTo(45, within(0.001));
    assertThat(90 - Math.toDegrees(pair(0.018).contactAngle(0.010))).isCloseTo(53.13, within(0.01));
    assertThat(Math.toDegrees(Math.acos(right.flanks().get(0).normal(Vec3.ZERO).z())))
        .isCloseTo(45, within(0.001));
  }

  private static CylinderPair pair(double spacing) {
    return CylinderPair.forBall(
        SeatFrame.level(Vec3.ZERO, 0), 0.010, 0.005, spacing, 0.032, Double.POSITIVE_INFINITY);
  }

  @Test
  void theFloorMustLieBelowTheBall() {
    SeatFrame frame = SeatFrame.level(Vec3.ZERO, 0);
    Ball ball = new Ball(Vec3.ZERO, BALL);
    double rise = Math.sqrt(0.01035 * 0.01035 - 0.0073 * 0.0073);
    assertThat(clearance(seatAt(frame), ball, Feature.FLOOR, ""))
        .isCloseTo(rise + 0.0035 - BALL, within(1e-12));
    Seat shallow = CylinderPair.forBall(frame, 0.008, 0.004, 0.022, 0.02, 0.0025);
    assertThat(clearance(shallow, new Ball(Vec3.ZERO, 0.008), Feature.FLOOR, ""))
        .as("ball on the floor between wide pins")
        .isNegative();
  }

  @Test
  void aPatchIsLongAlongThePin() {
    for (Flank flank : seatAt(SeatFrame.level(Vec3.ZERO, 0)).flanks()) {
      assertThat(flank.longAxis(Vec3.ZERO)).isEqualTo(Vec3.X);
    }
  }

  @Test
  void pinsThatOverlapOrLetTheBallThroughAreRefused() {
    SeatFrame frame = SeatFrame.level(Vec3.ZERO, 0);
    assertThatThrownBy(() -> new CylinderPair(frame, 0.005, 0.005, 0.0099, 0.03, 0.01))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("overlap");
    assertThatThrownBy(() -> pair(0.0301))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("falls through")
        .hasMessageContaining("30.0000 mm");
  }
}
