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

/** What a search prints and writes, and how it refuses. */
class SizeCommandTest extends TypedCommand {

  private static final String BALLS = "layout.ball.diameter = 3/8 in, 1/2 in, 5/8 in";
  private static final String FORCE = "preload.force = 300 N..900 N:4";

  @TempDir Path folder;
  private Path design;

  @BeforeEach
  void design() throws IOException {
    design = folder.resolve("post.toml");
    Files.writeString(design, Starter.TOOL_POST.text());
  }

  private int run(String... more) {
    return type(List.of("size", design), more);
  }

  private String at(String name) {
    return folder.resolve(name).toString();
  }

  @Test
  void theWinnerAsWrittenHoldsAndKeepsTheRemarks() throws IOException {
    assertThat(run("--vary", BALLS, "--vary", FORCE, "--winner", at("w.toml")))
        .isEqualTo(ExitCode.HOLDS);
    assertThat(out.toString()).startsWith("Tool post").contains("FOUND: ", "Take 1; ");
    assertThat(out.toString().split("--vary", -1)).as("each given once").hasSize(3);
    assertThat(Files.readString(folder.resolve("w.toml"))).contains("# through the ball centres");
    assertThat(type(List.of("check", at("w.toml")))).isEqualTo(ExitCode.HOLDS);
    assertThat(run("--vary", BALLS, "--vary", FORCE, "--winner", at("w.toml")))
        .isEqualTo(ExitCode.BAD_INPUT);
  }

  @Test
  void partsJoinedPrintWhatTheWholePrints() {
    assertThat(run("--vary", BALLS, "--vary", FORCE, "--json")).isEqualTo(ExitCode.HOLDS);
    String whole = out.toString();
    for (String part : new String[] {"1", "2"}) {
      run("--vary", BALLS, "--vary", FORCE, "--part", part + "/2", "--candidates", at(part));
    }
    assertThat(
            run("--vary", BALLS, "--vary", FORCE, "--merge", at("2"), "--merge", at("1"), "--json"))
        .isEqualTo(ExitCode.HOLDS);
    assertThat(out.toString()).isEqualTo(whole);
    assertThat(run("--vary", BALLS, "--vary", FORCE, "--merge", at("1")))
        .isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).startsWith("reseat size: ");
  }

  @Test
  void thePictureIsDrawnAndAFinishedFileOfCandidatesIsGoneOnWith() {
    String[] wish = {
      "--vary",
      BALLS,
      "--vary",
      FORCE,
      "--candidates",
      at("c.csv"),
      "--resume",
      "--picture",
      at("p.svg"),
      "--force"
    };
    assertThat(run(wish)).isEqualTo(ExitCode.HOLDS);
    String first = out.toString();
    assertThat(run(wish)).isEqualTo(ExitCode.HOLDS);
    assertThat(out.toString()).isEqualTo(first);
    assertThat(folder.resolve("p.svg")).isNotEmptyFile();
  }

  @Test
  void aSearchInWhichNothingHoldsSaysWhy() {
    assertThat(run("--vary", "preload.force = 20 N, 30 N", "--winner", at("none.toml")))
        .isEqualTo(ExitCode.CHECK_FAILS);
    assertThat(out.toString()).contains("NONE: each of the 2 designs", "lift-off: 2 fail");
    assertThat(folder.resolve("none.toml")).doesNotExist();
  }

  @Test
  void theClassicChoicesStandSideBySide() {
    assertThat(run("--choices")).isEqualTo(ExitCode.HOLDS);
    assertThat(out.toString())
        .contains("60 deg", "an edge", "trihedral, vee, flat", "silicon nitride", "±30 %")
        .contains("Preload 600 N: at least ")
        .containsPattern("silicon nitride .* 104 % .* decide: contact\\s+pressure")
        .containsPattern("an edge .* FAILS: lift-off\n");
  }

  @Test
  void aBadChoiceIsRefusedInOneLine() {
    for (String[] bad :
        new String[][] {
          {"--rank", "beauty"},
          {"--part", "3/2"},
          {"--part", "half"},
          {"--vary", "layout.ball.diametr = 3 mm"},
          {"--picture", "x.gif"},
          {"--resume"}
        }) {
      assertThat(run(bad)).isEqualTo(ExitCode.BAD_INPUT);
      assertThat(err.toString().lines()).hasSize(1);
      assertThat(out.toString()).isEmpty();
    }
  }
}
