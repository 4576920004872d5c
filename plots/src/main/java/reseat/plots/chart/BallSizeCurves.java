package reseat.plots.chart;

import java.util.List;
import java.util.function.ToDoubleFunction;
import reseat.plots.Picture;

/** The same coupling with balls of every size in stock. */
public final class BallSizeCurves {

  /**
   * The coupling with one size of ball.
   *
   * @param diameter ball diameter, m
   * @param peakPressure greatest contact pressure over all contacts, Pa
   * @param stiffness at the tool point in its softest direction, N/m
   * @param sink how far the tool point sinks under preload, m
   * @param scatter of the tool point over mounts, m; infinite where it was not computed
   */
  public record Row(
      double diameter, double peakPressure, double stiffness, double sink, double scatter) {}

  private BallSizeCurves() {}

  /**
   * Draws the curves.
   *
   * @param rows at least two, by ascending diameter
   * @param chosen diameter of the design, m
   * @param limits limits, as for the curves over preload
   * @return the picture {@code ball-size-curves}
   */
  public static Picture draw(List<Row> rows, double chosen, PreloadCurves.Limits limits) {
    double none = Double.POSITIVE_INFINITY;
    CurvePanels.Input input =
        new CurvePanels.Input(
            AxisQuantity.BALL_DIAMETER, column(rows, Row::diameter), none, none, chosen);
    List<CurvePanels.Panel> panels =
        List.of(
            new CurvePanels.Panel(
                AxisQuantity.PRESSURE,
                column(rows, Row::peakPressure),
                limits.peakPressure(),
                true),
            new CurvePanels.Panel(
                AxisQuantity.STIFFNESS, column(rows, Row::stiffness), limits.stiffness(), false),
            new CurvePanels.Panel(AxisQuantity.SINK, column(rows, Row::sink), none, true),
            new CurvePanels.Panel(
                AxisQuantity.SCATTER, column(rows, Row::scatter), limits.scatter(), true));
    return CurvePanels.draw(
        "ball-size-curves",
        "Pressure, stiffness, sink and scatter against ball size",
        "Larger balls press less and are stiffer; each point is a size in stock.",
        input,
        panels,
        true);
  }

  private static List<Double> column(List<Row> rows, ToDoubleFunction<Row> value) {
    return rows.stream().mapToDouble(value).boxed().toList();
  }
}
