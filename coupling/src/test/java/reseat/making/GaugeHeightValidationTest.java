package reseat.making;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import reseat.design.Tolerance;
import reseat.design.ToleranceKind;
import reseat.design.Tolerances;
import reseat.numerics.DistributionShape;
import reseat.seat.CylinderPair;
import reseat.seat.GrooveExtent;
import reseat.seat.SeatFrame;
import reseat.seat.VeeGroove;
import reseat.space.Vec3;

/**
 * Heights and angles beside figures that were computed independently from the formulas stated.
 *
 * <p>No published table of heights over a ball in a groove was read; the formula is plane geometry,
 * H = R + R/sin(t) - (W/2)/tan(t) with half the included angle t and mouth width W.
 */
class GaugeHeightValidationTest {

  private static final SeatFrame FRAME = SeatFrame.level(Vec3.ZERO, 0);

  private static GaugeReading halfInchBallInNinetyDegrees() {
    GrooveExtent extent = new GrooveExtent(10.5e-3, 20e-3, 0, 0);
    VeeGroove vee = VeeGroove.forBall(FRAME, 6.35e-3, Math.toRadians(45), extent);
    return GaugeReading.of(MeasuredSeats.support(vee), Tolerances.NONE, 12.7e-3).orElseThrow();
  }

  @Test
  void aHalfInchBallStands10Point080OverTheFaceOfANinetyDegreeGroove() {
    // computed independently from the stated formula: ball 12.700, mouth 10.500
    assertThat(halfInchBallInNinetyDegrees().overDatum()).isCloseTo(10.080e-3, within(0.5e-6));
  }

  @Test
  void aMouthWiderByOneMicrometreLetsItHalfAMicrometreDown() {
    // computed independently: dH/dW = -1/(2 tan 45°) = -0.5
    assertThat(halfInchBallInNinetyDegrees().perMouth().orElseThrow())
        .isCloseTo(-0.5, within(1e-12));
  }

  @Test
  void tenMinutesOfHalfAngleAreFourPointFourMicrometres() {
    // computed independently, mouth as drawn
    double perAngle = halfInchBallInNinetyDegrees().perAngleAtMouth().orElseThrow();
    assertThat(Math.abs(perAngle) * Math.toRadians(10.0 / 60)).isCloseTo(4.4e-6, within(0.05e-6));
  }

  @Test
  void pinsOfTenStand21Point213ApartForContactsAt45Degrees() {
    // computed independently: s = 2 (10 + 5) cos 45°; a spacing of 18 gives 53.1° of elevation
    CylinderPair pins = CylinderPair.forBall(FRAME, 10e-3, 5e-3, 21.213e-3, 32e-3, 5e-3);
    assertThat(Math.toDegrees(pins.contactAngle(10e-3))).isCloseTo(45, within(0.002));
    CylinderPair close = CylinderPair.forBall(FRAME, 10e-3, 5e-3, 18e-3, 32e-3, 5e-3);
    assertThat(90 - Math.toDegrees(close.contactAngle(10e-3))).isCloseTo(53.1, within(0.05));
    PinSpacing spacing = PinSpacing.of(MeasuredSeats.support(pins), Tolerances.NONE).orElseThrow();
    assertThat(spacing.over()).isCloseTo(31.213e-3, within(1e-9));
    assertThat(spacing.between()).isCloseTo(11.213e-3, within(1e-9));
    GaugeReading reading =
        GaugeReading.of(MeasuredSeats.support(pins), Tolerances.NONE, 20e-3).orElseThrow();
    // sqrt(15² - 10.6065²) + 10 - 5
    assertThat(reading.overDatum()).isCloseTo(15.6068e-3, within(0.1e-6));
    assertThat(reading.perPinSpacing()).isCloseTo(-0.5, within(1e-4));
  }

  @Test
  void twoPinsGiveBackTheAngleOfTheGroove() {
    for (double degrees : new double[] {30, 35.26, 45, 60}) {
      VeeGroove vee =
          VeeGroove.forBall(FRAME, 6e-3, Math.toRadians(degrees), GrooveExtent.unlimited());
      TwoGaugeAngle angle =
          TwoGaugeAngle.of(MeasuredSeats.support(vee), Tolerances.NONE, 6e-3, 10e-3).orElseThrow();
      assertThat(Math.toDegrees(angle.flankAngle())).isCloseTo(degrees, within(1e-9));
      double h = 1e-8;
      double slope =
          (TwoGaugeAngle.flankAngle(6e-3, 10e-3, angle.difference() + h)
                  - TwoGaugeAngle.flankAngle(6e-3, 10e-3, angle.difference() - h))
              / (2 * h);
      assertThat(angle.perDifference()).isCloseTo(slope, within(1e-4 * slope));
    }
    // computed independently: pins of 6 and 10 mm in 90°, D = 2 (1 + sqrt 2) mm
    assertThat(Math.toDegrees(TwoGaugeAngle.flankAngle(6e-3, 10e-3, 4.828427e-3)))
        .isCloseTo(45, within(1e-5));
  }

  @Test
  void aDifferenceThatNoGrooveGivesIsRefused() {
    assertThatThrownBy(() -> TwoGaugeAngle.flankAngle(6e-3, 10e-3, 3.9e-3))
        .hasMessageContaining("fit no groove");
  }

  @Test
  void theToleranceOfTheAngleIsTheBandOfTheDifference() {
    VeeGroove vee = VeeGroove.forBall(FRAME, 6e-3, Math.toRadians(45), GrooveExtent.unlimited());
    Tolerances five =
        Tolerances.of(
            Tolerance.ofEach(
                ToleranceKind.FLANK_ANGLE, Math.toRadians(5.0 / 60), DistributionShape.UNIFORM));
    Optional<TwoGaugeAngle> angle = TwoGaugeAngle.of(MeasuredSeats.support(vee), five, 6e-3, 10e-3);
    assertThat(angle.orElseThrow().band() * angle.get().perDifference())
        .isCloseTo(Math.toRadians(5.0 / 60), within(1e-12));
    assertThat(
            TwoGaugeAngle.of(
                MeasuredSeats.support(MeasuredSeats.ALL.get("flat")), five, 6e-3, 10e-3))
        .isEmpty();
  }
}
