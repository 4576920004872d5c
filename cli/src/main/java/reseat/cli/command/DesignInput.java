package reseat.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import reseat.design.InputDoubt;
import reseat.designfile.BallMountFile;
import reseat.designfile.DesignFile;
import reseat.designfile.DesignProblem;
import reseat.study.StatedDesign;

/** Reads the design file that a command works on and says what is wrong with it. */
final class DesignInput {

  private DesignInput() {}

  /**
   * Reads a design.
   *
   * @param file the file as named on the command line
   * @param err gets one line per error, and per warning that is no doubt about a value: doubts are
   *     findings and told with the result
   * @return the design; empty if the file cannot be used, and then {@code err} says why
   * @throws IOException if the file cannot be read
   */
  static Optional<StatedDesign> read(Path file, PrintWriter err) throws IOException {
    DesignFile read = DesignFile.read(file);
    tell(file, read.problems(), read.doubts(), err);
    return read.design().isPresent() ? Optional.of(StatedDesign.of(read)) : Optional.empty();
  }

  /**
   * Reads a file on one ball mount.
   *
   * @param file the file as named on the command line
   * @param err gets the same lines as of a design
   * @return the file; empty if it cannot be used, and then {@code err} says why
   * @throws IOException if the file cannot be read
   */
  static Optional<BallMountFile> readMount(Path file, PrintWriter err) throws IOException {
    BallMountFile read = BallMountFile.read(file);
    tell(file, read.problems(), read.doubts(), err);
    return read.design().isPresent() ? Optional.of(read) : Optional.empty();
  }

  /**
   * Prints what is wrong with a file that a command works on, but for doubts about values.
   *
   * @param file its name
   * @param problems what is wrong
   * @param doubts doubts about values, told with the result
   * @param err where to
   */
  static void tell(
      Path file, List<DesignProblem> problems, List<InputDoubt> doubts, PrintWriter err) {
    Set<String> doubted = new TreeSet<>();
    for (InputDoubt doubt : doubts) {
      doubted.add(doubt.key());
    }
    for (DesignProblem problem : problems) {
      if (problem.severity() == DesignProblem.Severity.ERROR || !doubted.contains(problem.key())) {
        err.println(problem.oneLine(file.toString()));
      }
    }
  }
}
