package reseat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold for any series: shifts, scales, order, ties, and long runs. */
class SeriesPropertyTest {

  static LongStream seeds() {
    return LongStream.rangeClosed(9001, 9020);
  }

  private static double[] normal(SplittableRandom random, int n) {
    return IntStream.range(0, n).mapToDouble(i -> random.nextGaussian()).toArray();
  }

  @Test
  void equalReadingsHaveExactlyNoScatter() {
    double[] y = new double[30];
    Arrays.fill(y, 0.1e-6);
    Repeatability r = Repeatability.of(y);
    assertThat(r.s()).isZero();
    assertThat(r.isWithoutScatter()).isTrue();
    assertThat(Outliers.of(y, 0.05).flagged()).isEmpty();
    assertThat(Drift.of(y).verdict()).isEqualTo(Drift.Verdict.STEADY);
    assertThat(Settling.of(y).wearIn()).isZero();
    assertThat(MonotonicTrend.of(y).p()).isEqualTo(1);
    assertThat(GaugeNoise.stepOf(y, 1e-9)).isEmpty();
  }

  @Test
  void aLargeCommonOffsetCostsNoDigits() {
    double[] y = {1e3 + 1e-6, 1e3 + 2e-6, 1e3 + 3e-6};
    // The readings themselves are only good to 1e-13 here, so s to a few 1e-13.
    assertThat(Repeatability.of(y).s()).isCloseTo(1e-6, within(1e-12));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void statisticsScaleWithTheUnitAndIgnoreTheZeroOfTheGauge(long seed) {
    double[] y = normal(new SplittableRandom(seed), 25);
    double[] z = Arrays.stream(y).map(v -> 3e-7 * v + 2e-6).toArray();
    assertThat(Repeatability.of(z).s())
        .as("seed %d", seed)
        .isCloseTo(3e-7 * Repeatability.of(y).s(), within(1e-18));
    assertThat(LinearTrend.perMount(z).p()).isCloseTo(LinearTrend.perMount(y).p(), within(1e-9));
    assertThat(MonotonicTrend.of(z).score()).isEqualTo(MonotonicTrend.of(y).score());
    assertThat(SuccessiveDifferences.of(z).ratio())
        .isCloseTo(SuccessiveDifferences.of(y).ratio(), within(1e-9));
    assertThat(Settling.of(z).wearIn()).isEqualTo(Settling.of(y).wearIn());
    assertThat(NormalShape.of(z).adjusted()).isCloseTo(NormalShape.of(y).adjusted(), within(1e-8));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void mannKendallCountsPairsAsTheDefinitionDoesTiesIncluded(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double[] y = IntStream.range(0, 40).mapToDouble(i -> random.nextInt(8)).toArray();
    double score = 0;
    for (int i = 0; i < y.length; i++) {
      for (int j = i + 1; j < y.length; j++) {
        score += Math.signum(y[j] - y[i]);
      }
    }
    MonotonicTrend m = MonotonicTrend.of(y);
    assertThat(m.score()).as("seed %d", seed).isEqualTo(score);
    double[] back = new double[y.length];
    Arrays.setAll(back, i -> y[y.length - 1 - i]);
    assertThat(MonotonicTrend.of(back).score()).isEqualTo(-score);
    assertThat(MonotonicTrend.of(back).slope()).isEqualTo(-m.slope() + 0.0);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void theStepOfTheGaugeIsFoundFromRoundedReadings(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double step = 0.1e-6;
    double[] coarse =
        IntStream.range(0, 30)
            .mapToDouble(i -> 5e-6 + step * Math.rint(3 * random.nextGaussian()))
            .toArray();
    assertThat(GaugeNoise.stepOf(coarse, step / 10).orElseThrow())
        .as("seed %d", seed)
        .isCloseTo(step, within(1e-5 * step));
    assertThat(GaugeNoise.stepOf(normal(random, 30), 0.05)).isEmpty();
  }

  @Test
  void oneReadingIsRefusedWithItsCount() {
    assertThatThrownBy(() -> Repeatability.of(new double[] {1}))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("at least 2 mounts, found 1");
  }
}
