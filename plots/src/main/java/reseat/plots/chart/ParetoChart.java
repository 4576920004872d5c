package reseat.plots.chart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import reseat.plots.NumberText;
import reseat.plots.Picture;
import reseat.plots.PictureKind;
import reseat.plots.chart.bitmap.PointCloud;
import reseat.plots.scene.Box;
import reseat.plots.scene.Dash;
import reseat.plots.scene.Key;
import reseat.plots.scene.LabelPlacer;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Mark;
import reseat.plots.scene.PngBytes;
import reseat.plots.scene.Point;
import reseat.plots.scene.Scene;
import reseat.plots.scene.TextStyle;
import reseat.plots.scene.Tone;

/** Candidate designs by two qualities, and those that no other beats in both. */
public final class ParetoChart {

  private static final double WIDTH = 600;
  private static final double HEIGHT = 400;
  private static final int MOST_NAMED = 8;
  private static final LineStyle FRONT = new LineStyle(Tone.INK, 1.2, Dash.DASHED);

  /**
   * One candidate that no other beats in both qualities.
   *
   * @param name name or number in the table of candidates
   * @param first first quality, SI
   * @param second second quality, SI
   */
  public record Best(String name, double first, double second) {}

  /**
   * Limits that a design must keep.
   *
   * @param first limit on the first quality, SI; infinite for none
   * @param second limit on the second quality, SI; infinite for none
   */
  public record Limits(double first, double second) {}

  private ParetoChart() {}

  /**
   * Draws the chart with a recommended candidate that may be beaten in these two qualities, since
   * it was chosen by another rule.
   *
   * @param first first quality
   * @param second second quality
   * @param firsts first quality of all candidates that keep all limits, SI
   * @param seconds second quality of the same, SI
   * @param best the recommended one, then the unbeaten ones
   * @param limits limits
   * @param apart whether the recommended one stands apart from the line of the unbeaten
   * @return the picture {@code pareto}
   */
  public static Picture draw(
      AxisQuantity first,
      AxisQuantity second,
      double[] firsts,
      double[] seconds,
      List<Best> best,
      Limits limits,
      boolean apart) {
    double[] xs = new double[firsts.length];
    double[] ys = new double[firsts.length];
    for (int i = 0; i < xs.length; i++) {
      xs[i] = first.of(firsts[i]);
      ys[i] = second.of(seconds[i]);
    }
    AxisRange.Gatherer xRange = new AxisRange.Gatherer().add(xs);
    AxisRange.Gatherer yRange = new AxisRange.Gatherer().add(ys);
    best.forEach(b -> xRange.add(first.of(b.first())));
    best.forEach(b -> yRange.add(second.of(b.second())));
    AxisRange x = xRange.range(0.06);
    AxisRange y = yRange.range(0.06);
    PlotPanel panel = new PlotPanel(WIDTH, HEIGHT, first.label(), x, second.label(), y);
    if (xs.length > 0) {
      cloud(panel, xs, ys);
    }
    panel.markerSize(6);
    panel.vertical(first.of(limits.first()), LineStyle.LIMIT);
    panel.horizontal(second.of(limits.second()), LineStyle.LIMIT);
    List<Best> front =
        best.stream().skip(apart ? 1 : 0).sorted(Comparator.comparingDouble(Best::first)).toList();
    double[] fx = front.stream().mapToDouble(b -> first.of(b.first())).toArray();
    double[] fy = front.stream().mapToDouble(b -> second.of(b.second())).toArray();
    if (front.size() > 1) {
      panel.line(fx, fy, FRONT);
    }
    if (!front.isEmpty()) {
      panel.points(fx, fy, Tone.BLUE, Marker.DIAMOND);
    }
    if (apart) {
      double[] x0 = {first.of(best.get(0).first())};
      double[] y0 = {second.of(best.get(0).second())};
      panel.points(x0, y0, Tone.INK, Marker.SQUARE);
    }
    Scene drawn = panel.scene();
    Scene.Builder scene = new Scene.Builder().place(drawn, 0, 0);
    scene.addAll(names(panel, drawn, first, second, best, middleOf(xs, ys)));
    Scene key = Key.of(key(best, limits, first, second, xs.length, apart), WIDTH - 12, 2);
    scene.place(key, 6, drawn.height() + 6);
    return Picture.of(
        PictureKind.PARETO,
        "pareto",
        "Candidates by " + first.name() + " and " + second.name(),
        caption(best, first, second),
        altText(best, first, second, xs.length),
        scene.build(WIDTH, drawn.height() + 6 + key.height()));
  }

  /** The middle of the cloud, from which names are best kept away. */
  private static Optional<Point> middleOf(double[] xs, double[] ys) {
    return xs.length == 0
        ? Optional.empty()
        : Optional.of(
            new Point(
                Arrays.stream(xs).average().orElse(0), Arrays.stream(ys).average().orElse(0)));
  }

  private static void cloud(PlotPanel panel, double[] xs, double[] ys) {
    AxisRange x = panel.x();
    AxisRange y = panel.y();
    PngBytes drawn =
        PointCloud.png(
            Arrays.stream(xs).map(v -> (v - x.from()) / x.span()).toArray(),
            Arrays.stream(ys).map(v -> (v - y.from()) / y.span()).toArray(),
            Tone.FAINT,
            panel.plot().width(),
            panel.plot().height());
    panel.bitmap(x.from(), y.from(), x.to(), y.to(), drawn);
  }

  /** Names the unbeaten ones as far as there is room. */
  private static List<Mark> names(
      PlotPanel panel,
      Scene drawn,
      AxisQuantity first,
      AxisQuantity second,
      List<Best> best,
      Optional<Point> middle) {
    Point low = panel.at(panel.x().from(), panel.y().from());
    Point high = panel.at(panel.x().to(), panel.y().to());
    LabelPlacer placer =
        new LabelPlacer(new Box(low.x() + 2, high.y(), drawn.width() - 2, low.y() - 2));
    for (Best b : best) {
      placer.keepClear(Box.about(panel.at(first.of(b.first()), second.of(b.second())), 4));
    }
    List<Mark> marks = new ArrayList<>();
    boolean recommended = true;
    for (Best b : best.subList(0, Math.min(MOST_NAMED, best.size()))) {
      TextStyle style = new TextStyle(11, recommended, Tone.INK);
      recommended = false;
      Point at = panel.at(first.of(b.first()), second.of(b.second()));
      placer
          .place(
              List.of(b.name()),
              style,
              at,
              6,
              middle.map(m -> panel.at(m.x(), m.y()).angleTo(at)).orElse(Math.PI / 4))
          .ifPresent(p -> marks.addAll(p.marks()));
    }
    return marks;
  }

  private static List<Key.Entry> key(
      List<Best> best,
      Limits limits,
      AxisQuantity first,
      AxisQuantity second,
      int n,
      boolean apart) {
    List<Key.Entry> key = new ArrayList<>();
    key.add(Marker.CIRCLE.entry(5, Tone.FAINT, n + " candidates that keep all limits"));
    key.add(
        Marker.DIAMOND.entry(
            7,
            Tone.BLUE,
            apart
                ? best.size() - 1 + " that no other beats in both; black: the recommended one"
                : best.size() + " that no other beats in both; the recommended one in bold"));
    List<String> words = new ArrayList<>();
    if (Double.isFinite(limits.first())) {
      words.add(first.name() + " " + first.text(limits.first(), 3));
    }
    if (Double.isFinite(limits.second())) {
      words.add(second.name() + " " + second.text(limits.second(), 3));
    }
    if (!words.isEmpty()) {
      key.add(
          Key.Entry.line(LineStyle.LIMIT, "limit, where it is near: " + String.join(", ", words)));
    }
    return key;
  }

  private static String caption(List<Best> best, AxisQuantity first, AxisQuantity second) {
    if (best.isEmpty()) {
      return "No candidate keeps all limits.";
    }
    return "Along the dashed line one quality can only be bettered at the cost of the other;"
        + " recommended is "
        + nameWithFigures(best.get(0), first, second)
        + ".";
  }

  private static String nameWithFigures(Best b, AxisQuantity first, AxisQuantity second) {
    return b.name() + " with " + first.text(b.first(), 3) + " and " + second.text(b.second(), 3);
  }

  private static String altText(List<Best> best, AxisQuantity first, AxisQuantity second, int n) {
    return "Scatter of "
        + NumberText.significant(n, 9)
        + " candidate designs by "
        + first.name()
        + " and "
        + second.name()
        + ". Unbeaten: "
        + (best.isEmpty()
            ? "none"
            : String.join("; ", best.stream().limit(12).map(b -> nameWithFigures(b, first, second)).toList()))
        + ".";
  }
}
