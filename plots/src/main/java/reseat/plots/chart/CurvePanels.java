package reseat.plots.chart;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import reseat.plots.NumberText;
import reseat.plots.Picture;
import reseat.plots.PictureKind;
import reseat.plots.scene.Dash;
import reseat.plots.scene.Fill;
import reseat.plots.scene.Key;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Scene;
import reseat.plots.scene.Tone;

/** Several quantities over one input, each in a panel of its own, with their limits. */
final class CurvePanels {

  static final double WIDTH = 600;
  private static final double PANEL_HEIGHT = 190;
  private static final LineStyle CURVE = LineStyle.solid(Tone.BLUE, 1.8);
  private static final LineStyle NOMINAL = new LineStyle(Tone.INK, 1.2, Dash.DOTTED);
  private static final Fill BAND = new Fill(Tone.GREEN, 0.13);
  private static final double WORTH_SHOWING = 2.5;

  /**
   * One panel.
   *
   * @param quantity what is shown
   * @param values SI, one per place on the x axis; infinite where there is none
   * @param limits SI, one per place on the x axis; infinite where there is none
   * @param limitIsUpper whether values must stay below it
   */
  record Panel(
      AxisQuantity quantity, List<Double> values, List<Double> limits, boolean limitIsUpper) {
    Panel {
      values = List.copyOf(values);
      limits = List.copyOf(limits);
    }

    /** A panel with one limit over its whole width. */
    Panel(AxisQuantity quantity, List<Double> values, double limit, boolean limitIsUpper) {
      this(quantity, values, Collections.nCopies(values.size(), limit), limitIsUpper);
    }

    /** The limit, if it is the same wherever there is one; not a finite number if not. */
    double limit() {
      double least = limits.stream().mapToDouble(v -> v).min().orElse(Double.POSITIVE_INFINITY);
      return most() - least <= 1e-9 * Math.abs(most()) ? least : Double.POSITIVE_INFINITY;
    }

    /** The largest limit; infinite if there is none anywhere. */
    double most() {
      return limits.stream()
          .mapToDouble(v -> v)
          .filter(Double::isFinite)
          .max()
          .orElse(Double.POSITIVE_INFINITY);
    }

    boolean empty() {
      return values.stream().noneMatch(Double::isFinite);
    }
  }

  /**
   * The x axis.
   *
   * @param quantity what varies
   * @param values SI, ascending
   * @param bandFrom start of the allowed band, SI; infinite for no band
   * @param bandTo end of the allowed band, SI; infinite if open
   * @param chosen value of the design, SI; infinite if not to be marked
   */
  record Input(
      AxisQuantity quantity, List<Double> values, double bandFrom, double bandTo, double chosen) {
    Input {
      values = List.copyOf(values);
      if (values.size() < 2) {
        throw new IllegalArgumentException(
            "a curve over the " + quantity.name() + " needs at least two values");
      }
    }

    boolean hasBand() {
      return Double.isFinite(bandFrom);
    }
  }

  private CurvePanels() {}

  static Picture draw(
      PictureKind kind,
      String name,
      String title,
      String caption,
      Input input,
      List<Panel> wanted,
      boolean marks) {
    List<Panel> panels = wanted.stream().filter(p -> !p.empty()).toList();
    double[] xs = scaled(input.quantity(), input.values());
    AxisRange x = new AxisRange.Gatherer().add(xs).range(0.03);
    double half = WIDTH / 2 - 6;
    Scene.Builder scene = new Scene.Builder();
    double bottom = 0;
    for (int i = 0; i < panels.size(); i++) {
      PlotPanel panel = panel(input, panels.get(i), x, xs, half, marks);
      double top = (i - i % 2) / 2.0 * (PANEL_HEIGHT + 10);
      scene.place(panel.scene(), i % 2 * (half + 12), top);
      bottom = top + PANEL_HEIGHT + 10;
    }
    Scene key = Key.of(key(input, panels), WIDTH - 12, 2);
    scene.place(key, 6, bottom);
    return Picture.of(
        kind,
        name,
        title,
        caption,
        altText(input, panels),
        scene.build(WIDTH, bottom + key.height()));
  }

  private static PlotPanel panel(
      Input input, Panel p, AxisRange x, double[] xs, double width, boolean marks) {
    double[] ys = scaled(p.quantity(), p.values());
    AxisRange.Gatherer range = new AxisRange.Gatherer().add(ys).add(0);
    double limit = p.quantity().of(p.limit());
    if (range.near(p.quantity().of(p.most()), WORTH_SHOWING)) {
      range.add(p.quantity().of(p.most()));
    }
    PlotPanel panel =
        new PlotPanel(
            width,
            PANEL_HEIGHT,
            input.quantity().label(),
            x,
            p.quantity().label(),
            range.range(0.05));
    if (input.hasBand()) {
      panel.xBand(input.quantity().of(input.bandFrom()), input.quantity().of(input.bandTo()), BAND);
    }
    panel.vertical(input.quantity().of(input.chosen()), NOMINAL);
    if (Double.isFinite(limit)) {
      panel.horizontal(limit, LineStyle.LIMIT);
    } else if (Double.isFinite(p.most())) {
      panel.line(xs, scaled(p.quantity(), p.limits()), LineStyle.LIMIT);
    }
    return marks ? panel.line(xs, ys, CURVE, Marker.CIRCLE) : panel.line(xs, ys, CURVE);
  }

  /** Values in the axis's unit; breaks where there is none. */
  private static double[] scaled(AxisQuantity quantity, List<Double> values) {
    return values.stream()
        .mapToDouble(v -> Double.isFinite(v) ? quantity.of(v) : Double.NaN)
        .toArray();
  }

  private static List<Key.Entry> key(Input input, List<Panel> panels) {
    List<Key.Entry> entries = new ArrayList<>();
    if (input.hasBand()) {
      String from = input.quantity().text(input.bandFrom(), 3);
      entries.add(
          Key.Entry.area(
              LineStyle.NONE,
              BAND,
              Double.isFinite(input.bandTo())
                  ? "allowed: " + from + " to " + input.quantity().text(input.bandTo(), 3)
                  : "allowed: " + from + " and more"));
    }
    if (Double.isFinite(input.chosen())) {
      entries.add(
          Key.Entry.line(NOMINAL, "this design: " + input.quantity().text(input.chosen(), 4)));
    }
    String limits =
        panels.stream()
            .filter(p -> Double.isFinite(p.most()))
            .map(
                p ->
                    p.quantity().name()
                        + (p.limitIsUpper() ? " at most " : " at least ")
                        + (Double.isFinite(p.limit())
                            ? p.quantity().text(p.limit(), 3)
                            : "the line"))
            .collect(Collectors.joining(", "));
    if (!limits.isEmpty()) {
      entries.add(Key.Entry.line(LineStyle.LIMIT, "limit, where it is near: " + limits));
    }
    return entries;
  }

  private static String altText(Input input, List<Panel> panels) {
    int last = input.values().size() - 1;
    return "Curves over the "
        + input.quantity().name()
        + " from "
        + input.quantity().text(input.values().get(0), 3)
        + " to "
        + input.quantity().text(input.values().get(last), 3)
        + ". "
        + panels.stream()
            .map(p -> p.quantity().name() + ": " + ends(p))
            .collect(Collectors.joining("; "))
        + ".";
  }

  private static String ends(Panel p) {
    List<Double> known = p.values().stream().filter(Double::isFinite).toList();
    return NumberText.significant(p.quantity().of(known.get(0)), 3)
        + " to "
        + p.quantity().text(known.get(known.size() - 1), 3);
  }
}
