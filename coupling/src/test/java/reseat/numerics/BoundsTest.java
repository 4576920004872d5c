package reseat.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class BoundsTest {

  @Test
  void aQuantityWithinItsBoundsIsHandedBack() {
    assertThat(Bounds.positive("gap", 1e-4, "m")).isEqualTo(1e-4);
    assertThat(Bounds.notNegative("friction", 0, "")).isZero();
    assertThat(Bounds.between("angle", 0.5, "rad", 0, 1)).isEqualTo(0.5);
    assertThat(Bounds.fromUpTo("share", 0, "", 0, 1)).isZero();
  }

  @Test
  void aRefusalNamesQuantityValueUnitAndLimit() {
    assertThatThrownBy(() -> Bounds.positive("gap", -2, "m"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("gap is -2.00000 m: it must be positive and finite");
    assertThatThrownBy(() -> Bounds.notNegative("friction", -0.1, ""))
        .hasMessage("friction is -0.100000: it must be zero or positive, and finite");
    assertThatThrownBy(() -> Bounds.between("angle", 1, "rad", 0, 1))
        .hasMessage("angle is 1.00000 rad: it must be between 0.00000 and 1.00000 rad");
    assertThatThrownBy(() -> Bounds.fromUpTo("share", 1, "", 0, 1))
        .hasMessage("share is 1.00000: it must be at least 0.00000 and below 1.00000");
  }

  @Test
  void whatIsNoNumberIsNeverWithinBounds() {
    assertThatThrownBy(() -> Bounds.positive("gap", Double.NaN, "m"))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Bounds.positive("gap", Double.POSITIVE_INFINITY, "m"))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Bounds.between("angle", Double.NaN, "rad", 0, 1))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Bounds.fromUpTo("share", Double.NaN, "", 0, 1))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
