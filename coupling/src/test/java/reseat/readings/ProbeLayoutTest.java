package reseat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import reseat.space.Twist;
import reseat.space.Vec3;

/** Probes to a pose, and the pose to the tool point. */
class ProbeLayoutTest {

  private static final double NOISE = 20e-9;
  private static final Vec3 TOOL = new Vec3(0.047, 0, 0.0152);
  private static final EnumSet<RigidMotion> ALL = EnumSet.allOf(RigidMotion.class);

  /** Three up at the corners, two across, one along: the six of a classic nest. */
  private static List<Probe> six() {
    return List.of(
        probe("a", new Vec3(0.03, 0, 0.01), Vec3.Z),
        probe("b", new Vec3(-0.02, 0.03, 0.01), Vec3.Z),
        probe("c", new Vec3(-0.02, -0.03, 0.01), Vec3.Z),
        probe("d", new Vec3(0.03, 0.03, 0.02), Vec3.Y),
        probe("e", new Vec3(-0.03, 0.03, 0.02), Vec3.Y),
        probe("f", new Vec3(0.04, 0, 0.02), Vec3.X));
  }

  private static Probe probe(String name, Vec3 position, Vec3 direction) {
    return new Probe(name, position, direction, NOISE);
  }

  private static double[] readingsOf(List<Probe> probes, Twist motion) {
    return probes.stream()
        .mapToDouble(p -> p.direction().dot(motion.displacementOf(p.position())))
        .toArray();
  }

  @Test
  void sixProbesGiveBackTheMotionThatMovedThem() {
    Twist motion = new Twist(new Vec3(1e-6, -2e-6, 0.5e-6), new Vec3(3e-6, -5e-6, 8e-6), Vec3.ZERO);
    ProbeLayout layout = ProbeLayout.of(six(), ALL, Vec3.ZERO);
    ProbePose pose = layout.solve(readingsOf(six(), motion));
    assertThat(pose.motion().translation().distanceTo(motion.translation())).isLessThan(1e-18);
    assertThat(pose.motion().rotation().distanceTo(motion.rotation())).isLessThan(1e-16);
    assertThat(pose.shiftOf(TOOL).distanceTo(motion.displacementOf(TOOL))).isLessThan(1e-18);
    assertThat(pose.spare()).isZero();
    assertThat(pose.misfit()).isLessThan(1e-18);
  }

  @Test
  void theSameReadingsToldAtAnotherPointMoveTheToolPointTheSame() {
    double[] readings = {1e-6, 2e-6, -1e-6, 0.3e-6, 0.5e-6, -0.2e-6};
    ProbePose here = ProbeLayout.of(six(), ALL, Vec3.ZERO).solve(readings);
    ProbePose there = ProbeLayout.of(six(), ALL, new Vec3(0.1, -0.2, 0.3)).solve(readings);
    assertThat(there.shiftOf(TOOL).distanceTo(here.shiftOf(TOOL))).isLessThan(1e-17);
    for (Vec3 axis : List.of(Vec3.X, Vec3.Y, Vec3.Z)) {
      assertThat(there.uncertaintyOf(TOOL, axis))
          .isCloseTo(here.uncertaintyOf(TOOL, axis), within(1e-16));
    }
  }

  @Test
  void theStatedUncertaintyOfTheToolPointIsTheScatterOfSimulatedReadings() {
    long seed = 81;
    System.out.println("probe noise simulation, seed " + seed);
    SplittableRandom random = new SplittableRandom(seed);
    List<Probe> seven = new ArrayList<>(six());
    seven.add(new Probe("g", new Vec3(-0.04, 0, 0.03), new Vec3(1, 0, 1), 60e-9));
    ProbeLayout layout = ProbeLayout.of(seven, ALL, Vec3.ZERO);
    int n = 20_000;
    double[] x = new double[n];
    double[] z = new double[n];
    double misfit = 0;
    ProbePose last = null;
    for (int i = 0; i < n; i++) {
      double[] r = seven.stream().mapToDouble(p -> p.noise() * random.nextGaussian()).toArray();
      last = layout.solve(r);
      x[i] = last.shiftOf(TOOL).x();
      z[i] = last.shiftOf(TOOL).z();
      misfit += last.misfit() / n;
    }
    assertThat(Repeatability.of(x).s() / last.uncertaintyOf(TOOL, Vec3.X))
        .isCloseTo(1, within(0.02));
    assertThat(Repeatability.of(z).s() / last.uncertaintyOf(TOOL, Vec3.Z))
        .isCloseTo(1, within(0.02));
    assertThat(misfit).isCloseTo(1, within(0.05));
  }

  @Test
  void threeUprightProbesTellHeightAndTwoTiltsOnly() {
    List<Probe> three = six().subList(0, 3);
    ProbeLayout all = ProbeLayout.of(three, ALL, Vec3.ZERO);
    assertThat(all.rank()).isEqualTo(3);
    assertThat(all.isSufficient()).isFalse();
    assertThatThrownBy(() -> all.solve(new double[3]))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("3 probes tell 3 of the 6 motions asked for");
    ProbeLayout some =
        ProbeLayout.of(three, EnumSet.of(RigidMotion.Z, RigidMotion.RX, RigidMotion.RY), Vec3.ZERO);
    assertThat(some.isSufficient()).isTrue();
    assertThat(some.condition()).isLessThan(3);
    assertThat(some.solve(new double[] {1e-6, 1e-6, 1e-6}).motion().translation().z())
        .isCloseTo(1e-6, within(1e-18));
  }

  @Test
  void parallelProbesOnOneLineDoNotTellTheTurnAboutThatLine() {
    List<Probe> line =
        List.of(
            probe("a", new Vec3(0.03, 0, 0), Vec3.Z),
            probe("b", new Vec3(0, 0, 0), Vec3.Z),
            probe("c", new Vec3(-0.03, 0, 0), Vec3.Z));
    ProbeLayout layout =
        ProbeLayout.of(line, EnumSet.of(RigidMotion.Z, RigidMotion.RX, RigidMotion.RY), Vec3.ZERO);
    assertThat(layout.rank()).isEqualTo(2);
    assertThat(layout.weakestFreedom()).isEqualTo(RigidMotion.RX);
  }

  @Test
  void conditioningDoesNotDependOnTheUnitOfLength() {
    double[] kept = {ProbeLayout.of(six(), ALL, Vec3.ZERO).condition(), 0};
    List<Probe> large =
        six().stream()
            .map(p -> new Probe(p.name(), p.position().times(1000), p.direction(), p.noise()))
            .toList();
    kept[1] = ProbeLayout.of(large, ALL, Vec3.ZERO).condition();
    assertThat(kept[1]).isCloseTo(kept[0], within(1e-9 * kept[0]));
  }

  @Test
  void aProbeThatDisagreesWithARigidBodyShowsInTheMisfit() {
    List<Probe> seven = new ArrayList<>(six());
    seven.add(probe("g", new Vec3(-0.04, 0, 0.03), Vec3.X));
    ProbeLayout layout = ProbeLayout.of(seven, ALL, Vec3.ZERO);
    double[] r = new double[7];
    r[6] = 1e-6;
    // One spare reading: a chance of 1e-6 from the noise alone would be a misfit of 24.
    assertThat(layout.solve(r).misfit()).isGreaterThan(24);
  }
}
