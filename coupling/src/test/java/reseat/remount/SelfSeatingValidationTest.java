package reseat.remount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.design.CouplingDesign;
import reseat.design.Support;
import reseat.equilibrium.ContactLines;
import reseat.seat.FlatSeat;
import reseat.seat.GrooveExtent;
import reseat.seat.SeatFrame;
import reseat.seat.TrihedralSeat;
import reseat.seat.VeeGroove;
import reseat.seating.SelfSeating;
import reseat.space.Vec3;
import reseat.space.Wrench;

/**
 * Limiting friction for self-centring.
 *
 * <p>Values computed independently (null vector of the five engaged contacts, acceleration along
 * it) before this code was written: CV-084 to CV-089. The values about 0.32 at 45 degrees and 0.36
 * at 60 degrees are also remembered from the literature on friction-based coupling design (from
 * memory, not opened).
 */
class SelfSeatingValidationTest {

  private static final Wrench DOWN = Wrench.ofForce(Vec3.Z.negated(), Vec3.ZERO);

  private static double worst(List<Support> supports, Wrench load) {
    CouplingDesign d = CouplingDesign.builder().supports(supports).build();
    return new SelfSeating(ContactLines.nominal(d), load).oneOpen().get(0).limitFriction();
  }

  @ParameterizedTest
  @CsvSource({"30, 0.22999", "45, 0.31734", "60, 0.36359", "63.471, 0.365626"})
  void threeVeesWithSmallBalls(double angleDeg, double expected) {
    // CV-084 to CV-087, balls far smaller than the circle
    double got = worst(Couplings.threeVees(1, 1e-6, Math.toRadians(angleDeg), 0.4), DOWN);
    assertThat(got).isCloseTo(expected, within(6e-6));
  }

  @ParameterizedTest
  @CsvSource({"0.05, 0.31705", "0.1, 0.31621", "0.2, 0.31290"})
  void ballsOfFiniteSizeCentreALittleWorse(double ratio, double expected) {
    // CV-085, second line
    double got = worst(Couplings.threeVees(1, ratio, Math.toRadians(45), 0.4), DOWN);
    assertThat(got).isCloseTo(expected, within(6e-6));
  }

  @Test
  void theBestAngleIsThatOfTheIndependentSearch() {
    // CV-087
    double best = 0;
    double at = 0;
    for (double angle = 62; angle < 65; angle += 0.05) {
      double mu = worst(Couplings.threeVees(1, 1e-6, Math.toRadians(angle), 0), DOWN);
      if (mu > best) {
        best = mu;
        at = angle;
      }
    }
    assertThat(best).isCloseTo(0.365626, within(1e-6));
    assertThat(at).isCloseTo(63.471, within(0.06));
  }

  @ParameterizedTest
  @CsvSource({
    "45, 45, 0.1246, 0.1581, 0.2086, 0.4142, 0.4142",
    "54.7356, 45, 0.1617, 0.2027, 0.2640, 0.4142, 0.4142"
  })
  void trihedralVeeFlat(
      double trihedral, double vee, double t1, double t2, double t3, double v1, double v2) {
    // CV-088 and CV-089: limits by the contact that is missing
    double tiny = 1e-6;
    Vec3 a = Vec3.atAzimuth(Math.toRadians(90));
    Vec3 b = Vec3.atAzimuth(Math.toRadians(210));
    Vec3 c = Vec3.atAzimuth(Math.toRadians(330));
    CouplingDesign d =
        CouplingDesign.builder()
            .support(
                Couplings.support(
                    "corner",
                    a,
                    tiny,
                    TrihedralSeat.forBall(
                        SeatFrame.level(a, Math.toRadians(90)),
                        tiny,
                        Math.toRadians(trihedral),
                        Double.POSITIVE_INFINITY,
                        0)))
            .support(
                Couplings.support(
                    "vee",
                    b,
                    tiny,
                    VeeGroove.forBall(
                        new SeatFrame(b, a.minus(b), Vec3.Z),
                        tiny,
                        Math.toRadians(vee),
                        GrooveExtent.unlimited())))
            .support(
                Couplings.support(
                    "flat",
                    c,
                    tiny,
                    FlatSeat.forBall(SeatFrame.level(c, 0), tiny, Double.POSITIVE_INFINITY)))
            .build();
    SelfSeating seating = new SelfSeating(ContactLines.nominal(d), DOWN);
    double[] expected = {t1, t2, t3, v1, v2};
    double[] got = new double[5];
    for (int i = 0; i < 5; i++) {
      double[] rates = new double[6];
      rates[i] = 1;
      got[i] = seating.path(rates).limitFriction();
    }
    java.util.Arrays.sort(got);
    java.util.Arrays.sort(expected);
    for (int i = 0; i < 5; i++) {
      assertThat(got[i]).isCloseTo(expected[i], within(6e-5));
    }
  }

  @Test
  void aSlideWithTwoContactsOpenStallsNoEarlierThanTheStatesItEndsInForASymmetricCoupling() {
    CouplingDesign d = Couplings.post(0.1, 600).build();
    SelfSeating seating = new SelfSeating(ContactLines.nominal(d), DOWN);
    double one = seating.oneOpen().get(0).limitFriction();
    assertThat(seating.twoOpen()).hasSize(15);
    assertThat(seating.threeOpen()).hasSize(20);
    assertThat(seating.twoOpen().get(0).limitFriction()).isGreaterThan(one);
  }

  @Test
  void theLimitTurnsWithTheCouplingAndTheLoad() {
    CouplingDesign d = Couplings.post(0.1, 600).build();
    Wrench load = Wrench.ofForce(new Vec3(0.1, 0.05, -1), new Vec3(0.003, 0.004, 0));
    double before = new SelfSeating(ContactLines.nominal(d), load).oneOpen().get(0).limitFriction();
    double turn = 0.7;
    CouplingDesign turned =
        CouplingDesign.builder()
            .supports(Couplings.threeVees(0.034925, 0.00635, Math.toRadians(45), turn))
            .build();
    reseat.space.Pose spin = reseat.space.Pose.of(new Vec3(0, 0, turn), Vec3.ZERO);
    Wrench turnedLoad = Wrench.ofForce(spin.rotate(load.force()), spin.apply(load.at()));
    double after =
        new SelfSeating(ContactLines.nominal(turned), turnedLoad).oneOpen().get(0).limitFriction();
    assertThat(after).isCloseTo(before, within(1e-10));
  }

  @Test
  void theSimulationHangsJustAboveTheLimitAndSeatsJustBelow() {
    CouplingDesign d = Couplings.post(0.1, 600).build();
    double limit = new SelfSeating(ContactLines.nominal(d), DOWN).oneOpen().get(0).limitFriction();
    double[] closing = {0, 0, 0, 1, 0, 0};
    double[] load = {0, 0, -15, 0, 0, 0};
    assertThat(outcome(d, limit * 0.999, closing, load))
        .isEqualTo(FrictionEquilibrium.Outcome.HELD);
    assertThat(outcome(d, limit * 1.001, closing, load))
        .isEqualTo(FrictionEquilibrium.Outcome.HANGS);
  }

  private static FrictionEquilibrium.Outcome outcome(
      CouplingDesign d, double mu, double[] closing, double[] load) {
    FrictionEquilibrium m = Mounted.prepared(d);
    java.util.Arrays.fill(m.state.friction.mu, mu);
    return m.seat(closing, load);
  }
}
