package reseat.units;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/**
 * Finds the known word a misspelt one was meant to be.
 *
 * <p>Distance counts insertions, deletions, replacements and swaps of neighbours (optimal string
 * alignment). A difference in capitals only always counts as near.
 */
public final class NearestWord {

  private NearestWord() {}

  /**
   * Returns the nearest known word.
   *
   * @param word as typed
   * @param known what could have been meant
   * @return the nearest, the first in alphabetical order among equals; empty if none is near: one
   *     slip is forgiven in a word of up to three letters, one more for every three letters beyond,
   *     three at most
   */
  public static Optional<String> to(String word, Collection<String> known) {
    int allowed = Math.min(3, 1 + Math.max(0, word.length() - 1) / 3);
    String best = null;
    int bestDistance = Integer.MAX_VALUE;
    for (String candidate : known) {
      if (Math.abs(candidate.length() - word.length()) > allowed) {
        continue;
      }
      int distance = weighted(word, candidate);
      boolean nearer =
          distance < bestDistance
              || (distance == bestDistance && (best == null || candidate.compareTo(best) < 0));
      if (nearer) {
        best = candidate;
        bestDistance = distance;
      }
    }
    boolean near = best != null && bestDistance <= 2 * allowed;
    // Replacing every letter is not a slip.
    boolean kept = best != null && bestDistance < 2 * Math.max(word.length(), best.length());
    return near && kept ? Optional.of(best) : Optional.empty();
  }

  /** Twice the distance without regard to capitals, plus one if capitals differ. */
  private static int weighted(String word, String candidate) {
    int distance = distance(word.toLowerCase(Locale.ROOT), candidate.toLowerCase(Locale.ROOT));
    return 2 * distance + (distance == 0 && !word.equals(candidate) ? 1 : 0);
  }

  /**
   * Counts the slips between two words.
   *
   * @param a one word
   * @param b the other
   * @return number of insertions, deletions, replacements and swaps of neighbours
   */
  static int distance(String a, String b) {
    int[] beforeLast = new int[b.length() + 1];
    int[] last = new int[b.length() + 1];
    int[] current = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      last[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      current[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int cost = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        int best = Math.min(Math.min(current[j - 1], last[j]) + 1, last[j - 1] + cost);
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          best = Math.min(best, beforeLast[j - 2] + 1);
        }
        current[j] = best;
      }
      int[] free = beforeLast;
      beforeLast = last;
      last = current;
      current = free;
    }
    return last[b.length()];
  }
}
