package reseat.search;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import reseat.check.Depth;
import reseat.check.Finding;
import reseat.check.Judged;
import reseat.check.OrderedCheck;
import reseat.check.StandingCoupling;
import reseat.design.Acceptance;
import reseat.design.CheckKind;
import reseat.design.CouplingDesign;
import reseat.design.Friction;
import reseat.design.Targets;
import reseat.designfile.SizeTargets;
import reseat.equilibrium.ConstraintQuality;
import reseat.equilibrium.Equilibrium;
import reseat.equilibrium.PointStiffness;
import reseat.equilibrium.PreloadScatter;
import reseat.remount.FrictionBound;
import reseat.seating.SelfSeating;
import reseat.space.Vec3;

/**
 * Takes a design through every check that judges, the quick ones first, and stops at the first that
 * fails.
 *
 * <p>A design fails here if and only if a check of the whole study fails that looks at tool changes
 * by the closed form, or if it is softer or larger than wanted; and it needs a decision if and only
 * if that study does. Gaps and doubts about the input are left to the study. Which of several
 * failing checks is told depends on the order: size, constraint, lift-off, pressure, the place of
 * the load, stiffness, motion, seats, mounts, sliding home.
 */
public final class CandidateCheck {

  /** Checks whose limit is a matter of how a thing is done, not of how much it may bear. */
  private static final Set<CheckKind> NOT_MEASURED =
      EnumSet.of(
          CheckKind.LOAD_INSIDE_TRIANGLE,
          CheckKind.PRELOAD_LINE,
          CheckKind.HEIGHT_SETTING,
          CheckKind.PRELOAD_DEVICE);

  private final DesignFamily family;
  private final CouplingDesign design;
  private final SizeTargets wish;
  private String nearest = "";
  private String decide = "";
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
  public static Judgement of(CouplingDesign design, SizeTargets wish) {
    return of(design, wish, List.of());
  }

  /**
   * Judges a design whose file has taken decisions.
   *
   * @param design the design
   * @param wish further limits
   * @param accepted decisions that are taken
   * @return how it stands
   */
  public static Judgement of(CouplingDesign design, SizeTargets wish, List<Acceptance> accepted) {
    return new DesignFamily(design, wish, accepted).judge(design);
  }

  Judgement judged() {
    double size = family.size();
    if (!keeps(Judgement.SIZE, size, wish.largestSize())) {
      return Judgement.fails(nearest, used);
    }
    ConstraintQuality constraint = family.constraint();
    if (!constraint.holds() || constraint.contacts() != 6) {
      return Judgement.fails(CheckKind.CONSTRAINT.words(), Double.POSITIVE_INFINITY);
    }
    Equilibrium standing = family.modelOf(design).standing();
    return standing.lifted()
        ? Judgement.fails(CheckKind.LIFT_OFF.words(), Double.POSITIVE_INFINITY)
        : standing(standing, size);
  }

  private Judgement standing(Equilibrium standing, double size) {
    StandingCoupling coupling =
        new StandingCoupling(standing, family::limits, false, Depth.CLOSED_FORM);
    double stiffness = 0;
    double pressure = 0;
    for (OrderedCheck check : OrderedCheck.thatJudge()) {
      if (check == OrderedCheck.PRELOAD_SCATTER) {
        stiffness = stiffness(coupling);
        if (!keeps(CheckKind.STIFFNESS.words(), wish.leastStiffness(), stiffness)) {
          return Judgement.fails(nearest, used);
        }
      }
      if (check == OrderedCheck.SELF_SEATING && surelySlidesHome()) {
        continue;
      }
      List<Finding> found = family.decided(check.of(coupling));
      if (!all(found)) {
        return Judgement.fails(nearest, used);
      }
      if (check == OrderedCheck.CONTACT_PRESSURE) {
        for (Finding f : found) {
          pressure = Math.max(pressure, part(f));
        }
      }
    }
    return new Judgement(
        nearest,
        used,
        decide,
        Optional.of(
            new Merits(
                repeatability(standing, coupling.preloadScatter(), design),
                stiffness,
                pressure,
                size)));
  }

  /** The limit itself is found only where it fails or is nearer than all others. */
  private boolean surelySlidesHome() {
    Friction friction = design.friction();
    double matters =
        Math.min(
            SelfSeating.GREATEST, Math.max(friction.high(), friction.high() / Math.max(used, 0.1)));
    boolean ring = design.supports().stream().anyMatch(s -> s.seat().isRing());
    return !ring
        && family.slides().surelyPass(design.standingLoad(), matters)
        && family.slides().surelyMovesOn(design.standingLoad(), matters);
  }

  private static double stiffness(StandingCoupling coupling) {
    CouplingDesign design = coupling.design();
    Vec3 along =
        PointStiffness.alongAxes(
            coupling.frictionless(),
            coupling.standing().placeOf(design.toolPoint()),
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
      if (f.judged() == Judged.FAILS) {
        nearest = f.check().words();
        used = part;
        return false;
      }
      if (f.judged() == Judged.DECIDE && decide.isEmpty()) {
        decide = f.check().words();
      }
      boolean counts = f.judged() != Judged.ADVICE && f.judged() != Judged.ACCEPTED;
      if (counts && part > used && !NOT_MEASURED.contains(f.check())) {
        nearest = f.check().words();
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
