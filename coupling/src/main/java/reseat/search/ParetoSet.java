package reseat.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Candidates that no other beats in all four qualities. Not for use by several threads.
 *
 * <p>Members are kept in groups as they came. Candidates that come one after the other are alike,
 * so most groups can be passed over by looking at their best and worst qualities alone.
 */
public final class ParetoSet {

  private final List<Group> groups = new ArrayList<>();

  /** Starts with no candidate. */
  public ParetoSet() {}

  /**
   * Offers a candidate. Of candidates alike in all qualities the one offered first stays.
   *
   * @param candidate one that keeps every limit
   */
  public void offer(Candidate candidate) {
    double[] costs = costs(candidate.judgement().merits().orElseThrow());
    for (int i = groups.size() - 1; i >= 0; i--) {
      if (groups.get(i).hasAsGoodAs(costs)) {
        return;
      }
    }
    for (Group g : groups) {
      g.dropBeatenBy(costs);
    }
    groups.removeIf(g -> g.count == 0);
    if (groups.isEmpty() || groups.get(groups.size() - 1).isFull()) {
      groups.add(new Group());
    }
    groups.get(groups.size() - 1).add(candidate, costs);
  }

  /** The qualities so turned that less is better in each. */
  private static double[] costs(Merits m) {
    return new double[] {m.repeatability(), -m.stiffness(), m.pressure(), m.size()};
  }

  private static boolean nowhereMore(double[] a, int at, double[] b, int bt) {
    return a[at] <= b[bt]
        && a[at + 1] <= b[bt + 1]
        && a[at + 2] <= b[bt + 2]
        && a[at + 3] <= b[bt + 3];
  }

  /**
   * Returns the set.
   *
   * @return members by their number
   */
  public List<Candidate> members() {
    List<Candidate> sorted = new ArrayList<>();
    for (Group g : groups) {
      sorted.addAll(Arrays.asList(g.members).subList(0, g.count));
    }
    sorted.sort((a, b) -> Long.compare(a.number(), b.number()));
    return List.copyOf(sorted);
  }

  /** A few members with their costs, four to a member, and bounds of the costs. */
  private static final class Group {
    private static final int MOST = 32;
    private static final int N = 4;

    final Candidate[] members = new Candidate[MOST];
    private final double[] costs = new double[N * MOST];
    private final double[] least = new double[N];
    private final double[] most = new double[N];
    private int taken;
    int count;

    boolean isFull() {
      return count == MOST;
    }

    void add(Candidate member, double[] its) {
      for (int k = 0; k < N; k++) {
        costs[N * count + k] = its[k];
        least[k] = taken == 0 ? its[k] : Math.min(least[k], its[k]);
        most[k] = taken == 0 ? its[k] : Math.max(most[k], its[k]);
      }
      members[count++] = member;
      taken++;
    }

    /** Whether a member is nowhere worse. */
    boolean hasAsGoodAs(double[] others) {
      if (nowhereMore(least, 0, others, 0)) {
        for (int i = 0; i < count; i++) {
          if (nowhereMore(costs, N * i, others, 0)) {
            return true;
          }
        }
      }
      return false;
    }

    /** Drops members that are nowhere better. The bounds may then be wider than need be. */
    void dropBeatenBy(double[] others) {
      if (nowhereMore(others, 0, most, 0)) {
        int kept = 0;
        for (int i = 0; i < count; i++) {
          if (!nowhereMore(others, 0, costs, N * i)) {
            members[kept] = members[i];
            System.arraycopy(costs, N * i, costs, N * kept, N);
            kept++;
          }
        }
        count = kept;
      }
    }
  }
}
