package reseat.study;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import reseat.check.AllowedPreload;
import reseat.check.Finding;
import reseat.check.PreloadLineCheck;
import reseat.contact.ContactLimits;
import reseat.equilibrium.CaseResponse;
import reseat.equilibrium.ConstraintQuality;
import reseat.equilibrium.CouplingStiffness;
import reseat.equilibrium.Equilibrium;
import reseat.equilibrium.LiftOff;
import reseat.equilibrium.NaturalFrequencies;
import reseat.equilibrium.PointStiffness;
import reseat.equilibrium.PreloadScatter;
import reseat.repeatability.ToolChangeOutlook;
import reseat.seating.SelfSeating;

/**
 * Everything about a coupling that preload and weight seat.
 *
 * @param stated the coupling and what its file says beside it
 * @param constraint which motions are held, and how evenly
 * @param standing forces and pose under preload and weight
 * @param limits pressure limits of each contact, ball first, seat second
 * @param frictionless what the coupling does if contacts slide freely
 * @param sticking what it does if contacts stick
 * @param cases responses to the load cases, in order
 * @param weakest the least force at the tool point that opens a contact
 * @param preloadLines preloads with the zones of their lines of action
 * @param preloadScatter what the scatter of each preload does to the tool point
 * @param waysHome slides home with one contact open, the worst first
 * @param toolChanges what is known of its tool changes
 * @param preload the band of preload in which every check holds, found when first asked for
 * @param findings what was found, worst first
 */
public record SeatedCheck(
    StatedDesign stated,
    ConstraintQuality constraint,
    Equilibrium standing,
    List<ContactLimits> limits,
    Elasticity frictionless,
    Elasticity sticking,
    List<CaseResponse> cases,
    LiftOff.Weakest weakest,
    List<PreloadLineCheck.Line> preloadLines,
    List<PreloadScatter> preloadScatter,
    List<SelfSeating.Path> waysHome,
    ToolChangeOutlook toolChanges,
    Supplier<Optional<AllowedPreload>> preload,
    List<Finding> findings)
    implements CheckResult {

  /**
   * The coupling as a spring, in one of its two bounds.
   *
   * @param stiffness stiffness matrix at any point, and shares of the give
   * @param toolPoint stiffness of the tool point
   * @param frequencies natural frequencies of the holder
   */
  public record Elasticity(
      CouplingStiffness stiffness, PointStiffness toolPoint, NaturalFrequencies frequencies) {}

  /** Copies the lists and puts the findings in order. */
  public SeatedCheck {
    limits = List.copyOf(limits);
    cases = List.copyOf(cases);
    preloadLines = List.copyOf(preloadLines);
    preloadScatter = List.copyOf(preloadScatter);
    waysHome = List.copyOf(waysHome);
    findings = Finding.worstFirst(findings);
  }

  @Override
  public <T> T accept(Visitor<T> visitor) {
    return visitor.seated(this);
  }
}
