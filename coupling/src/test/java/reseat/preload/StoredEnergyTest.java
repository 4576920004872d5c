package reseat.preload;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import reseat.ballmount.ScrewThread;

/** Energy a device holds is the work its force does until it has let go; and what it warns of. */
class StoredEnergyTest {

  private static double work(PreloadDevice device, double travel) {
    int steps = 2000;
    double sum = 0;
    for (int i = 0; i < steps; i++) {
      sum += device.force(-(i + 0.5) * travel / steps) * travel / steps;
    }
    return sum;
  }

  private static void holds(PreloadDevice device, double travel) {
    double expected = work(device, travel);
    assertThat(device.storedEnergy()).isCloseTo(expected, within(1e-6 * expected));
    // and its stiffness is how its force rises as the joint opens and strains it further
    double h = 1e-4 * travel;
    double slope = (device.force(h) - device.force(0)) / h;
    assertThat(device.axialStiffness()).isCloseTo(slope, within(1e-3 * Math.abs(slope) + 1e-9));
  }

  @Test
  void aHelicalSpringGivesBackWhatItWasCompressedBy() {
    HelicalSpring spring =
        new HelicalSpring(2e-3, 16e-3, 6, 8, 40e-3, 10e-3, 0.1e-3, 79.3e9, 0.05, -2.4e-4, 800e6);
    holds(spring, 10e-3);
    assertThat(spring.relativeChangePerKelvin()).isEqualTo(-2.4e-4);
    assertThat(spring.cautions()).contains(DeviceCaution.STORED_SPRING_ENERGY);
    // solid at 16 mm: 24 mm of travel at most, 6.45 N/mm
    double most = spring.rate() * 0.024;
    assertThat(spring.settingFor(0.999 * most)).isPresent();
    assertThat(spring.settingFor(1.001 * most)).isEmpty();
    assertThat(spring.settingFor(-1)).isEmpty();
    assertThat(spring.settingFor(100).orElseThrow().value())
        .isCloseTo(100 / spring.rate(), within(1e-12));
  }

  @Test
  void anAirCylinderPushesAlikeOverItsStroke() {
    AirCylinder air = new AirCylinder(25e-3, 10e-3, 5e5, 0.02, 3, 8e-3);
    holds(air, 8e-3);
    // annulus of 25 and 10 mm at 5 bar
    assertThat(air.force(0)).isCloseTo(Math.PI / 4 * (625 - 100) * 1e-6 * 5e5, within(1e-9));
    assertThat(air.cautions()).containsExactly(DeviceCaution.PRESSURE_LOSS);
    assertThat(air.settingFor(air.force(0)).orElseThrow().value()).isCloseTo(5e5, within(1e-6));
    assertThat(air.settingFor(air.force(0)).orElseThrow().kind())
        .isEqualTo(BenchSetting.Kind.PRESSURE);
  }

  @Test
  void aScrewIsAStiffSpring() {
    ScrewThread thread = ScrewThread.parse("M8x1.25");
    TightenedScrew screw =
        new TightenedScrew(
            thread,
            TightenedScrew.byNutFactor(thread, 0.2),
            8,
            40e-3,
            205e9,
            0,
            ForceScatter.uniform(0.25, "assumed"));
    double force = screw.force(0);
    assertThat(force).isCloseTo(8 / (0.2 * 8e-3), within(1e-6));
    assertThat(screw.axialStiffness()).isCloseTo(205e9 * thread.stressArea() / 40e-3, within(1e-3));
    assertThat(screw.storedEnergy())
        .isCloseTo(force * force / 2 / screw.axialStiffness(), within(1e-12));
    assertThat(screw.cautions())
        .contains(DeviceCaution.SCREW_LOCATES, DeviceCaution.TORQUE_IS_LOOSE);
  }

  @Test
  void aWeightHoldsWhatItMayFall() {
    DeadWeight weight = new DeadWeight(20, DeadWeight.STANDARD_GRAVITY, 0.05);
    holds(weight, 0.05);
    assertThat(weight.cautions()).containsExactly(DeviceCaution.FALLING_WEIGHT);
  }

  @Test
  void magnetsWarnOfFingersAndOfTouching() {
    MagnetPair pair =
        new MagnetPair(
            MagnetPair.Counterpart.EQUAL_MAGNET,
            6e-3,
            5e-3,
            1.2,
            0.4e-3,
            0.05e-3,
            0.03,
            MagnetPair.NEODYMIUM_PER_KELVIN);
    assertThat(pair.cautions())
        .containsExactly(DeviceCaution.MAGNET_PINCH, DeviceCaution.MAGNET_NEVER_TOUCHES);
    double h = 1e-8;
    assertThat(pair.axialStiffness())
        .isCloseTo(
            (pair.force(h) - pair.force(-h)) / (2 * h),
            within(1e-4 * Math.abs(pair.axialStiffness())));
    // what is asked for is found again, closer than touching and farther than it reaches is not
    assertThat(pair.setTo(0.8 * pair.force(0)).orElseThrow().force(0))
        .isCloseTo(0.8 * pair.force(0), within(1e-6));
    assertThat(pair.setTo(1.001 * pair.touchingForce())).isEmpty();
    assertThat(pair.setTo(-1)).isEmpty();
  }

  @Test
  void aStackOfDiscsSharesItsTravelAmongThem() {
    DiscSpring disc = DiscSpring.ofSteel(16e-3, 8.2e-3, 0.9e-3, 1.25e-3);
    DiscSpringStack stack = new DiscSpringStack(disc, 1, 8, 1.6e-3, 0.01e-3, 0, 0.05, -2.5e-4);
    assertThat(stack.usedTravel()).isCloseTo(0.2e-3 / disc.flatTravel(), within(1e-12));
    holds(stack, 1.6e-3);
    assertThat(stack.relativeChangePerKelvin()).isEqualTo(-2.5e-4);
  }

  @Test
  void aSettingIsToldWithItsQuantityAndUnit() {
    for (BenchSetting.Kind kind : BenchSetting.Kind.values()) {
      BenchSetting setting = new BenchSetting(kind, 1);
      assertThat(setting.inBothUnits()).startsWith(kind.label() + " ").containsPattern("\\d");
      assertThat(kind.unit()).isNotBlank();
      assertThat(kind.quantity()).isNotNull();
    }
    assertThat(new BenchSetting(BenchSetting.Kind.PRESSURE, 5e5).inBothUnits()).contains("Pa");
    assertThat(new BenchSetting(BenchSetting.Kind.GAP, 2.10351e-3).inBothUnits())
        .isEqualTo("gap 2.10 mm (0.0828 in)");
  }
}
