package reseat.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.stat.correlation.Covariance;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Test;
import reseat.space.Vec3;

class RunningStatisticsTest {

  private static final long SEED = 99;

  @Test
  void scatterOfTenNanometresOnAHundredMillimetresSurvives() {
    RunningStatistics running = new RunningStatistics();
    DescriptiveStatistics whole = new DescriptiveStatistics();
    RandomStream random = RandomStream.of(SEED, 0);
    for (int i = 0; i < 1000; i++) {
      double reading = random.normal(0.1, 10e-9);
      running.add(reading);
      whole.addValue(reading);
    }
    assertThat(running.count()).isEqualTo(1000);
    assertThat(running.mean()).isCloseTo(whole.getMean(), within(1e-15));
    assertThat(running.standardDeviation())
        .isCloseTo(whole.getStandardDeviation(), within(1e-8 * 10e-9));
    assertThat(running.minimum()).isEqualTo(whole.getMin());
    assertThat(running.maximum()).isEqualTo(whole.getMax());
    assertThat(running.range()).isEqualTo(whole.getMax() - whole.getMin());
  }

  @Test
  void mergedPartsEqualTheWhole() {
    RunningStatistics whole = new RunningStatistics();
    RunningStatistics sum = new RunningStatistics();
    RandomStream random = RandomStream.of(SEED, 1);
    for (int part = 0; part < 7; part++) {
      RunningStatistics one = new RunningStatistics();
      for (int i = 0; i < part * 5; i++) {
        double x = random.normal(1.3, 0.8);
        one.add(x);
        whole.add(x);
      }
      sum.merge(one);
    }
    assertThat(sum.count()).isEqualTo(whole.count());
    assertThat(sum.mean()).isCloseTo(whole.mean(), within(1e-14));
    assertThat(sum.variance()).isCloseTo(whole.variance(), within(1e-14));
    assertThat(sum.minimum()).isEqualTo(whole.minimum());
    assertThat(sum.maximum()).isEqualTo(whole.maximum());
  }

  @Test
  void covarianceOfVectorsAgreesWithTheLibraryWholeAndMerged() {
    List<double[]> rows = new ArrayList<>();
    RunningCovariance whole = new RunningCovariance();
    RunningCovariance merged = new RunningCovariance();
    RandomStream random = RandomStream.of(SEED, 2);
    for (int part = 0; part < 5; part++) {
      RunningCovariance one = new RunningCovariance();
      for (int i = 0; i < 20; i++) {
        double u = random.normal();
        double v = random.normal();
        Vec3 p = new Vec3(5 + u, u + 2 * v, 3 * v - 1);
        rows.add(new double[] {p.x(), p.y(), p.z()});
        whole.add(p);
        one.add(p);
      }
      merged.merge(one);
    }
    double[][] expected =
        new Covariance(rows.toArray(new double[0][])).getCovarianceMatrix().getData();
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        assertThat(whole.covariance(i, j)).isCloseTo(expected[i][j], within(1e-12));
        assertThat(merged.covariance()[3 * i + j]).isCloseTo(expected[i][j], within(1e-12));
      }
    }
    assertThat(merged.mean().distanceTo(whole.mean())).isLessThan(1e-13);
    assertThat(merged.minimum()).isEqualTo(whole.minimum());
    assertThat(merged.maximum()).isEqualTo(whole.maximum());
    assertThat(whole.standardDeviation().x()).isCloseTo(Math.sqrt(expected[0][0]), within(1e-12));
  }

  @Test
  void statisticsOfTooFewValuesAreRefusedRatherThanNaN() {
    RunningStatistics none = new RunningStatistics();
    assertThatThrownBy(none::mean).isInstanceOf(IllegalStateException.class);
    none.add(1);
    assertThatThrownBy(none::variance).hasMessageContaining("at least 2");
    assertThatThrownBy(() -> none.add(Double.NaN)).hasMessageContaining("found NaN");
    assertThatThrownBy(() -> new RunningCovariance().covariance(0, 1))
        .isInstanceOf(IllegalStateException.class);
  }
}
