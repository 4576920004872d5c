package reseat.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.LongConsumer;
import reseat.check.Argument;
import reseat.check.Finding;
import reseat.check.Judged;
import reseat.check.LimitBasis;
import reseat.check.Measure;
import reseat.check.Said;
import reseat.check.Statement;
import reseat.check.Subject;
import reseat.design.CheckKind;
import reseat.design.CouplingDesign;
import reseat.equilibrium.CouplingModel;
import reseat.interchange.CostLaw;
import reseat.interchange.InterchangePlan;
import reseat.interchange.InterchangeResult;
import reseat.interchange.InterchangeScatter;
import reseat.interchange.InterchangeSimulation;
import reseat.interchange.LinearStack;
import reseat.interchange.MeasuredParts;
import reseat.interchange.OffsetPrediction;
import reseat.interchange.ToleranceAdvice;
import reseat.interchange.ToleranceModel;
import reseat.remount.RemountPlan;
import reseat.remount.RemountScatter;
import reseat.remount.RemountSimulation;
import reseat.space.Vec3;

/**
 * All that is asked of several holders on one post.
 *
 * @param wish what was asked
 * @param simulated holders drawn and put on their post
 * @param stack the linear stack of the tolerances
 * @param remount one holder that returns to itself, simulated for its repeatability
 * @param scatter repeatability, interchangeability and accuracy
 * @param advice the cheapest tolerances that keep the holders within what is wanted; empty if
 *     nothing is
 * @param offsets predicted offsets of measured holders; none if none were measured
 */
public record InterchangeStudy(
    Wish wish,
    InterchangeResult simulated,
    LinearStack stack,
    RemountScatter remount,
    InterchangeScatter scatter,
    Optional<ToleranceAdvice> advice,
    List<OffsetPrediction.Offset> offsets) {

  /** Half-width over standard deviation for about 95 % (JCGM 100:2008, 6.3.3). */
  public static final double COVERAGE = 2;

  /** How many times tighter or looser than now a limit may become. */
  private static final double RANGE = 10;

  /** Copies the list. */
  public InterchangeStudy {
    offsets = List.copyOf(offsets);
  }

  /**
   * What is asked.
   *
   * @param plan how many posts and holders
   * @param mounts number of simulated mountings from which repeatability is taken
   * @param calibration standard uncertainty of an entry of the offset table, m
   * @param within half-width about their mean within which the holders are wanted, the coverage of
   *     the targets of them, along every machine axis, m; infinite if nothing is wanted
   * @param costExponent p of the cost law a/t^p, under which each present limit costs one unit
   * @param measured what a measuring machine found, if anything
   */
  public record Wish(
      InterchangePlan plan,
      long mounts,
      double calibration,
      double within,
      double costExponent,
      Optional<MeasuredParts> measured) {

    /**
     * Asks for the spread alone: nothing wanted of it, nothing measured, an exact offset table.
     *
     * @param plan how many posts and holders
     * @param mounts number of simulated mountings from which repeatability is taken
     * @return the wish
     */
    public static Wish plain(InterchangePlan plan, long mounts) {
      return new Wish(plan, mounts, 0, Double.POSITIVE_INFINITY, 1, Optional.empty());
    }

    /** Refuses wishes that nothing can meet. */
    public Wish {
      if (!(within > 0)) {
        throw new IllegalArgumentException("the wanted half-width must be above zero");
      }
      if (!(calibration >= 0) || Double.isInfinite(calibration)) {
        throw new IllegalArgumentException("the calibration uncertainty must not be negative");
      }
    }
  }

  /**
   * Runs the study.
   *
   * @param design the coupling with its tolerances, all contacts closed at rest
   * @param wish what is asked
   * @param progress told the number of holders done so far
   * @return all results
   * @throws IllegalArgumentException if a part cannot be made at the limit of its tolerance, or a
   *     measurement cannot be meant
   * @throws InterruptedException if the thread is interrupted
   */
  public static InterchangeStudy run(CouplingDesign design, Wish wish, LongConsumer progress)
      throws InterruptedException {
    RemountScatter remount =
        new RemountSimulation(CouplingModel.of(design))
            .run(RemountPlan.of(wish.mounts(), wish.plan().seed(), wish.plan().way()));
    return run(design, remount, wish, progress);
  }

  /**
   * Runs the study of a coupling whose repeatability is known.
   *
   * @param design the coupling with its tolerances, all contacts closed at rest
   * @param remount its simulated mountings
   * @param wish what is asked
   * @param progress told the number of holders done so far
   * @return all results
   * @throws IllegalArgumentException if a part cannot be made at the limit of its tolerance, or a
   *     measurement cannot be meant
   * @throws InterruptedException if the thread is interrupted
   */
  public static InterchangeStudy run(
      CouplingDesign design, RemountScatter remount, Wish wish, LongConsumer progress)
      throws InterruptedException {
    ToleranceModel tolerances = ToleranceModel.of(design);
    List<OffsetPrediction.Offset> offsets =
        wish.measured().isEmpty()
            ? List.of()
            : new OffsetPrediction(tolerances)
                .of(wish.measured().get().post(), wish.measured().get().holders());
    InterchangeSimulation simulation = new InterchangeSimulation(tolerances);
    InterchangeResult simulated = simulation.run(wish.plan(), progress);
    Vec3 calibration = new Vec3(wish.calibration(), wish.calibration(), wish.calibration());
    LinearStack stack = simulation.stack();
    return new InterchangeStudy(
        wish,
        simulated,
        stack,
        remount,
        InterchangeScatter.of(stack, remount.toolPoint().deviation(), calibration),
        advice(stack, wish),
        offsets);
  }

  private static Optional<ToleranceAdvice> advice(LinearStack stack, Wish wish) {
    if (Double.isInfinite(wish.within())) {
      return Optional.empty();
    }
    double deviation = wish.within() / COVERAGE;
    return Optional.of(
        ToleranceAdvice.cheapest(
            stack,
            LinearStack.BETWEEN_HOLDERS,
            new ToleranceAdvice.Limits(deviation, deviation, deviation),
            c -> CostLaw.unitAt(c.spread().limit(), wish.costExponent(), RANGE)));
  }

  /**
   * Returns the design.
   *
   * @return the coupling that was studied
   */
  public CouplingDesign design() {
    return stack.sensitivity().model().design();
  }

  /**
   * Judges the holders beside the check of their design.
   *
   * @return findings on holders that do not fit, and on each axis along which a limit is wanted
   */
  public List<Finding> findings() {
    List<Finding> found = new ArrayList<>();
    long misfits = simulated.misfits();
    long all = wish.plan().posts() * wish.plan().holders();
    if (misfits > 0) {
      found.add(
          new Finding(
              CheckKind.INTERCHANGE,
              Judged.FAILS,
              Subject.COUPLING,
              misfits,
              0,
              Finding.Sense.AT_MOST,
              LimitBasis.MECHANICS,
              Measure.COUNT,
              Statement.of(
                  Said.HOLDERS_MISFIT,
                  Argument.amount(Measure.COUNT, (double) misfits),
                  Argument.amount(Measure.COUNT, (double) all)),
              Statement.NOTHING));
    }
    for (int k = 0; k < 3 && Double.isFinite(wish.within()); k++) {
      double half = simulated.own().covered().component(k);
      String axis = design().axes().axis(k).name();
      found.add(
          new Finding(
              CheckKind.INTERCHANGE,
              Judged.by(half, wish.within(), Finding.Sense.AT_MOST, LimitBasis.STATED),
              Subject.axis(axis),
              half,
              wish.within(),
              Finding.Sense.AT_MOST,
              LimitBasis.STATED,
              Measure.LENGTH,
              Statement.of(
                  Said.HOLDERS_APART,
                  axis,
                  Argument.computed(Measure.LENGTH, half),
                  Argument.amount(Measure.LENGTH, wish.within()),
                  design().targets().coverage().written()),
              Statement.NOTHING));
    }
    return found;
  }

  /**
   * Says whether the holders keep within what is wanted along one axis.
   *
   * @param axis machine axis, 0, 1 or 2
   * @return true if the coverage of the targets of those that fit stands within the wanted
   *     half-width about their mean
   */
  public boolean keepsWithin(int axis) {
    return simulated.own().covered().component(axis) <= wish.within();
  }
}
