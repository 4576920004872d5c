package reseat.plots.chart.bitmap;

import java.util.ArrayList;
import java.util.List;
import org.knowm.xchart.CategoryChart;
import org.knowm.xchart.CategorySeries;
import org.knowm.xchart.style.CategoryStyler;
import reseat.plots.scene.PngBytes;
import reseat.plots.scene.Tone;
import reseat.plots.scene.Typeface;

/** The bars of a histogram, side by side. */
public final class HistogramBars {

  static {
    Typeface.needNoScreen();
  }

  /** How much of the room for a bar it fills. */
  private static final double SHARE = 0.93;

  private HistogramBars() {}

  /**
   * Draws bars of equal width that fill the bitmap from left to right.
   *
   * @param counts height of each bar, zero or more; at least one bar
   * @param most the height that reaches the top of the bitmap, positive
   * @param width width on the sheet, sheet units
   * @param height height on the sheet, sheet units
   * @return the bars over a clear background
   */
  public static PngBytes png(List<Integer> counts, double most, double width, double height) {
    CategoryChart chart = new CategoryChart((int) Math.ceil(width), (int) Math.ceil(height));
    CategoryStyler style = chart.getStyler();
    BareChart.strip(style);
    style.setAvailableSpaceFill(SHARE);
    style.setYAxisMin(0.0).setYAxisMax(most);
    List<Integer> places = new ArrayList<>();
    for (int i = 0; i < counts.size(); i++) {
      places.add(i);
    }
    CategorySeries series = chart.addSeries("count", places, counts);
    series.setFillColor(BareChart.color(Tone.BLUE, 0.55));
    return BareChart.painted(chart);
  }
}
