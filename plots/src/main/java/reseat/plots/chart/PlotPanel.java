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

  static final LineStyle GRID = LineStyle.solid(Tone.FAINT, 0.7);
  static final LineStyle AXIS = LineStyle.solid(Tone.MUTED, 1);

  /** Length of a tick. */
  static final double TICK = 4;

  /** From the end of a tick to its number. */
  static final double TICK_GAP = 3;

  private static final double HEADING = 20;
  private static final double ABOVE = 6;
  private static final double NUMBERS = 22;
  private static final double UNDER = 18;
  private static final double RIGHT = 8;
  private static final double TICKS_ACROSS = 32;
  private static final double TICKS_UP = 16;
  private static final double TICKS_UP_TALL = 24;
  private static final double TALL = 170;
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
  private Frame frame;

  /** Something that is drawn once the axes are laid out. */
  private interface Drawn {
    void onto(Scene.Builder scene);
  }

  /** Where the axes lie and what is written along them. */
  private record Frame(Box plot, AxisTicks across, AxisTicks up) {}

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
    frame = laidOut();
  }

  private Frame laidOut() {
    double top = HEADING + ABOVE;
    double bottom = height - NUMBERS - (xLabel.isEmpty() ? 0 : UNDER);
    double apart = bottom - top < TALL ? TICKS_UP : TICKS_UP_TALL;
    AxisTicks up = AxisTicks.upright(y, bottom - top, apart, countsUp);
    double left = up.widest() + TICK_GAP + TICK + 4;
    AxisTicks across = AxisTicks.level(x, width - RIGHT - left, TICKS_ACROSS, countsAlong);
    double right = width - RIGHT;
    if (!across.words().isEmpty()) {
      int last = across.words().size() - 1;
      double half = TextWidth.of(across.words().get(last), AxisTicks.STYLE) / 2 + 2;
      double beyond = (x.to() - across.values().get(last)) / x.span() * (right - left);
      right = Math.min(right, width - half + beyond);
    }
    return new Frame(new Box(left, top, right, bottom), across, up);
  }

  /** Puts ticks of the x axis on whole numbers only. */
  PlotPanel countsAlongX() {
    countsAlong = true;
    frame = laidOut();
    return this;
  }

  /** Puts ticks of the y axis on whole numbers only. */
  PlotPanel countsUp() {
    countsUp = true;
    frame = laidOut();
    return this;
  }

  /** Widens one axis until a unit is as long on both. */
  PlotPanel equalScale() {
    AxisRange wholeX = x;
    AxisRange wholeY = y;
    for (int i = 0; i < EQUALISED; i++) {
      double perUnit =
          Math.min(frame.plot.width() / wholeX.span(), frame.plot.height() / wholeY.span());
      x = wholeX.widenedTo(frame.plot.width() / perUnit);
      y = wholeY.widenedTo(frame.plot.height() / perUnit);
      frame = laidOut();
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
    return frame.plot;
  }

  /** Where a point of the plot lies on the panel. */
  Point at(double xValue, double yValue) {
    return new Point(
        frame.plot.left() + (xValue - x.from()) / x.span() * frame.plot.width(),
        frame.plot.bottom() - (yValue - y.from()) / y.span() * frame.plot.height());
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
          Box seen = frame.plot.grown(1);
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
          List<Point> seen = frame.plot.clip(corners);
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
          both ? frame.plot.clip(at(xs[i], ys[i]), at(xs[i + 1], ys[i + 1])) : List.of();
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
    Box plot = frame.plot;
    for (double v : frame.across.values()) {
      double at = at(v, y.from()).x();
      scene.add(upright(at, plot.top(), plot.bottom(), GRID));
    }
    for (double v : frame.up.values()) {
      double at = at(x.from(), v).y();
      scene.add(level(plot.left(), plot.right(), at, GRID));
    }
    drawn.forEach(d -> d.onto(scene));
    axes(scene);
    TextStyle style = TextStyle.LABEL;
    String heading = TextWidth.shortened(yLabel, style, width - 4);
    scene.add(Mark.Text.level(heading, new Point(2, 12), Anchor.START, style));
    if (!xLabel.isEmpty()) {
      String under = TextWidth.shortened(xLabel, style, width - 40);
      double half = TextWidth.of(under, style) / 2;
      double at = Math.max(half + 1, Math.min(width - half - 1, plot.middle().x()));
      scene.add(Mark.Text.level(under, new Point(at, height - 6), Anchor.MIDDLE, style));
    }
    return scene.build(width, height);
  }

  private void axes(Scene.Builder scene) {
    Box plot = frame.plot;
    scene.add(level(plot.left(), plot.right(), plot.bottom(), AXIS));
    scene.add(upright(plot.left(), plot.top(), plot.bottom(), AXIS));
    for (int i = 0; i < frame.across.values().size(); i++) {
      double at = at(frame.across.values().get(i), y.from()).x();
      levelTick(scene, at, plot.bottom(), frame.across.words().get(i));
    }
    for (int i = 0; i < frame.up.values().size(); i++) {
      double at = at(x.from(), frame.up.values().get(i)).y();
      scene.add(level(plot.left() - TICK, plot.left(), at, AXIS));
      Point base =
          new Point(
              plot.left() - TICK - TICK_GAP, at + TextWidth.CAPITAL * AxisTicks.STYLE.size() / 2);
      scene.add(Mark.Text.level(frame.up.words().get(i), base, Anchor.END, AxisTicks.STYLE));
    }
  }

  /** One tick of a level axis with its number. */
  static void levelTick(Scene.Builder scene, double at, double axis, String words) {
    scene.add(upright(at, axis, axis + TICK, AXIS));
    Point base = new Point(at, axis + TICK + TICK_GAP + TextWidth.CAPITAL * AxisTicks.STYLE.size());
    scene.add(Mark.Text.level(words, base, Anchor.MIDDLE, AxisTicks.STYLE));
  }

  static Mark upright(double at, double top, double bottom, LineStyle line) {
    return Mark.Path.line(new Point(at, top), new Point(at, bottom), line);
  }

  private static Mark level(double left, double right, double at, LineStyle line) {
    return Mark.Path.line(new Point(left, at), new Point(right, at), line);
  }
}
