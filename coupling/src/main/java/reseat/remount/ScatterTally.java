package reseat.remount;

import java.util.EnumMap;
import java.util.Map;
import java.util.TreeMap;
import reseat.design.MachineAxes;
import reseat.space.Vec3;

/** Running sums over mountings; tallies of successive mountings can be joined in order. */
final class ScatterTally {

  final VectorTally shift = new VectorTally();
  final VectorTally inCouplingAxes = new VectorTally();
  final VectorTally rotation = new VectorTally();
  final VectorTally afterCut = new VectorTally();
  final VectorTally afterReclamp = new VectorTally();

  /** Failed mountings: how they failed, and at which contact. */
  final Map<MountMechanics.Outcome, Map<Integer, Long>> failures =
      new EnumMap<>(MountMechanics.Outcome.class);

  private final MachineAxes axes;

  /**
   * Starts a tally.
   *
   * @param axes axes in which shifts are told
   */
  ScatterTally(MachineAxes axes) {
    this.axes = axes;
  }

  void add(MountSequence mounted, boolean cuts, boolean reclamps) {
    shift.add(told(mounted.shift));
    inCouplingAxes.add(vector(mounted.shift));
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
    inCouplingAxes.merge(next.inCouplingAxes);
    rotation.merge(next.rotation);
    afterCut.merge(next.afterCut);
    afterReclamp.merge(next.afterReclamp);
    next.failures.forEach(
        (outcome, byContact) ->
            byContact.forEach(
                (contact, count) ->
                    failures
                        .computeIfAbsent(outcome, o -> new TreeMap<>())
                        .merge(contact, count, Long::sum)));
  }

  private Vec3 told(double[] v) {
    return axes.of(vector(v));
  }

  private static Vec3 vector(double[] v) {
    return new Vec3(v[0], v[1], v[2]);
  }
}
