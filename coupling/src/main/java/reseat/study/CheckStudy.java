package reseat.study;

import java.util.ArrayList;
import java.util.List;
import reseat.check.ConstraintCheck;
import reseat.check.Finding;
import reseat.check.GrooveDirectionCheck;
import reseat.check.LiftOffCheck;
import reseat.check.LoadInsideTriangleCheck;
import reseat.check.OrderedCheck;
import reseat.check.StandingCoupling;
import reseat.design.CouplingDesign;
import reseat.equilibrium.ConstraintQuality;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.CouplingStiffness;
import reseat.equilibrium.Equilibrium;
import reseat.equilibrium.NaturalFrequencies;
import reseat.equilibrium.PointStiffness;

/** The whole design at a glance. */
public final class CheckStudy {

  private CheckStudy() {}

  /**
   * Looks at a design.
   *
   * @param design the coupling
   * @return as much as its state allows
   * @throws reseat.equilibrium.NoEquilibriumException if six contacts constrain the holder and yet
   *     no pose fits a load
   * @throws IllegalArgumentException if a ball is too close a fit in a hollow flank for contact at
   *     one point
   */
  public static CheckResult run(CouplingDesign design) {
    ConstraintQuality constraint = ConstraintQuality.of(design);
    List<Finding> findings = new ArrayList<>(ConstraintCheck.of(constraint));
    if (!constraint.holds() || constraint.contacts() != 6) {
      return new UnconstrainedCheck(design, constraint, findings);
    }
    findings.addAll(GrooveDirectionCheck.of(design, constraint));
    Equilibrium standing = CouplingModel.of(design).standing();
    List<Finding> atRest = LiftOffCheck.atRest(standing);
    if (!atRest.isEmpty()) {
      findings.addAll(atRest);
      findings.addAll(LoadInsideTriangleCheck.of(standing, List.of()));
      return new UnseatedCheck(design, constraint, standing, findings);
    }
    return seated(design, constraint, standing, findings);
  }

  private static CheckResult seated(
      CouplingDesign design,
      ConstraintQuality constraint,
      Equilibrium standing,
      List<Finding> findings) {
    StandingCoupling coupling = new StandingCoupling(standing);
    findings.addAll(OrderedCheck.all(coupling));
    return new SeatedCheck(
        design,
        constraint,
        standing,
        coupling.limits(),
        elasticity(design, coupling.frictionless()),
        elasticity(design, coupling.sticking()),
        coupling.cases(),
        coupling.lift().weakest(design.toolPoint()),
        coupling.preloadLines(),
        coupling.preloadScatter(),
        coupling.waysHome(),
        findings);
  }

  private static SeatedCheck.Elasticity elasticity(
      CouplingDesign design, CouplingStiffness stiffness) {
    return new SeatedCheck.Elasticity(
        stiffness,
        PointStiffness.of(stiffness, design.toolPoint(), design.axes()),
        NaturalFrequencies.of(stiffness, design.holder()));
  }
}
