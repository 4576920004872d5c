package reseat.making;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.design.CouplingDesign;
import reseat.design.Support;
import reseat.seat.Ball;
import reseat.seat.ConeSeat;
import reseat.seat.CylinderPair;
import reseat.seat.Flank;
import reseat.seat.FlatSeat;
import reseat.seat.GothicGroove;
import reseat.seat.GrooveExtent;
import reseat.seat.Seat;
import reseat.seat.SeatClearance;
import reseat.seat.SeatFrame;
import reseat.seat.TrihedralSeat;
import reseat.seat.VeeGroove;
import reseat.space.Vec3;

/** Off by its range a ball that rides on one flank touches it at the edge, and not before. */
class CatchRangeTest {

  private static final double R = MeasuredSeats.BALL;

  private static double range(Seat seat) {
    return CatchRange.of(MeasuredSeats.support(seat));
  }

  /** Where a ball rides on one flank, off by some distance to that flank's side. */
  private static Vec3 riding(Seat seat, Flank flank, double off) {
    SeatFrame f = seat.frame();
    Vec3 high = f.point(0, 0, 5 * R);
    Vec3 away = flank.normal(f.point(0, 0, 0)).rejectedFrom(f.up()).unit();
    Vec3 p = high.minus(away.times(off)).minus(f.up().times(5 * R));
    for (int i = 0; i < 60; i++) {
      double slope = flank.normal(p).dot(f.up());
      p = p.minus(f.up().times(flank.gap(p, R) / slope));
    }
    assertThat(flank.gap(p, R)).isCloseTo(0, within(1e-15));
    return p;
  }

  private static double toTheEdge(Seat seat, Flank flank, double off) {
    Ball ball = new Ball(riding(seat, flank, off), R);
    return seat.clearances(ball).stream()
        .filter(c -> c.feature() == SeatClearance.Feature.MOUTH_EDGE)
        .filter(c -> c.flank().equals(flank.name()))
        .mapToDouble(SeatClearance::distance)
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "vee",
        "unlike vee",
        "gothic",
        "unlike gothic",
        "trihedral",
        "unlike trihedral",
        "cone"
      })
  void theFirstFlankToBeLeftByItsEdgeIsLeftAtTheRange(String name) {
    Seat seat = MeasuredSeats.named(name);
    double range = range(seat);
    List<Double> edges = new ArrayList<>();
    for (Flank flank : seat.flanks()) {
      edges.add(toTheEdge(seat, flank, range));
    }
    assertThat(edges.stream().mapToDouble(e -> e).min().orElseThrow()).isCloseTo(0, within(1e-12));
  }

  @Test
  void onPinsABallIsCaughtUntilItStandsOverTheTopOfOne() {
    CylinderPair pins = (CylinderPair) MeasuredSeats.ALL.get("unlike pins");
    Vec3 top = riding(pins, pins.flanks().get(0), range(pins));
    assertThat(pins.flanks().get(0).normal(top).dot(pins.frame().up())).isCloseTo(1, within(1e-12));
    assertThat(range(pins)).isEqualTo(7.5e-3);
  }

  @Test
  void whereNoEdgeIsStatedNothingEndsPlaneFlanksAndAnArchEndsUpright() {
    GrooveExtent none = GrooveExtent.unlimited();
    SeatFrame f = SeatFrame.level(Vec3.ZERO, 0);
    assertThat(range(new VeeGroove(f, 0.7, 0.8, none))).isInfinite();
    assertThat(range(new TrihedralSeat(f, 0.7, 0.8, 0.9, Double.POSITIVE_INFINITY, 0)))
        .isInfinite();
    assertThat(range(new ConeSeat(f, 0.7, Double.POSITIVE_INFINITY, 0))).isInfinite();
    assertThat(range(FlatSeat.forBall(f, R, 8e-3))).isInfinite();
    // the ball's centre is as far aside of the axis as the arch leaves it: 8 - 6.35 - 1 mm
    GothicGroove arch = new GothicGroove(f, 8e-3, 8e-3, 1e-3, 1.2e-3, none);
    assertThat(range(arch)).isCloseTo(8e-3 - R - 1e-3, within(1e-15));
  }

  private static Support named(String name) {
    return MeasuredSeats.support(name, MeasuredSeats.named(name));
  }

  private static CouplingDesign of(String... seats) {
    List<Support> supports = new ArrayList<>();
    for (String seat : seats) {
      supports.add(named(seat));
    }
    return CouplingDesign.builder().supports(supports).build();
  }

  @Test
  void aCouplingIsCaughtWhereAllItsBallsAre() {
    double vee = CatchRange.of(named("vee"));
    double cone = CatchRange.of(named("cone"));
    assertThat(CatchRange.of(of("vee", "cone", "flat"))).isEqualTo(Math.min(vee, cone));
    assertThat(CatchRange.of(of("cone", "vee", "flat"))).isEqualTo(Math.min(vee, cone));
    assertThat(CatchRange.of(of("flat"))).isInfinite();
  }

  /** By plane geometry: what is read over the ball is taken from the ball's diameter. */
  @Test
  void theHolderIsLiftedByTheDeepestBall() {
    // between pins of radius r, s apart, the underside lies r + R - sqrt((R + r)² - (s/2)²) deep
    double pins = 5e-3 + R - Math.sqrt(Math.pow(R + 5e-3, 2) - 8e-3 * 8e-3);
    // in flanks at angle a and a mouth W it lies (W/2) tan a + R - R/cos a deep
    double vee = 10.5e-3 / 2 + R - R * Math.sqrt(2);
    double steep = Math.toRadians(50);
    double cone = 6.5e-3 * Math.tan(steep) + R - R / Math.cos(steep);
    Map<String, Double> alone = Map.of("pins", pins, "vee", vee, "cone", cone, "flat", 0.0);
    alone.forEach(
        (name, depth) ->
            assertThat(CatchRange.liftOut(of(name))).as(name).isCloseTo(depth, within(1e-15)));
    double most = Math.max(pins, Math.max(vee, cone));
    assertThat(CatchRange.liftOut(of("vee", "pins", "cone", "flat")))
        .isCloseTo(most, within(1e-15));
    assertThat(CatchRange.liftOut(of("cone", "flat", "pins", "vee")))
        .isCloseTo(most, within(1e-15));
  }

  @Test
  void aSeatWithoutAFaceSaysNothingOfLifting() {
    VeeGroove vee = (VeeGroove) MeasuredSeats.ALL.get("vee");
    VeeGroove endless =
        new VeeGroove(vee.frame(), vee.leftAngle(), vee.rightAngle(), GrooveExtent.unlimited());
    assertThat(CatchRange.liftOut(MeasuredSeats.design(endless))).isZero();
  }
}
