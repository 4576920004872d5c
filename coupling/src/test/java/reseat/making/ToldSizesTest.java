package reseat.making;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.ballmount.LockNut;
import reseat.ballmount.ScrewThread;
import reseat.ballmount.ThreadFit;
import reseat.ballmount.ThreadTolerance;
import reseat.ballmount.ThreadTorque;
import reseat.design.StudThread;
import reseat.design.Support;
import reseat.design.Tolerance;
import reseat.design.ToleranceKind;
import reseat.design.Tolerances;
import reseat.numerics.DistributionShape;
import reseat.seat.CylinderPair;
import reseat.seat.GrooveExtent;
import reseat.seat.VeeGroove;
import reseat.space.Vec3;

/** Small things told to the shop: sizes and their limits, pins, two gauges, turns of screws. */
class ToldSizesTest {

  @ParameterizedTest
  @EnumSource(MadeDimension.Kind.class)
  void aSizeIsAnAngleIfItsWordsSaySo(MadeDimension.Kind kind) {
    assertThat(kind.isAngle()).isEqualTo(kind.words().contains("angle"));
  }

  @Test
  void everyKindHasWordsOfItsOwn() {
    var sizes = Arrays.stream(MadeDimension.Kind.values()).map(MadeDimension.Kind::words).toList();
    assertThat(new HashSet<>(sizes)).hasSameSizeAs(sizes);
    var features = Arrays.stream(MadeFeature.Kind.values()).map(MadeFeature.Kind::words).toList();
    assertThat(new HashSet<>(features)).hasSameSizeAs(features).doesNotContain("");
  }

  @Test
  void aToleranceOfNothingIsOneAndANegativeOneIsRefused() {
    var exact = new MadeDimension(MadeDimension.Kind.DIAMETER, "", 5e-3, 0);
    assertThat(exact.isToleranced()).isTrue();
    assertThatThrownBy(() -> new MadeDimension(MadeDimension.Kind.DIAMETER, "", 5e-3, -1e-9))
        .hasMessageContaining("diameter must be finite and its tolerance not negative");
    assertThatThrownBy(() -> new MadeDimension(MadeDimension.Kind.DIAMETER, "", Double.NaN, 0))
        .hasMessageContaining("found NaN");
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4, 5})
  void aPlaceMayBeHeldExactlyAndNeverCloser(int which) {
    double[] t = new double[6];
    assertThat(new PlaceTolerance(t[0], t[1], t[2], t[3], t[4], t[5])).isNotNull();
    t[which] = -1e-12;
    assertThatThrownBy(() -> new PlaceTolerance(t[0], t[1], t[2], t[3], t[4], t[5]))
        .hasMessageContaining("must not be negative");
  }

  private static Support unlikePins() {
    return MeasuredSeats.support(MeasuredSeats.named("unlike pins"));
  }

  @Test
  void overAndBetweenUnlikePinsTheirSpacingAndRadiiAreRead() {
    // pins of 10 and 9.4 mm, 15 mm apart
    PinSpacing pins = PinSpacing.of(unlikePins(), Tolerances.NONE).orElseThrow();
    assertThat(pins.over()).isCloseTo(24.7e-3, within(1e-15));
    assertThat(pins.between()).isCloseTo(5.3e-3, within(1e-15));
    assertThat(pins.band()).isZero();
    assertThat(PinSpacing.of(MeasuredSeats.support(MeasuredSeats.CONE), Tolerances.NONE)).isEmpty();
  }

  @Test
  void bothReadingsOfPinsDepartByTheSpacingAndHalfOfEachDiameter() {
    var spacing = Tolerance.ofEach(ToleranceKind.PIN_SPACING, 10e-6, DistributionShape.UNIFORM);
    var left =
        Tolerance.ofEach(ToleranceKind.PIN_DIAMETER, 2e-6, DistributionShape.UNIFORM)
            .onPart("left");
    var lot = Tolerance.shared(ToleranceKind.PIN_DIAMETER, 3e-6, DistributionShape.UNIFORM);
    assertThat(PinSpacing.of(unlikePins(), Tolerances.of(spacing, left)).orElseThrow().band())
        .isCloseTo(11e-6, within(1e-18));
    PinSpacing all = PinSpacing.of(unlikePins(), Tolerances.of(spacing, left, lot)).orElseThrow();
    assertThat(all.band()).isCloseTo(14e-6, within(1e-18));
    // made at the worst limits
    CylinderPair p = (CylinderPair) unlikePins().seat();
    var worst =
        new CylinderPair(
            p.frame(),
            p.leftRadius() + 2.5e-6,
            p.rightRadius() + 1.5e-6,
            p.spacing() + 10e-6,
            1,
            1);
    PinSpacing made = PinSpacing.of(MeasuredSeats.support(worst), Tolerances.NONE).orElseThrow();
    assertThat(made.over() - all.over()).isCloseTo(all.band(), within(1e-15));
  }

  /** Angles made off to every corner, read over both gauges. */
  @Test
  void theBandOfTwoGaugesIsTheWorstThatTheAnglesAllow() {
    var extent = GrooveExtent.unlimited();
    var f = MeasuredSeats.named("vee").frame();
    var vee = MeasuredSeats.support(new VeeGroove(f, 0.7, 0.9, extent));
    double limit = 1e-5;
    double drawn = difference(vee);
    double worst = 0;
    for (int signs = 0; signs < 4; signs++) {
      double left = (signs & 1) == 0 ? limit : -limit;
      double right = (signs & 2) == 0 ? limit : -limit;
      var made = MeasuredSeats.support(new VeeGroove(f, 0.7 + left, 0.9 + right, extent));
      worst = Math.max(worst, Math.abs(difference(made) - drawn));
    }
    var each = Tolerance.ofEach(ToleranceKind.FLANK_ANGLE, limit, DistributionShape.UNIFORM);
    var lot = Tolerance.shared(ToleranceKind.FLANK_ANGLE, limit, DistributionShape.UNIFORM);
    assertThat(band(vee, each)).isCloseTo(worst, within(1e-4 * worst));
    assertThat(band(vee, lot)).isCloseTo(worst, within(1e-4 * worst));
    assertThat(band(vee, each, lot)).isCloseTo(2 * worst, within(2e-4 * worst));
    assertThat(band(vee, each.onPart("left")) + band(vee, each.onPart("right")))
        .isCloseTo(band(vee, each), within(1e-18));
  }

  private static double difference(Support vee) {
    return TwoGaugeAngle.of(vee, Tolerances.NONE, 6e-3, 10e-3).orElseThrow().difference();
  }

  private static double band(Support vee, Tolerance... tolerances) {
    return TwoGaugeAngle.of(vee, Tolerances.of(tolerances), 6e-3, 10e-3).orElseThrow().band();
  }

  @Test
  void theSecondGaugeMustBeTheLarger() {
    var vee = MeasuredSeats.support(MeasuredSeats.named("vee"));
    for (double second : new double[] {10e-3, 6e-3}) {
      assertThatThrownBy(() -> TwoGaugeAngle.of(vee, Tolerances.NONE, 10e-3, second))
          .hasMessageContaining("the second must be the larger");
    }
    // a flat face under both, and walls that no gauge comes down between
    assertThatThrownBy(() -> TwoGaugeAngle.flankAngle(6e-3, 10e-3, 4e-3))
        .hasMessageContaining("more than the diameters do");
    assertThatThrownBy(() -> TwoGaugeAngle.flankAngle(6e-3, 10e-3, Double.POSITIVE_INFINITY))
        .hasMessageContaining("fit no groove");
  }

  private static HeightSetting setting(String designation, Optional<Double> nutForce) {
    ScrewThread thread = ScrewThread.parse(designation);
    ThreadTolerance limits = ThreadTolerance.of(thread, ThreadFit.MEDIUM);
    var steel = MeasuredSeats.support(MeasuredSeats.CONE).ballMaterial();
    Optional<LockNut> nut =
        nutForce.map(
            force ->
                new LockNut(
                    limits, new ThreadTorque(thread, 0.15, 0.15, 12e-3), force, 50, 4e-3, 206e9));
    return new HeightSetting(
        "one", new StudThread(limits, 10e-3, steel, steel, 0.15, nut), nut, Vec3.Z);
  }

  @Test
  void aThreadOfOneMillimetreRisesAQuarterOfItInAQuarterTurnOfItsOwnHand() {
    for (String thread : List.of("M8x1", "M8x1-LH")) {
      HeightSetting.Turn out = setting(thread, Optional.empty()).turnFor(0.25e-3);
      assertThat(out.degrees()).isCloseTo(90, within(1e-12));
      assertThat(out.clockMinutes()).isCloseTo(15, within(1e-12));
      assertThat(out.clockwise()).isEqualTo(thread.equals("M8x1"));
      assertThat(setting(thread, Optional.empty()).turnFor(-0.25e-3).clockwise())
          .isNotEqualTo(out.clockwise());
    }
  }

  @Test
  void aScrewIsSetShortByWhatLockingDrawsItOut() {
    assertThat(setting("M8x1", Optional.empty()).shortOfHeight()).isZero();
    HeightSetting locked = setting("M8x1", Optional.of(2000.0));
    assertThat(locked.shortOfHeight())
        .isEqualTo(locked.lockNut().orElseThrow().shiftExpected())
        .isGreaterThan(0);
  }
}
