package reseat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import reseat.numerics.RandomStream;

/** What the bounds on sigma rest on, and what they are worth where the readings do not bear it. */
class BoundsGroundTest {

  private static final long SEED = 20260801L;
  private static final OptionalDouble NONE = OptionalDouble.empty();

  @Test
  void skewnessAndCorrelationAreThoseWorkedByHand() {
    // deviations -1, -1, -1, 3: squares 12, cubes 24; products 1 + 1 - 3 = -1
    BoundsGround g = BoundsGround.of(new double[] {1, 1, 1, 5}, Groups.one(4), NONE, NONE);
    assertThat(g.skewness()).isCloseTo(24.0 / 4 / Math.pow(3, 1.5), within(1e-12));
    assertThat(g.neighbours()).isCloseTo(-1.0 / 12, within(1e-12));
    assertThat(g.isNotNormal(0.05)).isFalse();
    assertThat(g.isNotIndependent(0.05)).isFalse();
    // each holder about its own mean, and no neighbours across holders
    BoundsGround two =
        BoundsGround.of(
            new double[] {1, 101, 1, 101, 1, 101, 5, 105},
            Groups.of(List.of("a", "b", "a", "b", "a", "b", "a", "b"), 8),
            NONE,
            NONE);
    assertThat(two.skewness()).isCloseTo(g.skewness(), within(1e-12));
    assertThat(two.neighbours()).isCloseTo(g.neighbours(), within(1e-12));
  }

  /** Share of series whose upper 95 % bound holds the true standard deviation, 1. */
  private static double cover(int n, boolean skewed, double correlation) {
    ScatterBounds unit = ScatterBounds.of(1, n, 0.95);
    int held = 0;
    int series = 4000;
    for (int k = 0; k < series; k++) {
      RandomStream luck = RandomStream.of(SEED, k);
      double[] y = new double[n];
      double last = luck.normal();
      for (int i = 0; i < n; i++) {
        last = correlation * last + Math.sqrt(1 - correlation * correlation) * luck.normal();
        y[i] = skewed ? -Math.log(luck.uniform(0, 1)) : last;
      }
      double s = Repeatability.of(y).s();
      held += 1 <= s * unit.upperOneSided() ? 1 : 0;
    }
    return (double) held / series;
  }

  @Test
  void boundsHoldLessOftenWhereTheReadingsAreSkewedOrHangTogether() {
    // standard error of each share below 0.7 %
    for (int n : new int[] {10, 20, 30}) {
      assertThat(cover(n, false, 0)).as("normal, %d", n).isCloseTo(0.95, within(0.015));
      assertThat(cover(n, true, 0)).as("skewed, %d", n).isBetween(0.75, 0.82);
      assertThat(cover(n, false, 0.5)).as("correlated, %d", n).isBetween(0.85, 0.89);
    }
  }

  @Test
  void bothAreSeenInLongSeriesAndSeldomInGoodOnes() {
    int normal = 0;
    int skewed = 0;
    int order = 0;
    int follows = 0;
    for (int k = 0; k < 200; k++) {
      RandomStream luck = RandomStream.of(SEED + 1, k);
      double[] good = new double[40];
      double[] leaning = new double[40];
      double[] following = new double[40];
      double last = 0;
      for (int i = 0; i < 40; i++) {
        good[i] = luck.normal();
        leaning[i] = -Math.log(luck.uniform(0, 1));
        last = 0.5 * last + luck.normal();
        following[i] = last;
      }
      normal += ground(good).isNotNormal(0.05) ? 1 : 0;
      order += ground(good).isNotIndependent(0.05) ? 1 : 0;
      skewed += ground(leaning).isNotNormal(0.05) ? 1 : 0;
      follows += ground(following).isNotIndependent(0.05) ? 1 : 0;
    }
    assertThat(normal).isLessThan(22);
    assertThat(order).isLessThan(22);
    assertThat(skewed).isGreaterThan(180);
    assertThat(follows).isGreaterThan(150);
  }

  private static BoundsGround ground(double[] readings) {
    return BoundsGround.of(
        readings,
        Groups.one(readings.length),
        OptionalDouble.of(NormalShape.of(readings).p()),
        OptionalDouble.of(SuccessiveDifferences.of(readings).p()));
  }
}
