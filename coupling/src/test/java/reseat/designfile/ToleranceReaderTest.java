package reseat.designfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.design.CouplingDesign;
import reseat.design.Tolerance;
import reseat.design.ToleranceKind;
import reseat.design.Tolerances;
import reseat.numerics.DistributionShape;

/** Tolerances as a design file states them. */
class ToleranceReaderTest {

  private static final String PLAIN =
      Starter.TOOL_POST.text().substring(0, Starter.TOOL_POST.text().indexOf("[tolerances]"));

  private static Tolerances read(String tolerances) {
    DesignFile f = DesignFile.read(PLAIN + tolerances);
    assertThat(f.problems()).isEmpty();
    return f.design().orElseThrow().tolerances();
  }

  private static List<String> problems(String tolerances) {
    return DesignFile.read(PLAIN + tolerances).problems().stream()
        .map(p -> p.oneLine("f.toml"))
        .toList();
  }

  @Test
  void limitsShapesAndSharedErrorsAreRead() {
    Tolerances t =
        read(
            """
            [tolerances]
            flank_angle = "3 arcmin"
            ball_across = { limit = "0.0004 in", shape = "normal" }
            shared_ball_diameter = "2 um"
            temperature = { limit = "0.5 K", shape = "arcsine" }
            """);
    Tolerance angle = t.governing(ToleranceKind.FLANK_ANGLE, "left", "right", false).orElseThrow();
    assertThat(angle.spread().limit()).isCloseTo(Math.toRadians(0.05), within(1e-15));
    assertThat(angle.spread().shape()).isEqualTo(DistributionShape.UNIFORM);
    Tolerance across = t.governing(ToleranceKind.BALL_ACROSS, "front", "", false).orElseThrow();
    assertThat(across.spread().limit()).isCloseTo(10.16e-6, within(1e-15));
    assertThat(across.spread().shape()).isEqualTo(DistributionShape.NORMAL);
    assertThat(t.governing(ToleranceKind.BALL_DIAMETER, "front", "", true)).isPresent();
    assertThat(t.governing(ToleranceKind.BALL_DIAMETER, "front", "", false)).isEmpty();
    Tolerance warm = t.governing(ToleranceKind.TEMPERATURE, "", "", false).orElseThrow();
    assertThat(warm.spread().limit()).isEqualTo(0.5);
  }

  @Test
  void aGradeStandsForSizeAndFormAndOneSupportMayHaveItsOwn() {
    Tolerances t =
        read(
            """
            [tolerances]
            ball_grade = "G10"
            ball_height = "5 um"
            tool_point = "9 um"
            [[tolerances.only]]
            support = "front"
            ball_height = "2 um"
            ball_grade = "G3"
            [[tolerances.only]]
            part = "X"
            tool_point = "4 um"
            """);
    assertThat(limit(t, ToleranceKind.BALL_DIAMETER, "left", "")).isEqualTo(0.25e-6);
    assertThat(limit(t, ToleranceKind.BALL_DIAMETER, "front", "")).isEqualTo(0.065e-6);
    assertThat(limit(t, ToleranceKind.BALL_FORM, "front", "left")).isEqualTo(0.04e-6);
    assertThat(limit(t, ToleranceKind.BALL_HEIGHT, "front", "")).isEqualTo(2e-6);
    assertThat(limit(t, ToleranceKind.BALL_HEIGHT, "right", "")).isEqualTo(5e-6);
    assertThat(limit(t, ToleranceKind.TOOL_POINT, "", "X")).isEqualTo(4e-6);
    assertThat(limit(t, ToleranceKind.TOOL_POINT, "", "Z")).isEqualTo(9e-6);
  }

  private static double limit(Tolerances t, ToleranceKind kind, String support, String part) {
    return t.governing(kind, support, part, false).orElseThrow().spread().limit();
  }

  @Test
  void aFileWithoutTolerancesHasNone() {
    CouplingDesign d = DesignFile.read(PLAIN).design().orElseThrow();
    assertThat(d.tolerances()).isEqualTo(Tolerances.NONE);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "flank_angel = \"1 arcmin\" | did you mean \"flank_angle\"",
        "flank_angle = \"3 um\" | tolerances.flank_angle",
        "pin_spacing = \"3 um\" | so this does nothing",
        "ball_height = \"12 mm\" | 0.002",
        "ball_height = \"-2 um\" | cannot be negative",
        "ball_height = 5 | has no unit",
        "ball_grade = \"G11\" | known are",
        "ball_grade = \"G10\"\\nball_form = \"1 um\" | leave one of the two out",
        "[[tolerances.only]]\\nsupport = \"rear\"\\nball_height = \"1 um\" | no support is called",
        "[[tolerances.only]]\\nball_height = \"1 um\" | write the support",
        "[[tolerances.only]]\\npart = \"Q\"\\ntool_point = \"1 um\" | no machine axis is called Q",
        "[[tolerances.only]]\\nsupport = \"front\"\\ntool_point = \"1 um\" | does not belong",
        "[[tolerances.only]]\\nsupport = \"front\"\\npin_spacing = \"1 um\" | no seat meant here",
        "shared_tool_point = \"1 um\" | not shared"
      })
  void everyMistakeIsNamedWithItsPlace(String lines, String part) {
    List<String> found = problems("[tolerances]\n" + lines.replace("\\n", "\n") + "\n");
    assertThat(found).hasSize(1);
    assertThat(found.get(0)).startsWith("f.toml:").contains(part);
  }

  @Test
  void twoTablesForOneDimensionAreRefused() {
    String only = "[[tolerances.only]]\nsupport = \"front\"\nball_height = \"1 um\"\n";
    assertThat(problems("[tolerances]\n" + only + only))
        .singleElement()
        .asString()
        .contains("two tolerances");
  }
}
