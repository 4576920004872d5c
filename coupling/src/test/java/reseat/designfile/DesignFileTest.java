package reseat.designfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import reseat.design.CouplingDesign;
import reseat.design.Half;
import reseat.equilibrium.CouplingModel;
import reseat.numerics.DistributionShape;
import reseat.seat.CylinderPair;
import reseat.seat.FlatSeat;
import reseat.seat.GothicGroove;
import reseat.seat.TrihedralSeat;
import reseat.seat.VeeGroove;
import reseat.space.Vec3;

/** What a design file says, and what it is told when it says something else. */
class DesignFileTest {

  /**
   * The tool post with a preload whose device is not described, so that any force will do, and
   * without tolerances, which name supports that these tests rename.
   */
  private static final String GOOD =
      Starter.TOOL_POST
          .text()
          .replaceFirst("(?s)# Disc springs on.*?(?=\\[holder\\])", "")
          .replaceFirst("(?s)\\[tolerances\\].*", "");

  private static List<String> problems(String text) {
    return DesignFile.read(text).problems().stream().map(p -> p.oneLine("f.toml")).toList();
  }

  private static String with(String old, String replacement) {
    assertThat(GOOD).contains(old);
    return GOOD.replaceFirst(java.util.regex.Pattern.quote(old), replacement);
  }

  private static CouplingDesign design(String text) {
    DesignFile f = DesignFile.read(text);
    assertThat(f.problems()).isEmpty();
    return f.design().orElseThrow();
  }

  @ParameterizedTest
  @EnumSource(value = Starter.class, mode = EnumSource.Mode.EXCLUDE, names = "BALL_MOUNT")
  void everyStarterIsReadWithoutAWarningAndStands(Starter starter) {
    CouplingDesign d = design(starter.text());
    assertThat(CouplingModel.of(d).standing().lifted()).isFalse();
    assertThat(d.title()).isNotBlank();
  }

  @Test
  void theToolPostIsWhatItsFileSays() {
    CouplingDesign d = design(GOOD);
    assertThat(d.ballsOn()).isEqualTo(Half.HOLDER);
    assertThat(d.supports()).extracting(s -> s.name()).containsExactly("front", "left", "right");
    assertThat(d.supports().get(0).ball().radius()).isCloseTo(0.00635, within(1e-15));
    assertThat(d.couplingRadius()).isCloseTo(0.0349250, within(1e-12));
    assertThat(d.supports().get(0).seat()).isInstanceOf(VeeGroove.class);
    assertThat(d.preloads().get(0).force()).isEqualTo(600);
    assertThat(d.preloads().get(0).forceSpread().limit()).isCloseTo(0.02, within(1e-15));
    assertThat(d.holder().mass()).isCloseTo(14 / 9.80665, within(1e-12));
    // machine axes X, Z, height are x, y, z here
    assertThat(d.cases().get(2).load().force()).isEqualTo(new Vec3(-30, -25, -70));
    assertThat(d.cases().get(2).load().at()).isEqualTo(d.toolPoint());
    assertThat(d.targets().repeatability().first()).isCloseTo(0.5e-6, within(1e-18));
    assertThat(d.remount().friction().shape()).isEqualTo(DistributionShape.NORMAL);
    assertThat(d.friction().nominal()).isCloseTo(0.1, within(1e-12));
  }

  @Test
  void theOtherSeatsAreRead() {
    assertThat(design(Starter.PALLET.text()).supports().get(0).seat())
        .isInstanceOf(CylinderPair.class);
    CouplingDesign d = design(Starter.SENSOR_MOUNT.text());
    assertThat(d.supports().get(0).seat()).isInstanceOf(TrihedralSeat.class);
    assertThat(d.supports().get(2).seat()).isInstanceOf(FlatSeat.class);
    CouplingDesign g = design(with("kind = \"vee\"", "kind = \"gothic\"\nflank_radius = \"7 mm\""));
    assertThat(g.supports().get(1).seat()).isInstanceOf(GothicGroove.class);
  }

  @Test
  void theTrihedralVeeFlatShorthandPutsTheVeeTowardTheTrihedral() {
    String text =
        GOOD.substring(0, GOOD.indexOf("[layout]"))
            + """
            [layout]
            kind = "trihedral-vee-flat"
            circle_diameter = "70 mm"
            first_ball_at = "90 deg"
            ball = { diameter = "10 mm", material = "52100" }
            trihedral = { flank_angle = "54 deg", material = "A2" }
            groove = { kind = "vee", flank_angle = "45 deg", material = "A2" }
            flat = { material = "A2" }

            """
            + GOOD.substring(GOOD.indexOf("[[preload]]"));
    CouplingDesign d = design(text);
    Vec3 toward =
        d.supports().get(0).ball().centre().minus(d.supports().get(1).ball().centre()).unit();
    assertThat(d.supports().get(1).seat().frame().axis().dot(toward)).isCloseTo(1, within(1e-12));
    assertThat(d.contactCount()).isEqualTo(6);
  }

  @Test
  void ballsOnTheBaseTurnTheSeatsOver() {
    CouplingDesign d = design(with("balls_on = \"holder\"", "balls_on = \"base\""));
    assertThat(d.supports().get(0).seat().frame().up()).isEqualTo(Vec3.Z.negated());
    double[] one =
        CouplingModel.of(d).standing().contacts().stream().mapToDouble(c -> c.force()).toArray();
    double[] other =
        CouplingModel.of(design(GOOD)).standing().contacts().stream()
            .mapToDouble(c -> c.force())
            .toArray();
    for (int b = 0; b < 3; b++) {
      assertThat(one[2 * b] + one[2 * b + 1])
          .isCloseTo(other[2 * b] + other[2 * b + 1], within(0.05));
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "force = \"600 N\"| force = 600| preload[1].force: \"600\" has no unit",
        "force = \"600 N\"| force = \"600,5 N\"| decimal comma",
        "force = \"600 N\"| force = \"600 Nn\"| unknown unit \"Nn\"",
        "force = \"600 N\"| force = \"600 mm\"| a length",
        "force = \"600 N\"| force = \"-600 N\"| must be above zero",
        "force = \"600 N\"| force = [1]| found a list",
        "force = \"600 N\"| forse = \"600 N\"| did you mean \"force\"?",
        "scatter = \"2 %\"| # nothing| scatter: is missing",
        "kind = \"vee\"| kind = \"vea\"| did you mean \"vee\"?",
        "material = \"A2\"| material = \"A22\"| did you mean \"A2\"?",
        "flank_angle = \"45 deg\"| flank_angle = \"95 deg\"| between 1 and 89 deg",
        "flank_angle = \"45 deg\"| # nothing| flank_angle: is missing",
        "mouth_width = \"0.413 in\"| mouth_width = \"0.05 in\"| narrower than the mouth",
        "gravity = \"-z\"| gravity = \"down\"| allowed is \"+x\"",
        "X = \"+x\"| X = \"+z\"| not at right angles",
        "lift_off_factor = 2| lift_off_factor = 0.5| at least 1",
        "pressure_share = \"100 %\"| pressure_share = \"100\"| must lie between 0 and 2",
        "names = [\"front\", \"left\", \"right\"]| names = [\"a\", \"b\"]| three are wanted",
        "names = [\"front\", \"left\", \"right\"]| names = [\"a\", \"a\", \"b\"]| both called a",
        "weight = \"14 N\"| mass = \"1 kg\"\\nweight = \"14 N\"| both given",
        "surface = \"oiled\"| surface = \"wet\"| allowed is",
        "surface = \"oiled\"| low = 0.2\\nnominal = 0.1| friction must satisfy",
        "name = \"finish\"| name = \"rough\"| two load cases are both called rough",
        "seating_force = \"10 N\"| ramp_steps = 0| whole number from 1",
        "kind = \"three-vee\"| kind = \"four-vee\"| allowed is cone-vee-flat, three-vee, trihedral-vee-flat",
      })
  void eachMistakeHasItsMessageWithItsPlace(String old, String bad, String message) {
    String text = with(old.strip(), bad.strip().replace("\\n", "\n"));
    DesignFile f = DesignFile.read(text);
    assertThat(f.design()).isEmpty();
    assertThat(problems(text))
        .anySatisfy(
            p -> {
              assertThat(p).contains(message.strip());
              assertThat(p).matches("(?s)f\\.toml:\\d+:\\d+: .*");
            });
  }

  @Test
  void linesAndColumnsPointAtTheMistake() {
    assertThat(problems("title = \"x\"\nbals_on = \"holder\"\n"))
        .anyMatch(p -> p.startsWith("f.toml:2:1: bals_on: is not a known key here"));
    String text = with("circle_diameter = \"2.750 in\"", "circle_diameter = \"2.750 inn\"");
    int line = text.substring(0, text.indexOf("2.750 inn")).split("\n", -1).length;
    assertThat(problems(text)).anyMatch(p -> p.startsWith("f.toml:" + line + ":26: "));
  }

  @Test
  void allProblemsComeAtOnce() {
    String text =
        with("force = \"600 N\"", "force = 600")
            .replace("material = \"A2\"", "material = \"A22\"")
            .replace("weight = \"14 N\"", "weight = \"14 kg\"")
            .replace("gravity = \"-z\"", "gravity = \"down\"");
    assertThat(problems(text)).hasSize(4);
  }

  @Test
  void duplicatesAndMissingPartsAreTold() {
    assertThat(problems(with("title =", "title = \"a\"\ntitle =")))
        .anyMatch(p -> p.contains("title"));
    List<String> empty = problems("");
    assertThat(empty).anyMatch(p -> p.contains("layout: is missing"));
    assertThat(empty).anyMatch(p -> p.contains("tool_point: is missing"));
    assertThat(empty).anyMatch(p -> p.contains("holder: is missing"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "circle_diameter = \"2.750 in\"| circle_diameter = \"2.75 mm\"| did you mean \"2.75 in\"?",
        "flank_angle = \"45 deg\"| flank_angle = \"44.3 deg\"| did you mean \"44 deg 30 min\"?",
        "flank_angle = \"45 deg\"| flank_angle = \"44.30 deg\"| did you mean \"44 deg 30 min\"?",
        "force = \"600 N\"| force = \"600 kN\"| did you mean \"600 N\"?",
        "force = \"600 N\"| force = \"600 kgf\"| did you mean \"600 N\"?",
        "diameter = \"1/2 in\"| diameter = \"12.7 um\"| did you mean \"12.7 mm\"?",
        "scatter = \"2 %\"| scatter = \"60 %\"| more than any usual device",
        "at = [\"47.0 mm\", \"0 mm\", \"15.2 mm\"]| at = [\"47 in\", \"0 mm\", \"15 mm\"]| did you mean \"47 mm\"?",
        "circle_diameter = \"2.750 in\"| circle_diameter = \"12 mm\"| 12.000 mm",
      })
  void likelySlipsAreWarnedOfWithBothReadings(String old, String slip, String message) {
    String text = with(old.strip(), slip.strip());
    DesignFile f = DesignFile.read(text);
    assertThat(f.problems())
        .anySatisfy(
            p -> {
              assertThat(p.severity()).isEqualTo(DesignProblem.Severity.WARNING);
              assertThat(p.message()).contains(message.strip());
            });
    assertThat(f.problems()).allMatch(p -> p.severity() == DesignProblem.Severity.WARNING);
  }

  @Test
  void usualAnglesAreNotWarnedOf() {
    for (String angle : new String[] {"45 deg", "44.5 deg", "54.7356 deg", "30.0 deg", "44°30'"}) {
      assertThat(problems(with("flank_angle = \"45 deg\"", "flank_angle = \"" + angle + "\"")))
          .as(angle)
          .isEmpty();
    }
  }

  @Test
  void aMaterialOfTheFileReplacesOrExtendsTheCatalog() {
    String text =
        GOOD
            + """

            [[material]]
            name = "A2"
            based_on = "A2"
            yield_strength = "1500 MPa"

            [[material]]
            name = "house ceramic"
            youngs_modulus = "45 Mpsi"
            poisson_ratio = 0.27
            brittle = true
            flexural_strength = "700 MPa"
            """;
    CouplingDesign d = design(text.replace("material = \"52100\"", "material = \"house ceramic\""));
    assertThat(d.supports().get(0).ballMaterial().brittle()).isTrue();
    assertThat(d.supports().get(0).ballMaterial().elastic().modulus())
        .isCloseTo(45e6 * 6894.757293168, within(1e3));
    assertThat(d.supports().get(0).seatMaterial().flowStrength().orElseThrow().nominal())
        .isEqualTo(1500e6);
  }

  @Test
  void filesThatAreNoTextAreToldSo(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("f.toml");
    Files.write(file, "title = \"44\u00b0\"\n".getBytes(StandardCharsets.ISO_8859_1));
    assertThat(DesignFile.read(file).problems().get(0).oneLine("f.toml"))
        .startsWith("f.toml:1:12: is not UTF-8 text");
    assertThat(DesignFile.read(folder).problems().get(0).message()).startsWith("is a folder");
    Files.writeString(file, "\ufeff" + GOOD.replace("\n", "\r\n"));
    assertThat(DesignFile.read(file).design()).isPresent();
  }

  @Test
  void aBallMountIsSentToTheCommandThatReadsItAndACouplingLikewise() {
    DesignFile design = DesignFile.read(Starter.BALL_MOUNT.text());
    assertThat(design.design()).isEmpty();
    assertThat(design.problems()).hasSize(1);
    assertThat(design.problems().get(0).oneLine("f.toml"))
        .contains("one ball mount", "'reseat mount' reads it", "layout or support");
    BallMountFile mount = BallMountFile.read(Starter.CONE_VEE_FLAT.text());
    assertThat(mount.design()).isEmpty();
    assertThat(mount.problems()).hasSize(1);
    assertThat(mount.problems().get(0).oneLine("f.toml"))
        .contains("whole coupling", "'reseat check' reads such a file");
  }
}
