package reseat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.ToIntBiFunction;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;

/**
 * The tests on several holders at once: means of few mounts pull their readings together, and the
 * stated rates must hold all the same. Rates are found by simulation from a fixed seed.
 */
class SeveralHoldersTest {

  /** Ten holders mounted three times each, one after the other, far apart from one another. */
  private static double rate(long seed, int series, ToIntBiFunction<double[], Groups> hit) {
    System.out.println("several holders, seed " + seed);
    SplittableRandom random = new SplittableRandom(seed);
    Groups groups = Groups.of(IntStream.range(0, 30).mapToObj(i -> "holder " + i / 3).toList(), 30);
    int hits = 0;
    for (int k = 0; k < series; k++) {
      double[] y =
          IntStream.range(0, 30)
              .mapToDouble(i -> 40.0 * ((i / 3) % 4) + random.nextGaussian())
              .toArray();
      hits += hit.applyAsInt(y, groups);
    }
    return hits / (double) series;
  }

  @Test
  void steadyHoldersAreCalledDriftingNoMoreOftenThanStated() {
    double alarms =
        rate(111, 5000, (y, g) -> Drift.of(y, g, 0.05).verdict() == Drift.Verdict.STEADY ? 0 : 1);
    assertThat(alarms).isBetween(0.015, 0.055);
  }

  @Test
  void cleanHoldersAreFlaggedAboutAsOftenAsStated() {
    double flagged =
        rate(112, 5000, (y, g) -> Outliers.of(y, g, 0.05, 3).flagged().isEmpty() ? 0 : 1);
    assertThat(flagged).isBetween(0.03, 0.08);
  }

  @Test
  void settledHoldersLoseMountsNoMoreOftenThanStated() {
    // Few shuffles differ within holders of three mounts, which makes the test cautious.
    double lost = rate(113, 1000, (y, g) -> Settling.of(y, g, 0.05).wearIn() > 0 ? 1 : 0);
    assertThat(lost).isLessThan(0.055);
  }

  @Test
  void aMovedReadingIsFlaggedInItsOwnHolderThoughOthersLieFarther() {
    double found =
        rate(
            114,
            200,
            (y, g) -> {
              y[16] += 8;
              Outliers o = Outliers.of(y, g, 0.05, 3);
              return o.flagged().stream().anyMatch(f -> f.index() == 16) ? 1 : 0;
            });
    assertThat(found).isGreaterThan(0.9);
  }

  @Test
  void aDriftThroughAllHoldersIsSeenThroughTheirDifferences() {
    double[] y = new double[40];
    Groups groups = Groups.of(IntStream.range(0, 40).mapToObj(i -> "holder " + i % 4).toList(), 40);
    SplittableRandom random = new SplittableRandom(115);
    Arrays.setAll(y, i -> 100.0 * (i % 4) + 0.1 * i + random.nextGaussian());
    Drift d = Drift.of(y, groups, 0.05);
    assertThat(d.verdict()).isEqualTo(Drift.Verdict.RISING);
    assertThat(d.line().slope()).isCloseTo(0.1, within(4 * d.line().slopeError()));
    assertThat(d.monotonic().p()).isLessThan(0.001);
  }

  @Test
  void temperatureIsFittedWithinHolders() {
    double[] t = new double[40];
    double[] y = new double[40];
    Groups groups =
        Groups.of(IntStream.range(0, 40).mapToObj(i -> "holder " + i / 10).toList(), 40);
    SplittableRandom random = new SplittableRandom(116);
    Arrays.setAll(t, i -> 293 + i / 10 + 0.3 * random.nextGaussian());
    // Holders read on warmer days are the lower ones: a fit over all would get the sign wrong.
    Arrays.setAll(
        y,
        i -> 1e-6 * (t[i] - 293) - 20e-6 * Math.floor(i / 10.0) + 0.05e-6 * random.nextGaussian());
    TemperatureRegression r = TemperatureRegression.of(y, t, groups);
    assertThat(r.jointSlope()).isCloseTo(1e-6, within(4 * r.jointSlopeError()));
    assertThat(TemperatureRegression.of(y, t).alone().slope()).isNegative();
  }

  @Test
  void oneGroupGivesTheOrdinaryTests() {
    SplittableRandom random = new SplittableRandom(117);
    double[] y = IntStream.range(0, 20).mapToDouble(i -> random.nextGaussian()).toArray();
    assertThat(PooledScatter.of(y, Groups.one(20)).s())
        .isCloseTo(Repeatability.of(y).s(), within(1e-15));
    Outliers.Flag first = Outliers.of(new double[] {1, 2, 3, 2, 1, 2, 90}, 0.05).flagged().get(0);
    assertThat(first.limit()).isCloseTo(Outliers.grubbsTwoSided(7, 0.05), within(1e-9));
  }

  @Test
  void aTemperatureFitWithDriftAgreesWithTheNormalEquations() {
    SplittableRandom random = new SplittableRandom(118);
    int n = 25;
    double[] t = new double[n];
    double[] y = new double[n];
    Arrays.setAll(t, i -> 20 + 0.05 * i + random.nextGaussian());
    Arrays.setAll(y, i -> 3 * t[i] + 0.2 * i + random.nextGaussian());
    OLSMultipleLinearRegression fit = new OLSMultipleLinearRegression();
    double[][] x = new double[n][];
    Arrays.setAll(x, i -> new double[] {t[i], i + 1});
    fit.newSampleData(y, x);
    TemperatureRegression r = TemperatureRegression.of(y, t);
    assertThat(r.jointSlope()).isCloseTo(fit.estimateRegressionParameters()[1], within(1e-10));
    assertThat(r.jointSlopeError())
        .isCloseTo(fit.estimateRegressionParametersStandardErrors()[1], within(1e-10));
  }
}
