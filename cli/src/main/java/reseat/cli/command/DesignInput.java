package reseat.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import reseat.design.InputDoubt;
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
    Set<String> doubted = new TreeSet<>();
    for (InputDoubt doubt : read.doubts()) {
      doubted.add(doubt.key());
    }
    for (DesignProblem problem : read.problems()) {
      if (problem.severity() == DesignProblem.Severity.ERROR || !doubted.contains(problem.key())) {
        err.println(problem.oneLine(file.toString()));
      }
    }
    return read.design().isPresent() ? Optional.of(StatedDesign.of(read)) : Optional.empty();
  }
}
