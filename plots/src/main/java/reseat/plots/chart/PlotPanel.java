package reseat.plots.chart;

import java.util.ArrayList;
import java.util.List;
import reseat.plots.scene.Anchor;
import reseat.plots.scene.Box;
import reseat.plots.scene.Fill;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Mark;
import reseat.plots.scene.PngBytes;
import reseat.plots.scene.Point;
import reseat.plots.scene.Scene;
import reseat.plots.scene.TextStyle;
import reseat.plots.scene.TextWidth;
import reseat.plots.scene.Tone;

/**
 * One pair of axes with curves, points and areas; values in the units of the axes.
 *
 * <p>Not for use by several threads.
 */
final class PlotPanel {

  private static final double HEADING = 20;
  private static final double UNDER = 18;
  private static final int EQUALISED = 4;

  private final String xLabel;
  private final String yLabel;
  private final double width;
  private final double height;
  private final List<Drawn> drawn = new ArrayList<>();
  private AxisRange x;
  private AxisRange y;
  private boolean countsAlong;
  private boolean countsUp;
  private double markerSize = 6;
  private PlotAxes axes;

  /** Something that is drawn once the axes are laid out. */
  private interface Drawn {
    void onto(Scene.Builder scene);
  }

  /**
   * Starts a panel.
   *
   * @param width width with all words, sheet units
   * @param height height with all words
   * @param xLabel quantity and unit along the axis; empty for none
   * @param x how much of the axis is shown
   * @param yLabel quantity and unit of the upright axis, written over it
   * @param y how much of the axis is shown
   */
  PlotPanel(double width, double height, String xLabel, AxisRange x, String yLabel, AxisRange y) {
    this.xLabel = xLabel;
    this.yLabel = yLabel;
    this.width = width;
    this.height = height;
    this.x = x;
    this.y = y;
    axes = laidOut();
  }

  private PlotAxes laidOut() {
    double under = height - (xLabel.isEmpty() ? 0 : UNDER);
    return PlotAxes.of(new Box(0, HEADING, width, under), x, y, countsAlong, countsUp);
  }

  /** Puts ticks of the x axis on whole numbers only. */
  PlotPanel countsAlongX() {
    countsAlong = true;
    axes = laidOut();
    return this;
  }

  /** Puts ticks of the y axis on whole numbers only. */
  PlotPanel countsUp() {
    countsUp = true;
    axes = laidOut();
    return this;
  }

  /** Widens one axis until a unit is as long on both. */
  PlotPanel equalScale() {
    AxisRange wholeX = x;
    AxisRange wholeY = y;
    for (int i = 0; i < EQUALISED; i++) {
      double perUnit =
          Math.min(axes.plot().width() / wholeX.span(), axes.plot().height() / wholeY.span());
      x = wholeX.widenedTo(axes.plot().width() / perUnit);
      y = wholeY.widenedTo(axes.plot().height() / perUnit);
      axes = laidOut();
    }
    return this;
  }

  AxisRange x() {
    return x;
  }

  AxisRange y() {
    return y;
  }

  /** Where the curves are, sheet units of the panel. */
  Box plot() {
    return axes.plot();
  }

  /** Where a point of the plot lies on the panel. */
  Point at(double xValue, double yValue) {
    return axes.at(xValue, yValue);
  }

  /** Draws a line through points; a value that is not a number breaks it. */
  PlotPanel line(double[] xs, double[] ys, LineStyle line) {
    needPoints(xs, ys);
    drawn.add(scene -> curve(scene, xs, ys, line));
    return this;
  }

  /** Draws a line with a mark at each point. */
  PlotPanel line(double[] xs, double[] ys, LineStyle line, Marker marker) {
    line(xs, ys, line);
    return points(xs, ys, line.tone(), marker);
  }

  /** Draws points, if there are any. */
  PlotPanel points(double[] xs, double[] ys, Tone tone, Marker marker) {
    double size = markerSize;
    drawn.add(
        scene -> {
          Box seen = axes.plot().grown(1);
          for (int i = 0; i < xs.length; i++) {
            if (Double.isFinite(xs[i]) && Double.isFinite(ys[i])) {
              Point at = at(xs[i], ys[i]);
              if (seen.contains(at)) {
                scene.add(marker.mark(at, size, tone));
              }
            }
          }
        });
    return this;
  }

  /** Sets how large points are drawn from here on, sheet units. */
  PlotPanel markerSize(double size) {
    markerSize = size;
    return this;
  }

  /** Fills a convex polygon. */
  PlotPanel area(double[] xs, double[] ys, Fill fill) {
    needPoints(xs, ys);
    drawn.add(
        scene -> {
          List<Point> corners = new ArrayList<>();
          for (int i = 0; i < xs.length; i++) {
            corners.add(at(xs[i], ys[i]));
          }
          List<Point> seen = axes.plot().clip(corners);
          if (seen.size() > 2) {
            scene.add(Mark.Path.polygon(seen, LineStyle.NONE, fill));
          }
        });
    return this;
  }

  /** Fills between two places on the x axis, over the whole height. */
  PlotPanel xBand(double from, double to, Fill fill) {
    double a = Math.max(x.from(), Math.min(x.to(), from));
    double b = Math.max(x.from(), Math.min(x.to(), to));
    return b > a
        ? area(new double[] {a, b, b, a}, new double[] {y.from(), y.from(), y.to(), y.to()}, fill)
        : this;
  }

  /** Puts a bitmap between two places of the plot, which lie within it. */
  PlotPanel bitmap(double left, double bottom, double right, double top, PngBytes png) {
    drawn.add(
        scene -> {
          Point low = at(left, bottom);
          Point high = at(right, top);
          scene.add(new Mark.Bitmap(new Box(low.x(), high.y(), high.x(), low.y()), png));
        });
    return this;
  }

  /** Draws a level line over the whole width, if it is within the range. */
  PlotPanel horizontal(double value, LineStyle line) {
    return value >= y.from() && value <= y.to()
        ? line(new double[] {x.from(), x.to()}, new double[] {value, value}, line)
        : this;
  }

  /** Draws an upright line over the whole height, if it is within the range. */
  PlotPanel vertical(double value, LineStyle line) {
    return value >= x.from() && value <= x.to()
        ? line(new double[] {value, value}, new double[] {y.from(), y.to()}, line)
        : this;
  }

  private static void needPoints(double[] xs, double[] ys) {
    if (xs.length == 0 || xs.length != ys.length) {
      throw new IllegalArgumentException(
          "a series needs points with two coordinates each, found "
              + xs.length
              + " and "
              + ys.length);
    }
  }

  private void curve(Scene.Builder scene, double[] xs, double[] ys, LineStyle line) {
    List<Point> run = new ArrayList<>();
    for (int i = 0; i + 1 < xs.length; i++) {
      boolean both = Double.isFinite(xs[i] + ys[i]) && Double.isFinite(xs[i + 1] + ys[i + 1]);
      List<Point> seen =
          both ? axes.plot().clip(at(xs[i], ys[i]), at(xs[i + 1], ys[i + 1])) : List.of();
      if (seen.isEmpty()) {
        end(scene, run, line);
        continue;
      }
      if (!run.isEmpty() && !run.get(run.size() - 1).equals(seen.get(0))) {
        end(scene, run, line);
      }
      if (run.isEmpty()) {
        run.add(seen.get(0));
      }
      run.add(seen.get(1));
    }
    end(scene, run, line);
  }

  private static void end(Scene.Builder scene, List<Point> run, LineStyle line) {
    if (run.size() > 1) {
      scene.add(Mark.Path.open(run, line));
    }
    run.clear();
  }

  /** Draws the panel. */
  Scene scene() {
    Scene.Builder scene = new Scene.Builder();
    axes.grid(scene);
    drawn.forEach(d -> d.onto(scene));
    axes.lines(scene);
    TextStyle style = TextStyle.LABEL;
    String heading = TextWidth.shortened(yLabel, style, width - 4);
    scene.add(Mark.Text.level(heading, new Point(2, 12), Anchor.START, style));
    if (!xLabel.isEmpty()) {
      String under = TextWidth.shortened(xLabel, style, width - 40);
      double half = TextWidth.of(under, style) / 2;
      double at = Math.max(half + 1, Math.min(width - half - 1, axes.plot().middle().x()));
      scene.add(Mark.Text.level(under, new Point(at, height - 6), Anchor.MIDDLE, style));
    }
    return scene.build(width, height);
  }
}
