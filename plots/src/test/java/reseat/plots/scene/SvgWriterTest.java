package reseat.plots.scene;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

class SvgWriterTest {

  private static final String NASTY =
      "</text><script>alert(\"x\" & 'y')</script>\u0000\u0007\ud800";

  private static Scene of(Mark... marks) {
    return new Scene(100, 50, List.of(marks));
  }

  @Test
  void whatAUserWritesCannotBecomeMarkup() throws Exception {
    Scene scene = of(Mark.Text.level(NASTY, new Point(1, 20), Anchor.START, TextStyle.LABEL));
    for (String svg :
        List.of(SvgWriter.document(scene, NASTY, NASTY), SvgWriter.fragment(scene, NASTY))) {
      assertThat(svg).doesNotContain("<script", "\u0000", "\u0007");
      Document doc =
          DocumentBuilderFactory.newInstance()
              .newDocumentBuilder()
              .parse(new InputSource(new StringReader(svg)));
      assertThat(doc.getElementsByTagName("text").item(0).getTextContent())
          .startsWith("</text><script>alert(\"x\" & 'y')");
    }
  }

  @Test
  void numbersHaveTwoDecimalsAndNoMinusZero() {
    String svg =
        SvgWriter.fragment(
            of(
                Mark.Path.line(
                    new Point(-0.001, 1.0049), new Point(12.305, -3.5), LineStyle.OUTLINE)),
            "line");
    assertThat(svg).contains("d=\"M0 1L12.31 -3.5\"");
  }

  @Test
  void aFragmentHasNoGroundAndADocumentHas() {
    Scene scene = of(Mark.Path.rectangle(new Box(1, 1, 9, 9), LineStyle.LIMIT, Fill.NONE));
    assertThat(SvgWriter.fragment(scene, "box"))
        .contains("role=\"img\"", "aria-label=\"box\"")
        .doesNotContain("#ffffff");
    assertThat(SvgWriter.document(scene, "t", "box"))
        .contains("fill=\"#ffffff\"")
        .doesNotContain("class=");
  }

  @Test
  void anArcRunsTheWayItIsDescribed() {
    // A quarter from the right up to the top: counter-clockwise as seen, so SVG's sweep flag is 0.
    Mark.Arc quarter = new Mark.Arc(new Point(50, 25), 10, 0, Math.PI / 2, LineStyle.OUTLINE);
    assertThat(SvgWriter.fragment(of(quarter), "arc")).contains("M60 25A10 10 0 0 0 50 15");
  }
}
