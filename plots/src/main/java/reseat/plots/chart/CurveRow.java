package reseat.plots.chart;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The coupling at one place of the x axis of a chart: at one preload, or with one size of ball.
 *
 * @param over the place: total preload, N, or ball diameter, m
 * @param peakPressure greatest contact pressure over all contacts, Pa
 * @param stiffness at the tool point in its softest direction, N/m
 * @param sink how far the tool point sinks under preload, m
 * @param scatter of the tool point over mounts, m; infinite where it was not computed
 */
public record CurveRow(
    double over, double peakPressure, double stiffness, double sink, double scatter) {

  /**
   * What must not be passed.
   *
   * @param peakPressure greatest pressure allowed, Pa; infinite for no limit
   * @param stiffness least stiffness wanted, N/m; infinite for no limit
   * @param scatter greatest scatter allowed, m; infinite for no limit
   */
  public record Limits(double peakPressure, double stiffness, double scatter) {}

  /** The places of rows on the x axis. */
  static List<Double> places(List<CurveRow> rows) {
    return column(rows, CurveRow::over);
  }

  /** Four panels: pressure, stiffness, sink and scatter. */
  static List<CurvePanels.Panel> panels(List<CurveRow> rows, Limits limits, PictureUnits units) {
    return List.of(
        new CurvePanels.Panel(
            units.of(AxisQuantity.PRESSURE),
            column(rows, CurveRow::peakPressure),
            limits.peakPressure(),
            true),
        new CurvePanels.Panel(
            units.of(AxisQuantity.STIFFNESS),
            column(rows, CurveRow::stiffness),
            limits.stiffness(),
            false),
        new CurvePanels.Panel(
            units.of(AxisQuantity.SINK),
            column(rows, CurveRow::sink),
            Double.POSITIVE_INFINITY,
            true),
        new CurvePanels.Panel(
            units.of(AxisQuantity.SCATTER),
            column(rows, CurveRow::scatter),
            limits.scatter(),
            true));
  }

  private static List<Double> column(List<CurveRow> rows, ToDoubleFunction<CurveRow> value) {
    return rows.stream().mapToDouble(value).boxed().toList();
  }
}
