package reseat.designfile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.design.CouplingDesign;
import reseat.units.QuantityKind;

class AlterableDesignTest {

  private static final String POST = Starter.TOOL_POST.text();

  private static final AlterableDesign FILE = AlterableDesign.of(POST);

  /** All that a design consists of, in writing; its parts are records. */
  private static String parts(DesignFile file) {
    CouplingDesign d = file.design().orElseThrow(() -> new AssertionError(file.problems()));
    return String.join(
        "\n",
        d.title(),
        d.supports().toString(),
        d.preloads().toString(),
        d.holder().toString(),
        d.toolPoint().toString(),
        d.cases().toString(),
        d.friction().toString(),
        d.targets().toString(),
        d.remount().toString(),
        d.tolerances().toString());
  }

  private static Alteration set(String path, String value) {
    return new Alteration(FILE.key(path), value);
  }

  private static String unknown(String path) {
    return assertThrows(IllegalArgumentException.class, () -> FILE.key(path)).getMessage();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "preload.force | 450 N | force = \"600 N\" | force = \"450 N\"",
        "preload[drawbolt].force | 450 N | force = \"600 N\" | force = \"450 N\"",
        "preload[1].force | 450 N | force = \"600 N\" | force = \"450 N\"",
        "layout.ball.diameter | 3/8 in | diameter = \"1/2 in\" | diameter = \"3/8 in\"",
        "layout.groove.material | 440C | material = \"A2\" | material = \"440C\"",
        "load_case[rough].force.X | -45 N | X = \"-30 N\" | X = \"-45 N\"",
        "tool_point.at[z] | 20 mm | \"0 mm\", \"15.2 mm\"] | \"0 mm\", \"20 mm\"]",
        "tool_point.at[1] | 40 mm | [\"47.0 mm\" | [\"40 mm\"",
        "targets.lift_off_factor | 1.5 | factor = 2 | factor = 1.5",
        "targets.pressure_share | 0.8 | share = \"100 %\" | share = 0.8",
        "preload.device.series | 9 | series = 8 | series = 9",
        "preload.direction | [0, 0.1, -1] | direction = \"-z\" | direction = [0, 0.1, -1]",
        "tolerances.only[1].ball_height | 4 um | ball_height = \"3 um\" | ball_height = \"4 um\"",
        "layout.mounting.bond.bottoms_on_metal | false | metal = true | metal = false",
      })
  void aDesignWithAValueReplacedIsTheOneOfTheFileEditedByHand(
      String path, String value, String before, String after) {
    List<Alteration> change = List.of(set(path, value));
    String byHand = POST.replace(before, after);
    assertEquals(byHand, FILE.textWith(change));
    assertTrue(!byHand.equals(POST), "the example no longer says " + before);
    assertEquals(parts(DesignFile.read(byHand)), parts(FILE.with(change)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "layout.groove.root_depth | 0.5 mm",
        "load_case[finish].moment | [\"1 N·m\", \"0 N·m\", \"0 N·m\"]",
        "layout.mounting.axis | -z",
        "remount.ramp_steps | 40",
        "layout.groove.made_for_ball | 1/2 in",
        "tolerances.shared_seat_depth | 2 um",
      })
  void anAbsentKeyIsAddedWhereItBelongs(String path, String value) {
    List<Alteration> change = List.of(set(path, value));
    DesignFile altered = FILE.with(change);
    assertEquals(Optional.empty(), FILE.typed(change.get(0).key()));
    String text = FILE.textWith(change);
    assertEquals(parts(altered), parts(DesignFile.read(text)));
    assertEquals(POST.lines().count() + 1, text.lines().count());
    List<String> kept = text.lines().toList();
    assertTrue(POST.lines().allMatch(kept::contains), "every line of the user is kept");
  }

  @Test
  void aTableThatIsAbsentAltogetherIsAddedToo() {
    String text = POST.substring(0, POST.indexOf("[remount]"));
    AlterableDesign file = AlterableDesign.of(text);
    List<Alteration> change =
        List.of(
            new Alteration(file.key("remount.film_scatter"), "30 nm"),
            new Alteration(file.key("remount.ramp_steps"), "50"),
            new Alteration(file.key("tolerances.ball_height"), "2 um"));
    DesignFile altered = file.with(change);
    assertEquals(30e-9, altered.design().orElseThrow().remount().film().limit());
    assertEquals(parts(altered), parts(DesignFile.read(file.textWith(change))));
  }

  @Test
  void severalValuesAreReplacedTogetherAndNothingElseIsTouched() {
    List<Alteration> change =
        List.of(
            set("load_case[rough].force.height", "-7.1234567890123 N"),
            set("load_case[rough].force.X", "-1 N"),
            set("layout.ball.material", "silicon nitride"),
            set("layout.groove.flank_angle", "44 deg 30 min"));
    String text = FILE.textWith(change);
    assertEquals(POST.lines().count(), text.lines().count());
    assertTrue(text.contains("# between flank and coupling plane: 90 deg included"));
    assertEquals(parts(FILE.with(change)), parts(DesignFile.read(text)));
  }

  @Test
  void theFileAsItStandsIsNotChangedByReadingItAltered() {
    FILE.with(List.of(set("preload.force", "450 N")));
    assertEquals(parts(DesignFile.read(POST)), parts(FILE.unaltered()));
    assertEquals(Optional.of("600 N"), FILE.typed(FILE.key("preload.force")));
  }

  @Test
  void aWrongValueGetsTheMessageOfTheFileAtThePlaceOfTheOneItReplaces() {
    DesignProblem problem =
        FILE.with(List.of(set("layout.ball.diameter", "12.7"))).problems().get(0);
    int line = POST.substring(0, POST.indexOf("diameter = \"1/2 in\"")).split("\n", -1).length;
    assertEquals(line, problem.line());
    assertEquals("layout.ball.diameter", problem.key());
    assertTrue(problem.message().contains("\"12.7 mm\" or \"12.7 in\""), problem.message());
  }

  @Test
  void aKeyKnowsItsQuantity() {
    assertEquals(Optional.of(QuantityKind.FORCE), FILE.key("preload.force").kind());
    assertEquals(Optional.of(QuantityKind.LENGTH), FILE.key("tool_point.at[x]").kind());
    assertEquals(Optional.of(QuantityKind.RATIO), FILE.key("friction.nominal").kind());
    assertEquals(Optional.of(QuantityKind.ANGLE), FILE.key("tolerances.seat_direction").kind());
    assertEquals(Optional.empty(), FILE.key("layout.groove.kind").kind());
    assertEquals(Optional.empty(), FILE.key("preload.device.series").kind());
    assertEquals("load_case[3].force.X", FILE.key("load_case[rough].force.X").inFile());
  }

  @Test
  void aMisspeltKeyIsToldWithTheOneThatWasMeant() {
    assertTrue(
        unknown("layout.ball_diameter").endsWith("did you mean layout.ball.diameter?"),
        unknown("layout.ball_diameter"));
    assertTrue(unknown("preload.farce").endsWith("did you mean preload.force?"));
    assertTrue(unknown("circle_diameter").endsWith("did you mean layout.circle_diameter?"));
    assertTrue(unknown("remuont.film_scatter").contains("did you mean remount.film_scatter?"));
    assertTrue(unknown("layout.groove.colour").contains("keys of layout.groove: "));
    assertTrue(unknown("whatever").contains("keys at the top: "));
  }

  @Test
  void oneOfSeveralTablesHasToBeChosen() {
    assertEquals(
        "the file has 4 of load_case; say which, or [*] for all: load_case[diamond facing],"
            + " load_case[finish], load_case[rough], load_case[crash]",
        unknown("load_case.force.X"));
    assertTrue(unknown("load_case[ruff].force.X").startsWith("found \"ruff\" in load_case; "));
    assertTrue(unknown("layout[2].kind").contains("is no list"));
    assertTrue(unknown("title.text").contains("is text in this file"));
    assertTrue(unknown("load_case[").contains("write it as in the design file"));
    assertTrue(unknown("preload..force").contains("write it as in the design file"));
  }

  /** The same design in other ways that TOML allows. */
  private static final String DOTTED =
      """
      title = "dotted"
      tool_point.at = ["47 mm", "0 mm", "15 mm"]
      layout.kind = "three-vee"
      layout.circle_diameter = "70 mm"
      layout.ball = { diameter = "1/2 in", material = "52100" }
      layout.groove.kind = "vee"
      layout.groove.flank_angle = "45 deg"
      layout.groove.material = "A2"
      preload = [ { force = "600 N", scatter = "2 %" } ] # on one line
      holder.mass = "1 kg"
      """;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "layout.ball.diameter | 3/8 in",
        "layout.groove.length | 19 mm",
        "layout.first_ball_at | 30 deg",
        "preload.force | 500 N",
        "preload.line_wander | 0.2 mm",
        "targets.lift_off_factor | 3",
        "remount.film_scatter | 20 nm",
        "holder.centre_of_mass | [\"1 mm\", \"0 mm\", \"2 mm\"]",
      })
  void keysWithDotsAndTablesBetweenBracesAreAlteredToo(String path, String value) {
    AlterableDesign file = AlterableDesign.of(DOTTED);
    List<Alteration> change = List.of(new Alteration(file.key(path), value));
    DesignFile altered = file.with(change);
    DesignFile read = DesignFile.read(file.textWith(change));
    assertEquals(
        altered.problems().stream().map(DesignProblem::message).toList(),
        read.problems().stream().map(DesignProblem::message).toList());
    assertEquals(altered.design().isPresent(), read.design().isPresent());
    if (altered.design().isPresent()) {
      assertEquals(parts(altered), parts(read));
      assertTrue(!parts(altered).equals(parts(file.unaltered())), "the key matters");
    }
  }

  @Test
  void aFileThatCannotBeReadSaysSoAndATableWithAHeaderIsNotReplacedAsText() throws IOException {
    Path folder = Files.createTempDirectory("alterable");
    try {
      assertTrue(AlterableDesign.read(folder).unaltered().design().isEmpty());
    } finally {
      Files.delete(folder);
    }
    Alteration whole = set("preload.device", "weight");
    String message =
        assertThrows(IllegalArgumentException.class, () -> FILE.textWith(List.of(whole)))
            .getMessage();
    assertTrue(message.contains("alter its keys one by one"), message);
  }

  @Test
  void aStarMeansAllOfAList() {
    AlterableDesign pallet = AlterableDesign.of(Starter.PALLET.text());
    Alteration pins = new Alteration(pallet.key("support[*].seat.pin_diameter"), "12 mm");
    Alteration force = new Alteration(pallet.key("preload[*].force"), "333 N");
    List<Alteration> change = List.of(pins, force);
    String byHand =
        Starter.PALLET
            .text()
            .replace("pin_diameter = \"10 mm\"", "pin_diameter = \"12 mm\"")
            .replaceAll("(?m)^force = \"[0-9]+ N\"", "force = \"333 N\"");
    assertEquals(byHand, pallet.textWith(change));
    assertEquals(parts(DesignFile.read(byHand)), parts(pallet.with(change)));
    assertEquals(Optional.of("10 mm"), pallet.typed(pins.key()));
    assertEquals("support[1].seat.pin_diameter", pins.key().inFile());
    String message =
        assertThrows(IllegalArgumentException.class, () -> pallet.key("layout.groove.pin_diameter"))
            .getMessage();
    assertTrue(message.contains("support.seat.pin_diameter"), message);
    assertTrue(unknown("layout[*].kind").contains("so [*] means nothing there"));
  }
}
