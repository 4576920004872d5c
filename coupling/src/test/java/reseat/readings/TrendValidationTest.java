package reseat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Trend tests on one series that settles, figures computed independently from the stated formulas.
 */
class TrendValidationTest {

  private static double[] settling() {
    return new double[] {0.42, 0.35, 0.31, 0.24, 0.22, 0.15, 0.17, 0.11, 0.13, 0.09, 0.10, 0.08};
  }

  @Test
  void slopeOfASettlingSeriesIsTold() {
    LinearTrend line = LinearTrend.perMount(settling());
    assertThat(line.slope()).isCloseTo(-0.02933566434, within(1e-11));
    assertThat(line.intercept()).isCloseTo(0.3881818182, within(1e-10));
    assertThat(line.correlation()).isCloseTo(-0.9449306712, within(1e-10));
    assertThat(line.t()).isCloseTo(-9.130467013, within(1e-9));
    assertThat(line.p()).isCloseTo(3.635e-6, within(5e-10));
    assertThat(line.residual()).isCloseTo(0.03842120263, within(1e-11));
  }

  @Test
  void mannKendallAndTheilSenSeeTheSameFall() {
    MonotonicTrend m = MonotonicTrend.of(settling());
    assertThat(m.score()).isEqualTo(-60);
    assertThat(m.variance()).isCloseTo(212.6666667, within(1e-7));
    assertThat(m.z()).isCloseTo(-4.045780340, within(1e-9));
    assertThat(m.p()).isCloseTo(5.2149e-5, within(5e-10));
    assertThat(m.slope()).isCloseTo(-0.02738888889, within(1e-11));
  }

  @Test
  void successiveDifferencesGiveAThirdOfTheOverallScatter() {
    SuccessiveDifferences d = SuccessiveDifferences.of(settling());
    assertThat(d.ratio()).isCloseTo(0.1683294032, within(1e-10));
    assertThat(d.sigma()).isCloseTo(0.03247376564, within(1e-11));
    assertThat(Repeatability.of(settling()).s()).isCloseTo(0.1119354522, within(1e-10));
    assertThat(Drift.of(settling()).verdict()).isEqualTo(Drift.Verdict.FALLING);
  }
}
