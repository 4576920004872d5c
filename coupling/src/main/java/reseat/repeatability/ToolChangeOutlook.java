package reseat.repeatability;

import java.util.Optional;
import reseat.design.CouplingDesign;
import reseat.design.Coverage;
import reseat.design.Targets;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.Equilibrium;
import reseat.numerics.VectorScatter;
import reseat.remount.RemountPlan;
import reseat.remount.RemountScatter;
import reseat.remount.RemountSimulation;
import reseat.space.Vec3;

/**
 * What is known of the tool changes of a coupling before one is made: whether they seat, and how
 * well the tool point comes back.
 *
 * <p>The closed form answers first. Where it lies between {@value #SURELY_WITHIN} and {@value
 * #SURELY_BEYOND} of a target, or seating is in doubt, tool changes are simulated, always the same
 * ones: {@value #FEWEST} at first, up to {@value #MOST} if these do not decide. The half-width of
 * simulated changes is their standard deviation times the ratio that the closed form gives for its
 * shape, which scatters much less than a quantile of few changes.
 *
 * @param road how the answer was found
 * @param halfWidth half-width of the tool point about its mean at the target's coverage, along the
 *     machine axes, m; empty if not asked for, or too few changes seat to speak of scatter
 * @param changes tool changes that were simulated; 0 for none
 * @param hungUp those of them that did not seat
 * @param seating what the closed form says of seating
 * @param linear the closed form of the scatter; empty if it says nothing
 */
public record ToolChangeOutlook(
    Road road,
    Optional<Vec3> halfWidth,
    long changes,
    long hungUp,
    SeatingDoubt.Answer seating,
    Optional<LinearScatter> linear) {

  /** How an answer is found. */
  public enum Road {
    /** Not asked for. */
    NOT_ASKED,
    /** By the closed form. */
    CLOSED_FORM,
    /** By simulated tool changes. */
    SIMULATED
  }

  /** Part of a target below which the closed form decides. */
  public static final double SURELY_WITHIN = 0.6;

  /** Part of a target above which the closed form decides. */
  public static final double SURELY_BEYOND = 1.4;

  /** Part of a target from which on a simulated half-width is at the target. */
  public static final double AT_TARGET_FROM = 0.95;

  /** Part of a target up to which a simulated half-width is at the target. */
  public static final double AT_TARGET_TO = 1.05;

  /** Share of the changes that may hang up. */
  public static final double MAY_HANG_UP = 1e-3;

  /** Changes that are simulated first. */
  static final long FEWEST = 100;

  /** Changes that are simulated at most: if all seat, 95 % sure that 0.1 % at most hang up. */
  static final long MOST = 3000;

  private static final long[] STEPS = {FEWEST, 500, MOST};

  /** Standard errors of a standard deviation by which it must clear the edges of the band. */
  private static final double CLEARLY = 4;

  /** Answers nothing, for studies of the statics alone. */
  public static final ToolChangeOutlook NOT_ASKED =
      new ToolChangeOutlook(
          Road.NOT_ASKED, Optional.empty(), 0, 0, SeatingDoubt.Answer.SEATS, Optional.empty());

  /**
   * Answers from the closed form alone.
   *
   * @param standing the coupling at rest, all six contacts pressed
   * @return what is known
   */
  public static ToolChangeOutlook closedForm(Equilibrium standing) {
    Coverage coverage = standing.model().design().targets().coverage();
    Optional<LinearScatter> linear = LinearScatter.of(standing);
    SeatingDoubt.Answer seating = SeatingDoubt.of(standing).answer();
    boolean told = seating != SeatingDoubt.Answer.HANGS_UP;
    return new ToolChangeOutlook(
        Road.CLOSED_FORM,
        told ? linear.map(l -> l.halfWidths(coverage)) : Optional.empty(),
        0,
        0,
        seating,
        linear);
  }

  /**
   * Answers from the closed form where it decides, else from simulated tool changes.
   *
   * @param standing the coupling at rest, all six contacts pressed
   * @param seed seed of the changes
   * @return what is known
   */
  public static ToolChangeOutlook of(Equilibrium standing, long seed) {
    ToolChangeOutlook closed = closedForm(standing);
    return closed.decides(standing.model().design().targets())
        ? closed
        : closed.simulated(standing, seed);
  }

  /**
   * Returns the half-widths over those of the closed form.
   *
   * @param coverage coverage of both
   * @return ratio along each machine axis; 1 where either is missing
   */
  public Vec3 overClosedForm(Coverage coverage) {
    double[] ratio = {1, 1, 1};
    if (road == Road.SIMULATED && halfWidth.isPresent() && linear.isPresent()) {
      Vec3 closed = linear.get().halfWidths(coverage);
      for (int k = 0; k < 3; k++) {
        if (closed.component(k) > 0) {
          ratio[k] = halfWidth.get().component(k) / closed.component(k);
        }
      }
    }
    return new Vec3(ratio[0], ratio[1], ratio[2]);
  }

  /**
   * The same with other half-widths.
   *
   * @param ratio of the new half-widths to these, along each machine axis
   * @return the outlook
   */
  public ToolChangeOutlook inProportion(Vec3 ratio) {
    if (halfWidth.isEmpty()) {
      return this;
    }
    Vec3 h = halfWidth.get();
    Vec3 other = new Vec3(h.x() * ratio.x(), h.y() * ratio.y(), h.z() * ratio.z());
    return new ToolChangeOutlook(road, Optional.of(other), changes, hungUp, seating, linear);
  }

  private boolean decides(Targets targets) {
    if (seating != SeatingDoubt.Answer.SEATS) {
      return false;
    }
    for (int k = 0; k < 3; k++) {
      double target = targets.repeatability().limit(k);
      if (Double.isFinite(target)) {
        if (halfWidth.isEmpty()) {
          return false;
        }
        double part = halfWidth.get().component(k) / target;
        if (part > SURELY_WITHIN && part < SURELY_BEYOND) {
          return false;
        }
      }
    }
    return true;
  }

  private ToolChangeOutlook simulated(Equilibrium standing, long seed) {
    CouplingDesign design = standing.model().design();
    RemountSimulation simulation = new RemountSimulation(CouplingModel.of(design));
    ToolChangeOutlook known = this;
    for (long changes : STEPS) {
      known = after(run(simulation, changes, seed), design);
      if (known.clear(design.targets())) {
        return known;
      }
    }
    return known;
  }

  private static RemountScatter run(RemountSimulation simulation, long changes, long seed) {
    try {
      return simulation.run(RemountPlan.of(changes, seed, 1));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("the simulation was stopped", e);
    }
  }

  private ToolChangeOutlook after(RemountScatter scatter, CouplingDesign design) {
    long all = scatter.plan().mounts();
    long failed = scatter.failed();
    boolean told = failed <= MAY_HANG_UP * all && scatter.seated() > 1;
    return new ToolChangeOutlook(
        Road.SIMULATED,
        told
            ? Optional.of(halfWidth(scatter.toolPoint(), design.targets().coverage()))
            : Optional.empty(),
        all,
        failed,
        seating,
        linear);
  }

  private Vec3 halfWidth(VectorScatter toolPoint, Coverage coverage) {
    double[] half = new double[3];
    for (int k = 0; k < 3; k++) {
      double kurtosis = linear.isPresent() ? linear.get().kurtosis(k) : 0;
      half[k] =
          toolPoint.deviation().component(k) * SymmetricBand.ratio(kurtosis, coverage.share());
    }
    return new Vec3(half[0], half[1], half[2]);
  }

  /** Whether more changes would hardly give another word. */
  private boolean clear(Targets targets) {
    if (hungUpLeast() > MAY_HANG_UP) {
      return true;
    }
    if (seating != SeatingDoubt.Answer.SEATS && hungUpMost() > MAY_HANG_UP) {
      return false;
    }
    double error = CLEARLY / Math.sqrt(2.0 * changes);
    for (int k = 0; k < 3; k++) {
      double target = targets.repeatability().limit(k);
      if (Double.isFinite(target)) {
        if (halfWidth.isEmpty()) {
          return false;
        }
        double part = halfWidth.get().component(k) / target;
        if (part * (1 + error) > AT_TARGET_FROM && part * (1 - error) < AT_TARGET_TO) {
          return false;
        }
      }
    }
    return true;
  }

  /**
   * Returns the share of changes that hangs up at least.
   *
   * @return lower bound, 95 % sure; 0 if nothing was simulated
   */
  public double hungUpLeast() {
    return hungUp == 0 ? 0 : BinomialBound.least(hungUp, changes);
  }

  /**
   * Returns the share of changes that hangs up at most.
   *
   * @return upper bound, 95 % sure; of the closed form 0 where it is sure that they seat, else 1
   */
  public double hungUpMost() {
    if (hungUp == 0 && seating == SeatingDoubt.Answer.SEATS) {
      return 0; // whatever few changes could not exclude, the closed form does
    }
    if (changes == 0) {
      return 1;
    }
    return BinomialBound.most(hungUp, changes);
  }
}
