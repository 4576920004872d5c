package reseat.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import reseat.design.CouplingDesign;
import reseat.designfile.DesignFile;
import reseat.designfile.DesignProblem;

/** Reads the design file that a command works on and says what is wrong with it. */
final class DesignInput {

  private DesignInput() {}

  /**
   * Reads a design.
   *
   * @param file the file as named on the command line
   * @param err gets one line per error or warning
   * @return the design; empty if the file cannot be used, and then {@code err} says why
   * @throws IOException if the file cannot be read
   */
  static Optional<CouplingDesign> read(Path file, PrintWriter err) throws IOException {
    DesignFile read = DesignFile.read(file);
    for (DesignProblem problem : read.problems()) {
      err.println(problem.oneLine(file.toString()));
    }
    return read.design();
  }
}
