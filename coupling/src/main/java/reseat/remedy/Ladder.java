package reseat.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A lever and the values that it may be put to.
 *
 * @param lever what is changed
 * @param from as the file has it; empty if it has none, or several
 * @param rungs its values, the nearest first
 */
record Ladder(Lever lever, String from, List<Rung> rungs) {

  /** Puts the values in order. */
  Ladder {
    List<Rung> sorted = new ArrayList<>(rungs);
    sorted.sort(Comparator.comparingDouble(Rung::distance));
    rungs = List.copyOf(sorted);
  }
}
