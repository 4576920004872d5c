package reseat.plots.chart.bitmap;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;
import org.knowm.xchart.internal.chartpart.Chart;
import org.knowm.xchart.style.AxesChartStyler;
import reseat.elementary.Elementary;
import reseat.plots.scene.PngBytes;
import reseat.plots.scene.Tone;

/** A chart of the library cut down to what lies between its axes. */
final class BareChart {

  static final Color CLEAR = new Color(0, 0, 0, 0);

  /** Pixels per sheet unit. */
  private static final int SCALE = 2;

  private BareChart() {}

  /** Leaves the library nothing to draw but the data, over its whole area. */
  static void strip(AxesChartStyler style) {
    style.setChartBackgroundColor(CLEAR).setChartPadding(0);
    style.setChartTitleVisible(false).setLegendVisible(false);
    style.setPlotBackgroundColor(CLEAR).setPlotBorderVisible(false);
    style.setPlotGridLinesVisible(false).setPlotMargin(0).setPlotContentSize(1);
    style.setAxisTitlesVisible(false).setAxisTicksVisible(false);
  }

  static Color color(Tone tone, double opacity) {
    return new Color(((int) Elementary.round(255 * opacity) << 24) | tone.rgb(), true);
  }

  /** Paints a chart of the size that it was made with. */
  static PngBytes painted(Chart<?, ?> chart) {
    BufferedImage image =
        new BufferedImage(
            SCALE * chart.getWidth(), SCALE * chart.getHeight(), BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = image.createGraphics();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      g.scale(SCALE, SCALE);
      chart.paint(g, chart.getWidth(), chart.getHeight());
      ImageIO.setUseCache(false);
      ImageIO.write(image, "png", bytes);
    } catch (IOException e) {
      throw new UncheckedIOException("writing a bitmap into memory failed", e);
    } finally {
      g.dispose();
    }
    return new PngBytes(bytes.toByteArray());
  }
}
