package reseat.contact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.material.ElasticConstants;
import reseat.material.ElasticPair;

/**
 * Dents of a half-inch ball, set against Jackson and Green's and Etsion, Kligerman and Kadin's
 * formulas worked out apart from the program, and against finite elements.
 *
 * <p>The finite-element runs (CalculiX, axisymmetric, elastic-perfectly-plastic, no friction) are
 * independent of any formula of the program; differences are those stated in the theory page.
 */
class DentedContactValidationTest {

  private static DentedContact seat(double modulus, double poisson, double yield) {
    EllipticContact ball =
        EllipticContact.of(
            RelativeCurvature.ballOnPlane(6.35e-3),
            new ElasticPair(
                new ElasticConstants(203.4e9, 0.29), new ElasticConstants(modulus, poisson)));
    return DentedContact.of(
        ball, yield, poisson, yield * SubsurfaceStress.of(1, poisson).firstYieldTresca());
  }

  @ParameterizedTest
  @CsvSource({
    "68.9e9, 0.33, 276e6,  50,  4.314212, 0.176628, 20.25988, 0.9303, 1.3712",
    "68.9e9, 0.33, 276e6, 126,  8.515616, 0.261702, 30.01827, 2.9824, 1.3182",
    "68.9e9, 0.33, 276e6, 268, 15.073102, 0.364075, 41.76089, 6.8149, 1.2868",
    "68.9e9, 0.33, 276e6, 500, 24.500261, 0.482138, 55.30316, 12.9401, 1.2786",
    "200e9,  0.30, 310e6,  50,  2.977725, 0.154761, 34.19023, 1.0832, 1.2955",
    "200e9,  0.30, 310e6, 126,  6.011594, 0.231737, 51.19600, 2.9169, 1.2574",
    "200e9,  0.30, 310e6, 268, 10.886022, 0.325980, 72.01632, 6.2235, 1.2529",
    "200e9,  0.30, 310e6, 500, 18.082332, 0.436354, 96.40047, 11.4707, 1.2747"
  })
  void theDentIsThatOfThePublishedFormulas(
      double modulus,
      double poisson,
      double yield,
      double force,
      double sink,
      double radius,
      double stiffness,
      double depth,
      double exponent) {
    Dent dent = seat(modulus, poisson, yield).under(force);
    assertThat(dent.sink() * 1e6).isCloseTo(sink, within(1e-6 * sink));
    assertThat(dent.diameter() / 2 * 1e3).isCloseTo(radius, within(4e-6 * radius));
    assertThat(dent.stiffness(force) / 1e6).isCloseTo(stiffness, within(4e-6 * stiffness));
    assertThat(dent.depth() * 1e6).isCloseTo(depth, within(6e-5 * depth));
    assertThat(dent.exponent()).isCloseTo(exponent, within(6e-5));
    assertThat(dent.established()).isTrue();
  }

  @ParameterizedTest
  @CsvSource({
    "68.9e9, 0.33, 276e6,  50.64,  4.347, 0.1762,  0.957, 20.4",
    "68.9e9, 0.33, 276e6, 101.61,  7.236, 0.2354,  2.367, 27.4",
    "68.9e9, 0.33, 276e6, 200.52, 12.120, 0.3141,  5.111, 36.6",
    "68.9e9, 0.33, 276e6, 501.97, 24.660, 0.4711, 13.300, 55.7",
    "200e9,  0.30, 310e6,  50.89,  2.998, 0.1518,  1.013, 33.6",
    "200e9,  0.30, 310e6, 102.76,  5.071, 0.2053,  2.217, 45.7",
    "200e9,  0.30, 310e6, 202.41,  8.663, 0.2809,  4.574, 62.0",
    "200e9,  0.30, 310e6, 516.97, 18.176, 0.4322, 11.428, 96.6"
  })
  void theDentIsThatOfFiniteElementsWithinTheStatedDifferences(
      double modulus,
      double poisson,
      double yield,
      double force,
      double sink,
      double radius,
      double depth,
      double stiffness) {
    Dent dent = seat(modulus, poisson, yield).under(force);
    assertThat(dent.sink() * 1e6).isCloseTo(sink, within(0.024 * sink));
    assertThat(dent.diameter() / 2 * 1e3).isCloseTo(radius, within(0.032 * radius));
    assertThat(dent.depth() * 1e6).isCloseTo(depth, within(0.092 * depth));
    assertThat(dent.stiffness(force) / 1e6).isCloseTo(stiffness, within(0.032 * stiffness));
    assertThat(dent.lip()).isBetween(0.03 * dent.depth(), 0.17 * dent.depth());
  }

  @Test
  void aHalfInchBallDentsAluminium() {
    DentedContact seat = seat(68.9e9, 0.33, 276e6);
    // 1.295 exp(0.736 nu), the published fit: force and approach at first yield within 0.4 % of
    // those of the closed stresses, 5.9747 N and 0.9870 um
    assertThat(seat.firstYieldForce()).isCloseTo(5.9747, within(0.004 * 5.9747));
    assertThat(seat.firstYieldApproach() * 1e6).isCloseTo(0.989093, within(1e-6));
    Dent dent = seat.under(268);
    assertThat(dent.state()).isEqualTo(Dent.State.DENTS);
    assertThat(dent.meanPressure() / 276e6).isCloseTo(2.33, within(0.01));
    // Meyer hardness of 95 HB, 947 MPa, is not reached: the contact is not fully plastic
    assertThat(dent.meanPressure()).isLessThan(947e6);
  }

  @Test
  void whatHardlyFlowsHardlyDiffersFromHertz() {
    DentedContact seat = seat(68.9e9, 0.33, 276e6);
    EllipticContact hertz =
        EllipticContact.of(
            RelativeCurvature.ballOnPlane(6.35e-3),
            new ElasticPair(
                new ElasticConstants(203.4e9, 0.29), new ElasticConstants(68.9e9, 0.33)));
    double force = 1.02 * seat.firstYieldForce();
    Dent dent = seat.under(force);
    assertThat(dent.exponent()).isCloseTo(1.5, within(1e-3));
    assertThat(dent.stiffness(force))
        .isCloseTo(hertz.normalStiffness(force), within(1e-9 * hertz.normalStiffness(force)));
    // the law meets Hertz's at 1.9 of the approach at first yield within 0.2 %
    double before = 1.8999 * seat.firstYieldApproach();
    double at = hertz.force(before);
    assertThat(seat.approach(1.001 * at)).isGreaterThan(seat.approach(at));
    assertThat(seat.approach(1.001 * at) / seat.approach(at)).isLessThan(1.003);
  }

  @Test
  void loadingAgainRunsUpTheUnloadingCurveToTheOldPeakAndNoFurther() {
    Dent dent = seat(68.9e9, 0.33, 276e6).under(268);
    assertThat(dent.approach(268)).isCloseTo(dent.sink(), within(1e-18));
    assertThat(dent.approach(0)).isEqualTo(dent.depth());
    // at a third of the peak 0.78 of 2 E* a
    assertThat(dent.stiffness(268.0 / 3) / dent.stiffness(268)).isCloseTo(0.78, within(0.005));
    double step = 1e-3;
    double slope = 2 * step / (dent.approach(100 + step) - dent.approach(100 - step));
    assertThat(dent.stiffness(100)).isCloseTo(slope, within(1e-6 * slope));
  }

  @Test
  void anEllipseOfNearlyACircleDentsAlikeAndIsCalledAnEstimate() {
    ElasticPair pair =
        new ElasticPair(new ElasticConstants(203.4e9, 0.29), new ElasticConstants(68.9e9, 0.33));
    EllipticContact near =
        EllipticContact.of(RelativeCurvature.ballOnCylinder(6.35e-3, -100 * 6.35e-3), pair);
    double onset = 276e6 * SubsurfaceStress.of(near.aspect(), 0.33).firstYieldTresca();
    Dent ellipse = DentedContact.of(near, 276e6, 0.33, onset).under(268);
    Dent circle = seat(68.9e9, 0.33, 276e6).under(268);
    assertThat(ellipse.established()).isFalse();
    assertThat(ellipse.depth()).isCloseTo(circle.depth(), within(0.01 * circle.depth()));
    assertThat(ellipse.sink()).isCloseTo(circle.sink(), within(0.01 * circle.sink()));
  }
}
