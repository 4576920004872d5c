package reseat.check;

import java.util.ArrayList;
import java.util.List;
import reseat.check.Finding.Sense;
import reseat.design.CouplingDesign;
import reseat.elementary.Elementary;
import reseat.equilibrium.CaseResponse;
import reseat.equilibrium.Equilibrium;
import reseat.equilibrium.PreloadRange;

/**
 * Whether every contact stays pressed, at rest and under each load case, with the margin wanted.
 *
 * <p>A contact that keeps less than {@value #LEAST_SHARE} of its force at rest is worth a warning
 * even where the margin is kept (common practice, no source).
 */
public final class LiftOffCheck {

  /** Part of its force at rest that every contact should keep. */
  public static final double LEAST_SHARE = 0.3;

  private static final String CHECK = "lift-off";

  private LiftOffCheck() {}

  /**
   * Judges the coupling at rest.
   *
   * @param standing the coupling under preload and weight
   * @return a failure for each contact that is not pressed; none if all are
   */
  public static List<Finding> atRest(Equilibrium standing) {
    List<Finding> found = new ArrayList<>();
    for (Equilibrium.Contact c : standing.contacts()) {
      if (c.opens()) {
        found.add(
            new Finding(
                CHECK,
                Severity.FAIL,
                c.line().name(),
                c.leastForce(),
                0,
                Sense.AT_LEAST,
                Measure.FORCE,
                c.line().name()
                    + " is not pressed at rest: preload and weight would have it "
                    + (c.leastForce() < 0
                        ? "pull with " + Measure.FORCE.show(-c.leastForce())
                        : "carry nothing")
                    + ".",
                "Raise the preload, or move its line of action toward this support."));
      }
    }
    return found;
  }

  /**
   * Judges every load case.
   *
   * @param standing the coupling at rest, all contacts pressed
   * @param cases its responses to the load cases
   * @return one finding per case that could lift a contact
   */
  public static List<Finding> of(Equilibrium standing, List<CaseResponse> cases) {
    CouplingDesign design = standing.model().design();
    List<Finding> found = new ArrayList<>();
    TriangleTurn turn = null;
    for (CaseResponse r : cases) {
      double wanted = r.wantedFactor(design.targets().liftOffFactor());
      double factor = r.liftOff().factor();
      if (Double.isInfinite(factor)) {
        continue;
      }
      double left = shareLeft(standing, r);
      Severity severity =
          factor < wanted ? Severity.FAIL : left < LEAST_SHARE ? Severity.WARNING : Severity.OK;
      if (severity != Severity.OK && turn == null) {
        turn = TriangleTurn.best(standing, cases);
      }
      found.add(
          new Finding(
              CHECK,
              severity,
              r.loadCase().name(),
              factor,
              wanted,
              Sense.AT_LEAST,
              Measure.FACTOR,
              message(r, factor, wanted, left),
              severity == Severity.OK ? "" : advice(standing, r, wanted, turn)));
    }
    return found;
  }

  /** Least part of its force at rest that any contact keeps. */
  private static double shareLeft(Equilibrium standing, CaseResponse r) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < standing.contacts().size(); i++) {
      least =
          Math.min(
              least, r.state().contacts().get(i).leastForce() / standing.contacts().get(i).force());
    }
    return least;
  }

  private static String message(CaseResponse r, double factor, double wanted, double left) {
    String name = r.loadCase().name();
    if (factor < 1) {
      return name
          + " lifts "
          + r.liftOff().contact()
          + " off its seat: it opens at "
          + Measure.SHARE.show(factor)
          + " of this load; wanted is "
          + Measure.FACTOR.show(wanted)
          + " times it.";
    }
    return name
        + " may grow "
        + Measure.FACTOR.showComputed(factor)
        + " times before "
        + r.liftOff().contact()
        + " opens (wanted "
        + Measure.FACTOR.show(wanted)
        + ")"
        + (left < LEAST_SHARE
            ? "; a contact keeps only "
                + Measure.SHARE.show(Math.max(0, left))
                + " of its force (wanted "
                + Measure.SHARE.show(LEAST_SHARE)
                + ")."
            : ".");
  }

  private static String advice(
      Equilibrium standing, CaseResponse r, double wanted, TriangleTurn turn) {
    PreloadRange range = PreloadRange.of(standing);
    double needed = range.leastPreload(r.loadCase().load(), wanted) * range.preload();
    String preload =
        needed > range.preload() && Double.isFinite(needed)
            ? "Raise the preload from "
                + Measure.FORCE.show(range.preload())
                + " to "
                + Measure.FORCE.show(needed)
            : "Move the preload's line of action, the supports or the load";
    return turn.helps()
        ? preload
            + ", or turn the supports by "
            + Measure.COUNT.show(Elementary.toDegrees(turn.angle()))
            + " deg about z, which makes it "
            + Measure.FACTOR.showComputed(turn.factor(r))
            + " times."
        : preload + ".";
  }
}
