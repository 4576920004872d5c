package reseat.ballmount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import reseat.ballmount.IndexedSlotting.Cut;
import reseat.ballmount.IndexedSlotting.Effect;
import reseat.ballmount.IndexedSlotting.Limits;
import reseat.ballmount.IndexedSlotting.Source;
import reseat.seat.Ball;
import reseat.seat.Flank;
import reseat.seat.SeatFrame;
import reseat.seat.TrihedralSeat;
import reseat.space.Vec3;

class IndexedSlottingTest {

  private static final double R = 6.35e-3;
  private static final double FORTY_FIVE = Math.toRadians(45);
  private static final double CUBE = Math.atan(Math.sqrt(2));
  private static final double ARCMIN = Math.toRadians(1.0 / 60);
  private static final double[] NONE = new double[3];

  private static IndexedSlotting slots(double angle, Limits limits) {
    return new IndexedSlotting(R, angle, limits);
  }

  private static IndexedSlotting of(double angle) {
    return slots(angle, new Limits(ARCMIN, ARCMIN, ARCMIN, 1e-6));
  }

  @Test
  void withoutErrorsTheSlotsMakeTheTrihedralSeatAsDrawn() {
    Cut cut = of(CUBE).cut(0, NONE, Vec3.ZERO, NONE);
    Vec3 centre = cut.ballCentre();
    TrihedralSeat drawn =
        TrihedralSeat.forBall(SeatFrame.level(centre, 0), R, CUBE, Double.POSITIVE_INFINITY, 0);
    assertThat(drawn.frame().origin().norm()).isLessThan(1e-17);
    for (int k = 0; k < 3; k++) {
      Flank flank = drawn.flanks().get(k);
      assertThat(cut.normals().get(k).distanceTo(flank.normal(centre))).isLessThan(1e-15);
      assertThat(cut.contactAngle(k)).isCloseTo(CUBE, within(1e-15));
      assertThat(cut.forceShare(k)).isCloseTo(1 / (3 * Math.cos(CUBE)), within(1e-14));
      assertThat(flank.gap(new Ball(centre, R).centre(), R)).isCloseTo(0, within(1e-16));
    }
  }

  @Test
  void aSpindleOneMinuteOffLiftsTheBall() {
    // CV-091, computed independently from dz = R sin/cos^2 d: 2.6122 um for R = 6.35 mm, 45 deg
    Effect e = of(FORTY_FIVE).worst(Source.SPINDLE);
    assertThat(1e6 * e.up()).isCloseTo(2.6122, within(0.002));
    assertThat(e.aside()).isCloseTo(0, within(1e-15));
    assertThat(e.contactAngle()).isCloseTo(ARCMIN, within(1e-9));
  }

  @Test
  void anIndexThatIsOffTurnsAContactRoundAndLeavesTheBallWhereItIs() {
    Effect one = of(CUBE).worst(Source.INDEX);
    assertThat(one.up() + one.aside()).isLessThan(1e-16);
    assertThat(one.contactAngle()).isCloseTo(0, within(1e-12));
    // two others drawing nearer to each other by 2 d: N goes with the sine of the angle between
    // them
    assertThat(one.force()).isCloseTo(2 / Math.sqrt(3) * ARCMIN, within(1e-3 * ARCMIN));
  }

  @Test
  void aLeaningAxisCarriesTheBallAside() {
    Effect e = of(CUBE).worst(Source.AXIS);
    assertThat(e.aside()).isCloseTo(R / Math.cos(CUBE) * ARCMIN, within(1e-9));
    assertThat(e.up()).isLessThan(2e-9);
    assertThat(e.contactAngle()).isCloseTo(ARCMIN, within(1e-6));
  }

  @Test
  void oneShallowSlotLiftsAndShiftsTheBall() {
    Cut cut = of(CUBE).cut(0, NONE, Vec3.ZERO, new double[] {1e-6, 0, 0});
    Vec3 off = cut.ballCentre().minus(new Vec3(0, 0, R / Math.cos(CUBE)));
    assertThat(off.z()).isCloseTo(1e-6 / (3 * Math.cos(CUBE)), within(1e-17));
    assertThat(off.x()).isCloseTo(2e-6 / (3 * Math.sin(CUBE)), within(1e-17));
    assertThat(off.y()).isCloseTo(0, within(1e-17));
    Effect all = of(CUBE).worst(Source.DEPTH);
    assertThat(all.up()).isCloseTo(1e-6 / Math.cos(CUBE), within(1e-16));
    assertThat(all.aside()).isCloseTo(4e-6 / (3 * Math.sin(CUBE)), within(1e-16));
  }

  @Test
  void allErrorsTogetherAreTheSumOfEachToFirstOrder() {
    IndexedSlotting s = of(CUBE);
    double up = 0;
    double aside = 0;
    for (Source source : new Source[] {Source.SPINDLE, Source.INDEX, Source.AXIS, Source.DEPTH}) {
      up += s.worst(source).up();
      aside += s.worst(source).aside();
    }
    assertThat(s.worst(Source.ALL).up()).isCloseTo(up, within(2e-3 * up));
    assertThat(s.worst(Source.ALL).aside()).isCloseTo(aside, within(2e-3 * aside));
    assertThat(s.worst(Source.ALL).contactAngle()).isCloseTo(2 * ARCMIN, within(2e-3 * ARCMIN));
  }

  @Test
  void theForcesOnThreeFlanksAsCutBalanceTheAxialForce() {
    Cut cut = of(CUBE).cut(0.01, new double[] {0.02, -0.01, 0.005}, new Vec3(0.01, -0.02, 0), NONE);
    Vec3 sum = Vec3.ZERO;
    for (int k = 0; k < 3; k++) {
      sum = sum.plus(cut.normals().get(k).times(cut.forceShare(k)));
    }
    assertThat(sum.distanceTo(Vec3.Z)).isLessThan(1e-14);
  }

  @Test
  void anErrorOfManyDegreesIsRefused() {
    assertThatThrownBy(() -> new Limits(0.2, 0, 0, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("spindle");
  }
}
