package reseat.check;

import reseat.design.Targets;
import reseat.space.Vec3;

/** The machine axis along which a motion takes most of its target. */
final class WorstAxis {

  private WorstAxis() {}

  /**
   * Finds the axis.
   *
   * @param motion along the machine axes, m
   * @param limits targets along the machine axes, m; infinite where nothing is asked
   * @return 0, 1 or 2; where no target is set, the axis of the largest motion
   */
  static int of(Vec3 motion, Targets.AxisLimits limits) {
    int worst = 0;
    double worstPart = -1;
    for (int i = 0; i < 3; i++) {
      double part = Math.abs(motion.component(i)) / limits.limit(i);
      if (part > worstPart && Double.isFinite(limits.limit(i))) {
        worst = i;
        worstPart = part;
      }
    }
    if (worstPart < 0) {
      for (int i = 1; i < 3; i++) {
        if (Math.abs(motion.component(i)) > Math.abs(motion.component(worst))) {
          worst = i;
        }
      }
    }
    return worst;
  }
}
