package reseat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.stat.descriptive.rank.Median;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.readings.Drift.Verdict;

/** Slopes, ranks and neighbours by hand or by a second road; what they say together. */
class TrendTest {

  private static final double[] Y = {2, 1, 4, 3, 7, 5, 6, 9, 8};

  /** Two holders in turn, of five and four mounts. */
  private static final Groups TWO =
      Groups.of(List.of("A", "B", "A", "B", "A", "B", "A", "B", "A"), 9);

  private static double normalBelow(double z) {
    return new NormalDistribution(null, 0, 1).cumulativeProbability(z);
  }

  @Test
  void theLineIsThatOfTheBook() {
    SimpleRegression book = new SimpleRegression();
    for (int i = 0; i < Y.length; i++) {
      book.addData(i + 1, Y[i]);
    }
    LinearTrend t = LinearTrend.perMount(Y);
    assertThat(t.n()).isEqualTo(9);
    assertThat(t.slope()).isCloseTo(book.getSlope(), within(1e-12));
    assertThat(t.intercept()).isCloseTo(book.getIntercept(), within(1e-12));
    assertThat(t.slopeError()).isCloseTo(book.getSlopeStdErr(), within(1e-12));
    assertThat(t.correlation()).isCloseTo(book.getR(), within(1e-12));
    assertThat(t.residual()).isCloseTo(Math.sqrt(book.getMeanSquareError()), within(1e-12));
    assertThat(t.t()).isCloseTo(book.getSlope() / book.getSlopeStdErr(), within(1e-9));
    assertThat(t.p()).isCloseTo(book.getSignificance(), within(1e-9));
    assertThat(t.at(4)).isCloseTo(book.predict(4), within(1e-12));
  }

  @Test
  void oneSlopeThroughTwoHoldersIsThatWithAMeanForEach() {
    OLSMultipleLinearRegression book = new OLSMultipleLinearRegression();
    double[][] x = new double[9][];
    Arrays.setAll(x, i -> new double[] {i + 1, i % 2});
    book.newSampleData(Y, x);
    LinearTrend t = LinearTrend.perMount(Y, TWO);
    assertThat(t.slope()).isCloseTo(book.estimateRegressionParameters()[1], within(1e-12));
    assertThat(t.slopeError())
        .isCloseTo(book.estimateRegressionParametersStandardErrors()[1], within(1e-12));
    assertThat(t.residual()).isCloseTo(book.estimateRegressionStandardError(), within(1e-12));
    assertThat(t.p()).isCloseTo(LinearTrend.twoSided(t.t(), 6), within(1e-12));
    assertThat(t.at(5)).isCloseTo(5, within(1e-12));
  }

  @Test
  void anExactLineIsNoChanceAndALevelOneIsNothingElse() {
    LinearTrend falling = LinearTrend.perMount(new double[] {9, 7, 5, 3});
    assertThat(falling.t()).isEqualTo(-Double.MAX_VALUE);
    assertThat(falling.p()).isZero();
    assertThat(falling.correlation()).isEqualTo(-1);
    assertThat(falling.residual()).isZero();
    LinearTrend level = LinearTrend.perMount(new double[] {2, 2, 2, 2});
    assertThat(level.t()).isZero();
    assertThat(level.p()).isEqualTo(1);
    assertThat(level.correlation()).isZero();
    assertThat(level.intercept()).isEqualTo(2);
    // Student's t with one degree of freedom: a quarter above 1.
    assertThat(LinearTrend.twoSided(-1, 1)).isCloseTo(0.5, within(1e-9));
  }

  @Test
  void pairsAreCountedWithTiesAndTheirVariance() {
    // 15 pairs, 1 + 3 tied, one falling; (6 5 17 - 2 1 9 - 3 2 11) / 18
    MonotonicTrend m = MonotonicTrend.of(new double[] {1, 1, 2, 2, 3, 2});
    assertThat(m.score()).isEqualTo(15 - 4 - 2);
    assertThat(m.variance()).isCloseTo((510 - 18 - 66) / 18.0, within(1e-12));
    double z = 8 / Math.sqrt(426 / 18.0);
    assertThat(m.z()).isCloseTo(z, within(1e-12));
    assertThat(m.p()).isCloseTo(2 * normalBelow(-z), within(1e-9));
    // slopes 0 (four), 1/4, 1/5, 1/3, 1/2 (two), 1 (two), 1/3, 2/3 and -1
    assertThat(m.slope()).isCloseTo(1 / 3.0, within(1e-12));
    assertThat(m.n()).isEqualTo(6);
    assertThat(MonotonicTrend.of(new double[] {3, 2, 2, 1}).z())
        .isCloseTo(-4 / Math.sqrt((4 * 3 * 13 - 18) / 18.0), within(1e-12));
  }

  @Test
  void scoresOfHoldersAndTheirVariancesAddUp() {
    // A: 2 4 7 6 8, nine rise and one falls; B: 1 3 5 9, all six rise.
    MonotonicTrend m = MonotonicTrend.of(Y, TWO);
    assertThat(m.score()).isEqualTo(8 + 6);
    assertThat(m.variance()).isCloseTo((5 * 4 * 15 + 4 * 3 * 13) / 18.0, within(1e-12));
    double[] slopes = {
      2, 2.5, 4 / 3.0, 1.5, 3, 1, 4 / 3.0, -1, 0.5, 2, 2, 2, 8 / 3.0, 2, 3, 4,
    };
    assertThat(m.slope()).isCloseTo(new Median().evaluate(slopes), within(1e-12));
    Groups single = Groups.of(List.of("A", "B", "C"), 3);
    assertThat(MonotonicTrend.of(new double[] {1, 2, 3}, single).slope()).isZero();
    assertThat(MonotonicTrend.of(new double[] {1, 2, 3}, single).p()).isEqualTo(1);
  }

  @Test
  void longSeriesTakeTheSlopeFromOneHalfToTheOther() {
    SplittableRandom random = new SplittableRandom(141);
    for (int n : new int[] {2000, 2001}) {
      double[] y = new double[n];
      Arrays.setAll(y, i -> 0.001 * i + random.nextDouble());
      MonotonicTrend m = MonotonicTrend.of(y);
      assertThat(m.everyPair()).isEqualTo(n == 2000);
      double[] slopes = new double[n - 1000];
      Arrays.setAll(slopes, i -> (y[i + 1000] - y[i]) / 1000);
      double halves = new Median().evaluate(slopes);
      if (n == 2001) {
        assertThat(m.slope()).isCloseTo(halves, within(1e-15));
      } else {
        assertThat(m.slope()).isNotEqualTo(halves).isCloseTo(0.001, within(1e-4));
      }
    }
    // A holder of a single mount in a long series has no slope of its own.
    double[] y = new double[2001];
    Arrays.setAll(y, i -> i == 2000 ? -1e9 : 2 * i);
    List<String> names = new java.util.ArrayList<>(java.util.Collections.nCopies(2000, "A"));
    names.add("B");
    assertThat(MonotonicTrend.of(y, Groups.of(names, 2001)).slope()).isEqualTo(2);
  }

  @Test
  void theMedianIsTheMiddleOrTheMeanOfBothMiddles() {
    assertThat(MonotonicTrend.median(new double[] {8, 1, 4})).isEqualTo(4);
    assertThat(MonotonicTrend.median(new double[] {8, 1, 4, 2})).isEqualTo(3);
    assertThat(MonotonicTrend.median(new double[] {5})).isEqualTo(5);
  }

  @Test
  void neighboursByHand() {
    // squared steps 1 + 4 over squares about 7/3: 16/9 + 1/9 + 25/9
    SuccessiveDifferences d = SuccessiveDifferences.of(new double[] {1, 2, 4});
    assertThat(d.ratio()).isCloseTo(15 / 14.0, within(1e-12));
    assertThat(d.sigma()).isCloseTo(Math.sqrt(5 / 4.0), within(1e-12));
    // variance 4 (3 - 2) / (9 - 1)
    assertThat(d.p()).isCloseTo(2 * normalBelow(-(13 / 14.0) * Math.sqrt(2)), within(1e-9));
    SuccessiveDifferences level = SuccessiveDifferences.of(new double[] {3, 3, 3});
    assertThat(level.ratio()).isEqualTo(2);
    assertThat(level.p()).isEqualTo(1);
    assertThat(level.sigma()).isZero();
  }

  @Test
  void neighboursAreThoseOfTheSameHolder() {
    // A: 1 2 4 as above; B: 10 12, step 2 and squares 2; three degrees of freedom in all
    Groups groups = Groups.of(List.of("A", "B", "A", "B", "A"), 5);
    SuccessiveDifferences d = SuccessiveDifferences.of(new double[] {1, 10, 2, 12, 4}, groups);
    double ratio = 9 / (14 / 3.0 + 2);
    assertThat(d.ratio()).isCloseTo(ratio, within(1e-12));
    assertThat(d.sigma()).isCloseTo(Math.sqrt(9 / 6.0), within(1e-12));
    assertThat(d.p()).isCloseTo(2 * normalBelow(-(2 - ratio) / Math.sqrt(4 / 15.0)), within(1e-9));
    Groups pairs = Groups.of(List.of("A", "A", "B", "B"), 4);
    assertThat(SuccessiveDifferences.of(new double[] {1, 2, 5, 9}, pairs).p()).isEqualTo(1);
  }

  @ParameterizedTest
  @CsvSource({
    // slope and its p, score and its p, ratio and its p; a third of 6 % is wanted
    "1, 0.019, -9, 0.001, 1, 0.001, RISING",
    "-1, 0.019, 9, 0.001, 1, 0.001, FALLING",
    "-1, 0.02, 9, 0.019, 1, 0.001, RISING",
    "1, 0.02, -9, 0.019, 1, 0.001, FALLING",
    "1, 0.02, 9, 0.02, 1.9, 0.019, WANDERING",
    "1, 0.02, 9, 0.02, 2.1, 0.019, ALTERNATING",
    "1, 0.02, 9, 0.02, 1, 0.02, STEADY",
  })
  void theSharpestTestThatSeesSomethingSpeaks(
      double slope, double p1, double score, double p2, double ratio, double p3, Verdict verdict) {
    Drift d =
        new Drift(
            new LinearTrend(11, slope, 0, 1, 0, 1, 0, p1),
            new MonotonicTrend(11, score, 1, 0, p2, 0, true),
            new SuccessiveDifferences(11, 1, ratio, p3),
            0.06);
    assertThat(d.verdict()).isEqualTo(verdict);
    assertThat(d.hasDirection()).isEqualTo(verdict == Verdict.RISING || verdict == Verdict.FALLING);
    assertThat(d.change()).isEqualTo(10 * slope);
  }
}
