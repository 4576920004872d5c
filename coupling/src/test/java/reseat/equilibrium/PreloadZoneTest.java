package reseat.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.design.CouplingDesign;
import reseat.numerics.RandomStream;
import reseat.space.Vec3;
import reseat.space.Wrench;

class PreloadZoneTest {

  private static final double RC = 0.05;

  private static CouplingDesign coupling() {
    return TestCouplings.threeVees(RC, 0.00635, Math.toRadians(45), 90, 210, 330).build();
  }

  private static PreloadZone zone(Vec3 force, Vec3 through, double share) {
    return PreloadZone.of(
        ContactLines.nominal(coupling()), Wrench.zero(Vec3.ZERO), force, through, 0.2, share);
  }

  @Test
  void aVerticalPreloadMayWanderWithinTheTriangleOfTheBalls() {
    PreloadZone zone = zone(new Vec3(0, 0, -600), new Vec3(0, 0, 0.03), 0);
    assertThat(zone.margin()).as("to the edge of the triangle").isCloseTo(RC / 2, within(1e-12));
    assertThat(zone.corners()).hasSize(3);
    for (Vec3 corner : zone.corners()) {
      assertThat(corner.norm()).isCloseTo(RC, within(1e-12));
    }
  }

  @Test
  void keepingHalfOfEachForceLeavesHalfTheMargin() {
    PreloadZone zone = zone(new Vec3(0, 0, -600), Vec3.ZERO, 0.5);
    assertThat(zone.margin()).isCloseTo(RC / 4, within(1e-12));
    for (Vec3 corner : zone.corners()) {
      assertThat(corner.norm()).isCloseTo(RC / 2, within(1e-12));
    }
  }

  @Test
  void aLineOutsideTheTriangleHasANegativeMargin() {
    PreloadZone zone = zone(new Vec3(0, 0, -600), new Vec3(0, -0.03, 0), 0);
    assertThat(zone.margin()).isCloseTo(-0.005, within(1e-12));
    assertThat(zone.nearest()).startsWith("ball at 90");
  }

  @Test
  void atACornerOfTheZoneTwoContactsAreJustOpen() {
    for (int i = 0; i < 40; i++) {
      RandomCoupling c = RandomCoupling.draw(RandomStream.of(20260241, i));
      Wrench w = c.load().movedTo(Vec3.ZERO);
      Vec3 force = new Vec3(0, 0, -50);
      Wrench others = w.plus(Wrench.ofForce(force.negated(), Vec3.ZERO));
      ContactLines lines = ContactLines.nominal(c.design());
      PreloadZone zone = PreloadZone.of(lines, others, force, Vec3.ZERO, 10, 0);
      assertThat(zone.margin()).isPositive();
      for (Vec3 corner : zone.corners()) {
        double[] n = lines.forces(others.plus(Wrench.ofForce(force, corner)));
        double scale = w.force().norm();
        int open = 0;
        for (double f : n) {
          assertThat(f).isGreaterThan(-1e-9 * scale);
          open += f < 1e-9 * scale ? 1 : 0;
        }
        boolean onWindow = Math.max(Math.abs(corner.x()), Math.abs(corner.y())) > 9.999;
        assertThat(open).as("layout %d", i).isGreaterThanOrEqualTo(onWindow ? 0 : 2);
      }
    }
  }

  @Test
  void aPreloadAlongThePlaneHasNoZoneInIt() {
    assertThatThrownBy(() -> zone(new Vec3(100, 0, 0), Vec3.ZERO, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("along the coupling plane");
  }

  private static void same(PreloadZone one, PreloadZone other) {
    assertThat(other.corners()).hasSameSizeAs(one.corners());
    for (Vec3 corner : one.corners()) {
      assertThat(other.corners())
          .as("a corner at %s", corner)
          .anyMatch(c -> c.minus(corner).norm() < 1e-9);
    }
  }

  @Test
  void theZoneIsWhereTheLineMayPierceThePlaneWhereverItIsNow() {
    Vec3 leaning = new Vec3(120, -80, -600);
    PreloadZone middle = zone(leaning, Vec3.ZERO, 0);
    assertThat(middle.corners()).hasSizeGreaterThanOrEqualTo(3);
    // the same line, stated at another of its points
    same(middle, zone(leaning, leaning.times(-0.0001), 0));
    assertThat(zone(leaning, leaning.times(-0.0001), 0).margin())
        .isCloseTo(middle.margin(), within(1e-12));
    // another line of the same direction: its zone is the same, its margin is not
    for (Vec3 aside : new Vec3[] {new Vec3(0.004, 0.007, 0), new Vec3(-0.006, 0.002, 0.01)}) {
      PreloadZone other = zone(leaning, aside, 0);
      same(middle, other);
      assertThat(other.margin()).isNotCloseTo(middle.margin(), within(1e-6));
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 6, 30, 60})
  void aLeaningLineMayMoveAcrossItselfByTheMarginInEveryDirectionAndNoFurther(double degrees) {
    ContactLines lines = ContactLines.nominal(coupling());
    double lean = Math.toRadians(degrees);
    Vec3 weight = new Vec3(0, 0, -2000);
    Wrench others = Wrench.ofForce(weight, Vec3.ZERO);
    for (double azimuth = 0; azimuth < 6; azimuth += 0.7) {
      Vec3 force =
          Vec3.atAzimuth(azimuth)
              .times(Math.sin(lean))
              .minus(Vec3.Z.times(Math.cos(lean)))
              .times(300);
      Vec3 through = new Vec3(0.002, 0.001, 0);
      PreloadZone zone = PreloadZone.of(lines, others, force, through, 1, 0);
      // shifts across the line, all round: the nearest at which a contact force is nothing
      Vec3 side = force.anyPerpendicular();
      Vec3 other = force.unit().cross(side);
      double least = Double.POSITIVE_INFINITY;
      double[] here = lines.forces(others.plus(Wrench.ofForce(force, through)));
      for (int i = 0; i < 20000; i++) {
        double turn = 2 * Math.PI * i / 20000;
        Vec3 way = side.times(Math.cos(turn)).plus(other.times(Math.sin(turn)));
        double[] there = lines.forces(others.plus(Wrench.ofForce(force, through.plus(way))));
        for (int k = 0; k < 6; k++) {
          if (there[k] < here[k]) {
            least = Math.min(least, here[k] / (here[k] - there[k]));
          }
        }
      }
      assertThat(zone.margin()).isCloseTo(least, within(1e-6 * least));
    }
  }

  @Test
  void theZoneDoesNotDependOnTheSizeOfTheForce() {
    PreloadZone one = zone(new Vec3(120, -80, -600), Vec3.ZERO, 0.2);
    for (double factor : new double[] {1e-4, 1e4}) {
      PreloadZone other = zone(new Vec3(120, -80, -600).times(factor), Vec3.ZERO, 0.2);
      same(one, other);
      assertThat(other.margin()).isCloseTo(one.margin(), within(1e-9));
      assertThatThrownBy(() -> zone(new Vec3(100, 0, 1e-8).times(factor), Vec3.ZERO, 0))
          .hasMessageContaining("along the coupling plane");
    }
  }
}
