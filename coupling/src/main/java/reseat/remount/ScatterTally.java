package reseat.remount;

import java.util.EnumMap;
import java.util.Map;
import java.util.TreeMap;
import reseat.design.MachineAxes;
import reseat.numerics.RunningCovariance;
import reseat.numerics.RunningHistogram;
import reseat.space.Vec3;

/** Running sums over mountings; tallies of successive mountings can be joined in order. */
final class ScatterTally {

  final RunningCovariance shift = new RunningCovariance();
  final RunningCovariance rotation = new RunningCovariance();
  final RunningCovariance afterCut = new RunningCovariance();
  final RunningCovariance afterReclamp = new RunningCovariance();
  final RunningHistogram[] bands;

  /** Failed mountings: how they failed, and at which contact. */
  final Map<MountMechanics.Outcome, Map<Integer, Long>> failures =
      new EnumMap<>(MountMechanics.Outcome.class);

  private final MachineAxes axes;

  /**
   * Starts a tally.
   *
   * @param axes axes in which shifts are told
   * @param pilot tally that lays the bins of the bands; null for a tally without bands
   */
  ScatterTally(MachineAxes axes, ScatterTally pilot) {
    this.axes = axes;
    bands = new RunningHistogram[pilot == null ? 0 : 3];
    for (int k = 0; k < bands.length; k++) {
      bands[k] =
          new RunningHistogram(
              pilot.shift.mean().component(k), pilot.shift.standardDeviation().component(k));
    }
  }

  void add(MountSequence mounted, boolean cuts, boolean reclamps) {
    Vec3 inMachine = told(mounted.shift);
    shift.add(inMachine);
    for (int k = 0; k < bands.length; k++) {
      bands[k].add(inMachine.component(k));
    }
    rotation.add(told(mounted.rotation));
    if (cuts) {
      afterCut.add(told(mounted.afterCut));
    }
    if (reclamps) {
      afterReclamp.add(told(mounted.afterReclamp));
    }
  }

  void fail(MountMechanics.Outcome outcome, int contact) {
    failures.computeIfAbsent(outcome, o -> new TreeMap<>()).merge(contact, 1L, Long::sum);
  }

  void merge(ScatterTally next) {
    shift.merge(next.shift);
    rotation.merge(next.rotation);
    afterCut.merge(next.afterCut);
    afterReclamp.merge(next.afterReclamp);
    for (int k = 0; k < bands.length; k++) {
      bands[k].merge(next.bands[k]);
    }
    next.failures.forEach(
        (outcome, byContact) ->
            byContact.forEach(
                (contact, count) ->
                    failures
                        .computeIfAbsent(outcome, o -> new TreeMap<>())
                        .merge(contact, count, Long::sum)));
  }

  private Vec3 told(double[] v) {
    return axes.of(new Vec3(v[0], v[1], v[2]));
  }
}
