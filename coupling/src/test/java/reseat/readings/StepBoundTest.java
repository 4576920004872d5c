package reseat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * The step of the gauge in the bounds, against planted series: no more than one bound in twenty is
 * below the true scatter, wherever the mean lies between the steps. With {@code -Dfull=true} 20,000
 * series of each kind, else 2,000.
 */
class StepBoundTest {

  private static final int SERIES = Boolean.getBoolean("full") ? 20_000 : 2_000;

  private static ScatterBounds bounds(double[] y, double step) {
    KeptReadings of = KeptReadings.of(y, List.of(), Set.of());
    return StepBound.of(of.scatter(), of, step, 0, 0.95).orElseThrow();
  }

  /** Readings in whole steps of one. */
  private static double[] rounded(SplittableRandom random, int n, double sigma, double mean) {
    double[] y = new double[n];
    for (int i = 0; i < n; i++) {
      y[i] = Math.rint(mean + sigma * random.nextGaussian());
    }
    return y;
  }

  @Test
  void noMoreThanOneBoundInTwentyIsBelowTheTrueScatter() {
    long seed = 20261130;
    System.out.println("step bound, seed " + seed);
    SplittableRandom random = new SplittableRandom(seed);
    // a part of 20,000 or 2,000 is known to three standard deviations
    double most = 0.05 + 3 * Math.sqrt(0.05 * 0.95 / SERIES);
    for (int n : new int[] {10, 24, 30}) {
      // 0.70 um read by an indicator of tenths of a thousandth of an inch is 0.276 steps
      for (double sigma : new double[] {0.1, 0.2, 0.276, 0.35, 0.45, 0.55, 0.7, 0.9, 1.5}) {
        for (double mean : new double[] {0, 0.25, 0.5}) {
          int below = 0;
          int above = 0;
          for (int i = 0; i < SERIES; i++) {
            ScatterBounds b = bounds(rounded(random, n, sigma, mean), 1);
            below += b.upperOneSided() < sigma ? 1 : 0;
            above += b.lowerOneSided() > sigma ? 1 : 0;
          }
          assertThat(below / (double) SERIES)
              .as("upper bound, n %d, sigma %s steps, mean %s", n, sigma, mean)
              .isLessThanOrEqualTo(most);
          assertThat(above / (double) SERIES)
              .as("lower bound, n %d, sigma %s steps, mean %s", n, sigma, mean)
              .isLessThanOrEqualTo(most);
        }
      }
    }
  }

  @Test
  void aTenthsIndicatorProvesNothingBelowItsReach() {
    // 24 planted series of a true 0.70 um: 0.65 um is proven in at most 1 of 20
    SplittableRandom random = new SplittableRandom(24);
    int proven = 0;
    for (int i = 0; i < SERIES; i++) {
      double mean = random.nextDouble();
      double[] y = rounded(random, 24, 0.70 / 2.54, mean);
      proven += 2.54 * bounds(y, 1).upperOneSided() <= 0.65 ? 1 : 0;
    }
    assertThat(proven / (double) SERIES).isLessThan(0.05);
  }

  @Test
  void aFineStepChangesNothing() {
    double[] y = {0.11, 0.32, 0.23, 0.44, 0.15, 0.26, 0.37, 0.28, 0.19, 0.30};
    ScatterBounds b = bounds(y, 0.01);
    assertThat(b).isEqualTo(KeptReadings.of(y, List.of(), Set.of()).scatter().bounds(0.95));
  }

  @Test
  void oneReadingOffIsBoundByClopperAndPearson() {
    // 1 of 24 off: the upper 95 % bound of the chance is 0.18289 (Clopper and Pearson, computed
    // from the binomial sum (1-p)^24 + 24 p (1-p)^23 = 0.05), and 2 (1 - Phi(z)) = 0.18289 at
    // z = 1.3318
    double p = 0.18289;
    assertThat(Math.pow(1 - p, 24) + 24 * p * Math.pow(1 - p, 23)).isCloseTo(0.05, within(2e-5));
    double[] y = new double[24];
    y[7] = 1;
    assertThat(bounds(y, 1).upperOneSided()).isCloseTo(1 / (2 * 1.3318), within(2e-4));
  }

  @Test
  void nothingBelowTheStatedNoiseIsShown() {
    KeptReadings of =
        KeptReadings.of(new double[] {1, 1.1, 0.9, 1.05, 0.95, 1.02}, List.of(), Set.of());
    assertThat(StepBound.of(of.scatter(), of, 0, 3, 0.95).orElseThrow().upperOneSided())
        .isEqualTo(3);
    assertThat(StepBound.of(new PooledScatter(0, 5, 6), of, 0, 0, 0.95)).isEmpty();
  }
}
