package reseat.designfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.ballmount.BondJoint;
import reseat.design.BallMounting;
import reseat.design.CouplingDesign;
import reseat.design.StudMount;
import reseat.design.StudThread;
import reseat.space.Vec3;

/** What a design file says about the studs of its balls, and what it is told about mistakes. */
class MountingReaderTest {

  private static final String GOOD = Starter.TOOL_POST.text();

  private static String with(String old, String replacement) {
    assertThat(GOOD).contains(old);
    return GOOD.replaceFirst(
        java.util.regex.Pattern.quote(old), java.util.regex.Matcher.quoteReplacement(replacement));
  }

  private static BallMounting mounting(String text) {
    DesignFile f = DesignFile.read(text);
    assertThat(f.problems()).isEmpty();
    return f.design().orElseThrow().supports().get(1).mounting();
  }

  @Test
  void aBallOnABondedSetScrewGivesByStudAndLayerInSeries() {
    BallMounting m = mounting(GOOD);
    StudMount s = m.stud().orElseThrow();
    BondJoint bond = s.bond().orElseThrow();
    StudThread thread = s.thread().orElseThrow();
    assertThat(s.stud().neckDiameter()).isCloseTo(0.0079248, within(1e-12));
    assertThat(s.stud().stickOut()).isCloseTo(0.01143, within(1e-12));
    assertThat(bond.area()).isCloseTo(57e-6, within(1e-15));
    assertThat(bond.lean()).isCloseTo(Math.PI / 4, within(1e-12));
    assertThat(thread.limits().thread().designation()).isEqualTo("3/8-40");
    assertThat(thread.strength()).isPresent();
    assertThat(thread.lockNut().orElseThrow().tighteningTorque()).isCloseTo(8, within(1e-9));
    assertThat(m.lateralCompliance())
        .isCloseTo(s.stud().compliance().lateral() + 1 / bond.lateralStiffness(), within(1e-18));
    assertThat(m.compliance().coupling()).isEqualTo(s.stud().compliance().coupling());
    // the holder carries the balls, so its studs point down to them
    assertThat(m.axis()).isEqualTo(Vec3.Z.negated());
    assertThat(m.description()).contains("screw 12.9 stud 7.925 mm", "epoxy", "3/8-40");
  }

  @Test
  void studsOfTheBasePointUpToTheirBalls() {
    assertThat(mounting(with("balls_on = \"holder\"", "balls_on = \"base\"")).axis())
        .isEqualTo(Vec3.Z);
  }

  @Test
  void plainStiffnessesAreStillRead() {
    String text =
        GOOD.substring(0, GOOD.indexOf("# What each ball stands on"))
            + """
            [layout.mounting]
            axial_stiffness = "200 N/um"
            lateral_stiffness = "50 N/um"
            description = "measured"

            """
            + GOOD.substring(GOOD.indexOf("[layout.groove]"));
    BallMounting m = mounting(text);
    assertThat(m.stud()).isEmpty();
    assertThat(m.axialCompliance()).isCloseTo(5e-9, within(1e-18));
    assertThat(m.lateralCompliance()).isCloseTo(20e-9, within(1e-18));
    assertThat(m.description()).isEqualTo("measured");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          stick_out = "0.45 in"      | stick_out = "0.45"       | layout.mounting.stud.stick_out
          root = "thread"            | root = "theard"          | did you mean "thread"?
          root = "thread"            | root = "half-space"      | layout.mounting.stud.body_material: is missing
          designation = "3/8-40"     | designation = "3/8,40"   | write decimals with a point
          designation = "3/8-40"     | designation = "40"       | is not understood
          engagement = "0.4 in"      |                          | layout.mounting.thread.engagement: is missing
          torque = "8 N·m"           |                          | layout.mounting.lock_nut.torque: is missing
          bottoms_on_metal = true    |                          | write true if ball and stud touch
          gap = "0.08 mm"            | gap = "8 mm"             | a thin layer is assumed
          adhesive = "epoxy"         | adhesive = "glue"        | allowed is anaerobic, epoxy
          hottest = "30 °C"          |                          | layout.mounting.bond.hottest: is missing
          cone_angle = "90 deg"      | cone_angle = "190 deg"   | below 180 deg
          kind = "cone"              | kind = "conical"         | allowed is cone, flat, sleeve
          neck_diameter = "0.312 in" | neck_diameter = "0.312 in"\\naxial_stiffnes = 1 | axial_stiffnes: is not a known key
          """)
  void aMistakeIsToldWhereItStands(String old, String replacement, String told) {
    String text = with(old, replacement == null ? "" : replacement.replace("\\n", "\n"));
    DesignFile f = DesignFile.read(text);
    assertThat(f.design()).isEmpty();
    List<String> lines = f.problems().stream().map(p -> p.oneLine("f.toml")).toList();
    assertThat(lines).anySatisfy(l -> assertThat(l).contains(told));
    assertThat(lines).allSatisfy(l -> assertThat(l).matches("f\\.toml:\\d+:\\d+: .*"));
  }

  @Test
  void stiffnessBesideAStudIsRefused() {
    String text =
        with(
            "[layout.mounting.stud]",
            "[layout.mounting]\naxial_stiffness = \"9 N/um\"\n\n[layout.mounting.stud]");
    assertThat(DesignFile.read(text).problems())
        .extracting(p -> p.message())
        .containsExactly("the stiffness follows from the stud; leave the key or the stud out");
  }

  @Test
  void theToolPostSinksDeeperOnStudsThanOnRigidBalls() {
    CouplingDesign d = DesignFile.read(GOOD).design().orElseThrow();
    assertThat(d.supports()).allSatisfy(s -> assertThat(s.mounting().isRigid()).isFalse());
  }
}
