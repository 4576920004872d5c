package reseat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.math3.analysis.solvers.BisectionSolver;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.readings.PredictionTest.Verdict;

/** Shape, outliers, temperature and foretold scatter, by hand or by a second road. */
class ShapeAndOutlierTest {

  private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

  /** Quantiles of the normal distribution, bent by a cause: 0 leaves them as they are. */
  private static double[] bent(int n, double c) {
    return IntStream.range(0, n)
        .mapToDouble(i -> NORMAL.inverseCumulativeProbability((i + 0.5) / n))
        .map(z -> c == 0 ? z : Math.expm1(c * z) / c)
        .toArray();
  }

  /** Anderson-Darling by its definition, with the factor for few readings. */
  private static double definition(double[] y) {
    Repeatability r = Repeatability.of(y);
    int n = y.length;
    double sum = 0;
    double[] f =
        Arrays.stream(y)
            .sorted()
            .map(v -> NORMAL.cumulativeProbability((v - r.mean()) / r.s()))
            .toArray();
    for (int i = 1; i <= n; i++) {
      sum += (2 * i - 1) * (Math.log(f[i - 1]) + Math.log(1 - f[n - i]));
    }
    return (-n - sum / n) * (1 + 0.75 / n + 2.25 / n / n);
  }

  @Test
  void theStatisticOfShapeIsThatOfItsDefinition() {
    for (double c : new double[] {0, 0.3, 0.9}) {
      double[] y = bent(25, c);
      assertThat(NormalShape.of(y).adjusted()).isCloseTo(definition(y), within(1e-9));
      assertThat(NormalShape.of(y).n()).isEqualTo(25);
    }
    double[] shuffled = {3, 1, 2, 9, 4, 7, 5, 8};
    assertThat(NormalShape.of(shuffled).adjusted()).isCloseTo(definition(shuffled), within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({
    // percentage points of the adjusted statistic by Stephens (from memory)
    "0.341, 0.50",
    "0.470, 0.25",
    "0.561, 0.15",
    "0.631, 0.10",
    "0.752, 0.05",
    "0.873, 0.025",
    "1.035, 0.01",
    "1.159, 0.005",
    // exp(1.2937 - 5.709 A + 0.0186 A^2), his formula (from memory)
    "4, 5.9367e-10",
  })
  void theChanceOfAShapeIsThatOfThePercentagePoints(double adjusted, double chance) {
    double c =
        new BisectionSolver(1e-12)
            .solve(200, x -> NormalShape.of(bent(40, x)).adjusted() - adjusted, 0.01, 2);
    assertThat(NormalShape.of(bent(40, c)).p()).isCloseTo(chance, within(0.03 * chance));
  }

  @Test
  void theChanceFallsAsTheShapeBendsWithoutAStep() {
    DoubleFunction<NormalShape> at = c -> NormalShape.of(bent(40, c));
    assertThat(at.apply(0.01).p()).isGreaterThan(0.99);
    NormalShape last = at.apply(0.01);
    for (double c = 0.02; c < 1.5; c += 0.002) {
      NormalShape next = at.apply(c);
      assertThat(next.p()).isLessThanOrEqualTo(last.p() + 0.002);
      // Stephens' pieces meet within a hundredth.
      assertThat(last.p() - next.p()).isLessThan(0.012 + 3 * (next.adjusted() - last.adjusted()));
      last = next;
    }
    double[] far = new double[200];
    far[0] = 1;
    assertThat(NormalShape.of(far).adjusted()).isGreaterThan(13);
    assertThat(NormalShape.of(far).p()).isZero();
  }

  @Test
  void ofALongSeriesTwoThousandAreTakenFromAllOfIt() {
    double[] y = new double[4000];
    SplittableRandom random = new SplittableRandom(161);
    double[] taken = new double[2000];
    for (int i = 0; i < 2000; i++) {
      taken[i] = random.nextGaussian();
      y[2 * i] = taken[i];
      y[2 * i + 1] = 1000;
    }
    assertThat(NormalShape.of(y)).isEqualTo(NormalShape.of(taken));
    assertThat(NormalShape.of(taken).n()).isEqualTo(2000);
    assertThat(NormalShape.of(Arrays.copyOf(y, 2001)).n()).isEqualTo(2000);
  }

  @Test
  void theFarthestReadingOfTwoHoldersIsThatOfItsOwnMean() {
    // A: 0 0 0 4, mean 1; B: 10 13, too few to be tested. Squares 12 + 4.5, four freedoms.
    double[] y = {0, 10, 0, 4, 13, 0};
    Groups groups = Groups.of(List.of("A", "B", "A", "A", "B", "A"), 6);
    OutlierStep step = OutlierStep.of(y, groups, new boolean[6]);
    assertThat(step.farthest()).isEqualTo(3);
    assertThat(step.statistic()).isCloseTo(3 / Math.sqrt(16.5 / 4), within(1e-12));
    assertThat(step.share()).isCloseTo(Math.sqrt(0.75), within(1e-12));
    assertThat(step.left()).isEqualTo(6);
    assertThat(step.freedom()).isEqualTo(4);
    double t = new TDistribution(null, 3).inverseCumulativeProbability(1 - 0.05 / 12);
    assertThat(step.limit(0.05))
        .isCloseTo(Math.sqrt(0.75) * Math.sqrt(4 * t * t / (3 + t * t)), within(1e-7));
    // Without it A has no scatter, and B may not be flagged.
    OutlierStep next =
        OutlierStep.of(y, groups, new boolean[] {false, false, false, true, false, false});
    assertThat(next.left()).isEqualTo(5);
    assertThat(next.freedom()).isEqualTo(3);
    assertThat(next.farthest()).isEqualTo(-1);
    // A holder whose mounts are all gone has no mean that would cost a freedom.
    assertThat(
            OutlierStep.of(y, groups, new boolean[] {true, false, true, true, false, true})
                .freedom())
        .isEqualTo(1);
  }

  @Test
  void aStepTakesTheLowReadingsAsItTakesTheHigh() {
    double[] y = {5, 5.1, 4.9, 5, 5.2, 4.8, 1, 5};
    OutlierStep step = OutlierStep.of(y, Groups.one(8), new boolean[8]);
    assertThat(step.farthest()).isEqualTo(6);
    assertThat(step.statistic()).isCloseTo(Outliers.statistic(y), within(1e-12));
    assertThat(step.limit(0.05)).isCloseTo(Outliers.grubbsTwoSided(8, 0.05), within(1e-9));
    Outliers found = Outliers.of(y, 0.05, 4);
    assertThat(found.flagged()).hasSize(1);
    assertThat(found.flagged().get(0).value()).isEqualTo(1);
    assertThat(found.flagged().get(0).statistic()).isCloseTo(step.statistic(), within(1e-12));
    assertThat(Outliers.statistic(new double[] {1, 2, 6}))
        .isCloseTo(3 / Math.sqrt(7), within(1e-12));
  }

  @Test
  void theSearchEndsWhenNothingScatters() {
    double[] y = {2, 2, 2, 2, 2, 2, 2, 2, 7};
    assertThat(Outliers.of(y, 0.05, 4).flagged())
        .extracting(Outliers.Flag::index)
        .containsExactly(8);
    assertThat(Outliers.of(y, 0.05, 0).flagged()).isEmpty();
    assertThat(IntStream.of(4, 5, 15, 16, 79, 80, 200).map(Outliers::mostIn))
        .containsExactly(0, 1, 1, 2, 9, 10, 10);
  }

  @Test
  void theSlopeOnTemperatureBesideADriftHasTheChanceOfTheBook() {
    double[] t = {20, 22, 21, 23, 20, 22, 24};
    double[] y = {1, 3, 1, 5, 2, 2, 5};
    OLSMultipleLinearRegression book = new OLSMultipleLinearRegression();
    double[][] x = new double[7][];
    Arrays.setAll(x, i -> new double[] {t[i], i + 1});
    book.newSampleData(y, x);
    TemperatureRegression r = TemperatureRegression.of(y, t);
    double slope = book.estimateRegressionParameters()[1];
    double error = book.estimateRegressionParametersStandardErrors()[1];
    assertThat(r.jointSlope()).isCloseTo(slope, within(1e-12));
    assertThat(r.jointSlopeError()).isCloseTo(error, within(1e-12));
    double tail = new TDistribution(null, 4).cumulativeProbability(-Math.abs(slope / error));
    assertThat(r.jointP()).isCloseTo(2 * tail, within(1e-9));
    assertThat(r.correlationWithMount())
        .isCloseTo(LinearTrend.perMount(t).correlation(), within(1e-12));
    assertThat(r.isConfounded()).isFalse();
    assertThat(r.alone().slope()).isNotEqualTo(r.jointSlope());
  }

  @Test
  void anExactSlopeIsNoChanceAndTemperatureAlongTheMountsIsNoOther() {
    double[] t = {20, 22, 21, 23, 20, 22};
    double[] y = new double[6];
    Arrays.setAll(y, i -> 4 * t[i] + 3 * i);
    TemperatureRegression exact = TemperatureRegression.of(y, t);
    assertThat(exact.jointSlope()).isCloseTo(4, within(1e-9));
    assertThat(exact.jointP()).isLessThan(1e-9);
    double[] level = {2, 2, 2, 2, 2, 2};
    assertThat(TemperatureRegression.of(level, t).jointP()).isEqualTo(1);
    double[] cooling = {25, 24, 23, 22, 21, 20};
    TemperatureRegression along = TemperatureRegression.of(y, cooling);
    assertThat(along.correlationWithMount()).isCloseTo(-1, within(1e-12));
    assertThat(along.isConfounded()).isTrue();
    assertThat(along.jointSlope()).isEqualTo(along.alone().slope());
    assertThat(along.jointSlopeError()).isEqualTo(along.alone().slopeError());
    assertThat(along.jointP()).isEqualTo(along.alone().p());
  }

  @Test
  void measuredOverForetoldScatterIsHeldToTheVarianceRatio() {
    // F at 97.5 % for 9 and 9: 4.0259942 (computed independently); its reciprocal at 2.5 %.
    double f = Math.sqrt(4.0259942);
    PredictionTest more = PredictionTest.of("X", 2 * f, 9, 2, 10, 0.95);
    assertThat(more.p()).isCloseTo(0.05, within(1e-7));
    assertThat(more.ratio()).isCloseTo(f, within(1e-12));
    assertThat(more.ratioLow()).isCloseTo(1, within(1e-7));
    assertThat(more.ratioHigh()).isCloseTo(4.0259942, within(1e-6));
    assertThat(more.mounts()).isEqualTo(10);
    PredictionTest less = PredictionTest.of("X", 2 / f, 9, 2, 10, 0.95);
    assertThat(less.p()).isCloseTo(0.05, within(1e-7));
    assertThat(less.ratioHigh()).isCloseTo(1, within(1e-7));
    assertThat(PredictionTest.of("X", 2, 9, 2, 10, 0.95).p()).isCloseTo(1, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"4.1, MORE", "4.0, AS_PREDICTED", "1.0, AS_PREDICTED", "0.98, LESS"})
  void aRatioBeyondTheBoundsIsMoreOrLessThanForetold(double measured, Verdict verdict) {
    // bounds 2.00649 and 1 / 2.00649 times the foretold 2
    PredictionTest t = PredictionTest.of("X", measured, 9, 2, 10, 0.95);
    assertThat(t.verdict()).isEqualTo(verdict);
    double excess = measured > 2 ? Math.sqrt(measured * measured - 4) : 0;
    assertThat(t.excess()).isCloseTo(excess, within(1e-12));
  }
}
