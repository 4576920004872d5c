package reseat.check;

import java.util.ArrayList;
import java.util.List;
import reseat.check.Finding.Sense;
import reseat.design.CouplingDesign;
import reseat.design.LoadCase;
import reseat.design.Targets;
import reseat.elementary.Elementary;
import reseat.equilibrium.CaseResponse;
import reseat.space.Vec3;

/**
 * Whether the tool keeps its place under the loads that demand it.
 *
 * <p>Judged between two bounds: a target that is missed even if no contact slides fails; one that
 * is missed only if all contacts slide freely warns.
 */
public final class ErrorMotionCheck {

  private static final String CHECK = "error motion";

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
    Severity severity =
        soft <= limit ? Severity.OK : stiff <= limit ? Severity.WARNING : Severity.FAIL;
    String name = design.axes().axis(axis).name();
    return new Finding(
        CHECK,
        severity,
        r.loadCase().name(),
        soft,
        limit,
        Sense.AT_MOST,
        Measure.LENGTH,
        Sentence.of(
            r.loadCase().name(),
            " moves the tool point along ",
            name,
            " by ",
            Measure.LENGTH.amount(stiff),
            " if the contacts stick, ",
            Measure.LENGTH.amount(soft),
            " if they slide freely; the target is ",
            Measure.LENGTH.amount(limit),
            "."),
        severity == Severity.OK ? Sentence.NONE : advice(soft, limit));
  }

  private static Sentence advice(double soft, double limit) {
    // contact stiffness grows with the cube root of the force
    double preload = Elementary.pow(soft / limit, 3);
    return preload < 10
        ? Sentence.of(
            "Raise the preload ",
            Measure.FACTOR.amount(preload),
            " times (stiffness goes with its cube root), or bring the tool point nearer to the"
                + " balls.")
        : Sentence.of(
            "Bring the tool point nearer to the balls, widen their circle or take larger balls; more"
                + " preload alone would not do.");
  }
}
