package reseat.making;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.design.Support;
import reseat.design.Tolerance;
import reseat.design.ToleranceKind;
import reseat.design.Tolerances;
import reseat.making.GaugeReading.Datum;
import reseat.numerics.DistributionShape;
import reseat.seat.CylinderPair;
import reseat.seat.Seat;
import reseat.seat.SeatClearance;

/** What is read over a gauge: from which datum, and how it answers to every error of making. */
class GaugeReadingTest {

  private static final double GAUGE = 11.8e-3;
  private static final double STEP = 1e-7;
  private static final double LIMIT = 5e-7;

  private static GaugeReading reading(Seat seat, double gauge, Tolerance... tolerances) {
    return GaugeReading.of(MeasuredSeats.support(seat), Tolerances.of(tolerances), gauge)
        .orElseThrow();
  }

  private static double height(Seat seat) {
    return reading(seat, GAUGE).overDatum();
  }

  private static double slope(DoubleUnaryOperator height) {
    return (height.applyAsDouble(STEP) - height.applyAsDouble(-STEP)) / (2 * STEP);
  }

  @ParameterizedTest
  @CsvSource({
    "vee, FACE, face",
    "gothic, FACE, face",
    "trihedral, FACE, face",
    "cone, FACE, face",
    "pins, PIN_TOPS, tops of the pins",
    "flat, PAD, flat"
  })
  void heightsCountFromWhatTheSeatHas(String name, Datum datum, String words) {
    assertThat(reading(MeasuredSeats.named(name), GAUGE).datum()).isEqualTo(datum);
    assertThat(datum.words()).isEqualTo(words);
  }

  @ParameterizedTest
  @ValueSource(strings = {"vee", "gothic", "trihedral", "cone"})
  void withoutAMouthThereIsNoDatumAndHeightsCountFromWhereTheFlanksMeet(String name) {
    Seat open = AlteredSeats.mouthed(MeasuredSeats.named(name), Double.POSITIVE_INFINITY);
    GaugeReading reading = reading(open, GAUGE);
    assertThat(reading.datum()).isEqualTo(Datum.NONE);
    assertThat(Datum.NONE.words()).isEqualTo("none");
    assertThat(reading.perMouth()).isEmpty();
    assertThat(reading.perAngleAtMouth()).isEmpty();
    assertThat(reading.perDepth()).isEqualTo(-1);
    assertThat(reading.overDatum())
        .isEqualTo(RestingHeight.of(open, GAUGE / 2).centre() + GAUGE / 2);
  }

  @Test
  void closedFormsOfTheHeightOverEachDatum() {
    double r = GAUGE / 2;
    Map<String, Double> expected =
        Map.of(
            "vee", r + r * Math.sqrt(2) - 10.5e-3 / 2,
            "cone", r + r / Math.cos(Math.toRadians(50)) - 6.5e-3 * Math.tan(Math.toRadians(50)),
            "pins", r + Math.sqrt(Math.pow(r + 5e-3, 2) - 8e-3 * 8e-3) - 5e-3,
            "flat", GAUGE);
    expected.forEach(
        (name, height) ->
            assertThat(height(MeasuredSeats.named(name)))
                .as(name)
                .isCloseTo(height, within(1e-15)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "vee",
        "unlike vee",
        "gothic",
        "trihedral",
        "unlike trihedral",
        "cone",
        "pins",
        "flat"
      })
  void theHeightFollowsGaugeMouthAndDepthAsFiniteDifferencesSay(String name) {
    Seat seat = MeasuredSeats.named(name);
    GaugeReading reading = reading(seat, GAUGE);
    assertThat(reading.perGauge())
        .isCloseTo(slope(h -> reading(seat, GAUGE + h).overDatum()), within(1e-7));
    if (reading.datum() != Datum.FACE) {
      assertThat(reading.perMouth()).isEmpty();
      assertThat(reading.perDepth()).as("the datum goes down with the seat").isZero();
      return;
    }
    assertThat(reading.perMouth().orElseThrow())
        .isCloseTo(
            slope(h -> height(AlteredSeats.mouthed(seat, AlteredSeats.mouthOf(seat) + h))),
            within(1e-7));
    // a face that stays where it is while the seat goes deeper
    DoubleFunction<Seat> deeper = d -> MeasuredSeats.off(seat, ToleranceKind.SEAT_DEPTH, "", d);
    assertThat(reading.perDepth())
        .isCloseTo(
            slope(
                h ->
                    seat.frame().upward(deeper.apply(h).frame().origin())
                        + RestingHeight.of(deeper.apply(h), GAUGE / 2).centre()),
            within(1e-7));
  }

  @ParameterizedTest
  @ValueSource(strings = {"vee", "unlike vee", "trihedral", "unlike trihedral", "cone"})
  void theHeightFollowsAllAnglesTogetherWithDepthOrMouthKept(String name) {
    Seat seat = MeasuredSeats.named(name);
    GaugeReading reading = reading(seat, GAUGE);
    assertThat(reading.perAngleAtDepth())
        .isCloseTo(
            slope(h -> RestingHeight.of(AlteredSeats.steeper(seat, h), GAUGE / 2).centre()),
            within(1e-9));
    assertThat(reading.perAngleAtMouth().orElseThrow())
        .isCloseTo(slope(h -> height(AlteredSeats.steeper(seat, h))), within(1e-9));
    assertThat(reading.perPinSpacing()).isZero();
    assertThat(reading.perPinDiameter()).isZero();
  }

  @ParameterizedTest
  @ValueSource(strings = {"pins", "unlike pins"})
  void theHeightOverPinTopsFollowsSpacingAndDiameters(String name) {
    CylinderPair s = (CylinderPair) MeasuredSeats.named(name);
    GaugeReading reading = reading(s, GAUGE);
    assertThat(reading.perPinSpacing())
        .isCloseTo(slope(h -> height(AlteredSeats.pins(s, h, 0))), within(1e-7));
    assertThat(reading.perPinDiameter())
        .isCloseTo(slope(h -> height(AlteredSeats.pins(s, 0, h))), within(1e-7));
    assertThat(reading.perAngleAtDepth()).isZero();
    assertThat(reading.perAngleAtMouth()).isEmpty();
  }

  @Test
  void overTheCentreOfTheBallABallOfItsOwnSizeStandsItsRadiusHigh() {
    double r = MeasuredSeats.BALL;
    for (Seat seat : MeasuredSeats.ALL.values()) {
      assertThat(reading(seat, 2 * r).overBallCentre()).isCloseTo(r, within(1e-15));
    }
    // in 90 degrees a smaller gauge sinks by root two of what its radius lacks
    double gauge = reading(MeasuredSeats.ALL.get("vee"), GAUGE).overBallCentre();
    assertThat(gauge).isCloseTo(GAUGE / 2 - (r - GAUGE / 2) * Math.sqrt(2), within(1e-15));
  }

  /** Height of the top over a datum that stays where it is, but for tops that move with pins. */
  private static double made(Seat seat, ToleranceKind kind, List<String> parts, int signs) {
    Seat made = seat;
    for (int i = 0; i < parts.size(); i++) {
      double off = (signs >> i & 1) == 0 ? LIMIT : -LIMIT;
      made = MeasuredSeats.off(made, kind, parts.get(i), off);
    }
    double tops = made instanceof CylinderPair p ? (p.leftRadius() + p.rightRadius()) / 2 : 0;
    return RestingHeight.of(made, GAUGE / 2).centre() - tops;
  }

  @ParameterizedTest
  @CsvSource({
    "vee, FLANK_ANGLE",
    "unlike vee, FLANK_ANGLE",
    "trihedral, FLANK_ANGLE",
    "unlike trihedral, FLANK_ANGLE",
    "gothic, FLANK_RADIUS",
    "unlike gothic, ARCH_OFFSET",
    "pins, PIN_DIAMETER",
    "unlike pins, PIN_DIAMETER",
    "unlike pins, PIN_SPACING"
  })
  void theBandIsTheWorstOfAllCornersAloneAndInALot(String name, ToleranceKind kind) {
    Seat seat = MeasuredSeats.named(name);
    List<String> parts = kind.partsOf(seat);
    double drawn = made(seat, kind, List.of(), 0);
    double worst = 0;
    for (int signs = 0; signs < 1 << parts.size(); signs++) {
      worst = Math.max(worst, Math.abs(made(seat, kind, parts, signs) - drawn));
    }
    double lot = Math.abs(made(seat, kind, parts, 0) - drawn);
    Tolerance each = Tolerance.ofEach(kind, LIMIT, DistributionShape.UNIFORM);
    Tolerance shared = Tolerance.shared(kind, LIMIT, DistributionShape.UNIFORM);
    double first = 1e-3 * worst;
    assertThat(worst).isGreaterThan(0);
    assertThat(reading(seat, GAUGE, each).datumBand().orElseThrow())
        .isCloseTo(worst, within(first));
    assertThat(reading(seat, GAUGE, shared).datumBand().orElseThrow())
        .isCloseTo(lot, within(first));
    assertThat(reading(seat, GAUGE, each, shared).datumBand().orElseThrow())
        .as("a part may depart with its lot and within it")
        .isCloseTo(worst + lot, within(2 * first));
  }

  @Test
  void aSinglePartsToleranceCountsForThatPartAlone() {
    Seat seat = MeasuredSeats.ALL.get("unlike vee");
    Tolerance right =
        Tolerance.ofEach(ToleranceKind.FLANK_ANGLE, 1e-3, DistributionShape.UNIFORM)
            .onPart("right");
    double per = RestingHeight.of(seat, GAUGE / 2).perFlankAngle().get(1);
    assertThat(reading(seat, GAUGE, right).datumBand().orElseThrow())
        .isCloseTo(1e-3 * per, within(1e-18));
  }

  @Test
  void whatMovesTheDatumToTheSameExtentIsSeenOverTheBallOnly() {
    for (String name : List.of("pins", "flat")) {
      for (boolean shared : new boolean[] {false, true}) {
        Tolerance depth =
            shared
                ? Tolerance.shared(ToleranceKind.SEAT_DEPTH, 3e-6, DistributionShape.UNIFORM)
                : Tolerance.ofEach(ToleranceKind.SEAT_DEPTH, 3e-6, DistributionShape.UNIFORM);
        GaugeReading reading = reading(MeasuredSeats.named(name), GAUGE, depth);
        assertThat(reading.datumBand()).as(name).isEmpty();
        assertThat(reading.ballBand()).as(name).isEqualTo(OptionalDouble.of(3e-6));
      }
    }
    Tolerance pin = Tolerance.ofEach(ToleranceKind.PIN_DIAMETER, LIMIT, DistributionShape.UNIFORM);
    GaugeReading pins = reading(MeasuredSeats.named("pins"), GAUGE, pin);
    // the tops of both pins rise by half of what their diameters do
    assertThat(pins.ballBand().orElseThrow() - pins.datumBand().orElseThrow())
        .isCloseTo(LIMIT / 2, within(1e-18));
  }

  @Test
  void whatMovesTheGaugeSidewaysOnlyMakesNoBand() {
    GaugeReading reading =
        reading(
            MeasuredSeats.named("vee"),
            GAUGE,
            Tolerance.ofEach(ToleranceKind.SEAT_ACROSS, 1e-5, DistributionShape.UNIFORM),
            Tolerance.shared(ToleranceKind.SEAT_ALONG, 1e-5, DistributionShape.UNIFORM),
            Tolerance.ofEach(ToleranceKind.BALL_HEIGHT, 1e-5, DistributionShape.UNIFORM));
    assertThat(reading.datumBand()).isEmpty();
    assertThat(reading.ballBand()).isEmpty();
  }

  @Test
  void aGaugeOverBothEdgesOfAMouthIsNamedOnce() {
    Support vee = MeasuredSeats.support(MeasuredSeats.named("vee"));
    GaugeReading over = GaugeReading.of(vee, Tolerances.NONE, 16e-3).orElseThrow();
    assertThat(over.fits()).isFalse();
    assertThat(over.misfits()).containsExactly(SeatClearance.Feature.MOUTH_EDGE);
    assertThat(over.support()).isEqualTo("one");
    assertThat(GaugeReading.of(vee, Tolerances.NONE, GAUGE).orElseThrow().fits()).isTrue();
  }
}
