package reseat.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Against triangular factors, and on matrices that have no inverse. */
final class Inverse6Test {

  @Test
  void solvesAsTriangularFactorsDoWhateverRowMustBeThePivot() {
    long seed = 20261125;
    Random random = new Random(seed);
    Inverse6 inverse = new Inverse6();
    Lu6 lu = new Lu6();
    for (int trial = 0; trial < 500; trial++) {
      double[] a = new double[36];
      double[] b = new double[6];
      for (int i = 0; i < 36; i++) {
        a[i] = i % 7 == 0 ? 0 : random.nextGaussian(); // nothing on the diagonal: rows must move
      }
      for (int i = 0; i < 6; i++) {
        b[i] = random.nextGaussian();
      }
      assertThat(inverse.invert(a)).isTrue();
      assertThat(lu.factor(a)).isTrue();
      double[] x = new double[6];
      double[] expected = new double[6];
      inverse.solve(b, x);
      lu.solve(b, expected);
      assertThat(x).as("seed %d, trial %d", seed, trial).containsExactly(expected, within(1e-9));
      inverse.solveTransposed(b, x);
      lu.solveTransposed(b, expected);
      assertThat(x).as("seed %d, trial %d", seed, trial).containsExactly(expected, within(1e-9));
    }
  }

  @Test
  void saysWhenThereIsNoInverse() {
    double[] twoRowsAlike = new double[36];
    for (int i = 0; i < 6; i++) {
      twoRowsAlike[7 * i] = 1;
    }
    twoRowsAlike[7] = 0;
    twoRowsAlike[6] = 1;
    assertThat(new Inverse6().invert(twoRowsAlike)).isFalse();
    assertThat(new Inverse6().invert(new double[36])).isFalse();
    double[] notFinite = twoRowsAlike.clone();
    notFinite[7] = Double.POSITIVE_INFINITY;
    assertThat(new Inverse6().invert(notFinite)).isFalse();
  }

  @Test
  void whatIsRoundingDependsOnTheMatrixAndNotOnItsUnit() {
    for (double scale : new double[] {1e-12, 1, 1e12}) {
      double[] a = new double[36];
      for (int i = 0; i < 6; i++) {
        a[7 * i] = scale;
      }
      for (int row = 0; row < 6; row++) {
        double[] thin = a.clone();
        thin[7 * row] = 1e-12 * scale;
        assertThat(new Inverse6().invert(thin)).as("row %d, scale %g", row, scale).isTrue();
        assertThat(new Lu6().factor(thin)).as("row %d, scale %g", row, scale).isTrue();
        thin[7 * row] = 1e-15 * scale;
        assertThat(new Inverse6().invert(thin)).as("row %d, scale %g", row, scale).isFalse();
        assertThat(new Lu6().factor(thin)).as("row %d, scale %g", row, scale).isFalse();
      }
    }
    assertThat(new Lu6().factor(new double[36])).isFalse();
  }
}
