package reseat.space;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import reseat.numerics.RandomStream;

class Vec3Test {

  @Test
  void theVectorProductIsRightHanded() {
    assertThat(Vec3.X.cross(Vec3.Y)).isEqualTo(Vec3.Z);
    assertThat(Vec3.Y.cross(Vec3.Z)).isEqualTo(Vec3.X);
  }

  @Test
  void whatIsRejectedFromADirectionStandsAcrossIt() {
    RandomStream draw = RandomStream.of(20260114, 0);
    for (int i = 0; i < 100; i++) {
      Vec3 d = RandomDirection.of(draw);
      Vec3 v = RandomDirection.of(draw).times(5);
      assertThat(v.rejectedFrom(d).dot(d)).isCloseTo(0, within(1e-14));
      assertThat(v.anyPerpendicular().dot(v)).isCloseTo(0, within(1e-14));
      assertThat(v.anyPerpendicular().norm()).isCloseTo(1, within(1e-14));
    }
  }

  @Test
  void azimuthRunsFromXTowardY() {
    assertThat(Vec3.atAzimuth(Math.toRadians(90)).distanceTo(Vec3.Y)).isLessThan(1e-15);
  }

  @Test
  void componentsAreNumberedAndFinite() {
    assertThat(new Vec3(1, 2, 3).component(2)).isEqualTo(3);
    assertThatThrownBy(() -> Vec3.X.component(3)).hasMessageContaining("found 3");
    assertThatThrownBy(() -> new Vec3(0, Double.NaN, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("finite");
    assertThatThrownBy(() -> Vec3.ZERO.unit()).hasMessageContaining("no direction");
  }
}
