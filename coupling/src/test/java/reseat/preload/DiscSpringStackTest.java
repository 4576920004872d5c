package reseat.preload;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class DiscSpringStackTest extends PreloadContract {

  private static final DiscSpring B25 = DiscSpring.ofSteel(25e-3, 12.2e-3, 0.9e-3, 1.6e-3);
  private static final DiscSpring A20 = DiscSpring.ofSteel(20e-3, 10.2e-3, 1.1e-3, 1.55e-3);
  private static final DiscSpring HIGH = DiscSpring.ofSteel(40e-3, 20.4e-3, 1e-3, 2.7e-3);

  @Override
  Stream<PreloadDevice> cases() {
    return Stream.of(
        DiscSpringStack.of(B25, 1, 6, 2.4e-3, 0.02e-3),
        DiscSpringStack.of(A20, 2, 4, 0.8e-3, 0.01e-3),
        DiscSpringStack.of(HIGH, 1, 2, 1.0e-3, 0));
  }

  @Override
  String visitorMethod() {
    return "discSpringStack";
  }

  @Test
  void parallelMultipliesForceAndSeriesMultipliesTravel() {
    double one = B25.force(0.4e-3);
    DiscSpringStack stack = DiscSpringStack.of(B25, 3, 5, 5 * 0.4e-3, 0);
    assertThat(stack.nominalForce()).isCloseTo(3 * one, within(1e-9 * one));
    assertThat(stack.axialStiffness())
        .isCloseTo(3 * B25.stiffness(0.4e-3) / 5, within(1e-9 * stack.axialStiffness()));
    assertThat(stack.storedEnergy()).isCloseTo(15 * B25.energy(0.4e-3), within(1e-12));
  }

  @Test
  void frictionOpensALoopAroundTheNominalForce() {
    DiscSpringStack stack = DiscSpringStack.of(B25, 2, 4, 1.6e-3, 0);
    assertThat(stack.loadingForce()).isGreaterThan(stack.nominalForce());
    assertThat(stack.unloadingForce()).isLessThan(stack.nominalForce());
    assertThat(stack.scatter().halfRange()).isCloseTo(0.04, within(2e-4));
  }

  @Test
  void aSingleStackSetToAStopScattersAboutTwoPercent() {
    DiscSpringStack stack = DiscSpringStack.of(B25, 1, 6, 2.4e-3, 0.005e-3);
    assertThat(stack.scatter().halfRange()).isBetween(0.019, 0.025);
  }

  @Test
  void energyIsTheIntegralOfTheForceAndStiffnessItsDerivative() {
    SplittableRandom random = new SplittableRandom(64);
    for (int i = 0; i < 100; i++) {
      double outer = random.nextDouble(10e-3, 60e-3);
      double thickness = outer * random.nextDouble(0.03, 0.08);
      double height = thickness * random.nextDouble(0.3, 1.9);
      DiscSpring disc =
          DiscSpring.ofSteel(
              outer, outer * random.nextDouble(0.3, 0.7), thickness, thickness + height);
      double s = height * random.nextDouble(0.05, 0.95);
      double h = height * 1e-4;
      assertThat((disc.energy(s + h) - disc.energy(s - h)) / (2 * h))
          .as("seed 64, case %d", i)
          .isCloseTo(disc.force(s), within(1e-6 * Math.abs(disc.force(s)) + 1e-9));
      assertThat((disc.force(s + h) - disc.force(s - h)) / (2 * h))
          .as("seed 64, case %d", i)
          .isCloseTo(
              disc.stiffness(s),
              within(1e-6 * disc.stiffness(0) + 1e-6 * Math.abs(disc.stiffness(s))));
    }
  }

  @Test
  void stressesAreThoseOfATurningRigidSection() {
    // Second road: the section turns by phi about the radius c = (ro - ri)/ln(ro/ri); a point at
    // radius r and height z above the mid plane moves outward by z phi + (r - c) times the drop of
    // the cone, and its hoop strain is that displacement over r, with the plate factor 1/(1 - nu²).
    double s = 0.4e-3;
    double ri = B25.innerDiameter() / 2;
    double ro = B25.outerDiameter() / 2;
    double c = (ro - ri) / Math.log(ro / ri);
    double h0 = B25.flatTravel();
    double before = h0 / (ro - ri);
    double turned = s / (ro - ri);
    double modulus = B25.youngModulus() / (1 - B25.poissonRatio() * B25.poissonRatio());
    double t = B25.thickness() / 2;
    double meanSlope = before - turned / 2;
    double innerUpper = -modulus * turned * (meanSlope * (c - ri) + t) / ri;
    double innerLower = -modulus * turned * (meanSlope * (c - ri) - t) / ri;
    double outerLower = -modulus * turned * (meanSlope * (c - ro) - t) / ro;
    double outerUpper = -modulus * turned * (meanSlope * (c - ro) + t) / ro;
    // The standard's K1 is not quite that of the rigid section, 6/(pi ln delta) ((delta-1)/delta)²,
    // which scales all stresses alike, here by 0.8 %.
    double delta = ro / ri;
    double scale = Math.log(delta) / 6 / ((delta + 1) / (delta - 1) - 2 / Math.log(delta));
    Map<DiscSpring.Point, Double> expected =
        Map.of(
            DiscSpring.Point.UPPER_INNER, innerUpper,
            DiscSpring.Point.LOWER_INNER, innerLower,
            DiscSpring.Point.LOWER_OUTER, outerLower,
            DiscSpring.Point.UPPER_OUTER, outerUpper,
            DiscSpring.Point.PIVOT, -modulus * turned * t / c);
    for (DiscSpring.Point point : DiscSpring.Point.values()) {
      assertThat(B25.stress(point, s) * scale)
          .as("%s", point)
          .isCloseTo(expected.get(point), within(1e-9 * Math.abs(innerUpper)));
    }
    assertThat(scale).isBetween(1.0, 1.01);
  }

  @Test
  void highDiscsSnapThroughAndAreSetOnTheirRisingPart() {
    assertThat(HIGH.snapsThrough()).isTrue();
    assertThat(HIGH.stiffness(HIGH.risingTravel())).isCloseTo(0, within(1e-6 * HIGH.stiffness(0)));
    DiscSpringStack stack = DiscSpringStack.of(HIGH, 1, 1, 0.4e-3, 0);
    assertThat(stack.cautions()).contains(DeviceCaution.SNAPS_THROUGH);
    double most = HIGH.force(HIGH.risingTravel());
    assertThat(stack.settingFor(most)).isPresent();
    assertThat(stack.settingFor(1.001 * most)).isEmpty();
    assertThat(stack.setTo(0.99 * most).orElseThrow().axialStiffness()).isPositive();
  }

  @Test
  void cautionsNameFlatAndRattlingDiscs() {
    assertThat(DiscSpringStack.of(B25, 1, 1, 0.6e-3, 0).cautions())
        .contains(DeviceCaution.NEARLY_FLAT, DeviceCaution.STORED_SPRING_ENERGY)
        .doesNotContain(DeviceCaution.SNAPS_THROUGH);
    assertThat(DiscSpringStack.of(B25, 1, 1, 0.05e-3, 0).cautions())
        .contains(DeviceCaution.HARDLY_COMPRESSED);
    assertThat(DiscSpringStack.of(B25, 1, 1, 0.35e-3, 0).usedTravel())
        .isCloseTo(0.5, within(1e-12));
  }

  @Test
  void aStackGoesSlackAndSolid() {
    DiscSpringStack stack = DiscSpringStack.of(B25, 1, 2, 0.8e-3, 0);
    assertThat(stack.force(-2e-3)).isZero();
    assertThat(stack.force(5e-3)).isEqualTo(B25.force(B25.flatTravel()));
  }

  @Test
  void impossibleStacksAreRefused() {
    assertThatThrownBy(() -> DiscSpringStack.of(B25, 1, 2, 2e-3, 0))
        .hasMessageContaining("it is flat at");
    assertThatThrownBy(() -> DiscSpringStack.of(B25, 0, 2, 1e-3, 0))
        .hasMessageContaining("at least 1");
    assertThatThrownBy(() -> DiscSpring.ofSteel(25e-3, 26e-3, 1e-3, 1.6e-3))
        .hasMessageContaining("not below its outer diameter");
    assertThatThrownBy(() -> DiscSpring.ofSteel(25e-3, 12e-3, 1e-3, 1e-3))
        .hasMessageContaining("nothing to flatten");
    assertThatThrownBy(() -> B25.force(1e-3)).hasMessageContaining("where the disc is flat");
  }
}
