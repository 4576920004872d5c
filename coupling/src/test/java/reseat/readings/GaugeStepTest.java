package reseat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the step of a gauge leaves unknown, and slips of units. */
class GaugeStepTest {

  @Test
  void readingsThatAllFallOnOneStepBoundTheScatterAsSimulated() {
    // Second road: at the bound, with the mean in the middle of a step, one series in twenty.
    double sigma = ScatterBounds.ofEqualReadings(1, 15, 0.95).upperOneSided();
    long seed = 131;
    System.out.println("equal readings, seed " + seed);
    SplittableRandom random = new SplittableRandom(seed);
    int equal = 0;
    int series = 20_000;
    for (int i = 0; i < series; i++) {
      boolean same = true;
      for (int k = 0; k < 15; k++) {
        same &= Math.rint(sigma * random.nextGaussian()) == 0;
      }
      equal += same ? 1 : 0;
    }
    assertThat(equal / (double) series).isCloseTo(0.05, within(0.006));
  }

  @Test
  void moreEqualReadingsBoundTheScatterTighterAndInProportionToTheStep() {
    double few = ScatterBounds.ofEqualReadings(1, 5, 0.95).upperOneSided();
    double many = ScatterBounds.ofEqualReadings(1, 50, 0.95).upperOneSided();
    assertThat(many).isLessThan(few);
    assertThat(ScatterBounds.ofEqualReadings(3, 5, 0.95).upperOneSided())
        .isCloseTo(3 * few, within(1e-12));
  }

  @Test
  void slipsOfUnitsAreKnownByTheirFactor() {
    assertThat(UnitSlip.between(1210, 1.2, 0)).contains(UnitSlip.THOUSAND);
    assertThat(UnitSlip.between(0.0012, 1.2, 0)).contains(UnitSlip.THOUSAND);
    assertThat(UnitSlip.between(-0.5, -12.7, 0)).contains(UnitSlip.INCH);
    assertThat(UnitSlip.between(12, 1.2, 0)).contains(UnitSlip.TEN);
    assertThat(UnitSlip.between(3, 1.2, 0)).isEmpty();
    assertThat(UnitSlip.between(0.00013, 0.118, 0)).isEmpty();
    assertThat(UnitSlip.between(0.00013, 0.118, 0.006)).contains(UnitSlip.THOUSAND);
    assertThat(UnitSlip.between(0, 1.2, 0)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "1049, 1, 0, THOUSAND",
    "1051, 1, 0, ''",
    "951, 1, 0, THOUSAND",
    "949, 1, 0, ''",
    "0.00104, 1, 0, THOUSAND",
    "0.00106, 1, 0, ''",
    "26.6, 1, 0, INCH",
    "26.7, 1, 0, ''",
    "-1089, -1, 0.05, THOUSAND",
    "-1111, -1, 0.05, ''",
    "1190, 1, 9, THOUSAND",
    "1210, 1, 9, ''",
    "2080, 2, 0.1, THOUSAND",
    "2220, 2, 0.1, ''",
    "9.6, 1, 0, TEN",
    "5, 0, 1, ''",
    "-1000, 1, 0, ''",
  })
  void aSlipIsSeenWithinFivePercentOrTwiceTheScatterUpToAFifth(
      double reading, double usual, double scatter, String slip) {
    assertThat(UnitSlip.between(reading, usual, scatter).map(UnitSlip::name).orElse(""))
        .isEqualTo(slip);
  }

  @Test
  void everySlipHasWordsOfItsOwn() {
    assertThat(Arrays.stream(UnitSlip.values()).map(UnitSlip::words))
        .doesNotHaveDuplicates()
        .allSatisfy(w -> assertThat(w).isNotBlank());
  }

  @Test
  void whatTheGaugeAddsIsTakenFromTheSquares() {
    GaugeNoise g = new GaugeNoise(1, 10, 0.6, 1);
    assertThat(g.mount().orElseThrow()).isCloseTo(0.8, within(1e-12));
    assertThat(g.isCoarse()).isFalse();
    assertThat(new GaugeNoise(1, 10, 0.6, 1.01).isCoarse()).isTrue();
    // upper bound of ten mounts 1.645198
    assertThat(g.mountBelow(0.95)).isCloseTo(Math.sqrt(1.645198 * 1.645198 - 0.36), within(1e-6));
    assertThat(new GaugeNoise(1, 10, 1.2, 0).mountBelow(0.95)).isEqualTo(1.2);
    assertThat(new GaugeNoise(1, 10, 1.1, 0).mountBelow(0.95))
        .isCloseTo(Math.sqrt(1.645198 * 1.645198 - 1.21), within(1e-6));
    assertThat(new GaugeNoise(1, 10, 9, 0).mountBelow(0.95)).isEqualTo(9);
    assertThat(new GaugeNoise(1, 10, 1, 0).mount()).isEmpty();
  }

  @Test
  void theStepIsTheLargestThatDividesEveryDifference() {
    double[] y = {0.5, 0.2, 1.1, 0.8, 0.2, 1.7, 0.5, 0.5};
    assertThat(GaugeNoise.stepOf(y, 0.01).orElseThrow()).isCloseTo(0.3, within(1e-9));
    assertThat(y[0]).isEqualTo(0.5);
    assertThat(GaugeNoise.stepOf(Arrays.copyOf(y, 7), 0.01)).isEmpty();
    assertThat(GaugeNoise.stepOf(y, 0.31)).isEmpty();
    assertThat(GaugeNoise.stepOf(y, 0.29)).isPresent();
    // 0.4 and 0.6 have 0.2 in common, found only together
    double[] two = {0, 0.4, 1, 1.4, 2, 2.4, 3, 3.4};
    assertThat(GaugeNoise.stepOf(two, 0.01).orElseThrow()).isCloseTo(0.2, within(1e-9));
    // differences that rounding of the file makes are none
    double[] near = {0, 0.4, 0.4 + 1e-7, 0.8, 1.2, 1.6, 2, 2.4};
    assertThat(GaugeNoise.stepOf(near, 0.01).orElseThrow()).isCloseTo(0.4, within(1e-6));
    assertThat(GaugeNoise.stepOf(new double[0], 0.01)).isEmpty();
  }
}
