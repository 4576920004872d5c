package reseat.designfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.design.Preload;
import reseat.preload.DiscSpringStack;
import reseat.preload.MagnetPair;
import reseat.preload.TightenedScrew;

/** What makes the preload: the setting gives the force, the force gives the setting. */
class DeviceReaderTest {

  private static final String GOOD = Starter.TOOL_POST.text();
  private static final String HEAD = GOOD.substring(0, GOOD.indexOf("[[preload]]"));
  private static final String TAIL = GOOD.substring(GOOD.indexOf("[holder]"));

  private static DesignFile file(String preload) {
    return DesignFile.read(HEAD + "[[preload]]\n" + preload + "\n" + TAIL);
  }

  private static Preload preload(String text) {
    DesignFile f = file(text);
    assertThat(f.problems()).isEmpty();
    return f.design().orElseThrow().preloads().get(0);
  }

  private static List<String> told(String text) {
    return file(text).problems().stream().map(p -> p.oneLine("f.toml")).toList();
  }

  private static final String DISCS =
      "kind = \"disc-springs\", outer_diameter = \"16 mm\", inner_diameter = \"8.2 mm\","
          + " thickness = \"0.9 mm\", free_height = \"1.25 mm\", series = 8,"
          + " deflection_tolerance = \"0.02 mm\"";

  @Test
  void theForceSetsTheStack() {
    Preload p = preload("force = \"600 N\"\ndevice = { " + DISCS + " }");
    DiscSpringStack stack = (DiscSpringStack) p.modelled().orElseThrow();
    assertThat(stack.nominalForce()).isCloseTo(600, within(1e-6));
    assertThat(p.forceSpread().limit()).isCloseTo(stack.scatter().halfRange(), within(1e-15));
    assertThat(p.device()).isEqualTo("disc-springs");
  }

  @Test
  void theStackSetsTheForce() {
    Preload p = preload("device = { " + DISCS + ", deflection = \"1.2 mm\" }");
    assertThat(p.force()).isEqualTo(p.modelled().orElseThrow().nominalForce());
  }

  @Test
  void anotherForceResetsTheDevice() {
    Preload p = preload("force = \"600 N\"\ndevice = { " + DISCS + " }").withForce(300);
    assertThat(p.modelled().orElseThrow().nominalForce()).isCloseTo(300, within(1e-6));
    assertThat(p.withForce(1e5).modelled()).isEmpty();
  }

  @Test
  void aScrewScattersAsItsMethodDoes() {
    Preload p =
        preload(
            "device = { kind = \"screw\", thread = \"5/16-24\", torque = \"1 N·m\", nut_factor ="
                + " 0.2, grip_length = \"40 mm\", material = \"screw 8.8\", method = \"by feel\""
                + " }");
    TightenedScrew screw = (TightenedScrew) p.modelled().orElseThrow();
    // F = T/(K d), d = 5/16 in
    assertThat(screw.nominalForce()).isCloseTo(1 / (0.2 * 0.0079375), within(1e-9));
    assertThat(p.forceSpread().limit()).isEqualTo(0.35);
  }

  @Test
  void aTorqueWrenchIsAScrewWhoseFrictionIsEstimatedUnlessTheFileKnowsBetter() {
    String wrench =
        "device = { kind = \"torque wrench\", thread = \"5/16-24\", torque = \"1 N·m\", nut_factor ="
            + " 0.2, grip_length = \"40 mm\", material = \"screw 8.8\"";
    Preload p = preload(wrench + " }");
    assertThat(p.modelled().orElseThrow()).isInstanceOf(TightenedScrew.class);
    assertThat(p.forceSpread().limit()).isEqualTo(0.28);
    Preload tried = preload(wrench + ", method = \"torque found by trial\" }");
    assertThat(tried.forceSpread().limit()).isEqualTo(0.23);
  }

  @Test
  void aMagnetsGapFollowsFromItsPull() {
    Preload p =
        preload(
            "force = \"20 N\"\ndevice = { kind = \"magnets\", opposite = \"equal magnet\", diameter"
                + " = \"10 mm\", length = \"5 mm\", remanence_tesla = 1.2, gap_tolerance = \"0.02"
                + " mm\" }");
    MagnetPair pair = (MagnetPair) p.modelled().orElseThrow();
    // 20.40375 N at 0.5 mm, computed independently from the stated integral
    assertThat(pair.gap()).isBetween(0.5e-3, 0.6e-3);
    assertThat(p.forceSpread().limit()).isBetween(0.005, 0.05);
  }

  @Test
  void theRemainingDevicesAreRead() {
    assertThat(
            preload("device = { kind = \"weight\", mass = \"10 kg\", drop = \"0.1 m\" }").force())
        .isCloseTo(98.0665, within(1e-9));
    assertThat(
            preload(
                    "device = { kind = \"air-cylinder\", bore = \"20 mm\", pressure = \"0.5 MPa\","
                        + " pressure_scatter = \"2 %\", seal_friction = \"3 N\" }")
                .force())
        .isCloseTo(0.5e6 * Math.PI / 4 * 4e-4, within(1e-9));
    // k = 6.4534505 N/mm, computed independently from G d^4/(8 D^3 n)
    assertThat(
            preload(
                    "device = { kind = \"spring\", wire = \"2 mm\", mean_diameter = \"16 mm\","
                        + " active_coils = 6, free_length = \"50 mm\", deflection = \"10 mm\","
                        + " deflection_tolerance = \"0.1 mm\", shear_strength = \"700 MPa\" }")
                .force())
        .isCloseTo(64.534505, within(1e-5));
  }

  @Test
  void forceAndSettingAreHeldAgainstEachOther() {
    assertThat(told("force = \"600 N\"\ndevice = { " + DISCS + ", deflection = \"0.6 mm\" }"))
        .singleElement()
        .asString()
        .contains("preload[1].device.deflection: as set the device gives")
        .contains("but force says 600 N (135 lbf); for that force set deflection")
        .contains("or leave one of the two out");
  }

  @Test
  void aScatterSmallerThanTheDevicesIsQuestioned() {
    assertThat(told("force = \"600 N\"\nscatter = \"0.5 %\"\ndevice = { " + DISCS + " }"))
        .singleElement()
        .asString()
        .contains(
            "warning: preload[1].scatter: 0.50 % is told, but the device as described scatters by");
  }

  @Test
  void theScatterOfAWeightIsThatOfItsOwnAndAHalfOfItIsNotQuestioned() {
    String weight = "device = { kind = \"weight\", mass = \"10 kg\", drop = \"0.1 m\" }";
    double own = preload(weight).modelled().orElseThrow().scatter().halfRange();
    assertThat(told("scatter = \"" + 100 * own + " %\"\n" + weight)).isEmpty();
  }

  @Test
  void aSettingThatGivesTheForceToldIsNoContradiction() {
    // 10 kg times 9.80665 m/s2 is 98.07 N; 2 % of slack for what is set on a bench
    String weight = "\ndevice = { kind = \"weight\", mass = \"10 kg\", drop = \"0.1 m\" }";
    assertThat(told("force = \"98 N\"" + weight)).isEmpty();
    assertThat(told("force = \"99.5 N\"" + weight)).isEmpty();
    assertThat(told("force = \"96.5 N\"" + weight)).isEmpty();
    assertThat(told("force = \"101 N\"" + weight)).hasSize(1);
    assertThat(told("force = \"95 N\"" + weight)).hasSize(1);
  }

  @Test
  void aForceThatHardlyIsOneIsDoubtedThoughItStandsNowhere() {
    List<DesignProblem> found =
        file("device = { kind = \"weight\", mass = \"50 g\", drop = \"0 mm\" }").problems();
    assertThat(found)
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.severity()).isEqualTo(DesignProblem.Severity.WARNING);
              assertThat(p.key()).isEqualTo("preload[1].device.mass");
              assertThat(p.message()).contains("a mass of 0.0500 kg", "makes 0.490 N");
            });
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          device = { kind = "bolt" }                                    | allowed is air-cylinder, disc-springs, magnets, screw, spring, torque wrench, weight
          device = { kind = "weight", drop = "0 mm" }                   | device.mass: is missing; write it, or the force
          force = "600 N"                                               | preload[1].scatter: is missing
          force = "0.6 N"\\ndevice = { kind = "weight", mass = "600 g", drop = "0 mm" } | as set the device gives 5.88 N
          force = "90 N"\\ndevice = { kind = "magnets", opposite = "soft iron", diameter = "10 mm", length = "5 mm", remanence_tesla = 1.2, gap_tolerance = "0.02 mm" } | use a larger or stronger magnet
          force = "90 N"\\ndevice = { kind = "magnets", opposite = "iron", diameter = "10 mm", length = "5 mm", remanence_tesla = "1.2 T", gap_tolerance = "0.02 mm" } | allowed is a plain number above zero
          force = "9000 N"\\ndevice = { kind = "spring", wire = "2 mm", mean_diameter = "16 mm", active_coils = 6, free_length = "50 mm", deflection_tolerance = "0.1 mm", shear_strength = "700 MPa" } | no deflection of this device gives 9000 N (2020 lbf); use thicker wire or a smaller coil
          device = { kind = "spring", wire = "2 mm", mean_diameter = "16 mm", free_length = "50 mm", deflection = "10 mm", deflection_tolerance = "0.1 mm", shear_strength = "700 MPa" } | device.active_coils: is missing; write a plain number
          device = { kind = "spring", wire = "2 mm", mean_diameter = "16 mm", active_coils = -6, free_length = "50 mm", deflection = "10 mm", deflection_tolerance = "0.1 mm", shear_strength = "700 MPa" } | device.active_coils: found -6; allowed is a plain number above zero
          force = "90 kN"\\ndevice = { kind = "disc-springs", outer_diameter = "16 mm", inner_diameter = "8.2 mm", thickness = "0.9 mm", free_height = "1.25 mm", series = 8, deflection_tolerance = "0.02 mm" } | use more discs in parallel, or thicker ones
          device = { kind = "air-cylinder", bore = "20 mm", pressure = "0.5 MPa", seal_friction = "3 N" } | device.pressure_scatter: is missing; write how well the supply is regulated
          device = { kind = "magnets", opposite = "equal magnet", diameter = "10 mm", length = "5 mm", remanence_tesla = 1.2, gap_tolerance = "0.02 mm" } | device.gap: is missing; write it, or the force
          force = "90 N"\\ndevice = { kind = "screw", thread = "M6", grip_length = "40 mm", material = "screw 8.8", method = "by feel" } | nut_factor: is missing
          force = "90 N"\\ndevice = { kind = "screw", thread = "M6", nut_factor = 0.2, grip_length = "40 mm", material = "screw 8.8", method = "felt" } | allowed is by feel, hydraulic
          force = "90 N"\\ndevice = { kind = "air-cylinder", bore = "20 mm", rod = "30 mm", pressure_scatter = "1 %", seal_friction = "1 N" } | is not thinner than its bore
          """)
  void aMistakeIsToldWhereItStands(String text, String message) {
    assertThat(told(text.replace("\\n", "\n"))).anySatisfy(l -> assertThat(l).contains(message));
  }
}
