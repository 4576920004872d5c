package reseat.search;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import reseat.check.Verdict;
import reseat.designfile.SizeTargets.RankBy;

/**
 * What is kept of a search while candidates pass by: the best of each kind, those that none beats,
 * and the nearest miss of each check. Memory grows with these, not with the candidates.
 *
 * <p>The same candidates in the same order give the same tally, wherever they were judged. Not for
 * use by several threads.
 */
public final class SizingTally {

  /** Kinds that are ranked. */
  public static final int BEST = 10;

  /** A sample of designs that hold, for a picture. */
  private static final int SAMPLE = 2000;

  private final RankBy rule;
  private final List<Candidate> best = new ArrayList<>();
  private final List<Candidate> undecided = new ArrayList<>();
  private final Map<String, Miss> decisions = new LinkedHashMap<>();
  private final ParetoSet pareto = new ParetoSet();
  private final Map<String, Miss> misses = new LinkedHashMap<>();
  private final List<Candidate> sample = new ArrayList<>();
  private long stride = 1;
  private long judged;
  private long holding;

  /**
   * Starts a tally.
   *
   * @param rule by what candidates are put in order
   */
  public SizingTally(RankBy rule) {
    this.rule = rule;
  }

  /**
   * Why candidates fail, or need a decision.
   *
   * @param check the check that fails or is to be decided first
   * @param count how many by it
   * @param nearest the one of them that exceeds its limit least
   */
  public record Miss(String check, long count, Candidate nearest) {}

  /**
   * Takes a candidate in.
   *
   * @param c the candidate
   */
  public void add(Candidate c) {
    judged++;
    Judgement j = c.judgement();
    if (j.verdict() == Verdict.FAILS) {
      misses.merge(j.check(), new Miss(j.check(), 1, c), SizingTally::join);
      return;
    }
    if (j.verdict() == Verdict.UNDECIDED) {
      decisions.merge(j.decide(), new Miss(j.decide(), 1, c), SizingTally::join);
      rank(undecided, c);
      return;
    }
    rank(best, c);
    pareto.offer(c);
    if (holding % stride == 0) {
      sample.add(c);
      if (sample.size() == SAMPLE) {
        thin();
      }
    }
    holding++;
  }

  private static Miss join(Miss a, Miss b) {
    boolean nearer = b.nearest().judgement().used() < a.nearest().judgement().used();
    return new Miss(a.check(), a.count() + b.count(), nearer ? b.nearest() : a.nearest());
  }

  /** Every second one of the sample stays, and from now on half as many come in. */
  private void thin() {
    List<Candidate> half = new ArrayList<>();
    for (int i = 0; i < sample.size(); i += 2) {
      half.add(sample.get(i));
    }
    sample.clear();
    sample.addAll(half);
    stride *= 2;
  }

  private void rank(List<Candidate> best, Candidate c) {
    for (int i = 0; i < best.size(); i++) {
      if (best.get(i).kind() == c.kind()) {
        if (!before(c, best.get(i))) {
          return;
        }
        best.remove(i);
        break;
      }
    }
    int place = best.size();
    while (place > 0 && before(c, best.get(place - 1))) {
      place--;
    }
    best.add(place, c);
    if (best.size() > BEST) {
      best.remove(BEST);
    }
  }

  private boolean before(Candidate a, Candidate b) {
    int byScore = Double.compare(a.judgement().score(rule), b.judgement().score(rule));
    return byScore != 0 ? byScore < 0 : a.number() < b.number();
  }

  /**
   * Returns how many candidates passed.
   *
   * @return the number
   */
  public long judged() {
    return judged;
  }

  /**
   * Returns how many of them keep every limit.
   *
   * @return the number, those that need a decision not among them
   */
  public long holding() {
    return holding;
  }

  /**
   * Returns the ranking.
   *
   * @return the best candidate of each of the {@value #BEST} best kinds, best first
   */
  public List<Candidate> best() {
    return List.copyOf(best);
  }

  /**
   * Returns the ranking of those that need a decision.
   *
   * @return the best candidate of each of the {@value #BEST} best kinds, best first
   */
  public List<Candidate> undecided() {
    return List.copyOf(undecided);
  }

  /**
   * Returns what a person has to decide about in those that need it.
   *
   * @return one entry for each check, most frequent first
   */
  public List<Miss> decisions() {
    return sorted(decisions);
  }

  /**
   * Returns those that no other beats.
   *
   * @return the set, by number
   */
  public List<Candidate> pareto() {
    return pareto.members();
  }

  /**
   * Returns why candidates fail.
   *
   * @return one entry for each check, most frequent first
   */
  public List<Miss> misses() {
    return sorted(misses);
  }

  private static List<Miss> sorted(Map<String, Miss> misses) {
    List<Miss> sorted = new ArrayList<>(misses.values());
    sorted.sort(
        (a, b) ->
            a.count() != b.count()
                ? Long.compare(b.count(), a.count())
                : a.check().compareTo(b.check()));
    return List.copyOf(sorted);
  }

  /**
   * Returns some designs that hold, evenly over the search.
   *
   * @return fewer than {@value #SAMPLE} candidates
   */
  public List<Candidate> sample() {
    return List.copyOf(sample);
  }
}
