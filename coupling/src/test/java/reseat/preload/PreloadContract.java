package reseat.preload;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What every preload device must satisfy; each kind supplies devices to try it on. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class PreloadContract {

  private static final double RELATIVE = 1e-9;

  /** Devices of the kind under test. */
  abstract Stream<PreloadDevice> cases();

  /** Name of the visitor's method that must be called. */
  abstract String visitorMethod();

  @ParameterizedTest
  @MethodSource("cases")
  void pullsTheHalvesTogetherWithAFiniteForce(PreloadDevice device) {
    assertThat(device.nominalForce()).isPositive().isFinite();
    assertThat(device.force(0)).isEqualTo(device.nominalForce());
  }

  @ParameterizedTest
  @MethodSource("cases")
  void stiffnessIsTheDerivativeOfForceByOpening(PreloadDevice device) {
    double h = 1e-7;
    double difference = (device.force(h) - device.force(-h)) / (2 * h);
    assertThat(device.axialStiffness())
        .isCloseTo(difference, within(1e-5 * Math.abs(difference) + 1e-3));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void scatterAndAccuracyAreSharesWithAStatedBasis(PreloadDevice device) {
    assertThat(device.scatter().halfRange()).isBetween(0.0, 1.0);
    assertThat(device.scatter().basis()).isNotBlank();
    assertThat(device.accuracy().halfRange()).isBetween(0.0, 1.0);
    assertThat(device.accuracy().basis()).isNotBlank();
    assertThat(device.relativeChangePerKelvin()).isFinite();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void storedEnergyIsNotNegativeAndCautionsAreSentences(PreloadDevice device) {
    assertThat(device.storedEnergy()).isNotNegative().isFinite();
    assertThat(device.cautions()).doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void settingForTheNominalForceIsTheSettingItHas(PreloadDevice device) {
    PreloadDevice again = device.setTo(device.nominalForce()).orElseThrow();
    assertThat(again.nominalForce())
        .isCloseTo(device.nominalForce(), within(RELATIVE * device.nominalForce()));
    assertThat(again.axialStiffness())
        .isCloseTo(
            device.axialStiffness(), within(1e-6 * Math.abs(device.axialStiffness()) + 1e-9));
    assertThat(device.settingFor(device.nominalForce())).isPresent();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void whatIsSetAtTheBenchGivesTheForceAskedFor(PreloadDevice device) {
    for (double share : new double[] {0.7, 0.9, 1.05}) {
      double wanted = share * device.nominalForce();
      PreloadDevice set = device.setTo(wanted).orElseThrow();
      assertThat(set.nominalForce()).isCloseTo(wanted, within(RELATIVE * wanted));
      assertThat(set.settingFor(wanted)).isEqualTo(device.settingFor(wanted));
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void theAimKeepsTheForceInsideTheAllowedBandAtBothEndsOfTheScatter(PreloadDevice device) {
    double low = 0.6 * device.nominalForce();
    double high = 1.1 * device.nominalForce();
    double x = device.scatter().halfRange() + device.accuracy().halfRange();
    BenchBand band = device.band(low, high);
    assertThat(band.feasible()).isEqualTo(x <= band.scatterAllowed());
    if (band.feasible()) {
      assertThat(band.aimLow() * (1 - x)).isCloseTo(low, within(RELATIVE * low));
      assertThat(band.aimHigh() * (1 + x)).isCloseTo(high, within(RELATIVE * high));
    } else {
      assertThat(band.settingAtLow()).isEmpty();
      assertThat(band.settingAtHigh()).isEmpty();
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void aBandWithoutWidthIsRefused(PreloadDevice device) {
    assertThatThrownBy(() -> device.band(500, 500))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("no preload meets both limits");
  }

  @ParameterizedTest
  @MethodSource("cases")
  void theVisitorIsTakenToItsOwnKind(PreloadDevice device) {
    assertThat(device.accept(new KindName())).isEqualTo(visitorMethod());
  }

  private static final class KindName implements PreloadDevice.Visitor<String> {

    @Override
    public String plainForce(PlainForce device) {
      return "plainForce";
    }

    @Override
    public String tightenedScrew(TightenedScrew device) {
      return "tightenedScrew";
    }

    @Override
    public String discSpringStack(DiscSpringStack device) {
      return "discSpringStack";
    }

    @Override
    public String helicalSpring(HelicalSpring device) {
      return "helicalSpring";
    }

    @Override
    public String magnetPair(MagnetPair device) {
      return "magnetPair";
    }

    @Override
    public String deadWeight(DeadWeight device) {
      return "deadWeight";
    }

    @Override
    public String airCylinder(AirCylinder device) {
      return "airCylinder";
    }
  }
}
