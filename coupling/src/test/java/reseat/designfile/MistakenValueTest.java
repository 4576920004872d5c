package reseat.designfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.design.CouplingDesign;
import reseat.seat.ConeSeat;

/** Values that are missing, of the wrong sort or unlikely, each told once and in its place. */
class MistakenValueTest {

  @TempDir private Path folder;

  static String with(Starter starter, String old, String bad) {
    String text = starter.text();
    String before = old.replace("\\n", "\n");
    assertThat(text).contains(before);
    int at = text.indexOf(before);
    return text.substring(0, at)
        + (bad == null ? "" : bad.replace("\\n", "\n"))
        + text.substring(at + before.length());
  }

  static List<DesignProblem> problems(String text) {
    return DesignFile.read(text).problems();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          TOOL_POST | circle_diameter = "2.750 in" | circle_diameter = "1e300 m" | layout.circle_diameter | no size that a machine can have
          PALLET | scatter = "5 %" | scatter = 1e300 | scatter | a plain number of usual size or a text such as "2 %"
          TOOL_POST | at = ["47.0 mm", "0 mm", "15.2 mm"] | at = ["47.0 mm", "0 mm"] | tool_point.at | found a list of 2; allowed is a list of three
          TOOL_POST | at = ["47.0 mm", "0 mm", "15.2 mm"] | at = "47 mm" | tool_point.at | allowed is a list of three
          TOOL_POST | at = ["47.0 mm", "0 mm", "15.2 mm"] | | tool_point.at | is missing; write ["x", "y", "z"]
          TOOL_POST | direction = "-z" | direction = [0, "0", -1] | direction | three plain numbers without unit
          TOOL_POST | direction = "-z" | direction = [0, 0, 0] | direction | a direction of no length
          TOOL_POST | direction = "-z" | direction = 3 | direction | allowed is
          TOOL_POST | balls_on = | material = 3\\nballs_on = | material | one or more tables headed [[material]]
          TOOL_POST | balls_on = | material = [5]\\nballs_on = | material | a table
          TOOL_POST | axes = { X = "+x", Z = "+y", height = "+z" } | axes = { X = "+x", Z = "+y", height = "+z", B = "-z" } | machine.axes | found 4 axes; three are wanted
          TOOL_POST | axes = { X = "+x", Z = "+y", height = "+z" } | axes = { X = "+x", Z = "+w", height = "+z" } | machine.axes.Z | found "+w"
          TOOL_POST | weight = "14 N" | | holder.mass | is missing; write the mass (or the weight)
          TOOL_POST | force = { height = "-300 N" } | | force | is missing; write ["x", "y", "z"] or a table by machine axis
          TOOL_POST | surface = "oiled" | low = 0.05 | friction.nominal | is missing; write a plain number such as 0.1
          TOOL_POST | vary = [ | vary = [ 5, | size.vary | a list of texts
          TOOL_POST | root = "thread" | root = "thread"\\nbody_material = "A2" | body_material | stands in the table of the thread
          TOOL_POST | stick_out = "0.45 in" | stick_out = "0.45 in"\\nshoulder_length = "2 mm" | shoulder_diameter | is missing; a shoulder has both
          TOOL_POST | stick_out = "0.45 in" | stick_out = "0.45 in"\\nshoulder_diameter = "9 mm" | shoulder_length | is missing; a shoulder has both
          TOOL_POST | stick_out = "0.45 in" | stick_out = "0.45 in"\\nstiff_tip = "-1 mm" | stiff_tip | must not be negative
          PALLET | at = ["-80 mm", "-60 mm", "0 mm"] | | at | is missing; write the centre of the ball
          PALLET | axis = "30.96 deg" | axis = [0, 0, 1] | axis | must not run along the direction the seat opens to
          CONE_VEE_FLAT | cone_angle = "90 deg" | cone_angle = "90 deg"\\nflank_angle = "45 deg" | flank_angle | the cone angle says this already
          PALLET | kind = "pins" | | kind | is missing; allowed is
          PALLET | axis = "30.96 deg" | | axis | is missing; write the direction of the groove
          """)
  void aWrongValueIsToldInItsPlace(
      Starter starter, String old, String bad, String key, String message) {
    List<DesignProblem> told = problems(with(starter, old, bad));
    assertThat(told)
        .anyMatch(
            p ->
                p.key().endsWith(key)
                    && p.message().contains(message)
                    && p.severity() == DesignProblem.Severity.ERROR);
    assertThat(told).as("one mistake, one message").hasSize(1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          SENSOR_MOUNT | force = "28 N" | force = "28 kN" | did you mean "28 N"?
          SENSOR_MOUNT | force = "28 N" | force = "2800 kgf" | a preload of 27500 N
          SENSOR_MOUNT | force = "28 N" | force = "400 kgf" | a preload of 3920 N
          SENSOR_MOUNT | force = "28 N" | force = "30000 N" | a preload of 30000 N
          SENSOR_MOUNT | force = "28 N" | force = "0.028 N" | did you mean "0.028 kN"?
          SENSOR_MOUNT | name = "flat"\\nat = ["25 mm", "45 mm", "0 mm"]\\nball = { diameter = "6 mm" | name = "flat"\\nat = ["25 mm", "45 mm", "0 mm"]\\nball = { diameter = "6 in" | did you mean "6 mm"?
          SENSOR_MOUNT | name = "flat"\\nat = ["25 mm", "45 mm", "0 mm"]\\nball = { diameter = "6 mm" | name = "flat"\\nat = ["25 mm", "45 mm", "0 mm"]\\nball = { diameter = "6 um" | did you mean "6 mm"?
          TOOL_POST | flank_angle = "45 deg" | flank_angle = "82 deg" | a groove of 82.00 deg included has flanks at 49.00 deg
          CONE_VEE_FLAT | circle_diameter = "70 mm" | circle_diameter = "70 in" | did you mean "70 mm"?
          CONE_VEE_FLAT | circle_diameter = "70 mm" | circle_diameter = "7000 mm" | did you mean "700 mm"?
          SENSOR_MOUNT | scatter = "3 %" | scatter = "90 %" | more than any usual device; usual is at most 50.0 % (judgement); did you mean "0.90 %"?
          """)
  void anUnlikelyValueIsUsedButWarnedOf(Starter starter, String old, String bad, String message) {
    DesignFile file = DesignFile.read(with(starter, old, bad));
    assertThat(file.problems())
        .anyMatch(
            p -> p.message().contains(message) && p.severity() == DesignProblem.Severity.WARNING);
  }

  @Test
  void aMaterialOfTheFileMayStandOnOneOfTheCatalog() {
    String own =
        """
        [[material]]
        name = "hard A2"
        based_on = "A2"
        hardness_hrc = 61

        """;
    String text =
        Starter.CONE_VEE_FLAT.text().replace("material = \"440C\"", "material = \"hard A2\"");
    assertThat(
            DesignFile.read(text + own)
                .design()
                .orElseThrow()
                .supports()
                .get(0)
                .seatMaterial()
                .name())
        .isEqualTo("hard A2");
    assertThat(problems(text + own.replace("based_on = \"A2\"", "based_on = \"A22\"")))
        .anyMatch(p -> p.key().endsWith("based_on"));
    assertThat(problems(text + own.replace("= 61", "= 610")))
        .anyMatch(p -> p.key().endsWith("hardness_hrc"));
  }

  @Test
  void aConeIsStatedByItsIncludedAngleOrByItsFlank() {
    String flank =
        with(Starter.CONE_VEE_FLAT, "cone_angle = \"90 deg\"", "flank_angle = \"45 deg\"");
    CouplingDesign stated = DesignFile.read(flank).design().orElseThrow();
    CouplingDesign included = DesignFile.read(Starter.CONE_VEE_FLAT.text()).design().orElseThrow();
    assertThat(((ConeSeat) stated.supports().get(0).seat()).angle())
        .isCloseTo(((ConeSeat) included.supports().get(0).seat()).angle(), within(1e-12));
  }

  @Test
  void bytesThatAreNoTextAreFoundOnTheirLine() throws IOException {
    byte[] head = "title = \"a\"\nname = \"".getBytes(StandardCharsets.UTF_8);
    byte[] all = new byte[head.length + 3];
    System.arraycopy(head, 0, all, 0, head.length);
    all[head.length] = (byte) 0xe9;
    all[head.length + 1] = '"';
    all[head.length + 2] = '\n';
    Path file = Files.write(folder.resolve("latin.toml"), all);
    for (List<DesignProblem> told :
        List.of(
            DesignFile.read(file).problems(), AlterableDesign.read(file).unaltered().problems())) {
      assertThat(told).hasSize(1);
      assertThat(told.get(0).line()).isEqualTo(2);
      assertThat(told.get(0).column()).isEqualTo(9);
    }
    assertThat(DesignFile.read(folder).problems())
        .singleElement()
        .extracting(DesignProblem::message)
        .isEqualTo("is a folder; name a design file");
    Path large = Files.write(folder.resolve("large.toml"), new byte[4_000_001]);
    assertThat(DesignFile.read(large).problems())
        .singleElement()
        .extracting(DesignProblem::message)
        .asString()
        .contains("MB, which no design file is");
  }

  @Test
  void eachStarterHasItsWordItsWordsAndTheCommandThatReadsIt() {
    for (Starter s : Starter.values()) {
      assertThat(Starter.named(s.word())).contains(s);
      assertThat(s.word()).isEqualTo(s.name().toLowerCase(Locale.ROOT).replace('_', '-'));
      assertThat(s.description()).isNotBlank();
      assertThat(s.command()).isEqualTo(s == Starter.BALL_MOUNT ? "mount" : "check");
      assertThat(BallMountFile.read(s.text()).design().isPresent())
          .isEqualTo(s.command().equals("mount"));
    }
    assertThat(Starter.words()).hasSize(Starter.values().length).contains("pallet");
    assertThat(Starter.named("post")).isEmpty();
  }

  @Test
  void aKeyThatNobodyKnowsIsToldInEveryTableOfEveryStarter() {
    for (Starter starter : Starter.values()) {
      String text = starter.text();
      for (int at = text.indexOf("\n["); at >= 0; at = text.indexOf("\n[", at + 1)) {
        int end = text.indexOf('\n', at + 1);
        String spoiled = text.substring(0, end) + "\nzzz = 1" + text.substring(end);
        List<DesignProblem> told =
            starter == Starter.BALL_MOUNT
                ? BallMountFile.read(spoiled).problems()
                : problems(spoiled);
        assertThat(told)
            .as("%s, %s", starter.word(), text.substring(at + 1, end))
            .anyMatch(
                p -> p.key().endsWith("zzz") && p.message().startsWith("is not a known key here"));
      }
    }
  }

  @Test
  void theWishForASizeIsReadAndChangedInItsParts() {
    SizeTargets wish = AlterableDesign.of(Starter.TOOL_POST.text()).size();
    assertThat(wish.leastStiffness()).isCloseTo(10e6, within(1e-6));
    assertThat(wish.largestSize()).isCloseTo(0.090, within(1e-12));
    assertThat(wish.seatsFollowBall()).isTrue();
    assertThat(wish.vary()).hasSize(6);
    for (SizeTargets.RankBy rule : SizeTargets.RankBy.values()) {
      assertThat(SizeTargets.RankBy.named(rule.word())).contains(rule);
      assertThat(wish.withRankBy(rule).rankBy()).isEqualTo(rule);
      assertThat(wish.withRankBy(rule).vary()).isEqualTo(wish.vary());
    }
    assertThat(SizeTargets.RankBy.named("beauty")).isEmpty();
    assertThat(wish.withVary(List.of("a = 1")).vary()).containsExactly("a = 1");
    assertThat(wish.withVary(List.of()).largestSize()).isEqualTo(wish.largestSize());
  }
}
