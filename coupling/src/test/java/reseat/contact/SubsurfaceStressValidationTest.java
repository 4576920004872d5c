package reseat.contact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SubsurfaceStressValidationTest {

  /**
   * Computed independently: two-dimensional quadrature of Boussinesq's point-load stresses over the
   * elliptical pressure (mpmath, 12 digits).
   */
  @ParameterizedTest
  @CsvSource({
    "0.2, 0.30, 0.74, -0.292123089353, -0.152226501789, -0.795180259218",
    "0.4, 0.22, 0.50, -0.276263892973, -0.21740057901, -0.877058019307",
    "0.1, 0.14, 0.20, -0.285389354362, -0.59653883733, -0.980384618371",
    "0.7, 0.30, 1.30, -0.0314626393867, -0.00901149654774, -0.450945321643"
  })
  void stressesOnTheAxisAgreeWithQuadratureOfPointLoads(
      double aspect, double nu, double z, double x, double y, double n) {
    AxialStress s = SubsurfaceStress.of(aspect, nu).at(z);
    assertThat(s.alongMajor()).isCloseTo(x, within(1e-11));
    assertThat(s.alongMinor()).isCloseTo(y, within(1e-11));
    assertThat(s.normal()).isCloseTo(n, within(1e-11));
  }

  /** Closed form for the circle: Johnson, Contact Mechanics, eq. 3.45 (recalled, not read). */
  @ParameterizedTest
  @ValueSource(doubles = {0.01, 0.2, 0.48, 1, 3})
  void circleIsTheLimitOfTheEllipse(double z) {
    double nu = 0.3;
    double radial = -(1 + nu) * (1 - z * Math.atan(1 / z)) + 1 / (2 * (1 + z * z));
    for (double aspect : new double[] {1, 1 - 1e-12}) {
      AxialStress s = SubsurfaceStress.of(aspect, nu).at(z);
      assertThat(s.alongMajor()).isCloseTo(radial, within(1e-11));
      assertThat(s.alongMinor()).isCloseTo(radial, within(1e-11));
      assertThat(s.normal()).isCloseTo(-1 / (1 + z * z), within(1e-11));
    }
  }

  @Test
  void stressesAreContinuousAtTheSurface() {
    SubsurfaceStress s = SubsurfaceStress.of(0.3, 0.25);
    assertThat(s.at(1e-7).alongMajor()).isCloseTo(s.at(0).alongMajor(), within(1e-6));
    assertThat(s.at(1e-7).alongMinor()).isCloseTo(s.at(0).alongMinor(), within(1e-6));
  }

  @Test
  void noPointOfTheAxisIsShearedMoreThanTheMaximum() {
    for (double aspect = 0.02; aspect <= 1; aspect += 0.07) {
      for (double nu : new double[] {0, 0.14, 0.22, 0.3, 0.45}) {
        SubsurfaceStress s = SubsurfaceStress.of(aspect, nu);
        double most = 0;
        double misesMost = 0;
        for (double z = 0; z < 3; z += 0.002) {
          most = Math.max(most, s.at(z).maxShear());
          misesMost = Math.max(misesMost, s.at(z).vonMises());
        }
        assertThat(s.maxShear()).isBetween(most, most * (1 + 1e-5));
        assertThat(1 / s.firstYieldVonMises()).isBetween(misesMost, misesMost * (1 + 1e-5));
        assertThat(s.at(s.maxShearDepth()).maxShear()).isCloseTo(s.maxShear(), within(1e-13));
      }
    }
  }

  /** Line contact of a material that does not thin: sx = 0 and sz = -p0, so p0/2 at the surface. */
  @Test
  void longContactOfAMaterialOfSmallPoissonRatioIsShearedMostNearTheSurface() {
    SubsurfaceStress s = SubsurfaceStress.of(1e-4, 0);
    assertThat(s.maxShear()).isCloseTo(0.5, within(1e-4));
    assertThat(s.maxShearDepth()).isLessThan(0.02);
    assertThat(SubsurfaceStress.of(0.05, 0.14).maxShear())
        .isGreaterThan(SubsurfaceStress.of(0.05, 0.3).maxShear());
  }

  @Test
  void trescaAndVonMisesAgreeUnderACircleAndVonMisesIsMilderUnderAnEllipse() {
    SubsurfaceStress circle = SubsurfaceStress.of(1, 0.3);
    assertThat(circle.firstYieldVonMises()).isCloseTo(circle.firstYieldTresca(), within(1e-12));
    SubsurfaceStress ellipse = SubsurfaceStress.of(0.3, 0.3);
    assertThat(ellipse.firstYieldVonMises()).isGreaterThan(ellipse.firstYieldTresca());
  }

  @Test
  void edgeTensionAgreesWithItsUsualFormsAwayFromTheCircle() {
    for (double kc : new double[] {0.03, 0.2, 0.5, 0.9}) {
      double e = Math.sqrt(1 - kc * kc);
      double atanh = Math.log((1 + e) / (1 - e)) / 2;
      EdgeTension t = EdgeTension.of(kc, 0.2);
      assertThat(t.majorEnd()).isCloseTo(0.6 * kc / (e * e) * (atanh / e - 1), within(1e-14));
      assertThat(t.minorEnd())
          .isCloseTo(0.6 * kc / (e * e) * (1 - kc / e * Math.atan(e / kc)), within(1e-14));
      assertThat(t.greatest()).isEqualTo(t.majorEnd());
    }
    assertThat(EdgeTension.of(1, 0.2).majorEnd()).isCloseTo(0.2, within(1e-15));
    assertThat(EdgeTension.of(1 - 1e-9, 0.2).majorEnd()).isCloseTo(0.2, within(1e-8));
  }

  @Test
  void shapesAndRatiosThatCannotBeAreRefused() {
    assertThatThrownBy(() -> SubsurfaceStress.of(1.2, 0.3)).hasMessageContaining("1.2");
    assertThatThrownBy(() -> SubsurfaceStress.of(0.5, 0.5)).hasMessageContaining("0.5");
    assertThatThrownBy(() -> EdgeTension.of(0, 0.3)).hasMessageContaining("b/a = 0.0");
    assertThatThrownBy(() -> SubsurfaceStress.of(0.5, 0.3).at(-1)).hasMessageContaining("-1");
  }
}
