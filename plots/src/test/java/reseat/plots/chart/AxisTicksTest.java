package reseat.plots.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.numerics.RandomStream;
import reseat.plots.scene.TextWidth;

class AxisTicksTest {

  @Test
  void ticksAreRoundNumbersWithinTheRange() {
    assertThat(AxisTicks.upright(new AxisRange(0, 0.34), 100, 16, false).words())
        .containsExactly("0", "0.1", "0.2", "0.3");
    assertThat(AxisTicks.level(new AxisRange(-1.1, 1.02), 200, 32, false).words())
        .containsExactly("\u22121", "\u22120.5", "0", "0.5", "1");
    assertThat(AxisTicks.level(new AxisRange(0.4, 3.6), 400, 32, true).values())
        .containsExactly(1.0, 2.0, 3.0);
  }

  @Test
  void ticksOfAnyRangeAreFewEvenAndApart() {
    int seed = 20261130;
    RandomStream random = RandomStream.of(seed, 0);
    for (int i = 0; i < 3000; i++) {
      double middle = random.normal() * Math.pow(10, 9 * random.uniform() - 3);
      double half = Math.abs(middle) * Math.pow(10, -4 * random.uniform()) + 1e-6;
      AxisRange range = new AxisRange(middle - half, middle + half);
      AxisTicks ticks = AxisTicks.level(range, 300, 32, false);
      List<Double> v = ticks.values();
      String about = "seed " + seed + ", range " + range;
      assertThat(v).as(about).hasSizeLessThanOrEqualTo(10);
      for (int k = 1; k < v.size(); k++) {
        double apart = (v.get(k) - v.get(k - 1)) / range.span() * 300;
        double words =
            (TextWidth.of(ticks.words().get(k), AxisTicks.STYLE)
                    + TextWidth.of(ticks.words().get(k - 1), AxisTicks.STYLE))
                / 2;
        assertThat(apart).as(about).isGreaterThan(Math.max(31.9, words));
        assertThat(v.get(k) - v.get(k - 1))
            .as(about)
            .isCloseTo(v.get(1) - v.get(0), within(1e-6 * range.span()));
      }
      assertThat(v)
          .as(about)
          .allMatch(t -> t >= range.from() - half / 1e6 && t <= range.to() + half / 1e6);
    }
  }
}
