package reseat.check;

import static reseat.check.Argument.amount;
import static reseat.check.Argument.computed;

import java.util.ArrayList;
import java.util.List;
import reseat.check.Finding.Sense;
import reseat.design.CheckKind;
import reseat.design.CouplingDesign;
import reseat.design.LoadCase;
import reseat.design.Targets;
import reseat.equilibrium.CaseResponse;
import reseat.equilibrium.Equilibrium;
import reseat.equilibrium.LiftOff;

/**
 * Whether every contact stays pressed, at rest and under each load case, with the margin wanted.
 *
 * <p>A contact that keeps less than {@value #LEAST_SHARE} of its force at rest is worth knowing
 * even where the margin is kept (common practice, no source).
 */
public final class LiftOffCheck {

  /** Part of its force at rest that every contact should keep. */
  public static final double LEAST_SHARE = 0.3;

  private LiftOffCheck() {}

  /**
   * Judges the coupling at rest.
   *
   * @param standing the coupling under preload and weight
   * @return a failure for each contact that is not pressed; none if all are
   */
  public static List<Finding> atRest(Equilibrium standing) {
    List<Finding> found = new ArrayList<>();
    for (int i = 0; i < standing.contacts().size(); i++) {
      Equilibrium.Contact c = standing.contacts().get(i);
      if (c.opens()) {
        found.add(
            new Finding(
                CheckKind.LIFT_OFF,
                Judged.FAILS,
                Subject.contact(c.line().name()),
                c.leastForce(),
                0,
                Sense.AT_LEAST,
                LimitBasis.MECHANICS,
                Measure.FORCE,
                Statement.of(
                    Said.NOT_PRESSED,
                    c.line().name(),
                    amount(Measure.FORCE, Math.max(0, -c.leastForce()))),
                Statement.NOTHING));
      }
    }
    return found;
  }

  /**
   * Judges every load case by the factor at which it lifts a contact off.
   *
   * @param standing the coupling at rest, all contacts pressed
   * @param lift its lift-off from that state
   * @return one finding per case that could lift a contact
   */
  public static List<Finding> of(Equilibrium standing, LiftOff lift) {
    CouplingDesign design = standing.model().design();
    List<Finding> found = new ArrayList<>();
    for (LoadCase c : design.cases()) {
      LiftOff.First first = lift.factor(c.load());
      if (Double.isInfinite(first.factor())) {
        continue;
      }
      double wanted = c.wantedFactor(design.targets().liftOffFactor());
      LimitBasis basis = basis(design.targets(), wanted);
      Judged judged = Judged.by(first.factor(), wanted, Sense.AT_LEAST, basis);
      found.add(
          new Finding(
              CheckKind.LIFT_OFF,
              judged,
              Subject.loadCase(c.name()),
              first.factor(),
              wanted,
              Sense.AT_LEAST,
              basis,
              Measure.FACTOR,
              said(c, first, wanted),
              Statement.NOTHING));
    }
    return found;
  }

  private static LimitBasis basis(Targets targets, double wanted) {
    boolean stated = targets.liftOffStated() && wanted == targets.liftOffFactor();
    return stated ? LimitBasis.STATED : LimitBasis.DEFAULT_TARGET;
  }

  private static Statement said(LoadCase c, LiftOff.First first, double wanted) {
    return first.factor() < 1
        ? Statement.of(
            Said.LIFTS_OFF,
            c.name(),
            first.contact(),
            amount(Measure.SHARE, first.factor()),
            amount(Measure.FACTOR, wanted))
        : Statement.of(
            Said.LIFT_OFF_FACTOR,
            c.name(),
            first.contact(),
            computed(Measure.FACTOR, first.factor()),
            amount(Measure.FACTOR, wanted));
  }

  /**
   * Tells of cases that keep their factor and yet take most of a contact's force.
   *
   * @param standing the coupling at rest, all contacts pressed
   * @param cases its responses to the load cases
   * @return advice for each case that leaves a contact less than {@value #LEAST_SHARE} of its force
   */
  public static List<Finding> forceLeft(Equilibrium standing, List<CaseResponse> cases) {
    double factor = standing.model().design().targets().liftOffFactor();
    List<Finding> found = new ArrayList<>();
    for (CaseResponse r : cases) {
      double left = shareLeft(standing, r);
      boolean kept = r.liftOff().factor() >= r.wantedFactor(factor);
      if (kept && left < LEAST_SHARE && !Double.isInfinite(r.liftOff().factor())) {
        found.add(
            Finding.advice(
                CheckKind.LIFT_OFF,
                Subject.loadCase(r.loadCase().name()),
                left,
                LEAST_SHARE,
                Measure.SHARE,
                Statement.of(
                    Said.LITTLE_FORCE_LEFT,
                    r.loadCase().name(),
                    amount(Measure.SHARE, Math.max(0, left)),
                    amount(Measure.SHARE, LEAST_SHARE)),
                Statement.NOTHING));
      }
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
}
