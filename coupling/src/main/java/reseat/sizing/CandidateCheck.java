package reseat.sizing;

import java.util.List;
import java.util.Optional;
import reseat.check.BallMountChecks;
import reseat.check.CaseDepthCheck;
import reseat.check.ErrorMotionCheck;
import reseat.check.Finding;
import reseat.check.LoadInsideTriangleCheck;
import reseat.check.PreloadLineCheck;
import reseat.check.PreloadScatterCheck;
import reseat.check.PressureCheck;
import reseat.check.RingContactCheck;
import reseat.check.SeatMisfitCheck;
import reseat.check.SelfSeatingCheck;
import reseat.check.Severity;
import reseat.contact.ContactLimits;
import reseat.design.CouplingDesign;
import reseat.design.Friction;
import reseat.design.LoadCase;
import reseat.design.Targets;
import reseat.designfile.SizeWish;
import reseat.equilibrium.CaseResponse;
import reseat.equilibrium.ConstraintQuality;
import reseat.equilibrium.CouplingStiffness;
import reseat.equilibrium.CouplingStiffness.Bound;
import reseat.equilibrium.Equilibrium;
import reseat.equilibrium.LiftOff;
import reseat.equilibrium.PointStiffness;
import reseat.equilibrium.PreloadScatter;
import reseat.remount.FrictionBound;
import reseat.remount.SelfSeating;
import reseat.remount.WaysHome;
import reseat.space.Vec3;

/**
 * Takes a design through every check that can fail, the quick ones first, and stops at the first
 * that does.
 *
 * <p>A design fails here if and only if a check of the whole study fails, or if it is softer or
 * larger than wanted. Which of several failing checks is told depends on the order: size,
 * constraint, lift-off, pressure, the place of the load, stiffness, motion, seats, mounts, sliding
 * home.
 */
public final class CandidateCheck {

  /** Checks whose limit is a matter of how a thing is done, not of how much it may bear. */
  private static final List<String> NOT_MEASURED =
      List.of("load inside triangle", "preload line", "height setting");

  private final DesignFamily family;
  private final CouplingDesign design;
  private final SizeWish wish;
  private String nearest = "";
  private double used;

  CandidateCheck(DesignFamily family, CouplingDesign design) {
    this.family = family;
    this.design = design;
    this.wish = family.wish();
  }

  /**
   * Judges a design.
   *
   * @param design the design
   * @param wish further limits
   * @return how it stands
   */
  public static Judgement of(CouplingDesign design, SizeWish wish) {
    return new DesignFamily(design, wish).judge(design);
  }

  Judgement judged() {
    double size = family.size();
    if (!keeps("size", size, wish.largestSize())) {
      return Judgement.fails(nearest, used);
    }
    ConstraintQuality constraint = family.constraint();
    if (!constraint.holds() || constraint.contacts() != 6) {
      return Judgement.fails("constraint", Double.POSITIVE_INFINITY);
    }
    Equilibrium standing = family.modelOf(design).standing();
    return standing.lifted()
        ? Judgement.fails("lift-off", Double.POSITIVE_INFINITY)
        : standing(standing, size);
  }

  private Judgement standing(Equilibrium standing, double size) {
    if (!liftOff(standing)) {
      return Judgement.fails(nearest, used);
    }
    List<CaseResponse> cases =
        CaseResponse.all(standing, CouplingStiffness.of(standing, Bound.STICKING));
    List<ContactLimits> limits = family.limits(standing);
    List<Finding> pressed =
        PressureCheck.of(standing, cases, limits, design.targets().pressureShare());
    if (!all(pressed)
        || !all(RingContactCheck.of(standing))
        || !all(LoadInsideTriangleCheck.of(standing, cases))
        || !all(PreloadLineCheck.of(PreloadLineCheck.lines(standing)))) {
      return Judgement.fails(nearest, used);
    }
    double stiffness = stiffness(standing);
    if (!keeps("stiffness", wish.leastStiffness(), stiffness)) {
      return Judgement.fails(nearest, used);
    }
    List<PreloadScatter> scatter = PreloadScatter.all(standing);
    if (!all(PreloadScatterCheck.of(design, scatter))
        || !all(ErrorMotionCheck.of(design, cases))
        || !all(SeatMisfitCheck.of(standing, cases))
        || !all(CaseDepthCheck.of(standing, cases, limits))
        || !all(BallMountChecks.of(standing, cases))
        || !slidesHome()) {
      return Judgement.fails(nearest, used);
    }
    double pressure = 0;
    for (Finding f : pressed) {
      pressure = Math.max(pressure, part(f));
    }
    return new Judgement(
        nearest,
        used,
        Optional.of(
            new Merits(repeatability(standing, scatter, design), stiffness, pressure, size)));
  }

  /** Lift-off is judged from the factors alone, before the loads are carried: most fail by it. */
  private boolean liftOff(Equilibrium standing) {
    LiftOff lift = new LiftOff(standing.lines(), standing.load());
    for (LoadCase c : design.cases()) {
      double factor = lift.factor(c.load()).factor();
      if (Double.isFinite(factor)) {
        double part = c.wantedFactor(design.targets().liftOffFactor()) / factor;
        if (!keeps("lift-off", part, 1)) {
          return false;
        }
      }
    }
    return true;
  }

  /** The limit itself is found only where it fails or is nearer than all others. */
  private boolean slidesHome() {
    Friction friction = design.friction();
    double matters =
        Math.min(
            SelfSeating.GREATEST,
            Math.max(friction.nominal(), friction.high() / Math.max(used, 0.1)));
    boolean ring = design.supports().stream().anyMatch(s -> s.seat().isRing());
    if (!ring
        && family.slides().surelyPass(design.standingLoad(), matters)
        && family.slides().surelyMovesOn(design.standingLoad(), matters)) {
      return true;
    }
    return all(SelfSeatingCheck.of(friction, WaysHome.lastStages(design, design.standingLoad())));
  }

  private static double stiffness(Equilibrium standing) {
    CouplingDesign design = standing.model().design();
    Vec3 along =
        PointStiffness.alongAxes(
            CouplingStiffness.of(standing, Bound.FRICTIONLESS),
            standing.placeOf(design.toolPoint()),
            design.axes());
    return Math.min(along.x(), Math.min(along.y(), along.z()));
  }

  /**
   * Returns the upper scale of scatter.
   *
   * @param standing the coupling at rest
   * @param scatter what the scatter of each preload does
   * @param design the design
   * @return the largest over the machine axes, as a part of the target or in m if there is none
   */
  static double repeatability(
      Equilibrium standing, List<PreloadScatter> scatter, CouplingDesign design) {
    Vec3 preload = PreloadScatter.together(scatter, design);
    Vec3 friction = FrictionBound.of(standing, design.friction().nominal()).toolPoint();
    Targets.AxisLimits targets = design.targets().repeatability();
    boolean asked = targets(design);
    double worst = 0;
    for (int k = 0; k < 3; k++) {
      double target = asked ? targets.limit(k) : 1;
      worst = Math.max(worst, (preload.component(k) + friction.component(k)) / target);
    }
    return worst;
  }

  /**
   * Says whether a design states a target of repeatability.
   *
   * @param design the design
   * @return true if repeatability is told as a part of the target
   */
  public static boolean targets(CouplingDesign design) {
    Targets.AxisLimits t = design.targets().repeatability();
    return Double.isFinite(t.first()) || Double.isFinite(t.second()) || Double.isFinite(t.third());
  }

  /** Takes findings in; false at the first that fails. */
  private boolean all(List<Finding> findings) {
    for (Finding f : findings) {
      double part = part(f);
      if (f.severity() == Severity.FAIL) {
        nearest = f.check();
        used = part;
        return false;
      }
      if (f.severity() != Severity.NOTE && part > used && !NOT_MEASURED.contains(f.check())) {
        nearest = f.check();
        used = part;
      }
    }
    return true;
  }

  private boolean keeps(String check, double value, double limit) {
    double part = value / limit;
    if (part > used || part > 1) {
      nearest = check;
      used = part;
    }
    return part <= 1;
  }

  /** The part of its limit that a finding uses; infinite where value and limit make no ratio. */
  private static double part(Finding f) {
    boolean most = f.sense() == Finding.Sense.AT_MOST;
    double over = most ? f.value() : f.limit();
    double under = most ? f.limit() : f.value();
    return under > 0 ? Math.max(0, over / under) : Double.POSITIVE_INFINITY;
  }
}
