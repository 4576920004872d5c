package reseat.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import reseat.space.Vec3;

/** Scatter of vectors, against sums over the vectors themselves. */
class VectorScatterTest {

  private static RunningBand[] bands() {
    return new RunningBand[] {new RunningBand(), new RunningBand(), new RunningBand()};
  }

  private static VectorScatter scatter(Vec3... vectors) {
    RunningCovariance sums = new RunningCovariance();
    RunningBand[] bands = bands();
    for (Vec3 v : vectors) {
      sums.add(v);
      for (int k = 0; k < 3; k++) {
        bands[k].add(v.component(k));
      }
    }
    return VectorScatter.of(sums, 0.95, bands);
  }

  @Test
  void nothingScattersNowhere() {
    VectorScatter none = scatter();
    assertThat(none.count()).isZero();
    for (Vec3 v : new Vec3[] {none.mean(), none.deviation(), none.least(), none.greatest()}) {
      assertThat(v).isEqualTo(Vec3.ZERO);
    }
    assertThat(none.range()).isEqualTo(Vec3.ZERO);
  }

  @Test
  void oneVectorHasAMeanAndNoSpread() {
    Vec3 v = new Vec3(1, -2, 3);
    VectorScatter one = scatter(v);
    assertThat(one.count()).isEqualTo(1);
    assertThat(one.mean()).isEqualTo(v);
    assertThat(one.least()).isEqualTo(v);
    assertThat(one.greatest()).isEqualTo(v);
    assertThat(one.deviation()).isEqualTo(Vec3.ZERO);
    assertThat(one.band()).isEqualTo(Vec3.ZERO);
    assertThat(one.covariances()).isEqualTo(Vec3.ZERO);
    RunningCovariance sums = new RunningCovariance();
    sums.add(v);
    assertThat(VectorScatter.of(sums, new RunningHistogram[0]).band()).isEqualTo(Vec3.ZERO);
  }

  @Test
  void ofTwoVectorsAllIsKnown() {
    VectorScatter two = scatter(new Vec3(1, 4, -2), new Vec3(3, 0, -2));
    assertThat(two.mean()).isEqualTo(new Vec3(2, 2, -2));
    assertThat(two.least()).isEqualTo(new Vec3(1, 0, -2));
    assertThat(two.greatest()).isEqualTo(new Vec3(3, 4, -2));
    assertThat(two.range()).isEqualTo(new Vec3(2, 4, 0));
    // about their mean +-1 and -+2: variances 2 and 8, covariance of x and y -4
    assertThat(two.deviation().x()).isCloseTo(Math.sqrt(2), within(1e-15));
    assertThat(two.deviation().y()).isCloseTo(Math.sqrt(8), within(1e-15));
    assertThat(two.deviation().z()).isZero();
    assertThat(two.covariances()).isEqualTo(new Vec3(-4, 0, 0));
    assertThat(two.band().x()).isCloseTo(1, within(0.01));
    assertThat(two.band().y()).isCloseTo(2, within(0.02));
  }

  @Test
  void theBandHoldsNineteenOfTwentyAboutTheMean() {
    RandomStream draw = RandomStream.of(20261125, 1);
    Vec3[] vectors = new Vec3[4000];
    for (int i = 0; i < vectors.length; i++) {
      vectors[i] = new Vec3(draw.normal(), 3 * draw.normal(), 0.1 * draw.normal());
    }
    VectorScatter s = scatter(vectors);
    for (int k = 0; k < 3; k++) {
      int inside = 0;
      for (Vec3 v : vectors) {
        inside += Math.abs(v.component(k) - s.mean().component(k)) <= s.band().component(k) ? 1 : 0;
      }
      assertThat(inside / 4000.0).as("axis %d", k).isCloseTo(0.95, within(0.005));
    }
    // x, y and y, z and z, x in this order
    double zx = 0;
    for (Vec3 v : vectors) {
      zx += (v.z() - s.mean().z()) * (v.x() - s.mean().x()) / (vectors.length - 1);
    }
    assertThat(s.covariances().z()).isCloseTo(zx, within(1e-12));
  }
}
