package reseat.preload;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class HelicalSpringTest extends PreloadContract {

  private static HelicalSpring spring(double wire, double deflection, double strength) {
    return new HelicalSpring(
        wire, 16e-3, 6, 8, 40e-3, deflection, 0.1e-3, 79.3e9, 0.1, -2.5e-4, strength);
  }

  @Override
  Stream<PreloadDevice> cases() {
    return Stream.of(spring(2e-3, 10e-3, 800e6), spring(2.5e-3, 15e-3, 800e6));
  }

  @Override
  String visitorMethod() {
    return "helicalSpring";
  }

  @Test
  void rateAndStressOfASpringOfIndexEight() {
    // CV-128, computed independently: G = 79300 MPa, d = 2, D = 16 mm, n = 6.
    HelicalSpring spring = spring(2e-3, 10e-3, 800e6);
    assertThat(spring.rate() / 1e3).isCloseTo(6.4534505, within(5e-8));
    assertThat(spring.wahlFactor()).isCloseTo(1.1840179, within(5e-8));
    assertThat(spring.shearStress(100) / 1e6).isCloseTo(603.0153, within(5e-5));
  }

  @Test
  void aSpringStressedPastItsWireIsCautionedAgainst() {
    assertThat(spring(2e-3, 18e-3, 600e6).cautions()).contains(DeviceCaution.OVERSTRESSED);
    assertThat(spring(2e-3, 10e-3, 600e6).cautions()).doesNotContain(DeviceCaution.OVERSTRESSED);
  }

  @Test
  void aSpringShorterThanItsCoilsIsRefused() {
    assertThat(spring(2e-3, 10e-3, 800e6).solidLength()).isCloseTo(16e-3, within(1e-15));
    assertThatThrownBy(() -> spring(2e-3, 25e-3, 800e6)).hasMessageContaining("solid length");
    assertThatThrownBy(() -> spring(12e-3, 1e-3, 800e6)).hasMessageContaining("wire diameters");
    assertThat(spring(2e-3, 10e-3, 800e6).settingFor(200)).isEmpty();
  }

  @Test
  void coarserSettingScattersMoreOnAStifferSpring() {
    assertThat(spring(2e-3, 10e-3, 800e6).scatter().halfRange()).isCloseTo(0.01, within(1e-12));
  }
}
