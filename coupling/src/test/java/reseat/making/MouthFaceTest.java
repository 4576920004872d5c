package reseat.making;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.seat.Flank;
import reseat.seat.GothicGroove;
import reseat.seat.GrooveExtent;
import reseat.seat.Seat;
import reseat.seat.TrihedralSeat;
import reseat.space.Vec3;

/** The face lies where the mouth is as wide as it is said to be. */
class MouthFaceTest {

  private static double height(Seat seat) {
    return MouthFace.of(seat).orElseThrow().height();
  }

  /** How far aside a flank is cut by a plane at some height: found on the flank itself. */
  private static double cut(Seat seat, Flank flank, double height) {
    Vec3 middle = seat.frame().point(0, 0, height);
    Vec3 push = flank.normal(middle).rejectedFrom(seat.frame().up()).unit();
    double inside = 0;
    double outside = 50e-3;
    for (int i = 0; i < 100; i++) {
      double aside = (inside + outside) / 2;
      if (flank.gap(middle.minus(push.times(aside)), 0) > 0) {
        inside = aside;
      } else {
        outside = aside;
      }
    }
    return inside;
  }

  @ParameterizedTest
  @ValueSource(strings = {"vee", "unlike vee", "gothic"})
  void aGroovesFlanksAreCutByItsFaceAMouthApart(String name) {
    Seat seat = MeasuredSeats.named(name);
    List<Flank> flanks = seat.flanks();
    double face = height(seat);
    assertThat(cut(seat, flanks.get(0), face) + cut(seat, flanks.get(1), face))
        .isCloseTo(AlteredSeats.mouthOf(seat), within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(strings = {"trihedral", "cone"})
  void threeFlanksAreCutHalfTheMouthsDiameterFromTheMiddle(String name) {
    Seat seat = MeasuredSeats.named(name);
    for (Flank flank : seat.flanks()) {
      assertThat(cut(seat, flank, height(seat)))
          .isCloseTo(AlteredSeats.mouthOf(seat) / 2, within(1e-12));
    }
  }

  /** Any point in an equilateral triangle about a circle has three radii to its sides in sum. */
  @Test
  void threeUnlikeFlanksAreCutThreeRadiiOfTheMouthFromTheMiddleInSum() {
    Seat seat = MeasuredSeats.named("unlike trihedral");
    double sum = 0;
    for (Flank flank : seat.flanks()) {
      sum += cut(seat, flank, height(seat));
    }
    assertThat(sum).isCloseTo(1.5 * 14e-3, within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(strings = {"vee", "unlike vee", "gothic", "trihedral", "unlike trihedral", "cone"})
  void aWiderMouthRaisesTheFaceAsFiniteDifferencesSay(String name) {
    Seat seat = MeasuredSeats.named(name);
    double mouth = AlteredSeats.mouthOf(seat);
    double h = 1e-7;
    double slope =
        (height(AlteredSeats.mouthed(seat, mouth + h))
                - height(AlteredSeats.mouthed(seat, mouth - h)))
            / (2 * h);
    assertThat(MouthFace.of(seat).orElseThrow().perMouth()).isCloseTo(slope, within(1e-7));
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2})
  void aSteeperFlankOfThreeRaisesTheFaceAsFiniteDifferencesSay(int which) {
    TrihedralSeat s = (TrihedralSeat) MeasuredSeats.named("unlike trihedral");
    double h = 1e-6;
    double high = height(steeper(s, which, h));
    double low = height(steeper(s, which, -h));
    assertThat(MouthFace.of(s).orElseThrow().perFlankAngle().get(which))
        .isCloseTo((high - low) / (2 * h), within(1e-11));
  }

  private static Seat steeper(TrihedralSeat s, int which, double more) {
    return new TrihedralSeat(
        s.frame(),
        s.firstAngle() + (which == 0 ? more : 0),
        s.secondAngle() + (which == 1 ? more : 0),
        s.thirdAngle() + (which == 2 ? more : 0),
        s.mouthDiameter(),
        s.rootDiameter());
  }

  @Test
  void anArchWiderThanItsFlanksReachHasNoFace() {
    GothicGroove s = (GothicGroove) MeasuredSeats.named("gothic");
    // flanks of 8 mm radius with axes c past the middle end upright at 2 (8 mm - c)
    double widest = 2 * (8e-3 - s.axisOffset());
    Seat wide = AlteredSeats.mouthed(s, widest * (1 + 1e-9));
    assertThat(MouthFace.of(wide)).isEmpty();
    assertThat(height(AlteredSeats.mouthed(s, widest * (1 - 1e-9))))
        .isCloseTo(s.axisHeight(), within(1e-6));
    GrooveExtent none = GrooveExtent.unlimited();
    assertThat(MouthFace.of(new GothicGroove(s.frame(), 8e-3, 8e-3, 1e-3, 1e-3, none))).isEmpty();
  }
}
