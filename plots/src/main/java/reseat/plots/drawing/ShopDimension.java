package reseat.plots.drawing;

import java.util.ArrayList;
import java.util.List;
import reseat.plots.scene.Anchor;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Point;
import reseat.plots.scene.TextStyle;
import reseat.plots.scene.Tone;

/**
 * Dimensions whose figures all stand level, the way that a sheet at the machine is read: below a
 * level line, or beside an upright one.
 */
final class ShopDimension {

  /** How figures on shop drawings are set. */
  static final TextStyle FIGURES = new TextStyle(9.5, false, Tone.INK);

  private static final double ARROWS_NEED = 22;
  private static final double OUTSIDE = 13;
  private static final double OVERSHOOT = 4;
  private static final double GAP = 2;

  private ShopDimension() {}

  /** A level dimension between two points, its line at a height, figures below it. */
  static List<Mark> level(Point a, Point b, double y, String figures) {
    List<Mark> marks = new ArrayList<>();
    for (Point p : List.of(a, b)) {
      double down = Math.signum(y - p.y());
      marks.add(thin(p.moved(0, down * GAP), new Point(p.x(), y + down * OVERSHOOT)));
    }
    line(marks, new Point(Math.min(a.x(), b.x()), y), new Point(Math.max(a.x(), b.x()), y));
    Point under = new Point((a.x() + b.x()) / 2, y + FIGURES.size() + 2);
    marks.add(new Mark.Text(figures, under, Anchor.MIDDLE, FIGURES, 0, true));
    return marks;
  }

  /** An upright dimension between two points, its line at x, lines of figures beyond it. */
  static List<Mark> upright(Point a, Point b, double x, List<String> figures) {
    List<Mark> marks = new ArrayList<>();
    double away = Math.signum(x - (a.x() + b.x()) / 2);
    for (Point p : List.of(a, b)) {
      marks.add(thin(p.moved(away * GAP, 0), new Point(x + away * OVERSHOOT, p.y())));
    }
    line(marks, new Point(x, Math.max(a.y(), b.y())), new Point(x, Math.min(a.y(), b.y())));
    Anchor anchor = away > 0 ? Anchor.START : Anchor.END;
    double lineHeight = FIGURES.size() + 2;
    double top = (a.y() + b.y()) / 2 - (figures.size() / 2.0 - 0.75) * lineHeight;
    for (int i = 0; i < figures.size(); i++) {
      Point at = new Point(x + away * 7, top + i * lineHeight);
      marks.add(new Mark.Text(figures.get(i), at, anchor, FIGURES, 0, true));
    }
    return marks;
  }

  private static void line(List<Mark> marks, Point from, Point to) {
    double along = from.angleTo(to);
    boolean inside = from.distanceTo(to) >= ARROWS_NEED;
    double reach = inside ? 0 : OUTSIDE;
    marks.add(thin(from.toward(-reach, along), to.toward(reach, along)));
    marks.add(Sign.head(from, inside ? along + Math.PI : along, Tone.MUTED));
    marks.add(Sign.head(to, inside ? along : along + Math.PI, Tone.MUTED));
  }

  private static Mark thin(Point a, Point b) {
    return Mark.Path.line(a, b, LineStyle.THIN);
  }
}
