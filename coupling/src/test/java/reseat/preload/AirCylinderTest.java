package reseat.preload;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class AirCylinderTest extends PreloadContract {

  private static final AirCylinder CYLINDER = new AirCylinder(40e-3, 12e-3, 0.5e6, 0.02, 15, 10e-3);

  @Override
  Stream<PreloadDevice> cases() {
    return Stream.of(CYLINDER, new AirCylinder(25e-3, 0, 0.4e6, 0, 0, 0));
  }

  @Override
  String visitorMethod() {
    return "airCylinder";
  }

  @Test
  void forceIsPressureOverTheRingLeftByTheRod() {
    double area = Math.PI / 4 * (40e-3 * 40e-3 - 12e-3 * 12e-3);
    assertThat(CYLINDER.nominalForce()).isCloseTo(0.5e6 * area, within(1e-9));
    assertThat(CYLINDER.scatter().halfRange())
        .isCloseTo(0.02 + 15 / CYLINDER.nominalForce(), within(1e-15));
  }

  @Test
  void aRodThickerThanTheBoreIsRefused() {
    assertThatThrownBy(() -> new AirCylinder(40e-3, 41e-3, 1e5, 0, 0, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("not thinner than its bore");
  }
}
