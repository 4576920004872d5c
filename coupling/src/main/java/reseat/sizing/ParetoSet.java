package reseat.sizing;

import java.util.ArrayList;
import java.util.List;

/** Candidates that no other beats in all four qualities. Not for use by several threads. */
public final class ParetoSet {

  private final List<Candidate> kept = new ArrayList<>();

  /** Starts with no candidate. */
  public ParetoSet() {}

  /**
   * Offers a candidate. Of candidates alike in all qualities the one offered first stays.
   *
   * @param candidate one that keeps every limit
   */
  public void offer(Candidate candidate) {
    Merits merits = candidate.judgement().merits().orElseThrow();
    for (int i = 0; i < kept.size(); i++) {
      Merits other = kept.get(i).judgement().merits().orElseThrow();
      if (other.beats(merits) || other.equals(merits)) {
        // those that beat much come to the front, where the next is soon told
        if (i > 0) {
          Candidate front = kept.get(i / 2);
          kept.set(i / 2, kept.get(i));
          kept.set(i, front);
        }
        return;
      }
    }
    kept.removeIf(c -> merits.beats(c.judgement().merits().orElseThrow()));
    kept.add(candidate);
  }

  /**
   * Returns the set.
   *
   * @return members by their number
   */
  public List<Candidate> members() {
    List<Candidate> sorted = new ArrayList<>(kept);
    sorted.sort((a, b) -> Long.compare(a.number(), b.number()));
    return List.copyOf(sorted);
  }
}
