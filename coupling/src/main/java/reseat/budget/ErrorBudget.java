package reseat.budget;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import reseat.elementary.Elementary;
import reseat.space.Vec3;
import reseat.units.PrintedNumber;

/**
 * Lines added up: root sum square of independent contributions (JCGM 100:2008, 5.1.2).
 *
 * @param lines the lines, greatest contribution first
 * @param coverageFactor factor from combined to expanded uncertainty; 2 for about 95 %
 */
public record ErrorBudget(List<BudgetLine> lines, double coverageFactor) {

  /** Orders the lines. */
  public ErrorBudget {
    List<BudgetLine> sorted = new ArrayList<>(lines);
    double all = 0;
    for (BudgetLine l : lines) {
      all += l.contribution().norm();
    }
    // rounded, so that lines alike by symmetry stay in the order in which they were made
    double scale = all > 0 ? 1e9 / all : 0;
    sorted.sort(
        Comparator.comparingDouble(
            (BudgetLine l) -> -Elementary.rint(scale * l.contribution().norm())));
    lines = List.copyOf(sorted);
    if (!(coverageFactor > 0)) {
      throw new IllegalArgumentException(
          "the coverage factor must be above zero, found "
              + PrintedNumber.shortest(coverageFactor));
    }
  }

  /**
   * Adds the lines of one nature.
   *
   * @param nature random or systematic
   * @return combined standard uncertainty along the machine axes, m
   */
  public Vec3 combined(BudgetLine.Nature nature) {
    return combined(lines.stream().filter(l -> l.nature() == nature).toList());
  }

  /**
   * Adds all lines.
   *
   * @return combined standard uncertainty along the machine axes, m
   */
  public Vec3 combined() {
    return combined(lines);
  }

  /**
   * Returns the expanded uncertainty of the lines of one nature.
   *
   * @param nature random or systematic
   * @return coverage factor times combined, along the machine axes, m
   */
  public Vec3 expanded(BudgetLine.Nature nature) {
    return combined(nature).times(coverageFactor);
  }

  private static Vec3 combined(List<BudgetLine> lines) {
    double[] squares = new double[3];
    for (BudgetLine l : lines) {
      for (int k = 0; k < 3; k++) {
        squares[k] += l.contribution().component(k) * l.contribution().component(k);
      }
    }
    return new Vec3(Math.sqrt(squares[0]), Math.sqrt(squares[1]), Math.sqrt(squares[2]));
  }
}
