package reseat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Measured scatter beside predicted scatter: rates, directions and recovered causes. */
class PredictedScatterTest {

  private static final List<String> AXES = List.of("X", "Z", "height");

  private static final CauseSignature FRICTION =
      new CauseSignature(
          ScatterCause.FRICTION,
          "friction",
          ScatterMatrix.of(
              AXES, new double[][] {{4e-14, 0.5e-14, 0}, {0.5e-14, 3e-14, 0}, {0, 0, 1e-14}}));

  private static final CauseSignature PRELOAD =
      new CauseSignature(ScatterCause.PRELOAD, "preload", alongLine(0.02e-6, 0.03e-6, 0.3e-6));

  private static final CauseSignature DIRT =
      new CauseSignature(ScatterCause.DIRT, "dirt at ball 1", alongLine(0.3e-6, 0.1e-6, 0.2e-6));

  /** Covariance of a cause that moves the axes together by these amounts. */
  private static ScatterMatrix alongLine(double... shift) {
    double[][] c = new double[shift.length][shift.length];
    for (int i = 0; i < shift.length; i++) {
      for (int j = 0; j < shift.length; j++) {
        c[i][j] = shift[i] * shift[j];
      }
    }
    return ScatterMatrix.of(AXES, c);
  }

  private static ScatterMatrix nothing() {
    return ScatterMatrix.of(AXES, new double[3][3]);
  }

  /** Mounts with the friction covariance scaled, plus preload and dirt along their lines. */
  private static ScatterMatrix simulated(
      SplittableRandom random, int mounts, double friction, double preload, double dirt) {
    double[] x = new double[mounts];
    double[] z = new double[mounts];
    double[] h = new double[mounts];
    for (int i = 0; i < mounts; i++) {
      double a = random.nextGaussian();
      double b = random.nextGaussian();
      double p = preload * random.nextGaussian();
      double d = dirt * random.nextGaussian();
      // Cholesky factor of the friction covariance.
      double fx = 2e-7 * a;
      double fz = 0.25e-7 * a + Math.sqrt(3e-14 - 0.0625e-14) * b;
      x[i] = friction * fx + 0.02e-6 * p + 0.3e-6 * d;
      z[i] = friction * fz + 0.03e-6 * p + 0.1e-6 * d;
      h[i] = friction * 1e-7 * random.nextGaussian() + 0.3e-6 * p + 0.2e-6 * d;
    }
    return ScatterMatrix.ofSeries(AXES, List.of(x, z, h));
  }

  @Test
  void theVarianceRatioAlarmsAsOftenAsStated() {
    SplittableRandom random = new SplittableRandom(71);
    int alarms = 0;
    int tests = 10_000;
    for (int i = 0; i < tests; i++) {
      double[] measured = new double[20];
      double[] foretold = new double[50];
      for (int j = 0; j < 50; j++) {
        foretold[j] = random.nextGaussian();
        measured[j % 20] = random.nextGaussian();
      }
      PredictionTest t =
          PredictionTest.of(
              "X", Repeatability.of(measured), Repeatability.of(foretold).s(), 50, 0.95);
      alarms += t.verdict() == PredictionTest.Verdict.AS_PREDICTED ? 0 : 1;
    }
    assertThat(alarms / (double) tests).isCloseTo(0.05, within(0.009));
  }

  @Test
  void causesAreRecoveredFromALongSeries() {
    SplittableRandom random = new SplittableRandom(72);
    ScatterMatrix c = simulated(random, 20_000, 1.5, 2.0, 0.7);
    CauseFit fit = CauseFit.of(c, 20_000, nothing(), List.of(FRICTION, PRELOAD, DIRT), 0.95);
    assertThat(fit.shares().get(0).multiplier()).isCloseTo(1.5, within(0.03));
    assertThat(fit.shares().get(1).multiplier()).isCloseTo(2.0, within(0.04));
    assertThat(fit.shares().get(2).multiplier()).isCloseTo(0.7, within(0.03));
    assertThat(fit.p()).isGreaterThan(0.001);
    assertThat(fit.shares().stream().mapToDouble(CauseFit.Share::share).sum())
        .isCloseTo(1, within(1e-6));
  }

  @Test
  void theBoundsOfTheCausesHoldTheTruthAsOftenAsStated() {
    SplittableRandom random = new SplittableRandom(73);
    int tests = 1000;
    int[] above = new int[2];
    int misfits = 0;
    for (int i = 0; i < tests; i++) {
      ScatterMatrix c = simulated(random, 40, 1, 1.5, 0);
      CauseFit fit = CauseFit.of(c, 40, nothing(), List.of(FRICTION, PRELOAD), 0.95);
      above[0] += fit.shares().get(0).high() >= 1 ? 1 : 0;
      above[1] += fit.shares().get(1).high() >= 1.5 ? 1 : 0;
      misfits += fit.p() < 0.05 ? 1 : 0;
    }
    // The bound rests on the normal approximation of a variance, so it is a little short.
    assertThat(above[0] / (double) tests).isBetween(0.87, 0.97);
    assertThat(above[1] / (double) tests).isBetween(0.87, 0.97);
    assertThat(misfits / (double) tests).isBetween(0.02, 0.10);
  }

  @Test
  void aKnownGaugeNoiseIsNotBlamedOnTheMount() {
    SplittableRandom random = new SplittableRandom(74);
    ScatterMatrix gauge =
        ScatterMatrix.of(AXES, new double[][] {{4e-14, 0, 0}, {0, 4e-14, 0}, {0, 0, 4e-14}});
    ScatterMatrix c = simulated(random, 20_000, 1, 1, 0).plus(1, gauge);
    CauseFit fit = CauseFit.of(c, 20_000, gauge, List.of(FRICTION, PRELOAD), 0.95);
    assertThat(fit.shares().get(0).multiplier()).isCloseTo(1, within(0.03));
    assertThat(fit.shares().get(1).multiplier()).isCloseTo(1, within(0.03));
  }

  @Test
  void causesThatMoveTheSameWayAreNotToldApart() {
    CauseSignature twin =
        new CauseSignature(
            ScatterCause.TEMPERATURE, "temperature", alongLine(0.04e-6, 0.06e-6, 0.6e-6));
    ScatterMatrix c = simulated(new SplittableRandom(75), 200, 1, 1, 0);
    CauseFit fit = CauseFit.of(c, 200, nothing(), List.of(FRICTION, PRELOAD, twin), 0.95);
    assertThat(fit.shares().get(0).separable()).isTrue();
    assertThat(fit.shares().get(1).separable()).isFalse();
    assertThat(fit.shares().get(2).separable()).isFalse();
    assertThat(fit.shares().get(1).low()).isZero();
    assertThat(fit.shares().get(1).high()).isGreaterThan(1);
    assertThat(fit.shares().get(2).high()).isGreaterThan(0.5);
  }

  @Test
  void theDirectionOfAnExcessPointsToItsCause() {
    ScatterMatrix predicted = FRICTION.scatter().plus(1, PRELOAD.scatter());
    ScatterMatrix measured = FRICTION.scatter().plus(9, PRELOAD.scatter());
    ScatterMatrix excess = measured.plus(-1, predicted);
    assertThat(excess.alignment(PRELOAD.scatter())).isCloseTo(1, within(1e-12));
    assertThat(excess.alignment(FRICTION.scatter())).isLessThan(0.5);
  }

  @Test
  void turningAllAxesTurnsTheDirectionAndKeepsTheMultipliers() {
    double c = Math.cos(0.7);
    double s = Math.sin(0.7);
    ScatterMatrix measured = simulated(new SplittableRandom(76), 500, 1.3, 0.8, 0.5);
    List<CauseSignature> turned = new ArrayList<>();
    for (CauseSignature g : List.of(FRICTION, PRELOAD, DIRT)) {
      turned.add(new CauseSignature(g.cause(), g.name(), turn(g.scatter(), c, s)));
    }
    CauseFit here = CauseFit.of(measured, 500, nothing(), List.of(FRICTION, PRELOAD, DIRT), 0.9);
    CauseFit there = CauseFit.of(turn(measured, c, s), 500, nothing(), turned, 0.9);
    for (int k = 0; k < 3; k++) {
      assertThat(there.shares().get(k).multiplier())
          .isCloseTo(here.shares().get(k).multiplier(), within(1e-6));
    }
  }

  private static ScatterMatrix turn(ScatterMatrix m, double c, double s) {
    double[][] r = {{c, -s, 0}, {s, c, 0}, {0, 0, 1}};
    double[][] out = new double[3][3];
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        for (int k = 0; k < 3; k++) {
          for (int l = 0; l < 3; l++) {
            out[i][j] += r[i][k] * m.get(k, l) * r[j][l];
          }
        }
      }
    }
    return ScatterMatrix.of(AXES, out);
  }
}
