package reseat.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The decompositions must satisfy the equations that define them. */
class DecompositionsTest {

  private static final long SEED = 417;

  @Test
  void aMatrixThatIsNotQuiteSymmetricCountsAsTheMeanOfItselfAndItsMirror() {
    // mean off the diagonal 1: eigenvalues 2 -+ 1, vectors at 45 deg
    SymmetricEigen eigen = SymmetricEigen.of(new double[] {2, 0.4, 1.6, 2}, 2);
    assertThat(eigen.size()).isEqualTo(2);
    assertThat(eigen.value(0)).isCloseTo(1, within(1e-14));
    assertThat(eigen.value(1)).isCloseTo(3, within(1e-14));
  }

  @Test
  void theLargestEntryOfAnEigenvectorIsPositiveAndATieGoesToTheFirst() {
    RandomStream random = RandomStream.of(SEED, 9);
    for (int trial = 0; trial < 50; trial++) {
      double[] a = symmetric(random, 6);
      SymmetricEigen eigen = SymmetricEigen.of(a, 6);
      for (int k = 0; k < 6; k++) {
        double largest = 0;
        for (double entry : eigen.vector(k)) {
          largest = Math.abs(entry) > Math.abs(largest) ? entry : largest;
        }
        assertThat(largest).isPositive();
      }
    }
    double[] softer = SymmetricEigen.of(new double[] {2, 1, 1, 2}, 2).vector(0);
    assertThat(softer[0]).isCloseTo(Math.sqrt(0.5), within(1e-14));
    assertThat(softer[1]).isCloseTo(-Math.sqrt(0.5), within(1e-14));
  }

  @Test
  void rankDoesNotDependOnTheUnit() {
    for (double scale : new double[] {1e-9, 1e9}) {
      double[] a = {scale, 0, 0, 0, 1e-6 * scale, 0, 0, 0, 1e-12 * scale};
      SingularValues svd = SingularValues.of(a, 3, 3);
      assertThat(svd.rank(1e-9)).isEqualTo(2);
      assertThat(svd.rank(1e-5)).isEqualTo(1);
    }
  }

  @Test
  void eigenvectorsAreTurnedIntoMultiplesOfThemselves() {
    RandomStream random = RandomStream.of(SEED, 0);
    double[] a = symmetric(random, 6);
    SymmetricEigen eigen = SymmetricEigen.of(a, 6);
    for (int i = 0; i < 6; i++) {
      double[] v = eigen.vector(i);
      double[] av = product(a, v, 6);
      for (int r = 0; r < 6; r++) {
        assertThat(av[r]).isCloseTo(eigen.value(i) * v[r], within(1e-13));
      }
      assertThat(dot(v, v)).isCloseTo(1, within(1e-14));
      if (i > 0) {
        assertThat(eigen.value(i)).isGreaterThanOrEqualTo(eigen.value(i - 1));
      }
    }
  }

  @Test
  void singularDirectionsAreStretchedByTheirSingularValue() {
    RandomStream random = RandomStream.of(SEED, 1);
    double[] a = new double[30];
    for (int i = 0; i < 30; i++) {
      a[i] = random.normal();
    }
    SingularValues svd = SingularValues.of(a, 5, 6);
    assertThat(svd.size()).isEqualTo(5);
    assertThat(svd.rank(1e-9)).isEqualTo(5);
    for (int i = 0; i < 6; i++) {
      double[] right = svd.right(i);
      for (int r = 0; r < 5; r++) {
        double sum = 0;
        for (int c = 0; c < 6; c++) {
          sum += a[6 * r + c] * right[c];
        }
        double expected = i < 5 ? svd.value(i) * svd.left(i)[r] : 0;
        assertThat(sum).isCloseTo(expected, within(1e-13));
      }
    }
    assertThat(svd.conditionNumber()).isEqualTo(svd.value(0) / svd.smallest());
  }

  @Test
  void rankDropsWhenOneRowRepeatsAnother() {
    double[] a = {1, 2, 3, 2, 4, 6, 0, 1, 0};
    SingularValues svd = SingularValues.of(a, 3, 3);
    assertThat(svd.rank(1e-9)).isEqualTo(2);
    assertThat(SingularValues.of(new double[9], 3, 3).rank(1e-9)).isZero();
    assertThat(SingularValues.of(new double[9], 3, 3).conditionNumber()).isInfinite();
  }

  @Test
  void modesBalanceSpringAndInertiaForces() {
    RandomStream random = RandomStream.of(SEED, 2);
    double[] k = positive(random, 6);
    double[] m = positive(random, 6);
    GeneralizedEigen modes = GeneralizedEigen.of(k, m, 6);
    for (int i = 0; i < 6; i++) {
      double[] x = modes.mode(i);
      double[] kx = product(k, x, 6);
      double[] mx = product(m, x, 6);
      for (int r = 0; r < 6; r++) {
        assertThat(kx[r]).isCloseTo(modes.value(i) * mx[r], within(1e-9 * modes.value(5)));
      }
      assertThat(dot(x, mx)).isCloseTo(1, within(1e-11));
    }
  }

  @Test
  void twoMassesOnTwoSpringsHaveTheirTextbookFrequencies() {
    // unit masses, unit springs wall-1-2: w^2 = (3 -+ sqrt 5)/2
    GeneralizedEigen modes =
        GeneralizedEigen.of(new double[] {2, -1, -1, 1}, new double[] {1, 0, 0, 1}, 2);
    assertThat(modes.value(0)).isCloseTo((3 - Math.sqrt(5)) / 2, within(1e-14));
    assertThat(modes.value(1)).isCloseTo((3 + Math.sqrt(5)) / 2, within(1e-14));
    assertThat(modes.frequency(1))
        .isCloseTo(Math.sqrt((3 + Math.sqrt(5)) / 2) / (2 * Math.PI), within(1e-14));
  }

  @Test
  void badMatricesAreRefusedInWords() {
    assertThatThrownBy(() -> SymmetricEigen.of(new double[35], 6))
        .hasMessage("6 x 6 entries wanted, found 35");
    assertThatThrownBy(() -> SymmetricEigen.of(new double[] {Double.NaN}, 1))
        .hasMessageContaining("finite");
    assertThatThrownBy(
            () -> GeneralizedEigen.of(new double[] {1, 0, 0, 1}, new double[] {1, 0, 0, 0}, 2))
        .hasMessageContaining("mass matrix is not positive definite");
  }

  private static double[] symmetric(RandomStream random, int n) {
    double[] a = new double[n * n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        a[n * i + j] = a[n * j + i] = random.normal();
      }
    }
    return a;
  }

  private static double[] positive(RandomStream random, int n) {
    double[] s = symmetric(random, n);
    double[] a = new double[n * n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        for (int c = 0; c < n; c++) {
          a[n * i + j] += s[n * i + c] * s[n * j + c];
        }
      }
      a[(n + 1) * i] += 0.5;
    }
    return a;
  }

  private static double[] product(double[] a, double[] x, int n) {
    double[] out = new double[n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        out[i] += a[n * i + j] * x[j];
      }
    }
    return out;
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
