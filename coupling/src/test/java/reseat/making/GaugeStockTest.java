package reseat.making;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import reseat.design.ShopFloor;
import reseat.design.Support;
import reseat.seat.Ball;
import reseat.seat.GrooveExtent;
import reseat.seat.SeatClearance.Feature;
import reseat.seat.SeatFrame;
import reseat.seat.VeeGroove;
import reseat.space.Vec3;

/** Gauges that the shop owns are taken where they fit; where there are none, sizes are proposed. */
class GaugeStockTest {

  private static final double RIGHT_ANGLE = Math.toRadians(45);

  private static ShopFloor owning(List<Double> balls, List<Double> pins) {
    return ShopFloor.UNKNOWN.withGauges(balls, pins);
  }

  private static Support named(String seat) {
    return MeasuredSeats.support(MeasuredSeats.named(seat));
  }

  /** In 90 degrees a gauge of diameter d touches 0.3536 d beside the middle. */
  private static Support inRightAngle(double ball, double mouth, double root) {
    SeatFrame f = SeatFrame.level(Vec3.ZERO, 0);
    GrooveExtent extent = new GrooveExtent(mouth, Double.POSITIVE_INFINITY, root, 10e-3);
    VeeGroove vee = VeeGroove.forBall(f, ball / 2, RIGHT_ANGLE, extent);
    return MeasuredSeats.support(vee).withBall(new Ball(Vec3.ZERO, ball / 2));
  }

  private static Optional<GaugeStock.Pair> proposed(Support support, boolean inch) {
    return GaugeStock.of(support, ShopFloor.UNKNOWN, inch).anglePair();
  }

  @Test
  void pinsGoIntoGroovesAndBallsIntoEverySeat() {
    ShopFloor shop = owning(List.of(12.7e-3, 11e-3), List.of(8e-3));
    assertThat(GaugeStock.of(named("vee"), shop, false).heightGauges())
        .containsExactly(8e-3, 11e-3, 12.7e-3);
    assertThat(GaugeStock.of(named("trihedral"), shop, false).heightGauges())
        .containsExactly(11e-3, 12.7e-3);
    assertThat(GaugeStock.of(named("flat"), shop, false).heightGauges())
        .containsExactly(11e-3, 12.7e-3);
  }

  @Test
  void whatReachesOverAnEdgeOrDoesNotGoInIsNamedAndNotUsed() {
    GaugeStock vee = GaugeStock.of(named("vee"), owning(List.of(11e-3, 16e-3), List.of()), false);
    assertThat(vee.heightGauges()).containsExactly(11e-3);
    assertThat(vee.unusable())
        .containsExactly(new GaugeStock.Unusable("one", 16e-3, List.of(Feature.MOUTH_EDGE)));
    GaugeStock arch = GaugeStock.of(named("gothic"), owning(List.of(18e-3), List.of()), false);
    assertThat(arch.unusable()).containsExactly(new GaugeStock.Unusable("one", 18e-3, List.of()));
    assertThat(arch.heightGauges()).as("the design's own").containsExactly(12.7e-3);
  }

  @Test
  void onlyPlaneFlanksHaveAnAngleToTell() {
    ShopFloor shop = owning(List.of(11e-3, 13e-3), List.of());
    for (String seat : List.of("flat", "pins", "gothic")) {
      GaugeStock stock = GaugeStock.of(named(seat), shop, false);
      assertThat(stock.anglePair()).as(seat).isEmpty();
      assertThat(stock.heightGauges()).as(seat).containsExactly(11e-3, 13e-3);
    }
    assertThat(GaugeStock.of(named("vee"), shop, false).anglePair())
        .contains(new GaugeStock.Pair(11e-3, 13e-3));
  }

  @Test
  void gaugesOfNearlyOneSizeTellNoAngleSoThatOthersAreProposed() {
    Support vee = inRightAngle(12e-3, 10.5e-3, 1.5e-3);
    ShopFloor alike = owning(List.of(10e-3, 11.4e-3), List.of());
    assertThat(GaugeStock.of(vee, alike, false).anglePair()).isEqualTo(proposed(vee, false));
    ShopFloor spread = owning(List.of(10e-3, 10.5e-3, 11.6e-3), List.of());
    assertThat(GaugeStock.of(vee, spread, false).anglePair())
        .contains(new GaugeStock.Pair(10e-3, 11.6e-3));
  }

  /** A mouth of 10.5 mm holds less than 14.85 mm; one step is left to the edge. */
  @Test
  void aPairIsProposedInWholeStepsThatStayAStepInsideTheEdges() {
    GaugeStock.Pair metric = proposed(inRightAngle(12e-3, 10.5e-3, 1.5e-3), false).orElseThrow();
    assertThat(metric.large()).isCloseTo(14e-3, within(1e-15));
    assertThat(metric.small()).as("over half the ball").isCloseTo(6.5e-3, within(1e-15));
    GaugeStock.Pair inch = proposed(inRightAngle(12e-3, 10.5e-3, 1.5e-3), true).orElseThrow();
    assertThat(inch.large()).isCloseTo(17 * 25.4e-3 / 32, within(1e-15));
    assertThat(inch.small()).isCloseTo(8 * 25.4e-3 / 32, within(1e-15));
    // a root of 7 mm holds more than 9.899 mm
    GaugeStock.Pair rooted = proposed(inRightAngle(12e-3, 10.5e-3, 7e-3), false).orElseThrow();
    assertThat(rooted.small()).isCloseTo(10.5e-3, within(1e-15));
  }

  @Test
  void withoutEdgesAPairSpansHalfTheBallToEitherSide() {
    Support open = inRightAngle(12.2e-3, Double.POSITIVE_INFINITY, 0);
    GaugeStock.Pair pair = proposed(open, false).orElseThrow();
    assertThat(pair.small()).isCloseTo(6.5e-3, within(1e-15));
    assertThat(pair.large()).isCloseTo(18e-3, within(1e-15));
  }

  @Test
  void betweenNarrowEdgesNoPairIsProposed() {
    // 12.02 to 13.15 mm: of whole half millimetres 12.5 and 13 alone
    assertThat(proposed(inRightAngle(12.7e-3, 9.3e-3, 8.5e-3), false)).isEmpty();
    // 11.88 to 13.86 mm: 12.5 to 13, too much alike
    assertThat(proposed(inRightAngle(12.7e-3, 9.8e-3, 8.4e-3), false)).isEmpty();
    // 10.32 to 13.86 mm: 11 to 13
    GaugeStock.Pair wide = proposed(inRightAngle(12.7e-3, 9.8e-3, 7.3e-3), false).orElseThrow();
    assertThat(wide.small()).isCloseTo(11e-3, within(1e-15));
    assertThat(wide.large()).isCloseTo(13e-3, within(1e-15));
    // a ball of less than a step, below which there is nothing
    assertThat(proposed(inRightAngle(0.6e-3, Double.POSITIVE_INFINITY, 0), false)).isEmpty();
  }
}
