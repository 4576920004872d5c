package reseat.plots.chart;

import java.awt.Font;
import java.awt.Shape;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import reseat.elementary.Elementary;
import reseat.plots.NumberText;
import reseat.plots.scene.Anchor;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Point;
import reseat.plots.scene.TextStyle;
import reseat.plots.scene.Typeface;

/**
 * Recognises words that the charting library paints as outlines of letters.
 *
 * <p>The library asks {@link #tick(double)} for the words along an axis; their outlines are kept,
 * and when the same outline is painted it is taken as those words.
 */
final class KnownWords {

  private final TextStyle style;
  private final Font font;
  private final Map<String, String> byOutline = new HashMap<>();

  KnownWords(TextStyle style) {
    this.style = style;
    this.font = Typeface.of("0123456789.\u2212", style);
  }

  /** The font in which the library is to set the words. */
  Font font() {
    return font;
  }

  /** Writes a number along an axis and remembers what it looks like. */
  String tick(double value) {
    String words = NumberText.tick(value);
    byOutline.computeIfAbsent(
        key(new TextLayout(words, font, Typeface.CONTEXT).getOutline(null)), k -> words);
    return words;
  }

  /** The words that an outline shows, if they were announced. */
  Optional<Mark> find(Shape outline, AffineTransform place) {
    String words = byOutline.get(key(outline));
    if (words == null) {
      return Optional.empty();
    }
    Rectangle2D box = outline.getBounds2D();
    Point at = new Point(place.getTranslateX() + box.getCenterX(), place.getTranslateY());
    return Optional.of(Mark.Text.level(words, at, Anchor.MIDDLE, style));
  }

  private static String key(Shape outline) {
    StringBuilder key = new StringBuilder();
    double[] c = new double[6];
    for (PathIterator it = outline.getPathIterator(null); !it.isDone(); it.next()) {
      int kind = it.currentSegment(c);
      int used = kind == PathIterator.SEG_CLOSE ? 0 : kind == PathIterator.SEG_CUBICTO ? 6 : 2;
      key.append(kind);
      for (int i = 0; i < used; i++) {
        key.append(' ').append(Elementary.round(c[i] * 100));
      }
      key.append(';');
    }
    return key.toString();
  }
}
