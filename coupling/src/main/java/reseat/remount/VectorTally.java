package reseat.remount;

import reseat.numerics.NumberRow;
import reseat.numerics.RunningBand;
import reseat.numerics.RunningCovariance;
import reseat.numerics.VectorScatter;
import reseat.space.Vec3;

/** Running sums and bands of one vector over mountings. */
final class VectorTally {

  private final RunningCovariance sums;
  private final RunningBand[] bands;

  VectorTally() {
    sums = new RunningCovariance();
    bands = new RunningBand[] {new RunningBand(), new RunningBand(), new RunningBand()};
  }

  /** Reads what {@link #writeTo} put into a row. */
  VectorTally(NumberRow row) {
    sums = RunningCovariance.readFrom(row);
    bands = new RunningBand[3];
    for (int k = 0; k < 3; k++) {
      bands[k] = RunningBand.readFrom(row);
    }
  }

  void writeTo(NumberRow row) {
    sums.writeTo(row);
    for (RunningBand band : bands) {
      band.writeTo(row);
    }
  }

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

  VectorScatter scatter(double share) {
    return VectorScatter.of(sums, share, bands);
  }
}
