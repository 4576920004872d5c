package reseat.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import reseat.check.Argument;
import reseat.check.Depth;
import reseat.check.Finding;
import reseat.check.Judged;
import reseat.check.Measure;
import reseat.check.Said;
import reseat.check.Statement;
import reseat.check.Verdict;
import reseat.design.CheckKind;
import reseat.design.CouplingDesign;
import reseat.designfile.Alteration;
import reseat.designfile.DesignFile;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.NoEquilibriumException;
import reseat.space.Vec3;
import reseat.study.CheckStudy;
import reseat.study.SeatedCheck;
import reseat.study.SeatedScatter;
import reseat.study.StatedDesign;

/**
 * What came of a search: the ranking, the best design after refinement, the designs that no other
 * beats, and why others fail.
 *
 * @param plan the search
 * @param judged combinations judged
 * @param holding those that keep every limit, tool changes looked at by the closed form
 * @param undecided those that need a decision, looked at likewise
 * @param ranked the best of each kind, best first, each confirmed by the whole check with simulated
 *     tool changes: designs that hold; if none does, designs that need a decision
 * @param dropped designs of the ranking that the whole check did not confirm
 * @param refined the best found between the values, if it is better than all of them
 * @param pareto combinations that no other beats in repeatability, stiffness, pressure and size
 * @param sample some of the combinations that hold
 * @param decisions what a person has to decide about in those that need it, most frequent first
 * @param misses why the others fail, most frequent first
 */
public record SizingStudy(
    SizingPlan plan,
    long judged,
    long holding,
    long undecided,
    List<Choice> ranked,
    int dropped,
    Optional<Choice> refined,
    List<Candidate> pareto,
    List<Candidate> sample,
    List<SizingTally.Miss> decisions,
    List<NearMiss> misses) {

  /** Tool changes simulated for each ranked design; their scatter is then good to about 4 %. */
  public static final int MOUNTS = 300;

  /** Kinds that are refined. */
  private static final int REFINED = 3;

  /** Copies the lists. */
  public SizingStudy {
    ranked = List.copyOf(ranked);
    pareto = List.copyOf(pareto);
    sample = List.copyOf(sample);
    decisions = List.copyOf(decisions);
    misses = List.copyOf(misses);
  }

  /**
   * A design worth looking at.
   *
   * @param values value of each varied key, as typed
   * @param alterations what to change in the file
   * @param judgement how it stands
   * @param check everything about it
   * @param scatter standard deviation of the tool point over simulated tool changes, along the
   *     machine axes, m; empty if fewer than half of them seat
   */
  public record Choice(
      List<String> values,
      List<Alteration> alterations,
      Judgement judgement,
      SeatedCheck check,
      Optional<Vec3> scatter) {

    /** Copies the lists. */
    public Choice {
      values = List.copyOf(values);
      alterations = List.copyOf(alterations);
    }
  }

  /**
   * A check by which combinations fail, and the one that misses least.
   *
   * @param check the check
   * @param count how many fail by it first
   * @param values values of the nearest
   * @param used part of the limit that it uses; infinite if that cannot be told
   * @param reasons everything that fails in it
   */
  public record NearMiss(
      String check, long count, List<String> values, double used, List<Statement> reasons) {

    /** Copies the lists. */
    public NearMiss {
      values = List.copyOf(values);
      reasons = List.copyOf(reasons);
    }
  }

  /**
   * Finishes a search: looks at the best in full, refines them, tells why others fail.
   *
   * @param plan the search
   * @param tally every candidate judged
   * @return the outcome
   * @throws InterruptedException if the thread is interrupted
   */
  public static SizingStudy of(SizingPlan plan, SizingTally tally) throws InterruptedException {
    List<Choice> looked = choices(plan, tally.best());
    List<Choice> ranked = of(Verdict.HOLDS, looked);
    int dropped = looked.size() - ranked.size();
    Optional<Choice> refined =
        refined(plan, tally).filter(c -> c.check().verdict() == Verdict.HOLDS);
    if (ranked.isEmpty() && refined.isEmpty()) {
      List<Choice> second = new ArrayList<>(looked);
      second.addAll(choices(plan, tally.undecided()));
      ranked = of(Verdict.HOLDS, second);
      ranked = ranked.isEmpty() ? of(Verdict.UNDECIDED, second) : ranked;
    }
    long undecided = tally.decisions().stream().mapToLong(SizingTally.Miss::count).sum();
    return new SizingStudy(
        plan,
        tally.judged(),
        tally.holding(),
        undecided,
        ranked,
        dropped,
        refined,
        tally.pareto(),
        tally.sample(),
        tally.decisions(),
        each(plan, tally.misses(), m -> nearMiss(plan, m)));
  }

  private static List<Choice> choices(SizingPlan plan, List<Candidate> candidates)
      throws InterruptedException {
    SizingSpace space = plan.space();
    return each(plan, candidates, c -> choice(space, space.values(c.number()), c.judgement()));
  }

  private static List<Choice> of(Verdict verdict, List<Choice> looked) {
    return looked.stream().filter(c -> c.check().verdict() == verdict).toList();
  }

  private static <T, R> List<R> each(SizingPlan plan, List<T> all, Function<T, R> work)
      throws InterruptedException {
    List<R> results = new ArrayList<>();
    plan.way().run(all.size(), "size", i -> work.apply(all.get((int) i)), results::add);
    return results;
  }

  /**
   * Returns the recommended design.
   *
   * @return the refined one or else the first of the ranking; empty if every candidate fails
   */
  public Optional<Choice> winner() {
    return refined.isPresent() ? refined : ranked.stream().findFirst();
  }

  /**
   * Returns the verdict of the search.
   *
   * @return that of the recommended design, by the whole check; fails if there is none
   */
  public Verdict verdict() {
    return winner().map(c -> c.check().verdict()).orElse(Verdict.FAILS);
  }

  private static Optional<Choice> refined(SizingPlan plan, SizingTally tally)
      throws InterruptedException {
    List<String> best = null;
    double least =
        tally.best().isEmpty()
            ? Double.POSITIVE_INFINITY
            : tally.best().get(0).judgement().score(plan.wish().rankBy());
    List<Candidate> starts = tally.best().subList(0, Math.min(REFINED, tally.best().size()));
    for (List<String> values : each(plan, starts, c -> refined(plan, c))) {
      double score = objective(plan, values);
      if (score < least) {
        least = score;
        best = values;
      }
    }
    if (best == null) {
      return Optional.empty();
    }
    return Optional.of(choice(plan.space(), best, judged(plan, best)));
  }

  /** The best values met from a candidate on. Places near by round to the same values. */
  private static List<String> refined(SizingPlan plan, Candidate start) {
    SizingSpace space = plan.space();
    Map<List<String>, Double> known = new HashMap<>();
    double[] place =
        Refinement.from(
            x ->
                known.computeIfAbsent(
                    space.values(start.number(), x), values -> objective(plan, values)),
            space.place(start.number()));
    return space.values(start.number(), place);
  }

  /** What refinement makes small: the score where all limits are kept, else far more. */
  private static double objective(SizingPlan plan, List<String> values) {
    Judgement j = judged(plan, values);
    return j.holds() ? j.score(plan.wish().rankBy()) : 1e30 * (1 + Math.min(1e9, j.used()));
  }

  private static Judgement judged(SizingPlan plan, List<String> values) {
    return plan.space()
        .file()
        .with(plan.space().alterations(values))
        .design()
        .map(d -> CandidateCheck.of(d, plan.wish(), plan.space().file().unaltered().accepted()))
        .orElseGet(SizingSpace::cannotBeMade);
  }

  private static Choice choice(SizingSpace space, List<String> values, Judgement judgement) {
    List<Alteration> changes = space.alterations(values);
    StatedDesign stated = StatedDesign.of(space.file().with(changes));
    CouplingDesign design = stated.design();
    SeatedCheck check = (SeatedCheck) CheckStudy.run(stated, Depth.SIMULATED);
    return new Choice(
        values, changes, judgement, check, SeatedScatter.of(CouplingModel.of(design), MOUNTS));
  }

  private static NearMiss nearMiss(SizingPlan plan, SizingTally.Miss m) {
    SizingSpace space = plan.space();
    List<String> values = space.values(m.nearest().number());
    DesignFile read = space.file().with(space.alterations(values));
    List<Statement> reasons = new ArrayList<>();
    if (read.design().isEmpty()) {
      read.problems()
          .forEach(p -> reasons.add(Statement.of(Said.REFUSED, p.key() + ": " + p.message())));
    } else {
      beyondWish(plan, m, read.design().get()).ifPresent(reasons::add);
      try {
        for (Finding f : CheckStudy.run(StatedDesign.of(read), Depth.SIMULATED).findings()) {
          if (f.judged() == Judged.FAILS) {
            reasons.add(f.said());
          }
        }
      } catch (NoEquilibriumException | IllegalArgumentException e) {
        reasons.add(Statement.of(Said.REFUSED, e.getMessage()));
      }
    }
    return new NearMiss(m.check(), m.count(), values, m.nearest().judgement().used(), reasons);
  }

  /** What the wish asks for beside the checks. */
  private static Optional<Statement> beyondWish(
      SizingPlan plan, SizingTally.Miss m, CouplingDesign design) {
    if (m.check().equals(Judgement.SIZE)) {
      return Optional.of(
          Statement.of(
              Said.TOO_LARGE,
              Argument.amount(Measure.LENGTH, DesignFamily.sizeOf(design)),
              Argument.amount(Measure.LENGTH, plan.wish().largestSize())));
    }
    if (CheckKind.of(m.check()).equals(Optional.of(CheckKind.STIFFNESS))) {
      double wanted = plan.wish().leastStiffness();
      return Optional.of(
          Statement.of(
              Said.TOO_SOFT,
              Argument.amount(Measure.STIFFNESS, wanted / m.nearest().judgement().used()),
              Argument.amount(Measure.STIFFNESS, wanted)));
    }
    return Optional.empty();
  }
}
