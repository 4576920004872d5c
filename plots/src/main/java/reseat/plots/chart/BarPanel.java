package reseat.plots.chart;

import java.util.List;
import reseat.plots.NumberText;
import reseat.plots.scene.Anchor;
import reseat.plots.scene.Box;
import reseat.plots.scene.Fill;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Point;
import reseat.plots.scene.Scene;
import reseat.plots.scene.TextStyle;
import reseat.plots.scene.TextWidth;
import reseat.plots.scene.Tone;
import reseat.units.PrintedNumber;

/** Named level bars, one under the other, each with its value. */
final class BarPanel {

  private static final double ROW = 23;
  private static final double HEADING = 20;
  private static final double ABOVE = 2;
  private static final double THICKNESS = 14.5;
  private static final double NUMBERS = 20;
  private static final double RIGHT = 8;
  private static final double MOST_FOR_NAMES = 0.42;
  private static final double GAP = 6;
  private static final double LEAST_TOLD = 1e-3;
  private static final TextStyle NAME = TextStyle.SMALL;

  /**
   * One bar.
   *
   * @param name what it stands for
   * @param value in the unit of the axis
   * @param words its value in words
   * @param tone its colour
   */
  record Bar(String name, double value, String words, Tone tone) {
    Bar {
      if (!Double.isFinite(value)) {
        throw new IllegalArgumentException(
            "bar " + name + " has no finite value: " + PrintedNumber.shortest(value));
      }
    }

    static Bar of(String name, double value, Tone tone) {
      return new Bar(name, value, NumberText.significant(value, 3), tone);
    }
  }

  private BarPanel() {}

  /**
   * Writes a value with no more digits than its size beside the others deserves.
   *
   * @param quantity its quantity
   * @param si the value, SI
   * @param largest the largest of all values, SI
   */
  static String words(AxisQuantity quantity, double si, double largest) {
    double least = LEAST_TOLD * largest;
    return si != 0 && Math.abs(si) < least
        ? "under " + quantity.text(least, 1)
        : quantity.text(si, 2);
  }

  /** Writes a share, 0 to 1, in percent. */
  static String percent(double share) {
    return share > 0 && share < LEAST_TOLD
        ? "under " + NumberText.with(100 * LEAST_TOLD, 1, "%")
        : NumberText.with(100 * share, 2, "%");
  }

  /**
   * Draws bars.
   *
   * @param heading over the panel; empty for none
   * @param bars at least one, from top to bottom
   * @param label quantity and unit under the axis
   * @param limit upright limit line, in the unit of the axis; infinite for none
   * @param width width of the panel, sheet units
   */
  static Scene of(String heading, List<Bar> bars, String label, double limit, double width) {
    double names = 0;
    for (Bar b : bars) {
      names = Math.max(names, TextWidth.of(b.name(), NAME));
    }
    names = Math.min(names, MOST_FOR_NAMES * width) + GAP + 1;
    double top = ABOVE + (heading.isEmpty() ? 0 : HEADING);
    Box plot = new Box(names, top, width - RIGHT, top + ROW * bars.size());
    AxisRange range = range(bars, limit, plot.width());
    AxisTicks ticks = AxisTicks.level(range, plot.width(), PlotAxes.TICKS_ACROSS, false);
    Scene.Builder scene = new Scene.Builder();
    if (!heading.isEmpty()) {
      String fits = TextWidth.shortened(heading, TextStyle.LABEL, width - 4);
      scene.add(Mark.Text.level(fits, new Point(2, 12), Anchor.START, TextStyle.LABEL));
    }
    for (double tick : ticks.values()) {
      double at = across(plot, range, tick);
      scene.add(PlotAxes.upright(at, plot.top(), plot.bottom(), PlotAxes.GRID));
    }
    double zero = across(plot, range, 0);
    for (int i = 0; i < bars.size(); i++) {
      Bar bar = bars.get(i);
      double end = across(plot, range, bar.value());
      double middle = top + (i + 0.5) * ROW;
      Box box =
          new Box(
              Math.min(zero, end),
              middle - THICKNESS / 2,
              Math.max(zero, end),
              middle + THICKNESS / 2);
      scene.add(Mark.Path.rectangle(box, LineStyle.NONE, Fill.full(bar.tone())));
    }
    scene.add(PlotAxes.upright(zero, plot.top(), plot.bottom(), LineStyle.solid(Tone.INK, 1)));
    if (Double.isFinite(limit)) {
      double at = across(plot, range, limit);
      scene.add(PlotAxes.upright(at, plot.top(), plot.bottom(), LineStyle.LIMIT));
    }
    for (int i = 0; i < bars.size(); i++) {
      words(scene, bars.get(i), names, across(plot, range, bars.get(i).value()), top + i * ROW);
    }
    scene.add(PlotAxes.level(plot.left(), plot.right(), plot.bottom(), PlotAxes.AXIS));
    for (int i = 0; i < ticks.values().size(); i++) {
      double at = across(plot, range, ticks.values().get(i));
      PlotAxes.levelTick(scene, at, plot.bottom(), ticks.words().get(i));
    }
    double under = plot.bottom() + NUMBERS + 12;
    String fits = TextWidth.shortened(label, TextStyle.LABEL, width - 4);
    double half = TextWidth.of(fits, TextStyle.LABEL) / 2;
    double middle = Math.max(half + 1, Math.min(width - half - 1, plot.middle().x()));
    scene.add(Mark.Text.level(fits, new Point(middle, under), Anchor.MIDDLE, TextStyle.LABEL));
    return scene.build(width, under + 8);
  }

  private static double across(Box plot, AxisRange range, double value) {
    return plot.left() + (value - range.from()) / range.span() * plot.width();
  }

  private static void words(Scene.Builder scene, Bar bar, double names, double end, double top) {
    double y = top + ROW / 2 + 4;
    String name = TextWidth.shortened(bar.name(), NAME, names - GAP - 0.5);
    scene.add(Mark.Text.level(name, new Point(names - GAP, y), Anchor.END, NAME));
    boolean right = bar.value() >= 0;
    scene.add(
        new Mark.Text(
            bar.words(),
            new Point(right ? end + 4 : end - 4, y),
            right ? Anchor.START : Anchor.END,
            TextStyle.SMALL,
            0,
            true));
  }

  /** All bars, zero and the limit, with room for the words beside the bars. */
  private static AxisRange range(List<Bar> bars, double limit, double width) {
    double least = 0;
    double most = Double.isFinite(limit) ? Math.max(0, limit) : 0;
    double left = 0;
    double right = 4;
    for (Bar b : bars) {
      least = Math.min(least, b.value());
      most = Math.max(most, b.value());
      double wide = TextWidth.of(b.words(), TextStyle.SMALL) + 8;
      left = b.value() < 0 ? Math.max(left, wide) : left;
      right = b.value() >= 0 ? Math.max(right, wide) : right;
    }
    double span = most > least ? most - least : 1;
    double perUnit = (width - left - right) / span;
    return new AxisRange(least - left / perUnit, least + span + right / perUnit);
  }

  /** Sets panels under each other. */
  static Scene stacked(List<Scene> panels, double width) {
    Scene.Builder scene = new Scene.Builder();
    double y = 0;
    for (Scene p : panels) {
      scene.place(p, 0, y);
      y += p.height() + 8;
    }
    return scene.build(width, y);
  }
}
