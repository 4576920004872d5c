package reseat.designfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.design.ClassicLayout;
import reseat.design.CouplingDesign;
import reseat.design.Preload;
import reseat.design.Support;
import reseat.equilibrium.CouplingModel;
import reseat.material.Material;
import reseat.material.MaterialCatalog;
import reseat.seat.Flank;
import reseat.space.Vec3;

/** Layouts said in code are those that the design file lays out. */
class ClassicLayoutTest {

  private static final Material STEEL = MaterialCatalog.standard().find("52100").orElseThrow();
  private static final Material SEAT = MaterialCatalog.standard().find("A2").orElseThrow();

  private static List<Flank> flanks(List<Support> supports) {
    return CouplingModel.of(CouplingDesign.builder().supports(supports).build()).flanks();
  }

  private static CouplingDesign file(String layout) {
    String text =
        """
        title = "t"
        [tool_point]
        at = ["0 mm", "0 mm", "15 mm"]
        [holder]
        mass = "1 kg"
        [[preload]]
        name = "bolt"
        force = "300 N"
        at = ["0 mm", "0 mm", "0 mm"]
        scatter = "5 %"
        """;
    DesignFile f = DesignFile.read(text + layout);
    assertThat(f.design()).as("%s", f.problems()).isPresent();
    return f.design().orElseThrow();
  }

  private static void same(List<Support> code, CouplingDesign file) {
    assertThat(file.preloads().get(0).forceSpread())
        .isEqualTo(Preload.down("bolt", 300, 0.05, Vec3.ZERO).forceSpread());
    assertThat(code).hasSameSizeAs(file.supports());
    List<Flank> mine = flanks(code);
    List<Flank> theirs = flanks(file.supports());
    assertThat(mine).hasSameSizeAs(theirs);
    int contact = 0;
    for (int i = 0; i < code.size(); i++) {
      Support a = code.get(i);
      Support b = file.supports().get(i);
      assertThat(a.name()).isEqualTo(b.name());
      assertThat(a.ballMaterial()).isEqualTo(b.ballMaterial());
      assertThat(a.seatMaterial()).isEqualTo(b.seatMaterial());
      assertThat(a.ball().radius()).isCloseTo(b.ball().radius(), within(1e-15));
      assertThat(a.ball().centre().distanceTo(b.ball().centre())).isLessThan(1e-15);
      for (int k = 0; k < a.seat().contacts(); k++, contact++) {
        Flank f = mine.get(contact);
        Flank g = theirs.get(contact);
        assertThat(
                f.contactPoint(a.ball().centre(), a.ball().radius())
                    .distanceTo(g.contactPoint(b.ball().centre(), b.ball().radius())))
            .isLessThan(1e-14);
      }
    }
  }

  @Test
  void threeVeesAreThoseOfTheFile() {
    same(
        ClassicLayout.onCircle(0.07, 0.0127, STEEL)
            .firstAt(Math.toRadians(90))
            .seatsOf(SEAT)
            .flanksAt(Math.toRadians(40))
            .threeVees(),
        file(
            """
            [layout]
            kind = "three-vee"
            circle_diameter = "70 mm"
            first_ball_at = "90 deg"
            ball = { diameter = "12.7 mm", material = "52100" }
            groove = { kind = "vee", flank_angle = "40 deg", material = "A2" }
            """));
  }

  @Test
  void coneVeeAndFlatAreThoseOfTheFile() {
    same(
        ClassicLayout.onCircle(0.07, 0.008, STEEL).coneVeeFlat(),
        file(
            """
            [layout]
            kind = "cone-vee-flat"
            circle_diameter = "70 mm"
            ball = { diameter = "8 mm", material = "52100" }
            cone = { flank_angle = "45 deg", material = "52100" }
            groove = { kind = "vee", flank_angle = "45 deg", material = "52100" }
            flat = { material = "52100" }
            """));
  }

  @Test
  void aLayoutWithoutSizeIsRefused() {
    assertThatThrownBy(() -> ClassicLayout.onCircle(0, 0.01, STEEL))
        .hasMessageStartingWith("diameter of the ball circle is 0");
    assertThatThrownBy(() -> ClassicLayout.onCircle(0.07, -1, STEEL))
        .hasMessageStartingWith("ball diameter is -1");
    assertThatThrownBy(() -> ClassicLayout.onCircle(0.07, 0.01, null))
        .isInstanceOf(NullPointerException.class);
    assertThatThrownBy(() -> ClassicLayout.onCircle(0.07, 0.01, STEEL).firstAt(Double.NaN))
        .hasMessageContaining("NaN rad");
    assertThatThrownBy(() -> ClassicLayout.onCircle(0.07, 0.01, STEEL).flanksAt(0).threeVees())
        .isInstanceOf(IllegalArgumentException.class);
  }
}
