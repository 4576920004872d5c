package reseat.plots.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import reseat.design.CouplingDesign;
import reseat.design.Half;
import reseat.design.Support;
import reseat.making.MadeFeature;
import reseat.making.MadeHalf;
import reseat.plots.scene.Box;
import reseat.plots.scene.Mark;

/** What a shop drawing owes the toolmaker. */
class ShopSheetTest {

  /** A sheet and what it was drawn from. */
  record Case(String name, CouplingDesign design, Half half, boolean inch, ShopSheet sheet) {
    @Override
    public String toString() {
      return name + ", " + half + (inch ? ", inch" : ", mm");
    }
  }

  private static final List<Case> CASES = cases();

  static List<Case> cases() {
    List<Case> cases = new ArrayList<>();
    for (Map.Entry<String, CouplingDesign> e : ShopSheets.designs().entrySet()) {
      for (Half half : Half.values()) {
        for (boolean inch : new boolean[] {false, true}) {
          ShopSheet sheet = ShopSheets.sheet(e.getValue(), half, inch);
          cases.add(new Case(e.getKey(), e.getValue(), half, inch, sheet));
        }
      }
    }
    return cases;
  }

  static List<Case> drawn() {
    return CASES;
  }

  /** Sheets on which every name has room as it is, and every point a row. */
  static List<Case> roomy() {
    return CASES.stream()
        .filter(c -> !List.of("many-springs", "long-names").contains(c.name()))
        .toList();
  }

  private static String words(ShopSheet sheet) {
    return sheet.scene().texts().stream().map(Mark.Text::words).collect(Collectors.joining("\n"));
  }

  @ParameterizedTest
  @MethodSource("drawn")
  void letsNoWordsLieOnOtherWordsOrBesideTheSheet(Case c) {
    List<String> clashes = new ArrayList<>();
    List<Mark.Text> texts = c.sheet().scene().texts();
    Box paper = c.sheet().scene().frame();
    for (int i = 0; i < texts.size(); i++) {
      assertThat(paper.grown(-20).contains(texts.get(i).box())).as(texts.get(i).words()).isTrue();
      for (int j = i + 1; j < texts.size(); j++) {
        if (texts.get(i).box().overlaps(texts.get(j).box())) {
          clashes.add(texts.get(i).words() + " / " + texts.get(j).words());
        }
      }
    }
    assertThat(clashes).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("roomy")
  void namesEverySupportOnThePlanAndItsCoordinatesInTheTable(Case c) {
    ShopFigures figures = new ShopFigures(c.inch());
    String words = words(c.sheet());
    for (Support s : c.design().supports()) {
      assertThat(c.sheet().scene().texts()).anyMatch(t -> t.words().equals(s.name()));
    }
    for (MadeFeature f : MadeHalf.of(c.design(), c.half()).features()) {
      if (f.kind() != MadeFeature.Kind.BALL_REST && f.kind() != MadeFeature.Kind.POCKET) {
        assertThat(words)
            .contains(figures.length(f.at().x()))
            .contains(figures.length(f.at().y()))
            .contains(figures.length(f.at().z()));
      }
    }
    assertThat(words).doesNotContain("NaN", "Infinity", "\u221e", "null");
  }

  @ParameterizedTest
  @MethodSource("drawn")
  void saysHowItIsSeenWhereItComesFromAndWhatItsUnitsAre(Case c) {
    String words = words(c.sheet());
    assertThat(words)
        .contains("view onto the worked face")
        .contains("first- or third-angle projection")
        .contains("digest 0123456789abcdef", "saved 2026-01-31", "reseat 0.1.0")
        .contains(c.inch() ? "inches (millimetres)" : "millimetres (inches)")
        .contains(c.inch() ? "this is 2 in" : "this is 50 mm");
    assertThat(words.contains("mirror image")).isEqualTo(c.half() == Half.HOLDER);
  }

  @ParameterizedTest
  @MethodSource("drawn")
  void isAsLargeAsItsPaper(Case c) throws Exception {
    Element svg =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(c.sheet().svg()))
            .getDocumentElement();
    assertThat(svg.getAttribute("width")).isEqualTo(c.inch() ? "11in" : "297mm");
    assertThat(svg.getAttribute("height")).isEqualTo(c.inch() ? "8.5in" : "210mm");
    String[] box = svg.getAttribute("viewBox").split(" ", -1);
    double wide = c.inch() ? 11 * 0.0254 : 0.297;
    assertThat(Double.parseDouble(box[2]) / 96 * 0.0254).isCloseTo(wide, within(3e-6));
  }

  @Test
  void aWarningIsSetOff() {
    List<String> stamp = new ArrayList<>(ShopSheets.STAMP);
    stamp.add("DOES NOT HOLD: see the cautions");
    Case c = CASES.get(0);
    ShopSheet warned = ShopSheet.of(c.design(), c.half(), stamp, false);
    assertThat(warned.scene().texts())
        .filteredOn(t -> t.words().startsWith("DOES NOT HOLD"))
        .singleElement()
        .matches(t -> t.style().bold());
    assertThat(new String(warned.dxf(), StandardCharsets.US_ASCII)).contains("DOES NOT HOLD");
  }

  @Test
  void pointsThatFindNoRowAreCounted() {
    assertThat(CASES)
        .filteredOn(c -> c.name().equals("many-springs"))
        .allMatch(
            c -> words(c.sheet()).contains(" more points stand in the table of coordinates."));
  }

  @Test
  void printedAtFullSizeAPlanAtOneToOneIsTrue() {
    Case post =
        CASES.stream()
            .filter(c -> c.name().equals("tool-post") && c.half() == Half.HOLDER)
            .findFirst()
            .orElseThrow();
    assertThat(words(post.sheet())).contains("plan 1:1");
    double radius = 0.00635 * 96 / 0.0254;
    assertThat(post.sheet().scene().marks())
        .filteredOn(Mark.Oval.class::isInstance)
        .map(Mark.Oval.class::cast)
        .filteredOn(o -> Math.abs(o.rx() - radius) < 1e-9)
        .hasSize(3);
  }

  @Test
  void drawnAgainItIsTheSame() {
    Case c = CASES.get(0);
    ShopSheet again = ShopSheets.sheet(c.design(), c.half(), c.inch());
    assertThat(again.svg()).isEqualTo(c.sheet().svg());
    assertThat(again.dxf()).isEqualTo(c.sheet().dxf());
    assertThat(new String(c.sheet().svg(), StandardCharsets.UTF_8)).contains("@page{size:297mm");
  }
}
