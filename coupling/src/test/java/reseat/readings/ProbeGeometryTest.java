package reseat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import reseat.space.Vec3;

/** Four upright probes on a cross of 0.1 m, worked out by hand. */
class ProbeGeometryTest {

  private static final double ARM = 0.1;
  private static final double NOISE = 2e-8;
  private static final EnumSet<RigidMotion> NOD =
      EnumSet.of(RigidMotion.Z, RigidMotion.RX, RigidMotion.RY);
  private static final Offset<Double> CLOSE = within(1e-17);

  private static final List<Probe> CROSS =
      List.of(
          up("E", new Vec3(ARM, 0, 0)),
          up("P", new Vec3(0, ARM, 0)),
          up("W", new Vec3(-ARM, 0, 0)),
          up("S", new Vec3(0, -ARM, 0)));

  private static Probe up(String name, Vec3 at) {
    return new Probe(name, at, Vec3.Z, NOISE);
  }

  private static ProbeLayout cross(Vec3 at) {
    return ProbeLayout.of(CROSS, NOD, at);
  }

  @Test
  void heightIsTheMeanAndTiltTheDifferenceOverTheArms() {
    // Up by 2 um, 3 um over 0.1 m about x, 1 um over 0.1 m about y, and 0.5 um of a warp.
    ProbePose p =
        cross(Vec3.ZERO).solve(new double[] {1e-6 + 5e-7, 5e-6 - 5e-7, 3e-6 + 5e-7, -1e-6 - 5e-7});
    assertThat(p.motion().translation().z()).isCloseTo(2e-6, CLOSE);
    assertThat(p.motion().rotation().x()).isCloseTo(3e-5, within(1e-16));
    assertThat(p.motion().rotation().y()).isCloseTo(1e-5, within(1e-16));
    assertThat(p.motion().rotation().z()).isZero();
    assertThat(p.motion().translation().x()).isZero();
    // four residuals of 25 noises
    assertThat(p.misfit()).isCloseTo(4 * 625, within(1e-6));
    assertThat(p.spare()).isEqualTo(1);
    // z of a point: height + y times the tilt about x - x times that about y
    assertThat(p.shiftOf(new Vec3(0.2, 0.3, 0)).z()).isCloseTo(9e-6, CLOSE);
  }

  @Test
  void theUncertaintyIsTheNoiseOverTheRootOfFourAndOfTheArms() {
    ProbePose p = cross(Vec3.ZERO).solve(new double[4]);
    assertThat(p.uncertainty(RigidMotion.Z)).isCloseTo(NOISE / 2, CLOSE);
    assertThat(p.uncertainty(RigidMotion.RX)).isCloseTo(NOISE / ARM / Math.sqrt(2), within(1e-16));
    assertThat(p.uncertainty(RigidMotion.RY)).isCloseTo(NOISE / ARM / Math.sqrt(2), within(1e-16));
    assertThat(p.uncertainty(RigidMotion.X)).isZero();
    double square = 0.25 + (0.3 * 0.3 + 0.2 * 0.2) / ARM / ARM / 2;
    assertThat(p.uncertaintyOf(new Vec3(0.2, 0.3, 0.4), Vec3.Z))
        .isCloseTo(NOISE * Math.sqrt(square), CLOSE);
    // sideways the point moves by the tilts at its height
    assertThat(p.uncertaintyOf(new Vec3(0.2, 0.3, 0.4), Vec3.X))
        .isCloseTo(NOISE * 0.4 / ARM / Math.sqrt(2), CLOSE);
  }

  @Test
  void theConditionComparesTiltAtTheDistanceOfTheProbesWithHeight() {
    // Tilt moves two probes of four by the arm, height all four by one: root 2.
    assertThat(cross(Vec3.ZERO).condition()).isCloseTo(Math.sqrt(2), within(1e-12));
    // Told 0.1 m below, the probes are root 2 farther and tilt weighs half as much.
    assertThat(cross(new Vec3(0, 0, -ARM)).condition()).isCloseTo(2, within(1e-12));
    assertThat(cross(Vec3.ZERO).freedoms())
        .containsExactly(RigidMotion.Z, RigidMotion.RX, RigidMotion.RY);
    assertThat(cross(Vec3.ZERO).probes()).isEqualTo(CROSS);
    assertThat(cross(Vec3.ZERO).rank()).isEqualTo(3);
  }

  @Test
  void aProbeAtThePointItselfTellsItsMovementOnly() {
    Probe here = up("H", Vec3.X);
    ProbeLayout height = ProbeLayout.of(List.of(here), EnumSet.of(RigidMotion.Z), Vec3.X);
    assertThat(height.condition()).isEqualTo(1);
    assertThat(height.solve(new double[] {3e-6}).motion().translation().z()).isCloseTo(3e-6, CLOSE);
    ProbeLayout both =
        ProbeLayout.of(List.of(here), EnumSet.of(RigidMotion.Z, RigidMotion.RY), Vec3.X);
    assertThat(both.isSufficient()).isFalse();
    assertThat(both.weakestFreedom()).isEqualTo(RigidMotion.RY);
    assertThatThrownBy(both::condition)
        .hasMessage(
            "1 probes tell 1 of the 2 motions asked for; not seen: a combination with mostly tilt"
                + " about y");
  }

  @Test
  void theWorstToldMotionIsThatWithTheShortestArm() {
    List<Probe> narrow =
        List.of(
            up("E", new Vec3(0.01, 0, 0)),
            up("W", new Vec3(-0.01, 0, 0)),
            up("P", new Vec3(0, ARM, 0)),
            up("S", new Vec3(0, -ARM, 0)));
    assertThat(ProbeLayout.of(narrow, NOD, Vec3.ZERO).weakestFreedom()).isEqualTo(RigidMotion.RY);
    double length = Math.sqrt((ARM * ARM + 0.01 * 0.01) / 2);
    assertThat(ProbeLayout.of(narrow, NOD, Vec3.ZERO).condition())
        .isCloseTo(2 / (Math.sqrt(2) * 0.01 / length), within(1e-9));
  }

  @Test
  void theSixMotionsAreOrderedAsATwist() {
    assertThat(Arrays.stream(RigidMotion.values()).map(RigidMotion::place))
        .containsExactly(0, 1, 2, 3, 4, 5);
    assertThat(Arrays.stream(RigidMotion.values()).map(RigidMotion::axis))
        .containsExactly(Vec3.X, Vec3.Y, Vec3.Z, Vec3.X, Vec3.Y, Vec3.Z);
    assertThat(Arrays.stream(RigidMotion.values()).filter(RigidMotion::isRotation))
        .containsExactly(RigidMotion.RX, RigidMotion.RY, RigidMotion.RZ);
    assertThat(RigidMotion.RZ.words()).isEqualTo("turn about z");
  }

  /** Wear-in of one mount, then heights of -1, 0 and 1 um and tilts of 10, 20 and 0 urad. */
  private static MeasuredSeries series() throws Exception {
    return WrittenReadings.read(
        """
        e [um],P [um],W [um],S [um]
        90,0,0,0
        -1,0,-1,-2
        0,2,0,-2
        1,1,1,1
        """);
  }

  @Test
  void theScatterOfMotionsAndOfThePointIsThatOfThreeMounts() throws Exception {
    PoseScatter s = PoseScatter.of(cross(Vec3.ZERO), series(), 1);
    assertThat(s.poses()).hasSize(3);
    assertThat(s.layout().probes()).isEqualTo(CROSS);
    assertThat(s.motions().keySet())
        .isEqualTo(Set.of(RigidMotion.Z, RigidMotion.RX, RigidMotion.RY));
    assertThat(s.motions().get(RigidMotion.Z).s()).isCloseTo(1e-6, CLOSE);
    assertThat(s.motions().get(RigidMotion.Z).probeNoise()).isCloseTo(NOISE / 2, CLOSE);
    assertThat(s.motions().get(RigidMotion.RX).s()).isCloseTo(1e-5, within(1e-16));
    assertThat(s.motions().get(RigidMotion.RY).s()).isCloseTo(0, within(1e-16));
    // At y = 0.1 heights are 0, 2 and 1 um.
    PoseScatter.Figure at = s.scatterOf(new Vec3(0, ARM, 0), Vec3.Z);
    assertThat(at.s()).isCloseTo(1e-6, CLOSE);
    assertThat(at.probeNoise()).isCloseTo(NOISE * Math.sqrt(0.75), CLOSE);
    assertThat(s.misfit().orElseThrow()).isCloseTo(0, within(1e-9));
  }

  @Test
  void aWarpOfTheHolderShowsInTheMisfitAndWithoutSpareProbesNothingDoes() throws Exception {
    MeasuredSeries warped =
        WrittenReadings.read("E [um],P [um],W [um],S [um]\n1,-1,1,-1\n-1,1,-1,1\n");
    PoseScatter s = PoseScatter.of(cross(Vec3.ZERO), warped, 0);
    // Two mounts, each four residuals of 1 um over 0.02 um, over one spare and one freedom.
    assertThat(s.misfit().orElseThrow()).isCloseTo(50 * Math.sqrt(8), within(1e-6));
    ProbeLayout three = ProbeLayout.of(CROSS.subList(0, 3), NOD, Vec3.ZERO);
    assertThat(PoseScatter.of(three, warped, 0).misfit()).isEmpty();
  }

  @Test
  void aProbeThatReadsAnglesAndASingleMountAreRefused() throws Exception {
    MeasuredSeries angles =
        WrittenReadings.read("E [um],P [urad],W [um],S [um]\n1,-1,1,-1\n-1,1,-1,1\n");
    assertThatThrownBy(() -> PoseScatter.of(cross(Vec3.ZERO), angles, 0))
        .hasMessage("probe P has no column of lengths in run.csv, which has E, P, W, S");
    assertThatThrownBy(() -> PoseScatter.of(cross(Vec3.ZERO), series(), 3))
        .hasMessage("scatter of poses needs at least 2 mounts of one holder");
    assertThat(PoseScatter.of(cross(Vec3.ZERO), series(), 2).poses()).hasSize(2);
    ProbeLayout six = ProbeLayout.of(CROSS, EnumSet.allOf(RigidMotion.class), Vec3.ZERO);
    assertThatThrownBy(() -> PoseScatter.of(six, series(), 0))
        .hasMessageContaining("4 probes tell 3 of the 6 motions");
  }
}
