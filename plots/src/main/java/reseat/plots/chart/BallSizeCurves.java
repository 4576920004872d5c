package reseat.plots.chart;

import java.util.List;
import reseat.plots.Picture;
import reseat.plots.PictureKind;

/** The same coupling with balls of every size in stock. */
public final class BallSizeCurves {

  private BallSizeCurves() {}

  /**
   * Draws the curves.
   *
   * @param rows at least two, by ascending diameter
   * @param chosen diameter of the design, m
   * @param limits limits, as for the curves over preload
   * @return the picture {@code ball-size-curves}
   */
  public static Picture draw(List<CurveRow> rows, double chosen, CurveRow.Limits limits) {
    return draw(rows, chosen, limits, PictureUnits.METRIC);
  }

  /**
   * Draws the curves in a unit system.
   *
   * @param rows at least two, by ascending diameter
   * @param chosen diameter of the design, m
   * @param limits limits, as for the curves over preload
   * @param units unit system
   * @return the picture {@code ball-size-curves}
   */
  public static Picture draw(
      List<CurveRow> rows, double chosen, CurveRow.Limits limits, PictureUnits units) {
    double none = Double.POSITIVE_INFINITY;
    CurvePanels.Input input =
        new CurvePanels.Input(
            units.of(AxisQuantity.BALL_DIAMETER), CurveRow.places(rows), none, none, chosen);
    return CurvePanels.draw(
        PictureKind.BALL_SIZE_CURVES,
        "ball-size-curves",
        "Pressure, stiffness, sink and scatter against ball size",
        "Larger balls press less and are stiffer; each point is a size in stock.",
        input,
        CurveRow.panels(rows, limits, units),
        true);
  }
}
