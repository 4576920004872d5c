package reseat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.readings.ProofOfTarget.Verdict;
import reseat.space.Vec3;

/** What a series proves, how long it must be, and tests laid out before they are made. */
class ProofAndPlanTest {

  /** Ten mounts that scatter by so many times the target. */
  private static ProofOfTarget proof(double ratio) {
    return ProofOfTarget.of(ScatterBounds.of(2 * ratio, 10, 0.95), 2);
  }

  private static double chiBelow(double value, int freedom) {
    return new ChiSquaredDistribution(null, freedom).cumulativeProbability(value);
  }

  /** Second road, by the distribution instead of its quantile: s = ratio would prove the target. */
  private static boolean proves(int n, double ratio) {
    return chiBelow((n - 1) * ratio * ratio, n - 1) <= 0.05;
  }

  @Test
  void tenMountsProveUpToSixTenthsOfTheTargetAndRefuteFromFourThirds() {
    // Factors for 10 mounts, one-sided 95 %: 1.645198 up, sqrt(9 / 16.918978) = 0.729345 down.
    assertThat(proof(0.607).verdict()).isEqualTo(Verdict.PROVEN);
    assertThat(proof(0.607).mountsWanted()).isEqualTo(10);
    assertThat(proof(0.607).furtherMounts()).isZero();
    assertThat(proof(0.609).verdict()).isEqualTo(Verdict.OPEN);
    assertThat(proof(0.609).mountsWanted()).isEqualTo(11);
    assertThat(proof(0.609).furtherMounts()).isEqualTo(1);
    assertThat(proof(1.37).verdict()).isEqualTo(Verdict.OPEN);
    assertThat(proof(1.372).verdict()).isEqualTo(Verdict.REFUTED);
  }

  @Test
  void noNumberOfMountsProvesATargetThatTheScatterReaches() {
    assertThat(proof(1).verdict()).isEqualTo(Verdict.OPEN);
    assertThat(proof(1).mountsWanted()).isZero();
    assertThat(proof(1).furtherMounts()).isZero();
    assertThat(proof(2).mountsWanted()).isZero();
  }

  @Test
  void aSeriesIsJudgedByItsOwnScatterAndNumber() {
    Repeatability series = Repeatability.of(new double[] {1, 2, 3, 2, 2});
    ProofOfTarget p = ProofOfTarget.of(series, 1.7, 0.9);
    assertThat(p.bounds()).isEqualTo(ScatterBounds.of(series.s(), 5, 0.9));
    assertThat(p.target()).isEqualTo(1.7);
    assertThat(p.verdict()).isEqualTo(Verdict.PROVEN);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.1, 0.5, 0.75, 0.9, 0.99, 0.996})
  void theMountsWantedAreTheLeastThatProve(double ratio) {
    int n = ProofOfTarget.mountsFor(ratio, 0.95);
    assertThat(proves(n, ratio)).isTrue();
    assertThat(n == 2 || !proves(n - 1, ratio)).isTrue();
  }

  @Test
  void aScatterOfNothingIsProvenByTwoMountsAndOneNearTheTargetByNone() {
    assertThat(ProofOfTarget.mountsFor(0, 0.95)).isEqualTo(2);
    assertThat(ProofOfTarget.mountsFor(0.997, 0.95)).isZero();
  }

  @Test
  void theChanceOfProofOfTwoMountsIsANormalProbability() {
    // With one degree of freedom chi-square is the square of a normal variable.
    NormalDistribution normal = new NormalDistribution(null, 0, 1);
    double root = normal.inverseCumulativeProbability(0.525);
    assertThat(ProofOfTarget.chanceOfProof(2, 0.1, 0.95))
        .isCloseTo(2 * normal.cumulativeProbability(root / 0.1) - 1, within(1e-9));
    // At the target itself the chance is that of a wrong proof.
    assertThat(ProofOfTarget.chanceOfProof(17, 1, 0.95)).isCloseTo(0.05, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"0.66666666666667, 0.8, 23", "0.3, 0.9, 12", "0.8, 0.9, 0", "0.9, 0.5, 0"})
  void aPlanHasTheFewestMountsWithTheChanceAskedFor(double ratio, double chance, int scipy) {
    AcceptancePlan plan = AcceptancePlan.of("X", 3e-6, 3e-6 * ratio, 0.95, chance, List.of());
    int n = plan.mounts();
    // The first by scipy.stats.chi2; fewer than 12 are never planned.
    assertThat(scipy == 0 || n == scipy).isTrue();
    assertThat(ProofOfTarget.chanceOfProof(n, ratio, 0.95)).isGreaterThanOrEqualTo(chance);
    assertThat(n == 12 || ProofOfTarget.chanceOfProof(n - 1, ratio, 0.95) < chance).isTrue();
    assertThat(plan.chanceOfPass())
        .isCloseTo(ProofOfTarget.chanceOfProof(n, ratio, 0.95), within(1e-9));
  }

  @Test
  void aPlanTellsTheLimitsOfTheTest() {
    List<Probe> probes = List.of(new Probe("Z1", Vec3.ZERO, Vec3.Z, 2e-8));
    AcceptancePlan plan = new AcceptancePlan("X", 1.645198e-6, 0.5e-6, 0.95, 0.8, 10, 50, probes);
    assertThat(plan.passLimit()).isCloseTo(1e-6, within(1e-12));
    assertThat(plan.gaugeLimit()).isCloseTo(1.645198e-6 / 3, within(1e-15));
    assertThat(plan.withMounts(2))
        .isEqualTo(new AcceptancePlan("X", 1.645198e-6, 0.5e-6, 0.95, 0.8, 2, 50, probes));
    assertThat(plan.withWearIn(0))
        .isEqualTo(new AcceptancePlan("X", 1.645198e-6, 0.5e-6, 0.95, 0.8, 10, 0, probes));
  }

  @Test
  void requalificationLimitsShrinkWithBothSeriesByTheirRoots() {
    Repeatability base = Repeatability.of(new double[] {1, 2, 3});
    // Student's t, two-sided 95 %, 2 degrees of freedom: 4.3027; F at 95 % for 2 and 2: 19.
    Requalification limits = Requalification.of(base, 3, 0.95);
    assertThat(limits.meanShift()).isCloseTo(4.30265 * Math.sqrt(2 / 3.0), within(1e-4));
    assertThat(limits.scatter()).isCloseTo(Math.sqrt(19), within(1e-6));
    // F for 1 and 2 at 95 % is the square of that t.
    assertThat(Requalification.of(base, 2, 0.95).scatter()).isCloseTo(4.30265, within(1e-4));
    assertThat(Requalification.of(base, 2, 0.95).meanShift())
        .isCloseTo(4.30265 * Math.sqrt(1 / 3.0 + 0.5), within(1e-4));
  }

  @Test
  void boundsOfThreeMountsAreLogarithms() {
    // Chi-square with two degrees of freedom is exponential: the quantile at p is -2 ln(1 - p).
    ScatterBounds b = ScatterBounds.of(2, 3, 0.9);
    assertThat(b.upper()).isCloseTo(2 / Math.sqrt(-Math.log(0.95)), within(1e-8));
    assertThat(b.lower()).isCloseTo(2 / Math.sqrt(-Math.log(0.05)), within(1e-8));
    assertThat(b.upperOneSided()).isCloseTo(2 / Math.sqrt(-Math.log(0.9)), within(1e-8));
    assertThat(b.lowerOneSided()).isCloseTo(2 / Math.sqrt(-Math.log(0.1)), within(1e-8));
    assertThat(ScatterBounds.meanOfS(2)).isCloseTo(Math.sqrt(2 / Math.PI), within(1e-12));
    assertThat(ScatterBounds.meanOfS(3)).isCloseTo(Math.sqrt(Math.PI) / 2, within(1e-12));
    // Student's t with one degree of freedom is Cauchy's.
    assertThat(ScatterBounds.halfWidthOfMean(3, 2, 0.5)).isCloseTo(3 / Math.sqrt(2), within(1e-9));
  }

  @Test
  void oneStepOfTheGaugeBoundsTwoEqualMounts() {
    // (2 Phi(q / 2 sigma) - 1)^2 = 0.25: q / 2 sigma is the upper quartile 0.6744898.
    ScatterBounds b = ScatterBounds.ofEqualReadings(1, 2, 0.75);
    assertThat(b.upper()).isCloseTo(1 / (2 * 0.6744898), within(1e-6));
    assertThat(b.upperOneSided()).isEqualTo(b.upper());
    assertThat(b.s() + b.lower() + b.lowerOneSided()).isZero();
  }
}
