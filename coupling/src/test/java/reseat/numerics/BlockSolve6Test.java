package reseat.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BlockSolve6Test {

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void theSolutionPutBackGivesTheRightSides(long seed) {
    RandomStream luck = RandomStream.of(17, seed);
    double[] m = new double[36];
    double[] r = new double[36];
    for (int i = 0; i < 36; i++) {
      m[i] = (i % 7 == 0 ? 3 : 0) + luck.uniform(-1, 1);
      r[i] = luck.normal();
    }
    double[] x = new double[36];
    assertThat(new BlockSolve6().solve(m, r, x)).as("seed %d", seed).isTrue();
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        double sum = 0;
        for (int k = 0; k < 6; k++) {
          sum += m[6 * i + k] * x[6 * k + j];
        }
        assertThat(sum).as("seed %d", seed).isCloseTo(r[6 * i + j], within(1e-11));
      }
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 3})
  void aBlockWithoutInverseIsRefused(int empty) {
    double[] m = new double[36];
    for (int i = 0; i < 6; i++) {
      m[7 * i] = i == empty ? 0 : 1;
    }
    assertThat(new BlockSolve6().solve(m, new double[36], new double[36])).isFalse();
  }
}
