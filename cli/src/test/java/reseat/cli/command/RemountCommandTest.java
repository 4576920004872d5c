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

/** The command as its user meets it, run in this process. */
class RemountCommandTest extends TypedCommand {

  private static final Path POST = Path.of("../docs/examples/tool-post.toml");

  @TempDir private Path folder;

  private int run(String... args) {
    return type(List.of("remount"), args);
  }

  private String changed(String from, String to) throws IOException {
    String text = Files.readString(POST);
    assertThat(text).contains(from);
    Path file = folder.resolve("changed.toml");
    Files.writeString(file, text.replace(from, to));
    return file.toString();
  }

  @Test
  void theSameSeedGivesTheSameBytesOnOneTwoAndEightThreads() {
    for (String form : new String[] {"--json", "--reclamp"}) {
      String first = null;
      for (String threads : new String[] {"1", "2", "8"}) {
        int code =
            run(
                POST.toString(),
                "--mounts=3000",
                "--causes=130",
                "--cut=rough",
                form,
                "--threads",
                threads);
        assertThat(code).isEqualTo(ExitCode.HOLDS);
        first = first == null ? out.toString() : first;
        assertThat(out).hasToString(first);
      }
    }
  }

  @Test
  void anotherSeedGivesOtherBytes() {
    run(POST.toString(), "--mounts=500", "--causes=off", "--json");
    String one = out.toString();
    run(POST.toString(), "--mounts=500", "--causes=off", "--json", "--seed=2");
    assertThat(out.toString()).isNotEqualTo(one).contains("\"seed\": 2");
  }

  @Test
  void theScreenTellsVerdictScatterCausesSeatingAndBounds() {
    String[] options = {"--mounts=600", "--causes=100", "--cut=rough", "--reclamp", "--all"};
    assertThat(type(List.of("remount", POST), options)).isEqualTo(ExitCode.HOLDS);
    assertThat(err.toString()).isEmpty();
    assertThat(out.toString())
        .contains("HOLDS: all ")
        .contains("600 tool changes simulated (seed 1): all seat.")
        .contains("within ±, 95 %")
        .contains("Rotation of the holder, µrad")
        .contains("after rough, µm")
        .contains("further after clamping again, µm")
        .contains("What causes it")
        .contains("interaction")
        .contains("Will it seat?")
        .contains("Rule-of-thumb upper bound from friction")
        .contains("Not in the model");
    assertThat(out.toString().lines()).allMatch(line -> line.length() <= 120);
  }

  @Test
  void fewMountsGetOneFigureAndSayHowLittleTheyTell() {
    run(POST.toString(), "--mounts=20", "--causes=off");
    assertThat(out.toString())
        .containsPattern("X +0\\.08 +0\\.05 +0\\.50 ")
        .contains("With 20 changes s is known to about");
  }

  @Test
  void jsonHasItsDocumentedKeys() {
    run(POST.toString(), "--mounts=300", "--causes=50", "--json");
    String json = out.toString();
    assertThat(json)
        .contains("\"mounts\": 300,", "\"failed\": 0,", "\"seed\": 1,", "\"tool_point\": {")
        .contains("\"x\": {", "\"y\": {", "\"z\": {")
        .contains("\"mean_m\": ", "\"sd_m\": ", "\"range_m\": ", "\"p95_m\": ")
        .contains("\"causes\": [", "\"share_first\": [", "\"seating\": {", "\"failures\": []")
        .doesNotContain("NaN", "Infinity");
  }

  @Test
  void theToolPointOfTheJsonRunsAlongTheCouplingFrame() throws IOException {
    // the first machine axis turned round: same scatter, mean with the other sign
    run(POST.toString(), "--mounts=300", "--causes=off", "--json");
    String before = out.toString();
    String turned = changed("X = \"+x\", Z = \"+y\"", "X = \"-x\", Z = \"+y\"");
    run(turned, "--mounts=300", "--causes=off", "--json");
    String after = out.toString();
    assertThat(first("\"x\": \\{\\s+\"mean_m\": (\\S+),", after))
        .isEqualTo(first("\"x\": \\{\\s+\"mean_m\": (\\S+),", before));
    String machine = "\"direction\": \\[[^]]*\\],\\s+\"mean_m\": (\\S+),";
    assertThat(Double.parseDouble(first(machine, after)))
        .isEqualTo(-Double.parseDouble(first(machine, before)));
  }

  private static String first(String pattern, String text) {
    Matcher m = Pattern.compile(pattern).matcher(text);
    assertThat(m.find()).as(pattern).isTrue();
    return m.group(1);
  }

  @Test
  void aMissedTargetFailsAndTheReportIsComplete() throws IOException {
    String strict = changed("X = \"0.5 um\"", "X = \"0.05 um\"");
    assertThat(run(strict, "--mounts=300", "--causes=off")).isEqualTo(ExitCode.CHECK_FAILS);
    assertThat(out.toString())
        .contains("FAILS: 2 of ")
        .contains("300 tool changes simulated (seed 1): all seat.")
        .containsPattern("X +0\\.13 +0\\.07 +0\\.05 ")
        .contains("Not in the model");
  }

  @Test
  void mountsThatHangUpFailAndAreExplained() throws IOException {
    String dry =
        changed(
            "surface = \"oiled\" ", "low = 0.25\nnominal = 0.33\nhigh = 0.4\nsurface = \"dry\" ");
    assertThat(run(dry, "--mounts=300", "--causes=off", "--all")).isEqualTo(ExitCode.CHECK_FAILS);
    assertThat(out.toString().replaceAll("\\s+", " "))
        .contains("70 do not seat (23 %)")
        .contains("the holder hangs up before")
        .contains("HANGS UP at 0.33");
  }

  @Test
  void whereEveryMountFailsThereAreNoFiguresOfScatter() throws IOException {
    String stuck =
        changed("surface = \"oiled\" ", "low = 2\nnominal = 2\nhigh = 2\nsurface = \"dry\" ");
    assertThat(run(stuck, "--mounts=50", "--causes=20")).isEqualTo(ExitCode.CHECK_FAILS);
    assertThat(out.toString().replace('\n', ' '))
        .contains("50 do not seat (100 %); no scatter is told of a coupling that hangs up.")
        .doesNotContain("What causes it")
        .doesNotContain("NaN");
    assertThat(run(stuck, "--mounts=50", "--causes=20", "--json")).isEqualTo(ExitCode.CHECK_FAILS);
    assertThat(out.toString()).contains("\"failed\": 50").doesNotContain("NaN");
  }

  @ParameterizedTest
  @CsvSource({
    "--mounts=1, a whole number from 2 to 10000000000",
    "--mounts=1e11, a whole number from 2 to 10000000000",
    "--mounts=many, --mounts is 'many'",
    "--mounts=2.5, --mounts is 2.5",
    "--threads=0, a whole number from 1 to 1024",
    "--threads=1025, a whole number from 1 to 1024",
    "--seed=x, --seed is 'x'; a whole number is wanted",
    "--causes=perhaps, --causes is 'perhaps'",
    "--cut=rouhg, did you mean 'rough'?",
    "--cut=nothing, it has: diamond facing"
  })
  void anOptionThatCannotBeUsedGetsOneClearLine(String option, String message) {
    assertThat(run(POST.toString(), option)).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains(message).startsWith("reseat remount: ");
    assertThat(err.toString().lines()).hasSize(1);
    assertThat(out.toString()).isEmpty();
  }

  @Test
  void millionsMayBeWrittenShort() {
    assertThat(run(POST.toString(), "--mounts=1e2", "--causes=off")).isEqualTo(ExitCode.HOLDS);
    assertThat(out.toString()).contains("100 tool changes");
  }

  @Test
  void aCouplingThatDoesNotConstrainHasNoSolution() throws IOException {
    String pins = Files.readString(POST).replace("kind = \"vee\" ", "kind = \"flat\" ");
    Path file = folder.resolve("flats.toml");
    Files.writeString(file, pins);
    int code = run(file.toString());
    assertThat(code).isIn(ExitCode.NO_SOLUTION, ExitCode.BAD_INPUT);
    assertThat(out.toString()).isEmpty();
    assertThat(err.toString()).isNotEmpty();
  }

  @Test
  void aHolderThatIsNotPressedFailsAsItsCheckDoes() throws IOException {
    String off =
        changed("at = [\"0 mm\", \"0 mm\", \"0 mm\"]", "at = [\"90 mm\", \"0 mm\", \"0 mm\"]");
    assertThat(run(off)).isEqualTo(ExitCode.CHECK_FAILS);
    assertThat(err.toString()).isEmpty();
    assertThat(out.toString())
        .contains("FAILS: ")
        .contains("is open at rest: preload and weight")
        .doesNotContain("simulated");
  }
}
