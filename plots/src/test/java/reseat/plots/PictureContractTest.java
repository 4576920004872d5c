package reseat.plots;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import reseat.plots.scene.Box;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Scene;

/** What every picture owes its reader. */
class PictureContractTest {

  private static final List<Picture> DRAWN = PictureGallery.all();
  private static final List<Picture> DRAWN_AGAIN = PictureGallery.all();

  static List<Picture> pictures() {
    return DRAWN;
  }

  @ParameterizedTest
  @MethodSource("pictures")
  void isWellFormedXmlWithTitleAndDescription(Picture picture) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    Document doc =
        factory
            .newDocumentBuilder()
            .parse(new InputSource(new ByteArrayInputStream(picture.svg())));
    assertThat(doc.getDocumentElement().getLocalName()).isEqualTo("svg");
    assertThat(doc.getElementsByTagName("title").item(0).getTextContent())
        .isEqualTo(picture.title());
    assertThat(doc.getElementsByTagName("desc").item(0).getTextContent())
        .isEqualTo(picture.altText());
    factory
        .newDocumentBuilder()
        .parse(new InputSource(new java.io.StringReader(picture.svgElement())));
  }

  @ParameterizedTest
  @MethodSource("pictures")
  void fetchesNothingAndRunsNothing(Picture picture) {
    for (String svg :
        List.of(new String(picture.svg(), StandardCharsets.UTF_8), picture.svgElement())) {
      assertThat(
              svg.replace("http://www.w3.org/2000/svg", "")
                  .replaceAll("<image ([a-zA-Z]+=\"[-0-9.a-z]+\" )+href=\"data:image/png;", ""))
          .doesNotContain("http", "href", "url(", "<script", "<image", "<foreignObject", " id=");
    }
  }

  @ParameterizedTest
  @MethodSource("pictures")
  void showsNoBadNumber(Picture picture) {
    assertThat(picture.altText() + picture.caption() + words(picture.scene()))
        .doesNotContain("NaN", "Infinity", "\u221e", "null", "E-", "e-0")
        .doesNotContainPattern("\\d\\.\\d{7}");
    assertThat(new String(picture.svg(), StandardCharsets.UTF_8)).doesNotContain("NaN", "Infinity");
  }

  @ParameterizedTest
  @MethodSource("pictures")
  void keepsAllWordsOnTheSheet(Picture picture) {
    Box frame = picture.scene().frame();
    for (Mark.Text text : picture.scene().texts()) {
      assertThat(frame.contains(text.box())).as(text.words() + " at " + text.box()).isTrue();
    }
  }

  @ParameterizedTest
  @MethodSource("pictures")
  void letsNoWordsLieOnOtherWords(Picture picture) {
    List<String> clashes = new ArrayList<>();
    List<Mark.Text> texts = picture.scene().texts();
    for (int i = 0; i < texts.size(); i++) {
      for (int j = i + 1; j < texts.size(); j++) {
        if (texts.get(i).box().overlaps(texts.get(j).box())) {
          clashes.add(texts.get(i).words() + " / " + texts.get(j).words());
        }
      }
    }
    assertThat(clashes).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("pictures")
  void saysInOneSentenceWhatToSee(Picture picture) {
    assertThat(picture.caption())
        .matches("[A-Z0-9].*[^.]\\.")
        .doesNotContainPattern("[a-z]\\. [A-Z]");
    assertThat(picture.altText()).hasSizeGreaterThan(40).endsWith(".");
  }

  @ParameterizedTest
  @MethodSource("pictures")
  void isPaintedAsABitmapOfItsOwnShape(Picture picture) throws Exception {
    var image = ImageIO.read(new ByteArrayInputStream(picture.png(1)));
    assertThat((double) image.getWidth()).isGreaterThanOrEqualTo(picture.scene().width());
    assertThat((double) image.getHeight()).isGreaterThanOrEqualTo(picture.scene().height());
  }

  @ParameterizedTest
  @MethodSource("pictures")
  void isTheSameWhenDrawnAgain(Picture picture) {
    Picture again = DRAWN_AGAIN.get(DRAWN.indexOf(picture));
    assertThat(again.svg()).isEqualTo(picture.svg());
    assertThat(again.png(1)).isEqualTo(picture.png(1));
  }

  private static String words(Scene scene) {
    return String.join("\n", scene.texts().stream().map(Mark.Text::words).toList());
  }
}
