package reseat.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.designfile.Starter;

/** The mount command as a person at the bench sees it. */
class BallMountCommandTest extends TypedCommand {

  /** The example with a pad so small that friction of the pivot holds it out of line. */
  private static final String GOOD =
      Starter.BALL_MOUNT
          .text()
          .replace("pad_diameter = \"80 mm\"", "pad_diameter = \"40 mm\"")
          .replace("film_stiffness = \"40 N/um\"", "film_stiffness = \"25 N/um\"")
          .replace("tilt_stiffness = \"12 N·m/mrad\"", "tilt_stiffness = \"1.5 N·m/mrad\"")
          .replace("height = \"5 um\"", "height = \"2 um\"");

  @TempDir private Path folder;

  private int run(String text, String... options) throws IOException {
    Path file = Files.writeString(folder.resolve("m.toml"), text);
    return type(List.of("mount", file), options);
  }

  private static String with(String... changes) {
    String text = GOOD;
    for (int i = 0; i < changes.length; i += 2) {
      assertThat(text).contains(changes[i]);
      text = text.replace(changes[i], changes[i + 1]);
    }
    return text;
  }

  /** The table of the example that only a trihedral seat has. */
  private static final String SLOTS =
      GOOD.substring(GOOD.indexOf("[seat.slotting]"), GOOD.indexOf("[film_pad]"));

  @Test
  void theExampleHoldsByADecisionThatIsTold() throws IOException {
    assertThat(run(Starter.BALL_MOUNT.text())).isEqualTo(ExitCode.HOLDS);
    assertThat(out.toString().replaceAll("\\s+", " "))
        .contains("by accepted decision", "Reason: set, locked, read, corrected");
    assertThat(run(Starter.BALL_MOUNT.text().replace("\"60 um\"", "\"40 um\"")))
        .as("it lapses beyond its value")
        .isEqualTo(ExitCode.NEEDS_DECISION);
    assertThat(run(Starter.BALL_MOUNT.text().replace("\"this mount\"", "\"that mount\"")))
        .as("no such place")
        .isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString().lines()).singleElement().asString().contains("accepted[1].where");
  }

  @Test
  void aDoubtIsAFindingAndNoLineOnTheErrorStream() throws IOException {
    String doubted =
        Starter.BALL_MOUNT
            .text()
            .replace("[ball]\ndiameter = \"10 mm\"", "[ball]\ndiameter = \"10 in\"");
    run(doubted, "--json");
    assertThat(err.toString()).isEmpty();
    assertThat(out.toString()).contains("\"check\": \"input\"");
  }

  @Test
  void thePadDoesNotAlignItselfAndTheScreenSaysWhatToChange() throws IOException {
    assertThat(run(GOOD, "--all")).isEqualTo(ExitCode.CHECK_FAILS);
    assertThat(err.toString()).isEmpty();
    // friction moment 0.21 N·m, centre of pressure 0.83 mm off, 0.14 mrad: a hand calculation of
    // the three sliding contacts, without spin of the patches, gives 0.208 N·m
    assertThat(out.toString())
        .contains("FAILS: 1 of")
        .containsPattern("hold the pad 14\\d µrad out of line")
        .contains("7.1 times the 20.0 µrad allowed")
        .contains("each contact")
        .contains("144 N ")
        .contains("1.76 µm ")
        .contains("3/8-40 sets 1.18 times as finely")
        .contains("the threads of the tapped part strip first")
        .contains("1. Set the screw short of the wanted height")
        .containsPattern("front +counterclockwise +5\\.7")
        .contains("local codes and");
    assertThat(out.toString().replaceAll("\\s+", " ")).contains("Lower the friction of the pivot");
    assertThat(out.toString().lines()).allMatch(l -> l.codePointCount(0, l.length()) <= 100);
  }

  @Test
  void greaseAndAWidePadPass() throws IOException {
    int code =
        run(
            with(
                "friction = 0.12",
                "friction = 0.03",
                "tilt_stiffness = \"1.5 N·m/mrad\"",
                "tilt_stiffness = \"6 N·m/mrad\""));
    assertThat(code).isEqualTo(ExitCode.HOLDS);
    assertThat(out.toString()).contains("HOLDS: all");
  }

  @Test
  void aConeIsWarnedOfAsOverDetermined() throws IOException {
    run(
        with(
            "kind = \"trihedral\"                    # or cone, socket, flat\n"
                + "flank_angle = \"54.7356 deg\"           # of the flats to the pad: corner of a"
                + " cube",
            "kind = \"cone\"\ncone_angle = \"90 deg\"",
            SLOTS,
            ""),
        "--all");
    assertThat(out.toString().replaceAll("\\s+", " "))
        .contains("a cone touches the ball along more than three points")
        .contains("take a trihedral seat");
  }

  @Test
  void aSocketAndAFlatAreTold() throws IOException {
    String trihedral =
        "kind = \"trihedral\"                    # or cone, socket, flat\n"
            + "flank_angle = \"54.7356 deg\"           # of the flats to the pad: corner of a cube";
    run(with(trihedral, "kind = \"socket\"\nouter_angle = \"60 deg\"", SLOTS, ""), "--all");
    assertThat(out.toString())
        .contains("stiffness, sticking", "a spherical socket", "taken for a bed of springs");
    run(with(trihedral, "kind = \"flat\"", SLOTS, ""), "--all");
    assertThat(out.toString()).contains("a flat holds the ball by friction only");
  }

  @Test
  void jsonCarriesEveryNumberInSi() throws IOException {
    assertThat(run(GOOD, "--json")).isEqualTo(ExitCode.CHECK_FAILS);
    assertThat(out.toString())
        .startsWith("{")
        .contains("\"lateral_stiffness_N_per_m\":")
        .contains("\"held_tilt_rad\":")
        .contains("\"quantity\": \"flank_pressure\"")
        .contains("\"turn\": \"counterclockwise\"")
        .contains("\"weakest\": \"nut_strips\"")
        .contains("\"findings\": [");
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void aBareStudIsEnough() throws IOException {
    String bare =
        """
        [ball]
        diameter = "1/2 in"
        material = "52100"
        [load]
        pull = "50 N"
        side = "100 N"
        [stud]
        neck_diameter = "6 mm"
        stick_out = "12 mm"
        material = "1045"
        root = "rigid"
        """;
    assertThat(run(bare, "--all")).isEqualTo(ExitCode.HOLDS);
    // 32 F l/(pi d^3) = 56.588 MPa at 100 N, computed independently; and 50 N over the neck's area
    assertThat(out.toString()).contains("50.0 N pulling").contains("58.4 MPa");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          [ball]            | [bal]                | did you mean "ball"?
          press = "250 N"   | pull = "250 N"       | a seat to pivot in needs a load that presses
          press = "250 N"   | press = "250"        | has no unit
          peak_press = "320 N" | peak_press = "320 N"\\npeak_pull = "1 N" | are both given; leave one out
          peak_side = "25 N" | peak_side = "-25 N" | must not be negative
          compare_thread = "M8x0.75" | compare_thread = "M8x" | is not understood
          kind = "ball-mount" | kind = "tool-post" | has kind = "ball-mount"
          clockwise = "raises" | clockwise = "up"  | allowed is lowers, raises
          reads = "12 um"   |                      | reads: is missing
          tilt = "20 urad"  | tilt = "0 urad"      | must be above zero
          film_stiffness = "25 N/um" | film_stiffness = "25 N" | film_stiffness
          flank_angle = "54.7356 deg" | flank_angle = "89 deg" | at 89.00 deg to the plane of the seat
          """)
  void aMistakeIsToldOnItsLineAndNothingIsComputed(String old, String bad, String message)
      throws IOException {
    String text = with(old, bad == null ? "" : bad.replace("\\n", "\n"));
    assertThat(run(text)).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(out.toString()).isEmpty();
    assertThat(err.toString()).contains(message).contains("m.toml:");
  }

  @Test
  void allMistakesComeAtOnce() throws IOException {
    String text = with("press = \"250 N\"", "press = 250", "gap = \"0.08 mm\"", "gap = 0.08");
    assertThat(run(text)).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString().lines()).hasSize(2);
  }

  @Test
  void aCouplingIsSentToCheck() throws IOException {
    assertThat(run(Starter.TOOL_POST.text())).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString().lines()).hasSize(1);
    assertThat(err.toString()).contains("'reseat check' reads such a file");
  }

  @Test
  void theStarterNamesTheCommandThatReadsIt() {
    Path file = folder.resolve("new.toml");
    int code = type(List.of("starter", "ball-mount", file));
    assertThat(code).isEqualTo(ExitCode.HOLDS);
    assertThat(out.toString()).contains("next: reseat mount " + file);
  }

  @Test
  void slotsThatAreOffMoveTheBallAndTheWayToCutThemIsTold() throws IOException {
    run(GOOD, "--all");
    assertThat(out.toString())
        .contains("Cut by three slots: lean the spindle 54.74")
        .containsPattern("spindle angle +.2\\.0 arcmin +.7\\.13 µm")
        .containsPattern("index, each slot +.2\\.0 arcmin +0 +0 +0")
        .containsPattern("lean of index axis +1\\.0 arcmin +0 +2\\.52 µm");
    run(GOOD, "--json");
    assertThat(out.toString())
        .contains("\"slotting\":", "\"source\": \"depth\"", "\"ball_aside_m\":");
    assertThat(
            run(
                with(
                    "kind = \"trihedral\"                    # or cone, socket, flat\n"
                        + "flank_angle = \"54.7356 deg\" ",
                    "kind = \"cone\"\ncone_angle = \"90 deg\" ")))
        .isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("slotting", "for a trihedral seat");
  }

  @Test
  void eachPictureOfAMountIsWrittenAndAnUnknownOneIsNamed() throws IOException {
    for (String name : List.of("section-stud", "section-seat")) {
      Path target = folder.resolve(name + ".svg");
      assertThat(run(GOOD, "--picture", name, "-o", target.toString())).isEqualTo(ExitCode.HOLDS);
      assertThat(Files.readString(target)).contains("<svg", "ball");
    }
    assertThat(run(GOOD, "--picture", "section-stub", "-o", folder.resolve("x").toString()))
        .isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString())
        .contains("did you mean section-stud?")
        .contains("Pictures of this mount: section-stud, section-seat");
    assertThat(run(GOOD, "--picture", "section-stud")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("--picture needs --output FILE");
  }
}
