package reseat.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import reseat.cli.report.MountJson;
import reseat.cli.report.MountText;
import reseat.designfile.BallMountFile;
import reseat.designfile.DesignProblem;
import reseat.study.MountResult;
import reseat.study.MountStudy;

/** Looks at one ball mount: stud, bond, thread, lock nut, seat, adjustment. */
final class MountCommand implements FileCommand {

  private static final String JSON = "--json";

  @Override
  public void describe(CommandSpec spec) {
    spec.usageMessage()
        .description(
            "Looks at one ball mount: what the stud gives and bears, bond, thread beside another"
                + " pitch, lock nut, which screw to turn how far, the seat the ball turns in and the"
                + " pad behind it.");
    spec.addPositional(Options.file("ball mount file (see 'reseat starter ball-mount')"));
    spec.addOption(Options.flag(JSON, "print the result as JSON, SI units"));
  }

  @Override
  public int run(ParseResult given, PrintWriter out, PrintWriter err) throws IOException {
    return mount(given.matchedPositionalValue(0, null), given.hasMatchedOption(JSON), out, err);
  }

  @Override
  public int run(Path file, PrintWriter out, PrintWriter err) throws IOException {
    return mount(file, false, out, err);
  }

  private static int mount(Path file, boolean json, PrintWriter out, PrintWriter err)
      throws IOException {
    BallMountFile read = BallMountFile.read(file);
    for (DesignProblem problem : read.problems()) {
      err.println(problem.oneLine(file.toString()));
    }
    if (read.design().isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    MountResult result = MountStudy.run(read.design().get());
    out.print(json ? MountJson.of(result) : MountText.of(result));
    return result.holds() ? ExitCode.HOLDS : ExitCode.CHECK_FAILS;
  }
}
