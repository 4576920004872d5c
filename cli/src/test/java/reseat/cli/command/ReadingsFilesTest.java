package reseat.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.designfile.Starter;
import reseat.numerics.RandomStream;

/** The page and the pictures of a remount test, and the form made from a design. */
class ReadingsFilesTest extends TypedCommand {

  private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G'};

  @TempDir Path folder;
  private Path csv;
  private Path design;

  @BeforeEach
  void write() throws IOException {
    RandomStream luck = RandomStream.of(20261126, 1);
    StringBuilder text = new StringBuilder("cycle, X [um], Z [um], height [um]\n");
    for (int i = 1; i <= 40; i++) {
      text.append(i);
      for (double s : new double[] {0.07, 0.04, 0.09}) {
        double runIn = i < 12 ? 1.5 * Math.exp(-i / 4.0) : 0;
        text.append(String.format(Locale.ROOT, ", %.3f", s * luck.normal() + runIn));
      }
      text.append('\n');
    }
    csv = Files.writeString(folder.resolve("series.csv"), text);
    design = Files.writeString(folder.resolve("post.toml"), Starter.TOOL_POST.text());
  }

  private int run(Path file, String... options) {
    return type(List.of("readings", file), options);
  }

  @Test
  void thePageHoldsFiguresPicturesAndComparisonAndNeedsNothingElse() throws IOException {
    Path page = folder.resolve("page");
    assertThat(run(csv, "--against", design.toString(), "-o", page.toString()))
        .isEqualTo(ExitCode.HOLDS);
    String html = Files.readString(page.resolve("readings.html"));
    assertThat(html)
        .contains(
            "PROVEN: every target.",
            "settled from mount",
            "Against the prediction",
            "Measured mounts over simulated ones",
            "Control charts",
            "Limits for later checks",
            "Design file post.toml")
        .doesNotContain("NaN", "Infinity", "<script", "http://www.example", "null");
    for (String name : List.of("readings.txt", "readings.json", "acceptance.txt")) {
      assertThat(page.resolve(name)).isNotEmptyFile();
    }
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void writingThePageAgainGivesTheSameBytes() throws IOException {
    Path page = folder.resolve("page");
    run(csv, "-o", page.toString());
    byte[] first = Files.readAllBytes(page.resolve("readings.html"));
    assertThat(run(csv, "-o", page.toString())).isEqualTo(ExitCode.HOLDS);
    assertThat(Files.readAllBytes(page.resolve("readings.html"))).isEqualTo(first);
  }

  @Test
  void aFolderOfSomebodyElseIsLeftAlone() throws IOException {
    Path page = Files.createDirectory(folder.resolve("mine"));
    Files.writeString(page.resolve("notes"), "mine");
    assertThat(run(csv, "-o", page.toString())).isNotEqualTo(ExitCode.HOLDS);
    assertThat(page.resolve("notes")).hasContent("mine");
    assertThat(page.resolve("readings.html")).doesNotExist();
  }

  @Test
  void onePictureComesAsSvgOrPng() throws IOException {
    for (String name : List.of("readings", "plane-X-Z", "histogram-height", "control-z")) {
      Path svg = folder.resolve(name + ".svg");
      assertThat(run(csv, "--picture", name, "-o", svg.toString())).as(name).isZero();
      assertThat(svg).content().contains("<svg").doesNotContain("NaN");
    }
    Path png = folder.resolve("readings.png");
    assertThat(run(csv, "--picture", "readings", "--png", "-o", png.toString())).isZero();
    assertThat(Files.readAllBytes(png)).startsWith(PNG);
  }

  @Test
  void anUnknownPictureIsAnsweredWithThoseThereAre() {
    Path svg = folder.resolve("p.svg");
    assertThat(run(csv, "--picture", "histogram-Y", "-o", svg.toString()))
        .isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("no picture 'histogram-Y'", "did you mean", "control-x");
    assertThat(svg).doesNotExist();
    assertThat(run(csv, "--picture", "readings")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("name the file to write with -o");
    assertThat(run(csv, "--png")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("which picture");
  }

  @Test
  void equalReadingsStillMakeAPage() throws IOException {
    Path equal = folder.resolve("equal.csv");
    Files.writeString(equal, "X [um],Z [um]\n" + "0.5,0.25\n".repeat(15));
    assertThat(run(equal, "-o", folder.resolve("page").toString())).isZero();
    assertThat(folder.resolve("page/readings.html"))
        .content()
        .contains("cannot resolve this mount")
        .doesNotContain("NaN", "Infinity");
  }

  @Test
  void aFormMadeFromADesignIsFilledInAndJudgedByItsTargets() throws IOException {
    Path form = folder.resolve("form.csv");
    assertThat(run(form, "--plan", "--against", design.toString())).isZero();
    assertThat(out.toString())
        .contains("Wear in with 50 seatings", "Set up the probes", "at (47.00, 0.00, 15.20) mm")
        .contains("X: s of at most", "81 %", "half-width over 1.96");
    String blank = Files.readString(form);
    assertThat(blank)
        .contains(
            "\ncycle,X [um],Z [um],height [um],temperature [degC],date,clock,note\n1,,,,,,,\n");
    assertThat(StandardCharsets.US_ASCII.newEncoder().canEncode(blank)).isTrue();
    RandomStream luck = RandomStream.of(20261126, 2);
    StringBuilder filled = new StringBuilder();
    for (String line : blank.split("\n", -1)) {
      if (line.endsWith(",,,,,,,")) {
        line =
            line.substring(0, line.indexOf(','))
                + String.format(
                    Locale.ROOT,
                    ",%.3f,%.3f,%.3f,20.1,,,",
                    0.07 * luck.normal(),
                    0.04 * luck.normal(),
                    0.09 * luck.normal());
      }
      filled.append(line).append('\n');
    }
    Files.writeString(form, filled);
    Path sheet = folder.resolve("sheet.txt");
    assertThat(run(form, "--against", design.toString(), "--sheet", sheet.toString())).isZero();
    assertThat(sheet).content().contains("X: PASS", "Z: PASS", "height: PASS", "their s at most");
  }

  @Test
  void aDesignThatCannotKeepItsTargetIsNotPlannedFor() throws IOException {
    Files.writeString(
        design, Starter.TOOL_POST.text().replace("X = \"0.5 um\"", "X = \"0.05 um\""));
    Path form = folder.resolve("form.csv");
    assertThat(run(form, "--plan", "--against", design.toString())).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString())
        .contains("axis X: s is expected to be", "no test of reasonable length");
    assertThat(form).doesNotExist();
  }
}
