package reseat.interchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.special.BesselJ;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import reseat.design.CouplingDesign;
import reseat.design.Tolerance;
import reseat.design.ToleranceKind;
import reseat.design.Tolerances;
import reseat.numerics.DistributionShape;
import reseat.numerics.VectorScatter;
import reseat.space.Vec3;

/**
 * The simulation against closed forms and a second road to its whole distribution.
 *
 * <p>The second road never draws a number: the distribution of a sum of independent deviations from
 * the product of their characteristic functions, inverted for the probability between two limits
 * (Gil-Pelaez; formula from memory). The characteristic functions are those of the four shapes in
 * closed form, the cut normal's by quadrature.
 */
class InterchangeValidationTest {

  private static final long SEED = 161_803L;

  @Test
  void covarianceOfSixIndependentErrorsIsTheClosedForm() throws InterruptedException {
    // CV-079, computed independently from s^2 (W W^T)^-1: form errors of the balls are six
    // independent offsets along the normals, sd 0.1 um here
    double sigma = 1e-7;
    CouplingDesign d =
        TolerancedCouplings.threeVees()
            .tolerances(
                Tolerances.of(
                    Tolerance.ofEach(
                        ToleranceKind.BALL_FORM, sigma * Math.sqrt(3), DistributionShape.UNIFORM)))
            .build();
    int n = 200_000;
    InterchangeResult r =
        new InterchangeSimulation(ToleranceModel.of(d)).run(InterchangePlan.onePost(n, SEED, 2));
    double four = 4 / Math.sqrt(2.0 * n);
    assertClose(r.own().deviation(), new Vec3(0.8164966, 0.8164966, 0.5773503).times(sigma), four);
    assertClose(
        r.ownRotation().deviation(),
        new Vec3(16.3299316, 16.3299316, 11.5470054).times(sigma),
        four);
    Vec3 c = r.own().covariances();
    double none = 4 / Math.sqrt(n) * sigma * sigma;
    assertThat(c.x()).isCloseTo(0, within(0.8165 * 0.8165 * none));
    assertThat(c.y()).isCloseTo(0, within(0.8165 * 0.5774 * none));
    assertThat(c.z()).isCloseTo(0, within(0.5774 * 0.8165 * none));
  }

  private static void assertClose(Vec3 found, Vec3 wanted, double relative) {
    for (int k = 0; k < 3; k++) {
      double w = wanted.component(k);
      assertThat(found.component(k)).isCloseTo(w, within(relative * w));
    }
  }

  @Test
  void ninetyFivePercentBandsAreThoseOfTheSumOfDistributions() throws InterruptedException {
    assertBands(100_000);
  }

  /** Run with -Pfull. */
  @Test
  @EnabledIfSystemProperty(named = "full", matches = "true")
  void aMillionHoldersFollowTheSumOfDistributions() throws InterruptedException {
    assertBands(1_000_000);
  }

  private static void assertBands(int n) throws InterruptedException {
    for (String name : new String[] {"vees", "trihedral, vee and flat, balls on the base"}) {
      CouplingDesign d = TolerancedCouplings.zoo().get(name);
      InterchangeSimulation simulation = new InterchangeSimulation(ToleranceModel.of(d));
      InterchangeResult r = simulation.run(InterchangePlan.onePost(n, SEED, 2));
      VectorScatter own = r.own();
      for (int axis = 0; axis < 3; axis++) {
        double half = own.band().component(axis);
        double between = between(simulation.stack(), axis, half);
        // five standard errors of a share of 95 % among n, and the bins' half percent of sigma
        double luck = 5 * Math.sqrt(0.95 * 0.05 / n);
        assertThat(between).as("%s axis %d", name, axis).isCloseTo(0.95, within(luck + 5e-4));
      }
    }
  }

  /** Probability that the own shift along an axis lies within plus and minus half. */
  private static double between(LinearStack stack, int axis, double half) {
    double sigma = stack.sum(LinearStack.BETWEEN_HOLDERS).deviation().component(axis);
    // Simpson's rule to 12 standard deviations; the integrand at zero is half over sigma
    int steps = 600;
    double dt = 12.0 / steps;
    double sum = half / sigma;
    for (int i = 1; i <= steps; i++) {
      double t = i * dt;
      double product = Math.sin(half / sigma * t) / t;
      for (Sensitivity.Effect e : stack.sensitivity().effects()) {
        if (e.contributor().owner() != Owner.POST) {
          double c = e.limitShift().component(axis) / sigma;
          product *= characteristic(e.contributor().spread().shape(), c * t);
        }
      }
      sum += (i == steps ? 1 : i % 2 == 1 ? 4 : 2) * product;
    }
    return 2 / Math.PI * sum * dt / 3;
  }

  private static double characteristic(DistributionShape shape, double t) {
    return switch (shape) {
      case UNIFORM -> sinc(t);
      case TRIANGULAR -> sinc(t / 2) * sinc(t / 2);
      case ARCSINE -> BesselJ.value(0, Math.abs(t));
      case NORMAL -> {
        double sum = 0;
        double mass = 0;
        int steps = 60;
        for (int i = 0; i <= steps; i++) {
          double x = -1 + 2.0 * i / steps;
          double w = (i == 0 || i == steps ? 1 : i % 2 == 1 ? 4 : 2) * Math.exp(-2 * x * x);
          mass += w;
          sum += w * Math.cos(t * x);
        }
        yield sum / mass;
      }
    };
  }

  private static double sinc(double t) {
    return Math.abs(t) < 1e-8 ? 1 : Math.sin(t) / t;
  }
}
