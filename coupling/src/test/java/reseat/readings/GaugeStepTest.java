package reseat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

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
}
