package reseat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.csv.CsvProblem;
import reseat.csv.UnreadableCsv;
import reseat.space.Twist;
import reseat.space.Vec3;

/** Readings of several probes over many mounts to the scatter of the holder and the tool point. */
class PoseScatterTest {

  private static final String LAYOUT =
      """
      # invented
      probe, x [mm], y [mm], z [mm], dx, dy, dz, noise [um]
      Z1, 30, 0, 10, 0, 0, 1, 0.02
      Z2, -20, 30, 10, 0, 0, 2, 0.02
      Z3, -20, -30, 10, 0, 0, 1, 0.02
      Y1, 30, 30, 20, 0, 1, 0, 0.02
      Y2, -30, 30, 20, 0, 1, 0, 0.02
      X1, 40, 0, 20, 1, 0, 0, 0.02
      X2, -40, 0, 30, 1, 0, 0, 0.02
      """;

  private static final Vec3 TOOL = new Vec3(0.047, 0, 0.0152);

  @TempDir private Path folder;

  private List<Probe> probes(String text) throws IOException, UnreadableCsv {
    return ProbeLayoutReader.read(Files.writeString(folder.resolve("layout.csv"), text));
  }

  private List<String> problems(String text) {
    return catchThrowableOfType(UnreadableCsv.class, () -> probes(text)).problems().stream()
        .map(CsvProblem::message)
        .toList();
  }

  private static MeasuredSeries series(List<Probe> probes, int mounts, boolean holders)
      throws Exception {
    SplittableRandom random = new SplittableRandom(121);
    StringBuilder text = new StringBuilder("cycle");
    probes.forEach(p -> text.append(',').append(p.name()).append(" [um]"));
    text.append(holders ? ",holder\n" : "\n");
    for (int i = 0; i < mounts; i++) {
      Twist moved =
          new Twist(
              new Vec3(
                  1e-7 * random.nextGaussian(),
                  2e-7 * random.nextGaussian(),
                  0.5e-7 * random.nextGaussian() + (holders ? 1e-5 * (i % 2) : 0)),
              new Vec3(0, 4e-6 * random.nextGaussian(), 0),
              Vec3.ZERO);
      text.append(i + 1);
      for (Probe p : probes) {
        double reading =
            p.direction().dot(moved.displacementOf(p.position()))
                + p.noise() * random.nextGaussian();
        text.append(String.format(Locale.ROOT, ",%.6f", 1e6 * reading));
      }
      text.append(holders ? "," + i % 2 + "\n" : "\n");
    }
    return ReadingsReader.read(
        "probes.csv", new ByteArrayInputStream(text.toString().getBytes(StandardCharsets.UTF_8)));
  }

  @Test
  void motionsThatWerePutInComeBackWithTheNoiseBesideThem() throws Exception {
    List<Probe> seven = probes(LAYOUT);
    ProbeLayout layout = ProbeLayout.of(seven, EnumSet.allOf(RigidMotion.class), Vec3.ZERO);
    PoseScatter s = PoseScatter.of(layout, series(seven, 2000, false), 0);
    Map<RigidMotion, PoseScatter.Figure> m = s.motions();
    assertThat(m.get(RigidMotion.X).s())
        .isCloseTo(Math.hypot(1e-7, m.get(RigidMotion.X).probeNoise()), within(4e-9));
    assertThat(m.get(RigidMotion.RY).s())
        .isCloseTo(Math.hypot(4e-6, m.get(RigidMotion.RY).probeNoise()), within(2e-7));
    assertThat(m.get(RigidMotion.RX).s())
        .isCloseTo(m.get(RigidMotion.RX).probeNoise(), within(2e-8));
    double lever = Math.hypot(0.5e-7, 4e-6 * TOOL.x());
    assertThat(s.scatterOf(TOOL, Vec3.Z).s())
        .isCloseTo(Math.hypot(lever, s.scatterOf(TOOL, Vec3.Z).probeNoise()), within(0.05 * lever));
    assertThat(s.misfit().orElseThrow()).isCloseTo(1, within(0.06));
    assertThat(s.poses()).hasSize(2000);
  }

  @Test
  void holdersApartDoNotCountAsScatter() throws Exception {
    List<Probe> seven = probes(LAYOUT);
    ProbeLayout layout = ProbeLayout.of(seven, EnumSet.allOf(RigidMotion.class), Vec3.ZERO);
    PoseScatter s = PoseScatter.of(layout, series(seven, 400, true), 0);
    assertThat(s.motions().get(RigidMotion.Z).s()).isLessThan(1e-7);
  }

  @Test
  void aProbeWithoutAColumnIsNamed() throws Exception {
    List<Probe> seven = probes(LAYOUT);
    List<Probe> renamed = probes(LAYOUT.replace("X2", "Q9"));
    ProbeLayout layout = ProbeLayout.of(renamed, EnumSet.allOf(RigidMotion.class), Vec3.ZERO);
    assertThatThrownBy(() -> PoseScatter.of(layout, series(seven, 5, false), 0))
        .hasMessageContaining("probe Q9 has no column of lengths in probes.csv, which has Z1");
  }

  @Test
  void directionsAreTakenWhateverTheirLength() throws Exception {
    assertThat(probes(LAYOUT).get(1).direction()).isEqualTo(Vec3.Z);
    assertThat(probes(LAYOUT).get(0).position().x()).isCloseTo(0.03, within(1e-15));
    assertThat(probes(LAYOUT).get(0).noise()).isCloseTo(2e-8, within(1e-20));
  }

  @Test
  void aLayoutFileThatIsWrongSaysWhere() {
    assertThat(problems("probe, x [mm], y [mm], z [mm], dx, dy, dz\n"))
        .anySatisfy(m -> assertThat(m).contains("column noise is missing"));
    assertThat(problems("probe, x [kg], y [mm], z [mm], dx, dy, dz, noise [um]\n"))
        .anySatisfy(m -> assertThat(m).contains("column x: [kg] is a mass, not a length"));
    assertThat(problems(LAYOUT.replace("30, 0, 10, 0, 0, 1", "30, 0, 10, 0, 0, 0")))
        .containsExactly("probe Z1 has no direction: dx, dy, dz are all 0");
    assertThat(problems(LAYOUT.replace("0, 1, 0.02", "0, 1, -0.02")))
        .allSatisfy(m -> assertThat(m).contains("the noise must be above 0"));
    assertThat(problems(LAYOUT.replace("Z1, 30", "Z1, thirty")))
        .containsExactly(
            "column x: found \"thirty\", not a number; put remarks in a column named note");
    assertThat(problems("")).hasSize(1);
    assertThat(problems("probe, x [mm], y [mm], z [mm], dx, dy, dz, noise [um]\n"))
        .allSatisfy(m -> assertThat(m).contains("the file has no rows"));
  }
}
