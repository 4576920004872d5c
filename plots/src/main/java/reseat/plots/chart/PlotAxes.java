package reseat.plots.chart;

import reseat.plots.scene.Anchor;
import reseat.plots.scene.Box;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Point;
import reseat.plots.scene.Scene;
import reseat.plots.scene.TextWidth;
import reseat.plots.scene.Tone;

/**
 * A level and an upright axis with their grid and their numbers.
 *
 * @param plot where the curves are, sheet units
 * @param x how much of the level axis is shown, in its unit
 * @param y how much of the upright axis is shown
 * @param across ticks of the level axis
 * @param up ticks of the upright axis
 */
record PlotAxes(Box plot, AxisRange x, AxisRange y, AxisTicks across, AxisTicks up) {

  static final LineStyle GRID = LineStyle.solid(Tone.FAINT, 0.7);
  static final LineStyle AXIS = LineStyle.solid(Tone.MUTED, 1);

  /** Least distance between ticks of a level axis. */
  static final double TICKS_ACROSS = 32;

  private static final double TICKS_UP = 16;
  private static final double TICKS_UP_TALL = 24;
  private static final double TALL = 170;
  private static final double TICK = 4;
  private static final double TICK_GAP = 3;
  private static final double ABOVE = 6;
  private static final double NUMBERS = 22;
  private static final double RIGHT = 8;

  /**
   * Lays out axes.
   *
   * @param room where axes and their numbers have to stay, sheet units
   * @param x how much of the level axis is shown
   * @param y how much of the upright axis is shown
   * @param countsAlong whether only whole numbers count on the level axis
   * @param countsUp whether only whole numbers count on the upright axis
   */
  static PlotAxes of(Box room, AxisRange x, AxisRange y, boolean countsAlong, boolean countsUp) {
    double top = room.top() + ABOVE;
    double bottom = room.bottom() - NUMBERS;
    double apart = bottom - top < TALL ? TICKS_UP : TICKS_UP_TALL;
    AxisTicks up = AxisTicks.upright(y, bottom - top, apart, countsUp);
    double left = room.left() + up.widest() + TICK_GAP + TICK + 4;
    double right = room.right() - RIGHT;
    AxisTicks across = AxisTicks.level(x, right - left, TICKS_ACROSS, countsAlong);
    if (!across.words().isEmpty()) {
      int last = across.words().size() - 1;
      double half = TextWidth.of(across.words().get(last), AxisTicks.STYLE) / 2 + 2;
      double beyond = (x.to() - across.values().get(last)) / x.span() * (right - left);
      right = Math.min(right, room.right() - half + beyond);
    }
    return new PlotAxes(new Box(left, top, right, bottom), x, y, across, up);
  }

  /** Where a point lies on the sheet. */
  Point at(double xValue, double yValue) {
    return new Point(
        plot.left() + (xValue - x.from()) / x.span() * plot.width(),
        plot.bottom() - (yValue - y.from()) / y.span() * plot.height());
  }

  /** Draws what lies under the curves. */
  void grid(Scene.Builder scene) {
    for (double v : across.values()) {
      scene.add(upright(at(v, y.from()).x(), plot.top(), plot.bottom(), GRID));
    }
    for (double v : up.values()) {
      scene.add(level(plot.left(), plot.right(), at(x.from(), v).y(), GRID));
    }
  }

  /** Draws the axes with ticks and numbers. */
  void lines(Scene.Builder scene) {
    scene.add(level(plot.left(), plot.right(), plot.bottom(), AXIS));
    scene.add(upright(plot.left(), plot.top(), plot.bottom(), AXIS));
    for (int i = 0; i < across.values().size(); i++) {
      double at = at(across.values().get(i), y.from()).x();
      levelTick(scene, at, plot.bottom(), across.words().get(i));
    }
    for (int i = 0; i < up.values().size(); i++) {
      double at = at(x.from(), up.values().get(i)).y();
      scene.add(level(plot.left() - TICK, plot.left(), at, AXIS));
      Point base =
          new Point(
              plot.left() - TICK - TICK_GAP, at + TextWidth.CAPITAL * AxisTicks.STYLE.size() / 2);
      scene.add(Mark.Text.level(up.words().get(i), base, Anchor.END, AxisTicks.STYLE));
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

  static Mark level(double left, double right, double at, LineStyle line) {
    return Mark.Path.line(new Point(left, at), new Point(right, at), line);
  }
}
