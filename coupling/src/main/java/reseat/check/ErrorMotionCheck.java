package reseat.check;

import static reseat.check.Argument.amount;

import java.util.ArrayList;
import java.util.List;
import reseat.check.Finding.Sense;
import reseat.design.CheckKind;
import reseat.design.CouplingDesign;
import reseat.design.LoadCase;
import reseat.design.Targets;
import reseat.equilibrium.CaseResponse;
import reseat.space.Vec3;

/**
 * Whether the tool keeps its place under the loads that demand it.
 *
 * <p>Judged between two bounds: a target that is missed even if no contact slides fails; one that
 * is missed only if all contacts slide freely is up for decision.
 */
public final class ErrorMotionCheck {

  private ErrorMotionCheck() {}

  /**
   * Judges the load cases that demand a held position.
   *
   * @param design the coupling
   * @param cases responses to its load cases
   * @return one finding per such case with a target, for the machine axis that fares worst
   */
  public static List<Finding> of(CouplingDesign design, List<CaseResponse> cases) {
    Targets.AxisLimits limits = design.targets().repeatability();
    List<Finding> found = new ArrayList<>();
    for (CaseResponse r : cases) {
      Vec3 soft = design.axes().of(r.motion().shift());
      int axis = WorstAxis.of(soft, limits);
      if (r.loadCase().demand() == LoadCase.Demand.HOLD_POSITION
          && Double.isFinite(limits.limit(axis))
          && !r.liftsOff()) {
        found.add(finding(design, r, axis));
      }
    }
    return found;
  }

  private static Finding finding(CouplingDesign design, CaseResponse r, int axis) {
    double limit = design.targets().repeatability().limit(axis);
    double soft = Math.abs(design.axes().of(r.motion().shift()).component(axis));
    double stiff = Math.abs(design.axes().of(r.stickingMotion().shift()).component(axis));
    boolean missed = stiff > limit;
    LimitBasis basis = missed ? LimitBasis.STATED : LimitBasis.STATED_PESSIMISTIC;
    double value = missed ? stiff : soft;
    Judged judged = Judged.by(value, limit, Sense.AT_MOST, basis);
    return new Finding(
        CheckKind.ERROR_MOTION,
        judged,
        Subject.loadCase(r.loadCase().name()),
        value,
        limit,
        Sense.AT_MOST,
        basis,
        Measure.LENGTH,
        Statement.of(
            Said.ERROR_MOTION,
            r.loadCase().name(),
            design.axes().axis(axis).name(),
            amount(Measure.LENGTH, stiff),
            amount(Measure.LENGTH, soft),
            amount(Measure.LENGTH, limit)),
        Statement.NOTHING);
  }
}
