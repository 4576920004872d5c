package reseat.plots.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class SceneGeometryTest {

  private static final Box BOX = new Box(0, 0, 10, 5);

  @Test
  void aLineThroughABoxIsCutAtItsEdges() {
    assertThat(BOX.clip(new Point(-5, 2), new Point(15, 2)))
        .containsExactly(new Point(0, 2), new Point(10, 2));
    assertThat(BOX.clip(new Point(-5, 7), new Point(15, 7))).isEmpty();
    assertThat(BOX.clip(new Point(2, 2), new Point(3, 3)))
        .containsExactly(new Point(2, 2), new Point(3, 3));
  }

  @Test
  void aTriangleOverACornerKeepsItsCommonArea() {
    List<Point> kept = BOX.clip(List.of(new Point(-2, 4), new Point(4, 4), new Point(4, -2)));
    // The line from (-2, 4) to (4, -2) is x + y = 2: of the triangle's area of 18 two corners of
    // 2*2/2 each are cut off.
    assertThat(area(kept)).isCloseTo(18 - 2 - 2, within(1e-12));
  }

  private static double area(List<Point> polygon) {
    double sum = 0;
    for (int i = 0; i < polygon.size(); i++) {
      Point p = polygon.get(i);
      Point q = polygon.get((i + 1) % polygon.size());
      sum += p.x() * q.y() - q.x() * p.y();
    }
    return Math.abs(sum) / 2;
  }

  @Test
  void aTurnedEllipseReachesAsFarAsItsBoxSays() {
    Mark.Oval oval = new Mark.Oval(new Point(3, 4), 5, 2, 0.6, LineStyle.OUTLINE, Fill.NONE);
    double right = 0;
    double up = 0;
    for (int i = 0; i < 3600; i++) {
      double t = Math.PI * i / 1800;
      double a = 5 * Math.cos(t);
      double b = 2 * Math.sin(t);
      right = Math.max(right, a * Math.cos(0.6) - b * Math.sin(0.6));
      up = Math.max(up, a * Math.sin(0.6) + b * Math.cos(0.6));
    }
    assertThat(oval.box().right() - 3).isCloseTo(right, within(1e-5));
    assertThat(4 - oval.box().top()).isCloseTo(up, within(1e-5));
  }

  @Test
  void wordsWrapWithinTheirWidthAndLoseNothing() {
    String words = "where the preload line may stand before any of the contacts opens";
    List<String> lines = TextWidth.wrapped(words, TextStyle.NOTE, 150);
    assertThat(lines).allMatch(l -> TextWidth.of(l, TextStyle.NOTE) <= 150);
    assertThat(String.join(" ", lines)).isEqualTo(words);
    assertThat(String.join("", TextWidth.wrapped("x".repeat(90), TextStyle.NOTE, 100)))
        .isEqualTo("x".repeat(90));
  }

  @Test
  void wordsTooLongAreShortenedToFit() {
    String cut = TextWidth.shortened("a very long name of a machine axis", TextStyle.SMALL, 80);
    assertThat(cut).endsWith("...");
    assertThat(TextWidth.of(cut, TextStyle.SMALL)).isLessThanOrEqualTo(80);
  }

  @Test
  void aPictureRefusesAPlaceThatIsNoNumber() {
    assertThatThrownBy(() -> new Point(Double.NaN, 0)).hasMessageContaining("finite");
  }

  @Test
  void everyToneStandsOutFromItsSheet() {
    // Contrast ratio of WCAG 2.1, 1.4.11 and 1.4.3: 3 for graphics, 4.5 for words (recalled from
    // memory, formula and limits).
    for (Tone t : List.of(Tone.INK, Tone.MUTED, Tone.BLUE, Tone.VERMILLION, Tone.GREEN)) {
      assertThat(contrast(t.rgb(), Tone.PAPER.rgb())).as(t + " light").isGreaterThan(4.5);
    }
    for (Tone t : List.of(Tone.PURPLE, Tone.ORANGE, Tone.SKY)) {
      assertThat(contrast(t.rgb(), Tone.PAPER.rgb())).as(t + " light").isGreaterThan(3);
    }
  }

  private static double contrast(int a, int b) {
    double la = luminance(a) + 0.05;
    double lb = luminance(b) + 0.05;
    return Math.max(la / lb, lb / la);
  }

  private static double luminance(int rgb) {
    return 0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8) + 0.0722 * linear(rgb);
  }

  private static double linear(int channel) {
    double c = (channel & 255) / 255.0;
    return c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }
}
