package reseat.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class RunningBandTest {

  @Test
  void aFewValuesGiveTheExactBand() {
    RunningBand band = new RunningBand();
    for (int i = -10; i <= 10; i++) {
      band.add(3 + i);
    }
    // 95 % of 21 values are 20: all but one of the two that lie 10 off
    assertThat(band.halfWidth(3, 0.95)).isEqualTo(10);
    assertThat(band.halfWidth(3, 0.5)).isEqualTo(5);
    assertThat(new RunningBand().halfWidth(0, 0.95)).isZero();
  }

  @Test
  void manyValuesGiveTheBandOfTheirDistribution() {
    RandomStream luck = RandomStream.of(8, 0);
    RunningBand band = new RunningBand();
    for (int i = 0; i < 200_000; i++) {
      band.add(luck.normal(1e-6, 2e-9));
    }
    // 95 % of a normal distribution lie within 1.959964 standard deviations
    assertThat(band.halfWidth(1e-6, 0.95)).isCloseTo(1.959964 * 2e-9, within(0.02 * 2e-9));
  }

  @Test
  void joiningInOrderIsTheSameAsSeeingAll() {
    RandomStream luck = RandomStream.of(9, 0);
    RunningBand whole = new RunningBand();
    RunningBand joined = new RunningBand();
    for (int batch = 0; batch < 30; batch++) {
      RunningBand part = new RunningBand();
      for (int i = 0; i < 300; i++) {
        double v = luck.normal();
        whole.add(v);
        part.add(v);
      }
      joined.merge(part);
    }
    assertThat(joined.halfWidth(0, 0.95)).isEqualTo(whole.halfWidth(0, 0.95));
  }

  @Test
  void aBandThatKeptNoValuesCannotBeJoined() {
    RunningBand full = new RunningBand();
    for (int i = 0; i < RunningBand.KEPT; i++) {
      full.add(i);
    }
    RunningBand other = new RunningBand();
    assertThatThrownBy(() -> other.merge(full)).isInstanceOf(IllegalArgumentException.class);
  }
}
