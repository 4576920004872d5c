package reseat.readings;

import java.util.List;
import java.util.stream.Collectors;

/** Thrown when a readings file cannot be taken as it stands; holds every problem found in it. */
public final class UnreadableReadings extends Exception {

  private static final long serialVersionUID = 1L;

  private final transient List<ReadingsProblem> problems;

  /**
   * Gathers the problems.
   *
   * @param problems at least one, in the order of the file
   */
  public UnreadableReadings(List<ReadingsProblem> problems) {
    super(problems.stream().map(ReadingsProblem::text).collect(Collectors.joining("\n")));
    this.problems = List.copyOf(problems);
  }

  /**
   * Returns the problems.
   *
   * @return in the order of the file
   */
  public List<ReadingsProblem> problems() {
    return problems;
  }
}
