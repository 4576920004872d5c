package reseat.remount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.contact.EllipticContact;
import reseat.contact.RelativeCurvature;
import reseat.contact.TangentialContact;
import reseat.material.ElasticConstants;
import reseat.material.ElasticPair;
import reseat.numerics.RandomStream;

/**
 * One contact with friction against Mindlin's closed forms, and against the second law.
 *
 * <p>Reference: the 12.7 mm steel ball on a steel flat at 100 N and μ = 0.1 (CV-057 to CV-062,
 * computed independently from Mindlin and Deresiewicz's formulas, which are from memory).
 */
class FrictionStateValidationTest {

  private static final EllipticContact CONTACT =
      EllipticContact.of(
          RelativeCurvature.ballOnPlane(0.00635),
          ElasticPair.ofEqual(new ElasticConstants(206e9, 0.3)));
  private static final TangentialContact TANGENTIAL = TangentialContact.of(CONTACT);
  private static final double FORCE = 100;
  private static final double LIMIT = 10;

  /** A contact with normal z and long axis x, loaded by displacements. */
  private static final class OneContact {
    final FrictionState state = new FrictionState();
    double energy;
    double stored;

    OneContact(double mu) {
      state.mu[0] = mu;
      state.ratioLong[0] = TANGENTIAL.majorRatio();
      state.ratioShort[0] = TANGENTIAL.minorRatio();
      state.longAxis[0] = 1;
    }

    double goTo(double force, double dx, double dy) {
      double kn = CONTACT.normalStiffness(force);
      double beforeX = state.held[0];
      double beforeY = state.held[1];
      state.attempt(0, 0, 0, 1, force, kn, dx, dy, 0);
      // trapezoid: work done on the contact by whoever moves it
      energy -= (beforeX + state.trial[0]) / 2 * dx + (beforeY + state.trial[1]) / 2 * dy;
      double[] k = new double[6];
      k[0] = kn;
      state.accept(k);
      double kt = kn * state.ratioLong[0];
      stored = (state.held[0] * state.held[0] + state.held[1] * state.held[1]) / (2 * kt);
      return -state.held[0];
    }
  }

  @Test
  void theSpringHasMindlinsNoSlipStiffness() {
    // CV-057: kt0 = 30.09663868 N/um
    OneContact c = new OneContact(0.1);
    c.goTo(FORCE, 0, 0);
    assertThat(c.goTo(FORCE, 1e-9, 0) / 1e-9).isCloseTo(30.09663868e6, within(1e-3 * 1e6));
  }

  @Test
  void atTheSameDisplacementItHoldsAtMostNineteenPercentOfTheLimitMoreThanMindlin() {
    // CV-058 to CV-061 give displacement for Q/μP = 0.25, 0.5, 0.9, 1
    double[] share = {0.25, 0.5, 0.9, 1};
    double[] displacement = {0.08697890966e-6, 0.1844256492e-6, 0.3910186812e-6, 0.4983945270e-6};
    double worst = 0;
    OneContact c = new OneContact(0.1);
    c.goTo(FORCE, 0, 0);
    double last = 0;
    for (int i = 0; i < share.length; i++) {
      double held = c.goTo(FORCE, displacement[i] - last, 0) / LIMIT;
      last = displacement[i];
      assertThat(held).isGreaterThanOrEqualTo(share[i] - 1e-9);
      worst = Math.max(worst, held - share[i]);
    }
    assertThat(worst).isLessThan(0.1925);
    // the bound itself: Mindlin at d = μN/kt is two thirds of full slip: 1 - (1/3)^1.5
    assertThat(1 - (1 - Math.pow(1.0 / 3, 1.5))).isCloseTo(0.19245, within(1e-5));
    assertThat(c.goTo(FORCE, 1e-6, 0)).isCloseTo(LIMIT, within(1e-12));
  }

  @Test
  void aLoadThatNeverSlippedLeavesNoResidualWhereMindlinLeavesTenNanometres() {
    // CV-062: 10.46782984 nm at q = 0.5, 3.2 % of μN/kt
    OneContact c = new OneContact(0.1);
    c.goTo(FORCE, 0, 0);
    double d = 0.5 * LIMIT / 30.09663868e6;
    c.goTo(FORCE, d, 0);
    assertThat(c.goTo(FORCE, -d, 0)).isCloseTo(0, within(1e-9));
    assertThat(10.46782984e-9).isLessThan(0.13 * LIMIT / 30.09663868e6);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void closedLoopsOnlyEverLoseEnergy(long seed) {
    // the contact is taken round random closed loops of slide and normal force; the normal force's
    // own work is conservative, so the work against friction less what the spring stores is lost
    RandomStream luck = RandomStream.of(20261125, seed);
    OneContact c = new OneContact(0.15);
    c.goTo(FORCE, 0, 0);
    int corners = 3 + luck.below(4);
    double[][] at = new double[corners][];
    for (int i = 0; i < corners; i++) {
      at[i] =
          new double[] {FORCE * (0.3 + luck.uniform()), 4e-7 * luck.normal(), 4e-7 * luck.normal()};
    }
    double x = 0;
    double y = 0;
    double force = FORCE;
    double[] lost = new double[6];
    for (int loop = 0; loop < 6; loop++) {
      for (int i = 0; i <= corners; i++) {
        double[] to = at[i % corners];
        int steps = 400;
        double fromX = x;
        double fromY = y;
        double fromForce = force;
        for (int s = 1; s <= steps; s++) {
          double p = s / (double) steps;
          double nx = fromX + p * (to[1] - fromX);
          double ny = fromY + p * (to[2] - fromY);
          force = fromForce + p * (to[0] - fromForce);
          c.goTo(force, nx - x, ny - y);
          x = nx;
          y = ny;
        }
        if (i == 0) {
          lost[loop] = c.energy - c.stored;
        }
      }
    }
    for (int loop = 1; loop < 6; loop++) {
      assertThat(lost[loop] - lost[loop - 1])
          .as("seed %d loop %d", seed, loop)
          .isGreaterThan(-1e-15);
    }
  }

  @Test
  void unloadingTheNormalForceNeverLeavesMoreThanTheSlipLimit() {
    OneContact c = new OneContact(0.1);
    c.goTo(FORCE, 0, 0);
    c.goTo(FORCE, 5e-7, 2e-7);
    for (double force = FORCE; force > 1; force *= 0.8) {
      c.goTo(force, 0, 0);
      assertThat(Math.hypot(c.state.held[0], c.state.held[1]))
          .isLessThanOrEqualTo(0.1 * force * (1 + 1e-12));
    }
  }

  @Test
  void theTangentIsTheDerivativeOfTheTrialForce() {
    FrictionState s = new OneContact(0.1).state;
    double kn = CONTACT.normalStiffness(FORCE);
    s.attempt(0, 0, 0, 1, FORCE, kn, 2e-7, 1e-7, 0);
    s.accept(new double[] {kn, 0, 0, 0, 0, 0});
    // sticking and sliding, with more and with less normal force than before
    for (double dx : new double[] {1e-8, 6e-7}) {
      for (double share : new double[] {0.98, 1.02}) {
        double d = share * CONTACT.approach(FORCE);
        double[] g = tangent(s, dx, d);
        double h = 1e-13;
        double[] plus = trial(s, dx + h, d);
        double[] minus = trial(s, dx - h, d);
        double[] deeper = trial(s, dx, d + h);
        double[] higher = trial(s, dx, d - h);
        for (int k = 0; k < 3; k++) {
          assertThat(g[k]).isCloseTo((plus[k] - minus[k]) / (2 * h), within(3e3));
          assertThat(g[3 + k]).isCloseTo((deeper[k] - higher[k]) / (2 * h), within(3e3));
        }
      }
    }
  }

  private static double[] trial(FrictionState s, double dx, double approach) {
    double force = CONTACT.force(approach);
    s.attempt(0, 0, 0, 1, force, CONTACT.normalStiffness(force), dx, 0, 0);
    return new double[] {s.trial[0], s.trial[1], s.trial[2]};
  }

  private static double[] tangent(FrictionState s, double dx, double approach) {
    trial(s, dx, approach);
    double force = CONTACT.force(approach);
    s.computeTangent(0, 0, 0, 1, force, CONTACT.normalStiffness(force), approach);
    return new double[] {
      s.tangent[0], s.tangent[3], s.tangent[6], s.perApproach[0], s.perApproach[1], s.perApproach[2]
    };
  }
}
