package reseat.plots.chart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import reseat.elementary.Elementary;
import reseat.plots.NumberText;
import reseat.plots.Picture;
import reseat.plots.PictureKind;
import reseat.plots.chart.bitmap.HistogramBars;
import reseat.plots.scene.Dash;
import reseat.plots.scene.Key;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.PngBytes;
import reseat.plots.scene.Point;
import reseat.plots.scene.Scene;
import reseat.plots.scene.Tone;

/** How often each value came, with bounds. */
public final class HistogramChart {

  private static final double WIDTH = 600;
  private static final double HEIGHT = 280;
  private static final int MOST_BARS = 60;
  private static final LineStyle MEAN = new LineStyle(Tone.INK, 1.4, Dash.CHAIN);
  private static final LineStyle BOUND = new LineStyle(Tone.GREEN, 1.4, Dash.DASHED);

  /**
   * What to mark.
   *
   * @param lowerBound lower end of the interval that holds most values, SI; infinite for none
   * @param upperBound its upper end, SI; infinite for none
   * @param boundName what the interval is, for instance {@code 95 % of all mounts}
   */
  public record Marked(double lowerBound, double upperBound, String boundName) {

    /** Nothing marked. */
    public static final Marked NOTHING =
        new Marked(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, "");
  }

  private HistogramChart() {}

  /**
   * Draws the histogram.
   *
   * @param name short name of the picture
   * @param quantity what is counted
   * @param values SI, at least two; not changed
   * @param marked limits and bounds
   * @return the picture
   */
  public static Picture draw(String name, AxisQuantity quantity, double[] values, Marked marked) {
    if (values.length < 2) {
      throw new IllegalArgumentException("a histogram needs at least two values");
    }
    double[] v = new double[values.length];
    double mean = 0;
    for (int i = 0; i < v.length; i++) {
      v[i] = quantity.of(values[i]);
      mean += v[i] / v.length;
    }
    Arrays.sort(v);
    Bins bins = Bins.of(v);
    AxisRange.Gatherer x =
        new AxisRange.Gatherer().add(bins.from).add(bins.from + bins.width * bins.counts.length);
    double[] lines = {quantity.of(marked.lowerBound()), quantity.of(marked.upperBound())};
    for (double line : lines) {
      if (x.near(line, 2)) {
        x.add(line);
      }
    }
    int most = Arrays.stream(bins.counts).max().orElse(1);
    PlotPanel panel =
        new PlotPanel(
            WIDTH,
            HEIGHT,
            quantity.label(),
            x.range(0.04),
            "count of " + v.length,
            new AxisRange(0, 1.06 * most));
    panel.countsUp();
    bars(panel, bins, most);
    panel.vertical(mean, MEAN);
    panel.vertical(lines[0], BOUND).vertical(lines[1], BOUND);
    Scene drawn = panel.scene();
    double spread = (v[v.length - 1] - v[0]) * quantity.unitInSi() / 10;
    String told = quantity.textTo(mean * quantity.unitInSi(), spread);
    Scene key = Key.of(key(marked, told), WIDTH - 12, 2);
    Scene.Builder scene = new Scene.Builder().place(drawn, 0, 0);
    scene.place(key, 6, drawn.height() + 6);
    return Picture.of(
        PictureKind.HISTOGRAM,
        name,
        "Spread of " + quantity.name(),
        "How often each value came.",
        altText(quantity, v, mean),
        scene.build(WIDTH, drawn.height() + 6 + key.height()));
  }

  private static void bars(PlotPanel panel, Bins bins, int most) {
    int n = bins.counts.length;
    double end = bins.from + n * bins.width;
    Point low = panel.at(bins.from, 0);
    Point high = panel.at(end, most);
    List<Integer> counts = Arrays.stream(bins.counts).boxed().toList();
    PngBytes drawn = HistogramBars.png(counts, most, high.x() - low.x(), low.y() - high.y());
    panel.bitmap(bins.from, 0, end, most, drawn);
  }

  private static List<Key.Entry> key(Marked marked, String mean) {
    List<Key.Entry> key = new ArrayList<>();
    key.add(Key.Entry.line(MEAN, "mean, " + mean));
    if (Double.isFinite(marked.lowerBound()) || Double.isFinite(marked.upperBound())) {
      key.add(Key.Entry.line(BOUND, marked.boundName()));
    }
    return key;
  }

  private static String altText(AxisQuantity quantity, double[] sorted, double mean) {
    return "Histogram of "
        + sorted.length
        + " values of the "
        + quantity.name()
        + ": least "
        + NumberText.significant(sorted[0], 3)
        + ", mean "
        + NumberText.significant(mean, 3)
        + ", greatest "
        + NumberText.significant(sorted[sorted.length - 1], 3)
        + (quantity.unit().isEmpty() ? "" : " " + quantity.unit())
        + ".";
  }

  /** Bars of equal width: twice the interquartile range over the cube root of the count. */
  private static final class Bins {
    final double from;
    final double width;
    final int[] counts;

    private Bins(double from, double width, int[] counts) {
      this.from = from;
      this.width = width;
      this.counts = counts;
    }

    /** Freedman and Diaconis' rule (recalled from memory), at most {@link #MOST_BARS} bars. */
    static Bins of(double[] sorted) {
      int n = sorted.length;
      double least = sorted[0];
      double span = sorted[n - 1] - least;
      if (span == 0) {
        double width = least == 0 ? 1 : 0.1 * Math.abs(least);
        return new Bins(least - width / 2, width, new int[] {n});
      }
      double quartiles = sorted[3 * (n - 1) / 4] - sorted[(n - 1) / 4];
      double wanted = 2 * quartiles / Elementary.cbrt(n);
      int bars = wanted > 0 ? (int) Math.ceil(span / wanted) : MOST_BARS;
      bars = Math.max(3, Math.min(MOST_BARS, bars));
      int[] counts = new int[bars];
      for (double v : sorted) {
        counts[Math.min(bars - 1, (int) ((v - least) / span * bars))]++;
      }
      return new Bins(least, span / bars, counts);
    }
  }
}
