package reseat.remount;

import reseat.numerics.RunningBand;
import reseat.numerics.RunningCovariance;
import reseat.numerics.VectorScatter;
import reseat.space.Vec3;

/** Running sums and bands of one vector over mountings. */
final class VectorTally {

  private final RunningCovariance sums = new RunningCovariance();
  private final RunningBand[] bands = {new RunningBand(), new RunningBand(), new RunningBand()};

  void add(Vec3 v) {
    sums.add(v);
    for (int k = 0; k < 3; k++) {
      bands[k].add(v.component(k));
    }
  }

  /** Takes in the vectors of a later batch. */
  void merge(VectorTally next) {
    sums.merge(next.sums);
    for (int k = 0; k < 3; k++) {
      bands[k].merge(next.bands[k]);
    }
  }

  VectorScatter scatter() {
    return VectorScatter.of(sums, bands);
  }
}
