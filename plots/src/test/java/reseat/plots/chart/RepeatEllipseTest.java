package reseat.plots.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import reseat.numerics.RandomStream;
import reseat.plots.Picture;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Tone;

class RepeatEllipseTest {

  private static final double NONE = Double.POSITIVE_INFINITY;

  private static Picture cloud(double sdX, double sdZ) {
    int n = 20_000;
    RandomStream random = RandomStream.of(21, 0);
    double[] x = new double[n];
    double[] z = new double[n];
    for (int i = 0; i < n; i++) {
      x[i] = sdX * random.normal();
      z[i] = sdZ * random.normal();
    }
    return RepeatEllipse.draw("c", "mounts", new RepeatEllipse.Plane("X", "Z", NONE, NONE), x, z);
  }

  private static Mark.Path ellipse(Picture p) {
    return p.scene().marks().stream()
        .filter(Mark.Path.class::isInstance)
        .map(Mark.Path.class::cast)
        .filter(m -> m.line().equals(LineStyle.solid(Tone.INK, 1.6)))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aUnitIsAsLongOnBothAxes() {
    Mark.Path round = ellipse(cloud(1e-7, 1e-7));
    assertThat(round.box().width() / round.box().height()).isCloseTo(1, within(0.02));
    Mark.Path flat = ellipse(cloud(3e-7, 1e-7));
    assertThat(flat.box().width() / flat.box().height()).isCloseTo(3, within(0.06));
  }

  @Test
  void theEllipseReachesTwoPointFourFiveSigma() {
    // 95 % point of chi-square with two degrees of freedom, 5.991, recalled from memory; its root.
    Picture p = cloud(1e-7, 1e-7);
    double zero = at(p, "0");
    double tenth = at(p, "0.1");
    double reach = ellipse(p).box().width() / 2 / (tenth - zero) * 0.1;
    assertThat(reach).isCloseTo(0.1 * Math.sqrt(5.991), within(0.005));
  }

  /** Where a number stands under the x axis. */
  private static double at(Picture p, String words) {
    return p.scene().texts().stream()
        .filter(t -> t.words().equals(words))
        .filter(t -> t.at().y() > 300)
        .mapToDouble(t -> t.at().x())
        .max()
        .orElseThrow();
  }
}
