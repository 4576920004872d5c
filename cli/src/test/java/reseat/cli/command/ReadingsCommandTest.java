package reseat.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReadingsCommandTest extends TypedCommand {

  @TempDir private Path folder;

  private int run(Path file, String... options) {
    return type(List.of("readings", file), options);
  }

  private Path file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  private Path five() throws IOException {
    return file("five.csv", "cycle,X [um],Z [um]\n1,1,2\n2,2,4\n3,3,3\n4,2,1\n5,2,5\n");
  }

  private Path holders() throws IOException {
    SplittableRandom random = new SplittableRandom(141);
    StringBuilder text = new StringBuilder("X [um],holder,temperature [degC]\n");
    for (int i = 0; i < 24; i++) {
      text.append(
          String.format(
              Locale.ROOT, "%.3f,%d,20.5%n", 5.0 * (i % 3) + 0.1 * random.nextGaussian(), i % 3));
    }
    return file("holders.csv", text.toString());
  }

  @Test
  void theTableGivesEachFigureWithItsMultiplierAndBound() throws IOException {
    assertThat(run(five(), "--all")).isEqualTo(ExitCode.HOLDS);
    assertThat(out.toString())
        .contains("5 mounts; X, Z in µm.")
        .containsPattern("all: s +0\\.71 +1\\.6")
        .containsPattern("4 s \\(ISO 230-2 form\\) +2\\.8 +6\\.3")
        // one-sided factor 2.372356 for five mounts, computed independently
        .containsPattern("true s below, 95 % +1\\.7 +3\\.8")
        .contains("may be up to 2.37 times this");
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void jsonHasTheDocumentedKeysInSi() throws IOException {
    assertThat(run(five(), "--json")).isEqualTo(ExitCode.HOLDS);
    assertThat(out.toString())
        .startsWith("{")
        .contains("\"mounts\": 5", "\"name\": \"X\"", "\"n\": 5", "\"mean_m\": 2.0E-6")
        .contains("\"s_m\": 7.07106781186547", "\"s_upper95_m\": 1.67750")
        .containsPattern("\"range_m\": 2\\.0\\d*E-6")
        .contains("\"drift\": {");
  }

  @Test
  void aTargetThatIsNotProvenNeedsAPerson() throws IOException {
    assertThat(run(five(), "--target", "X=4 um")).isEqualTo(ExitCode.NEEDS_DECISION);
    assertThat(out.toString()).contains("NOT PROVEN: X (too few mounts).");
    assertThat(run(five(), "--target", "X=1 um")).isEqualTo(ExitCode.NEEDS_DECISION);
    assertThat(out.toString()).contains("not proven").contains("more mounts wanted");
    SplittableRandom random = new SplittableRandom(4);
    StringBuilder text = new StringBuilder("X [um]\n");
    for (int i = 0; i < 30; i++) {
      text.append(String.format(Locale.ROOT, "%.3f%n", 0.4 * random.nextGaussian()));
    }
    Path many = file("many.csv", text.toString());
    // The same target told as four standard deviations is a quarter of it as one.
    assertThat(run(many, "--target", "X=2 um")).isEqualTo(ExitCode.HOLDS);
    assertThat(run(many, "--target", "X=2 um", "--multiplier", "8"))
        .isEqualTo(ExitCode.CHECK_FAILS);
    assertThat(out.toString()).contains("MISSED: X.");
  }

  @Test
  void equalReadingsBoundTheScatterOnlyThroughTheStepOfTheGauge() throws IOException {
    Path same = file("same.csv", "X [um]\n" + "1.0\n".repeat(20));
    assertThat(run(same, "--target", "1 um")).isEqualTo(ExitCode.NEEDS_DECISION);
    assertThat(out.toString()).contains("the gauge cannot resolve this mount", "--resolution");
    assertThat(run(same, "--target", "1 um", "--resolution", "1 um")).isEqualTo(ExitCode.HOLDS);
    assertThat(out.toString())
        .containsPattern("From\\s+its\\s+step\\s+the\\s+true\\s+s\\s+is\\s+below");
    run(same, "--json");
    assertThat(out.toString()).contains("\"s_upper95_m\": null");
  }

  @Test
  void everyProblemOfAFileIsALineWithItsPlace() throws IOException {
    Path bad = file("bad.csv", "X [um],Z [um]\n1;5,2\n\"1,5\",2 mm\n");
    assertThat(run(bad)).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString().lines())
        .hasSize(2)
        .allSatisfy(line -> assertThat(line).matches(".*bad\\.csv:[23]:\\d+: column [XZ]: .*"));
    assertThat(out.toString()).isEmpty();
  }

  @Test
  void oneMountOrNoneIsAnswered() throws IOException {
    refused(file("one.csv", "X [um]\n1\n"), "one mount says nothing about scatter");
    refused(file("none.csv", "X [um]\n"), "no readings");
    refused(file("empty.csv", ""), "no head line");
    refused(folder, "this is a folder");
    refused(folder.resolve("missing.csv"), "no such file");
  }

  private void refused(Path file, String reason) {
    assertThat(run(file)).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains(reason);
    assertThat(err.toString().lines()).hasSize(1);
  }

  @Test
  void anOptionThatDoesNotFitTheFileIsNamed() throws IOException {
    Path f = five();
    for (String[] options :
        List.of(
            new String[] {"--target", "Y=1 um"},
            new String[] {"--target", "1"},
            new String[] {"--gauge", "-1 um"},
            new String[] {"--confidence", "95"},
            new String[] {"--wear-in", "4"},
            new String[] {"--offsets", "o.csv"},
            new String[] {"--diameter", "Q"},
            new String[] {"--tool-point", "1 mm, 2 mm, 3 mm"},
            new String[] {"--multiplier", "0"})) {
      err.getBuffer().setLength(0);
      assertThat(run(f, options)).as(options[0]).isEqualTo(ExitCode.BAD_INPUT);
      assertThat(err.toString().lines()).hasSize(1);
      assertThat(err.toString()).startsWith("reseat readings: ").contains(options[0]);
    }
    assertThat(out.toString()).isEmpty();
  }

  @Test
  void severalHoldersGiveAnOffsetTableInTheModeAsked() throws IOException {
    Path csv = folder.resolve("offsets.csv");
    assertThat(
            run(
                holders(),
                "--reference",
                "0",
                "--diameter",
                "x",
                "--offsets",
                csv.toString(),
                "--date",
                "2026-01-14"))
        .isEqualTo(ExitCode.HOLDS);
    assertThat(out.toString())
        .contains("3 holders", "between holders, s", "X as a diameter", "master (0)");
    List<String> lines = Files.readAllLines(csv);
    assertThat(lines.get(1)).startsWith("holder,mounts,X diameter [mm]").endsWith("[degC]");
    assertThat(lines.get(2)).startsWith("0,8,0.000000,0.000000,").endsWith(",2026-01-14,20.50");
    // Holder 1 stands 5 um from holder 0, 10 um as a diameter.
    assertThat(Double.parseDouble(lines.get(3).split(",", -1)[2])).isBetween(0.0097, 0.0103);
    assertThat(run(holders(), "--offsets", csv.toString())).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("--force");
    assertThat(run(holders(), "--offsets", csv.toString(), "--force", "--json"))
        .isEqualTo(ExitCode.HOLDS);
    assertThat(out.toString()).contains("\"offsets\": {", "\"offset_m\"");
  }

  @Test
  void laterChecksAreHeldToTheLimitsOfTheFirstSeries() throws IOException {
    Path base = file("base.csv", "X [um]\n0\n1\n-1\n0.5\n-0.5\n0.8\n-0.9\n0.2\n-0.3\n0.6\n");
    Path good = file("good.csv", "X [um]\n0.2\n-0.4\n");
    Path moved = file("moved.csv", "X [um]\n0.2\n9\n");
    assertThat(run(base, "--later", good.toString())).isEqualTo(ExitCode.HOLDS);
    assertThat(out.toString()).contains("2 later readings within");
    assertThat(run(base, "--later", moved.toString())).isEqualTo(ExitCode.CHECK_FAILS);
    assertThat(out.toString()).contains("reading 2: one mount outside the limits");
    Path other = file("other.csv", "Q [um]\n0.2\n");
    assertThat(run(base, "--later", other.toString())).isEqualTo(ExitCode.BAD_INPUT);
  }

  @Test
  void aBlankFormIsPlannedAndItsFilledRowsAreRead() throws IOException {
    Path form = folder.resolve("form.csv");
    assertThat(run(form, "--plan", "--target", "X=0.5 um", "--expected", "0.2 um"))
        .isEqualTo(ExitCode.HOLDS);
    String text = Files.readString(form);
    assertThat(text)
        .contains(
            "# Acceptance test", "\ncycle,X [um],temperature [degC],date,clock,note\n1,,,,,\n");
    assertThat(run(form, "--plan", "--target", "X=0.5 um")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("--force");
    assertThat(run(folder.resolve("f2.csv"), "--plan")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("name the probes with their targets");
    Files.writeString(
        form,
        text.replace("\n1,,,,,\n", "\n1,0.1,20,,,\n").replace("\n2,,,,,\n", "\n2,0.2,20,,,\n"));
    assertThat(run(form)).isEqualTo(ExitCode.HOLDS);
    assertThat(out.toString()).contains("2 mounts; X in µm.", "without readings passed over");
  }

  @Test
  void theFilledSheetHoldsVerdictLimitsAndReadings() throws IOException {
    Path sheet = folder.resolve("sheet.txt");
    run(five(), "--target", "X=4 um", "--sheet", sheet.toString());
    assertThat(Files.readString(sheet))
        .contains("Verdict", "X: NOT PROVEN: too few mounts", "Z: no target stated")
        .contains("Limits for later checks")
        .containsPattern("mean of 5 mounts within .* µm to .* µm")
        .contains("Readings");
    Path page = folder.resolve("sheet.HTML");
    run(five(), "--target", "X=4 um", "--sheet", page.toString());
    assertThat(Files.readString(page)).startsWith("<!doctype html>").contains("NOT PROVEN: X");
  }

  @Test
  void namesThatASpreadsheetWouldWorkOutStayText() throws IOException {
    Path two =
        file(
            "two.csv", "X [um],holder\n1,=1+1\n1.5,=1+1\n2,@a\n2.4,@a\n3,\"b,-c\"\n3.3,\"b,-c\"\n");
    Path offsets = folder.resolve("offsets.csv");
    run(two, "--offsets", offsets.toString(), "--reference", "b,-c");
    assertThat(Files.readString(offsets).lines())
        .allSatisfy(line -> assertThat(line).doesNotMatch("(.*,)?[ \"]*[=+@].*"))
        .anySatisfy(line -> assertThat(line).startsWith("'=1+1,"))
        .anySatisfy(line -> assertThat(line).startsWith("'@a,"));
  }

  @Test
  void aPlanHoldsTheStatedGaugeAgainstTheTarget() {
    Path form = folder.resolve("gauge.csv");
    String[] plan = {"--plan", "--target", "X=0.5 um", "--force", "--resolution", "2.54 um"};
    assertThat(run(form, plan)).isEqualTo(ExitCode.HOLDS);
    // 2.54 / sqrt(12) = 0.733; a third of the target is 0.167, the rounding of a step of 0.577
    assertThat(out.toString().replaceAll("\\s+", " "))
        .contains("X: your gauge, of step 2.54 µm, has a noise of 0.73 µm: it cannot prove the")
        .contains("reads in steps of 0.58 µm or finer");
    plan[5] = "0.2 um";
    run(form, plan);
    assertThat(out.toString().replaceAll("\\s+", " ")).contains("noise of 0.058 µm, fine enough.");
  }

  @Test
  void theShippedExamplesShowWhatTheirRemarksSay() throws IOException {
    Path examples = Path.of("..", "docs", "examples");
    assertThat(run(examples.resolve("readings-tool-post.csv"))).isEqualTo(ExitCode.HOLDS);
    assertThat(out.toString()).contains("Settled after mount", "Mount 19 (line 23");
    run(examples.resolve("readings-five-holders.csv"), "--reference", "1", "--diameter", "X");
    assertThat(out.toString()).contains("5 holders", "reading of the master (1)");
    run(
        examples.resolve("readings-seven-probes.csv"),
        "--probes",
        examples.resolve("probe-layout.csv").toString(),
        "--tool-point",
        "47 mm, 0 mm, 15.2 mm");
    assertThat(out.toString()).contains("Holder as a rigid body from 7 probes", "along z");
    run(
        examples.resolve("readings-tool-post.csv"),
        "--later",
        examples.resolve("readings-weekly-check.csv").toString());
    assertThat(out.toString()).contains("Later height, reading 14");
  }
}
