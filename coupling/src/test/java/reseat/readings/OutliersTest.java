package reseat.readings;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Which readings are flagged; limits and statistics are in the registry of check values. */
class OutliersTest {

  @Test
  void theMassSpectrometerReadingIsFlagged() {
    // NIST/SEMATECH e-Handbook, Grubbs' test: data recalled from memory, confirmed by computation.
    double[] y = {199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57};
    Outliers found = Outliers.of(y, 0.05);
    assertThat(found.flagged()).hasSize(1);
    assertThat(found.flagged().get(0).index()).isEqualTo(7);
  }

  @Test
  void twoOutliersThatHideEachOtherAreBothFlagged() {
    double[] y = {1.0, 1.2, 0.9, 1.1, 1.05, 0.95, 1.15, 0.85, 1.0, 1.1, 0.9, 1.0, 1.2, 0.8, 9, 9.1};
    assertThat(Outliers.of(y, 0.05).flagged())
        .extracting(Outliers.Flag::index)
        .containsExactly(15, 14);
    // The first step alone, which is Grubbs' test, sees nothing: the pair swells s.
    assertThat(Outliers.of(y, 0.05, 1).flagged()).isEmpty();
  }

  @Test
  void aGaugeNoisierThanTheMountLeavesNothingToResolve() {
    GaugeNoise g = new GaugeNoise(0.05, 30, 0.06, 0);
    assertThat(g.mount()).isEmpty();
    assertThat(g.mountBelow(0.95)).isEqualTo(0.06);
    assertThat(new GaugeNoise(0.05, 30, 0.06, 0.1).isCoarse()).isTrue();
  }
}
