package reseat.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import reseat.check.Argument;
import reseat.check.Depth;
import reseat.check.Finding;
import reseat.check.Said;
import reseat.check.Statement;
import reseat.design.CheckKind;
import reseat.designfile.DesignFile;
import reseat.designfile.Starter;
import reseat.seat.CylinderPair;

/** On a ceiling a coupling is pushed home against its weight, and the push is told. */
class NeededSeatingForceTest {

  private static final String UPSIDE_DOWN =
      Starter.TOOL_POST.text().replace("gravity = \"-z\"", "gravity = \"+z\"");

  private static Finding seating(String text) {
    return CheckStudy.run(StatedDesign.of(DesignFile.read(text)), Depth.SIMULATED)
        .findings()
        .stream()
        .filter(f -> f.check() == CheckKind.TOOL_CHANGE_SEATING)
        .findFirst()
        .orElseThrow();
  }

  private static double amount(Statement s, int place) {
    return ((Argument.Amount) s.arguments().get(place)).si();
  }

  @Test
  void aPostUpsideDownNeedsMoreThanItsWeightAndHoldsWithWhatIsTold() {
    Statement told = seating(UPSIDE_DOWN).advice();
    assertThat(told.key()).isEqualTo(Said.SEATS_WITH);
    double needed = amount(told, 1);
    // it weighs 14 N, and what is left over has to overcome friction in the grooves
    assertThat(amount(told, 0)).isEqualTo(10);
    assertThat(needed).isBetween(14.0, 60.0);
    String pushed =
        UPSIDE_DOWN.replace("seating_force = \"10 N\"", "seating_force = \"" + needed + " N\"");
    assertThat(seating(pushed).judged()).isEqualTo(reseat.check.Judged.HOLDS);
  }

  @Test
  void pinsMayBeSpacedByTheirContactAngle() {
    String text = Starter.PALLET.text();
    String angled = text.replace("spacing = \"21.213 mm\"", "flank_angle = \"45 deg\"");
    CylinderPair by =
        (CylinderPair) DesignFile.read(angled).design().orElseThrow().supports().get(0).seat();
    assertThat(Math.toDegrees(by.contactAngle(10e-3))).isCloseTo(45, within(1e-9));
    String both =
        text.replace("spacing = \"21.213 mm\"", "spacing = \"21 mm\"\nflank_angle = \"45 deg\"");
    assertThat(DesignFile.read(both).problems())
        .anyMatch(p -> p.message().contains("the spacing says this already"));
  }
}
