package reseat.plots.chart;

import java.util.ArrayList;
import java.util.List;
import reseat.plots.NumberText;
import reseat.plots.Picture;
import reseat.plots.PictureKind;
import reseat.plots.scene.Dash;
import reseat.plots.scene.Fill;
import reseat.plots.scene.Key;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Scene;
import reseat.plots.scene.Tone;

/** One output over one input. */
public final class ResponseCurve {

  private static final double WIDTH = 600;
  private static final double HEIGHT = 320;
  private static final List<Tone> TONES =
      List.of(Tone.BLUE, Tone.GREEN, Tone.PURPLE, Tone.ORANGE, Tone.INK);
  private static final List<Dash> DASHES =
      List.of(Dash.SOLID, Dash.DASHED, Dash.CHAIN, Dash.DOTTED, Dash.DOUBLE_CHAIN);
  private static final List<Marker> MARKERS = List.of(Marker.values());
  private static final LineStyle CHOSEN = new LineStyle(Tone.INK, 1.2, Dash.DOTTED);

  /**
   * One curve.
   *
   * @param name what tells it from the others; may be empty if there is only one
   * @param outputs SI, one per input; infinite where there is none
   */
  public record Curve(String name, List<Double> outputs) {

    /** Copies the values. */
    public Curve {
      outputs = List.copyOf(outputs);
    }
  }

  /**
   * What to mark.
   *
   * @param lower least output allowed, SI; infinite for none
   * @param upper greatest output allowed, SI; infinite for none
   * @param chosen input of the design, SI; infinite for none
   */
  public record Marked(double lower, double upper, double chosen) {}

  private ResponseCurve() {}

  /**
   * Draws the curves.
   *
   * @param input what varies
   * @param inputs SI, ascending, at least two
   * @param output what answers
   * @param curves one to five
   * @param marked limits and the design's place
   * @param discrete whether the inputs are separate things (stock sizes) and get a mark each
   * @return the picture {@code response}
   */
  public static Picture draw(
      AxisQuantity input,
      List<Double> inputs,
      AxisQuantity output,
      List<Curve> curves,
      Marked marked,
      boolean discrete) {
    if (curves.isEmpty() || curves.size() > TONES.size()) {
      throw new IllegalArgumentException(
          "a response chart shows one to five curves, found " + curves.size());
    }
    double[] xs = inputs.stream().mapToDouble(input::of).toArray();
    AxisRange.Gatherer range = new AxisRange.Gatherer();
    List<double[]> all = new ArrayList<>();
    for (Curve c : curves) {
      double[] ys =
          c.outputs().stream()
              .mapToDouble(v -> Double.isFinite(v) ? output.of(v) : Double.NaN)
              .toArray();
      all.add(ys);
      range.add(ys);
    }
    for (double limit : new double[] {output.of(marked.lower()), output.of(marked.upper())}) {
      if (range.near(limit, 2)) {
        range.add(limit);
      }
    }
    PlotPanel panel =
        new PlotPanel(
            WIDTH,
            HEIGHT,
            input.label(),
            new AxisRange.Gatherer().add(xs).range(0.03),
            output.label(),
            range.withZero());
    panel.vertical(input.of(marked.chosen()), CHOSEN);
    panel.horizontal(output.of(marked.lower()), LineStyle.LIMIT);
    panel.horizontal(output.of(marked.upper()), LineStyle.LIMIT);
    for (int i = 0; i < curves.size(); i++) {
      LineStyle line = new LineStyle(TONES.get(i), 1.8, DASHES.get(i));
      if (discrete) {
        panel.line(xs, all.get(i), line, MARKERS.get(i));
      } else {
        panel.line(xs, all.get(i), line);
      }
    }
    Scene drawn = panel.scene();
    Scene key = Key.of(key(input, output, curves, marked), WIDTH - 12, 2);
    Scene.Builder scene = new Scene.Builder().place(drawn, 0, 0);
    scene.place(key, 6, drawn.height() + 8);
    return Picture.of(
        PictureKind.RESPONSE,
        "response",
        output.heading() + " over the " + input.name(),
        "How the " + output.name() + " answers to the " + input.name() + ".",
        altText(input, inputs, output, curves),
        scene.build(WIDTH, drawn.height() + 8 + key.height()));
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
  }

  private static List<Key.Entry> key(
      AxisQuantity input, AxisQuantity output, List<Curve> curves, Marked marked) {
    List<Key.Entry> entries = new ArrayList<>();
    for (int i = 0; i < curves.size() && curves.size() > 1; i++) {
      entries.add(
          Key.Entry.line(new LineStyle(TONES.get(i), 1.8, DASHES.get(i)), curves.get(i).name()));
    }
    if (Double.isFinite(marked.chosen())) {
      entries.add(Key.Entry.line(CHOSEN, "this design: " + input.text(marked.chosen(), 4)));
    }
    if (Double.isFinite(marked.lower())) {
      entries.add(Key.Entry.line(LineStyle.LIMIT, "at least " + output.text(marked.lower(), 3)));
    }
    if (Double.isFinite(marked.upper())) {
      entries.add(Key.Entry.line(LineStyle.LIMIT, "at most " + output.text(marked.upper(), 3)));
    }
    if (entries.isEmpty()) {
      entries.add(Key.Entry.area(LineStyle.NONE, Fill.full(Tone.BLUE), output.name()));
    }
    return entries;
  }

  private static String altText(
      AxisQuantity input, List<Double> inputs, AxisQuantity output, List<Curve> curves) {
    StringBuilder words = new StringBuilder("Curve of the " + output.name() + " over the ");
    words.append(input.name()).append(" from ").append(input.text(inputs.get(0), 3));
    words.append(" to ").append(input.text(inputs.get(inputs.size() - 1), 3)).append(".");
    for (Curve c : curves) {
      double least = Double.POSITIVE_INFINITY;
      double most = Double.NEGATIVE_INFINITY;
      for (double v : c.outputs()) {
        if (Double.isFinite(v)) {
          least = Math.min(least, v);
          most = Math.max(most, v);
        }
      }
      words.append(c.name().isBlank() ? " It" : " " + capital(c.name()));
      words.append(
          least <= most
              ? " runs between "
                  + NumberText.significant(output.of(least), 3)
                  + " and "
                  + output.text(most, 3)
                  + "."
              : " has no values.");
    }
    return words.toString();
  }
}
