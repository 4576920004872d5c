package reseat.plots.chart;

import java.util.List;
import java.util.function.ToDoubleFunction;
import reseat.plots.Picture;

/** What more preload buys and what it costs: pressure, stiffness, sink and scatter. */
public final class PreloadCurves {

  /**
   * The coupling at one preload.
   *
   * @param preload total preload, N
   * @param peakPressure greatest contact pressure over all contacts, Pa
   * @param stiffness at the tool point in its softest direction, N/m
   * @param sink how far the tool point sinks under preload, m
   * @param scatter of the tool point over mounts, m; infinite where it was not computed
   */
  public record Row(
      double preload, double peakPressure, double stiffness, double sink, double scatter) {}

  /**
   * The preload that is allowed.
   *
   * @param from least preload, N; infinite if none is allowed
   * @param to greatest preload, N; infinite for no upper end
   * @param nominal preload of the design, N
   */
  public record Band(double from, double to, double nominal) {}

  /**
   * What must not be passed.
   *
   * @param peakPressure greatest pressure allowed, Pa; infinite for no limit
   * @param stiffness least stiffness wanted, N/m; infinite for no limit
   * @param scatter greatest scatter allowed, m; infinite for no limit
   */
  public record Limits(double peakPressure, double stiffness, double scatter) {}

  private PreloadCurves() {}

  /**
   * Draws the curves.
   *
   * @param rows at least two, by ascending preload
   * @param band what is allowed
   * @param limits limits
   * @return the picture {@code preload-curves}
   */
  public static Picture draw(List<Row> rows, Band band, Limits limits) {
    CurvePanels.Input input =
        new CurvePanels.Input(
            AxisQuantity.PRELOAD,
            column(rows, Row::preload),
            band.from(),
            band.to(),
            band.nominal());
    double none = Double.POSITIVE_INFINITY;
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
        "preload-curves",
        "Pressure, stiffness, sink and scatter against preload",
        caption(band),
        input,
        panels,
        false);
  }

  private static String caption(Band band) {
    if (!Double.isFinite(band.from())) {
      return "No preload keeps all limits at once: more preload stiffens the coupling and presses"
          + " and scatters it more.";
    }
    boolean inside = band.nominal() >= band.from() && band.nominal() <= band.to();
    return "More preload stiffens the coupling but presses, sinks and scatters it more; the design"
        + " stands "
        + (inside ? "inside" : "outside")
        + " the allowed band.";
  }

  private static List<Double> column(List<Row> rows, ToDoubleFunction<Row> value) {
    return rows.stream().mapToDouble(value).boxed().toList();
  }
}
