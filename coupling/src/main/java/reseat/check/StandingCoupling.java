package reseat.check;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import reseat.contact.ContactLimits;
import reseat.design.Acceptance;
import reseat.design.CouplingDesign;
import reseat.equilibrium.CaseResponse;
import reseat.equilibrium.CouplingStiffness;
import reseat.equilibrium.CouplingStiffness.Bound;
import reseat.equilibrium.Equilibrium;
import reseat.equilibrium.LiftOff;
import reseat.equilibrium.PreloadScatter;
import reseat.repeatability.ToolChangeOutlook;
import reseat.seating.SeatingPaths;
import reseat.seating.SelfSeating;

/**
 * A coupling at rest with all contacts pressed, and what checks read of it, each found when first
 * asked for. Not for use by several threads.
 */
public final class StandingCoupling {

  private final Equilibrium standing;
  private final Function<Equilibrium, List<ContactLimits>> limitsOf;
  private final boolean inFull;
  private final Depth depth;
  private List<Acceptance> accepted = List.of();
  private ToolChangeOutlook toolChanges;
  private LiftOff lift;
  private CouplingStiffness frictionless;
  private CouplingStiffness sticking;
  private List<CaseResponse> cases;
  private List<ContactLimits> limits;
  private List<PreloadLineCheck.Line> lines;
  private List<PreloadScatter> scatter;
  private List<SelfSeating.Path> waysHome;
  private Optional<AllowedPreload> allowedPreload;

  /**
   * A coupling to be told of in full.
   *
   * @param standing the coupling at rest
   * @param accepted decisions that are taken
   * @param depth how far its tool changes are looked at
   */
  public StandingCoupling(Equilibrium standing, List<Acceptance> accepted, Depth depth) {
    this(standing, StandingLimits::of, true, depth);
    this.accepted = List.copyOf(accepted);
  }

  /**
   * A coupling of which less may be wanted.
   *
   * @param standing the coupling at rest
   * @param limitsOf finds the pressure limits of its contacts
   * @param inFull whether more is told than what it is judged by
   * @param depth how far its tool changes are looked at
   */
  public StandingCoupling(
      Equilibrium standing,
      Function<Equilibrium, List<ContactLimits>> limitsOf,
      boolean inFull,
      Depth depth) {
    this.standing = standing;
    this.limitsOf = limitsOf;
    this.inFull = inFull;
    this.depth = depth;
  }

  /**
   * Returns the design.
   *
   * @return the coupling as designed
   */
  public CouplingDesign design() {
    return standing.model().design();
  }

  /** Decisions that are taken. */
  List<Acceptance> accepted() {
    return accepted;
  }

  /**
   * Returns the state of rest.
   *
   * @return forces and pose under preload and weight
   */
  public Equilibrium standing() {
    return standing;
  }

  /**
   * Says whether more is told than what it is judged by.
   *
   * @return false in a search
   */
  public boolean inFull() {
    return inFull;
  }

  /**
   * Returns its lift-off.
   *
   * @return loads at which contacts open
   */
  public LiftOff lift() {
    if (lift == null) {
      lift = new LiftOff(standing.lines(), standing.load());
    }
    return lift;
  }

  /**
   * Returns the stiffness if contacts slide freely.
   *
   * @return stiffness at any point
   */
  public CouplingStiffness frictionless() {
    if (frictionless == null) {
      frictionless = CouplingStiffness.of(standing, Bound.FRICTIONLESS);
    }
    return frictionless;
  }

  /**
   * Returns the stiffness if contacts stick.
   *
   * @return stiffness at any point
   */
  public CouplingStiffness sticking() {
    if (sticking == null) {
      sticking = CouplingStiffness.of(standing, Bound.STICKING);
    }
    return sticking;
  }

  /**
   * Returns the responses to the load cases.
   *
   * @return one per load case, in order
   * @throws reseat.equilibrium.NoEquilibriumException if no pose fits a load
   */
  public List<CaseResponse> cases() {
    if (cases == null) {
      cases = CaseResponse.all(standing, sticking(), lift());
    }
    return cases;
  }

  /**
   * Returns the pressure limits.
   *
   * @return limits of each contact, ball first, seat second
   */
  public List<ContactLimits> limits() {
    if (limits == null) {
      limits = limitsOf.apply(standing);
    }
    return limits;
  }

  /**
   * Returns the preloads with the zones of their lines.
   *
   * @return those that do not pull along the coupling plane
   */
  public List<PreloadLineCheck.Line> preloadLines() {
    if (lines == null) {
      lines = PreloadLineCheck.lines(standing);
    }
    return lines;
  }

  /**
   * Returns what the scatter of each preload does.
   *
   * @return one per preload that scatters
   */
  public List<PreloadScatter> preloadScatter() {
    if (scatter == null) {
      scatter = PreloadScatter.all(standing);
    }
    return scatter;
  }

  /**
   * Returns what is known of the tool changes.
   *
   * @return whether they seat and how well the tool point comes back
   */
  public ToolChangeOutlook toolChanges() {
    if (toolChanges == null) {
      toolChanges = depth.of(standing);
    }
    return toolChanges;
  }

  /**
   * Returns the last stages of the slide home.
   *
   * @return slides home with one contact open, the worst first
   */
  public List<SelfSeating.Path> waysHome() {
    if (waysHome == null) {
      waysHome = SeatingPaths.lastStages(design(), design().standingLoad());
    }
    return waysHome;
  }

  /**
   * Returns the band of preload in which every check holds.
   *
   * @return the band; empty without a preload, or if no size of the preloads makes every check hold
   */
  public Optional<AllowedPreload> allowedPreload() {
    if (allowedPreload == null) {
      allowedPreload = PreloadSearch.of(this);
    }
    return allowedPreload;
  }
}
