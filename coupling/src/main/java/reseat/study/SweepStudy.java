package reseat.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.LongConsumer;
import reseat.check.Finding;
import reseat.check.Judged;
import reseat.check.Said;
import reseat.check.Statement;
import reseat.check.Verdict;
import reseat.designfile.Alteration;
import reseat.designfile.DesignFile;
import reseat.designfile.DesignProblem;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.NoEquilibriumException;
import reseat.numerics.OneAfterAnother;
import reseat.remount.RemountPlan;
import reseat.remount.RemountScatter;
import reseat.remount.RemountSimulation;

/**
 * The same design file with one key or two taken through their values.
 *
 * @param plan what varied
 * @param points one per combination of values, the last key varying fastest; a point at which the
 *     coupling does not stand is there with its reason
 */
public record SweepStudy(SweepPlan plan, List<SweepPoint> points) {

  /** Copies the list. */
  public SweepStudy {
    points = List.copyOf(points);
  }

  /**
   * Runs a sweep. The result is the same, to the last bit, on any number of threads.
   *
   * @param plan what varies
   * @param progress told the number of points done so far
   * @return every point
   * @throws IllegalArgumentException if a value cannot be read or is refused by its key; the
   *     message is that of the design file
   * @throws InterruptedException if the thread is interrupted
   */
  public static SweepStudy run(SweepPlan plan, LongConsumer progress) throws InterruptedException {
    List<SweepPoint> points = new ArrayList<>();
    plan.way()
        .run(
            plan.points(),
            "sweep",
            number -> point(plan, (int) number),
            point -> {
              points.add(point);
              progress.accept(points.size());
            });
    return new SweepStudy(plan, points);
  }

  /**
   * Says how the best point stands.
   *
   * @return holds if any point does, undecided if one needs a decision and none holds, else fails
   */
  public Verdict best() {
    Verdict best = Verdict.FAILS;
    for (SweepPoint p : points) {
      if (p.state() == SweepPoint.State.HOLDS) {
        return Verdict.HOLDS;
      }
      if (p.state() == SweepPoint.State.UNDECIDED) {
        best = Verdict.UNDECIDED;
      }
    }
    return best;
  }

  private static SweepPoint point(SweepPlan plan, int number) {
    List<Alteration> changes = plan.at(number);
    DesignFile read = plan.file().with(changes);
    if (read.design().isEmpty()) {
      return refused(plan, changes, read);
    }
    try {
      return CheckStudy.run(StatedDesign.of(read), plan.depth())
          .accept(
              new CheckResult.Visitor<SweepPoint>() {
                @Override
                public SweepPoint unconstrained(UnconstrainedCheck result) {
                  return fallen(plan, changes, result);
                }

                @Override
                public SweepPoint unseated(UnseatedCheck result) {
                  return fallen(plan, changes, result);
                }

                @Override
                public SweepPoint seated(SeatedCheck result) {
                  return standing(plan, changes, result);
                }
              });
    } catch (NoEquilibriumException | IllegalArgumentException e) {
      return without(plan, changes, SweepPoint.State.DOES_NOT_STAND, refused(e.getMessage()));
    }
  }

  /**
   * A value that its own key refuses is a slip of the user's; anything else tells of the design.
   */
  private static SweepPoint refused(SweepPlan plan, List<Alteration> changes, DesignFile read) {
    DesignProblem first =
        read.problems().stream()
            .filter(p -> p.severity() == DesignProblem.Severity.ERROR)
            .findFirst()
            .orElseThrow();
    for (Alteration a : changes) {
      if (first.key().equals(a.key().inFile())) {
        throw new IllegalArgumentException(a.key().path() + ": " + first.message());
      }
    }
    return without(
        plan,
        changes,
        SweepPoint.State.CANNOT_BE_MADE,
        refused(first.key() + ": " + first.message()));
  }

  private static Statement refused(String message) {
    return Statement.of(Said.REFUSED, message);
  }

  private static SweepPoint fallen(SweepPlan plan, List<Alteration> changes, CheckResult result) {
    return without(plan, changes, SweepPoint.State.DOES_NOT_STAND, result.findings().get(0).said());
  }

  private static SweepPoint without(
      SweepPlan plan, List<Alteration> changes, SweepPoint.State state, Statement reason) {
    List<Optional<OutputValue>> none = new ArrayList<>();
    plan.outputs().forEach(o -> none.add(Optional.empty()));
    return new SweepPoint(typed(changes), state, none, List.of(), List.of(), reason);
  }

  private static SweepPoint standing(SweepPlan plan, List<Alteration> changes, SeatedCheck check) {
    Optional<RemountScatter> scatter =
        plan.outputs().stream().anyMatch(Output::simulated)
            ? Optional.of(scatter(plan, check))
            : Optional.empty();
    List<Optional<OutputValue>> values = new ArrayList<>();
    plan.outputs().forEach(o -> values.add(o.of(check, scatter)));
    return new SweepPoint(
        typed(changes),
        switch (check.verdict()) {
          case HOLDS -> SweepPoint.State.HOLDS;
          case UNDECIDED -> SweepPoint.State.UNDECIDED;
          case FAILS -> SweepPoint.State.FAILS;
        },
        values,
        judged(check, Judged.FAILS),
        judged(check, Judged.DECIDE),
        Statement.NOTHING);
  }

  private static List<Finding> judged(SeatedCheck check, Judged judged) {
    return check.findings().stream().filter(f -> f.judged() == judged).toList();
  }

  private static RemountScatter scatter(SweepPlan plan, SeatedCheck check) {
    try {
      return new RemountSimulation(CouplingModel.of(check.design()))
          .run(RemountPlan.of(plan.mounts(), plan.seed(), new OneAfterAnother()));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("the sweep was stopped", e);
    }
  }

  private static List<String> typed(List<Alteration> changes) {
    return changes.stream().map(Alteration::value).toList();
  }
}
