package reseat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.apache.commons.math3.stat.correlation.Covariance;
import org.junit.jupiter.api.Test;

/** Covariance over axes: by hand, and against a second road. */
class ScatterMatrixTest {

  private static final List<String> AXES = List.of("X", "Y", "Z");

  private static final ScatterMatrix M =
      ScatterMatrix.of(AXES, new double[][] {{4, 1, -2}, {1, 9, 3}, {-2, 3, 16}});

  @Test
  void covarianceOfASeriesIsThatOfTheBook() {
    double[] x = {1, 2, 4, 3, 5};
    double[] y = {2, 1, 0, 4, 9};
    double[] z = {5, 5, 1, 2, 7};
    double[][] rows = new double[5][];
    for (int i = 0; i < 5; i++) {
      rows[i] = new double[] {x[i], y[i], z[i]};
    }
    double[][] expected = new Covariance(rows).getCovarianceMatrix().getData();
    ScatterMatrix found = ScatterMatrix.ofSeries(AXES, List.of(x, y, z));
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        assertThat(found.get(i, j)).isCloseTo(expected[i][j], within(1e-12));
      }
    }
    assertThat(found.axes()).isEqualTo(AXES);
  }

  @Test
  void aPartKeepsItsEntriesInTheOrderWanted() {
    ScatterMatrix part = M.over(List.of("Z", "X"));
    assertThat(part.toArray()).containsExactly(16, -2, -2, 4);
    assertThat(M.total()).isEqualTo(29);
    assertThat(part.total()).isEqualTo(20);
  }

  @Test
  void aMultipleOfAnotherIsAddedEntryByEntry() {
    assertThat(M.plus(-2, M).toArray()).containsExactly(-4, -1, 2, -1, -9, -3, 2, -3, -16);
  }

  @Test
  void smallAsymmetryIsTakenAsTheMeanOfBoth() {
    ScatterMatrix almost =
        ScatterMatrix.of(List.of("X", "Y"), new double[][] {{4, 1 + 3e-9}, {1, 4}});
    assertThat(almost.get(0, 1)).isEqualTo(almost.get(1, 0)).isCloseTo(1 + 1.5e-9, within(1e-13));
  }

  @Test
  void alignmentIsOneForMultiplesAndNothingWithNothing() {
    assertThat(M.alignment(M.plus(2, M))).isCloseTo(1, within(1e-12));
    ScatterMatrix none = M.plus(-1, M);
    assertThat(M.alignment(none)).isZero();
    assertThat(none.alignment(M)).isZero();
    ScatterMatrix x = ScatterMatrix.of(List.of("X", "Y"), new double[][] {{3, 0}, {0, 0}});
    ScatterMatrix both = ScatterMatrix.of(List.of("X", "Y"), new double[][] {{1, 0}, {0, 1}});
    assertThat(x.alignment(both)).isCloseTo(1 / Math.sqrt(2), within(1e-12));
  }
}
