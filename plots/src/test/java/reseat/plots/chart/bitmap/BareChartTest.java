package reseat.plots.chart.bitmap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import reseat.plots.scene.PngBytes;
import reseat.plots.scene.Tone;

/** Whether what the library paints lies where the axes round it say. */
class BareChartTest {

  private static BufferedImage image(PngBytes png) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(png.content()));
  }

  private static boolean inked(BufferedImage image, double x, double y) {
    int column = (int) Math.min(image.getWidth() - 1, x * image.getWidth());
    int row = (int) Math.min(image.getHeight() - 1, (1 - y) * image.getHeight());
    return image.getRGB(column, row) >>> 24 > 60;
  }

  @Test
  void eachBarStandsInItsPlaceAndReachesItsCount() throws IOException {
    List<Integer> counts = List.of(3, 0, 10, 7, 1);
    BufferedImage bars = image(HistogramBars.png(counts, 10, 301.3, 180.2));
    for (int i = 0; i < counts.size(); i++) {
      for (double along : new double[] {0.1, 0.5, 0.9}) {
        double x = (i + along) / counts.size();
        for (double height = 0.35; height < 10; height += 0.3) {
          boolean near = Math.abs(height - counts.get(i)) < 0.15;
          assertThat(near || inked(bars, x, height / 10) == height < counts.get(i))
              .as("bar %s at %s, height %s", i, along, height)
              .isTrue();
        }
      }
    }
  }

  @Test
  void aPointLiesWhereItsCoordinatesSay() throws IOException {
    double[] xs = {0.25, 0.8};
    double[] ys = {0.7, 0.1};
    BufferedImage cloud = image(PointCloud.png(xs, ys, Tone.BLUE, 400, 300));
    double sumX = 0;
    double sumY = 0;
    int n = 0;
    for (int i = 0; i < cloud.getWidth() / 2; i++) {
      for (int j = 0; j < cloud.getHeight(); j++) {
        if (cloud.getRGB(i, j) >>> 24 > 127) {
          sumX += i + 0.5;
          sumY += j + 0.5;
          n++;
        }
      }
    }
    assertThat(n).isBetween(60, 110);
    assertThat(sumX / n).isCloseTo(0.25 * 800, within(1.5));
    assertThat(sumY / n).isCloseTo(0.3 * 600, within(1.5));
    assertThat(inked(cloud, 0.8, 0.1)).isTrue();
    assertThat(inked(cloud, 0.5, 0.5)).isFalse();
  }
}
