package reseat.ballmount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import reseat.material.ElasticConstants;

/**
 * A round cantilever, computed independently from {@code 3EI/L³}, {@code kappa G A/L}, {@code EA/L}
 * and {@code 32 F L/(pi d³)} (CV-167): E = 200 GPa, nu = 0.3, d = 6 mm, L = 12 mm.
 */
class BallStudValidationTest {

  private static final ElasticConstants STEEL = new ElasticConstants(200e9, 0.3);
  private static final BallStud STUD = BallStud.plain(6e-3, 12e-3, STEEL, RootFixing.RIGID);

  @Test
  void lateralStiffnessWithBendingAndShear() {
    assertThat(STUD.compliance().lateralStiffness() * 1e-6).isCloseTo(19.4548, within(5e-5));
  }

  @Test
  void bendingAloneAndShearAlone() {
    // A stud a thousand times as stiff in shear leaves bending alone, and the difference is shear.
    double inertia = Math.PI / 64 * Math.pow(6e-3, 4);
    assertThat(inertia * 1e12).isCloseTo(63.61725, within(5e-6));
    double bending = Math.pow(12e-3, 3) / (3 * 200e9 * inertia);
    assertThat(1 / bending * 1e-6).isCloseTo(22.0893, within(5e-5));
    double shear = STUD.compliance().lateral() - bending;
    assertThat(1 / shear * 1e-6).isCloseTo(163.1212, within(5e-5));
  }

  @Test
  void axialStiffness() {
    assertThat(STUD.compliance().axialStiffness() * 1e-6).isCloseTo(471.2389, within(5e-5));
  }

  @Test
  void bendingStressUnderAHundredNewtons() {
    assertThat(STUD.bendingStress(100) * 1e-6).isCloseTo(56.588, within(5e-4));
  }

  @Test
  void suchAStudIsSofterThanTheContactItCarries() {
    // A 12.7 mm steel ball on a flat under 100 N has 36.54591840 N/um (computed independently).
    assertThat(STUD.compliance().lateralStiffness()).isLessThan(36.5459184e6);
    double give = STUD.compliance().lateral();
    assertThat(give / (give + 1 / 36.5459184e6)).isCloseTo(0.6526, within(1e-4));
  }
}
