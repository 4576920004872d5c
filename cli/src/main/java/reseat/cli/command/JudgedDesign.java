package reseat.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import reseat.check.Depth;
import reseat.equilibrium.NoEquilibriumException;
import reseat.remedy.Counsel;
import reseat.report.check.CheckJson;
import reseat.report.check.CheckText;
import reseat.report.form.Screen;
import reseat.study.AssumedShares;
import reseat.study.CheckResult;
import reseat.study.CheckStudy;
import reseat.study.SeatedCheck;
import reseat.study.StatedDesign;

/**
 * A design file that has been read and judged, for the commands that go on from a coupling that
 * stands.
 *
 * @param seated the check; empty if the file cannot be used or the coupling does not stand
 * @param code how the command ends where there is no coupling that stands
 */
record JudgedDesign(Optional<SeatedCheck> seated, int code) {

  /** Where a command prints, and how. */
  record Output(Screen screen, boolean json, boolean strict, PrintWriter out, PrintWriter err) {

    /** Output of a command whose verdict is not strict about what is assumed. */
    Output(Screen screen, boolean json, PrintWriter out, PrintWriter err) {
      this(screen, json, false, out, err);
    }
  }

  /**
   * Reads and judges a file; what stands in the way of going on is printed, as check prints it.
   *
   * @param file the design file
   * @param command what messages begin with, such as {@code reseat remount: }
   * @param output where to print
   * @return the coupling that stands, or how the command ends
   * @throws IOException if the file cannot be read
   */
  static JudgedDesign read(Path file, String command, Output output) throws IOException {
    Optional<StatedDesign> design = DesignInput.read(file, output.err());
    return design.isEmpty()
        ? new JudgedDesign(Optional.empty(), ExitCode.BAD_INPUT)
        : of(design.get(), file, command, output);
  }

  /**
   * Judges a design; what stands in the way of going on is printed, as check prints it.
   *
   * @param design the design
   * @param file its file
   * @param command what messages begin with
   * @param output where to print
   * @return the coupling that stands, or how the command ends
   * @throws IOException if the file cannot be read again
   */
  static JudgedDesign of(StatedDesign design, Path file, String command, Output output)
      throws IOException {
    try {
      CheckResult found = CheckStudy.run(design, Depth.SIMULATED);
      CheckResult result = output.strict() ? AssumedShares.strict(found) : found;
      if (result instanceof SeatedCheck seated) {
        return new JudgedDesign(Optional.of(seated), ExitCode.of(result.verdict()));
      }
      Counsel counsel = TriedChanges.of(file, result);
      output
          .out()
          .print(
              output.json()
                  ? CheckJson.of(result, counsel)
                  : CheckText.of(result, counsel, file.toString(), output.screen()));
      return new JudgedDesign(Optional.empty(), ExitCode.of(result.verdict()));
    } catch (NoEquilibriumException e) {
      output.err().println(command + file + ": " + e.getMessage());
      return new JudgedDesign(Optional.empty(), ExitCode.NO_SOLUTION);
    }
  }
}
