package reseat.plots.drawing;

import java.util.ArrayList;
import java.util.List;
import reseat.elementary.Elementary;
import reseat.plots.scene.Anchor;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Point;
import reseat.plots.scene.TextStyle;
import reseat.plots.scene.TextWidth;
import reseat.plots.scene.Tone;

/**
 * A dimension between two points: projection lines, a line with arrow heads and the value above it.
 *
 * <p>Where the arrows do not fit between the points they stand outside and point inward, and where
 * the value does not fit it stands beyond the second arrow.
 */
final class DimensionLine {

  private static final double GAP = 2;
  private static final double OVERSHOOT = 4;
  private static final double ARROWS_NEED = 24;
  private static final double OUTSIDE = 14;

  private DimensionLine() {}

  /**
   * Draws a dimension.
   *
   * @param a first point
   * @param b second point
   * @param offset how far the dimension line stands off, sheet units, to the left of the way from
   *     the first point to the second
   * @param value what is written
   * @return the marks, the words last
   */
  static List<Mark> of(Point a, Point b, double offset, String value) {
    double along = a.angleTo(b);
    double aside = along + Math.PI / 2;
    Point from = a.toward(offset, aside);
    Point to = b.toward(offset, aside);
    double length = a.distanceTo(b);
    double sign = Math.signum(offset);
    List<Mark> marks = new ArrayList<>();
    for (Point p : List.of(a, b)) {
      if (Math.abs(offset) > GAP) {
        marks.add(
            Mark.Path.line(
                p.toward(sign * GAP, aside),
                p.toward(offset + sign * OVERSHOOT, aside),
                LineStyle.THIN));
      }
    }
    boolean inside = length >= ARROWS_NEED;
    double reach = inside ? 0 : OUTSIDE;
    boolean wordsInside = TextWidth.of(value, TextStyle.SMALL) + 6 <= length;
    double beyond = wordsInside ? reach : reach + TextWidth.of(value, TextStyle.SMALL) + 6;
    marks.add(Mark.Path.line(from.toward(-reach, along), to.toward(beyond, along), LineStyle.THIN));
    marks.add(Sign.head(from, inside ? along + Math.PI : along, Tone.MUTED));
    marks.add(Sign.head(to, inside ? along : along + Math.PI, Tone.MUTED));
    Point middle =
        wordsInside
            ? new Point((from.x() + to.x()) / 2, (from.y() + to.y()) / 2)
            : to.toward((reach + beyond) / 2, along);
    marks.add(words(middle, along, value));
    return marks;
  }

  /** Words above the line, turned so that they are read from below or from the right. */
  private static Mark words(Point middle, double along, String value) {
    double turn = Elementary.atan2(Elementary.sin(along), Elementary.cos(along));
    if (turn > Math.PI / 2 + 1e-6 || turn < -Math.PI / 2 + 1e-6) {
      turn += turn > 0 ? -Math.PI : Math.PI;
    }
    Point base = middle.toward(3, turn + Math.PI / 2);
    return new Mark.Text(value, base, Anchor.MIDDLE, TextStyle.SMALL, turn, true);
  }
}
