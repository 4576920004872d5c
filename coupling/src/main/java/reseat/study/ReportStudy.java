package reseat.study;

import java.util.List;
import java.util.Optional;
import reseat.budget.ErrorBudget;
import reseat.interchange.InterchangePlan;
import reseat.interchange.ToleranceModel;
import reseat.remount.RemountPlan;
import reseat.remount.RemountSimulation;
import reseat.space.Vec3;

/**
 * Everything a report tells of a coupling that stands.
 *
 * @param check the check
 * @param remount simulated mountings and what causes their scatter
 * @param positions shifts of the tool point in the first of them along the machine axes, m
 * @param interchange several holders on one post; empty if the design has no tolerances
 * @param budget the error budget
 * @param overPreload how the coupling goes with the preload; no points if it has none
 * @param overBalls how it goes with the size of its balls
 */
public record ReportStudy(
    SeatedCheck check,
    RemountStudy remount,
    List<Vec3> positions,
    Optional<InterchangeStudy> interchange,
    ErrorBudget budget,
    DesignCurve overPreload,
    DesignCurve overBalls) {

  /** Most mountings in each set of the search for causes; shares are then good to about 0.05. */
  private static final int CAUSE_MOUNTS = 1500;

  private static final int CURVE_POINTS = 17;

  /** Mountings shown as points of a cloud. */
  private static final int SHOWN_MOUNTS = 600;

  /**
   * How much to simulate.
   *
   * @param mounts number of mountings
   * @param holders number of holders
   * @param seed seed of all luck
   * @param threads number of threads
   */
  public record Effort(long mounts, long holders, long seed, int threads) {}

  /**
   * Runs every study.
   *
   * @param check the check of a coupling that stands
   * @param effort how much to simulate
   * @return all results
   * @throws InterruptedException if the thread is interrupted
   */
  public static ReportStudy run(SeatedCheck check, Effort effort) throws InterruptedException {
    var model = check.standing().model();
    var design = check.design();
    RemountStudy remount =
        RemountStudy.run(
            check,
            RemountPlan.of(effort.mounts(), effort.seed(), effort.threads()),
            Math.min(CAUSE_MOUNTS, effort.mounts()),
            done -> {});
    Optional<InterchangeStudy> interchange = Optional.empty();
    if (!ToleranceModel.of(design).contributors().isEmpty()) {
      InterchangePlan plan =
          InterchangePlan.onePost(effort.holders(), effort.seed(), effort.threads());
      InterchangeStudy.Wish wish = InterchangeStudy.Wish.plain(plan, effort.mounts());
      interchange = Optional.of(InterchangeStudy.run(design, remount.scatter(), wish, done -> {}));
    }
    return new ReportStudy(
        check,
        remount,
        new RemountSimulation(model)
            .positions(effort.seed(), (int) Math.min(SHOWN_MOUNTS, effort.mounts())),
        interchange,
        BudgetStudy.of(
            design, remount.causes().orElseThrow(), interchange.map(InterchangeStudy::stack)),
        design.preloads().isEmpty()
            ? new DesignCurve(List.of())
            : DesignCurve.overPreload(design, CURVE_POINTS, effort.mounts()),
        DesignCurve.overStockBalls(design, effort.mounts()));
  }
}
