package reseat.check;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import reseat.design.Targets.AxisLimits;
import reseat.space.Vec3;

/** Which machine axis is worst off. */
class WorstAxisTest {

  private static final double NONE = Double.POSITIVE_INFINITY;

  @Test
  void theAxisThatUsesMostOfItsTargetIsWorst() {
    AxisLimits limits = new AxisLimits(1, 2, 4);
    assertThat(WorstAxis.of(new Vec3(-0.6, 1, 1), limits)).isZero();
    assertThat(WorstAxis.of(new Vec3(0.4, -1, 1), limits)).isEqualTo(1);
    assertThat(WorstAxis.of(new Vec3(0.4, 1, -3), limits)).isEqualTo(2);
    assertThat(WorstAxis.of(Vec3.ZERO, limits)).isZero();
  }

  @Test
  void anAxisWithoutTargetIsNotAskedUnlessNoneHasOne() {
    assertThat(WorstAxis.of(new Vec3(9, 0.1, 9), new AxisLimits(NONE, 1, NONE))).isEqualTo(1);
    assertThat(WorstAxis.of(new Vec3(9, 0, 0), new AxisLimits(NONE, NONE, 1))).isEqualTo(2);
    assertThat(WorstAxis.of(new Vec3(1, -3, 2), AxisLimits.NONE)).isEqualTo(1);
    assertThat(WorstAxis.of(new Vec3(1, 2, -3), AxisLimits.NONE)).isEqualTo(2);
    assertThat(WorstAxis.of(new Vec3(-3, 2, 1), AxisLimits.NONE)).isZero();
  }

  @Test
  void ofAxesThatMoveAlikeTheFirstIsNamed() {
    assertThat(WorstAxis.of(new Vec3(2, -2, 2), AxisLimits.NONE)).isZero();
  }
}
