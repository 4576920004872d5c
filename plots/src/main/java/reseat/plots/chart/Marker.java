package reseat.plots.chart;

import java.util.List;
import reseat.plots.scene.Box;
import reseat.plots.scene.Fill;
import reseat.plots.scene.Key;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Point;
import reseat.plots.scene.Tone;

/** Shape of a point: the second code beside its colour. */
enum Marker {
  /** First series. */
  CIRCLE,
  /** Second series. */
  SQUARE,
  /** Third series. */
  DIAMOND,
  /** Fourth series. */
  TRIANGLE_UP,
  /** Fifth series. */
  TRIANGLE_DOWN;

  /**
   * Draws a point.
   *
   * @param at its middle
   * @param size its width, sheet units
   * @param tone its colour
   */
  Mark mark(Point at, double size, Tone tone) {
    double r = size / 2;
    Fill fill = Fill.full(tone);
    return switch (this) {
      case CIRCLE -> Mark.Oval.circle(at, r, LineStyle.NONE, fill);
      case SQUARE -> Mark.Path.rectangle(Box.about(at, r), LineStyle.NONE, fill);
      case DIAMOND -> {
        double d = 1.2 * r;
        yield polygon(fill, at.moved(0, -d), at.moved(d, 0), at.moved(0, d), at.moved(-d, 0));
      }
      case TRIANGLE_UP -> polygon(fill, at.moved(0, -r), at.moved(r, r), at.moved(-r, r));
      case TRIANGLE_DOWN -> polygon(fill, at.moved(0, r), at.moved(r, -r), at.moved(-r, -r));
    };
  }

  /** Explains a point in a key. */
  Key.Entry entry(double size, Tone tone, String words) {
    return new Key.Entry(List.of(mark(new Point(0, 0), size, tone)), words);
  }

  private static Mark polygon(Fill fill, Point... corners) {
    return Mark.Path.polygon(List.of(corners), LineStyle.NONE, fill);
  }
}
