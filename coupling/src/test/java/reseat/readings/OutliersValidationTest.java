package reseat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Outlier tests and gauge noise against the NIST/SEMATECH e-Handbook (data recalled from memory,
 * confirmed by computation) and figures computed independently from the stated formulas.
 */
class OutliersValidationTest {

  @ParameterizedTest
  @CsvSource({"5, 1.7150373", "10, 2.2899541", "12, 2.4115595", "20, 2.7082456"})
  void limitsOfGrubbsMatch(int n, double limit) {
    assertThat(Outliers.grubbsTwoSided(n, 0.05)).isCloseTo(limit, within(1e-7));
  }

  @Test
  void theMassSpectrometerReadingIsFlagged() {
    double[] y = {199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57};
    assertThat(Outliers.statistic(y)).isCloseTo(2.46876461, within(1e-8));
    assertThat(Outliers.grubbsOneSided(8, 0.05)).isCloseTo(2.03165200, within(1e-8));
    Outliers found = Outliers.of(y, 0.05);
    assertThat(found.flagged()).hasSize(1);
    assertThat(found.flagged().get(0).index()).isEqualTo(7);
  }

  @Test
  void threeOutliersAreFoundAmongRosnersValuesThoughTheFirstTestSeesNone() {
    // Printed: R1 3.118 < 3.158, R2 2.942 < 3.151, R3 3.179 > 3.143, none after: three outliers.
    Outliers found = Outliers.of(HandbookData.ROSNER.toArray(), 0.05, 10);
    assertThat(found.flagged()).extracting(Outliers.Flag::value).containsExactly(6.01, 5.42, 5.34);
    assertThat(found.flagged().get(0).statistic()).isCloseTo(3.118, within(1e-3));
    assertThat(found.flagged().get(0).limit()).isCloseTo(3.158, within(1e-3));
    assertThat(found.flagged().get(2).statistic()).isCloseTo(3.179, within(1e-3));
    assertThat(found.flagged().get(2).limit()).isCloseTo(3.143, within(1e-3));
  }

  @Test
  void gaugeNoiseIsTakenFromTheScatterByVariances() {
    // Computed independently: sqrt(0.10² - 0.06²).
    GaugeNoise g = new GaugeNoise(0.10, 30, 0.06, 0);
    assertThat(g.mount().orElseThrow()).isCloseTo(0.08, within(1e-15));
    assertThat(new GaugeNoise(0.05, 30, 0.06, 0).mount()).isEmpty();
  }
}
