package reseat.plots.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import reseat.design.CouplingDesign;
import reseat.design.Half;
import reseat.making.MadeFeature;
import reseat.making.MadeHalf;
import reseat.plots.drawing.DxfReader.Entity;
import reseat.plots.dxf.DxfLayer;

/** What is read back from the DXF files is the design, layer by layer. */
class DxfReadBackTest {

  private static final Map<String, CouplingDesign> DESIGNS = ShopSheets.designs();

  static Set<String> names() {
    return DESIGNS.keySet();
  }

  private static DxfReader read(String name, Half half, boolean inch) {
    return new DxfReader(ShopSheets.sheet(DESIGNS.get(name), half, inch).dxf());
  }

  private static List<Entity> circles(DxfReader file, String layer) {
    return file.entities().stream()
        .filter(e -> e.kind().equals("CIRCLE") && e.layer().equals(layer))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("names")
  void ballsLieWhereTheDesignHasThemInTrueSize(String name) {
    for (Half half : Half.values()) {
      for (boolean inch : new boolean[] {false, true}) {
        MadeHalf made = MadeHalf.of(DESIGNS.get(name), half);
        double unit = inch ? 0.0254 : 1e-3;
        boolean balls = made.carriesBalls();
        List<Entity> circles = circles(read(name, half, inch), balls ? "BALLS" : "REFERENCE");
        List<MadeFeature> features =
            made.ofKind(balls ? MadeFeature.Kind.BALL : MadeFeature.Kind.BALL_REST);
        assertThat(circles.size()).isGreaterThan(features.size()); // the sections follow the plan
        for (int i = 0; i < features.size(); i++) {
          MadeFeature f = features.get(i);
          Entity c = circles.get(i);
          assertThat(c.number(10) * unit).isCloseTo(f.at().x(), within(1e-9));
          assertThat(c.number(20) * unit).isCloseTo(f.at().y(), within(1e-9));
          assertThat(2 * c.number(40) * unit).isCloseTo(f.sizes().get(0).value(), within(2e-9));
        }
        for (Entity c : circles.subList(features.size(), circles.size())) {
          assertThat(features.stream().map(f -> f.sizes().get(0).value()))
              .anyMatch(d -> Math.abs(d - 2 * c.number(40) * unit) < 2e-9);
        }
      }
    }
  }

  /** Corners of the first groove, from the polyline that is its mouth. */
  @ParameterizedTest
  @CsvSource({"BASE, tool-post, GROOVES, 19.05, 10.4902", "BASE, pallet, PINS, 32, 10"})
  void groovesAndPinsHaveTheirLengthWidthAndDirection(
      Half half, String name, String layer, double length, double width) {
    DxfReader file = read(name, half, false);
    MadeHalf made = MadeHalf.of(DESIGNS.get(name), half);
    MadeFeature first =
        made.features().stream().filter(f -> f.direction().isPresent()).findFirst().orElseThrow();
    List<Entity> corners =
        file.entities().stream()
            .filter(e -> e.kind().equals("VERTEX") && e.layer().equals(layer))
            .limit(4)
            .toList();
    double[] x = corners.stream().mapToDouble(e -> e.number(10)).toArray();
    double[] y = corners.stream().mapToDouble(e -> e.number(20)).toArray();
    assertThat(Arrays.stream(x).average().orElseThrow())
        .isCloseTo(1e3 * first.at().x(), within(1e-6));
    assertThat(Arrays.stream(y).average().orElseThrow())
        .isCloseTo(1e3 * first.at().y(), within(1e-6));
    assertThat(Math.hypot(x[1] - x[0], y[1] - y[0])).isCloseTo(length, within(2e-6));
    assertThat(Math.hypot(x[2] - x[1], y[2] - y[1])).isCloseTo(width, within(2e-6));
    double angle = Math.atan2(y[1] - y[0], x[1] - x[0]);
    assertThat(Math.cos(angle - first.direction().getAsDouble())).isCloseTo(1, within(1e-9));
  }

  @ParameterizedTest
  @MethodSource("names")
  void everythingLiesOnALayerOfTheTableAndWordsAreShort(String name) {
    for (Half half : Half.values()) {
      DxfReader file = read(name, half, false);
      assertThat(file.layers())
          .contains("0")
          .containsAll(Arrays.stream(DxfLayer.values()).map(DxfLayer::label).toList())
          .allMatch(l -> l.matches("[A-Z0-9-]{1,31}"));
      assertThat(file.entities())
          .isNotEmpty()
          .allMatch(e -> file.layers().contains(e.layer()))
          .allMatch(
              e ->
                  Set.of("LINE", "CIRCLE", "ARC", "POLYLINE", "VERTEX", "SEQEND", "TEXT")
                      .contains(e.kind()));
      List<String> words =
          file.entities().stream()
              .filter(e -> e.kind().equals("TEXT"))
              .map(e -> e.groups().get(1))
              .toList();
      assertThat(words)
          .allMatch(w -> w.length() <= 255)
          .anyMatch(w -> w.contains("Lengths in mm, true size"))
          .anyMatch(w -> w.contains("digest 0123456789abcdef"))
          .noneMatch(w -> w.contains("Plan to scale"));
      assertThat(String.join("\n", words)).contains("view onto the worked face").contains("%%p");
    }
  }

  @ParameterizedTest
  @CsvSource({"false, millimetres, 34.925000", "true, inches, 1.37500000"})
  void theUnitStandsAtTheHeadAndGovernsTheFigures(boolean inch, String words, String x) {
    DxfReader file = read("tool-post", Half.HOLDER, inch);
    assertThat(file.pairs().get(0)).isEqualTo(new DxfReader.Pair(999, "Lengths in " + words));
    assertThat(circles(file, "BALLS").get(0).groups()).containsEntry(10, x);
  }
}
