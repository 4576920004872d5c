package reseat.plots.drawing;

import java.util.ArrayList;
import java.util.List;
import reseat.plots.NumberText;
import reseat.plots.scene.Anchor;
import reseat.plots.scene.Fill;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Point;
import reseat.plots.scene.TextStyle;
import reseat.plots.scene.Tone;

/** A rule under a drawing: millimetres above, inches below. */
final class ScaleBar {

  private static final double[] MILLIMETRES = {0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500};
  private static final double[] INCHES = {0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20};

  private ScaleBar() {}

  /**
   * Draws the rule.
   *
   * @param view the view it belongs to
   * @param right where it ends
   * @param y height of its line
   * @param longest greatest length, sheet units
   * @return the marks
   */
  static List<Mark> of(SheetView view, double right, double y, double longest, DrawingUnits units) {
    double mm = largest(MILLIMETRES, view.length(1e-3), longest);
    double inch = largest(INCHES, view.length(0.0254), longest);
    double mmLong = view.length(1e-3 * mm);
    double inchLong = view.length(0.0254 * inch);
    double left = right - Math.max(mmLong, inchLong);
    List<Mark> marks = new ArrayList<>();
    if (units != DrawingUnits.INCH) {
      bar(marks, new Point(left, y - 4), mmLong, NumberText.significant(mm, 3) + " mm", -4);
    }
    if (units != DrawingUnits.METRIC) {
      bar(marks, new Point(left, y + 4), inchLong, NumberText.significant(inch, 3) + " in", 13);
    }
    return marks;
  }

  private static double largest(double[] choice, double perUnit, double longest) {
    double best = choice[0];
    for (double c : choice) {
      if (c * perUnit <= longest) {
        best = c;
      }
    }
    return best;
  }

  private static void bar(List<Mark> marks, Point left, double length, String words, double dy) {
    double tick = Math.signum(dy) * 4;
    LineStyle line = LineStyle.solid(Tone.INK, 1.2);
    marks.add(
        Mark.Path.open(
            List.of(left.moved(0, tick), left, left.moved(length, 0), left.moved(length, tick)),
            line));
    int parts = 5;
    List<List<Point>> ticks = new ArrayList<>();
    for (int i = 1; i < parts; i++) {
      Point p = left.moved(length * i / parts, 0);
      ticks.add(List.of(p, p.moved(0, tick * 0.6)));
    }
    marks.add(new Mark.Path(ticks, false, LineStyle.solid(Tone.INK, 0.8), Fill.NONE));
    marks.add(
        Mark.Text.level(words, left.moved(length / 2, dy * 1.4), Anchor.MIDDLE, TextStyle.SMALL));
  }
}
