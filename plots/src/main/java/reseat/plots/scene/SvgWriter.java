package reseat.plots.scene;

import java.util.List;
import java.util.stream.Collectors;
import reseat.elementary.Elementary;

/**
 * Writes a scene as SVG: standard elements only, no script, nothing fetched from elsewhere.
 *
 * <p>A document stands alone. A fragment is meant to be put into an HTML page, on a white ground: it
 * has no background of its own. Colours are those for a white sheet. The same scene gives the same
 * text.
 */
public final class SvgWriter implements MarkPainter {

  private static final String FONTS = "DejaVu Sans, Verdana, Arial, Helvetica, sans-serif";

  private final StringBuilder out = new StringBuilder();

  private SvgWriter() {}

  /**
   * Writes a picture that stands alone.
   *
   * @param scene what is drawn
   * @param title heading for the reader's program
   * @param description what the picture shows, for those who cannot see it
   * @return an XML document
   */
  public static String document(Scene scene, String title, String description) {
    SvgWriter w = new SvgWriter();
    w.out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    w.open(scene, "");
    w.head(scene, title, description);
    return w.finish(scene);
  }

  private void head(Scene scene, String title, String description) {
    out.append("<title>").append(escaped(title)).append("</title>\n");
    out.append("<desc>").append(escaped(description)).append("</desc>\n");
    Mark.Path.rectangle(scene.frame(), LineStyle.NONE, Fill.PAPER).paint(this);
  }

  /**
   * Writes a page that stands alone and is printed in its true size.
   *
   * @param scene what is drawn, in units of 1/96 inch
   * @param title heading for the reader's program
   * @param description what the page shows, for those who cannot see it
   * @param width width of the paper with its unit, as CSS writes it
   * @param height height of the paper with its unit
   * @return an XML document whose size is that of the paper
   */
  public static String page(
      Scene scene, String title, String description, String width, String height) {
    SvgWriter w = new SvgWriter();
    w.out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    w.open(scene, width, height, "");
    w.head(scene, title, description);
    w.out.append("<style>@page{size:").append(width).append(' ').append(height);
    w.out.append(";margin:0}</style>\n");
    return w.finish(scene);
  }

  /**
   * Writes a picture to be put into an HTML page.
   *
   * @param scene what is drawn
   * @param description what the picture shows, for those who cannot see it
   * @return an {@code svg} element
   */
  public static String fragment(Scene scene, String description) {
    SvgWriter w = new SvgWriter();
    w.open(scene, " class=\"picture\" role=\"img\" aria-label=\"" + escaped(description) + "\"");
    return w.finish(scene);
  }

  private void open(Scene scene, String more) {
    open(scene, number(scene.width()), number(scene.height()), more);
  }

  private void open(Scene scene, String width, String height, String more) {
    out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 ");
    out.append(number(scene.width())).append(' ').append(number(scene.height()));
    out.append("\" width=\"").append(width).append("\" height=\"").append(height).append('"');
    out.append(" font-family=\"").append(FONTS).append('"');
    out.append(" fill=\"none\" stroke-linejoin=\"round\"").append(more).append(">\n");
  }

  private String finish(Scene scene) {
    scene.marks().forEach(m -> m.paint(this));
    return out.append("</svg>\n").toString();
  }

  @Override
  public void path(Mark.Path path) {
    out.append("<path d=\"");
    for (List<Point> part : path.parts()) {
      char command = 'M';
      for (Point p : part) {
        out.append(command).append(number(p.x())).append(' ').append(number(p.y()));
        command = 'L';
      }
      if (path.closed()) {
        out.append('Z');
      }
    }
    out.append('"');
    if (path.parts().size() > 1 && path.fill().visible()) {
      out.append(" fill-rule=\"evenodd\"");
    }
    paints(path.line(), path.fill());
  }

  @Override
  public void oval(Mark.Oval oval) {
    out.append(oval.rx() == oval.ry() ? "<circle" : "<ellipse");
    out.append(" cx=\"").append(number(oval.centre().x()));
    out.append("\" cy=\"").append(number(oval.centre().y()));
    if (oval.rx() == oval.ry()) {
      out.append("\" r=\"").append(number(oval.rx())).append('"');
    } else {
      out.append("\" rx=\"").append(number(oval.rx()));
      out.append("\" ry=\"").append(number(oval.ry())).append('"');
      turn(oval.turn(), oval.centre());
    }
    paints(oval.line(), oval.fill());
  }

  @Override
  public void arc(Mark.Arc arc) {
    Point from = arc.at(0);
    Point to = arc.at(1);
    out.append("<path d=\"M").append(number(from.x())).append(' ').append(number(from.y()));
    String r = number(arc.radius());
    out.append('A').append(r).append(' ').append(r).append(" 0 ");
    out.append(Math.abs(arc.sweep()) > Math.PI ? "1 " : "0 ");
    out.append(arc.sweep() > 0 ? "0 " : "1 ");
    out.append(number(to.x())).append(' ').append(number(to.y())).append('"');
    paints(arc.line(), Fill.NONE);
  }

  @Override
  public void text(Mark.Text text) {
    out.append("<text x=\"").append(number(text.at().x()));
    out.append("\" y=\"").append(number(text.at().y()));
    out.append("\" font-size=\"").append(number(text.style().size())).append('"');
    if (text.style().bold()) {
      out.append(" font-weight=\"bold\"");
    }
    if (text.anchor() != Anchor.START) {
      out.append(" text-anchor=\"").append(text.anchor() == Anchor.END ? "end" : "middle");
      out.append('"');
    }
    turn(text.turn(), text.at());
    out.append(" fill=\"").append(text.style().tone().lightHex()).append('"');
    if (text.halo()) {
      out.append(" stroke=\"").append(Tone.PAPER.lightHex());
      out.append("\" stroke-width=\"3\" paint-order=\"stroke\"");
    }
    out.append('>').append(escaped(text.words())).append("</text>\n");
  }

  @Override
  public void bitmap(Mark.Bitmap bitmap) {
    Box box = bitmap.box();
    out.append("<image x=\"").append(number(box.left()));
    out.append("\" y=\"").append(number(box.top()));
    out.append("\" width=\"").append(number(box.width()));
    out.append("\" height=\"").append(number(box.height()));
    out.append("\" preserveAspectRatio=\"none\" href=\"").append(bitmap.png().dataUrl());
    out.append("\"/>\n");
  }

  private void turn(double turn, Point about) {
    if (turn != 0) {
      out.append(" transform=\"rotate(").append(number(-Elementary.toDegrees(turn)));
      out.append(' ').append(number(about.x())).append(' ').append(number(about.y()));
      out.append(")\"");
    }
  }

  private void paints(LineStyle line, Fill fill) {
    if (line.visible()) {
      out.append(" stroke=\"").append(line.tone().lightHex());
      out.append("\" stroke-width=\"").append(number(line.width())).append('"');
      if (line.dash() != Dash.SOLID) {
        out.append(" stroke-dasharray=\"");
        out.append(
            line.dash().pattern().stream().map(SvgWriter::number).collect(Collectors.joining(" ")));
        out.append('"');
      }
    }
    if (fill.visible()) {
      out.append(" fill=\"").append(fill.tone().lightHex()).append('"');
      if (fill.opacity() < 1) {
        out.append(" fill-opacity=\"").append(number(fill.opacity())).append('"');
      }
    }
    out.append("/>\n");
  }

  /** Two decimals without trailing zeros and without minus zero. */
  private static String number(double v) {
    long hundredths = Elementary.round(v * 100);
    String sign = hundredths < 0 ? "-" : "";
    long size = Math.abs(hundredths);
    long rest = size % 100;
    String tail =
        rest == 0 ? "" : rest % 10 == 0 ? "." + rest / 10 : (rest < 10 ? ".0" : ".") + rest;
    return sign + size / 100 + tail;
  }

  /**
   * Makes words safe between tags and in attributes.
   *
   * @param words any words
   * @return the words with markup characters escaped and characters that XML forbids replaced
   */
  public static String escaped(String words) {
    StringBuilder safe = new StringBuilder();
    words
        .codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                case '\n', '\r', '\t' -> safe.append(' ');
                default -> {
                  boolean surrogate = c >= 0xD800 && c < 0xE000;
                  boolean forbidden = c < 0x20 || surrogate || c == 0xFFFE || c == 0xFFFF;
                  safe.appendCodePoint(forbidden ? 0xFFFD : c);
                }
              }
            });
    return safe.toString();
  }
}
