package reseat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

/** Tolerance factors by a second road; the printed tables are in the registry of check values. */
class ToleranceIntervalTest {

  @Test
  void theExactFactorHoldsTheStatedShareAsOftenAsStatedInSimulatedSeries() {
    // Second road: 40000 simulated series; sampling error of the share is 0.0011 (one sigma).
    long seed = 411;
    System.out.println("tolerance interval simulation, seed " + seed);
    SplittableRandom random = new SplittableRandom(seed);
    NormalDistribution normal = new NormalDistribution(null, 0, 1);
    double k = ToleranceInterval.twoSided(10, 0.95, 0.95);
    int series = 40_000;
    int held = 0;
    for (int i = 0; i < series; i++) {
      double[] y = new double[10];
      for (int j = 0; j < y.length; j++) {
        y[j] = random.nextGaussian();
      }
      Repeatability r = Repeatability.of(y);
      double share =
          normal.cumulativeProbability(r.mean() + k * r.s())
              - normal.cumulativeProbability(r.mean() - k * r.s());
      held += share >= 0.95 ? 1 : 0;
    }
    assertThat(held / (double) series).isCloseTo(0.95, within(0.0045));
  }

  @Test
  void theFactorTendsToTheNormalQuantileWithManyMounts() {
    assertThat(ToleranceInterval.twoSided(1_000_000, 0.95, 0.95))
        .isBetween(1.959964, 1.959964 * 1.002);
  }
}
