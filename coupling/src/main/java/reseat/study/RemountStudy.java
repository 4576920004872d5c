package reseat.study;

import java.util.List;
import java.util.Optional;
import java.util.function.LongConsumer;
import reseat.design.CouplingDesign;
import reseat.design.Preload;
import reseat.equilibrium.ContactLines;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.Equilibrium;
import reseat.remount.CauseShares;
import reseat.remount.FrictionBound;
import reseat.remount.RemountPlan;
import reseat.remount.RemountScatter;
import reseat.remount.RemountSimulation;
import reseat.repeatability.ToolChangeOutlook;
import reseat.seating.SeatingPaths;
import reseat.seating.SelfSeating;
import reseat.space.Wrench;

/**
 * All that is asked of a tool change: will it seat, how well does it come back, and what causes the
 * scatter.
 *
 * @param check the coupling that stands, judged
 * @param scatter simulated mountings
 * @param causes what causes their scatter; empty if not asked for
 * @param bound closed upper scales of friction
 * @param byHand slides home under weight and seating force
 * @param byPreload slides home under weight and full preload
 */
public record RemountStudy(
    SeatedCheck check,
    RemountScatter scatter,
    Optional<CauseShares> causes,
    FrictionBound bound,
    Ways byHand,
    Ways byPreload) {

  /**
   * Slides home under one load.
   *
   * @param oneOpen those with one contact open, contact by contact; a ring counts as one
   * @param worstTwoOpen the worst of those with two open
   * @param worstThreeOpen the worst of those with three open
   */
  public record Ways(
      List<SelfSeating.Path> oneOpen,
      SelfSeating.Path worstTwoOpen,
      SelfSeating.Path worstThreeOpen) {

    /** Copies the list. */
    public Ways {
      oneOpen = List.copyOf(oneOpen);
    }

    static Ways of(CouplingDesign design, Wrench load) {
      SelfSeating seating = new SelfSeating(ContactLines.nominal(design), load);
      return new Ways(
          SeatingPaths.byContact(design, load),
          seating.twoOpen().get(0),
          seating.threeOpen().get(0));
    }
  }

  /**
   * Runs the study.
   *
   * @param check the coupling that stands, judged
   * @param plan how many mountings, and what each includes
   * @param causeMounts number of mountings in each set of the search for causes; 0 for no search
   * @param progress told the number of mountings done so far, of {@link #work}
   * @return all results
   * @throws InterruptedException if the thread is interrupted
   */
  public static RemountStudy run(
      SeatedCheck check, RemountPlan plan, long causeMounts, LongConsumer progress)
      throws InterruptedException {
    Equilibrium standing = check.standing();
    CouplingModel model = standing.model();
    CouplingDesign design = model.design();
    RemountScatter scatter = new RemountSimulation(model).run(plan, cause -> true, progress);
    Optional<CauseShares> causes = Optional.empty();
    if (causeMounts > 0) {
      causes =
          Optional.of(
              CauseShares.of(
                  model,
                  causeMounts,
                  plan.seed(),
                  plan.way(),
                  done -> progress.accept(plan.mounts() + done)));
    }
    return new RemountStudy(
        check,
        scatter,
        causes,
        FrictionBound.of(standing, design.friction().nominal()),
        Ways.of(design, seatingLoad(design)),
        Ways.of(design, design.standingLoad()));
  }

  /**
   * Says how much there is to do.
   *
   * @param plan the plan
   * @param causeMounts number of mountings in each set of the search for causes
   * @return number of mountings in all
   */
  public static long work(RemountPlan plan, long causeMounts) {
    return plan.mounts() + CauseShares.SETS * causeMounts;
  }

  /** Weight, and the seating force shared out over the preloads in proportion. */
  private static Wrench seatingLoad(CouplingDesign design) {
    double total = design.preloads().stream().mapToDouble(Preload::force).sum();
    double share = total > 0 ? Math.min(1, design.remount().seatingForce() / total) : 0;
    return design.weight().plus(design.preload().times(share));
  }

  /**
   * Returns the design.
   *
   * @return the coupling that was studied
   */
  public CouplingDesign design() {
    return check.design();
  }

  /**
   * Returns the state of rest.
   *
   * @return the coupling without friction, under nominal preload and weight
   */
  public Equilibrium standing() {
    return check.standing();
  }

  /**
   * Says whether enough of the simulated changes seated to speak of their scatter.
   *
   * @return true if at least 99.9 % did
   */
  public boolean tellsScatter() {
    long all = scatter.plan().mounts();
    return scatter.seated() > 1 && scatter.failed() <= ToolChangeOutlook.MAY_HANG_UP * all;
  }
}
