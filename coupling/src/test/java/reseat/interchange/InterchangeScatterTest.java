package reseat.interchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import reseat.numerics.RandomStream;
import reseat.space.Vec3;

class InterchangeScatterTest {

  private static final Vec3 SELF = new Vec3(0.3e-6, 0.4e-6, 0.2e-6);
  private static final Vec3 TABLE = new Vec3(1e-6, 0.5e-6, 2e-6);

  private static InterchangeScatter scatter() {
    return InterchangeScatter.of(
        new LinearStack(Sensitivity.of(ToleranceModel.of(TolerancedCouplings.toolPost()))),
        SELF,
        TABLE);
  }

  @Test
  void theThreeWordsAreKeptApart() {
    InterchangeScatter s = scatter();
    for (int k = 0; k < 3; k++) {
      double self = SELF.component(k);
      double occasion = s.occasion().component(k);
      double own = s.holderOwn().component(k);
      double post = s.postOwn().component(k);
      assertThat(s.withTable().component(k))
          .isCloseTo(
              Math.sqrt(Math.pow(TABLE.component(k), 2) + occasion * occasion + self * self),
              within(1e-18));
      assertThat(s.withoutTable().component(k))
          .isCloseTo(Math.sqrt(own * own + occasion * occasion + self * self), within(1e-18));
      assertThat(s.againstDrawing().component(k))
          .isCloseTo(Math.hypot(s.withoutTable().component(k), post), within(1e-18));
      assertThat(s.withTable().component(k)).isGreaterThanOrEqualTo(self);
    }
  }

  @Test
  void anOffsetTableCannotBeBetterThanTheMountItself() {
    InterchangeScatter s =
        new InterchangeScatter(SELF, Vec3.ZERO, Vec3.ZERO, new Vec3(1, 1, 1), Vec3.ZERO);
    assertThat(s.withTable().distanceTo(SELF)).isLessThan(1e-20);
  }

  @Test
  void theMeanRangeOfAFewIsTheControlChartConstant() {
    // d2 of control charts as recalled from memory (1.128, 2.326, 3.078), confirmed by integration
    assertThat(InterchangeScatter.expectedRange(2)).isCloseTo(2 / Math.sqrt(Math.PI), within(1e-9));
    assertThat(InterchangeScatter.expectedRange(5)).isCloseTo(2.326, within(5e-4));
    assertThat(InterchangeScatter.expectedRange(10)).isCloseTo(3.078, within(5e-4));
    RandomStream r = RandomStream.of(3, 3);
    double sum = 0;
    for (int i = 0; i < 20_000; i++) {
      double least = Double.POSITIVE_INFINITY;
      double greatest = Double.NEGATIVE_INFINITY;
      for (int k = 0; k < 5; k++) {
        double x = r.normal();
        least = Math.min(least, x);
        greatest = Math.max(greatest, x);
      }
      sum += (greatest - least) / 20_000;
    }
    // four standard errors: the range of five has standard deviation 0.864
    assertThat(sum).isCloseTo(2.326, within(4 * 0.864 / Math.sqrt(20_000)));
  }

  @Test
  void negativeScatterIsRefused() {
    assertThatThrownBy(
            () ->
                new InterchangeScatter(
                    new Vec3(0, -1e-6, 0), Vec3.ZERO, Vec3.ZERO, Vec3.ZERO, Vec3.ZERO))
        .hasMessageContaining("repeatability")
        .hasMessageContaining("negative");
    assertThatThrownBy(() -> InterchangeScatter.expectedRange(1)).hasMessageContaining("found 1");
  }
}
