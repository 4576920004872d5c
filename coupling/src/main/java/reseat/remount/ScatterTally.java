package reseat.remount;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import reseat.design.MachineAxes;
import reseat.numerics.NumberRow;
import reseat.space.Vec3;

/** Running sums over mountings; tallies of successive mountings can be joined in order. */
final class ScatterTally {

  final VectorTally shift;
  final VectorTally inCouplingAxes;
  final VectorTally rotation;
  final VectorTally afterCut;
  final VectorTally afterReclamp;

  /** Failed mountings: how they failed, and at which contact. */
  final Map<FrictionEquilibrium.Outcome, Map<Integer, Long>> failures =
      new EnumMap<>(FrictionEquilibrium.Outcome.class);

  private final MachineAxes axes;

  /**
   * Starts a tally.
   *
   * @param axes axes in which shifts are told
   */
  ScatterTally(MachineAxes axes) {
    this.axes = axes;
    shift = new VectorTally();
    inCouplingAxes = new VectorTally();
    rotation = new VectorTally();
    afterCut = new VectorTally();
    afterReclamp = new VectorTally();
  }

  private ScatterTally(MachineAxes axes, NumberRow row) {
    this.axes = axes;
    shift = new VectorTally(row);
    inCouplingAxes = new VectorTally(row);
    rotation = new VectorTally(row);
    afterCut = new VectorTally(row);
    afterReclamp = new VectorTally(row);
    for (FrictionEquilibrium.Outcome outcome : FrictionEquilibrium.Outcome.values()) {
      for (long left = row.nextCount(); left > 0; left--) {
        int contact = (int) row.nextCount();
        long count = row.nextCount();
        failures.computeIfAbsent(outcome, o -> new TreeMap<>()).put(contact, count);
      }
    }
    row.end();
  }

  /** The tally that {@link #toArray} turned into numbers. */
  static ScatterTally of(MachineAxes axes, double[] numbers) {
    return new ScatterTally(axes, NumberRow.of(numbers));
  }

  /** All sums and counts as numbers. */
  double[] toArray() {
    NumberRow row = new NumberRow();
    for (VectorTally t : List.of(shift, inCouplingAxes, rotation, afterCut, afterReclamp)) {
      t.writeTo(row);
    }
    for (FrictionEquilibrium.Outcome outcome : FrictionEquilibrium.Outcome.values()) {
      Map<Integer, Long> byContact = failures.getOrDefault(outcome, Map.of());
      row.putCount(byContact.size());
      byContact.forEach(
          (contact, count) -> {
            row.putCount(contact);
            row.putCount(count);
          });
    }
    return row.toArray();
  }

  void add(ToolChange mounted, boolean cuts, boolean reclamps) {
    shift.add(alongMachineAxes(mounted.shift));
    inCouplingAxes.add(vector(mounted.shift));
    rotation.add(alongMachineAxes(mounted.rotation));
    if (cuts) {
      afterCut.add(alongMachineAxes(mounted.afterCut));
    }
    if (reclamps) {
      afterReclamp.add(alongMachineAxes(mounted.afterReclamp));
    }
  }

  void fail(FrictionEquilibrium.Outcome outcome, int contact) {
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

  private Vec3 alongMachineAxes(double[] v) {
    return axes.of(vector(v));
  }

  private static Vec3 vector(double[] v) {
    return new Vec3(v[0], v[1], v[2]);
  }
}
