package reseat.plots.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import reseat.plots.scene.Box;
import reseat.plots.scene.Fill;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Point;

/** Lines at 45 degrees over cut material. */
final class Hatch {

  private Hatch() {}

  /**
   * Hatches a polygon of any shape.
   *
   * @param polygon corners in order
   * @param pitch distance between lines, sheet units
   * @param falling whether the lines fall to the right instead of rising, to tell neighbouring
   *     parts apart
   * @return the lines, or nothing for a polygon between two lines
   */
  static Optional<Mark> of(List<Point> polygon, double pitch, boolean falling) {
    int sign = falling ? -1 : 1;
    double step = pitch * Math.sqrt(2);
    Box box = Box.around(polygon);
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (double x : new double[] {box.left(), box.right()}) {
      for (double y : new double[] {box.top(), box.bottom()}) {
        low = Math.min(low, x + sign * y);
        high = Math.max(high, x + sign * y);
      }
    }
    List<List<Point>> lines = new ArrayList<>();
    for (double c = Math.ceil(low / step) * step; c < high; c += step) {
      List<Double> cuts = cuts(polygon, sign, c);
      for (int i = 0; i + 1 < cuts.size(); i += 2) {
        double from = cuts.get(i);
        double to = cuts.get(i + 1);
        if (to - from > 0.3) {
          lines.add(List.of(new Point(from, sign * (c - from)), new Point(to, sign * (c - to))));
        }
      }
    }
    return lines.isEmpty()
        ? Optional.empty()
        : Optional.of(new Mark.Path(lines, false, LineStyle.HATCH, Fill.NONE));
  }

  /** Where the line x + sign y = c crosses the edges, by x. */
  private static List<Double> cuts(List<Point> polygon, int sign, double c) {
    List<Double> cuts = new ArrayList<>();
    for (int i = 0; i < polygon.size(); i++) {
      Point p = polygon.get(i);
      Point q = polygon.get((i + 1) % polygon.size());
      double fp = p.x() + sign * p.y() - c;
      double fq = q.x() + sign * q.y() - c;
      if ((fp < 0) != (fq < 0)) {
        cuts.add(p.x() + (q.x() - p.x()) * fp / (fp - fq));
      }
    }
    Collections.sort(cuts);
    return cuts;
  }
}
