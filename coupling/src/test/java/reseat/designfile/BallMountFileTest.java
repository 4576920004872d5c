package reseat.designfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.ballmount.AdjustingScrews;
import reseat.ballmount.ConePivot;
import reseat.ballmount.FlatPivot;
import reseat.ballmount.SocketPivot;
import reseat.ballmount.TrihedralPivot;
import reseat.design.AdjustmentTask;
import reseat.design.BallMountDesign;
import reseat.design.PivotDuty;

/** What a file on one ball mount says, and what it is told about mistakes. */
class BallMountFileTest {

  private static final String GOOD = Starter.BALL_MOUNT.text();
  private static final String SLOTS =
      GOOD.substring(GOOD.indexOf("[seat.slotting]"), GOOD.indexOf("[film_pad]"));
  private static final String KIND_OF_SEAT =
      GOOD.substring(GOOD.indexOf("kind = \"trihedral\""), GOOD.indexOf("material = \"A2\""));

  @TempDir private Path folder;

  private static String with(String... changes) {
    String text = GOOD;
    for (int i = 0; i < changes.length; i += 2) {
      assertThat(text).contains(changes[i]);
      text = text.replace(changes[i], changes[i + 1]);
    }
    return text;
  }

  private static BallMountDesign design(String text) {
    BallMountFile file = BallMountFile.read(text);
    assertThat(file.problems()).isEmpty();
    return file.design().orElseThrow();
  }

  private static List<String> problems(String text) {
    BallMountFile file = BallMountFile.read(text);
    assertThat(file.design()).isEmpty();
    return file.problems().stream().map(p -> p.oneLine("m.toml")).toList();
  }

  @Test
  void everyNumberOfTheExampleArrivesInSi() {
    BallMountDesign d = design(GOOD);
    assertThat(d.title()).isEqualTo("Gimballed air-bearing pad on a bonded ball");
    assertThat(d.ballRadius()).isCloseTo(0.005, within(1e-15));
    assertThat(d.ballMaterial().name()).contains("52100");
    // presses onto the stud, so it pulls with less than nothing
    assertThat(d.sustained().pull()).isEqualTo(-250);
    assertThat(d.sustained().lateral()).isZero();
    assertThat(d.peak().pull()).isEqualTo(-320);
    assertThat(d.peak().lateral()).isEqualTo(25);
    assertThat(d.press()).isEqualTo(250);
    assertThat(d.otherThread().orElseThrow().pitch()).isCloseTo(0.75e-3, within(1e-12));
    assertThat(d.targets().height()).isCloseTo(5e-6, within(1e-15));
    assertThat(d.targets().tilt()).isCloseTo(20e-6, within(1e-15));
    PivotDuty pivot = d.pivot().orElseThrow();
    assertThat(pivot.friction()).isEqualTo(0.12);
    assertThat(pivot.frictionBasis()).isEqualTo("given in the file");
    PivotDuty.Film film = pivot.film().orElseThrow();
    assertThat(film.stiffness()).isCloseTo(40e6, within(1e-6));
    assertThat(film.tiltStiffness()).isCloseTo(12000, within(1e-8));
    assertThat(film.padRadius()).isCloseTo(0.040, within(1e-12));
    assertThat(film.thickness()).isCloseTo(5e-6, within(1e-15));
    assertThat(pivot.slotting()).isPresent();
    TrihedralPivot seat = (TrihedralPivot) pivot.seat();
    assertThat(seat.flankAngle()).isCloseTo(Math.atan(Math.sqrt(2)), within(1e-6));
    assertThat(seat.ballRadius()).isEqualTo(d.ballRadius());
  }

  @Test
  void threeScrewsBringThePlaneOfThreeIndicatorsToItsReadings() {
    AdjustmentTask task = design(GOOD).adjustment().orElseThrow();
    assertThat(task.screwNames()).containsExactly("front", "left", "right");
    assertThat(task.stationNames()).containsExactly("A", "B", "C");
    List<AdjustingScrews.Step> steps = task.steps();
    // changes -12, +8, -3 um at A, B, C: by hand the plane rises by -2.3333 - 0.19333 x + 0.12702 y
    // (um, mm), at the screws -10.067, +5.933 and -2.867 um; pitch 0.635 mm
    double[] rises = {-10.067e-6, 5.933e-6, -2.867e-6};
    for (int i = 0; i < 3; i++) {
      assertThat(steps.get(i).rise()).isCloseTo(rises[i], within(2e-9));
      assertThat(steps.get(i).degrees())
          .isCloseTo(Math.abs(rises[i]) / 0.635e-3 * 360, within(2e-3));
    }
    assertThat(steps.get(0).turn()).isEqualTo(AdjustingScrews.Turn.COUNTERCLOCKWISE);
    assertThat(steps.get(1).turn()).isEqualTo(AdjustingScrews.Turn.CLOCKWISE);
    List<AdjustingScrews.Step> lowering =
        design(with("clockwise = \"raises\"", "clockwise = \"lowers\""))
            .adjustment()
            .orElseThrow()
            .steps();
    assertThat(lowering.get(0).turn()).isEqualTo(AdjustingScrews.Turn.CLOCKWISE);
    assertThat(lowering.get(0).degrees()).isCloseTo(steps.get(0).degrees(), within(1e-12));
  }

  @Test
  void screwsAndIndicatorsWithoutNamesAreNumberedAndMayHaveTheirOwnThread() {
    AdjustmentTask task =
        design(
                with(
                    "name = \"front\"\n", "",
                    "name = \"C\"\n", "",
                    "clockwise = \"raises\" ", "thread = \"M6x0.5\"\nclockwise = \"raises\" "))
            .adjustment()
            .orElseThrow();
    assertThat(task.screwNames()).containsExactly("screw 1", "left", "right");
    assertThat(task.stationNames()).containsExactly("A", "B", "indicator 3");
    assertThat(task.screws().thread().pitch()).isCloseTo(0.5e-3, within(1e-12));
  }

  @Test
  void aConeIsStatedByItsIncludedAngleAndASocketByItsLand() {
    ConePivot cone =
        (ConePivot)
            design(with(KIND_OF_SEAT, "kind = \"cone\"\ncone_angle = \"100 deg\"\n", SLOTS, ""))
                .pivot()
                .orElseThrow()
                .seat();
    // normals stand square to the flanks, which lean 50 deg from the axis: 40 deg
    assertThat(cone.flankAngle()).isCloseTo(Math.toRadians(40), within(1e-12));
    SocketPivot socket =
        (SocketPivot)
            design(
                    with(
                        KIND_OF_SEAT,
                        "kind = \"socket\"\ninner_angle = \"15 deg\"\nouter_angle = \"50 deg\"\n",
                        SLOTS,
                        ""))
                .pivot()
                .orElseThrow()
                .seat();
    assertThat(socket.innerAngle()).isCloseTo(Math.toRadians(15), within(1e-12));
    assertThat(socket.outerAngle()).isCloseTo(Math.toRadians(50), within(1e-12));
    assertThat(
            design(with(KIND_OF_SEAT, "kind = \"flat\"\n", SLOTS, "")).pivot().orElseThrow().seat())
        .isInstanceOf(FlatPivot.class);
  }

  @Test
  void frictionThatIsNotStatedComesFromTheCatalogWithItsSource() {
    String unstated = with("friction = 0.12 ", "surface = \"oiled\" ");
    PivotDuty oiled = design(unstated).pivot().orElseThrow();
    PivotDuty dry = design(unstated.replace("\"oiled\"", "\"dry\"")).pivot().orElseThrow();
    assertThat(dry.friction()).isGreaterThan(oiled.friction());
    assertThat(oiled.frictionBasis()).isNotEqualTo("given in the file").isNotBlank();
    assertThat(design(with("friction = 0.12 ", "")).pivot().orElseThrow().friction())
        .isEqualTo(oiled.friction());
  }

  @Test
  void withoutAPeakTheLoadThatStaysIsTheGreatest() {
    int from = GOOD.indexOf("peak_press");
    String text = GOOD.substring(0, from) + GOOD.substring(GOOD.indexOf("[stud]"));
    BallMountDesign d = design(text);
    assertThat(d.peak()).isEqualTo(d.sustained());
  }

  @Test
  void aBallThatIsDrawnOffItsStudNeedsNoSeat() {
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
    BallMountDesign d = design(bare);
    assertThat(d.sustained().pull()).isEqualTo(50);
    assertThat(d.sustained().lateral()).isEqualTo(100);
    assertThat(d.press()).isEqualTo(-50);
    assertThat(d.title()).isEmpty();
    assertThat(d.ballRadius()).isCloseTo(0.00635, within(1e-12));
    assertThat(d.pivot()).isEmpty();
    assertThat(d.adjustment()).isEmpty();
    assertThat(d.otherThread()).isEmpty();
    assertThat(d.targets().height()).isInfinite();
    assertThat(d.targets().tilt()).isInfinite();
    assertThat(problems(bare.replace("pull = \"50 N\"\n", "")))
        .anyMatch(p -> p.contains("load.press: is missing") && p.contains("pull for one that"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          press = "250 N" | pull = "250 N"      | a seat to pivot in needs a load that presses
          peak_press = "320 N" | peak_press = "320 N"\\npeak_pull = "1 N" | peak_press and peak_pull are both given
          peak_side = "25 N" | peak_side = "-25 N" | must not be negative
          kind = "ball-mount" | kind = "pallet" | has kind = "ball-mount"
          clockwise = "raises" | clockwise = "up" | allowed is lowers, raises
          at = ["50 mm", "0 mm", "0 mm"] |      | at: is missing; write ["x", "y", "z"]
          reads = "-8 um" |                     | reads: is missing
          [[adjusting.screw]]\\nname = "front"\\nat = ["40 mm", "0 mm", "0 mm"] | | found 2; three [[adjusting.screw]] tables
          [[adjusting.indicator]]\\nname = "A"\\nat = ["50 mm", "0 mm", "0 mm"]\\nreads = "12 um"\\nwanted = "0 um" | | found 2; three [[adjusting.indicator]] tables
          at = ["-20 mm", "34.64 mm", "0 mm"] | at = ["-50 mm", "43.3 mm", "0 mm"]\\nhigh = 1 | high
          at = ["-20 mm", "34.64 mm", "0 mm"] | at = ["10 mm", "-17.32 mm", "0 mm"] | adjusting screws lie on one line
          flank_angle = "54.7356 deg" | flank_angle = "89 deg" | at 89.00 deg to the plane of the seat
          film_thickness = "5 um" | film_thickness = "-5 um" | film_thickness
          tilt = "20 urad" | tilt = "-1 urad"   | tilt
          kind = "trihedral" | kind = "ring"    | allowed is cone, flat, socket, trihedral
          """)
  void aMistakeIsToldInItsPlace(String old, String bad, String message) {
    String text = with(old.replace("\\n", "\n"), bad == null ? "" : bad.replace("\\n", "\n"));
    assertThat(problems(text)).hasSizeBetween(1, 2).anyMatch(p -> p.contains(message));
  }

  @Test
  void aFilmPadNeedsASeatAndOnlyATrihedralSeatIsSlotted() {
    String seat = GOOD.substring(GOOD.indexOf("[seat]"), GOOD.indexOf("[film_pad]"));
    assertThat(problems(with(seat, "")))
        .singleElement()
        .asString()
        .contains("film_pad: needs the seat that the pad turns on; add [seat]");
    assertThat(problems(with(KIND_OF_SEAT, "kind = \"flat\"\n")))
        .anyMatch(p -> p.contains("slotting: is for a trihedral seat"));
  }

  @Test
  void adjustingScrewsWithoutAThreadAnywhereAreAskedForOne() {
    String thread = GOOD.substring(GOOD.indexOf("[thread]"), GOOD.indexOf("[lock_nut]"));
    String nut = GOOD.substring(GOOD.indexOf("[lock_nut]"), GOOD.indexOf("[bond]"));
    assertThat(
            problems(
                with(
                    thread,
                    "",
                    nut,
                    "",
                    "root = \"thread\"",
                    "root = \"rigid\"",
                    "compare_thread = \"M8x0.75\"",
                    "")))
        .anyMatch(p -> p.contains("adjusting.thread: is missing; write the thread"));
  }

  @Test
  void aWholeCouplingIsSentToItsOwnCommandByTheFirstThingInIt() {
    assertThat(problems(Starter.TOOL_POST.text()))
        .singleElement()
        .asString()
        .contains("layout: belongs to a whole coupling", "'reseat check' reads such a file");
    assertThat(problems(Starter.SENSOR_MOUNT.text()))
        .singleElement()
        .asString()
        .contains("support: belongs to a whole coupling");
  }

  @Test
  void textThatIsNoTomlIsToldWithLineAndColumn() {
    assertThat(problems("title = \n" + GOOD)).anyMatch(p -> p.startsWith("m.toml:1:"));
  }

  @Test
  void aFileSaysByItsKindThatItIsOnABallMount() throws IOException {
    Path mount = Files.writeString(folder.resolve("m.toml"), GOOD);
    assertThat(BallMountFile.isOne(mount)).isTrue();
    assertThat(BallMountFile.read(mount).design()).isPresent();
    Path post = Files.writeString(folder.resolve("p.toml"), Starter.TOOL_POST.text());
    assertThat(BallMountFile.isOne(post)).isFalse();
    Path number = Files.writeString(folder.resolve("n.toml"), "kind = 3\n");
    assertThat(BallMountFile.isOne(number)).isFalse();
    Path bytes = Files.write(folder.resolve("b.toml"), new byte[] {'a', (byte) 0xff, 'b'});
    BallMountFile unread = BallMountFile.read(bytes);
    assertThat(unread.design()).isEmpty();
    assertThat(unread.problems()).hasSize(1);
  }
}
