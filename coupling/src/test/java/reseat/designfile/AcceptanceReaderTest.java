package reseat.designfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.design.Acceptance;
import reseat.design.CheckKind;
import reseat.design.Coverage;
import reseat.units.QuantityKind;

/** What a design file accepts, covers and leaves to defaults. */
class AcceptanceReaderTest {

  private static DesignFile with(String more) {
    return DesignFile.read(Starter.TOOL_POST.text() + more);
  }

  private static String accepted(String check, String where, String upTo) {
    return "\n[[accepted]]\ncheck = \""
        + check
        + "\"\nwhere = \""
        + where
        + "\"\nup_to = "
        + upTo
        + "\nreason = \"worked in and measured\"\n";
  }

  @Test
  void whatIsAcceptedIsReadWithItsPlace() {
    DesignFile file =
        with(
            accepted("contact pressure", "front (left flank)", "\"3.4 GPa\"")
                + accepted("error motion", "finish", "1.1")
                + "\n[[accepted]]\ncheck = \"stiffness\"\nup_to = \"110 %\"\nreason = \"enough\"\n");
    assertThat(file.problems()).isEmpty();
    List<Acceptance> all = file.accepted();
    assertThat(all).hasSize(3);
    Acceptance pressure = all.get(0);
    assertThat(pressure.check()).isEqualTo(CheckKind.CONTACT_PRESSURE);
    assertThat(pressure.where()).isEqualTo("front (left flank)");
    assertThat(pressure.upTo()).isEqualTo(3.4e9);
    assertThat(pressure.kind()).isEqualTo(QuantityKind.PRESSURE);
    assertThat(pressure.reason()).isEqualTo("worked in and measured");
    long lines = Starter.TOOL_POST.text().lines().count();
    assertThat(pressure.line()).isEqualTo((int) lines + 4);
    assertThat(pressure.column()).isEqualTo(9);
    assertThat(all.get(1).isShare()).isTrue();
    assertThat(all.get(1).upTo()).isEqualTo(1.1);
    assertThat(all.get(2).where()).isEmpty();
    assertThat(all.get(2).upTo()).isEqualTo(1.1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          check = "presure"\\nup_to = "1 GPa"\\nreason = "r" | accepted[1].check | allowed is ball stud, bond, case depth
          check = "contact presure"\\nup_to = "1 GPa"\\nreason = "r" | accepted[1].check | did you mean "contact pressure"?
          up_to = "1 GPa"\\nreason = "r" | accepted[1].check | is missing; allowed is
          check = "bond"\\nreason = "r" | accepted[1].up_to | is missing; write how far
          check = "bond"\\nup_to = "much"\\nreason = "r" | accepted[1].up_to | found "much", which is nothing that the check "bond" compares; allowed is a length in mm
          check = "bond"\\nup_to = "60 lbf"\\nreason = "r" | accepted[1].up_to | found "60 lbf", which is nothing that the check "bond" compares; allowed is a length in mm
          check = "lift-off"\\nup_to = "60 arcmin"\\nreason = "r" | accepted[1].up_to | allowed is a force in N
          check = "self-seating"\\nup_to = "1 mm"\\nreason = "r" | accepted[1].up_to | allowed is a share of the limit
          check = "bond"\\nup_to = true\\nreason = "r" | accepted[1].up_to | allowed is a value with its unit
          check = "bond"\\nup_to = 1.1 | accepted[1].reason | is missing; write in a few words why
          check = "bond"\\nup_to = 1.1\\nreason = " " | accepted[1].reason | blank
          check = "input"\\nup_to = "1 kN"\\nreason = "r" | accepted[1].where | is missing; write the key
          check = "bond"\\nwhere = "fornt"\\nup_to = 1.1\\nreason = "r" | accepted[1].where | did you mean "front"?
          check = "bond"\\nwhere = "front, rear"\\nup_to = 1.1\\nreason = "r" | accepted[1].where | "front (left flank)"
          check = "input"\\nwhere = "layout.bal.diameter"\\nup_to = "1 in"\\nreason = "r" | accepted[1].where | did you mean "layout.ball.diameter"?
          check = "bond"\\nup_to = 1.1\\nreason = "r"\\nwhy = "x" | accepted[1].why | is not a known key here
          """)
  void whatIsAmissIsToldOnceInItsPlace(String table, String key, String message) {
    DesignFile file = with("\n[[accepted]]\n" + table.replace("\\n", "\n") + "\n");
    assertThat(file.problems())
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.key()).isEqualTo(key);
              assertThat(p.message()).contains(message);
              assertThat(p.line()).isPositive();
              assertThat(p.column()).isPositive();
            });
  }

  @ParameterizedTest
  @CsvSource({"2 kN, true", "2.1 kN, true", "1.9 kN, false", "2 mm, false"})
  void aDoubtIsConfirmedUpToItsValue(String upTo, boolean confirmed) {
    String text =
        Starter.PALLET.text().replaceFirst("force = \"400 N\"", "force = \"2 kN\"")
            + accepted("input", "preload[1].force", "\"" + upTo + "\"");
    DesignFile file = DesignFile.read(text);
    assertThat(file.doubts()).hasSize(1);
    assertThat(file.openDoubts()).hasSize(confirmed ? 0 : 1);
    assertThat(file.problems()).hasSize(confirmed ? 0 : 1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          "95 %" | 0.95 | 0 | one change in twenty may be outside
          "99.7 %" | 0.997 | 0 | three changes in 1000 may be outside
          0.9 | 0.9 | 0 | one change in ten may be outside
          "largest of 50" | 0.986232704493359 | 50 | the largest of 50 changes counts
          """)
  void aTargetHasACoverage(String written, double share, int largest, String words) {
    Coverage c = coverage(written).design().orElseThrow().targets().coverage();
    assertThat(c.share()).isCloseTo(share, org.assertj.core.api.Assertions.within(1e-12));
    assertThat(c.largestOf()).isEqualTo(largest);
    assertThat(c.words()).isEqualTo(words);
  }

  @ParameterizedTest
  @CsvSource({
    "0",
    "1",
    "\"0 %\"",
    "\"100 %\"",
    "\"largest of 0\"",
    "\"largest of many\"",
    "\"most\"",
    "\"largest of 2000000\"",
    "[5]"
  })
  void aCoverageOfNothingOrAllIsRefused(String written) {
    assertThat(coverage(written).problems())
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.key()).isEqualTo("targets.coverage");
              assertThat(p.line()).isPositive();
              assertThat(p.message()).contains("above 0 % and below 100 %", "largest of 50");
            });
  }

  private static DesignFile coverage(String written) {
    String targets = "[targets]\n";
    return DesignFile.read(
        Starter.TOOL_POST.text().replace(targets, targets + "coverage = " + written + "\n"));
  }

  @Test
  void whatIsNotStatedIsAssumed() {
    DesignFile post = with("");
    assertThat(post.assumed())
        .anySatisfy(a -> assertThat(a.key()).isEqualTo("targets.coverage"))
        .anySatisfy(a -> assertThat(a.text()).startsWith("203 GPa").contains("52100"))
        .noneSatisfy(a -> assertThat(a.key()).startsWith("remount."))
        .noneSatisfy(a -> assertThat(a.key()).isEqualTo("layout.mounting"));
    String bare =
        Starter.PALLET.text().replaceFirst("(?s)\\[remount\\].*?\\[tolerances\\]", "[tolerances]");
    List<String> keys = DesignFile.read(bare).assumed().stream().map(a -> a.key()).toList();
    assertThat(keys)
        .contains(
            "support[1].mounting",
            "support[3].mounting",
            "support[1].ball.material",
            "friction.nominal",
            "preload[2].line_wander",
            "remount.temperature_scatter",
            "remount.film_scatter",
            "remount.seating_force",
            "remount.holder_expansion",
            "targets.pressure_share",
            "targets.coverage")
        .doesNotContain("targets.lift_off_factor", "preload[1].scatter")
        .doesNotHaveDuplicates();
    assertThat(DesignFile.read(bare).assumed())
        .anySatisfy(
            a -> {
              assertThat(a.key()).isEqualTo("remount.temperature_scatter");
              assertThat(a.value()).isEqualTo(0.2);
              assertThat(a.kind()).contains(QuantityKind.TEMPERATURE_DIFFERENCE);
              assertThat(a.text()).isEqualTo("0.200 K, to either side, uniform");
            });
    assertThat(BallMountFile.read(Starter.BALL_MOUNT.text()).assumed())
        .anySatisfy(a -> assertThat(a.key()).isEqualTo("lock_nut.face_diameter"))
        .noneSatisfy(a -> assertThat(a.key()).isEqualTo("seat.friction"));
  }
}
