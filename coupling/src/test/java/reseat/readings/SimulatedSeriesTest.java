package reseat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Second road: the rates that the tests state, found by simulation from a fixed seed. Limits are
 * about four standard errors of the simulated rate wide.
 */
class SimulatedSeriesTest {

  private static double[] normal(SplittableRandom random, int n) {
    return IntStream.range(0, n).mapToDouble(i -> random.nextGaussian()).toArray();
  }

  private static double rate(long seed, int series, int n, ToDoubleFunction<double[]> hit) {
    System.out.println("simulated series, seed " + seed);
    SplittableRandom random = new SplittableRandom(seed);
    double sum = 0;
    for (int i = 0; i < series; i++) {
      sum += hit.applyAsDouble(normal(random, n));
    }
    return sum / series;
  }

  @Test
  void theUpperBoundCoversTheTrueScatterNineteenTimesInTwenty() {
    double covered =
        rate(51, 20_000, 10, y -> Repeatability.of(y).bounds(0.95).upperOneSided() >= 1 ? 1 : 0);
    assertThat(covered).isCloseTo(0.95, within(0.0065));
  }

  @Test
  void aResampledBoundAgreesWithTheClosedFormOnALongNormalSeries() {
    // Bootstrap: percentile of s over resampled series, against the chi-square interval.
    SplittableRandom random = new SplittableRandom(52);
    double[] y = normal(random, 200);
    double[] s = new double[4000];
    for (int b = 0; b < s.length; b++) {
      double[] again =
          IntStream.range(0, y.length).mapToDouble(i -> y[random.nextInt(y.length)]).toArray();
      s[b] = Repeatability.of(again).s();
    }
    Arrays.sort(s);
    ScatterBounds bounds = Repeatability.of(y).bounds(0.95);
    assertThat(s[99]).isCloseTo(bounds.lower(), within(0.03));
    assertThat(s[3899]).isCloseTo(bounds.upper(), within(0.03));
  }

  @Test
  void aSteadySeriesIsCalledDriftingNoMoreOftenThanStated() {
    double alarms =
        rate(53, 10_000, 30, y -> Drift.of(y).verdict() == Drift.Verdict.STEADY ? 0 : 1);
    assertThat(alarms).isBetween(0.02, 0.055);
  }

  @Test
  void aCleanSeriesIsFlaggedAboutAsOftenAsStated() {
    double flagged = rate(54, 10_000, 30, y -> Outliers.of(y, 0.05).flagged().isEmpty() ? 0 : 1);
    assertThat(flagged).isBetween(0.035, 0.075);
  }

  @Test
  void aNormalSeriesIsCalledNotNormalAsOftenAsStated() {
    double alarms = rate(55, 10_000, 30, y -> NormalShape.of(y).p() < 0.05 ? 1 : 0);
    assertThat(alarms).isCloseTo(0.05, within(0.01));
  }

  @Test
  void twoRestingPlacesAreSeenAsNotNormal() {
    SplittableRandom random = new SplittableRandom(56);
    double[] y = normal(random, 40);
    for (int i = 0; i < y.length; i += 2) {
      y[i] += 8;
    }
    assertThat(NormalShape.of(y).p()).isLessThan(0.001);
  }

  @Test
  void vonNeumannsRatioAlarmsAsOftenAsStated() {
    double alarms = rate(57, 10_000, 20, y -> SuccessiveDifferences.of(y).p() < 0.05 ? 1 : 0);
    assertThat(alarms).isCloseTo(0.05, within(0.012));
  }

  @Test
  void aSettledSeriesLosesMountsAsOftenAsStatedNormalOrNot() {
    double normal = rate(58, 2000, 30, y -> Settling.of(y).wearIn() > 0 ? 1 : 0);
    assertThat(normal).isCloseTo(0.05, within(0.02));
    double skewed =
        rate(
            59,
            2000,
            30,
            y -> Settling.of(Arrays.stream(y).map(Math::exp).toArray()).wearIn() > 0 ? 1 : 0);
    assertThat(skewed).isCloseTo(0.05, within(0.02));
  }

  @Test
  void wearInThatDiesOutIsFoundWhereLittleOfItIsLeft() {
    SplittableRandom random = new SplittableRandom(60);
    int series = 300;
    double[] places = new double[series];
    int seen = 0;
    for (int k = 0; k < series; k++) {
      double[] y = normal(random, 40);
      for (int i = 0; i < y.length; i++) {
        y[i] += 6 * Math.exp(-i / 4.0);
      }
      Settling s = Settling.of(y);
      places[k] = s.wearIn();
      seen += s.wearIn() > 0 && s.settled() ? 1 : 0;
    }
    Arrays.sort(places);
    assertThat(seen / (double) series).isGreaterThan(0.93);
    // 6 exp(-i/4) falls to half a standard deviation at mount 9.9.
    assertThat(places[series / 2]).isBetween(9.0, 15.0);
  }

  @Test
  void aSeriesThatStillRunsAtItsEndHasNotSettled() {
    SplittableRandom random = new SplittableRandom(61);
    int running = 0;
    for (int k = 0; k < 100; k++) {
      double[] y = normal(random, 30);
      for (int i = 0; i < y.length; i++) {
        y[i] -= 0.4 * i;
      }
      running += Settling.of(y).settled() ? 0 : 1;
    }
    assertThat(running).isGreaterThan(90);
  }

  @Test
  void mountsWantedGiveTheChanceOfProofAskedFor() {
    AcceptancePlan plan = AcceptancePlan.of("X", 0.5e-6, 0.3e-6, 0.95, 0.9, java.util.List.of());
    int n = plan.mounts();
    assertThat(ProofOfTarget.chanceOfProof(n - 1, 0.6, 0.95)).isLessThan(0.9);
    double proven =
        rate(
            62,
            20_000,
            n,
            y -> {
              double[] scaled = Arrays.stream(y).map(v -> 0.3e-6 * v).toArray();
              ProofOfTarget found =
                  ProofOfTarget.of(Repeatability.of(scaled), plan.target(), plan.confidence());
              return found.verdict() == ProofOfTarget.Verdict.PROVEN ? 1 : 0;
            });
    assertThat(proven).isCloseTo(plan.chanceOfPass(), within(0.009));
    assertThat(plan.chanceOfPass()).isGreaterThanOrEqualTo(0.9);
  }

  @Test
  void requalificationPassesAnUnchangedMountAsOftenAsStated() {
    SplittableRandom random = new SplittableRandom(63);
    int passed = 0;
    int checks = 10_000;
    for (int i = 0; i < checks; i++) {
      Repeatability baseline = Repeatability.of(normal(random, 30));
      Requalification limits = Requalification.of(baseline, 5, 0.99);
      Repeatability check = Repeatability.of(normal(random, 5));
      boolean stayed = Math.abs(check.mean() - baseline.mean()) <= limits.meanShift();
      passed += stayed && check.s() <= limits.scatter() ? 1 : 0;
    }
    // Two limits of 1 % each, nearly independent.
    assertThat(passed / (double) checks).isCloseTo(0.98, within(0.006));
  }
}
