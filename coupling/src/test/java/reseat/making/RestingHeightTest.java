package reseat.making;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.design.Tolerance;
import reseat.design.ToleranceKind;
import reseat.design.Tolerances;
import reseat.numerics.DistributionShape;
import reseat.seat.CylinderPair;
import reseat.seat.Flank;
import reseat.seat.GothicGroove;
import reseat.seat.Seat;
import reseat.seat.SeatClearance;
import reseat.seat.VeeGroove;
import reseat.space.Vec3;

/** A gauge touches every flank, and its height answers to errors as finite differences say. */
class RestingHeightTest {

  private static final double GAUGE = 5.9e-3;

  /** Newton's method on the gaps of the flanks themselves, which know nothing of the formulas. */
  private static Vec3 seated(Seat seat, double radius) {
    // under the axes of hollow flanks, where the ball rests; over everything else
    double start = seat instanceof GothicGroove ? -radius / 2 : radius;
    Vec3 p = seat.frame().point(0, 0, start);
    for (int i = 0; i < 60; i++) {
      List<Flank> flanks = seat.flanks();
      Vec3[] n = new Vec3[3];
      double[] gap = new double[3];
      for (int k = 0; k < 3; k++) {
        boolean flank = k < flanks.size();
        // what no flank holds stays where it is: along a groove, across a flat
        n[k] = flank ? flanks.get(k).normal(p) : k == 2 ? seat.frame().axis() : seat.frame().left();
        gap[k] = flank ? flanks.get(k).gap(p, radius) : 0;
      }
      double volume = n[0].dot(n[1].cross(n[2]));
      for (int k = 0; k < 3; k++) {
        p = p.minus(n[(k + 1) % 3].cross(n[(k + 2) % 3]).times(gap[k] / volume));
      }
    }
    for (Flank f : seat.flanks()) {
      assertThat(f.gap(p, radius)).isCloseTo(0, within(1e-15));
    }
    return p;
  }

  @Test
  void theHeightIsThatOfABallThatTouchesEveryFlank() {
    MeasuredSeats.ALL.forEach(
        (name, seat) ->
            assertThat(RestingHeight.of(seat, GAUGE).centre())
                .as(name)
                .isCloseTo(seat.frame().upward(seated(seat, GAUGE)), within(1e-14)));
  }

  @Test
  void everyPartialAgreesWithTheSeatMadeThatMuchOff() {
    double step = 1e-7;
    int compared = 0;
    for (var entry : MeasuredSeats.ALL.entrySet()) {
      Seat seat = entry.getValue();
      Vec3 datum = seat.frame().origin();
      Vec3 up = seat.frame().up();
      RestingHeight rest = RestingHeight.of(seat, GAUGE);
      for (ToleranceKind kind : ToleranceKind.values()) {
        if (kind.carrier() != ToleranceKind.Carrier.SEATS) {
          continue;
        }
        List<String> parts = kind.partsOf(seat);
        for (int k = 0; k < parts.size(); k++) {
          double high =
              seated(MeasuredSeats.off(seat, kind, parts.get(k), step), GAUGE).minus(datum).dot(up);
          double low =
              seated(MeasuredSeats.off(seat, kind, parts.get(k), -step), GAUGE)
                  .minus(datum)
                  .dot(up);
          double unit = kind.measure() == ToleranceKind.Measure.ANGLE ? 1e-2 : 1;
          // the slope of an unlike seat lifts a ball that stands beside its middle
          boolean slope = kind == ToleranceKind.SEAT_ROLL || kind == ToleranceKind.SEAT_PITCH;
          boolean beside = slope && entry.getKey().startsWith("unlike");
          if (!beside) {
            assertThat(rest.per(kind, k))
                .as(entry.getKey() + " " + kind + " " + parts.get(k))
                .isCloseTo((high - low) / (2 * step), within(2e-6 * unit + 1e-8));
            compared++;
          }
        }
      }
      double h = 1e-8;
      assertThat(rest.perRadius())
          .as(entry.getKey())
          .isCloseTo(
              (RestingHeight.of(seat, GAUGE + h).centre()
                      - RestingHeight.of(seat, GAUGE - h).centre())
                  / (2 * h),
              within(1e-6));
    }
    assertThat(compared).isGreaterThan(60);
  }

  @Test
  void theFaceFollowsMouthAndAngleAsFiniteDifferencesSay() {
    VeeGroove vee = (VeeGroove) MeasuredSeats.ALL.get("unlike vee");
    MouthFace face = MouthFace.of(vee).orElseThrow();
    double h = 1e-7;
    double steeper =
        MouthFace.of(new VeeGroove(vee.frame(), 0.7 + h, 0.9, vee.extent())).orElseThrow().height();
    double flatter =
        MouthFace.of(new VeeGroove(vee.frame(), 0.7 - h, 0.9, vee.extent())).orElseThrow().height();
    assertThat(face.perFlankAngle().get(0)).isCloseTo((steeper - flatter) / (2 * h), within(1e-9));
    assertThat(face.perMouth())
        .isCloseTo(1 / (1 / Math.tan(0.7) + 1 / Math.tan(0.9)), within(1e-14));
    // both upper edges lie in the face
    assertThat(face.height() / Math.tan(0.7) + face.height() / Math.tan(0.9))
        .isCloseTo(vee.extent().mouthWidth(), within(1e-16));
    assertThat(MouthFace.of(MeasuredSeats.ALL.get("flat"))).isEmpty();
    assertThat(MouthFace.of(MeasuredSeats.ALL.get("pins"))).isEmpty();
  }

  @Test
  void aGaugeThatFallsThroughIsRefused() {
    CylinderPair wide =
        new CylinderPair(MeasuredSeats.ALL.get("pins").frame(), 5e-3, 5e-3, 30e-3, 30e-3, 9e-3);
    assertThatThrownBy(() -> RestingHeight.of(wide, 4e-3)).hasMessageContaining("falls through");
    assertThatThrownBy(() -> RestingHeight.of(MeasuredSeats.ALL.get("gothic"), 9e-3))
        .hasMessageContaining("does not go in");
    assertThat(
            GaugeReading.of(
                MeasuredSeats.support(MeasuredSeats.ALL.get("gothic")), Tolerances.NONE, 18e-3))
        .isEmpty();
  }

  @Test
  void theBandIsTheWorstThatTheTolerancesAllow() {
    Seat seat = MeasuredSeats.ALL.get("vee");
    var tolerances =
        Tolerances.of(
            Tolerance.ofEach(ToleranceKind.SEAT_DEPTH, 8e-6, DistributionShape.UNIFORM),
            Tolerance.ofEach(ToleranceKind.FLANK_ANGLE, 1e-3, DistributionShape.UNIFORM),
            Tolerance.ofEach(ToleranceKind.SEAT_ACROSS, 1e-3, DistributionShape.UNIFORM));
    GaugeReading reading =
        GaugeReading.of(MeasuredSeats.support(seat), tolerances, 2 * GAUGE).orElseThrow();
    double worst = 0;
    for (double left : new double[] {-1e-3, 1e-3}) {
      for (double right : new double[] {-1e-3, 1e-3}) {
        Seat made =
            MeasuredSeats.off(
                MeasuredSeats.off(seat, ToleranceKind.FLANK_ANGLE, "left", left),
                ToleranceKind.FLANK_ANGLE,
                "right",
                right);
        worst =
            Math.max(
                worst,
                Math.abs(
                    RestingHeight.of(made, GAUGE).centre()
                        - RestingHeight.of(seat, GAUGE).centre()));
      }
    }
    // to first order: the angles' squares add a part in a thousand
    assertThat(reading.datumBand().orElseThrow()).isCloseTo(worst + 8e-6, within(2e-8));
    assertThat(
            GaugeReading.of(MeasuredSeats.support(seat), Tolerances.NONE, 2 * GAUGE)
                .orElseThrow()
                .datumBand())
        .as("without tolerances there is nothing to pass or fail by")
        .isEmpty();
  }

  @Test
  void aGaugeThatReachesOverAnEdgeIsNamed() {
    var support = MeasuredSeats.support(MeasuredSeats.ALL.get("vee"));
    var none = Tolerances.NONE;
    assertThat(GaugeReading.of(support, none, 12.7e-3).orElseThrow().fits()).isTrue();
    assertThat(GaugeReading.of(support, none, 16e-3).orElseThrow().misfits())
        .contains(SeatClearance.Feature.MOUTH_EDGE);
    assertThat(GaugeReading.of(support, none, 1.5e-3).orElseThrow().misfits())
        .contains(SeatClearance.Feature.ROOT_EDGE);
  }
}
