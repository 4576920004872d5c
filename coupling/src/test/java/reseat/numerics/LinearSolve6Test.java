package reseat.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.junit.jupiter.api.Test;

/** Both 6x6 solves against EJML on random systems. */
class LinearSolve6Test {

  private static final long SEED = 20260101;

  @Test
  void symmetricSolveAgreesWithTheLibraryForRandomStiffnesses() {
    for (int trial = 0; trial < 200; trial++) {
      RandomStream random = RandomStream.of(SEED, trial);
      double[] a = stiffness(random);
      double[] b = vector(random);
      double[] expected = libraryAnswer(a, b);
      double[] factored = a.clone();
      assertThat(SymmetricSolve6.factor(factored)).as("seed %d trial %d", SEED, trial).isTrue();
      SymmetricSolve6.solve(factored, b);
      assertClose(b, expected, trial);
    }
  }

  @Test
  void generalSolveAgreesWithTheLibraryForRandomMatrices() {
    for (int trial = 0; trial < 200; trial++) {
      RandomStream random = RandomStream.of(SEED + 1, trial);
      double[] a = new double[36];
      for (int i = 0; i < 36; i++) {
        // rows of very unequal size, as newtons beside newton metres
        a[i] = random.normal() * (i / 6 < 3 ? 1e8 : 1e3);
      }
      double[] b = vector(random);
      double[] expected = libraryAnswer(a, b);
      assertThat(Solve6.solve(a.clone(), b)).as("seed %d trial %d", SEED + 1, trial).isTrue();
      assertClose(b, expected, trial);
    }
  }

  @Test
  void generalSolveExchangesRowsWhenTheDiagonalIsEmpty() {
    double[] cyclic = new double[36];
    for (int i = 0; i < 6; i++) {
      cyclic[6 * i + (i + 1) % 6] = 2;
    }
    double[] b = {2, 4, 6, 8, 10, 12};
    assertThat(Solve6.solve(cyclic, b)).isTrue();
    assertThat(b).containsExactly(6, 1, 2, 3, 4, 5);
  }

  @Test
  void aCouplingThatIsFreeInOneDirectionIsReportedSingular() {
    double[] wrenches = new double[36];
    for (int column = 0; column < 5; column++) {
      RandomStream random = RandomStream.of(SEED + 2, column);
      for (int i = 0; i < 6; i++) {
        wrenches[6 * i + column] = random.normal();
      }
    }
    for (int i = 0; i < 6; i++) {
      wrenches[6 * i + 5] = wrenches[6 * i] + wrenches[6 * i + 1];
    }
    double[] stiffness = gram(wrenches);
    assertThat(SymmetricSolve6.factor(stiffness)).isFalse();
    assertThat(Solve6.solve(wrenches.clone(), new double[6])).isFalse();
  }

  @Test
  void indefiniteOrNotFiniteMatricesAreReported() {
    double[] a = new double[36];
    for (int i = 0; i < 6; i++) {
      a[7 * i] = i == 4 ? -1 : 1;
    }
    assertThat(SymmetricSolve6.factor(a.clone())).isFalse();
    a[7 * 4] = Double.NaN;
    assertThat(SymmetricSolve6.factor(a.clone())).isFalse();
    assertThat(Solve6.solve(a.clone(), new double[6])).isFalse();
    assertThat(Solve6.solve(new double[36], new double[6])).isFalse();
  }

  /** Two freedoms that hang together, all others apart; the second has a pivot of one part in p. */
  private static double[] hangingTogether(int row, double part, double scale) {
    double[] a = new double[36];
    for (int i = 0; i < 6; i++) {
      a[7 * i] = scale;
    }
    int other = row == 0 ? 5 : 0;
    a[6 * row + other] = scale * Math.sqrt(1 - part);
    a[6 * other + row] = a[6 * row + other];
    return a;
  }

  @Test
  void aPivotThatIsRoundingIsReportedInWhateverRowAndUnit() {
    for (double scale : new double[] {1e-8, 1, 1e8}) {
      for (int row = 1; row < 6; row++) {
        assertThat(SymmetricSolve6.factor(hangingTogether(row, 1e-11, scale)))
            .as("row %d, scale %g", row, scale)
            .isTrue();
        assertThat(SymmetricSolve6.factor(hangingTogether(row, 1e-14, scale)))
            .as("row %d, scale %g", row, scale)
            .isFalse();
      }
    }
  }

  @Test
  void aGeneralSystemIsSingularInWhateverRowAndUnit() {
    for (double scale : new double[] {1e-12, 1, 1e12}) {
      for (int row = 0; row < 6; row++) {
        double[] a = new double[36];
        double[] b = new double[6];
        for (int i = 0; i < 6; i++) {
          a[7 * i] = scale;
          b[i] = (i + 1) * scale;
        }
        double[] x = b.clone();
        assertThat(Solve6.solve(a.clone(), x)).isTrue();
        assertThat(x).containsExactly(new double[] {1, 2, 3, 4, 5, 6}, within(1e-12));
        // a row that another repeats to the last digits
        int other = (row + 1) % 6;
        for (int j = 0; j < 6; j++) {
          a[6 * row + j] = a[6 * other + j] * 3;
        }
        assertThat(Solve6.solve(a.clone(), b.clone())).as("row %d", row).isFalse();
        a[6 * row + row] = Double.POSITIVE_INFINITY;
        assertThat(Solve6.solve(a.clone(), b.clone())).as("infinite in row %d", row).isFalse();
      }
    }
  }

  @Test
  void aRowWithoutStiffnessOrWithNoNumberIsReported() {
    for (int row = 0; row < 6; row++) {
      for (double bad : new double[] {0, -1, Double.NaN}) {
        double[] a = new double[36];
        for (int i = 0; i < 6; i++) {
          a[7 * i] = i == row ? bad : 1;
        }
        assertThat(SymmetricSolve6.factor(a)).as("row %d with %g", row, bad).isFalse();
      }
    }
  }

  private static double[] stiffness(RandomStream random) {
    double[] w = new double[36];
    for (int i = 0; i < 36; i++) {
      w[i] = random.normal() * (i / 6 < 3 ? 1 : 0.05);
    }
    double[] k = gram(w);
    for (int i = 0; i < 6; i++) {
      k[7 * i] *= 1.05;
    }
    return k;
  }

  private static double[] gram(double[] w) {
    double[] k = new double[36];
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        for (int c = 0; c < 6; c++) {
          k[6 * i + j] += w[6 * i + c] * w[6 * j + c];
        }
      }
    }
    return k;
  }

  private static double[] vector(RandomStream random) {
    double[] b = new double[6];
    for (int i = 0; i < 6; i++) {
      b[i] = random.uniform(-1, 1);
    }
    return b;
  }

  private static double[] libraryAnswer(double[] a, double[] b) {
    DMatrixRMaj x = new DMatrixRMaj(6, 1);
    CommonOps_DDRM.solve(
        new DMatrixRMaj(6, 6, true, a.clone()), new DMatrixRMaj(6, 1, true, b.clone()), x);
    return x.data;
  }

  private static void assertClose(double[] found, double[] expected, int trial) {
    double size = 0;
    for (double v : expected) {
      size = Math.max(size, Math.abs(v));
    }
    for (int i = 0; i < 6; i++) {
      assertThat(found[i]).as("trial %d", trial).isCloseTo(expected[i], within(1e-9 * size));
    }
  }
}
