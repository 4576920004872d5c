package reseat.plots.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleFunction;
import reseat.plots.scene.Anchor;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Point;

/**
 * Running dimensions along one edge of a plan: from each point a line to the edge, where its
 * distance from the datum is written. Points in one line share a figure; figures too close together
 * move apart and their lines bend.
 */
final class RunningDimensions {

  private static final double SAME = 1e-7;
  private static final double APART = 13;
  private static final double BEND = 12;
  private static final double AWAY = 3;

  private RunningDimensions() {}

  private record Stop(double value, Point nearest) {}

  /**
   * Distances from the datum to the right, written upright below the plan.
   *
   * @param view the plan
   * @param points points of the plan, m, x to the right and y upward
   * @param edge height of the edge on the sheet
   * @param figures how a distance is written
   * @return the marks
   */
  static List<Mark> below(
      SheetView view, List<Point> points, double edge, DoubleFunction<String> figures) {
    List<Stop> stops =
        stops(points, Point::x, (a, b) -> a.y() < b.y()); // the lowest is nearest to the edge
    List<Double> places = spread(stops.stream().map(s -> view.of(s.value(), 0).x()).toList());
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < stops.size(); i++) {
      Point at = view.of(stops.get(i).nearest().x(), stops.get(i).nearest().y());
      Point bend = new Point(at.x(), edge);
      Point from = datum(stops.get(i)) ? bend.moved(0, -AWAY) : at.moved(0, AWAY);
      Point end = new Point(places.get(i), edge + BEND);
      marks.add(Mark.Path.open(List.of(from, bend, end), LineStyle.THIN));
      marks.add(
          new Mark.Text(
              figures.apply(stops.get(i).value()),
              end.moved(ShopDimension.FIGURES.size() * 0.36, 3),
              Anchor.END,
              ShopDimension.FIGURES,
              Math.PI / 2,
              false));
    }
    return marks;
  }

  /**
   * Distances from the datum upward, written level to the left of the plan.
   *
   * @param view the plan
   * @param points points of the plan, m, x to the right and y upward
   * @param edge place of the edge on the sheet
   * @param figures how a distance is written
   * @return the marks
   */
  static List<Mark> leftOf(
      SheetView view, List<Point> points, double edge, DoubleFunction<String> figures) {
    List<Stop> stops = stops(points, Point::y, (a, b) -> a.x() < b.x());
    List<Double> places = spread(stops.stream().map(s -> -view.of(0, s.value()).y()).toList());
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < stops.size(); i++) {
      Point at = view.of(stops.get(i).nearest().x(), stops.get(i).nearest().y());
      Point bend = new Point(edge, at.y());
      Point from = datum(stops.get(i)) ? bend.moved(AWAY, 0) : at.moved(-AWAY, 0);
      Point end = new Point(edge - BEND, -places.get(i));
      marks.add(Mark.Path.open(List.of(from, bend, end), LineStyle.THIN));
      marks.add(
          new Mark.Text(
              figures.apply(stops.get(i).value()),
              end.moved(-3, ShopDimension.FIGURES.size() * 0.36),
              Anchor.END,
              ShopDimension.FIGURES,
              0,
              false));
    }
    return marks;
  }

  /** Whether the line would lie on an axis that is drawn anyway. */
  private static boolean datum(Stop stop) {
    return Math.abs(stop.value()) < SAME;
  }

  private interface Nearer {
    boolean than(Point a, Point b);
  }

  private static List<Stop> stops(
      List<Point> points, java.util.function.ToDoubleFunction<Point> value, Nearer nearer) {
    List<Point> sorted = new ArrayList<>(points);
    sorted.sort(Comparator.comparingDouble(value));
    List<Stop> stops = new ArrayList<>();
    for (Point p : sorted) {
      Stop last = stops.isEmpty() ? null : stops.get(stops.size() - 1);
      if (last != null && value.applyAsDouble(p) - last.value() < SAME) {
        if (nearer.than(p, last.nearest())) {
          stops.set(stops.size() - 1, new Stop(last.value(), p));
        }
      } else {
        stops.add(new Stop(value.applyAsDouble(p), p));
      }
    }
    return stops;
  }

  /** Moves rising places at least a line apart, to both sides alike. */
  static List<Double> spread(List<Double> places) {
    int n = places.size();
    double[] up = new double[n];
    double[] down = new double[n];
    for (int i = 0; i < n; i++) {
      up[i] = i == 0 ? places.get(i) : Math.max(places.get(i), up[i - 1] + APART);
    }
    for (int i = n - 1; i >= 0; i--) {
      down[i] = i == n - 1 ? places.get(i) : Math.min(places.get(i), down[i + 1] - APART);
    }
    List<Double> spread = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      spread.add((up[i] + down[i]) / 2);
    }
    return spread;
  }
}
