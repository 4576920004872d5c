package reseat.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.stat.inference.ChiSquareTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Chi-square over fifty equally likely bins at a fixed seed; p below 0.001 would be a defect. */
class DistributionShapeTest {

  private static final long SEED = 57_721L;
  private static final int DRAWS = 200_000;
  private static final int BINS = 50;

  private static DoubleUnaryOperator distribution(DistributionShape shape) {
    return switch (shape) {
      case UNIFORM -> x -> (x + 1) / 2;
      case TRIANGULAR -> x -> x < 0 ? (1 + x) * (1 + x) / 2 : 1 - (1 - x) * (1 - x) / 2;
      case ARCSINE -> x -> 0.5 + Math.asin(x) / Math.PI;
      case NORMAL -> {
        NormalDistribution n = new NormalDistribution(0, 0.5);
        double low = n.cumulativeProbability(-1);
        yield x -> (n.cumulativeProbability(x) - low) / (1 - 2 * low);
      }
    };
  }

  @ParameterizedTest
  @EnumSource(DistributionShape.class)
  void drawsFollowTheirDistribution(DistributionShape shape) {
    RandomStream stream = RandomStream.of(SEED, shape.name().length());
    DoubleUnaryOperator distribution = distribution(shape);
    long[] counts = new long[BINS];
    for (int i = 0; i < DRAWS; i++) {
      double u = distribution.applyAsDouble(shape.draw(stream));
      counts[(int) Math.min(BINS - 1, BINS * u)]++;
    }
    double[] expected = new double[BINS];
    java.util.Arrays.fill(expected, (double) DRAWS / BINS);
    assertThat(new ChiSquareTest().chiSquareTest(expected, counts))
        .as("seed %d", SEED)
        .isGreaterThan(0.001);
  }

  @ParameterizedTest
  @EnumSource(DistributionShape.class)
  void momentsAreThoseOfTheDraws(DistributionShape shape) {
    RandomStream stream = RandomStream.of(SEED, 99);
    double second = 0;
    double fourth = 0;
    double largest = 0;
    for (int i = 0; i < DRAWS; i++) {
      double x = shape.draw(stream);
      second += x * x / DRAWS;
      fourth += x * x * x * x / DRAWS;
      largest = Math.max(largest, Math.abs(x));
    }
    assertThat(largest).isLessThanOrEqualTo(1);
    // half a percent and two percent are over four standard errors for all four shapes
    double s = shape.standardDeviationPerLimit();
    assertThat(second).isCloseTo(s * s, within(0.005 * 2 * s * s));
    double kurtosis = fourth / (second * second) - 3;
    assertThat(kurtosis).isCloseTo(shape.excessKurtosis(), within(0.02));
    assertThat(new Distribution(3, shape).standardDeviation()).isCloseTo(3 * s, within(1e-15));
  }

  @Test
  void aSpreadIsItsLimitTimesTheDrawOfItsShape() {
    for (DistributionShape shape : DistributionShape.values()) {
      Distribution spread = new Distribution(0.25, shape);
      double plain = shape.draw(RandomStream.of(7, 1));
      assertThat(spread.draw(RandomStream.of(7, 1))).isEqualTo(0.25 * plain);
      assertThat(spread.times(3, 10)).isEqualTo(new Distribution(0.75, shape));
      assertThat(spread.times(3, 0.5)).isEqualTo(new Distribution(0.5, shape));
      assertThat(shape.words()).isNotBlank();
      assertThat(spread.standardDeviation()).isEqualTo(0.25 * shape.standardDeviationPerLimit());
    }
    assertThat(Arrays.stream(DistributionShape.values()).map(DistributionShape::words))
        .doesNotHaveDuplicates();
    assertThat(Distribution.NONE.draw(RandomStream.of(7, 1))).isZero();
  }
}
