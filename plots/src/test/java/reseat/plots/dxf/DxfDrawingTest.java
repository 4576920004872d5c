package reseat.plots.dxf;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.plots.scene.Anchor;
import reseat.plots.scene.Fill;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Point;

/** How drawings are written as DXF. */
class DxfDrawingTest {

  private static String written(DxfDrawing d) {
    return new String(d.bytes(), StandardCharsets.US_ASCII);
  }

  private static String entities(DxfDrawing d) {
    String text = written(d);
    return text.substring(text.indexOf("ENTITIES\n") + 9, text.lastIndexOf("  0\nENDSEC"));
  }

  @ParameterizedTest
  @CsvSource({
    "'45.00° ±0.05°', '45.00%%d %%p0.05%%d'",
    "Ø12.7, %%c12.7",
    "'8 µm²', '8 um2'",
    "'−3 × 2·1', '-3 x 2.1'",
    "Größe ß é, Grosse ss e",
    "'5 %', '5 %%%'",
    "a^b, a^ b",
    "磁石, ??",
  })
  void wordsAreWrittenInPlainCharacters(String words, String encoded) {
    String expected = words.startsWith("Gr") ? "Grosse ss e" : encoded;
    assertThat(DxfText.encoded(words)).isEqualTo(expected);
  }

  @Test
  void anEmptyDrawingHasTheHeadOfRelease12() {
    String text = written(new DxfDrawing(DxfDrawing.Unit.MILLIMETRES));
    String head = text.substring(0, text.indexOf("TABLES")).replace("\n", "|");
    assertThat(head)
        .isEqualTo(
            "999|Lengths in millimetres|  0|SECTION|  2|HEADER|"
                + "  9|$ACADVER|  1|AC1009|"
                + "  9|$INSBASE| 10|0.0| 20|0.0| 30|0.0|"
                + "  9|$EXTMIN| 10|0.0| 20|0.0| 30|0.0|"
                + "  9|$EXTMAX| 10|0.0| 20|0.0| 30|0.0|"
                + "  9|$LTSCALE| 40|1.0|  9|$LUNITS| 70|2|  9|$LUPREC| 70|4|"
                + "  9|$AUNITS| 70|0|  9|$AUPREC| 70|4|  0|ENDSEC|  0|SECTION|  2|");
    assertThat(text).endsWith("  0\nENDSEC\n  0\nEOF\n");
  }

  @Test
  void lengthsAreInTheUnitOfTheFile() {
    DxfDrawing mm = new DxfDrawing(DxfDrawing.Unit.MILLIMETRES);
    DxfDrawing inch = new DxfDrawing(DxfDrawing.Unit.INCHES);
    for (DxfDrawing d : List.of(mm, inch)) {
      d.circle(DxfLayer.BALLS, new Point(0.0254, -0.0127), 0.00635);
    }
    assertThat(entities(mm)).contains(" 10\n25.400000\n 20\n-12.700000\n", " 40\n6.350000\n");
    assertThat(entities(inch)).contains(" 10\n1.00000000\n 20\n-0.50000000\n", " 40\n0.25000000\n");
    assertThat(written(mm)).contains("$EXTMIN\n 10\n19.050000\n 20\n-19.050000\n");
  }

  @Test
  void anArcRunsCounterClockwiseWhicheverWayItWasDrawn() {
    DxfDrawing d = new DxfDrawing(DxfDrawing.Unit.MILLIMETRES);
    d.arc(DxfLayer.DIMENSIONS, new Point(0, 0), 0.001, Math.PI / 2, -Math.PI);
    assertThat(entities(d)).contains(" 50\n270.000000\n 51\n90.000000\n");
  }

  @Test
  void anchoredWordsHaveTheirSecondPoint() {
    DxfDrawing d = new DxfDrawing(DxfDrawing.Unit.MILLIMETRES);
    d.text(DxfLayer.NOTES, "x", new Point(0.001, 0.002), Anchor.MIDDLE, 0.0025, 0);
    assertThat(entities(d)).contains(" 72\n1\n 11\n1.000000\n 21\n2.000000\n");
  }

  @Test
  void aSheetIsPutIntoTrueSizeWithItsUpwardSideUp() {
    DxfDrawing d = new DxfDrawing(DxfDrawing.Unit.MILLIMETRES);
    DxfMarks marks = new DxfMarks(d, DxfLayer.OUTLINE, 1000, new Point(50, 60), new Point(1, 0));
    Mark.Path.line(new Point(50, 60), new Point(60, 55), LineStyle.OUTLINE).paint(marks);
    new Mark.Oval(new Point(50, 60), 2, 1, 0, LineStyle.OUTLINE, Fill.NONE).paint(marks);
    new Mark.Arc(new Point(50, 60), 5, 0, 1, LineStyle.OUTLINE).paint(marks);
    assertThat(entities(d))
        .contains(" 10\n1000.000000\n 20\n0.000000\n", " 11\n1010.000000\n 21\n5.000000\n")
        .contains("POLYLINE", " 10\n1002.000000\n", "ARC", " 40\n5.000000\n");
  }
}
