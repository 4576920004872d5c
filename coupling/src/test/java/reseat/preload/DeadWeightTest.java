package reseat.preload;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class DeadWeightTest extends PreloadContract {

  private static final DeadWeight TEN_KILOGRAMS =
      new DeadWeight(10, DeadWeight.STANDARD_GRAVITY, 0.5);

  @Override
  Stream<PreloadDevice> cases() {
    return Stream.of(TEN_KILOGRAMS, new DeadWeight(2, 6.9, 0));
  }

  @Override
  String visitorMethod() {
    return "deadWeight";
  }

  @Test
  void tenKilogramsPressWith98Newtons() {
    assertThat(TEN_KILOGRAMS.nominalForce()).isCloseTo(98.0665, within(1e-12));
    assertThat(TEN_KILOGRAMS.storedEnergy()).isCloseTo(49.03325, within(1e-12));
    BenchSetting setting = TEN_KILOGRAMS.settingFor(49.03325).orElseThrow();
    assertThat(setting.kind()).isEqualTo(BenchSetting.Kind.MASS);
    assertThat(setting.value()).isCloseTo(5.0, within(1e-14));
  }
}
