package reseat.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.designfile.Starter;

class CheckCommandTest extends TypedCommand {

  @TempDir private Path folder;
  private String failing;

  @BeforeEach
  void readTheFailingPost() throws IOException {
    failing =
        Files.readString(
            Path.of("report/src/test/resources/reseat/report/check/edge-forward-post.toml"));
  }

  private int check(String design, String... options) throws IOException {
    Path file = Files.writeString(folder.resolve("design.toml"), design);
    return type(List.of("check", file), options);
  }

  private static String replaced(String text, String... pairs) {
    String changed = text;
    for (int i = 0; i < pairs.length; i += 2) {
      assertThat(changed).contains(pairs[i]);
      changed = changed.replace(pairs[i], pairs[i + 1]);
    }
    return changed;
  }

  @Test
  void aGoodPostHolds() throws IOException {
    String good = replaced(failing, "\"60 deg\"", "\"0 deg\"", "\"30 %\"", "\"2 %\"");
    assertThat(check(good)).isEqualTo(ExitCode.HOLDS);
    assertThat(out.toString()).contains("HOLDS: all ");
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void aFailingPostIsReportedInFull() throws IOException {
    assertThat(check(failing)).isEqualTo(ExitCode.CHECK_FAILS);
    assertThat(out.toString()).contains("FAILS: ").contains("contacts at rest");
  }

  @Test
  void oneFigureIsToldInFullAndAnUnknownOneListsThoseThereAre() throws IOException {
    assertThat(check(failing, "--explain", "peak-pressure")).isEqualTo(ExitCode.HOLDS);
    assertThat(out.toString()).contains("Formula: p0 = 3 F / (2 π a b)").contains("Assumed:\n");
    assertThat(check(failing, "--explain", "peak-presure")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(out.toString()).isEmpty();
    assertThat(err.toString()).contains("did you mean peak-pressure?").contains("bond-use");
  }

  @Test
  void theSameAsJson() throws IOException {
    assertThat(check(failing, "--json")).isEqualTo(ExitCode.CHECK_FAILS);
    assertThat(out.toString()).startsWith("{\n").contains("\"holds\": false");
  }

  @Test
  void aBareNumberIsRefusedWithItsPlaceAndNothingIsPrinted() throws IOException {
    String bad = replaced(failing, "force = \"600 N\"", "force = \"600\"");
    assertThat(check(bad)).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(out.toString()).isEmpty();
    assertThat(err.toString()).contains("design.toml:").contains("600");
  }

  @Test
  void groovesThatDoNotConstrainFailWithACompleteReport() throws IOException {
    String along = replaced(failing, "kind = \"vee\"", "kind = \"flat\"");
    String flats =
        along
            .replace("flank_angle = \"45 deg\"\n", "")
            .replace("mouth_width = \"0.413 in\"\n", "")
            .replace("length = \"0.75 in\"\n", "")
            .replace("root_width = \"0.06 in\"\n", "");
    assertThat(check(flats)).isEqualTo(ExitCode.CHECK_FAILS);
    assertThat(out.toString()).contains("3 contacts hold only 3 of 6 motions");
  }

  @Test
  void aBallThatIsPulledThroughItsPinsHasNoEquilibrium() throws IOException {
    // half-inch balls on 6 mm pins whose axes stand 18.699 mm apart: 18.7 mm lets them through
    String pins =
        replaced(failing, "kind = \"vee\"", "kind = \"pins\"")
            .replace("flank_angle = \"45 deg\"\n", "pin_diameter = \"6 mm\"\n")
            .replace("mouth_width = \"0.413 in\"\n", "spacing = \"18.699 mm\"\n")
            .replace("root_width = \"0.06 in\"\n", "");
    assertThat(check(pins)).isEqualTo(ExitCode.NO_SOLUTION);
    assertThat(out.toString()).isEmpty();
    assertThat(err.toString()).contains("presses a ball through").contains("design.toml");
  }

  private static String crashing() {
    return replaced(Starter.TOOL_POST.text(), "height = \"-300 N\"", "height = \"-1300 N\"");
  }

  @Test
  void aRemedyIsWrittenIntoACopyThatHolds() throws IOException {
    assertThat(check(crashing())).isEqualTo(ExitCode.NEEDS_DECISION);
    assertThat(out.toString())
        .contains("What to do; with any one of these every check holds:\n  1. ");
    Path changed = folder.resolve("changed.toml");
    assertThat(check(crashing(), "--remedy", "1", "-o", changed.toString()))
        .isEqualTo(ExitCode.HOLDS);
    assertThat(Files.readString(changed)).contains("# Quick-change tool post");
    assertThat(check(Files.readString(changed))).isEqualTo(ExitCode.HOLDS);
    Files.writeString(changed, "mine");
    assertThat(check(crashing(), "--remedy", "1", "-o", changed.toString()))
        .isNotEqualTo(ExitCode.HOLDS);
    assertThat(changed).hasContent("mine");
    assertThat(check(crashing(), "--remedy", "1", "-o", changed.toString(), "--force"))
        .isEqualTo(ExitCode.HOLDS);
  }

  @Test
  void aRemedyThatIsNotThereIsRefused() throws IOException {
    String changed = folder.resolve("changed.toml").toString();
    assertThat(check(crashing(), "--remedy", "9", "-o", changed)).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("--remedy is 9");
    assertThat(check(crashing(), "--remedy", "1")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("--remedy N and -o FILE go together");
    assertThat(check(Starter.TOOL_POST.text(), "--remedy", "1", "-o", changed))
        .isEqualTo(ExitCode.NO_SOLUTION);
    assertThat(Path.of(changed)).doesNotExist();
  }

  @Test
  void remediesAreLeftOutWhereTheyAreNotWanted() throws IOException {
    assertThat(check(crashing(), "--no-remedies")).isEqualTo(ExitCode.NEEDS_DECISION);
    assertThat(out.toString()).doesNotContain("What to do").contains("Preload 600 N: no size");
  }
}
