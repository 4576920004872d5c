package reseat.designfile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Gathers the problems of one file. */
final class Problems {

  private final List<DesignProblem> found = new ArrayList<>();

  void error(int line, int column, String key, String message) {
    add(new DesignProblem(DesignProblem.Severity.ERROR, line, column, key, message));
  }

  void warning(int line, int column, String key, String message) {
    add(new DesignProblem(DesignProblem.Severity.WARNING, line, column, key, message));
  }

  /** Tells a problem once, though the part it stands in serves several supports. */
  private void add(DesignProblem problem) {
    if (!found.contains(problem)) {
      found.add(problem);
    }
  }

  boolean hasErrors() {
    return found.stream().anyMatch(p -> p.severity() == DesignProblem.Severity.ERROR);
  }

  /** All problems in the order of the file. */
  List<DesignProblem> sorted() {
    List<DesignProblem> sorted = new ArrayList<>(found);
    sorted.sort(
        Comparator.comparingInt(DesignProblem::line).thenComparingInt(DesignProblem::column));
    return List.copyOf(sorted);
  }
}
