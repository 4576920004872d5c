package reseat.designfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static reseat.designfile.MistakenValueTest.problems;

import org.junit.jupiter.api.Test;
import reseat.ballmount.BondJoint;
import reseat.design.StudMount;
import reseat.preload.TightenedScrew;

/** What a file may say of mounting, bond and screw, and what it may not. */
class MountingTableTest {

  @Test
  void aStateOfTheMountThatNeedsAThreadSaysSo() {
    String text = Starter.TOOL_POST.text();
    int from = text.indexOf("[layout.mounting.thread]");
    String cut =
        text.substring(0, from) + text.substring(text.indexOf("[layout.mounting.lock_nut]"));
    assertThat(problems(cut))
        .anyMatch(p -> p.message().contains("needs the thread it runs on; add a thread table"))
        .anyMatch(p -> p.message().contains("found \"thread\", but no thread is described"));
  }

  @Test
  void aRigidMountingIsNotAStiffnessOfNought() {
    String text = Starter.TOOL_POST.text();
    int from = text.indexOf("[layout.mounting.stud]");
    String cut =
        text.substring(0, from)
            + "[layout.mounting]\naxial_stiffness = \"0 N/um\"\nlateral_stiffness = \"50 N/um\"\n"
            + text.substring(text.indexOf("[layout.groove]"));
    assertThat(problems(cut))
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.key()).endsWith("axial_stiffness");
              assertThat(p.message()).contains("leave the key out for a rigid mounting");
            });
  }

  private static BondJoint bond(String table, String adhesive) {
    String text = Starter.TOOL_POST.text();
    int from = text.indexOf("[layout.mounting.bond]");
    DesignFile f =
        DesignFile.read(
            text.substring(0, from)
                + table
                + adhesive
                + text.substring(text.indexOf("[layout.groove]")));
    assertThat(f.problems()).isEmpty();
    StudMount stud = f.design().orElseThrow().supports().get(0).mounting().stud().orElseThrow();
    return stud.bond().orElseThrow();
  }

  private static final String SLEEVE =
      """
      [layout.mounting.bond]
      kind = "sleeve"
      diameter = "6 mm"
      length = "8 mm"
      gap = "0.05 mm"
      bottoms_on_metal = false
      hottest = "30 °C"
      """;

  @Test
  void aSleeveBondsItsWholeMantle() {
    BondJoint sleeve = bond(SLEEVE, "adhesive = \"anaerobic\"\n");
    assertThat(sleeve.area()).isCloseTo(Math.PI * 6e-3 * 8e-3, within(1e-12));
    assertThat(sleeve.lean()).isCloseTo(Math.PI / 2, within(1e-12));
    assertThat(sleeve.bottomsOnMetal()).isFalse();
  }

  @Test
  void anAdhesiveMayBringItsOwnFigures() {
    BondJoint own =
        bond(
            SLEEVE,
            """
            [layout.mounting.bond.adhesive]
            name = "filled resin"
            shear_strength = "22 MPa"
            tensile_strength = "41 MPa"
            youngs_modulus = "5.1 GPa"
            poisson_ratio = 0.33
            softens_at = "90 °C"
            cure_shrinkage = "0.4 %"
            """);
    assertThat(own.adhesive().name()).isEqualTo("filled resin");
    assertThat(own.adhesive().shearStrength()).isCloseTo(22e6, within(1e-3));
    assertThat(own.adhesive().tensileStrength()).isCloseTo(41e6, within(1e-3));
    assertThat(own.adhesive().elasticity().modulus()).isCloseTo(5.1e9, within(1.0));
    assertThat(own.adhesive().elasticity().poisson()).isCloseTo(0.33, within(1e-12));
    assertThat(own.adhesive().cureShrinkage()).isCloseTo(0.004, within(1e-12));
  }

  private static String screw(String friction) {
    String text = Starter.TOOL_POST.text();
    int from = text.indexOf("[preload.device]");
    return text.substring(0, from)
        + """
        [preload.device]
        kind = "screw"
        thread = "5/16-24"
        grip_length = "40 mm"
        material = "screw 8.8"
        method = "by feel"
        """
        + friction
        + text.substring(text.indexOf("[holder]"));
  }

  @Test
  void aScrewIsStatedByItsNutFactorOrByTheFrictionOfThreadAndHead() {
    String both = "thread_friction = 0.15\nhead_friction = 0.15\nhead_diameter = \"11 mm\"\n";
    DesignFile file = DesignFile.read(screw(both));
    assertThat(file.problems()).noneMatch(p -> p.severity() == DesignProblem.Severity.ERROR);
    TightenedScrew made =
        (TightenedScrew) file.design().orElseThrow().preloads().get(0).modelled().orElseThrow();
    // T = F (P/(2 pi) + mu d2/(2 cos 30) + mu Dm/2), the usual sum from memory: 5/16-24 has
    // P 1.0583 mm, d 7.9375 mm, d2 = d - 0.6495 P = 7.250 mm; 1.62 mm of lever in all
    double lever =
        1.0583e-3 / (2 * Math.PI) + 0.15 * 7.250e-3 / (2 * Math.cos(Math.PI / 6)) + 0.15 * 5.5e-3;
    assertThat(made.torque() / made.nominalForce()).isCloseTo(lever, within(0.02 * lever));
    assertThat(problems(screw(both + "nut_factor = 0.2\n")))
        .anyMatch(p -> p.message().contains("nut_factor and thread_friction are both given"));
    assertThat(problems(screw("thread_friction = 0.15\nhead_friction = 0.15\n")))
        .anyMatch(
            p -> p.key().endsWith("head_diameter") && p.message().contains("lost under the head"));
    assertThat(problems(screw("thread_friction = 0.15\nhead_diameter = \"11 mm\"\n")))
        .anyMatch(p -> p.key().endsWith("head_friction"));
    assertThat(problems(screw("")))
        .anyMatch(p -> p.message().contains("is missing; write the nut factor"));
  }
}
