package reseat.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class RunningHistogramTest {

  @Test
  void aBandOfNormalNumbersIsReadToAPartOfTheirDeviation() {
    RunningHistogram whole = new RunningHistogram(3, 0.5);
    RunningHistogram first = new RunningHistogram(3, 0.5);
    RunningHistogram second = new RunningHistogram(3, 0.5);
    RandomStream r = RandomStream.of(41, 0);
    for (int i = 0; i < 200_000; i++) {
      double x = r.normal(3, 0.5);
      whole.add(x);
      (i % 3 == 0 ? first : second).add(x);
    }
    // 1.959964 standard deviations; the sampling error of the band is 0.005 of one
    assertThat(whole.halfWidth(3, 0.95)).isCloseTo(0.5 * 1.959964, within(0.01));
    first.merge(second);
    assertThat(first.halfWidth(3, 0.95)).isEqualTo(whole.halfWidth(3, 0.95));
  }

  @Test
  void aQuantityThatStandsStillHasNoBand() {
    RunningHistogram h = new RunningHistogram(1, 0);
    h.add(1);
    h.add(1);
    assertThat(h.halfWidth(1, 0.95)).isZero();
  }

  @Test
  void valuesBeyondTheBinsAreStillCounted() {
    RunningHistogram h = new RunningHistogram(0, 1);
    for (int i = 0; i < 90; i++) {
      h.add(0);
    }
    for (int i = 0; i < 10; i++) {
      h.add(1e6);
    }
    assertThat(h.halfWidth(0, 0.95)).isGreaterThan(11);
  }
}
