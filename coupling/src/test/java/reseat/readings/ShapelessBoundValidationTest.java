package reseat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * What the range bounds without any shape, against the sample sizes that every table of
 * distribution-free tolerance limits gives (S. S. Wilks, Determination of sample sizes for setting
 * tolerance limits, Annals of Mathematical Statistics 12, 1941; from memory: 59 one-sided and 93
 * two-sided for 95 % with 95 % confidence, 22 and 38 for 90 % with 90 %), and against readings as
 * skewed as waiting times.
 */
class ShapelessBoundValidationTest {

  @Test
  void theNumbersOfWilksAreMet() {
    assertThat(ShapelessBound.between(93, 0.95)).isGreaterThanOrEqualTo(0.95);
    assertThat(ShapelessBound.between(92, 0.95)).isLessThan(0.95);
    assertThat(ShapelessBound.between(38, 0.90)).isGreaterThanOrEqualTo(0.90);
    assertThat(ShapelessBound.between(37, 0.90)).isLessThan(0.90);
    assertThat(ShapelessBound.belowLargest(59, 0.95)).isGreaterThanOrEqualTo(0.95);
    assertThat(ShapelessBound.belowLargest(58, 0.95)).isLessThan(0.95);
    assertThat(ShapelessBound.belowLargest(22, 0.90)).isGreaterThanOrEqualTo(0.90);
    assertThat(ShapelessBound.belowLargest(21, 0.90)).isLessThan(0.90);
  }

  @Test
  void itHoldsForSkewedReadings() {
    SplittableRandom random = new SplittableRandom(59);
    int n = 25;
    int series = 20_000;
    double between = ShapelessBound.between(n, 0.95);
    int held = 0;
    for (int i = 0; i < series; i++) {
      double least = Double.POSITIVE_INFINITY;
      double most = 0;
      for (int k = 0; k < n; k++) {
        double v = -Math.log(1 - random.nextDouble());
        least = Math.min(least, v);
        most = Math.max(most, v);
      }
      held += Math.exp(-least) - Math.exp(-most) >= between ? 1 : 0;
    }
    assertThat(held / (double) series).isCloseTo(0.95, within(0.006));
  }
}
