package reseat.check;

import static reseat.check.Argument.amount;

import java.util.List;
import reseat.check.Finding.Sense;
import reseat.design.CheckKind;
import reseat.design.CouplingDesign;
import reseat.equilibrium.PreloadScatter;
import reseat.space.Vec3;

/**
 * Whether the scatter of the preload alone moves the tool beyond its targets.
 *
 * <p>Preload scatter is often what first spoils a sub-micrometre height. It is one of several
 * causes, which are judged together elsewhere.
 */
public final class PreloadScatterCheck {

  private PreloadScatterCheck() {}

  /**
   * Judges the motion.
   *
   * @param design the coupling
   * @param scatter effect of every preload that scatters
   * @return one finding for the machine axis that fares worst; none if nothing scatters
   */
  public static List<Finding> of(CouplingDesign design, List<PreloadScatter> scatter) {
    if (scatter.isEmpty()) {
      return List.of();
    }
    Vec3 moved = PreloadScatter.together(scatter, design);
    int axis = WorstAxis.of(moved, design.targets().repeatability());
    double value = Math.abs(moved.component(axis));
    double limit = design.targets().repeatability().limit(axis);
    String name = design.axes().axis(axis).name();
    double part = 0;
    for (PreloadScatter p : scatter) {
      part = Math.max(part, p.preload().forceSpread().limit());
    }
    if (Double.isInfinite(limit)) {
      return List.of(
          Finding.advice(
              CheckKind.PRELOAD_SCATTER,
              Subject.axis(name),
              value,
              0,
              Measure.LENGTH,
              said(part, value, name, 0),
              Statement.of(Said.STATE_TARGETS)));
    }
    Judged judged = Judged.by(value, limit, Sense.AT_MOST, LimitBasis.STATED);
    return List.of(
        new Finding(
            CheckKind.PRELOAD_SCATTER,
            judged,
            Subject.axis(name),
            value,
            limit,
            Sense.AT_MOST,
            LimitBasis.STATED,
            Measure.LENGTH,
            said(part, value, name, limit),
            Statement.NOTHING));
  }

  private static Statement said(double part, double moved, String axis, double target) {
    return Statement.of(
        Said.PRELOAD_SCATTER,
        amount(Measure.SHARE, part),
        amount(Measure.LENGTH, moved),
        axis,
        amount(Measure.LENGTH, target));
  }
}
