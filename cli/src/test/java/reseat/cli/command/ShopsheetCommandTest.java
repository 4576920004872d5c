package reseat.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import reseat.designfile.Starter;
import reseat.numerics.RandomStream;

/** What the papers for the shop floor hold, and that their numbers are those of the check. */
class ShopsheetCommandTest extends TypedCommand {

  @TempDir Path folder;
  private Path design;
  private Path target;

  @BeforeEach
  void design() throws IOException {
    design = folder.resolve("post.toml");
    target = folder.resolve("sheets");
    write(Starter.TOOL_POST.text());
  }

  private void write(String text) throws IOException {
    Files.writeString(design, text);
    Files.setLastModifiedTime(design, FileTime.from(Instant.parse("2026-03-14T10:00:00Z")));
  }

  private int run(String... args) {
    return type(List.of(), args);
  }

  private int sheets(String... more) {
    return type(List.of("shopsheet", design, "-o", target), more);
  }

  private String words(String name) throws IOException {
    return PaperWords.of(Files.readString(target.resolve(name)));
  }

  private static double number(String json, String key) {
    Matcher m = Pattern.compile('"' + key + "\": (-?[0-9.Ee-]+)").matcher(json);
    assertThat(m.find()).as(key).isTrue();
    return Double.parseDouble(m.group(1));
  }

  @ParameterizedTest
  @EnumSource(Starter.class)
  void everyStarterHasPapersThatNeedNothingElseAndCarryTheirOrigin(Starter starter)
      throws IOException {
    write(starter.text());
    assertThat(sheets()).as(err.toString()).isIn(ExitCode.HOLDS, ExitCode.CHECK_FAILS);
    assertThat(err.toString()).isEmpty();
    try (var files = Files.list(target)) {
      List<Path> pages = files.filter(f -> f.toString().endsWith(".html")).toList();
      assertThat(pages).hasSizeGreaterThanOrEqualTo(3);
      for (Path page : pages) {
        String html = Files.readString(page);
        assertThat(html.replaceAll("xmlns(:\\w+)?=\"http[^\"]*\"", ""))
            .as(page.toString())
            .doesNotContain("<script")
            .doesNotContain(" src=")
            .doesNotContain("http://")
            .doesNotContain("NaN")
            .doesNotContain("∞")
            .contains("post.toml, saved 2026-03-14 (UTC), digest ")
            .contains("Made by reseat ");
      }
    }
  }

  @Test
  void theSetForThePreloadIsThatOfTheCheck() throws IOException {
    assertThat(sheets()).isEqualTo(ExitCode.HOLDS);
    String setting = words("setting.html");
    assertThat(run("check", design.toString(), "--all")).isEqualTo(ExitCode.HOLDS);
    String check = out.toString().replaceAll("\\s+", " ");
    Matcher told =
        Pattern.compile(
                "for (600 N) set (deflection [0-9.]+ mm)\\. .*; aim between (deflection [0-9.]+ mm)"
                    + " and deflection ([0-9.]+ mm)\\.")
            .matcher(check);
    assertThat(told.find()).as(check).isTrue();
    assertThat(setting)
        .contains(told.group(1) + " (135 lbf) " + told.group(2) + " (")
        .containsPattern(told.group(3) + " \\([0-9.]+ in\\) and " + told.group(4) + " \\(");
    Matcher shift =
        Pattern.compile("moves the ball out by ([0-9.]+) to ([0-9.]+) µm").matcher(check);
    assertThat(shift.find()).isTrue();
    double low = Double.parseDouble(shift.group(1));
    double high = Double.parseDouble(shift.group(2));
    assertThat(setting)
        .contains(String.format(Locale.ROOT, "%.0f ± %.0f µm", (low + high) / 2, (high - low) / 2));
  }

  @Test
  void theNumbersForProgramsAreThoseOfTheCheckToo() {
    assertThat(run("shopsheet", design.toString(), "--json")).isEqualTo(ExitCode.HOLDS);
    String papers = out.toString();
    assertThat(run("check", design.toString(), "--json")).isEqualTo(ExitCode.HOLDS);
    String check = out.toString();
    String findings = check.substring(check.indexOf("\"findings\""));
    assertThat(papers).contains(findings.substring(0, findings.indexOf("\n  ]")));
    assertThat(target).as("nothing is written unless a folder is named").doesNotExist();
    // 5/16 in over a right-angled groove of 0.413 in: R (1 + sqrt 2) - W/2
    assertThat(number(papers, "height_m"))
        .isEqualTo(3.96875e-3 * (1 + Math.sqrt(2)) - 0.413 * 25.4e-3 / 2, within(1e-9));
    assertThat(number(papers, "travel_per_degree_m")).isEqualTo(25.4e-3 / 40 / 360, within(1e-9));
  }

  @Test
  void thePressureMarksAndTheLiftOffAreThoseOfTheCheck() throws IOException {
    assertThat(sheets()).isEqualTo(ExitCode.HOLDS);
    assertThat(run("check", design.toString(), "--all")).isEqualTo(ExitCode.HOLDS);
    String check = out.toString();
    Matcher patch = Pattern.compile("([0-9.]+) x ([0-9.]+) +[0-9.]+ +\\d+ %").matcher(check);
    assertThat(patch.find()).isTrue();
    assertThat(words("upkeep.html")).contains(patch.group(1) + " mm (");
    String cautions = words("cautions.html");
    for (String load : List.of("rough", "crash")) {
      Matcher lifts = Pattern.compile(" " + load + " .* ([0-9.]+) ×  ").matcher(check);
      assertThat(lifts.find()).as(load).isTrue();
      assertThat(cautions).containsPattern(load + " [^x]* " + lifts.group(1) + " x");
    }
    Matcher least = Pattern.compile("lifts a contact off: (\\d+ N) along").matcher(check);
    assertThat(least.find()).isTrue();
    assertThat(cautions).contains("opens a contact is " + least.group(1) + " (");
  }

  @Test
  void theDrawingAndTheGaugeSheetTellOfTheSameGroove() throws IOException {
    assertThat(sheets()).isEqualTo(ExitCode.HOLDS);
    // over the face: the top of the design's own ball less its radius is the centre
    assertThat(words("gauge.html")).contains("10.085 mm (0.39705 in)");
    assertThat(Files.readString(target.resolve("base-drawing.svg"))).contains("3.735 ±0.008");
    assertThat(10.085 - 12.7 / 2).isEqualTo(3.735, within(5e-4));
    for (String half : List.of("base", "holder")) {
      assertThat(Files.readString(target.resolve(half + "-coordinates.csv")))
          .contains("digest ")
          .contains("34.9250");
      assertThat(Files.readString(target.resolve(half + "-drawing-mm.dxf"))).endsWith("EOF\n");
    }
    assertThat(sheets("--units", "inch")).isEqualTo(ExitCode.HOLDS);
    assertThat(target.resolve("base-drawing-inch.dxf")).exists();
  }

  @Test
  void gaugesOfTheCommandLineTakeThePlaceOfTheFiles() throws IOException {
    assertThat(sheets("--gauge-ball", "10 mm", "--gauge-pin", "8 mm", "--gauge-pin", "20 mm"))
        .as(err.toString())
        .isEqualTo(ExitCode.HOLDS);
    assertThat(words("gauge.html"))
        .contains("10.000 mm (0.3937 in)")
        .contains("8.000 mm")
        .contains(
            "Not in front, left, right: 20.000 mm (0.7874 in) reaches over or down to the mouth edge.")
        .doesNotContain("12.700 mm");
  }

  @Test
  void oneUnitSystemWhereItIsAskedForAndBothWhereBothAre() throws IOException {
    assertThat(sheets("--units", "inch")).isEqualTo(ExitCode.HOLDS);
    assertThat(words("gauge.html"))
        .contains("0.39705 in")
        .doesNotContain("10.085 mm")
        .contains("each 10 µin more");
    assertThat(sheets("--units", "both", "--force")).as(err.toString()).isEqualTo(ExitCode.HOLDS);
    assertThat(words("gauge.html")).contains("10.085 mm (0.39705 in)");
    assertThat(run("shopsheet", design.toString(), "--json", "--units", "furlong"))
        .isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("allowed are mm, inch and both");
  }

  @Test
  void aBallIsRaisedByTurnsThatTravelAsFar() throws IOException {
    assertThat(sheets("--raise", "front=-0.0635 mm", "--raise", "left=20 um"))
        .as(err.toString())
        .isEqualTo(ExitCode.HOLDS);
    // a tenth of the pitch of 0.635 mm, downward: clockwise drives a right-hand screw out
    assertThat(words("setting.html")).contains("counterclockwise 36 degrees minute 6.0");
    assertThat(sheets("--raise", "fornt=20 um")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("did you mean front?");
    assertThat(sheets("--raise", "front")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(sheets("--raise", "front=20")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("--raise").contains("no unit");
    assertThat(sheets("--gauge-ball", "-3 mm")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("must be above 0");
  }

  @Test
  void theFormForReadingsProvesTheTargetsOnceItIsFilledIn() throws IOException {
    assertThat(sheets()).isEqualTo(ExitCode.HOLDS);
    Path form = target.resolve("acceptance.csv");
    StringBuilder filled = new StringBuilder();
    int mount = 0;
    RandomStream luck = RandomStream.of(20261130, 4);
    for (String line : Files.readAllLines(form)) {
      if (line.matches("\\d+,+")) {
        // to and fro without any order: neighbours that alternate prove nothing
        double swing = 0.1 * luck.normal();
        mount++;
        filled.append(
            String.format(Locale.ROOT, "%d,%.3f,%.3f,%.3f,20.0,,,%n", mount, swing, swing, swing));
      } else {
        filled.append(line).append('\n');
      }
    }
    Files.writeString(form, filled);
    Matcher told =
        Pattern.compile(
                "reseat (readings) (acceptance.csv)( --multiplier 1.96)((?: --target \"[^\"]*\")+)")
            .matcher(words("acceptance.html").replace("&#34;", "\"").replace("&quot;", "\""));
    assertThat(told.find()).isTrue();
    List<String> args =
        new ArrayList<>(List.of("readings", form.toString(), "--multiplier", "1.96"));
    Matcher each = Pattern.compile("--target \"([^\"]*)\"").matcher(told.group(4));
    while (each.find()) {
      args.add("--target");
      args.add(each.group(1));
    }
    assertThat(args).contains("X=0.500 um", "height=2.50 um");
    assertThat(run(args.toArray(new String[0]))).as(err.toString()).isEqualTo(ExitCode.HOLDS);
    // as many as readings --plan asks for
    assertThat(mount).isEqualTo(23);
  }

  @Test
  void aGapThatIsTooSmallFailsAndEverySheetSaysSo() throws IOException {
    write(Starter.TOOL_POST.text().replace("gap = \"0.5 mm\"", "gap = \"0.05 mm\""));
    assertThat(sheets()).isEqualTo(ExitCode.CHECK_FAILS);
    assertThat(words("clearances.html")).contains("TOO SMALL");
    assertThat(words("gauge.html"))
        .contains("DO NOT MAKE IT SO")
        .contains("the design does not hold (clearance)");
    for (String name : List.of("base-drawing.svg", "holder-drawing-mm.dxf", "base-sizes.csv")) {
      assertThat(Files.readString(target.resolve(name))).as(name).contains("DO NOT MAKE IT SO");
    }
  }

  @Test
  void aCouplingThatDoesNotStandHasNoPapers() throws IOException {
    write(Starter.TOOL_POST.text().replace("kind = \"vee\" ", "axis = \"0 deg\"\nkind = \"vee\" "));
    assertThat(sheets()).isEqualTo(ExitCode.CHECK_FAILS);
    assertThat(err.toString()).isEmpty();
    assertThat(out.toString()).contains("one motion is free").contains("reseat check");
    assertThat(target).doesNotExist();
  }

  @Test
  void badInputWritesNothing() throws IOException {
    write(Starter.TOOL_POST.text().replace("[\"1/2 in\"]", "[\"0 in\"]"));
    assertThat(sheets()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("gauge.balls").contains("above zero");
    assertThat(target).doesNotExist();
    assertThat(run("shopsheet", design.toString())).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("name the folder to write");
    write(Starter.BALL_MOUNT.text());
    assertThat(sheets("--raise", "front=1 um")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("whole coupling");
  }

  @Test
  void theSameFileGivesTheSameBytesAndAFolderOfOthersStays() throws IOException {
    assertThat(sheets()).isEqualTo(ExitCode.HOLDS);
    Path first = target;
    target = folder.resolve("again");
    assertThat(sheets()).isEqualTo(ExitCode.HOLDS);
    try (var files = Files.list(first)) {
      for (Path f : files.toList()) {
        assertThat(Files.readAllBytes(f))
            .as(f.toString())
            .isEqualTo(Files.readAllBytes(target.resolve(f.getFileName())));
      }
    }
    assertThat(sheets()).as("a folder of the same command is replaced").isEqualTo(ExitCode.HOLDS);
    target = Files.createDirectory(folder.resolve("mine"));
    Files.writeString(target.resolve("notes.txt"), "dear");
    assertThat(sheets()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("did not write");
    assertThat(target.resolve("gauge.html")).doesNotExist();
    assertThat(run("report", design.toString(), "-o", first.toString(), "--mounts", "40"))
        .as("papers are not replaced by a report")
        .isEqualTo(ExitCode.BAD_INPUT);
  }

  @Test
  void textOfTheUserIsEscaped() throws IOException {
    write(
        Starter.TOOL_POST
            .text()
            .replace("Tool post for a small facing lathe", "<img src=x> & post")
            .replace("drawbolt shank in its hole", "<b>drawbolt</b>")
            .replace("\"front\"", "\"<i>\""));
    assertThat(sheets()).as(err.toString()).isEqualTo(ExitCode.HOLDS);
    for (String name : List.of("gauge.html", "clearances.html", "setting.html")) {
      assertThat(Files.readString(target.resolve(name)))
          .doesNotContain("<img")
          .doesNotContain("<i>")
          .doesNotContain("<b>");
    }
  }
}
