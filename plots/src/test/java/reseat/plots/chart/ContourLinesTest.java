package reseat.plots.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.plots.scene.Point;

class ContourLinesTest {

  private static ContourLines bowl(int n) {
    double[] xs = new double[n];
    double[] ys = new double[n];
    double[][] v = new double[n][n];
    for (int i = 0; i < n; i++) {
      xs[i] = -2 + 4.0 * i / (n - 1);
      ys[i] = xs[i];
    }
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        v[i][j] = xs[i] * xs[i] + ys[j] * ys[j];
      }
    }
    return ContourLines.of(xs, ys, v);
  }

  @Test
  void theLineOfABowlIsOneClosedCircle() {
    List<List<Point>> lines = bowl(81).lines(1);
    assertThat(lines).hasSize(1);
    List<Point> circle = lines.get(0);
    assertThat(circle.get(0)).isEqualTo(circle.get(circle.size() - 1));
    assertThat(circle)
        .allSatisfy(p -> assertThat(Math.hypot(p.x(), p.y())).isCloseTo(1, within(2e-3)));
  }

  @Test
  void theAreasBelowAndAboveFillTheMapAndTheDiscIsPi() {
    ContourLines bowl = bowl(81);
    double below = area(bowl.area(1, true));
    assertThat(below).isCloseTo(Math.PI, within(5e-3));
    assertThat(below + area(bowl.area(1, false))).isCloseTo(16, within(1e-9));
  }

  private static double area(List<List<Point>> parts) {
    double sum = 0;
    for (List<Point> part : parts) {
      double twice = 0;
      for (int i = 0; i < part.size(); i++) {
        Point p = part.get(i);
        Point q = part.get((i + 1) % part.size());
        twice += p.x() * q.y() - q.x() * p.y();
      }
      sum += Math.abs(twice) / 2;
    }
    return sum;
  }

  @Test
  void aCellWithoutResultHasNoLine() {
    double[] two = {0, 1};
    ContourLines gap = ContourLines.of(two, two, new double[][] {{0, Double.NaN}, {1, 2}});
    assertThat(gap.lines(0.5)).isEmpty();
    assertThat(gap.area(3, true)).isEmpty();
  }

  @Test
  void levelsAreRoundNumbers() {
    assertThat(bowl(11).levels(8)).containsExactly(0.0, 1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0);
  }
}
