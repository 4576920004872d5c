package reseat.designfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where a value begins to be doubted, and what the doubt says. */
class UnlikelyValueTest {

  private static List<DesignProblem> warnings(Starter starter, String old, String changed) {
    DesignFile file = DesignFile.read(MistakenValueTest.with(starter, old, changed));
    return file.problems().stream()
        .filter(p -> p.severity() == DesignProblem.Severity.WARNING)
        .toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          SENSOR_MOUNT | force = "28 N" | force = "200 N"
          SENSOR_MOUNT | force = "28 N" | force = "2 N"
          SENSOR_MOUNT | scatter = "3 %" | scatter = "50 %"
          TOOL_POST | flank_angle = "45 deg" | flank_angle = "15 deg"
          TOOL_POST | flank_angle = "45 deg" | flank_angle = "45.25 deg"
          TOOL_POST | flank_angle = "45 deg" | flank_angle = "45.5 deg"
          TOOL_POST | flank_angle = "45 deg" | flank_angle = "45.12 deg"
          TOOL_POST | flank_angle = "45 deg" | flank_angle = "45.0 deg"
          TOOL_POST | flank_angle = "45 deg" | flank_angle = "45.60 deg"
          """)
  void aValueAtTheEndOfTheUsualIsNotDoubted(Starter starter, String old, String changed) {
    assertThat(warnings(starter, old, changed)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          SENSOR_MOUNT | force = "28 N" | force = "20 kN" | preload[1].force | a preload of 20000 N (4500 lbf), by which the contacts
          SENSOR_MOUNT | force = "28 N" | force = "0.99 N" | preload[1].force | a preload of 0.990 N
          SENSOR_MOUNT | scatter = "3 %" | scatter = "51 %" | preload[1].scatter | a scatter of 51 % is more than any usual device; usual is at most 50.0 % (judgement); did you mean "0.51 %"?
          CONE_VEE_FLAT | circle_diameter = "70 mm" | circle_diameter = "7000 mm" | layout.circle_diameter | a circle of 7000
          TOOL_POST | at = ["47.0 mm", "0 mm", "15.2 mm"] | at = ["47.0 in", "0 mm", "15.2 mm"] | tool_point.at[x] | 34 times the radius of the balls' circle
          TOOL_POST | flank_angle = "45 deg" | flank_angle = "14 deg" | layout.groove.flank_angle | a groove of 14.00 deg included has flanks at 83.00 deg
          TOOL_POST | flank_angle = "45 deg" | flank_angle = "45.30 deg" | layout.groove.flank_angle | 45°18.0'; did you mean "45 deg 30 min"?
          TOOL_POST | flank_angle = "45 deg" | flank_angle = "45.45 deg" | layout.groove.flank_angle | 45°27.0'; did you mean "45 deg 45 min"?
          TOOL_POST | flank_angle = "45 deg" | flank_angle = "45.1 deg" | layout.groove.flank_angle | 45°06.0'; did you mean "45 deg 10 min"?
          SENSOR_MOUNT | flank_angle = "54.7356 deg" | flank_angle = "81 deg" | support[1].seat.flank_angle | a flank at 81.00 deg to the coupling plane is unusual
          """)
  void aValueBeyondItIsDoubtedAtItsKey(
      Starter starter, String old, String changed, String key, String message) {
    assertThat(warnings(starter, old, changed))
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.key()).isEqualTo(key);
              assertThat(p.message()).contains(message);
            });
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "6 um" | 6.00 µm | did you mean "6 mm"?
          "6 in" | 152.400 mm | did you mean "6 mm"?
          """)
  void aBallOfAnotherOrderIsToldWithTheLikelyOne(String diameter, String is, String meant) {
    String flat = "name = \"flat\"\nat = [\"25 mm\", \"45 mm\", \"0 mm\"]\nball = { diameter = ";
    assertThat(warnings(Starter.SENSOR_MOUNT, flat + "\"6 mm\"", flat + diameter))
        .anySatisfy(
            p -> {
              assertThat(p.key()).isEqualTo("support[3].ball.diameter");
              assertThat(p.message()).contains("at flat", is, meant);
            });
  }
}
