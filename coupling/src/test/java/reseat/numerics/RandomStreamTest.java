package reseat.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.UniformRealDistribution;
import org.apache.commons.math3.stat.inference.KolmogorovSmirnovTest;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import reseat.space.RandomDirection;
import org.junit.jupiter.api.Test;

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
  void theNumbersAreThoseOfTheGeneratorOfJava() {
    RandomGeneratorFactory<RandomGenerator> javas = RandomGeneratorFactory.of("L64X128MixRandom");
    for (int i = 0; i < 50; i++) {
      long seed = mixed(SEED + i);
      long index = i - 20L;
      RandomStream ours = RandomStream.of(seed, index);
      RandomGenerator java = javas.create(mixed(mixed(seed) + 0x9e3779b97f4a7c15L * index));
      for (int k = 0; k < 1000; k++) {
        assertThat(ours.uniform()).isEqualTo(((java.nextLong() >>> 12) + 0.5) * 0x1p-52);
        int bound = 1 + (int) (Math.abs(mixed(k)) % (k % 3 == 0 ? Integer.MAX_VALUE : 12));
        assertThat(ours.below(bound)).isEqualTo(java.nextInt(bound));
      }
    }
  }

  private static long mixed(long z) {
    z = (z ^ (z >>> 30)) * 0xbf58476d1ce4e5b9L;
    z = (z ^ (z >>> 27)) * 0x94d049bb133111ebL;
    return z ^ (z >>> 31);
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
  }

  @Test
  void theSphereIsFilledEvenly() {
    assertFollows(r -> RandomDirection.of(r).x(), x -> (x + 1) / 2, 9);
    assertFollows(r -> RandomDirection.of(r).z(), x -> (x + 1) / 2, 10);
    assertThat(RandomDirection.of(RandomStream.of(SEED, 0)).norm()).isCloseTo(1, within(1e-15));
  }

  @Test
  void everyScalarDrawUsesOneUniformNumber() {
    RandomStream first = RandomStream.of(SEED, 3);
    RandomStream second = RandomStream.of(SEED, 3);
    first.normal();
    first.normal(7, 2);
    first.normalWithinTwo();
    for (int i = 0; i < 3; i++) {
      second.uniform();
    }
    assertThat(first.uniform()).isEqualTo(second.uniform());
  }

  @Test
  void impossibleDistributionsAreRefused() {
    RandomStream r = RandomStream.of(SEED, 0);
    assertThatThrownBy(() -> r.uniform(1, 0)).hasMessageContaining("rising order");
    assertThatThrownBy(() -> r.normal(0, -1)).hasMessageContaining("-1");
    assertThat(r.normal(7, 0)).isEqualTo(7);
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
  void limitsThatFallAreRefusedByEveryDraw() {
    RandomStream draw = RandomStream.of(SEED, 13);
    List<ThrowingCallable> wrong =
        List.of(() -> draw.uniform(1, 0), () -> draw.uniform(-Double.MAX_VALUE, Double.MAX_VALUE));
    for (ThrowingCallable w : wrong) {
      assertThatThrownBy(w)
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("limits must be finite and in rising order");
    }
    assertThat(draw.uniform(2, 2)).isEqualTo(2);
  }
}
