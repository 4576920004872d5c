package reseat.preload;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import reseat.ballmount.ScrewThread;
import reseat.ballmount.ThreadTorque;

class TightenedScrewTest extends PreloadContract {

  private static final ScrewThread M6 = ScrewThread.parse("M6");

  private static TightenedScrew byNutFactor(double torque) {
    return new TightenedScrew(
        M6,
        TightenedScrew.byNutFactor(M6, 0.2),
        torque,
        25e-3,
        206e9,
        0,
        TighteningMethod.TORQUE_FROM_ESTIMATED_FRICTION.scatter());
  }

  @Override
  Stream<PreloadDevice> cases() {
    ScrewThread fine = ScrewThread.parse("5/16-24");
    return Stream.of(
        byNutFactor(2.4),
        new TightenedScrew(
            fine,
            TightenedScrew.byFriction(new ThreadTorque(fine, 0.15, 0.12, 11e-3)),
            0.9,
            40e-3,
            200e9,
            5e-6,
            ForceScatter.uniform(0.30, "stated")));
  }

  @Override
  String visitorMethod() {
    return "tightenedScrew";
  }

  @Test
  void twoPointFourNewtonMetresPreloadAnM6WithTwoKilonewtons() {
    // CV-117, computed independently: T = K d F with K = 0.2.
    assertThat(byNutFactor(2.4).nominalForce()).isCloseTo(2000, within(1e-9));
  }

  @Test
  void anM6Of88At75PercentOfProofNeedsTenNewtonMetres() {
    // CV-118, computed independently: F = 0.75 x 580 MPa x As = 8753.67 N, T = 10.504 N m. The
    // proof stress of property class 8.8 is recalled from memory.
    double force = 0.75 * 580e6 * M6.stressArea();
    assertThat(force).isCloseTo(8753.67, within(0.01));
    BenchSetting setting = byNutFactor(1).settingFor(force).orElseThrow();
    assertThat(setting.kind()).isEqualTo(BenchSetting.Kind.TORQUE);
    assertThat(setting.value()).isCloseTo(10.504, within(5e-4));
  }

  @Test
  void scatterOf25And30PercentAsTighteningFactors() {
    // CV-119, computed independently: alpha_A = (1 + x)/(1 - x).
    assertThat(ForceScatter.uniform(0.25, "seen").largestOverSmallest())
        .isCloseTo(1.6667, within(5e-5));
    assertThat(ForceScatter.uniform(0.30, "seen").largestOverSmallest())
        .isCloseTo(1.8571, within(5e-5));
  }

  @Test
  void scatterOfTheTighteningMethodsIsTheWideEndOfTheTable() {
    // Table of VDI 2230 (1986), read in a fastener maker's reproduction.
    assertThat(TighteningMethod.TORQUE_FOUND_BY_TRIAL.scatter().halfRange()).isEqualTo(0.23);
    assertThat(TighteningMethod.TORQUE_FROM_ESTIMATED_FRICTION.scatter().halfRange())
        .isEqualTo(0.28);
    assertThat(TighteningMethod.POWER_SCREWDRIVER.scatter().halfRange()).isEqualTo(0.43);
    assertThat(TighteningMethod.YIELD_OR_ANGLE.scatter().halfRange()).isEqualTo(0.12);
    assertThat(TighteningMethod.HYDRAULIC.scatter().halfRange()).isEqualTo(0.23);
  }

  @Test
  void smallPreloadsOnAnM8AreFingerTight() {
    // 600 N on a 5/16 in or M8 screw is 0.5 to 1.3 N m over the published range of nut factors.
    ScrewThread m8 = ScrewThread.parse("M8");
    assertThat(TightenedScrew.byNutFactor(m8, 0.10) * 600).isCloseTo(0.48, within(0.03));
    assertThat(TightenedScrew.byNutFactor(m8, 0.27) * 600).isCloseTo(1.3, within(0.03));
  }

  @Test
  void aScrewThatGrowsMoreThanWhatItClampsLosesForce() {
    TightenedScrew screw =
        new TightenedScrew(M6, 1.2e-3, 2.4, 25e-3, 206e9, 5e-6, ForceScatter.NONE);
    double lossPerKelvin = 5e-6 * 25e-3 * screw.axialStiffness();
    assertThat(screw.relativeChangePerKelvin() * screw.nominalForce())
        .isCloseTo(-lossPerKelvin, within(1e-9));
    assertThat(screw.stress()).isCloseTo(2000 / M6.stressArea(), within(1e-3));
  }
}
