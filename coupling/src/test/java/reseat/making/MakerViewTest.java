package reseat.making;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import reseat.design.Half;
import reseat.design.Support;
import reseat.seat.Seat;
import reseat.seat.SeatFrame;
import reseat.space.Vec3;

/** Turning a half over moves nothing against anything else on it. */
class MakerViewTest {

  @ParameterizedTest
  @EnumSource(Half.class)
  void aSeatTurnedOverHoldsItsBallAsBefore(Half half) {
    MakerView view = new MakerView(half);
    for (Seat seat : MeasuredSeats.ALL.values()) {
      Support before = MeasuredSeats.support(seat);
      Vec3 aside = before.ball().centre().plus(new Vec3(1e-4, 2e-4, 3e-4));
      Support after = view.turnedOver(before);
      assertThat(after.ball().radius()).isEqualTo(before.ball().radius());
      SeatFrame f = view.turnedOver(seat.frame());
      assertThat(after.seat().frame()).isEqualTo(f);
      Vec3 asideSeen = view.turnedOver(aside);
      assertThat(f.along(asideSeen)).isCloseTo(seat.frame().along(aside), within(1e-15));
      assertThat(f.toLeft(asideSeen)).isCloseTo(seat.frame().toLeft(aside), within(1e-15));
      assertThat(f.upward(asideSeen)).isCloseTo(seat.frame().upward(aside), within(1e-15));
      for (int k = 0; k < seat.flanks().size(); k++) {
        double gap = after.seat().flanks().get(k).gap(asideSeen, 6e-3);
        assertThat(gap).isCloseTo(seat.flanks().get(k).gap(aside, 6e-3), within(1e-15));
      }
    }
  }

  @Test
  void theHoldersMakerSeesItsSeatsOpenTowardHim() {
    SeatFrame hanging = new SeatFrame(Vec3.ZERO, Vec3.X, Vec3.Z.negated());
    assertThat(new MakerView(Half.HOLDER).turnedOver(hanging).up().z()).isEqualTo(1);
    assertThat(new MakerView(Half.BASE).turnedOver(hanging).up().z()).isEqualTo(-1);
  }

  @Test
  void anglesRunFromZeroToJustBelowAWholeTurn() {
    MakerView base = new MakerView(Half.BASE);
    for (double degrees : new double[] {0, 10, 179, 181, 270, 359.99}) {
      double seen = base.azimuth(Vec3.atAzimuth(Math.toRadians(degrees)));
      assertThat(Math.toDegrees(seen)).isCloseTo(degrees, within(1e-9));
    }
    assertThat(base.azimuth(new Vec3(1, -1e-15, 0))).as("no turn but for last bits").isZero();
    assertThat(base.azimuth(new Vec3(1, -1e-8, 0))).isGreaterThan(6);
  }
}
