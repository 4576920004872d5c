package reseat.plots.chart;

import java.util.ArrayList;
import java.util.List;
import reseat.plots.scene.Fill;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Point;

/** Crosses on a map where a design does not hold. */
final class FailingPoints {

  private FailingPoints() {}

  static List<Mark> crosses(PlotPanel panel, double[] xs, double[] ys, boolean[][] failing) {
    List<Mark> crosses = new ArrayList<>();
    for (int i = 0; i < xs.length; i++) {
      for (int j = 0; j < ys.length; j++) {
        if (failing[i][j]) {
          crosses.add(cross(panel.at(xs[i], ys[j])));
        }
      }
    }
    return crosses;
  }

  static Mark cross(Point at) {
    double r = 2.6;
    return new Mark.Path(
        List.of(
            List.of(new Point(at.x() - r, at.y() - r), new Point(at.x() + r, at.y() + r)),
            List.of(new Point(at.x() - r, at.y() + r), new Point(at.x() + r, at.y() - r))),
        false,
        LineStyle.solid(LineStyle.LIMIT.tone(), 1),
        Fill.NONE);
  }
}
