package reseat.plots.scene;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import javax.imageio.ImageIO;
import reseat.elementary.Elementary;
import reseat.units.PrintedNumber;

/** Paints a scene into a bitmap, in the colours for a white sheet. */
public final class ScenePainter implements MarkPainter {

  /** More than this, and a slip in the scale would eat all memory. */
  private static final double MOST_PIXELS = 60e6;

  private final Graphics2D g;

  private ScenePainter(Graphics2D g) {
    this.g = g;
  }

  /**
   * Paints a scene as PNG.
   *
   * @param scene what is drawn
   * @param scale pixels per sheet unit; 1 for 96 pixels per inch, 3.125 for 300
   * @return the bytes of the file
   * @throws IllegalArgumentException if the bitmap would be empty or beyond 60 million pixels
   * @throws IllegalStateException if this machine has no fonts
   */
  public static byte[] png(Scene scene, double scale) {
    double pixels = scene.width() * scale * scene.height() * scale;
    if (!(scale > 0) || !(pixels <= MOST_PIXELS)) {
      throw new IllegalArgumentException(
          "bitmap scale "
              + PrintedNumber.shortest(scale)
              + " would make "
              + PrintedNumber.shortest(pixels)
              + " pixels; allowed are 60 million");
    }
    Typeface.needNoScreen();
    BufferedImage image =
        new BufferedImage(
            (int) Math.ceil(scene.width() * scale),
            (int) Math.ceil(scene.height() * scale),
            BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    try {
      g.setColor(new Color(Tone.PAPER.rgb()));
      g.fillRect(0, 0, image.getWidth(), image.getHeight());
      g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      g.setRenderingHint(
          RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
      g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
      g.scale(scale, scale);
      ScenePainter painter = new ScenePainter(g);
      scene.marks().forEach(m -> m.paint(painter));
    } finally {
      g.dispose();
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      ImageIO.setUseCache(false);
      ImageIO.write(image, "png", bytes);
    } catch (IOException e) {
      throw new UncheckedIOException("writing a bitmap into memory failed", e);
    }
    return bytes.toByteArray();
  }

  @Override
  public void path(Mark.Path path) {
    Path2D shape = new Path2D.Double(Path2D.WIND_EVEN_ODD);
    for (List<Point> part : path.parts()) {
      shape.moveTo(part.get(0).x(), part.get(0).y());
      part.stream().skip(1).forEach(p -> shape.lineTo(p.x(), p.y()));
      if (path.closed()) {
        shape.closePath();
      }
    }
    paint(shape, path.line(), path.fill());
  }

  @Override
  public void oval(Mark.Oval oval) {
    Shape shape = new Ellipse2D.Double(-oval.rx(), -oval.ry(), 2 * oval.rx(), 2 * oval.ry());
    AffineTransform place =
        AffineTransform.getTranslateInstance(oval.centre().x(), oval.centre().y());
    place.rotate(-oval.turn());
    paint(place.createTransformedShape(shape), oval.line(), oval.fill());
  }

  @Override
  public void arc(Mark.Arc arc) {
    double r = arc.radius();
    paint(
        new Arc2D.Double(
            arc.centre().x() - r,
            arc.centre().y() - r,
            2 * r,
            2 * r,
            Elementary.toDegrees(arc.start()),
            Elementary.toDegrees(arc.sweep()),
            Arc2D.OPEN),
        arc.line(),
        Fill.NONE);
  }

  @Override
  public void text(Mark.Text text) {
    Font font = Typeface.of(text.words(), text.style());
    TextLayout layout = new TextLayout(text.words(), font, Typeface.CONTEXT);
    double wanted = TextWidth.of(text.words(), text.style());
    double squeeze = Math.min(1, wanted / layout.getAdvance());
    double width = squeeze * layout.getAdvance();
    double from =
        text.anchor() == Anchor.START ? 0 : text.anchor() == Anchor.MIDDLE ? -width / 2 : -width;
    AffineTransform place = AffineTransform.getTranslateInstance(text.at().x(), text.at().y());
    place.rotate(-text.turn());
    place.translate(from, 0);
    place.scale(squeeze, 1);
    Shape letters = layout.getOutline(place);
    if (text.halo()) {
      paint(letters, LineStyle.solid(Tone.PAPER, 3), Fill.NONE);
    }
    paint(letters, LineStyle.NONE, Fill.full(text.style().tone()));
  }

  @Override
  public void bitmap(Mark.Bitmap bitmap) {
    Box box = bitmap.box();
    try {
      BufferedImage image = ImageIO.read(new ByteArrayInputStream(bitmap.png().content()));
      AffineTransform place = AffineTransform.getTranslateInstance(box.left(), box.top());
      place.scale(box.width() / image.getWidth(), box.height() / image.getHeight());
      g.drawImage(image, place, null);
    } catch (IOException e) {
      throw new UncheckedIOException("reading a bitmap from memory failed", e);
    }
  }

  private void paint(Shape shape, LineStyle line, Fill fill) {
    if (fill.visible()) {
      g.setColor(color(fill.tone(), fill.opacity()));
      g.fill(shape);
    }
    if (line.visible()) {
      g.setColor(color(line.tone(), 1));
      g.setStroke(stroke(line));
      g.draw(shape);
    }
  }

  private static Color color(Tone tone, double opacity) {
    int alpha = (int) Elementary.round(255 * opacity);
    return new Color((alpha << 24) | tone.rgb(), true);
  }

  private static BasicStroke stroke(LineStyle line) {
    float width = (float) line.width();
    if (line.dash() == Dash.SOLID) {
      return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
    }
    float[] dash = new float[line.dash().pattern().size()];
    for (int i = 0; i < dash.length; i++) {
      dash[i] = line.dash().pattern().get(i).floatValue();
    }
    return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dash, 0);
  }
}
