package reseat.plots.chart;

import java.util.List;
import reseat.plots.Picture;
import reseat.plots.PictureKind;

/** What more preload buys and what it costs: pressure, stiffness, sink and scatter. */
public final class PreloadCurves {

  /**
   * The preload that is allowed.
   *
   * @param from least preload, N; infinite if none is allowed
   * @param to greatest preload, N; infinite for no upper end
   * @param nominal preload of the design, N
   */
  public record Band(double from, double to, double nominal) {}

  private PreloadCurves() {}

  /**
   * Draws the curves.
   *
   * @param rows at least two, by ascending preload
   * @param band what is allowed
   * @param limits limits
   * @return the picture {@code preload-curves}
   */
  public static Picture draw(List<CurveRow> rows, Band band, CurveRow.Limits limits) {
    return draw(rows, band, limits, PictureUnits.METRIC);
  }

  /**
   * Draws the curves in a unit system.
   *
   * @param rows at least two, by ascending preload
   * @param band what is allowed
   * @param limits limits
   * @param units unit system
   * @return the picture {@code preload-curves}
   */
  public static Picture draw(
      List<CurveRow> rows, Band band, CurveRow.Limits limits, PictureUnits units) {
    CurvePanels.Input input =
        new CurvePanels.Input(
            units.of(AxisQuantity.PRELOAD),
            CurveRow.places(rows),
            band.from(),
            band.to(),
            band.nominal());
    return CurvePanels.draw(
        PictureKind.PRELOAD_CURVES,
        "preload-curves",
        "Pressure, stiffness, sink and scatter against preload",
        caption(band),
        input,
        CurveRow.panels(rows, limits, units),
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
}
