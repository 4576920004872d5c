package reseat.plots.chart;

import java.util.ArrayList;
import java.util.List;
import reseat.plots.Picture;
import reseat.plots.PictureKind;
import reseat.plots.scene.Dash;
import reseat.plots.scene.Key;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Scene;
import reseat.plots.scene.Tone;
import reseat.units.PrintedNumber;

/** Checks of a coupling over its life against limits drawn from its own scatter. */
public final class ControlChart {

  private static final double WIDTH = 600;
  private static final double HEIGHT = 300;
  private static final LineStyle CENTRE = new LineStyle(Tone.GREEN, 1.3, Dash.CHAIN);

  /**
   * What the chart is drawn against.
   *
   * @param centre centre line, SI
   * @param lower lower control limit, SI
   * @param upper upper control limit, SI
   */
  public record Control(double centre, double lower, double upper) {

    /** Refuses limits out of order. */
    public Control {
      if (!(lower <= centre && centre <= upper) || !Double.isFinite(upper - lower)) {
        throw new IllegalArgumentException(
            "control limits must lie about the centre line, found "
                + PrintedNumber.shortest(lower)
                + ", "
                + PrintedNumber.shortest(centre)
                + ", "
                + PrintedNumber.shortest(upper));
      }
    }
  }

  /**
   * Where the readings come from and what is to be marked in them.
   *
   * @param baseline number of readings, from the first, that set the limits; 0 if none of those
   *     drawn did
   * @param runs places, from 0, of the readings that complete a run that chance does not make
   */
  public record Life(int baseline, List<Integer> runs) {

    /** Copies the places. */
    public Life {
      runs = List.copyOf(runs);
    }
  }

  private static final LineStyle LATER = new LineStyle(Tone.INK, 1.2, Dash.DASHED);

  private ControlChart() {}

  /**
   * Draws the chart.
   *
   * @param name name of the picture
   * @param quantity what is checked
   * @param values readings, SI, in order, at least one
   * @param control centre line and limits
   * @param life which readings set the limits, and which complete a run
   * @return the picture
   */
  public static Picture draw(
      String name, AxisQuantity quantity, List<Double> values, Control control, Life life) {
    int n = values.size();
    double[] xs = new double[n];
    double[] ys = new double[n];
    List<Integer> outside = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      xs[i] = i + 1;
      ys[i] = quantity.of(values.get(i));
      if (values.get(i) < control.lower() || values.get(i) > control.upper()) {
        outside.add(i);
      }
    }
    double lower = quantity.of(control.lower());
    double upper = quantity.of(control.upper());
    AxisRange y = new AxisRange.Gatherer().add(ys).add(lower).add(upper).range(0.08);
    boolean later = life.baseline() > 0 && life.baseline() < n;
    PlotPanel panel =
        new PlotPanel(
            WIDTH,
            HEIGHT,
            later
                ? "settled mounts, then later checks"
                : life.baseline() > 0 ? "number of the settled mount" : "number of the check",
            new AxisRange.Gatherer().add(0.5).add(n + 0.5).range(0.01),
            quantity.label(),
            y);
    panel.countsAlongX();
    panel.horizontal(quantity.of(control.centre()), CENTRE);
    panel.horizontal(lower, LineStyle.LIMIT).horizontal(upper, LineStyle.LIMIT);
    if (later) {
      panel.vertical(life.baseline() + 0.5, LATER);
    }
    panel.markerSize(n > 100 ? 3 : 5);
    double[][] shown = Thinning.ofSeries(xs, ys);
    panel.line(shown[0], shown[1], LineStyle.solid(Tone.BLUE, 1), Marker.CIRCLE);
    List<Integer> runs = life.runs().stream().filter(i -> !outside.contains(i)).toList();
    panel.points(pick(xs, runs), pick(ys, runs), Tone.ORANGE, Marker.DIAMOND);
    if (!outside.isEmpty()) {
      panel.points(pick(xs, outside), pick(ys, outside), Tone.VERMILLION, Marker.SQUARE);
    }
    Scene drawn = panel.scene();
    Scene key = Key.of(key(quantity, control, outside, runs, life, n), WIDTH - 12, 2);
    Scene.Builder scene = new Scene.Builder().place(drawn, 0, 0);
    scene.place(key, 6, drawn.height() + 6);
    String verdict = verdict(n, outside, runs, life.baseline() > 0 ? "reading" : "check");
    return Picture.of(
        PictureKind.CONTROL_CHART,
        name,
        (life.baseline() == n ? "Mounts of " : "Checks of ") + quantity.name() + " over time",
        verdict,
        "Control chart of " + quantity.name() + ". " + verdict,
        scene.build(WIDTH, drawn.height() + 6 + key.height()));
  }

  private static String verdict(int n, List<Integer> outside, List<Integer> runs, String word) {
    String told =
        outside.isEmpty()
            ? "All " + n + " " + word + "s lie within the control limits"
            : outside.size()
                + " of "
                + n
                + " "
                + word
                + "s "
                + (outside.size() == 1 ? "lies" : "lie")
                + " beyond the control limits, first "
                + word
                + " "
                + (outside.get(0) + 1);
    return runs.isEmpty()
        ? told + "."
        : told + "; a run ends at " + word + " " + (runs.get(0) + 1) + ".";
  }

  private static double[] pick(double[] from, List<Integer> places) {
    return places.stream().mapToDouble(i -> from[i]).toArray();
  }

  private static List<Key.Entry> key(
      AxisQuantity quantity,
      Control control,
      List<Integer> outside,
      List<Integer> runs,
      Life life,
      int n) {
    String word = life.baseline() > 0 ? "reading" : "check";
    double scale = (control.upper() - control.lower()) / 6;
    List<Key.Entry> key = new ArrayList<>();
    key.add(Marker.CIRCLE.entry(6, Tone.BLUE, word + " within limits"));
    if (!outside.isEmpty()) {
      key.add(Marker.SQUARE.entry(6, Tone.VERMILLION, word + " beyond a limit"));
    }
    if (!runs.isEmpty()) {
      key.add(Marker.DIAMOND.entry(7, Tone.ORANGE, word + " that completes a run"));
    }
    if (life.baseline() > 0 && life.baseline() < n) {
      key.add(Key.Entry.line(LATER, "later checks to the right"));
    }
    key.add(Key.Entry.line(CENTRE, "centre, " + quantity.textTo(control.centre(), scale)));
    key.add(
        Key.Entry.line(
            LineStyle.LIMIT,
            "control limits, "
                + quantity.textTo(control.lower(), scale)
                + " and "
                + quantity.textTo(control.upper(), scale)));
    return key;
  }
}
