package reseat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.distribution.FDistribution;
import org.junit.jupiter.api.Test;

/**
 * Variances within and between holders, against published analyses of variance.
 *
 * <p>Sources: NIST statistical reference data set SiRstv (certified: between mean square
 * 0.0127865654, within 0.01083182800, F 1.18046237440224; recalled from memory, confirmed by
 * computation); NIST/SEMATECH e-Handbook, gear data (F 2.2969, Bartlett 20.7858; recalled from
 * memory, confirmed by computation). The terms of ISO 5725 are recalled from memory.
 */
class HoldersValidationTest {

  @Test
  void threeHoldersOfFourMountsMatch() {
    // Computed independently from the stated formulas.
    BetweenHolders b =
        BetweenHolders.of(
            HandbookData.groupNames(3, 4),
            new double[] {10.2, 10.4, 10.1, 10.3, 10.6, 10.5, 10.8, 10.7, 10.0, 10.1, 9.9, 10.2});
    assertThat(b.repeatability()).isCloseTo(0.1290994449, within(1e-10));
    assertThat(b.interchangeability()).isCloseTo(0.2986078811, within(1e-10));
    assertThat(b.overall()).isCloseTo(0.3253203549, within(1e-10));
    assertThat(2.8 * b.repeatability()).isCloseTo(0.3614784456, within(1e-10));
    assertThat(BetweenHolders.DIFFERENCE_MULTIPLIER).isCloseTo(2.7718585823, within(1e-10));
  }

  @Test
  void siliconResistivityGivesTheCertifiedF() {
    BetweenHolders b =
        BetweenHolders.of(HandbookData.groupNames(5, 5), HandbookData.SILICON.toArray());
    assertThat(b.between() / b.within()).isCloseTo(1.18046237440224, within(1e-10));
    assertThat(b.between()).isCloseTo(0.0127865654, within(1e-10));
    assertThat(b.within()).isCloseTo(0.010831828, within(1e-10));
    assertThat(b.chanceThatAlike()).isCloseTo(0.3494475, within(1e-7));
  }

  @Test
  void gearBatchesGiveThePrintedFAndBartlettStatistic() {
    BetweenHolders b =
        BetweenHolders.of(HandbookData.groupNames(10, 10), HandbookData.GEAR.toArray());
    assertThat(b.between() / b.within()).isCloseTo(2.2969, within(5e-5));
    assertThat(b.chanceThatAlike()).isCloseTo(0.0227, within(5e-5));
    assertThat(b.bartlett()).isCloseTo(20.7858, within(2e-4));
    assertThat(b.chanceOfOneScatter()).isCloseTo(0.0136, within(5e-5));
  }

  @Test
  void quantilesOfTheVarianceRatioMatch() {
    // Computed independently; 9 and 9 degrees of freedom.
    FDistribution f = new FDistribution(null, 9, 9, 1e-12);
    assertThat(f.inverseCumulativeProbability(0.95)).isCloseTo(3.1788931, within(1e-7));
    assertThat(f.inverseCumulativeProbability(0.975)).isCloseTo(4.0259942, within(1e-7));
    // A measured scatter that high above the predicted one lies exactly at the edge of 5 %.
    double edge = Math.sqrt(4.0259942);
    PredictionTest t = PredictionTest.of("X", new Repeatability(10, 0, edge, -1, 1), 1, 10, 0.95);
    assertThat(t.p()).isCloseTo(0.05, within(1e-7));
    assertThat(t.ratioLow()).isCloseTo(1, within(1e-7));
  }
}
