package reseat.designfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.design.CouplingDesign;
import reseat.material.Material;
import reseat.material.MaterialProperty;

/** Keys that few files have, and the tables between braces, are read as strictly as the rest. */
class SeldomKeyTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          TOOL_POST | balls_on = | title2 = 5\\nballs_on = | title2 | is not a known key here
          TOOL_POST | name = "finish" | name = 5 | name | found a bare number; allowed is text between quotation marks
          TOOL_POST | name = "finish" | name = " " | name | found blank text; write a name
          CONE_VEE_FLAT | kind = "cone-vee-flat" | kind = "cone-vee-flat"\\nnames = "front" | layout.names | found text; allowed is a list of texts
          TOOL_POST | seats_follow_ball = true | seats_follow_ball = "true" | size.seats_follow_ball | found text; allowed is true or false, without quotation marks
          TOOL_POST | bottoms_on_metal = true | bottoms_on_metal = 1 | bottoms_on_metal | allowed is true or false, without quotation marks
          CONE_VEE_FLAT | kind = "cone-vee-flat" | kind = "cone-vee-flat"\\nnames = ["a", 5, "c"] | layout.names | allowed is a list of texts
          CONE_VEE_FLAT | ball = { diameter = "8 mm", material = "440C" } | ball = 5 | layout.ball | found a bare number; allowed is a table: [layout.ball] or { ... }
          CONE_VEE_FLAT | ball = { diameter = "8 mm", material = "440C" } | | layout.ball | is missing
          TOOL_POST | series = 8 | series = 2.5 | preload[1].device.series | found 2.5; allowed is a whole number from 1 to 200
          TOOL_POST | series = 8 | series = 201 | preload[1].device.series | found 201; allowed is a whole number from 1 to 200
          TOOL_POST | seating_force = "10 N" | ramp_steps = 100001 | remount.ramp_steps | found 100001; allowed is a whole number from 1 to 100000
          TOOL_POST | balls = ["1/2 in"] | balls = ["0 in"] | gauge.balls | above zero
          TOOL_POST | { limit = "20 %", shape = "normal" } | { limit = "20 %", shape = "normal", colour = 1 } | friction_scatter.colour | is not a known key here
          TOOL_POST | { limit = "20 %", shape = "normal" } | "-20 %" | friction_scatter | cannot be negative
          TOOL_POST | repeatability = { X = "0.5 um" | repeatability = { Y = "0.5 um" | targets.repeatability.Y | is not a known key here
          TOOL_POST | force = { height = "-300 N" } | force = { height = "-300 N", down = "1 N" } | force.down | is not a known key here
          TOOL_POST | radial = "X", axial | radial = "X", sideways = "Z", axial | turning.sideways | is not a known key here
          TOOL_POST | radial = "X", axial = "Z", | radial = "X", | machine.turning.axial | is missing; allowed is
          TOOL_POST | radial = "X", axial = "Z" | radial = "X", axial = "X" | machine.turning | must be three different machine axes
          PALLET | ball = { diameter = "20 mm", material = "52100" } | ball = { diameter = "20 mm", material = "52100", colour = 1 } | ball.colour | is not a known key here
          TOOL_POST | adhesive = "epoxy" | adhesive = { name = "a", shear_strength = "20 MPa", tensile_strength = "30 MPa", youngs_modulus = "3 GPa", softens_at = "60 °C", colour = 1 } | adhesive.colour | is not a known key here
          TOOL_POST | adhesive = "epoxy" | adhesive = { name = "a", shear_strength = "20 MPa", tensile_strength = "30 MPa", youngs_modulus = "3 GPa", softens_at = "60 °C", poisson_ratio = 0.6 } | adhesive | below 0.5
          TOOL_POST | balls_on = | material = [{ name = "x", based_on = "A2", density = "-1 kg/m^3" }]\\nballs_on = | material[1].density | found "-1 kg/m^3"; it must not be below zero
          TOOL_POST | balls_on = | material = [{ name = "x", based_on = "A2", colour = 1 }]\\nballs_on = | material[1].colour | is not a known key here
          BALL_MOUNT | reads = "3 um" | reads = "3 N" | reads | is a force
          CONE_VEE_FLAT | kind = "cone-vee-flat" | | layout.kind | is missing; allowed is
          """)
  void aMistakeInItIsToldOnceAndInItsPlace(
      Starter starter, String old, String bad, String key, String message) {
    String text = MistakenValueTest.with(starter, old, bad);
    List<DesignProblem> told =
        starter == Starter.BALL_MOUNT
            ? BallMountFile.read(text).problems()
            : MistakenValueTest.problems(text);
    assertThat(told)
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.key()).endsWith(key);
              assertThat(p.message()).contains(message);
              assertThat(p.severity()).isEqualTo(DesignProblem.Severity.ERROR);
            });
  }

  @Test
  void aMisspeltKindIsToldBesideTheMissingOneAndNothingElseIs() {
    String text = MistakenValueTest.with(Starter.PALLET, "kind = \"pins\"", "kinda = \"pins\"");
    assertThat(MistakenValueTest.problems(text))
        .extracting(DesignProblem::message)
        .satisfiesExactlyInAnyOrder(
            m -> assertThat(m).startsWith("is missing; allowed is "),
            m -> assertThat(m).isEqualTo("is not a known key here; did you mean \"kind\"?"));
  }

  @Test
  void twoMistakesOnALineAreToldFromLeftToRight() {
    String text =
        MistakenValueTest.with(
            Starter.PALLET,
            "ball = { diameter = \"20 mm\", material = \"52100\" }",
            "ball = { material = \"51200\", diameter = \"20 N\" }");
    List<DesignProblem> told = MistakenValueTest.problems(text);
    assertThat(told).hasSize(2);
    assertThat(told).extracting(DesignProblem::line).containsOnly(told.get(0).line());
    assertThat(told.get(0).key()).endsWith("material");
    assertThat(told.get(1).key()).endsWith("diameter");
    assertThat(told.get(0).column()).isLessThan(told.get(1).column());
  }

  @Test
  void layoutAndSupportsExcludeEachOther() {
    String pallet = Starter.PALLET.text();
    String supports =
        pallet.substring(pallet.indexOf("[[support]]"), pallet.indexOf("[[preload]]"));
    assertThat(MistakenValueTest.problems(Starter.TOOL_POST.text() + supports))
        .anyMatch(p -> p.message().equals("layout and support are both given; leave one out"));
  }

  @Test
  void aLayoutOfUnknownKindIsReadAsTheOneItsSeatsTell() {
    // only the kind is missing: no seat is called unknown or missing as well
    for (Starter starter : List.of(Starter.TOOL_POST, Starter.CONE_VEE_FLAT)) {
      String kind = starter == Starter.TOOL_POST ? "three-vee" : "cone-vee-flat";
      assertThat(
              MistakenValueTest.problems(
                  MistakenValueTest.with(starter, "kind = \"" + kind + "\"", null)))
          .singleElement()
          .satisfies(p -> assertThat(p.key()).isEqualTo("layout.kind"));
    }
    String cone =
        Starter.CONE_VEE_FLAT
            .text()
            .replace("kind = \"cone-vee-flat\"", "")
            .replace("[layout.cone]", "[layout.trihedral]")
            .replace("cone_angle = \"90 deg\"", "flank_angle = \"45 deg\"")
            .replace("root_diameter = \"2 mm\"", "");
    assertThat(MistakenValueTest.problems(cone))
        .singleElement()
        .satisfies(p -> assertThat(p.key()).isEqualTo("layout.kind"));
  }

  @Test
  void aMaterialOfTheFileBringsItsDensityAndExpansion() {
    String text =
        MistakenValueTest.with(
                Starter.TOOL_POST,
                "balls_on = ",
                "material = [{ name = \"own\", based_on = \"A2\", density = \"7.9 g/cm^3\","
                    + " expansion = \"10.5 um/m/K\" }]\nballs_on = ")
            .replace("material = \"A2\"", "material = \"own\"");
    CouplingDesign d = DesignFile.read(text).design().orElseThrow();
    Material own = d.supports().get(0).seatMaterial();
    assertThat(own.name()).isEqualTo("own");
    assertThat(own.nominal(MaterialProperty.DENSITY).orElseThrow()).isCloseTo(7900, within(1e-9));
    assertThat(own.nominal(MaterialProperty.EXPANSION).orElseThrow())
        .isCloseTo(10.5e-6, within(1e-15));
  }

  @Test
  void whatIsAllowedIncludesItsEnds() {
    for (String steps : List.of("1", "100000")) {
      String text =
          MistakenValueTest.with(
              Starter.TOOL_POST, "seating_force = \"10 N\"", "ramp_steps = " + steps);
      assertThat(DesignFile.read(text).design().orElseThrow().remount().rampSteps())
          .isEqualTo(Integer.parseInt(steps));
    }
  }

  @Test
  void aFlagThatIsNotWrittenStandsAtItsDefault() {
    String text = Starter.TOOL_POST.text();
    assertThat(AlterableDesign.of(text).size().seatsFollowBall()).isTrue();
    String unsaid = MistakenValueTest.with(Starter.TOOL_POST, "seats_follow_ball = true", null);
    assertThat(AlterableDesign.of(unsaid).size().seatsFollowBall())
        .isEqualTo(SizeTargets.NONE.seatsFollowBall());
    // A2 is not brittle, alumina is, and so is what is based on it
    for (String base : List.of("A2", "alumina")) {
      String own =
          MistakenValueTest.with(
                  Starter.TOOL_POST,
                  "balls_on = ",
                  "material = [{ name = \"own\", based_on = \"" + base + "\" }]\nballs_on = ")
              .replace("material = \"A2\"", "material = \"own\"");
      assertThat(DesignFile.read(own).design().orElseThrow().supports().get(0).seatMaterial())
          .matches(m -> m.brittle() == base.equals("alumina"));
    }
  }
}
