package reseat.interchange;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import reseat.design.MachineAxes;
import reseat.numerics.NumberRow;
import reseat.numerics.RunningCovariance;
import reseat.numerics.RunningHistogram;
import reseat.space.Vec3;

/** Running sums over holders; tallies of successive holders can be joined in order. */
final class InterchangeTally {

  /** Against a perfect holder on the same post: what makes holders differ. */
  final RunningCovariance own = new RunningCovariance();

  /** The same along x, y, z of the coupling frame. */
  final RunningCovariance ownInCouplingAxes = new RunningCovariance();

  final RunningCovariance ownRotation = new RunningCovariance();

  /** Perfect holders on the posts, against the drawing. */
  final RunningCovariance post = new RunningCovariance();

  /** Against the drawing. */
  final RunningCovariance total = new RunningCovariance();

  /** Exact own shift less that to first order. */
  final RunningCovariance beyondLinear = new RunningCovariance();

  final RunningHistogram[] ownBands;
  final RunningHistogram[] totalBands;
  final RunningHistogram[] couplingBands;
  final RunningHistogram[] rotationBands;
  final RunningHistogram[] postBands;
  final Map<Fit, Long> fits = new EnumMap<>(Fit.class);

  private final MachineAxes axes;

  InterchangeTally(SimulatedCoupling coupling) {
    axes = coupling.design.axes();
    LinearStack.Sum between = coupling.stack.sum(LinearStack.BETWEEN_HOLDERS);
    Vec3 own = between.deviation();
    ownBands = bands(own);
    totalBands = bands(coupling.stack.sum(LinearStack.EVERYTHING).deviation());
    couplingBands = evenBands(own);
    rotationBands = evenBands(between.rotationDeviation());
    postBands = bands(coupling.stack.sum(EnumSet.of(Owner.POST)).deviation());
  }

  /** As wide along every axis: what a first-order sum leaves still along one may yet move there. */
  private static RunningHistogram[] evenBands(Vec3 expected) {
    double widest = expected.norm();
    return bands(new Vec3(widest, widest, widest));
  }

  private static RunningHistogram[] bands(Vec3 expected) {
    RunningHistogram[] bands = new RunningHistogram[3];
    for (int k = 0; k < 3; k++) {
      bands[k] = new RunningHistogram(0, expected.component(k));
    }
    return bands;
  }

  void addPost(Vec3 perfect) {
    Vec3 moved = axes.of(perfect);
    post.add(moved);
    for (int k = 0; k < 3; k++) {
      postBands[k].add(moved.component(k));
    }
  }

  /**
   * Takes in a holder.
   *
   * @param fit how it came out
   * @param trial where it stands, if it fits
   * @param perfect shift of a perfect holder on the same post, base axes, m
   * @param perfectRotation its rotation, rad
   */
  void addHolder(Fit fit, HolderTrial trial, Vec3 perfect, Vec3 perfectRotation) {
    fits.merge(fit, 1L, Long::sum);
    if (fit != Fit.FITS) {
      return;
    }
    Vec3 shift = vector(trial.shift);
    Vec3 rotation = vector(trial.rotation);
    Vec3 all = axes.of(shift);
    Vec3 inCoupling = shift.minus(perfect);
    Vec3 mine = axes.of(inCoupling);
    total.add(all);
    own.add(mine);
    ownInCouplingAxes.add(inCoupling);
    Vec3 turned = axes.of(rotation.minus(perfectRotation));
    ownRotation.add(turned);
    beyondLinear.add(mine.minus(vector(trial.linear)));
    for (int k = 0; k < 3; k++) {
      ownBands[k].add(mine.component(k));
      couplingBands[k].add(inCoupling.component(k));
      totalBands[k].add(all.component(k));
      rotationBands[k].add(turned.component(k));
    }
  }

  /** All sums and counts as numbers. */
  double[] toArray() {
    NumberRow row = new NumberRow();
    for (RunningCovariance sums : sums()) {
      sums.writeTo(row);
    }
    for (RunningHistogram bands : bands()) {
      bands.writeTo(row);
    }
    for (Fit fit : Fit.values()) {
      row.putCount(fits.getOrDefault(fit, 0L));
    }
    return row.toArray();
  }

  /** Takes in the sums of later holders that {@link #toArray} turned into numbers. */
  void merge(double[] next) {
    NumberRow row = NumberRow.of(next);
    for (RunningCovariance sums : sums()) {
      sums.merge(RunningCovariance.readFrom(row));
    }
    for (RunningHistogram bands : bands()) {
      bands.addFrom(row);
    }
    for (Fit fit : Fit.values()) {
      long count = row.nextCount();
      if (count > 0) {
        fits.merge(fit, count, Long::sum);
      }
    }
    row.end();
  }

  private List<RunningCovariance> sums() {
    return List.of(own, ownInCouplingAxes, ownRotation, post, total, beyondLinear);
  }

  private List<RunningHistogram> bands() {
    List<RunningHistogram> all = new ArrayList<>(List.of(ownBands));
    all.addAll(List.of(couplingBands));
    all.addAll(List.of(totalBands));
    all.addAll(List.of(rotationBands));
    all.addAll(List.of(postBands));
    return all;
  }

  private static Vec3 vector(double[] v) {
    return new Vec3(v[0], v[1], v[2]);
  }
}
