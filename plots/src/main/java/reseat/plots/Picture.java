package reseat.plots;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import reseat.plots.scene.Anchor;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Point;
import reseat.plots.scene.Scene;
import reseat.plots.scene.ScenePainter;
import reseat.plots.scene.SvgWriter;
import reseat.plots.scene.TextStyle;
import reseat.plots.scene.TextWidth;

/**
 * A finished picture: what it is called, what to see in it, and how to get it as a file.
 *
 * <p>The same inputs give the same bytes on one machine; a bitmap depends on its Java and its
 * fonts.
 */
public final class Picture {

  private static final Pattern NAME = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
  private static final double MARGIN = 12;

  private final PictureKind kind;
  private final String name;
  private final String title;
  private final String caption;
  private final String altText;
  private final Scene scene;

  private Picture(
      PictureKind kind, String name, String title, String caption, String altText, Scene scene) {
    this.kind = kind;
    this.name = name;
    this.title = title;
    this.caption = caption;
    this.altText = altText;
    this.scene = scene;
  }

  /**
   * Makes a picture.
   *
   * @param kind what it shows
   * @param name short name for files and commands: lower-case letters, digits and hyphens
   * @param title heading
   * @param caption one sentence that says what to see
   * @param altText what the picture shows, with its main numbers, for those who cannot see it
   * @param scene what is drawn
   * @return the picture
   * @throws IllegalArgumentException if a text is missing or the name has other characters
   */
  public static Picture of(
      PictureKind kind, String name, String title, String caption, String altText, Scene scene) {
    if (!NAME.matcher(name).matches()) {
      throw new IllegalArgumentException("a picture cannot be called \"" + name + "\"");
    }
    if (title.isBlank() || caption.isBlank() || altText.isBlank()) {
      throw new IllegalArgumentException(
          "picture " + name + " needs a title, a caption and a text alternative");
    }
    return new Picture(kind, name, title, caption, altText, scene);
  }

  /**
   * Returns what it shows.
   *
   * @return by which a page finds it
   */
  public PictureKind kind() {
    return kind;
  }

  /**
   * Returns the name.
   *
   * @return lower-case letters, digits and hyphens
   */
  public String name() {
    return name;
  }

  /**
   * Returns the heading.
   *
   * @return plain text
   */
  public String title() {
    return title;
  }

  /**
   * Returns what to see.
   *
   * @return one sentence, plain text
   */
  public String caption() {
    return caption;
  }

  /**
   * Returns the text alternative.
   *
   * @return plain text
   */
  public String altText() {
    return altText;
  }

  /**
   * Returns what is drawn, without title and caption.
   *
   * @return the scene
   */
  public Scene scene() {
    return scene;
  }

  /**
   * Returns the picture as a file that stands alone, with title and caption.
   *
   * @return an SVG document in UTF-8, in the colours for a white sheet
   */
  public byte[] svg() {
    return SvgWriter.document(sheet(), title, altText).getBytes(StandardCharsets.UTF_8);
  }

  /**
   * Returns the picture as an element for an HTML page, without title and caption.
   *
   * @return an {@code svg} element, for a white ground
   */
  public String svgElement() {
    return SvgWriter.fragment(scene, altText);
  }

  /**
   * Returns the picture as a bitmap that stands alone, with title and caption.
   *
   * @param scale pixels per sheet unit; 2 is good for screens, 3.125 is 300 pixels per inch
   * @return the bytes of a PNG file
   * @throws IllegalArgumentException if the bitmap would be empty or too large
   * @throws IllegalStateException if this machine has no fonts
   */
  public byte[] png(double scale) {
    return ScenePainter.png(sheet(), scale);
  }

  @Override
  public String toString() {
    return "picture " + name;
  }

  private Scene sheet() {
    double width = scene.width() + 2 * MARGIN;
    TextStyle note = TextStyle.NOTE;
    Scene.Builder sheet = new Scene.Builder();
    double y = 24;
    for (String line : TextWidth.wrapped(title, TextStyle.HEADING, scene.width())) {
      sheet.add(Mark.Text.level(line, new Point(MARGIN, y), Anchor.START, TextStyle.HEADING));
      y += TextStyle.HEADING.lineHeight();
    }
    sheet.place(scene, MARGIN, y - 6);
    y += scene.height() + 10;
    List<String> lines = TextWidth.wrapped(caption, note, scene.width());
    for (String line : lines) {
      sheet.add(Mark.Text.level(line, new Point(MARGIN, y), Anchor.START, note));
      y += note.lineHeight();
    }
    return sheet.build(width, y);
  }
}
