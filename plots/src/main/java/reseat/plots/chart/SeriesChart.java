package reseat.plots.chart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import reseat.plots.Picture;
import reseat.plots.PictureKind;
import reseat.plots.scene.Dash;
import reseat.plots.scene.Fill;
import reseat.plots.scene.Key;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Point;
import reseat.plots.scene.Scene;
import reseat.plots.scene.Tone;

/** Readings in the order in which they were taken, with limits and where they have settled. */
public final class SeriesChart {

  private static final double WIDTH = 600;
  private static final double HEIGHT = 230;
  private static final LineStyle SETTLED = new LineStyle(Tone.GREEN, 1.4, Dash.DASHED);
  private static final LineStyle TREND = new LineStyle(Tone.INK, 1.2, Dash.CHAIN);

  /**
   * One column of readings.
   *
   * @param quantity what was read, with the unit to show
   * @param values readings, SI, in order, NaN where one was missed; at least two
   * @param lower least reading allowed, SI; infinite for none
   * @param upper greatest reading allowed, SI; infinite for none
   * @param settledFrom number of the first reading that counts as settled, from 1; 0 if not judged
   * @param trendStart fitted trend at the first settled reading, SI; infinite for no trend
   * @param trendEnd fitted trend at the last reading, SI
   */
  public record Column(
      AxisQuantity quantity,
      List<Double> values,
      double lower,
      double upper,
      int settledFrom,
      double trendStart,
      double trendEnd) {

    /** Copies the readings. */
    public Column {
      values = List.copyOf(values);
      if (values.size() < 2) {
        throw new IllegalArgumentException(
            "a series of " + quantity.name() + " needs at least two readings");
      }
      if (settledFrom < 0 || settledFrom > values.size()) {
        throw new IllegalArgumentException(
            "settled from reading "
                + settledFrom
                + ", but there are readings 1 to "
                + values.size());
      }
    }
  }

  private SeriesChart() {}

  /**
   * Draws the series, one panel under the other.
   *
   * @param columns at least one
   * @param limitName what the limits are, for the key
   * @return the picture {@code readings}
   */
  public static Picture draw(List<Column> columns, String limitName) {
    List<Scene> panels = new ArrayList<>();
    columns.forEach(c -> panels.add(panel(c)));
    panels.add(Key.of(key(columns, limitName), WIDTH - 12, 2));
    return Picture.of(
        PictureKind.READINGS,
        "readings",
        "Readings in the order in which they were taken",
        caption(columns),
        "Series of readings. "
            + columns.stream().map(SeriesChart::told).collect(Collectors.joining("; "))
            + ".",
        BarPanel.stacked(panels, WIDTH));
  }

  private static Scene panel(Column c) {
    int n = c.values().size();
    int[] read = IntStream.range(0, n).filter(i -> !c.values().get(i).isNaN()).toArray();
    double[] xs = Arrays.stream(read).mapToDouble(i -> i + 1.0).toArray();
    double[] ys =
        Arrays.stream(read).mapToDouble(i -> c.quantity().of(c.values().get(i))).toArray();
    double lower = c.quantity().of(c.lower());
    double upper = c.quantity().of(c.upper());
    AxisRange.Gatherer range = new AxisRange.Gatherer().add(ys);
    for (double limit : new double[] {lower, upper}) {
      if (range.near(limit, 2.5)) {
        range.add(limit);
      }
    }
    PlotPanel panel =
        new PlotPanel(
            WIDTH,
            HEIGHT,
            "number of the mount",
            new AxisRange.Gatherer().add(0.5).add(n + 0.5).range(0.01),
            c.quantity().label(),
            range.range(0.06));
    panel.countsAlongX();
    panel.horizontal(lower, LineStyle.LIMIT).horizontal(upper, LineStyle.LIMIT);
    if (c.settledFrom() > 1) {
      panel.vertical(c.settledFrom() - 0.5, SETTLED);
    }
    panel.markerSize(n > 100 ? 3 : 5);
    LineStyle thin = LineStyle.solid(Tone.BLUE, 1);
    double[][] shown = Thinning.ofSeries(xs, ys);
    panel.line(shown[0], shown[1], thin, Marker.CIRCLE);
    if (Double.isFinite(c.trendStart()) && Double.isFinite(c.trendEnd())) {
      double from = Math.max(1, c.settledFrom());
      panel.line(
          new double[] {from, n},
          new double[] {c.quantity().of(c.trendStart()), c.quantity().of(c.trendEnd())},
          TREND);
    }
    return panel.scene();
  }

  private static List<Key.Entry> key(List<Column> columns, String limitName) {
    List<Key.Entry> key = new ArrayList<>();
    key.add(
        new Key.Entry(
            List.of(
                Mark.Path.line(new Point(-15, 0), new Point(15, 0), LineStyle.solid(Tone.BLUE, 1)),
                Mark.Oval.circle(new Point(0, 0), 2.5, LineStyle.NONE, Fill.full(Tone.BLUE))),
            "reading"));
    if (columns.stream().anyMatch(c -> Double.isFinite(c.lower()) || Double.isFinite(c.upper()))) {
      key.add(Key.Entry.line(LineStyle.LIMIT, limitName));
    }
    if (columns.stream().anyMatch(c -> c.settledFrom() > 1)) {
      key.add(Key.Entry.line(SETTLED, "settled from here on"));
    }
    if (columns.stream().anyMatch(c -> Double.isFinite(c.trendStart()))) {
      key.add(Key.Entry.line(TREND, "trend of the settled readings"));
    }
    return key;
  }

  private static String caption(List<Column> columns) {
    List<Integer> from =
        columns.stream().map(Column::settledFrom).filter(f -> f > 1).distinct().toList();
    if (from.isEmpty()) {
      return "Look for a drift, a jump or readings that stand alone.";
    }
    String settled =
        from.size() == 1 && columns.stream().allMatch(c -> c.settledFrom() > 1)
            ? "all are settled from mount " + from.get(0)
            : "settled are "
                + columns.stream()
                    .filter(c -> c.settledFrom() > 1)
                    .map(c -> c.quantity().name() + " from mount " + c.settledFrom())
                    .collect(Collectors.joining(", "));
    return "The first mounts still run in; " + settled + ".";
  }

  private static String told(Column c) {
    double least =
        c.values().stream().mapToDouble(v -> v).filter(v -> !Double.isNaN(v)).min().orElseThrow();
    double most =
        c.values().stream().mapToDouble(v -> v).filter(v -> !Double.isNaN(v)).max().orElseThrow();
    return c.quantity().name()
        + ": "
        + c.values().size()
        + " readings between "
        + c.quantity().text(least, 4)
        + " and "
        + c.quantity().text(most, 4);
  }
}
