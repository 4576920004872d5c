package reseat.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The command as its user meets it, run in this process. */
class InterchangeCommandTest extends TypedCommand {

  private static final Path EXAMPLES = Path.of("../docs/examples");
  private static final String POST = EXAMPLES.resolve("tool-post.toml").toString();
  private static final String PARTS = EXAMPLES.resolve("tool-post-parts.csv").toString();

  @TempDir private Path folder;

  private int run(String... args) {
    return type(List.of("interchange"), args);
  }

  private String written(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.writeString(file, text);
    return file.toString();
  }

  private String changed(String from, String to) throws IOException {
    String text = Files.readString(Path.of(POST));
    assertThat(text).contains(from);
    return written("changed.toml", text.replace(from, to));
  }

  @Test
  void theSameSeedGivesTheSameBytesOnOneTwoAndEightThreads() {
    for (String form : new String[] {"--json", "--within=30 um"}) {
      String first = null;
      for (String threads : new String[] {"1", "2", "8"}) {
        run(POST, "--holders=9000", "--posts=2", form, "--threads", threads);
        // the next step repeats the options as typed, the number of threads among them
        String told = out.toString().replace("--threads " + threads, "--threads N");
        first = first == null ? told : first;
        assertThat(told).isEqualTo(first);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"tool-post.toml", "pallet.toml", "sensor-mount.toml"})
  void everyExampleHasHoldersThatFit(String name) {
    int code = run(EXAMPLES.resolve(name).toString(), "--holders=3000");
    assertThat(err.toString()).isEmpty();
    assertThat(code).isEqualTo(ExitCode.HOLDS);
    assertThat(out.toString())
        .contains("HOLDS: all ", "3000 holders drawn on one post (seed 1), all fit");
  }

  @Test
  void theScreenKeepsRepeatabilityInterchangeabilityAndAccuracyApart() {
    assertThat(run(POST, "--holders=2000", "--calibration=0.5 um", "--all"))
        .isEqualTo(ExitCode.HOLDS);
    assertThat(out.toString())
        .contains("itself", "between", "with table", "to drawing")
        .contains("offset is entered to 0.50 µm")
        .contains("span")
        .contains("Linear stack beside the exact simulation")
        .contains("What moves the tool point along X, between holders")
        .contains("of the post, all holders alike")
        .contains("µm/arcmin")
        .contains("Tighten first")
        .doesNotContain("Cheapest tolerances")
        .doesNotContain("Predicted place");
    assertThat(out.toString().lines()).allMatch(line -> line.length() <= 120);
  }

  @Test
  void aWantedSpreadIsJudgedAndAdvisedOn() {
    assertThat(run(POST, "--holders=5000", "--within=30 um")).isEqualTo(ExitCode.CHECK_FAILS);
    assertThat(out.toString())
        .contains("FAILS: 3 of 32 checks.")
        .contains("5000 holders drawn on one post (seed 1), all fit; they spread beyond")
        .contains("cheapest tolerances for it")
        .contains("tighten")
        .contains("open");
    assertThat(run(POST, "--holders=5000", "--within=90 um")).isEqualTo(ExitCode.HOLDS);
    assertThat(run(POST, "--holders=5000", "--within=0.1 um")).isEqualTo(ExitCode.CHECK_FAILS);
    assertThat(out.toString()).contains("Tolerances alone will not do");
  }

  @Test
  void measuredHoldersGetTheirPlaces() {
    assertThat(run(POST, "--holders=1000", "--measured", PARTS)).isEqualTo(ExitCode.HOLDS);
    assertThat(out.toString())
        .contains("offset to drawing")
        .containsPattern("holder 1 +-?\\d+\\.\\d+ ± \\d")
        .contains("the post moves all by another ±");
    assertThat(run(POST, "--holders=1000", "--json", "--measured", PARTS)).isZero();
    // the tool point of holder 2 was measured 23 um short along X, which is x
    Matcher m =
        Pattern.compile("\"holder\": \"holder 2\",\\s*\"offset_m\": \\[(-[0-9.E-]+)")
            .matcher(out.toString());
    assertThat(m.find()).isTrue();
    assertThat(Double.parseDouble(m.group(1))).isBetween(-40e-6, -10e-6);
  }

  @Test
  void jsonHasItsDocumentedKeys() {
    run(POST, "--holders=2000", "--json", "--within=60 um");
    assertThat(out.toString())
        .contains("\"holders\": 2000", "\"posts\": 1", "\"seed\": 1", "\"misfits\": 0")
        .contains(
            "\"tool_point\": {", "\"x\": {", "\"mean_m\"", "\"sd_m\"", "\"range_m\"", "\"p95_m\"")
        .contains("\"machine_axes\": [", "\"with_offset_table_sd_m\"", "\"linear_differs\": false")
        .contains("\"sensitivities\": [", "\"shift_m_per_unit\"", "\"belongs_to\": \"post\"")
        .contains("\"tighten_first\": [", "\"advice\": {", "\"offsets\": [")
        .doesNotContain("NaN");
  }

  @Test
  void holdersThatDoNotFitAreCountedAndFailTheCheck() throws IOException {
    // the left and right balls just miss the end of their grooves as drawn, so some holders run off
    String tight = changed("length = \"0.75 in\"", "length = \"2 um\"");
    int code = run(tight, "--holders=2000");
    assertThat(code).isEqualTo(ExitCode.CHECK_FAILS);
    assertThat(out.toString())
        .contains("do not fit (")
        .contains("Holders that do not fit, not in the figures below")
        .contains("a contact runs over the edge of its flank");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--holders=1 | --holders is 1; a whole number from 2",
        "--holders=many | --holders is 'many'",
        "--posts=0 | --posts is 0",
        "--threads=0 | --threads is 0",
        "--seed=x | --seed is 'x'",
        "--within=5 | has no unit",
        "--within=-5 um | it must be above zero",
        "--calibration=1 kg | kg",
        "--calibration=-1 um | must not be negative",
        "--cost-exponent=0 | above 0",
        "--cost-exponent=two | a plain number",
        "--measured=nowhere.csv | nowhere.csv",
        "--holder=5 | did you mean"
      })
  void everyMistakeInAnOptionIsNamed(String option, String message) {
    assertThat(run(POST, option)).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains(message).doesNotContain("Exception");
    assertThat(out.toString()).isEmpty();
  }

  @Test
  void measurementsThatCannotBeUsedAreExplained() throws IOException {
    String head = "part, feature, x [mm], y [mm], z [mm], uncertainty [um]\n";
    assertThat(run(POST, "--measured", written("a.csv", head + "A, frnt, 1, 2, 3, 1\n")))
        .isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("a.csv:2:4:").contains("did you mean front?");
    assertThat(run(POST, "--measured", written("b.csv", head + "A, front, 1.375, 0, 0, 1\n")))
        .isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString())
        .contains("A: front was measured 33.550 mm")
        .contains("check the unit");
  }

  @Test
  void aDesignWithoutTolerancesSaysWhatToAdd() throws IOException {
    String text = Files.readString(Path.of(POST));
    String plain = written("plain.toml", text.substring(0, text.indexOf("[tolerances]")));
    assertThat(run(plain)).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("states no tolerances").contains("add [tolerances]");
  }

  @Test
  void aCouplingThatDoesNotStandIsToldFromBadInput() throws IOException {
    String aside =
        changed("at = [\"0 mm\", \"0 mm\", \"0 mm\"]", "at = [\"60 mm\", \"0 mm\", \"0 mm\"]");
    assertThat(run(aside)).isEqualTo(ExitCode.CHECK_FAILS);
    assertThat(err.toString()).isEmpty();
    assertThat(out.toString()).contains("fails lift-off: left (left flank) is open at rest");
  }

  @Test
  void aToleranceUnderWhichAPartCannotBeMadeIsNamed() throws IOException {
    String steep = changed("flank_angle = \"45 deg\"", "flank_angle = \"88 deg\"");
    String text = Files.readString(Path.of(steep));
    String wide =
        written("wide.toml", text.replace("flank_angle = \"3 arcmin\"", "flank_angle = \"2 deg\""));
    assertThat(run(wide)).isIn(ExitCode.BAD_INPUT, ExitCode.NO_SOLUTION);
    assertThat(err.toString()).doesNotContain("fault of the program");
  }
}
