package reseat.study;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import reseat.check.AcceptedDecisions;
import reseat.check.Argument;
import reseat.check.ConstraintCheck;
import reseat.check.Depth;
import reseat.check.Finding;
import reseat.check.GrooveDirectionCheck;
import reseat.check.Judged;
import reseat.check.LiftOffCheck;
import reseat.check.LoadInsideTriangleCheck;
import reseat.check.Measure;
import reseat.check.OrderedCheck;
import reseat.check.Said;
import reseat.check.StandingCoupling;
import reseat.check.StandingLimits;
import reseat.check.Statement;
import reseat.design.CheckKind;
import reseat.design.CouplingDesign;
import reseat.equilibrium.ConstraintQuality;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.CouplingStiffness;
import reseat.equilibrium.Equilibrium;
import reseat.equilibrium.NaturalFrequencies;
import reseat.equilibrium.PointStiffness;
import reseat.making.Clearance;
import reseat.making.ClearanceCheck;

/** The whole design at a glance. */
public final class CheckStudy {

  private CheckStudy() {}

  /**
   * Looks at the statics of a design built in code.
   *
   * @param design the coupling
   * @return as much as its state allows
   * @throws reseat.equilibrium.NoEquilibriumException if six contacts constrain the holder and yet
   *     no pose fits a load
   * @throws IllegalArgumentException if a ball is too close a fit in a hollow flank for contact at
   *     one point
   */
  public static CheckResult run(CouplingDesign design) {
    return run(StatedDesign.of(design), Depth.STATICS);
  }

  /**
   * Looks at a design: its statics, tool changes, gaps, doubts about the input, decisions taken.
   *
   * @param stated the coupling and what its file says beside it
   * @param depth how far tool changes are looked at
   * @return as much as its state allows, with the one list of findings that every verdict is of
   * @throws reseat.equilibrium.NoEquilibriumException if six contacts constrain the holder and yet
   *     no pose fits a load
   * @throws IllegalArgumentException if a ball is too close a fit in a hollow flank for contact at
   *     one point
   */
  public static CheckResult run(StatedDesign stated, Depth depth) {
    CouplingDesign design = stated.design();
    ConstraintQuality constraint = ConstraintQuality.of(design);
    List<Finding> findings = new ArrayList<>(ConstraintCheck.of(constraint));
    if (!constraint.holds() || constraint.contacts() != 6) {
      return new UnconstrainedCheck(stated, constraint, decided(findings, stated));
    }
    findings.addAll(GrooveDirectionCheck.of(design, constraint));
    Equilibrium standing = CouplingModel.of(design).standing();
    List<Finding> atRest = LiftOffCheck.atRest(standing);
    if (!atRest.isEmpty()) {
      findings.addAll(atRest);
      findings.addAll(LoadInsideTriangleCheck.of(standing, List.of()));
      return new UnseatedCheck(stated, constraint, standing, decided(findings, stated));
    }
    return seated(stated, constraint, standing, findings, depth);
  }

  private static CheckResult seated(
      StatedDesign stated,
      ConstraintQuality constraint,
      Equilibrium standing,
      List<Finding> findings,
      Depth depth) {
    CouplingDesign design = stated.design();
    StandingCoupling coupling = new StandingCoupling(standing, stated.accepted(), depth);
    findings.addAll(OrderedCheck.all(coupling));
    if (depth == Depth.SIMULATED) {
      seatingForce(design, findings);
    }
    clearances(coupling, findings);
    return new SeatedCheck(
        stated,
        constraint,
        standing,
        coupling.limits(),
        elasticity(standing, coupling.frictionless()),
        elasticity(standing, coupling.sticking()),
        coupling.cases(),
        coupling.lift().weakest(design.toolPoint()),
        coupling.preloadLines(),
        coupling.preloadScatter(),
        coupling.waysHome(),
        coupling.toolChanges(),
        coupling::allowedPreload,
        decided(findings, stated));
  }

  /**
   * Finds what {@link #run} finds, without what nothing is judged by, for searches.
   *
   * @param stated the coupling and what its file says beside it
   * @param depth how far tool changes are looked at
   * @param order the checks that can fail, those first that are the likeliest to
   * @param gaps whether the gaps of what must not touch are looked at, which takes long
   * @param enough says of what one check found whether nothing more need be looked at
   * @return findings, worst first, judged as in the whole study; those up to where it was enough
   * @throws reseat.equilibrium.NoEquilibriumException if six contacts constrain the holder and yet
   *     no pose fits a load
   * @throws IllegalArgumentException if a ball is too close a fit in a hollow flank for contact at
   *     one point
   */
  public static List<Finding> findings(
      StatedDesign stated,
      Depth depth,
      List<OrderedCheck> order,
      boolean gaps,
      Predicate<List<Finding>> enough) {
    CouplingDesign design = stated.design();
    ConstraintQuality constraint = ConstraintQuality.of(design);
    List<Finding> findings = new ArrayList<>(ConstraintCheck.of(constraint));
    if (constraint.holds() && constraint.contacts() == 6) {
      findings.addAll(GrooveDirectionCheck.of(design, constraint));
      Equilibrium standing = CouplingModel.of(design).standing();
      List<Finding> atRest = LiftOffCheck.atRest(standing);
      findings.addAll(atRest);
      if (atRest.isEmpty()) {
        StandingCoupling coupling =
            new StandingCoupling(standing, StandingLimits::of, false, depth);
        for (OrderedCheck check : order) {
          List<Finding> found = check.of(coupling);
          findings.addAll(found);
          if (enough.test(found)) {
            return Finding.worstFirst(findings);
          }
        }
        if (gaps) {
          clearances(coupling, findings);
        }
      } else {
        findings.addAll(LoadInsideTriangleCheck.of(standing, List.of()));
      }
    }
    return Finding.worstFirst(decided(findings, stated));
  }

  /** What hangs up is told with the force by hand that closes it. */
  private static void seatingForce(CouplingDesign design, List<Finding> findings) {
    for (int i = 0; i < findings.size(); i++) {
      Finding f = findings.get(i);
      if (f.check() == CheckKind.TOOL_CHANGE_SEATING && f.judged() == Judged.FAILS) {
        OptionalDouble needed = NeededSeatingForce.of(design);
        findings.set(
            i,
            f.withAdvice(
                Statement.of(
                    Said.SEATS_WITH,
                    Argument.amount(Measure.FORCE, design.remount().seatingForce()),
                    Argument.amount(
                        Measure.FORCE, needed.isPresent() ? needed.getAsDouble() : 0))));
      }
    }
  }

  private static void clearances(StandingCoupling coupling, List<Finding> findings) {
    if (!coupling.design().shop().keepClear().isEmpty()) {
      findings.addAll(
          ClearanceCheck.of(
              Clearance.all(coupling.standing(), coupling.cases(), coupling.preloadScatter())));
    }
  }

  /** The findings with the doubts about the input, and the decisions taken laid over them. */
  private static List<Finding> decided(List<Finding> findings, StatedDesign stated) {
    findings.addAll(AcceptedDecisions.doubts(stated.doubts(), stated.accepted()));
    return AcceptedDecisions.over(findings, stated.accepted(), stated.doubts());
  }

  private static SeatedCheck.Elasticity elasticity(
      Equilibrium standing, CouplingStiffness stiffness) {
    CouplingDesign design = standing.model().design();
    return new SeatedCheck.Elasticity(
        stiffness,
        PointStiffness.of(stiffness, standing.placeOf(design.toolPoint()), design.axes()),
        NaturalFrequencies.of(stiffness, design.holder()));
  }
}
