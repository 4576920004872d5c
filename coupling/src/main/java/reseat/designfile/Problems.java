package reseat.designfile;

import java.util.ArrayList;
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
    sorted.sort(Problems::byPlace);
    return List.copyOf(sorted);
  }

  private static int byPlace(DesignProblem a, DesignProblem b) {
    int byLine = Integer.compare(a.line(), b.line());
    return byLine != 0 ? byLine : Integer.compare(a.column(), b.column());
  }
}
