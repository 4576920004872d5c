package reseat.contact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import reseat.material.ElasticConstants;
import reseat.material.ElasticPair;
import reseat.numerics.RandomStream;

/** What every Hertz contact must satisfy, over random bodies; the seed is in each message. */
class HertzPropertyTest {

  private static final long SEED = 8231977L;

  /** Bodies of one random case: four principal radii, m, the angle between, elasticity, force. */
  private record Case(
      int number,
      double r1,
      double r1Across,
      double r2,
      double r2Across,
      double psi,
      ElasticPair pair,
      double force) {

    RelativeCurvature curvature() {
      return RelativeCurvature.general(r1, r1Across, r2, r2Across, psi);
    }

    EllipticContact contact() {
      return EllipticContact.of(curvature(), pair);
    }

    @Override
    public String toString() {
      return "seed " + SEED + " case " + number;
    }
  }

  static IntStream numbers() {
    return IntStream.range(0, 60);
  }

  private static Case random(int number) {
    RandomStream r = RandomStream.of(SEED, number);
    double r1 = Math.exp(r.uniform(Math.log(1e-3), Math.log(50e-3)));
    double r1Across = r1 * Math.exp(r.uniform(0, 3));
    // a hollow of larger radius than anything convex on the first body never conforms
    double r2 = r.uniform() < 0.4 ? -r1Across * r.uniform(1.05, 10) : r1 * r.uniform(0.2, 100);
    double r2Across = r.uniform() < 0.3 ? Double.POSITIVE_INFINITY : r1 * r.uniform(0.2, 100);
    ElasticPair pair =
        new ElasticPair(
            new ElasticConstants(r.uniform(60e9, 650e9), r.uniform(0.1, 0.4)),
            new ElasticConstants(r.uniform(60e9, 650e9), r.uniform(0.1, 0.4)));
    return new Case(
        number,
        r1,
        r1Across,
        r2,
        r2Across,
        r.uniform(-Math.PI, Math.PI),
        pair,
        r.uniform(0.1, 500));
  }

  /**
   * Second road: the pressure over the ellipse, put through Boussinesq's solution, must bend the
   * surfaces by approach - A x^2 - B y^2 everywhere in the patch.
   */
  @ParameterizedTest
  @MethodSource("numbers")
  void pressureBendsTheSurfacesIntoTheGap(int number) {
    Case c = random(number);
    EllipticContact contact = c.contact();
    double a = contact.semiMajor(c.force());
    double b = contact.semiMinor(c.force());
    double delta = contact.approach(c.force());
    RandomStream r = RandomStream.of(SEED + 1, number);
    for (int i = 0; i < 4; i++) {
      double radius = Math.sqrt(r.uniform(0, 0.95));
      double t = r.uniform(0, 2 * Math.PI);
      double x = a * radius * Math.cos(t);
      double y = b * radius * Math.sin(t);
      double bent = deflection(contact, c.force(), x, y);
      double gap =
          delta - contact.curvature().lesser() * x * x - contact.curvature().greater() * y * y;
      assertThat(bent).as("%s", c).isCloseTo(gap, within(1e-10 * delta));
    }
  }

  /** Deflection of both surfaces: 1/(pi E*) times the integral of pressure over distance. */
  private static double deflection(EllipticContact contact, double force, double x, double y) {
    double a = contact.semiMajor(force);
    double b = contact.semiMinor(force);
    double p0 = contact.peakPressure(force);
    int n = (int) (400 + 80 * a / b);
    double inside = 1 - x * x / (a * a) - y * y / (b * b);
    double sum = 0;
    for (int i = 0; i < n; i++) {
      double t = Math.PI * (i + 0.5) / n;
      double cos = Math.cos(t);
      double sin = Math.sin(t);
      // along the chord through the point the pressure is p0 sqrt(inside - 2 beta r - alpha r^2)
      double alpha = cos * cos / (a * a) + sin * sin / (b * b);
      double beta = x * cos / (a * a) + y * sin / (b * b);
      sum += Math.PI / 2 * p0 * (inside + beta * beta / alpha) / Math.sqrt(alpha);
    }
    return sum * Math.PI / n / (Math.PI * contact.elasticity().reducedModulus());
  }

  @ParameterizedTest
  @MethodSource("numbers")
  void pressureOverTheEllipseCarriesTheForce(int number) {
    Case c = random(number);
    EllipticContact contact = c.contact();
    double volume =
        2.0
            / 3
            * Math.PI
            * contact.peakPressure(c.force())
            * contact.semiMajor(c.force())
            * contact.semiMinor(c.force());
    assertThat(volume).as("%s", c).isCloseTo(c.force(), within(1e-12 * c.force()));
    assertThat(contact.force(contact.approach(c.force())))
        .as("%s", c)
        .isCloseTo(c.force(), within(1e-12 * c.force()));
    double p0 = contact.peakPressure(c.force());
    assertThat(contact.forceAtPeakPressure(p0))
        .as("%s", c)
        .isCloseTo(c.force(), within(1e-12 * c.force()));
    assertThat(contact.meanPressure(c.force())).as("%s", c).isCloseTo(p0 / 1.5, within(1e-12 * p0));
  }

  @ParameterizedTest
  @MethodSource("numbers")
  void stiffnessIsTheSlopeOfTheForce(int number) {
    Case c = random(number);
    EllipticContact contact = c.contact();
    double delta = contact.approach(c.force());
    double h = 1e-4 * delta;
    double slope = (contact.force(delta + h) - contact.force(delta - h)) / (2 * h);
    assertThat(contact.normalStiffness(c.force()))
        .as("%s", c)
        .isCloseTo(slope, within(1e-8 * slope));
  }

  @ParameterizedTest
  @MethodSource("numbers")
  void eightfoldForceDoublesPatchPressureAndStiffnessAndQuadruplesTheApproach(int number) {
    Case c = random(number);
    EllipticContact contact = c.contact();
    double p = c.force();
    assertRatio(c, contact.semiMajor(8 * p), contact.semiMajor(p), 2);
    assertRatio(c, contact.semiMinor(8 * p), contact.semiMinor(p), 2);
    assertRatio(c, contact.peakPressure(8 * p), contact.peakPressure(p), 2);
    assertRatio(c, contact.normalStiffness(8 * p), contact.normalStiffness(p), 2);
    assertRatio(c, contact.approach(8 * p), contact.approach(p), 4);
    TangentialContact tangential = TangentialContact.of(contact);
    assertRatio(c, tangential.stiffnessAlongMajor(8 * p), tangential.stiffnessAlongMajor(p), 2);
    assertRatio(c, tangential.spinStiffness(8 * p), tangential.spinStiffness(p), 8);
  }

  @ParameterizedTest
  @MethodSource("numbers")
  void bodiesThreeTimesAsLargeUnderNineTimesTheForceAreTheSameEnlarged(int number) {
    Case c = random(number);
    EllipticContact small = c.contact();
    EllipticContact large =
        EllipticContact.of(
            RelativeCurvature.general(
                3 * c.r1(), 3 * c.r1Across(), 3 * c.r2(), 3 * c.r2Across(), c.psi()),
            c.pair());
    double p = c.force();
    assertRatio(c, large.semiMajor(9 * p), small.semiMajor(p), 3);
    assertRatio(c, large.approach(9 * p), small.approach(p), 3);
    assertRatio(c, large.peakPressure(9 * p), small.peakPressure(p), 1);
  }

  @ParameterizedTest
  @MethodSource("numbers")
  void bodiesMayBeNamedInEitherOrderAndTurnedByHalfATurn(int number) {
    Case c = random(number);
    RelativeCurvature k = c.curvature();
    RelativeCurvature swapped =
        RelativeCurvature.general(c.r2(), c.r2Across(), c.r1(), c.r1Across(), -c.psi());
    RelativeCurvature turned =
        RelativeCurvature.general(
            c.r1Across(), c.r1(), c.r2(), c.r2Across(), c.psi() - Math.PI / 2);
    for (RelativeCurvature same : new RelativeCurvature[] {swapped, turned}) {
      assertRatio(c, same.lesser(), k.lesser(), 1);
      assertRatio(c, same.greater(), k.greater(), 1);
    }
    assertThat(Math.sin(2 * (turned.majorAngle() + Math.PI / 2 - k.majorAngle())))
        .as("%s", c)
        .isCloseTo(0, within(1e-9));
  }

  /** Euler's theorem: curvature of a body in any direction from its principal curvatures. */
  @ParameterizedTest
  @MethodSource("numbers")
  void majorAxisLiesWhereTheGapIsFlattest(int number) {
    Case c = random(number);
    RelativeCurvature k = c.curvature();
    double phi = k.majorAngle();
    assertThat(phi).isBetween(0.0, Math.PI);
    assertRatio(c, halfCurvature(c, phi), k.lesser(), 1);
    assertRatio(c, halfCurvature(c, phi + Math.PI / 2), k.greater(), 1);
  }

  private static double halfCurvature(Case c, double phi) {
    double first = Math.pow(Math.cos(phi), 2) / c.r1() + Math.pow(Math.sin(phi), 2) / c.r1Across();
    double t = phi - c.psi();
    double second = Math.pow(Math.cos(t), 2) / c.r2() + Math.pow(Math.sin(t), 2) / c.r2Across();
    return (first + second) / 2;
  }

  private static void assertRatio(Case c, double found, double base, double factor) {
    assertThat(found).as("%s", c).isCloseTo(factor * base, within(1e-11 * factor * base));
  }

  @Test
  void generalCaseContainsTheSimpleOnes() {
    double flat = Double.POSITIVE_INFINITY;
    RelativeCurvature groove = RelativeCurvature.ballOnCylinder(6e-3, -8e-3);
    // body 1: cylinder, first direction along its axis; body 2: ball
    RelativeCurvature same = RelativeCurvature.general(flat, -8e-3, 6e-3, 6e-3, 0.3);
    assertThat(same.lesser()).isCloseTo(groove.lesser(), within(1e-13 * groove.lesser()));
    assertThat(same.greater()).isCloseTo(groove.greater(), within(1e-13 * groove.greater()));
    assertThat(same.majorAngle()).isCloseTo(groove.majorAngle(), within(1e-12));
    assertThat(groove.conformity()).isCloseTo(0.75, within(1e-12));
    assertThat(RelativeCurvature.ballOnCylinder(6e-3, 8e-3).majorAngle()).isZero();
    assertThat(RelativeCurvature.ballOnCylinder(6e-3, 8e-3).conformity()).isZero();
    assertThat(RelativeCurvature.ballOnCylinder(6e-3, flat))
        .isEqualTo(RelativeCurvature.ballOnPlane(6e-3));
    RelativeCurvature balls = RelativeCurvature.general(6e-3, 6e-3, 6e-3, 6e-3, 1);
    assertThat(balls.lesser()).isCloseTo(1 / 6e-3, within(1e-10));
    assertThat(balls.ratio()).isEqualTo(1);
    assertThat(RelativeCurvature.general(6e-3, 6e-3, flat, flat, 1).ratio()).isEqualTo(1);
  }

  @Test
  void surfacesThatConformAreRefusedInWords() {
    assertThatThrownBy(() -> RelativeCurvature.ballOnCylinder(12.7e-3, -12e-3))
        .hasMessageContaining("groove radius is 12.0000 mm")
        .hasMessageContaining("larger than the ball radius 12.7000 mm");
    assertThatThrownBy(() -> RelativeCurvature.ballInSphericalSeat(5e-3, 5e-3))
        .hasMessageContaining("seat radius is 5.0000 mm");
    assertThatThrownBy(() -> RelativeCurvature.general(5e-3, 5e-3, -4e-3, 9e-3, 0))
        .hasMessageContaining("do not touch at a point");
    assertThatThrownBy(() -> RelativeCurvature.of(0, 1)).hasMessageContaining("must be positive");
    assertThatThrownBy(() -> RelativeCurvature.of(2, 1)).hasMessageContaining("rising order");
    assertThatThrownBy(() -> RelativeCurvature.ballOnCylinder(5e-3, 0))
        .hasMessageContaining("must not be zero");
    assertThatThrownBy(() -> RelativeCurvature.ballOnPlane(-1)).hasMessageContaining("ball radius");
    assertThatThrownBy(() -> random(0).contact().approach(-1))
        .hasMessageContaining("contact force");
  }

  @Test
  void contactThatIsApartCarriesNothing() {
    EllipticContact contact = random(1).contact();
    assertThat(contact.force(0)).isZero();
    assertThat(contact.force(-1e-6)).isZero();
    assertThat(contact.normalStiffness(0)).isZero();
    assertThat(contact.peakPressure(0)).isZero();
  }

  @Test
  void theoryIsStrainedByLargePatchesAndCloseWraps() {
    ElasticPair steel = ElasticPair.ofEqual(new ElasticConstants(206e9, 0.3));
    EllipticContact plain = EllipticContact.of(RelativeCurvature.ballOnPlane(6.35e-3), steel);
    assertThat(HalfSpaceWarning.of(plain, 100)).isEmpty();
    assertThat(HalfSpaceWarning.of(plain, 1e6))
        .singleElement()
        .satisfies(
            w -> {
              assertThat(w.kind()).isEqualTo(HalfSpaceWarning.Kind.PATCH_OVER_RADIUS);
              assertThat(w.value()).isGreaterThan(w.limit());
            });
    EllipticContact socket =
        EllipticContact.of(RelativeCurvature.ballInSphericalSeat(6.35e-3, 6.6e-3), steel);
    assertThat(HalfSpaceWarning.of(socket, 100))
        .extracting(HalfSpaceWarning::kind)
        .containsExactly(HalfSpaceWarning.Kind.CONFORMITY);
  }
}
