package reseat.cli.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.designfile.Starter;

class SweepCommandTest extends TypedCommand {

  private static final String PRELOAD = "preload.force=150 N..1.35 kN:5";

  @TempDir Path folder;

  private Path file;

  @BeforeEach
  void writeFile() throws IOException {
    file = folder.resolve("post.toml");
    Files.writeString(file, Starter.TOOL_POST.text());
  }

  private int sweep(String... options) {
    return type(List.of("sweep", file), options);
  }

  @Test
  void aRowForEachValueTellsWhatComesOutAndWhatBinds() {
    assertEquals(ExitCode.HOLDS, sweep("--vary", PRELOAD));
    assertEquals("", err.toString());
    assertTrue(
        out.toString()
            .contains("2 of 5 points pass every check: preload.force = 450 N to 750 N."),
        out.toString());
    assertTrue(out.toString().contains("FAILS: lift-off (crash)"), out.toString());
    assertTrue(out.toString().contains("cannot be made [1]"), out.toString());
    assertTrue(out.toString().contains("no deflection of this device gives"), out.toString());
    assertEquals(5, out.toString().lines().filter(l -> l.matches("  1?[0-9.]+ k?N  .*")).count());
  }

  @Test
  void theValuesStandAsTypedAndTheRestInTheUnitsOfTheFile() {
    assertEquals(ExitCode.HOLDS, sweep("--vary", "layout.ball.diameter=3/8 in,1/2 in"));
    assertTrue(out.toString().contains("  3/8 in         9.525 mm "), out.toString());
    assertTrue(out.toString().contains(" GPa "), out.toString());
    assertFalse(out.toString().contains(" ksi "), out.toString());
    assertEquals(ExitCode.HOLDS, sweep("--vary", "layout.ball.diameter=10 mm,12 mm"));
    assertTrue(out.toString().contains("  10 mm  "), out.toString());
    assertFalse(out.toString().contains("0.3937 in"), out.toString());
    assertTrue(out.toString().contains(" GPa "), out.toString());
  }

  @Test
  void wordsAndPlainNumbersVaryToo() {
    sweep("--vary", "layout.groove.material=A2,440C", "--output", "pressure-share");
    assertTrue(out.toString().contains("  A2 "), out.toString());
    sweep("--vary", "preload.device.series=7..9");
    assertEquals(
        3, out.toString().lines().filter(l -> l.matches("  [789]  .*")).count(), out.toString());
  }

  @Test
  void theSameBytesComeFromAnyNumberOfThreads() {
    String[] threads = {"1", "3"};
    List<String> seen = new ArrayList<>();
    for (String t : threads) {
      sweep("--vary", PRELOAD, "--output", "scatter.Z", "--mounts", "60", "--json", "--threads", t);
      seen.add(out.toString());
    }
    assertTrue(seen.get(0).contains("\"cannot be made\""));
    assertEquals(seen.get(0), seen.get(1));
  }

  @Test
  void filesAreWrittenWholeAndOnlyReplacedWithForce() throws IOException {
    Path csv = folder.resolve("rows.csv");
    Path svg = folder.resolve("curves.svg");
    Path png = folder.resolve("map.png");
    String[] wish = {"--vary", PRELOAD, "--csv", csv.toString(), "--picture", svg.toString()};
    assertEquals(ExitCode.HOLDS, sweep(wish));
    List<String> rows = Files.readAllLines(csv, StandardCharsets.UTF_8);
    assertEquals(6, rows.size());
    assertTrue(
        rows.get(0).startsWith("preload.force,preload.force [SI],peak-pressure [Pa],limit of"),
        rows.get(0));
    assertTrue(rows.get(5).startsWith("1.35 kN,1350.0,,"), rows.get(5));
    byte[] before = Files.readAllBytes(svg);
    assertTrue(new String(before, StandardCharsets.UTF_8).contains(">preload, N<"));
    assertEquals(ExitCode.BAD_INPUT, sweep(wish));
    assertTrue(err.toString().contains("exists already; add --force"), err.toString());
    assertArrayEquals(before, Files.readAllBytes(svg));
    int code =
        sweep(
            "--vary",
            PRELOAD,
            "--vary",
            "layout.circle_diameter=2 in..4 in:4",
            "--picture",
            png.toString(),
            "--csv",
            csv.toString(),
            "--force");
    assertEquals(ExitCode.HOLDS, code, err.toString());
    assertEquals((byte) 0x89, Files.readAllBytes(png)[0]);
    assertEquals(21, Files.readAllLines(csv, StandardCharsets.UTF_8).size());
  }

  @Test
  void outputsCanBeListed() {
    assertEquals(ExitCode.HOLDS, sweep("--list-outputs"));
    assertTrue(out.toString().contains("motion[rough].height"), out.toString());
  }

  @Test
  void aSweepOfCouplingsThatNeverStandHasNoSolution() {
    assertEquals(
        ExitCode.NO_SOLUTION,
        sweep(
            "--vary",
            "preload.at[x]=80 mm,90 mm",
            "--picture",
            folder.resolve("a.svg").toString()));
    assertTrue(out.toString().contains("does not stand [1]"), out.toString());
    assertTrue(err.toString().contains("no point has a value to draw"), err.toString());
    assertFalse(Files.exists(folder.resolve("a.svg")));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--vary | layout.ball_diameter=1 mm,2 mm | did you mean layout.ball.diameter?",
        "--vary | preload.force=1..2 N | has no unit",
        "--vary | layout.ball.diameter=0 mm,1 mm | layout.ball.diameter: found \"0 mm\"",
        "--json |  | name one key or two to vary",
        "--output | stifness | did you mean stiffness?",
        "--picture | a.pdf | end it in .svg or .png",
        "--threads | none | --threads",
      })
  void whatCannotBeUsedIsToldInOneLine(String option, String value, String message) {
    List<String> options = new ArrayList<>(List.of(option));
    if (value != null) {
      options.add(value);
    }
    if (!option.equals("--vary") && !option.equals("--json")) {
      options.addAll(List.of("--vary", PRELOAD));
    }
    assertEquals(ExitCode.BAD_INPUT, sweep(options.toArray(new String[0])));
    assertTrue(err.toString().contains(message), err.toString());
    assertTrue(err.toString().startsWith("reseat sweep: "), err.toString());
    assertEquals("", out.toString());
  }

  @Test
  void wordsHaveNoPlaceOnAnAxis() {
    assertEquals(
        ExitCode.BAD_INPUT,
        sweep("--vary", "layout.groove.material=A2,440C", "--picture", "x.svg"));
    assertTrue(err.toString().contains("leave --picture out"), err.toString());
  }
}
