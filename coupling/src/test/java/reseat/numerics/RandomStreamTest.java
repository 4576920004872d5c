package reseat.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.TriangularDistribution;
import org.apache.commons.math3.distribution.UniformRealDistribution;
import org.apache.commons.math3.stat.inference.KolmogorovSmirnovTest;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import reseat.space.Vec3;

/** Distributions by Kolmogorov-Smirnov at fixed seeds; p below 0.001 would be a defect. */
class RandomStreamTest {

  private static final long SEED = 2718281828L;
  private static final int DRAWS = 20_000;

  @Test
  void streamDependsOnSeedAndIndexAlone() {
    assertThat(RandomStream.of(1, 5).uniform()).isEqualTo(RandomStream.of(1, 5).uniform());
    assertThat(RandomStream.of(1, 5).uniform()).isNotEqualTo(RandomStream.of(1, 6).uniform());
    assertThat(RandomStream.of(1, 5).uniform()).isNotEqualTo(RandomStream.of(2, 5).uniform());
  }

  @Test
  void neighbouringStreamsAreIndependent() {
    double sum = 0;
    Set<Double> seen = new HashSet<>();
    for (int i = 0; i < DRAWS; i++) {
      double a = RandomStream.of(SEED, i).normal();
      double b = RandomStream.of(SEED, i + 1).normal();
      sum += a * b;
      seen.add(a);
    }
    assertThat(seen).hasSize(DRAWS);
    // product of independent normals has variance 1: four standard errors
    assertThat(sum / DRAWS).isCloseTo(0, within(4 / Math.sqrt(DRAWS)));
  }

  @Test
  void scalarDrawsFollowTheirDistributions() {
    assertFollows(RandomStream::uniform, x -> x, 1);
    assertFollows(r -> r.uniform(2, 4), x -> (x - 2) / 2, 2);
    NormalDistribution normal = new NormalDistribution(3, 0.5);
    assertFollows(r -> r.normal(3, 0.5), normal::cumulativeProbability, 3);
    TriangularDistribution triangular = new TriangularDistribution(-1, 0.2, 3);
    assertFollows(r -> r.triangular(-1, 0.2, 3), triangular::cumulativeProbability, 4);
    assertFollows(r -> r.arcsine(0, 2), x -> 2 / Math.PI * Math.asin(Math.sqrt(x / 2)), 5);
    double low = normal.cumulativeProbability(3.2);
    double part = normal.cumulativeProbability(4.5) - low;
    assertFollows(
        r -> r.truncatedNormal(3, 0.5, 3.2, 4.5),
        x -> (normal.cumulativeProbability(x) - low) / part,
        6);
  }

  @Test
  void discAndSphereAreFilledEvenly() {
    assertFollows(r -> Math.pow(r.unitDisc().norm(), 2), x -> x, 7);
    assertFollows(r -> azimuth(r.unitDisc()), x -> (x + Math.PI) / (2 * Math.PI), 8);
    assertFollows(r -> r.unitVector().x(), x -> (x + 1) / 2, 9);
    assertFollows(r -> r.unitVector().z(), x -> (x + 1) / 2, 10);
    assertThat(RandomStream.of(SEED, 0).unitVector().norm()).isCloseTo(1, within(1e-15));
    assertThat(RandomStream.of(SEED, 0).unitDisc().z()).isZero();
  }

  @Test
  void everyScalarDrawUsesOneUniformNumber() {
    RandomStream first = RandomStream.of(SEED, 3);
    RandomStream second = RandomStream.of(SEED, 3);
    first.normal();
    first.truncatedNormal(0, 1, -2, 1);
    first.triangular(0, 1, 2);
    first.arcsine(0, 1);
    for (int i = 0; i < 4; i++) {
      second.uniform();
    }
    assertThat(first.uniform()).isEqualTo(second.uniform());
  }

  @Test
  void impossibleDistributionsAreRefused() {
    RandomStream r = RandomStream.of(SEED, 0);
    assertThatThrownBy(() -> r.uniform(1, 0)).hasMessageContaining("rising order");
    assertThatThrownBy(() -> r.normal(0, -1)).hasMessageContaining("-1");
    assertThatThrownBy(() -> r.truncatedNormal(0, 1, 20, 30)).hasMessageContaining("no part");
    assertThatThrownBy(() -> r.truncatedNormal(0, 0, 1, 2)).hasMessageContaining("positive");
    assertThat(r.normal(7, 0)).isEqualTo(7);
    assertThat(r.triangular(2, 2, 2)).isEqualTo(2);
  }

  private static double azimuth(Vec3 v) {
    return Math.atan2(v.y(), v.x());
  }

  private static void assertFollows(
      ToDoubleFunction<RandomStream> draw, DoubleUnaryOperator distribution, long index) {
    RandomStream stream = RandomStream.of(SEED, index);
    double[] u = new double[DRAWS];
    for (int i = 0; i < DRAWS; i++) {
      u[i] = distribution.applyAsDouble(draw.applyAsDouble(stream));
    }
    double p =
        new KolmogorovSmirnovTest().kolmogorovSmirnovTest(new UniformRealDistribution(0, 1), u);
    assertThat(p).as("seed %d index %d", SEED, index).isGreaterThan(0.001);
  }

  @Test
  void aNormalNumberCutOffAtLimitsHasTheMeanOfThePartBetween() {
    // mean of a standard normal number between a and b: (phi(a) - phi(b))/(Phi(b) - Phi(a)), from
    // the density; phi, Phi computed independently: (-1, 2) 0.229638, (1, 3) 1.509950,
    // (-3, -1) -1.509950
    double[][] cuts = {{-1, 2, 0.229638}, {1, 3, 1.509950}, {-3, -1, -1.509950}};
    for (double[] cut : cuts) {
      RandomStream draw = RandomStream.of(SEED, 11);
      double sum = 0;
      int count = 20_000;
      for (int i = 0; i < count; i++) {
        double v = draw.truncatedNormal(10, 0.5, 10 + 0.5 * cut[0], 10 + 0.5 * cut[1]);
        assertThat(v).isBetween(10 + 0.5 * cut[0], 10 + 0.5 * cut[1]);
        sum += (v - 10) / 0.5;
      }
      assertThat(sum / count).as("seed %d", SEED).isCloseTo(cut[2], within(0.02));
    }
  }

  @Test
  void theEndsOfASwingAreMostLikelyAndItsMiddleIsItsMean() {
    RandomStream draw = RandomStream.of(SEED, 12);
    int count = 20_000;
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < count; i++) {
      double v = draw.arcsine(-1, 5);
      assertThat(v).isBetween(-1.0, 5.0);
      sum += v;
      squares += (v - 2) * (v - 2);
    }
    assertThat(sum / count).isCloseTo(2, within(0.05));
    assertThat(Math.sqrt(squares / count)).isCloseTo(6 / Math.sqrt(8), within(0.02));
  }

  @Test
  void limitsThatFallAreRefusedByEveryDraw() {
    RandomStream draw = RandomStream.of(SEED, 13);
    List<ThrowingCallable> wrong =
        List.of(
            () -> draw.uniform(1, 0),
            () -> draw.uniform(-Double.MAX_VALUE, Double.MAX_VALUE),
            () -> draw.truncatedNormal(0, 1, 1, 0),
            () -> draw.triangular(1, 0, 2),
            () -> draw.triangular(0, 3, 2),
            () -> draw.arcsine(1, 0));
    for (ThrowingCallable w : wrong) {
      assertThatThrownBy(w)
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("limits must be finite and in rising order");
    }
    assertThat(draw.uniform(2, 2)).isEqualTo(2);
    assertThat(draw.triangular(2, 2, 2)).isEqualTo(2);
    assertThat(draw.arcsine(2, 2)).isEqualTo(2);
    assertThatThrownBy(() -> draw.truncatedNormal(0, 1, 20, 21))
        .hasMessageContaining("hold no part of a normal distribution");
  }
}
