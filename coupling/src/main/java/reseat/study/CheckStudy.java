package reseat.study;

import java.util.ArrayList;
import java.util.List;
import reseat.check.BallMountChecks;
import reseat.check.CaseDepthCheck;
import reseat.check.ConstraintCheck;
import reseat.check.ErrorMotionCheck;
import reseat.check.Finding;
import reseat.check.GrooveDirectionCheck;
import reseat.check.HalfSpaceCheck;
import reseat.check.LiftOffCheck;
import reseat.check.LoadInsideTriangleCheck;
import reseat.check.PreloadDeviceCheck;
import reseat.check.PreloadLineCheck;
import reseat.check.PreloadScatterCheck;
import reseat.check.PressureCheck;
import reseat.check.RingContactCheck;
import reseat.check.SeatMisfitCheck;
import reseat.check.SelfSeatingCheck;
import reseat.check.StandingLimits;
import reseat.check.StiffnessNote;
import reseat.contact.ContactLimits;
import reseat.design.CouplingDesign;
import reseat.equilibrium.CaseResponse;
import reseat.equilibrium.ConstraintQuality;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.CouplingStiffness;
import reseat.equilibrium.CouplingStiffness.Bound;
import reseat.equilibrium.Equilibrium;
import reseat.equilibrium.LiftOff;
import reseat.equilibrium.NaturalFrequencies;
import reseat.equilibrium.PointStiffness;
import reseat.equilibrium.PreloadBand;
import reseat.equilibrium.PreloadScatter;
import reseat.remount.SelfSeating;
import reseat.remount.WaysHome;

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
    SeatedCheck.Elasticity frictionless = elasticity(standing, Bound.FRICTIONLESS);
    SeatedCheck.Elasticity sticking = elasticity(standing, Bound.STICKING);
    List<CaseResponse> cases = CaseResponse.all(standing, sticking.stiffness());
    List<ContactLimits> limits = StandingLimits.of(standing);
    List<PreloadLineCheck.Line> lines = PreloadLineCheck.lines(standing);
    List<PreloadScatter> scatter = PreloadScatter.all(standing);
    List<SelfSeating.Path> waysHome = WaysHome.lastStages(design, design.standingLoad());
    findings.addAll(SeatMisfitCheck.of(standing, cases));
    findings.addAll(PressureCheck.of(standing, cases, limits, design.targets().pressureShare()));
    findings.addAll(RingContactCheck.of(standing));
    findings.addAll(CaseDepthCheck.of(standing, cases, limits));
    findings.addAll(HalfSpaceCheck.of(standing, cases));
    findings.addAll(LiftOffCheck.of(standing, cases));
    findings.addAll(LoadInsideTriangleCheck.of(standing, cases));
    findings.addAll(PreloadLineCheck.of(lines));
    findings.addAll(PreloadScatterCheck.of(design, scatter));
    findings.addAll(ErrorMotionCheck.of(design, cases));
    findings.addAll(SelfSeatingCheck.of(design.friction(), waysHome));
    findings.addAll(BallMountChecks.of(standing, cases));
    findings.addAll(PreloadDeviceCheck.of(design, PreloadBand.of(standing, cases, limits)));
    findings.addAll(StiffnessNote.of(standing, frictionless.stiffness()));
    return new SeatedCheck(
        design,
        constraint,
        standing,
        limits,
        frictionless,
        sticking,
        cases,
        new LiftOff(standing.lines(), standing.load()).weakest(design.toolPoint()),
        lines,
        scatter,
        waysHome,
        findings);
  }

  private static SeatedCheck.Elasticity elasticity(Equilibrium standing, Bound bound) {
    CouplingDesign design = standing.model().design();
    CouplingStiffness stiffness = CouplingStiffness.of(standing, bound);
    return new SeatedCheck.Elasticity(
        stiffness,
        PointStiffness.of(stiffness, standing.placeOf(design.toolPoint()), design.axes()),
        NaturalFrequencies.of(stiffness, design.holder()));
  }
}
