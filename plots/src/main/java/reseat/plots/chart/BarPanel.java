package reseat.plots.chart;

import java.util.ArrayList;
import java.util.List;
import org.knowm.xchart.HorizontalBarChart;
import org.knowm.xchart.style.HorizontalBarStyler;
import reseat.elementary.Elementary;
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
import reseat.plots.scene.Typeface;
import reseat.units.PrintedNumber;

/**
 * Named level bars, one under the other, each with its value.
 *
 * <p>Bars are drawn by the charting library; names and values are set here, since names may be long
 * and may be used twice.
 */
final class BarPanel {

  static {
    Typeface.needNoScreen();
  }

  private static final double ROW = 23;
  private static final double HEADING = 20;
  private static final double AXIS = 30;
  private static final double UNDER = 18;
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
    double plotWidth = width - names;
    double top = heading.isEmpty() ? 0 : HEADING;
    KnownWords words = new KnownWords(TextStyle.SMALL);
    HorizontalBarChart chart = chart(bars, plotWidth, limit);
    ChartStyle.apply(chart.getStyler(), words);
    chart.getStyler().setYAxisTicksVisible(false);
    chart.getStyler().setYAxisTickLabelsFormattingFunction(null);
    ChartRecorder recorder = new ChartRecorder(words);
    chart.paint(recorder, chart.getWidth(), chart.getHeight());
    Scene.Builder scene = new Scene.Builder();
    List<Mark> marks = new ArrayList<>();
    recorder.marks().forEach(m -> marks.add(m));
    List<Box> places = new ArrayList<>();
    for (Mark m : marks) {
      boolean bar = m instanceof Mark.Path p && p.fill().equals(Fill.full(Tone.BLUE));
      Mark drawn = m;
      if (bar) {
        Tone tone = bars.get(places.size()).tone();
        places.add(m.box().moved(names, top));
        drawn = new Mark.Path(((Mark.Path) m).parts(), true, LineStyle.NONE, Fill.full(tone));
      }
      scene.add(drawn.moved(names, top));
    }
    double zero = names + chart.getScreenXFromChart(0);
    double bottom = top + chart.getHeight() - AXIS + 6;
    scene.add(
        Mark.Path.line(
            new Point(zero, top + 2), new Point(zero, bottom), LineStyle.solid(Tone.INK, 1)));
    if (Double.isFinite(limit)) {
      double at = names + chart.getScreenXFromChart(limit);
      scene.add(Mark.Path.line(new Point(at, top + 2), new Point(at, bottom), LineStyle.LIMIT));
    }
    words(scene, bars, places, names);
    if (!heading.isEmpty()) {
      String fits = TextWidth.shortened(heading, TextStyle.LABEL, width - 4);
      scene.add(Mark.Text.level(fits, new Point(2, 12), Anchor.START, TextStyle.LABEL));
    }
    double under = top + chart.getHeight() + 10;
    String fits = TextWidth.shortened(label, TextStyle.LABEL, width - 4);
    double half = TextWidth.of(fits, TextStyle.LABEL) / 2;
    double middle = Math.max(half + 1, Math.min(width - half - 1, names + plotWidth / 2));
    scene.add(Mark.Text.level(fits, new Point(middle, under), Anchor.MIDDLE, TextStyle.LABEL));
    return scene.build(width, under + UNDER - 10);
  }

  private static void words(Scene.Builder scene, List<Bar> bars, List<Box> places, double names) {
    for (int i = 0; i < places.size(); i++) {
      Bar bar = bars.get(i);
      double y = places.get(i).middle().y() + 4;
      String name = TextWidth.shortened(bar.name(), NAME, names - GAP - 0.5);
      scene.add(Mark.Text.level(name, new Point(names - GAP, y), Anchor.END, NAME));
      boolean right = bar.value() >= 0;
      double end = right ? places.get(i).right() + 4 : places.get(i).left() - 4;
      scene.add(
          new Mark.Text(
              bar.words(),
              new Point(end, y),
              right ? Anchor.START : Anchor.END,
              TextStyle.SMALL,
              0,
              true));
    }
  }

  private static HorizontalBarChart chart(List<Bar> bars, double width, double limit) {
    int height = (int) Elementary.round(ROW * bars.size() + AXIS);
    HorizontalBarChart chart = new HorizontalBarChart((int) Elementary.round(width), height);
    HorizontalBarStyler style = chart.getStyler();
    style.setLegendVisible(false);
    style.setAvailableSpaceFill(0.62).setLabelsVisible(false);
    style.setXAxisTickMarkSpacingHint(56);
    style.setPlotContentSize(0.98);
    style.setPlotGridHorizontalLinesVisible(false);
    double least = 0;
    double most = Double.isFinite(limit) ? Math.max(0, limit) : 0;
    double left = 0;
    double right = 0;
    for (Bar b : bars) {
      least = Math.min(least, b.value());
      most = Math.max(most, b.value());
      double wide = TextWidth.of(b.words(), TextStyle.SMALL) + 8;
      left = b.value() < 0 ? Math.max(left, wide) : left;
      right = b.value() >= 0 ? Math.max(right, wide) : right;
    }
    double span = most > least ? most - least : 1;
    double perUnit = (0.96 * width - 8 - left - right) / span;
    style.setXAxisMin(least - left / perUnit);
    style.setXAxisMax(least + span + right / perUnit);
    List<Double> values = new ArrayList<>();
    List<String> keys = new ArrayList<>();
    for (int i = 0; i < bars.size(); i++) {
      values.add(bars.get(i).value());
      keys.add("bar " + i);
    }
    chart.addSeries("bars", values, keys).setFillColor(PlotPanel.color(Tone.BLUE, 1));
    return chart;
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
