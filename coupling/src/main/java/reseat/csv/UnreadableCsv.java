package reseat.csv;

import java.util.List;
import java.util.stream.Collectors;

/** Thrown when a CSV file cannot be taken as it stands; holds every problem found in it. */
public final class UnreadableCsv extends Exception {

  private static final long serialVersionUID = 1L;

  private final transient List<CsvProblem> problems;

  /**
   * Gathers the problems.
   *
   * @param problems at least one, in the order of the file
   */
  public UnreadableCsv(List<CsvProblem> problems) {
    super(problems.stream().map(CsvProblem::text).collect(Collectors.joining("\n")));
    this.problems = List.copyOf(problems);
  }

  /**
   * Returns the problems.
   *
   * @return in the order of the file
   */
  public List<CsvProblem> problems() {
    return problems;
  }
}
