package reseat.designfile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import reseat.units.Quantity;
import reseat.units.QuantityKind;
import reseat.units.UnitProblem;

/** Values as they stand in a file that is to be altered, and where a wrong one is told. */
class AlteredValueTest {

  private static final String POST = Starter.TOOL_POST.text();
  private static final AlterableDesign FILE = AlterableDesign.of(POST);

  private static Alteration set(String path, String value) {
    return new Alteration(FILE.key(path), value);
  }

  @Test
  void numbersAndFlagsAreTypedAsTheyStandAndListsAreNot() {
    assertEquals(Optional.of("8"), FILE.typed(FILE.key("preload.device.series")));
    assertEquals(
        Optional.of("true"), FILE.typed(FILE.key("layout.mounting.bond.bottoms_on_metal")));
    AlterableDesign own =
        AlterableDesign.of(POST.replace("lift_off_factor = 2", "lift_off_factor = 1.75"));
    assertEquals(Optional.of("1.75"), own.typed(own.key("targets.lift_off_factor")));
    assertEquals(Optional.empty(), FILE.typed(FILE.key("tool_point.at")));
    assertEquals(Optional.empty(), FILE.typed(FILE.key("load_case[*].name")), "names differ");
  }

  @Test
  void aQuantityIsReadAsInTheFile() {
    Quantity half = (Quantity) FILE.quantity("1/2 in", QuantityKind.LENGTH);
    assertEquals(0.0127, half.value(), 1e-15);
    assertTrue(FILE.quantity("1/2", QuantityKind.LENGTH) instanceof UnitProblem);
  }

  @Test
  void thePreloadsAloneAreThoseOfTheWholeDesign() {
    String own =
        "[[material]]\nname = \"own\"\nbased_on = \"screw 8.8\"\nyoungs_modulus = \"190 GPa\"\n\n";
    String screw =
        """
        [preload.device]
        kind = "screw"
        thread = "M8"
        nut_factor = 0.2
        grip_length = "40 mm"
        material = "own"
        method = "by feel"

        """;
    String text =
        POST.replaceFirst("(?s)\\[preload.device\\].*?(?=\\[holder\\])", own + screw)
            .replace("scatter = \"2 %\"", "");
    AlterableDesign file = AlterableDesign.of(text);
    List<Alteration> change = List.of(new Alteration(file.key("preload.force"), "450 N"));
    var whole = file.with(change).design().orElseThrow().preloads();
    assertEquals(450, whole.get(0).force());
    assertEquals(whole.toString(), file.preloads(change).orElseThrow().toString());
    assertTrue(file.preloads(List.of(set("preload.force", "450 kg"))).isEmpty());
  }

  @Test
  void aMistakeInAListOrTablePutInIsToldAtTheOneItReplaces() {
    DesignProblem inList =
        FILE.with(List.of(set("tool_point.at", "[\"47 mm\", \"0 N\", \"15 mm\"]")))
            .problems()
            .get(0);
    assertEquals(lineOf("at = [\"47.0 mm\""), inList.line());
    DesignProblem inTable =
        FILE.with(List.of(set("load_case[rough].force", "{ X = \"-30 mm\", Z = \"1 N\" }")))
            .problems()
            .get(0);
    assertEquals(lineOf("force = { X = \"-30 N\""), inTable.line());
    assertEquals("load_case[3].force.X", inTable.key());
    DesignProblem flag =
        FILE.with(List.of(set("layout.mounting.bond.bottoms_on_metal", "7"))).problems().get(0);
    assertEquals(lineOf("bottoms_on_metal"), flag.line());
  }

  private static int lineOf(String words) {
    return POST.substring(0, POST.indexOf(words)).split("\n", -1).length;
  }
}
