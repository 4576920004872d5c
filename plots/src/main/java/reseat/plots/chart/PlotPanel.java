package reseat.plots.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;
import reseat.elementary.Elementary;
import reseat.plots.scene.Anchor;
import reseat.plots.scene.Dash;
import reseat.plots.scene.Fill;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Point;
import reseat.plots.scene.Scene;
import reseat.plots.scene.TextStyle;
import reseat.plots.scene.TextWidth;
import reseat.plots.scene.Tone;
import reseat.plots.scene.Typeface;

/**
 * One pair of axes with curves, points and areas; values in the units of the axes.
 *
 * <p>Not for use by several threads.
 */
final class PlotPanel {

  static {
    Typeface.needNoScreen();
  }

  /** Shapes of points: the second code beside the colour. */
  static final List<Marker> MARKERS =
      List.of(
          SeriesMarkers.CIRCLE,
          SeriesMarkers.SQUARE,
          SeriesMarkers.DIAMOND,
          SeriesMarkers.TRIANGLE_UP,
          SeriesMarkers.TRIANGLE_DOWN);

  private static final double HEADING = 20;
  private static final double UNDER = 18;
  private static final double CONTENT = 0.97;

  private final XYChart chart;
  private final KnownWords words = new KnownWords(TextStyle.SMALL);
  private final String xLabel;
  private final String yLabel;
  private final int width;
  private final int height;
  private AxisRange x;
  private AxisRange y;
  private int count;

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
    this.width = (int) Elementary.round(width);
    this.height = (int) Elementary.round(height - HEADING - (xLabel.isEmpty() ? 0 : UNDER));
    this.x = x;
    this.y = y;
    chart = new XYChart(this.width, this.height);
    XYStyler style = chart.getStyler();
    ChartStyle.apply(style, words);
    style.setXAxisTickMarkSpacingHint(56).setYAxisTickMarkSpacingHint(34);
    style.setPlotContentSize(CONTENT).setLegendVisible(false);
    style.setMarkerSize(6);
    keepTicksRound();
  }

  /**
   * The library puts ticks on the data where these are evenly spaced; two unseen points at odd
   * places make it choose round numbers instead.
   */
  private void keepTicksRound() {
    double[] xs = {x.from() + 0.38 * x.span(), x.from() + 0.9 * x.span()};
    double[] ys = {y.from() + 0.38 * y.span(), y.from() + 0.9 * y.span()};
    series(xs, ys, LineStyle.NONE, SeriesMarkers.NONE, Tone.PAPER);
  }

  /** Puts ticks of the x axis on whole numbers only. */
  PlotPanel countsAlongX() {
    int perUnit = (int) Math.ceil(CONTENT * width / x.span());
    chart.getStyler().setXAxisTickMarkSpacingHint(Math.max(56, perUnit));
    return this;
  }

  /** Draws a line through points; a value that is not a number breaks it. */
  PlotPanel line(double[] xs, double[] ys, LineStyle line) {
    series(xs, ys, line, SeriesMarkers.NONE, line.tone());
    return this;
  }

  /** Draws a line with a mark at each point. */
  PlotPanel line(double[] xs, double[] ys, LineStyle line, Marker marker) {
    series(xs, ys, line, marker, line.tone());
    return this;
  }

  /** Draws points, if there are any. */
  PlotPanel points(double[] xs, double[] ys, Tone tone, Marker marker) {
    if (xs.length > 0) {
      series(xs, ys, LineStyle.NONE, marker, tone);
    }
    return this;
  }

  /** Sets how large points are drawn, sheet units. */
  PlotPanel markerSize(int size) {
    chart.getStyler().setMarkerSize(size);
    return this;
  }

  /** Fills a polygon. */
  PlotPanel area(double[] xs, double[] ys, Fill fill) {
    XYSeries s = series(xs, ys, LineStyle.NONE, SeriesMarkers.NONE, fill.tone());
    s.setXYSeriesRenderStyle(XYSeries.XYSeriesRenderStyle.PolygonArea);
    s.setFillColor(color(fill.tone(), fill.opacity()));
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

  private XYSeries series(double[] xs, double[] ys, LineStyle line, Marker marker, Tone tone) {
    if (xs.length == 0) {
      throw new IllegalArgumentException("a series needs at least one point");
    }
    XYSeries s = chart.addSeries("series " + count++, xs, ys);
    s.setMarker(marker);
    s.setMarkerColor(color(tone, 1));
    s.setLineColor(color(line.tone(), 1));
    s.setLineStyle(line.visible() ? stroke(line) : ChartStyle.NO_STROKE);
    return s;
  }

  /** Widens one axis until a unit is as long on both. */
  PlotPanel equalScale() {
    recorded();
    double perX = across(x.to()) - across(x.from());
    double perY = down(y.from()) - down(y.to());
    double unitX = perX / x.span();
    double unitY = perY / y.span();
    if (unitX > unitY) {
      double half = perX / unitY / 2;
      double middle = (x.from() + x.to()) / 2;
      x = new AxisRange(middle - half, middle + half);
    } else {
      double half = perY / unitX / 2;
      double middle = (y.from() + y.to()) / 2;
      y = new AxisRange(middle - half, middle + half);
    }
    return this;
  }

  private double across(double value) {
    return chart.getScreenXFromChart(value);
  }

  private double down(double value) {
    return chart.getScreenYFromChart(value) + HEADING;
  }

  /** Where a point of the plot lies on the panel; only after {@link #scene()}. */
  Point at(double xValue, double yValue) {
    return new Point(across(xValue), down(yValue));
  }

  AxisRange x() {
    return x;
  }

  AxisRange y() {
    return y;
  }

  private List<Mark> recorded() {
    XYStyler style = chart.getStyler();
    style.setXAxisMin(x.from()).setXAxisMax(x.to());
    style.setYAxisMin(y.from()).setYAxisMax(y.to());
    ChartRecorder recorder = new ChartRecorder(words);
    chart.paint(recorder, width, height);
    return recorder.marks();
  }

  /** Paints the panel. */
  Scene scene() {
    List<Mark> marks = new ArrayList<>();
    recorded().forEach(m -> marks.add(m.moved(0, HEADING)));
    TextStyle style = TextStyle.LABEL;
    String heading = TextWidth.shortened(yLabel, style, width - 4);
    marks.add(Mark.Text.level(heading, new Point(2, 12), Anchor.START, style));
    if (!xLabel.isEmpty()) {
      String under = TextWidth.shortened(xLabel, style, width - 40);
      double middle = (across(x.from()) + across(x.to())) / 2;
      double half = TextWidth.of(under, style) / 2;
      double at = Math.max(half + 1, Math.min(width - half - 1, middle));
      marks.add(
          Mark.Text.level(
              under, new Point(at, HEADING + height + UNDER - 6), Anchor.MIDDLE, style));
    }
    return new Scene(width, HEADING + height + (xLabel.isEmpty() ? 0 : UNDER), marks);
  }

  static Color color(Tone tone, double opacity) {
    int alpha = (int) Elementary.round(255 * opacity);
    return new Color((alpha << 24) | tone.rgb(), true);
  }

  private static BasicStroke stroke(LineStyle line) {
    float width = (float) line.width();
    if (line.dash() == Dash.SOLID) {
      return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
    }
    double[] pattern = line.dash().pattern().stream().mapToDouble(Double::doubleValue).toArray();
    float[] dash = new float[pattern.length];
    for (int i = 0; i < dash.length; i++) {
      dash[i] = (float) pattern[i];
    }
    return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dash, 0);
  }
}
