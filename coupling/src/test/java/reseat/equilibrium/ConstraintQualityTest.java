package reseat.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import reseat.space.RandomDirection;
import org.junit.jupiter.api.Test;
import reseat.design.CouplingDesign;
import reseat.design.Support;
import reseat.numerics.RandomStream;
import reseat.seat.Ball;
import reseat.seat.FlatSeat;
import reseat.seat.SeatFrame;
import reseat.space.Pose;
import reseat.space.Twist;
import reseat.space.Vec3;

class ConstraintQualityTest {

  @Test
  void threeRadialVeesHoldEveryMotionEvenly() {
    // W W^T scaled by the radius is diagonal: 1.5, 1.5, 3, 1.5, 1.5, 3 at 45 deg
    ConstraintQuality q = ConstraintQuality.of(Unconstrained.turned(0, 120, 240));
    assertThat(q.holds()).isTrue();
    assertThat(q.smallest()).isCloseTo(Math.sqrt(1.5), within(1e-12));
    assertThat(q.condition()).isCloseTo(Math.sqrt(2), within(1e-12));
    assertThat(q.guilty()).isEmpty();
  }

  @Test
  void parallelGroovesLeaveASlideFree() {
    ConstraintQuality q = ConstraintQuality.of(Unconstrained.parallelVees());
    assertThat(q.holds()).isFalse();
    assertThat(q.rank()).isEqualTo(5);
    assertThat(q.weakest().words()).isEqualTo("sliding along y");
    assertThat(q.guilty()).hasSize(3);
    assertThat(q.condition()).isInfinite();
  }

  @Test
  void groovesAlongTheCircleLeaveATurnFree() {
    ConstraintQuality q = ConstraintQuality.of(Unconstrained.tangentialVees());
    assertThat(q.rank()).isEqualTo(5);
    assertThat(q.weakest().words())
        .isEqualTo("turning about a line along z through (0.0, 0.0, 0.0) mm");
  }

  @Test
  void groovesWhoseNormalsMeetInAPointLeaveATurnAboutItFree() {
    // every groove at right angles to the line from its ball to (20, 10) mm
    Vec3 meeting = new Vec3(0.020, 0.010, 0);
    double[] azimuth = new double[3];
    for (int i = 0; i < 3; i++) {
      Vec3 d = meeting.minus(Vec3.atAzimuth(Math.toRadians(120 * i)).times(0.05));
      azimuth[i] = Math.toDegrees(Math.atan2(d.y(), d.x())) + 90;
    }
    FreeMotion free = ConstraintQuality.of(Unconstrained.turned(azimuth)).weakest();
    assertThat(free.kind()).isEqualTo(FreeMotion.Kind.TURN);
    assertThat(free.through().distanceTo(meeting)).isLessThan(1e-9);
    assertThat(free.direction().distanceTo(Vec3.Z)).isLessThan(1e-9);
  }

  @Test
  void aNearMissIsPoorAndNamesTheGrooves() {
    ConstraintQuality q = ConstraintQuality.of(Unconstrained.turned(91, 210, 330));
    assertThat(q.holds()).isTrue();
    assertThat(q.condition()).isGreaterThan(ConstraintQuality.POOR);
    assertThat(q.guilty()).isNotEmpty();
    assertThat(q.weakest().words()).startsWith("turning about a line along z");
  }

  @Test
  void oneOfSeveralMotionsHeldAlikeIsCalledSo() {
    assertThat(ConstraintQuality.of(Unconstrained.turned(0, 120, 240)).weakestUnique()).isFalse();
    assertThat(ConstraintQuality.of(Unconstrained.turned(0, 125, 240)).weakestUnique()).isTrue();
    assertThat(ConstraintQuality.of(Unconstrained.parallelVees()).weakestUnique()).isTrue();
    assertThat(ConstraintQuality.of(Unconstrained.turned(91, 210, 330)).weakestUnique()).isTrue();
    // flat vees: sliding along x and along y are held alike, and barely
    ConstraintQuality flat =
        ConstraintQuality.of(
            TestCouplings.threeVees(0.05, 0.00635, Math.toRadians(3), 0, 120, 240).build());
    assertThat(flat.condition()).isGreaterThan(ConstraintQuality.POOR);
    assertThat(flat.weakestUnique()).isFalse();
  }

  @Test
  void aFourthBallIsOneContactTooMany() {
    CouplingDesign three = Unconstrained.turned(0, 120, 240);
    Vec3 at = new Vec3(0, 0, 0);
    List<Support> supports = new ArrayList<>(three.supports());
    supports.add(
        TestCouplings.support(
            "middle", new Ball(at, 0.005), FlatSeat.forBall(SeatFrame.level(at, 0), 0.005, 0.01)));
    ConstraintQuality q = ConstraintQuality.of(three.toBuilder().supports(supports).build());
    assertThat(q.contacts()).isEqualTo(7);
    assertThat(q.rank()).isEqualTo(6);
  }

  @Test
  void twoSupportsLeaveMotionsFree() {
    CouplingDesign three = Unconstrained.turned(0, 120, 240);
    ConstraintQuality q =
        ConstraintQuality.of(three.toBuilder().supports(three.supports().subList(0, 2)).build());
    assertThat(q.contacts()).isEqualTo(4);
    assertThat(q.rank()).isEqualTo(4);
    assertThat(q.holds()).isFalse();
  }

  @Test
  void qualityDoesNotDependOnPlaceOrSize() {
    for (int i = 0; i < 30; i++) {
      RandomStream draw = RandomStream.of(20260251, i);
      CouplingDesign design = RandomCoupling.draw(draw).design();
      Pose move = Pose.of(RandomDirection.of(draw), RandomDirection.of(draw));
      ConstraintQuality here = ConstraintQuality.of(design);
      ConstraintQuality there =
          ConstraintQuality.of(ChangedCoupling.moved(ChangedCoupling.enlarged(design, 30), move));
      assertThat(there.condition())
          .as("layout %d", i)
          .isCloseTo(here.condition(), within(1e-9 * here.condition()));
    }
  }

  @Test
  void motionsAreToldAsSlideTurnOrScrew() {
    Vec3 at = new Vec3(0, 0.010, 0);
    assertThat(words(new Twist(new Vec3(0, -2, 0), Vec3.ZERO, at))).isEqualTo("sliding along y");
    // turning about z through (30, 10) mm: the reference point moves along -y
    assertThat(words(new Twist(new Vec3(0, -0.030, 0), new Vec3(0, 0, 1), at)))
        .isEqualTo("turning about a line along z through (30.0, 10.0, 0.0) mm");
    assertThat(words(new Twist(new Vec3(0, 0, 0.010), new Vec3(0, 0, 1), at)))
        .isEqualTo(
            "turning about a line along z through (0.0, 10.0, 0.0) mm while advancing 0.17 mm per"
                + " degree");
    assertThat(words(new Twist(new Vec3(1, 1, 0), Vec3.ZERO, at)))
        .isEqualTo("sliding along (0.707, 0.707, 0.000)");
  }

  private static String words(Twist twist) {
    return FreeMotion.of(twist, 0.05).words();
  }
}
