package reseat.plots.chart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import reseat.plots.NumberText;
import reseat.plots.Picture;
import reseat.plots.PictureKind;
import reseat.plots.scene.Box;
import reseat.plots.scene.Fill;
import reseat.plots.scene.Key;
import reseat.plots.scene.LabelPlacer;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Point;
import reseat.plots.scene.Scene;
import reseat.plots.scene.TextStyle;
import reseat.plots.scene.Tone;

/** One output over two inputs, as lines of equal value. */
public final class ContourMap {

  private static final double WIDTH = 600;
  private static final double HEIGHT = 440;
  private static final int LEVELS = 8;
  private static final Fill ALLOWED = new Fill(Tone.GREEN, 0.16);

  /**
   * What to mark.
   *
   * @param limit limit on the output, SI; infinite for none
   * @param limitIsUpper whether outputs must stay below it
   * @param chosenX first input of the design, SI; infinite for none
   * @param chosenY second input of the design, SI; infinite for none
   */
  public record Marked(double limit, boolean limitIsUpper, double chosenX, double chosenY) {}

  private ContourMap() {}

  /**
   * Draws the map with a limit that goes with the inputs, and crosses where a check fails.
   *
   * @param x first input
   * @param xs its values, SI, ascending, at least two
   * @param y second input
   * @param ys its values, SI, ascending, at least two
   * @param output what answers
   * @param values SI, {@code values[i][j]} at the i-th first and the j-th second input; not a
   *     finite number where there is no result
   * @param limits limits on the values, SI, shaped as they; not finite where there is none
   * @param failing whether any check fails, shaped as the values
   * @param marked the limit if it is the same everywhere, else infinite; the design's place
   * @return the picture {@code contour-map}
   */
  public static Picture draw(
      AxisQuantity x,
      double[] xs,
      AxisQuantity y,
      double[] ys,
      AxisQuantity output,
      double[][] values,
      double[][] limits,
      boolean[][] failing,
      Marked marked) {
    ContourLines grid = ContourLines.of(scaled(x, xs), scaled(y, ys), scaled(output, values));
    ContourLines excess =
        ContourLines.of(scaled(x, xs), scaled(y, ys), scaled(output, excess(values, limits)));
    PlotPanel panel =
        new PlotPanel(
            WIDTH,
            HEIGHT,
            x.label(),
            new AxisRange.Gatherer().add(scaled(x, xs)).range(0.02),
            y.label() + "; lines: " + output.label(),
            new AxisRange.Gatherer().add(scaled(y, ys)).range(0.02));
    Scene axes = panel.scene();
    double limit = output.of(marked.limit());
    List<Mark> areas = new ArrayList<>();
    List<Mark> lines = new ArrayList<>();
    List<List<Point>> allowed = placed(panel, excess.area(0, marked.limitIsUpper()));
    if (!allowed.isEmpty()) {
      areas.add(new Mark.Path(allowed, true, LineStyle.NONE, ALLOWED));
    }
    List<Mark> crosses = FailingPoints.crosses(panel, scaled(x, xs), scaled(y, ys), failing);
    Point low = panel.at(panel.x().from(), panel.y().from());
    Point high = panel.at(panel.x().to(), panel.y().to());
    LabelPlacer placer = new LabelPlacer(new Box(low.x() + 2, high.y(), high.x(), low.y() - 2));
    List<Mark> words = new ArrayList<>();
    for (double level : grid.levels(LEVELS)) {
      List<List<Point>> found = placed(panel, grid.lines(level));
      if (!found.isEmpty()) {
        boolean isLimit = Math.abs(level - limit) < 1e-9 * Math.abs(limit);
        if (!isLimit) {
          lines.add(new Mark.Path(found, false, LineStyle.solid(Tone.BLUE, 1.1), Fill.NONE));
        }
        label(placer, found, NumberText.tick(level), words);
      }
    }
    List<List<Point>> edge = placed(panel, excess.lines(0));
    if (!edge.isEmpty()) {
      lines.add(new Mark.Path(edge, false, LineStyle.LIMIT, Fill.NONE));
    }
    Scene.Builder scene = new Scene.Builder().addAll(areas).place(axes, 0, 0).addAll(lines);
    scene.addAll(crosses);
    chosen(scene, panel, x.of(marked.chosenX()), y.of(marked.chosenY()));
    scene.addAll(words);
    Scene key = Key.of(key(x, y, output, marked, limits, crosses), WIDTH - 12, 2);
    scene.place(key, 6, axes.height() + 6);
    return Picture.of(
        PictureKind.SWEEP_MAP,
        "contour-map",
        output.heading() + " over " + x.name() + " and " + y.name(),
        caption(output, allowed.isEmpty() && edge.isEmpty()),
        altText(x, y, output, values),
        scene.build(WIDTH, axes.height() + 6 + key.height()));
  }

  private static double[][] excess(double[][] values, double[][] limits) {
    double[][] excess = new double[values.length][];
    for (int i = 0; i < values.length; i++) {
      excess[i] = new double[values[i].length];
      for (int j = 0; j < values[i].length; j++) {
        boolean both = Double.isFinite(values[i][j]) && Double.isFinite(limits[i][j]);
        excess[i][j] = both ? values[i][j] - limits[i][j] : Double.POSITIVE_INFINITY;
      }
    }
    return excess;
  }

  private static double[] scaled(AxisQuantity quantity, double[] si) {
    double[] v = new double[si.length];
    for (int i = 0; i < v.length; i++) {
      v[i] = quantity.of(si[i]);
    }
    return v;
  }

  private static double[][] scaled(AxisQuantity quantity, double[][] si) {
    double[][] v = new double[si.length][];
    for (int i = 0; i < v.length; i++) {
      v[i] = scaled(quantity, si[i]);
    }
    return v;
  }

  private static List<List<Point>> placed(PlotPanel panel, List<List<Point>> parts) {
    return parts.stream()
        .map(part -> part.stream().map(p -> panel.at(p.x(), p.y())).toList())
        .toList();
  }

  /** Writes the level on its longest line, near the line's middle. */
  private static void label(
      LabelPlacer placer, List<List<Point>> parts, String level, List<Mark> words) {
    List<Point> longest = parts.get(0);
    for (List<Point> part : parts) {
      longest = part.size() > longest.size() ? part : longest;
    }
    int n = longest.size();
    for (int k : new int[] {n / 2, n / 3, 2 * n / 3, n / 5, 4 * n / 5}) {
      var placed = placer.place(List.of(level), TextStyle.SMALL, longest.get(k), 0, Math.PI / 2);
      if (placed.isPresent()) {
        words.addAll(placed.get().marks());
        return;
      }
    }
  }

  private static void chosen(Scene.Builder scene, PlotPanel panel, double x, double y) {
    if (Double.isFinite(x) && Double.isFinite(y)) {
      scene.add(
          Mark.Oval.circle(
              panel.at(x, y), 4.5, LineStyle.solid(Tone.INK, 1.4), Fill.full(Tone.PAPER)));
    }
  }

  private static List<Key.Entry> key(
      AxisQuantity x,
      AxisQuantity y,
      AxisQuantity output,
      Marked marked,
      double[][] limits,
      List<Mark> crosses) {
    List<Key.Entry> key = new ArrayList<>();
    key.add(Key.Entry.line(LineStyle.solid(Tone.BLUE, 1.1), output.label() + " as written"));
    boolean limited =
        Arrays.stream(limits).flatMapToDouble(Arrays::stream).anyMatch(Double::isFinite);
    if (limited) {
      key.add(
          Key.Entry.area(
              LineStyle.NONE,
              ALLOWED,
              Double.isFinite(marked.limit())
                  ? "allowed: "
                      + (marked.limitIsUpper() ? "at most " : "at least ")
                      + output.text(marked.limit(), 3)
                  : "allowed by the limit, which goes with the inputs"));
      key.add(Key.Entry.line(LineStyle.LIMIT, "limit"));
    }
    if (!crosses.isEmpty()) {
      key.add(
          new Key.Entry(
              List.of(FailingPoints.cross(new Point(0, 0))),
              "a check fails here, or it cannot stand"));
    }
    if (Double.isFinite(marked.chosenX()) && Double.isFinite(marked.chosenY())) {
      key.add(
          new Key.Entry(
              List.of(
                  Mark.Oval.circle(
                      new Point(0, 0), 4.5, LineStyle.solid(Tone.INK, 1.4), Fill.full(Tone.PAPER))),
              "this design: " + x.text(marked.chosenX(), 4) + ", " + y.text(marked.chosenY(), 4)));
    }
    return key;
  }

  private static String caption(AxisQuantity output, boolean free) {
    return free
        ? "The " + output.name() + " is equal along a line."
        : "The "
            + output.name()
            + " is equal along a line; inside the shaded part it keeps its limit.";
  }

  private static String altText(
      AxisQuantity x, AxisQuantity y, AxisQuantity output, double[][] values) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (double[] column : values) {
      for (double v : column) {
        if (Double.isFinite(v)) {
          least = Math.min(least, v);
          most = Math.max(most, v);
        }
      }
    }
    return "Contour map of the "
        + output.name()
        + " over "
        + x.name()
        + " and "
        + y.name()
        + (least <= most
            ? ", between "
                + NumberText.significant(output.of(least), 3)
                + " and "
                + output.text(most, 3)
                + "."
            : ", without any result.");
  }
}
