package reseat.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.check.Finding.Sense;
import reseat.design.CheckKind;
import reseat.design.CouplingDesign;
import reseat.remount.Cause;
import reseat.repeatability.LinearScatter;
import reseat.repeatability.SeatingDoubt;
import reseat.repeatability.ToolChangeOutlook;
import reseat.repeatability.ToolChangeOutlook.Road;

/**
 * Whether tool changes seat, and whether they bring the tool point back within its targets.
 *
 * <p>Seating fails if, 95 % sure, more than one change in a thousand hangs up; it needs a decision
 * if that many may. A half-width within 5 % of its target needs a decision.
 */
public final class RepeatabilityCheck {

  private RepeatabilityCheck() {}

  /**
   * Judges the tool changes.
   *
   * @param design the coupling
   * @param outlook what is known of its tool changes
   * @return findings; none if tool changes were not asked for
   */
  public static List<Finding> of(CouplingDesign design, ToolChangeOutlook outlook) {
    if (outlook.road() == Road.NOT_ASKED) {
      return List.of();
    }
    List<Finding> found = new ArrayList<>();
    found.add(seating(outlook));
    if (outlook.halfWidth().isPresent()) {
      for (int k = 0; k < 3; k++) {
        if (Double.isFinite(design.targets().repeatability().limit(k))) {
          found.add(axis(design, outlook, k));
        }
      }
    }
    return found;
  }

  private static Finding seating(ToolChangeOutlook o) {
    double allowed = ToolChangeOutlook.MAY_HANG_UP;
    double least =
        o.changes() > 0
            ? o.hungUpLeast()
            : o.seating() == SeatingDoubt.Answer.HANGS_UP ? SeatingDoubt.MANY : 0;
    double most = o.hungUpMost();
    if (least > allowed) {
      return finding(Judged.FAILS, least, LimitBasis.MECHANICS, hangUp(o));
    }
    if (most > allowed) {
      return finding(
          Judged.DECIDE,
          most,
          LimitBasis.SAMPLE,
          o.changes() > 0 ? hangUp(o) : Statement.of(Said.SEATING_NOT_LOOKED_AT));
    }
    return finding(
        Judged.HOLDS,
        most,
        LimitBasis.MECHANICS,
        o.changes() > 0 ? hangUp(o) : Statement.of(Said.SURELY_SEATS));
  }

  private static Statement hangUp(ToolChangeOutlook o) {
    return Statement.of(
        Said.HANG_UP,
        Argument.computed(
            Measure.SHARE,
            o.changes() == 0 ? SeatingDoubt.MANY : (double) o.hungUp() / o.changes()),
        Argument.amount(Measure.COUNT, (double) o.changes()),
        Argument.amount(Measure.COUNT, (double) o.hungUp()));
  }

  private static Finding finding(Judged judged, double share, LimitBasis basis, Statement said) {
    return new Finding(
        CheckKind.TOOL_CHANGE_SEATING,
        judged,
        Subject.COUPLING,
        share,
        ToolChangeOutlook.MAY_HANG_UP,
        Sense.AT_MOST,
        basis,
        Measure.SHARE,
        said,
        Statement.NOTHING);
  }

  private static Finding axis(CouplingDesign design, ToolChangeOutlook o, int k) {
    double half = o.halfWidth().orElseThrow().component(k);
    double target = design.targets().repeatability().limit(k);
    double part = half / target;
    boolean near =
        part >= ToolChangeOutlook.AT_TARGET_FROM && part <= ToolChangeOutlook.AT_TARGET_TO;
    Judged judged = near ? Judged.DECIDE : part < 1 ? Judged.HOLDS : Judged.FAILS;
    String axis = design.axes().axis(k).name();
    return new Finding(
        CheckKind.REPEATABILITY,
        judged,
        Subject.axis(axis),
        half,
        target,
        Sense.AT_MOST,
        near ? LimitBasis.STATED_PESSIMISTIC : LimitBasis.STATED,
        Measure.LENGTH,
        Statement.of(
            near ? Said.AT_THE_TARGET : Said.REPEATABILITY,
            axis,
            Argument.computed(Measure.LENGTH, half),
            Argument.amount(Measure.LENGTH, target),
            design.targets().coverage().words(),
            o.road(),
            Argument.amount(Measure.COUNT, (double) o.changes())),
        judged == Judged.HOLDS ? Statement.NOTHING : mostly(o.linear(), axis, k));
  }

  private static Statement mostly(Optional<LinearScatter> linear, String axis, int k) {
    if (linear.isEmpty()) {
      return Statement.NOTHING;
    }
    Cause most = Cause.FRICTION;
    for (Cause c : Cause.values()) {
      if (linear.get().share(c, k) > linear.get().share(most, k)) {
        most = c;
      }
    }
    return Statement.of(
        Said.MOSTLY_FROM,
        axis,
        most,
        Argument.computed(Measure.SHARE, linear.get().share(most, k)));
  }
}
