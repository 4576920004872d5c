package reseat.plots.chart.bitmap;

import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.markers.SeriesMarkers;
import reseat.plots.scene.PngBytes;
import reseat.plots.scene.Tone;
import reseat.plots.scene.Typeface;

/** Many points, every one drawn, in a file that does not grow with their number. */
public final class PointCloud {

  static {
    Typeface.needNoScreen();
  }

  private static final int SIZE = 5;

  private PointCloud() {}

  /**
   * Draws round points.
   *
   * @param xs places across, 0 at the left edge of the bitmap to 1 at the right; at least one
   * @param ys places up, 0 at the lower edge to 1 at the upper; as many
   * @param tone their colour
   * @param width width on the sheet, sheet units
   * @param height height on the sheet, sheet units
   * @return the points over a clear background
   */
  public static PngBytes png(double[] xs, double[] ys, Tone tone, double width, double height) {
    XYChart chart = new XYChart((int) Math.ceil(width), (int) Math.ceil(height));
    XYStyler style = chart.getStyler();
    BareChart.strip(style);
    style.setDefaultSeriesRenderStyle(XYSeries.XYSeriesRenderStyle.Scatter);
    style.setMarkerSize(SIZE);
    style.setXAxisMin(0.0).setXAxisMax(1.0);
    style.setYAxisMin(0.0).setYAxisMax(1.0);
    XYSeries series = chart.addSeries("points", xs, ys);
    series.setMarker(SeriesMarkers.CIRCLE).setMarkerColor(BareChart.color(tone, 1));
    return BareChart.painted(chart);
  }
}
