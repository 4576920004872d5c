package reseat.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import reseat.check.Depth;
import reseat.check.Finding;
import reseat.check.OrderedCheck;
import reseat.check.Verdict;
import reseat.design.CheckKind;
import reseat.designfile.AlterableDesign;
import reseat.designfile.Alteration;
import reseat.elementary.Elementary;
import reseat.repeatability.ToolChangeOutlook;
import reseat.study.CheckResult;
import reseat.study.SeatedCheck;

/**
 * The search for the smallest changes of a design file after which its whole verdict holds.
 *
 * <p>One lever is moved at a time, through values that can be bought or set. Which way a lever has
 * to go is seen from one value amid its range: a way that leaves any open finding no better is not
 * gone. The rest is tried nearest first, by the whole check with the closed form of tool changes,
 * until three levers are found that mend everything with room to spare. Each of these is written as
 * the text of a file, read again and checked with simulated tool changes, the same ones as any
 * check; what does not hold then is no remedy.
 */
public final class RemedySearch {

  /** Remedies told at most. */
  private static final int MOST = 3;

  /** Simulated checks at most. */
  private static final int CONFIRMATIONS = 16;

  /** Values of each way of a lever that pairs are made of. */
  private static final int OF_EACH = 6;

  /** By how much of a limit two changes may seem to fall short and yet be tried together. */
  private static final double NEARLY = 0.1;

  /** Pairs tried at most. */
  private static final int PAIRS = 1500;

  private final AlterableDesign file;
  private final Trial before;
  private final Trial closed;
  private final Depth quick;
  private final Depth full;
  private final List<Finding> open = new ArrayList<>();
  private final List<OrderedCheck> order;
  private final boolean gaps;
  private final List<Remedy> remedies = new ArrayList<>();
  private final Tally tally;
  private int confirmations;

  private RemedySearch(AlterableDesign file, CheckResult result) {
    this.file = file;
    before = new Trial(result.findings());
    for (Finding f : result.findings()) {
      if (Trial.open(f)) {
        open.add(f);
      }
    }
    order = ordered(open);
    gaps = before.open(CheckKind.CLEARANCE);
    tally = new Tally(open.get(0).check());
    boolean statics =
        result instanceof SeatedCheck s
            && s.toolChanges().road() == ToolChangeOutlook.Road.NOT_ASKED;
    quick = statics ? Depth.STATICS : Depth.CLOSED_FORM;
    full = statics ? Depth.STATICS : Depth.SIMULATED;
    closed = Trial.of(file.unaltered(), quick, order, true, true).orElse(before);
  }

  /**
   * Searches for remedies by single keys.
   *
   * @param file the design file
   * @param result what came of checking it as it stands
   * @return remedies, or what is in the way
   */
  public static Remedies of(AlterableDesign file, CheckResult result) {
    return of(file, result, false);
  }

  /**
   * Searches for remedies.
   *
   * @param file the design file
   * @param result what came of checking it as it stands
   * @param pairs whether to look for the best pair of keys if no single one helps
   * @return remedies, or what is in the way
   */
  public static Remedies of(AlterableDesign file, CheckResult result, boolean pairs) {
    if (result.verdict() == Verdict.HOLDS) {
      return Remedies.NOT_SOUGHT;
    }
    return new RemedySearch(file, result).run(pairs);
  }

  private Remedies run(boolean pairs) {
    FileKeys keys = new FileKeys(file);
    List<Ladder> ladders = new ArrayList<>(PullLadders.of(keys));
    ladders.addAll(SeatLadders.of(keys));
    ladders.addAll(MountLadders.of(keys));
    List<Way> ways = ways(ladders);
    List<Step> steps = new ArrayList<>();
    for (Way w : ways) {
      if (w.mendsAll()) {
        for (Rung r : w.rungs()) {
          steps.add(new Step(w.ladder(), r));
        }
      }
    }
    singles(steps);
    if (remedies.isEmpty() && before.open(CheckKind.INPUT)) {
      return told(Remedies.State.TO_BE_STATED);
    }
    if (remedies.isEmpty()) {
      for (Way w : ways) {
        tried(w.rungs().get(w.rungs().size() - 1).alterations());
      }
    }
    if (remedies.isEmpty() && pairs) {
      pairs(ways);
      return told(Remedies.State.PAIRS);
    }
    return told(Remedies.State.SINGLE_KEYS);
  }

  private Remedies told(Remedies.State state) {
    boolean none = remedies.isEmpty() && state != Remedies.State.TO_BE_STATED;
    CheckKind worst = open.get(0).check();
    boolean outOfReach =
        worst == CheckKind.LIFT_OFF
            && before.open(CheckKind.PRELOAD_DEVICE)
            && tally.uncured().isPresent();
    if (none && outOfReach) {
      // the preload that would hold every contact is more than its device can be set to
      return new Remedies(
          state,
          remedies,
          Optional.of(new Conflict(worst, CheckKind.PRELOAD_DEVICE)),
          Optional.empty());
    }
    return new Remedies(
        state,
        remedies,
        none ? tally.conflict() : Optional.empty(),
        none ? tally.uncured() : Optional.empty());
  }

  /** A lever and a value of it. */
  private record Step(Ladder ladder, Rung rung) {}

  /** One way that a lever can go. */
  private record Way(Ladder ladder, List<Rung> rungs, boolean mendsAll, boolean mendsAny) {}

  private List<Way> ways(List<Ladder> ladders) {
    List<Way> found = new ArrayList<>();
    for (Ladder l : ladders) {
      for (int way = -1; way <= 1; way++) {
        List<Rung> rungs = new ArrayList<>();
        for (Rung r : l.rungs()) {
          if (r.way() == way) {
            rungs.add(r);
          }
        }
        if (!rungs.isEmpty()) {
          found.add(way == 0 ? new Way(l, rungs, true, true) : probed(l, rungs));
        }
      }
    }
    return found;
  }

  /** Looks at a value amid the range, or nearer if that cannot be made. */
  private Way probed(Ladder ladder, List<Rung> rungs) {
    for (int at = rungs.size() / 2; ; at /= 2) {
      Optional<Trial> trial = tried(rungs.get(at).alterations());
      if (trial.isPresent()) {
        boolean all = true;
        boolean any = false;
        for (Finding f : open) {
          boolean better = better(trial.get(), f);
          all &= better;
          any |= better;
        }
        return new Way(ladder, rungs, all, any);
      }
      if (at == 0) {
        return new Way(ladder, rungs, false, false);
      }
    }
  }

  private static boolean better(Trial trial, Finding f) {
    Optional<Finding> now = trial.same(f);
    return now.isEmpty()
        || !Trial.open(now.get())
        || now.get().margin() > f.margin() + 1e-6
        || f.check() == CheckKind.TOOL_CHANGE_SEATING;
  }

  private Optional<Trial> tried(List<Alteration> alterations) {
    Optional<Trial> trial = Trial.of(file.with(alterations), quick, order, gaps, true);
    if (trial.isPresent()) {
      tally.add(trial.get());
    }
    return trial;
  }

  /** A trial that may hold; what does not is left at the first check that is open. */
  private Optional<Trial> cured(List<Alteration> alterations) {
    return Trial.of(file.with(alterations), quick, order, true, false)
        .filter(t -> t.mayHold(before, closed));
  }

  /** The checks, those first that are open. */
  private static List<OrderedCheck> ordered(List<Finding> open) {
    List<OrderedCheck> first = new ArrayList<>();
    List<OrderedCheck> then = new ArrayList<>();
    for (OrderedCheck check : OrderedCheck.thatJudge()) {
      boolean broken = false;
      for (Finding f : open) {
        broken |= check.finds(f.check());
      }
      (broken ? first : then).add(check);
    }
    first.addAll(then);
    return List.copyOf(first);
  }

  private void singles(List<Step> steps) {
    steps.sort(Comparator.comparingDouble(s -> s.rung().distance()));
    Set<Ladder> done = new HashSet<>();
    Set<Ladder> tight = new HashSet<>();
    List<Step> barely = new ArrayList<>();
    Map<Ladder, Integer> refused = new HashMap<>();
    Map<Ladder, Integer> skip = new HashMap<>();
    for (Step s : steps) {
      Ladder lever = s.ladder();
      int toSkip = skip.getOrDefault(lever, 0);
      if (toSkip > 0) {
        skip.put(lever, toSkip - 1);
        continue;
      }
      if (done.contains(lever)) {
        continue;
      }
      Optional<Trial> trial = cured(s.rung().alterations());
      if (trial.isPresent() && !trial.get().hasRoom(closed)) {
        if (tight.add(lever)) {
          barely.add(s); // told only if nothing leaves more
        }
      } else if (trial.isPresent()) {
        if (confirmed(List.of(s), s.rung().alterations(), false)) {
          done.add(lever);
        } else {
          int times = refused.merge(lever, 1, Integer::sum);
          skip.put(lever, times);
        }
      }
      if (remedies.size() == MOST || confirmations == CONFIRMATIONS) {
        return;
      }
    }
    for (Step s : barely) {
      if (remedies.isEmpty()) {
        confirmed(List.of(s), s.rung().alterations(), true);
      }
    }
  }

  /** Writes the change as a file, reads that and checks it in full. */
  private boolean confirmed(List<Step> steps, List<Alteration> alterations, boolean tight) {
    confirmations++;
    String text;
    try {
      text = file.textWith(alterations);
    } catch (IllegalArgumentException e) {
      return false; // such a value is no line of its own in this file
    }
    Optional<Trial> trial = Trial.whole(AlterableDesign.of(text).unaltered(), full);
    if (trial.isEmpty() || !trial.get().holds()) {
      trial.ifPresent(tally::add);
      return false;
    }
    List<Move> moves = new ArrayList<>();
    double distance = 0;
    for (Step s : steps) {
      moves.add(new Move(s.ladder().lever(), s.ladder().from(), s.rung().to()));
      distance += s.rung().distance();
    }
    List<Change> changes = new ArrayList<>();
    for (Alteration a : alterations) {
      String was = file.typed(a.key()).orElse("");
      changes.add(new Change(a.key().path(), a.value(), was));
    }
    remedies.add(new Remedy(moves, changes, Costs.between(before, trial.get()), distance, tight));
    return true;
  }

  private void pairs(List<Way> ways) {
    List<Weighed> all = new ArrayList<>();
    for (Way w : ways) {
      for (Step step : thinned(w, OF_EACH)) {
        Optional<Trial> trial = tried(step.rung().alterations());
        trial.ifPresent(t -> all.add(new Weighed(step, t)));
      }
    }
    List<List<Weighed>> both = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      for (int j = 0; j < i; j++) {
        boolean two = !all.get(i).step().ladder().equals(all.get(j).step().ladder());
        if (two && promising(all.get(i).trial(), all.get(j).trial())) {
          both.add(List.of(all.get(i), all.get(j)));
        }
      }
    }
    both.sort(Comparator.comparingDouble(p -> p.get(0).distance() + p.get(1).distance()));
    int last = Math.min(PAIRS, both.size());
    for (List<Weighed> pair : both.subList(0, last)) {
      if (confirmations >= 2 * CONFIRMATIONS || !remedies.isEmpty()) {
        return;
      }
      Step one = pair.get(0).step();
      Step other = pair.get(1).step();
      List<Alteration> alterations = new ArrayList<>(one.rung().alterations());
      for (Alteration a : other.rung().alterations()) {
        if (alterations.stream().noneMatch(b -> b.key().path().equals(a.key().path()))) {
          alterations.add(a);
        }
      }
      if (cured(alterations).filter(t -> t.hasRoom(closed)).isPresent()) {
        confirmed(List.of(one, other), alterations, false);
      }
    }
  }

  /** A value of a lever and what it does. */
  private record Weighed(Step step, Trial trial) {

    double distance() {
      return step.rung().distance();
    }
  }

  /** Whether two changes together may hold, if what each does to a margin adds up. */
  private boolean promising(Trial one, Trial other) {
    return adds(closed, one, other) && adds(one, one, other) && adds(other, one, other);
  }

  private boolean adds(Trial looked, Trial one, Trial other) {
    for (Finding f : looked.findings()) {
      if (!Trial.open(f)) {
        continue;
      }
      Optional<Finding> a = one.same(f);
      Optional<Finding> b = other.same(f);
      boolean cured = a.isEmpty() || b.isEmpty() || !Trial.open(a.get()) || !Trial.open(b.get());
      Optional<Finding> now = closed.same(f);
      if (f.check() == CheckKind.TOOL_CHANGE_SEATING
          || now.isEmpty()
          || a.isEmpty()
          || b.isEmpty()) {
        if (!cured) {
          return false;
        }
      } else if (a.get().margin() + b.get().margin() - now.get().margin() < -NEARLY) {
        return false;
      }
    }
    return true;
  }

  private static List<Step> thinned(Way way, int most) {
    List<Step> some = new ArrayList<>();
    int n = way.rungs().size();
    int taken = Math.min(most, n);
    for (int i = 0; i < taken; i++) {
      int at = taken == n ? i : (int) Elementary.round((i + 0.5) * n / taken - 0.5);
      some.add(new Step(way.ladder(), way.rungs().get(Math.min(n - 1, at))));
    }
    return some;
  }
}
