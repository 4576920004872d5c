package reseat.search;

import java.util.List;
import reseat.check.AcceptedDecisions;
import reseat.check.Finding;
import reseat.check.StandingLimits;
import reseat.contact.ContactLimits;
import reseat.design.Acceptance;
import reseat.design.CouplingDesign;
import reseat.design.Support;
import reseat.designfile.SizeTargets;
import reseat.equilibrium.ConstraintQuality;
import reseat.equilibrium.ContactLines;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.Equilibrium;
import reseat.equilibrium.NoEquilibriumException;
import reseat.seating.LastSlides;

/**
 * Designs that differ in their preloads only, and what they have in common: size, constraint, the
 * laws of their contacts, what those bear, how they slide home.
 *
 * <p>What is in common is found once, when a member first needs it, by the very functions that
 * would find it for that member alone; so a design is judged alike, to the last digit, alone and
 * among others. Not for use by several threads.
 */
public final class DesignFamily {

  private final CouplingDesign first;
  private final SizeTargets wish;
  private final List<Acceptance> accepted;
  private final double size;
  private ConstraintQuality constraint;
  private CouplingModel model;
  private List<ContactLimits> limits;
  private LastSlides slides;

  /**
   * Begins a family.
   *
   * @param first a member
   * @param wish further limits
   */
  public DesignFamily(CouplingDesign first, SizeTargets wish) {
    this(first, wish, List.of());
  }

  /**
   * Begins a family whose file has taken decisions.
   *
   * @param first a member
   * @param wish further limits
   * @param accepted decisions that are taken
   */
  public DesignFamily(CouplingDesign first, SizeTargets wish, List<Acceptance> accepted) {
    this.first = first;
    this.wish = wish;
    this.accepted = List.copyOf(accepted);
    size = sizeOf(first);
  }

  /**
   * Judges a member.
   *
   * @param member a design that differs from the first in its preloads only
   * @return how it stands
   */
  public Judgement judge(CouplingDesign member) {
    try {
      return new CandidateCheck(this, member).judged();
    } catch (NoEquilibriumException | IllegalArgumentException e) {
      return Judgement.fails(Judgement.DOES_NOT_STAND, Double.POSITIVE_INFINITY);
    }
  }

  /**
   * Returns the room that a coupling takes.
   *
   * @param design the design
   * @return diameter of the circle about all balls of a regular layout, m
   */
  public static double sizeOf(CouplingDesign design) {
    double radius = 0;
    for (Support s : design.supports()) {
      radius = Math.max(radius, s.ball().radius());
    }
    return 2 * (design.couplingRadius() + radius);
  }

  /** Findings of a member with the decisions of the file laid over them. */
  List<Finding> decided(List<Finding> found) {
    return AcceptedDecisions.over(found, accepted, List.of());
  }

  SizeTargets wish() {
    return wish;
  }

  double size() {
    return size;
  }

  ConstraintQuality constraint() {
    if (constraint == null) {
      constraint = ConstraintQuality.of(first);
    }
    return constraint;
  }

  /** The model of a member. */
  CouplingModel modelOf(CouplingDesign member) {
    if (model == null) {
      model = CouplingModel.of(first);
    }
    return model.withLoadsOf(member);
  }

  /** Limits of each contact, which do not depend on the state that is given. */
  List<ContactLimits> limits(Equilibrium standing) {
    if (limits == null) {
      limits = StandingLimits.of(standing);
    }
    return limits;
  }

  LastSlides slides() {
    if (slides == null) {
      slides = new LastSlides(ContactLines.nominal(first));
    }
    return slides;
  }
}
