package reseat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * Causes of scatter where the fit has a closed form: one or two axes, signatures on the axes. The
 * weight is the fitted scatter with a ten-thousandth of the mean variance added to each axis.
 */
class CauseFitTest {

  /** One-sided 95 % of the normal distribution. */
  private static final double Z = 1.6448536269514722;

  private static final Offset<Double> CLOSE = within(1e-7);

  private static ScatterMatrix diagonal(double... variances) {
    double[][] c = new double[variances.length][variances.length];
    for (int i = 0; i < variances.length; i++) {
      c[i][i] = variances[i];
    }
    return ScatterMatrix.of(List.of("X", "Y", "Z").subList(0, variances.length), c);
  }

  private static ScatterMatrix two(double xx, double xy, double yy) {
    return ScatterMatrix.of(List.of("X", "Y"), new double[][] {{xx, xy}, {xy, yy}});
  }

  private static CauseFit fit(
      ScatterMatrix measured, int mounts, ScatterMatrix known, ScatterMatrix... signatures) {
    List<CauseSignature> causes =
        Arrays.stream(signatures)
            .map(s -> new CauseSignature(ScatterCause.OTHER, "cause", s))
            .toList();
    return CauseFit.of(measured, mounts, known, causes, 0.95);
  }

  @Test
  void oneCauseOnOneAxisTakesAllThatIsNotKnown() {
    CauseFit fit = fit(diagonal(5), 51, diagonal(1), diagonal(1));
    CauseFit.Share s = fit.shares().get(0);
    // v = 4, its standard error is that of a variance of 5 in 51 mounts: 5 sqrt(2 / 50)
    double error = 5 * 1.0001 * Math.sqrt(2 / 50.0);
    assertThat(s.multiplier()).isCloseTo(2, CLOSE);
    assertThat(s.low()).isCloseTo(Math.sqrt(4 - Z * error), CLOSE);
    assertThat(s.high()).isCloseTo(Math.sqrt(4 + Z * error), CLOSE);
    assertThat(s.share()).isCloseTo(0.8, CLOSE);
    assertThat(s.separable()).isTrue();
    assertThat(fit.freedom()).isZero();
    assertThat(fit.misfit()).isCloseTo(0, CLOSE);
    assertThat(fit.p()).isEqualTo(1);
  }

  @Test
  void aBoundThatWouldBeBelowNothingIsNothing() {
    CauseFit.Share s = fit(diagonal(5), 5, diagonal(4), diagonal(1)).shares().get(0);
    assertThat(s.multiplier()).isCloseTo(1, CLOSE);
    assertThat(s.low()).isZero();
    assertThat(s.high()).isCloseTo(Math.sqrt(1 + Z * 5 * 1.0001 * Math.sqrt(0.5)), CLOSE);
  }

  @Test
  void oneCauseAlikeOnBothAxesTakesTheMeanAndMisfitsByTheDifference() {
    CauseFit fit = fit(diagonal(3, 1), 21, diagonal(0, 0), diagonal(1, 1));
    assertThat(fit.shares().get(0).multiplier()).isCloseTo(Math.sqrt(2), CLOSE);
    // 20/2 (1 + 1) / (2 + 2e-4)^2, and exp(-x/2) with two degrees of freedom
    double misfit = 20 / Math.pow(2.0002, 2);
    assertThat(fit.misfit()).isCloseTo(misfit, CLOSE);
    assertThat(fit.freedom()).isEqualTo(2);
    assertThat(fit.p()).isCloseTo(Math.exp(-misfit / 2), CLOSE);
  }

  @Test
  void causesOnTheirOwnAxesAreToldApartWithTheirOwnErrors() {
    CauseFit fit = fit(two(8, 1, 2), 33, diagonal(0, 0), diagonal(2, 0), diagonal(0, 2));
    CauseFit.Share x = fit.shares().get(0);
    CauseFit.Share y = fit.shares().get(1);
    assertThat(x.multiplier()).isCloseTo(2, CLOSE);
    assertThat(y.multiplier()).isCloseTo(1, CLOSE);
    assertThat(x.share()).isCloseTo(0.8, CLOSE);
    assertThat(y.share()).isCloseTo(0.2, CLOSE);
    // the weight is 8.0005 and 2.0005; 32 degrees of freedom give relative errors of a quarter
    assertThat(x.high()).isCloseTo(Math.sqrt(4 + Z * 8.0005 / 4 / 2), CLOSE);
    assertThat(y.low()).isCloseTo(Math.sqrt(1 - Z * 2.0005 / 4 / 2), CLOSE);
    double misfit = 32 / 8.0005 / 2.0005;
    assertThat(fit.misfit()).isCloseTo(misfit, CLOSE);
    assertThat(fit.freedom()).isEqualTo(1);
    assertThat(fit.p())
        .isCloseTo(1 - new ChiSquaredDistribution(null, 1).cumulativeProbability(misfit), CLOSE);
  }

  @Test
  void aCauseThatWouldHaveToTakeScatterAwayIsNotInUse() {
    CauseFit fit = fit(diagonal(4, 1), 33, diagonal(0, 2), diagonal(1, 0), diagonal(0, 1));
    CauseFit.Share y = fit.shares().get(1);
    assertThat(fit.shares().get(0).multiplier()).isCloseTo(2, CLOSE);
    assertThat(y.multiplier()).isZero();
    assertThat(y.low()).isZero();
    assertThat(y.share()).isZero();
    // the known 2 is the weight there
    assertThat(y.high()).isCloseTo(Math.sqrt(Z * 2.00025 / 4), CLOSE);
    assertThat(fit.freedom()).isEqualTo(2);
    assertThat(fit.shares().get(0).share()).isCloseTo(4 / 6.0, CLOSE);
  }

  @Test
  void aCauseBesideAnotherIsKnownAsTheDifferenceOfTwoAxesIs() {
    // The second moves both axes alike: it is what Y shows, the first what X shows more.
    CauseFit fit = fit(diagonal(3, 1), 51, diagonal(0, 0), diagonal(1, 0), diagonal(1, 1));
    CauseFit.Share first = fit.shares().get(0);
    CauseFit.Share second = fit.shares().get(1);
    assertThat(first.separable()).isTrue();
    assertThat(first.multiplier()).isCloseTo(Math.sqrt(2), CLOSE);
    assertThat(second.multiplier()).isCloseTo(1, CLOSE);
    double error = Math.hypot(3.0002, 1.0002) / 5;
    assertThat(first.high()).isCloseTo(Math.sqrt(2 + Z * error), CLOSE);
    assertThat(second.high()).isCloseTo(Math.sqrt(1 + Z * 1.0002 / 5), CLOSE);
    // Where Y is known to scatter more the second is not in use, and X alone tells the first.
    CauseFit alone = fit(diagonal(3, 1), 51, diagonal(0, 2), diagonal(1, 0), diagonal(1, 1));
    assertThat(alone.shares().get(1).multiplier()).isZero();
    assertThat(alone.shares().get(0).high()).isCloseTo(Math.sqrt(3 + Z * 3.0002 / 5), CLOSE);
  }

  @Test
  void aCauseThatMovesAnotherAxisExplainsNothing() {
    CauseFit fit = fit(diagonal(4, 0), 33, diagonal(0, 0), diagonal(0, 1));
    assertThat(fit.shares().get(0).multiplier()).isZero();
    assertThat(fit.shares().get(0).share()).isZero();
    assertThat(fit.freedom()).isEqualTo(3);
    assertThat(fit.p()).isLessThan(0.01);
  }

  @Test
  void nearlyTheSameSignatureCannotBeToldApartFromItsTwin() {
    // Weight 12 and 10 + t; the signatures (1, 0) and (1, t) have the correlation
    // 1 / sqrt(1 + (12 t / (10 + t))^2): 0.95 at t = 0.2812.
    ScatterMatrix known = diagonal(10, 10);
    for (double t : new double[] {0.27, 0.29}) {
      ScatterMatrix measured = diagonal(12, 10 + t);
      CauseFit fit = fit(measured, 51, known, diagonal(1, 0), diagonal(1, t));
      assertThat(fit.shares().get(0).separable()).isEqualTo(t > 0.28);
      assertThat(fit.shares().get(1).separable()).isEqualTo(t > 0.28);
      assertThat(fit.shares().get(0).multiplier()).isCloseTo(1, within(1e-5));
    }
  }

  @Test
  void aTwinMayBeAllOfItByItself() {
    ScatterMatrix measured = diagonal(12, 10.2);
    CauseFit fit = fit(measured, 51, diagonal(10, 10), diagonal(1, 0), diagonal(1, 0.2));
    CauseFit.Share first = fit.shares().get(0);
    // Alone it takes the two on its axis, with the error of a variance of 12 in 51 mounts.
    double floor = 1e-4 * 22.2 / 2;
    assertThat(first.separable()).isFalse();
    assertThat(first.low()).isZero();
    assertThat(first.high()).isCloseTo(Math.sqrt(2 + Z * (12 + floor) / 5), within(1e-5));
    // The second alone: weighted mean of 2 on X and 1 on Y, with weights 1 and (w t)^2.
    double w = 0.2 * (12 + floor) / (10.2 + floor);
    double alone = (2 + w * w) / (1 + w * w);
    double error = (12 + floor) / 5 / Math.sqrt(1 + w * w);
    assertThat(fit.shares().get(1).high()).isCloseTo(Math.sqrt(alone + Z * error), within(1e-5));
  }

  @Test
  void threeCausesOnThreeAxesComeBackInTheirOrder() {
    CauseFit fit =
        fit(
            diagonal(1, 4, 9),
            201,
            diagonal(0, 0, 0),
            diagonal(0, 0, 1),
            diagonal(1, 0, 0),
            diagonal(1, 1, 0));
    // The third alone holds Y and gives X more than there is: it takes the mean of 1 and 4.
    assertThat(fit.shares().get(2).multiplier()).isCloseTo(Math.sqrt(2.5), CLOSE);
    assertThat(fit.shares().get(0).multiplier()).isCloseTo(3, CLOSE);
    assertThat(fit.shares().get(1).multiplier()).isZero();
    assertThat(fit.shares().get(0).high())
        .isCloseTo(Math.sqrt(9 + Z * (9 + 1e-4 * 14 / 3) * Math.sqrt(2 / 200.0)), CLOSE);
  }
}
