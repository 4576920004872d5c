package reseat.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import reseat.design.CouplingDesign;
import reseat.designfile.AlterableDesign;
import reseat.designfile.DesignProblem;
import reseat.plots.Picture;
import reseat.report.form.Screen;
import reseat.report.search.SweepPicture;
import reseat.report.search.SweepTables;
import reseat.report.search.SweepText;
import reseat.study.Output;
import reseat.study.OutputCatalog;
import reseat.study.SweepAxis;
import reseat.study.SweepPlan;
import reseat.study.SweepPoint;
import reseat.study.SweepStudy;

/** Takes one key or two of a design file through a range, a list or the sizes in stock. */
final class SweepCommand implements Subcommand {

  private static final String NAME = "reseat sweep: ";
  private static final int MOUNTS = 1000;
  private static final int MOST_MOUNTS = 100_000_000;

  private final boolean watched;

  /**
   * Makes the command.
   *
   * @param watched whether the error stream is a terminal, and progress is shown there
   */
  SweepCommand(boolean watched) {
    this.watched = watched;
  }

  @Override
  public void describe(CommandSpec spec) {
    spec.usageMessage()
        .description(
            "Takes one key or two of a design file through a range, a list or the sizes in stock,"
                + " and tells what comes out and which check binds where.");
    spec.addPositional(Options.file("design file (see 'reseat starter')"));
    spec.addOption(
        Options.several(
            "--vary",
            "KEY=VALUES",
            "key and values, once or twice: \"preload.force=200 N..1 kN:9\" (FROM..TO:N),"
                + " \"layout.ball.diameter=3/8 in,12 mm\" or"
                + " layout.ball.diameter=stock:ball-inch (or ball-metric, pin, pin-inch, thread)"));
    spec.addOption(
        Options.several(
            "--output", "NAME", "what to tell, as often as you like; a few if not given"));
    spec.addOption(Options.flag("--list-outputs", "list what --output can name, and end"));
    spec.addOption(Options.text("--csv", "OUT", "write the table to this file too, SI units"));
    spec.addOption(
        Options.text(
            "--picture",
            "OUT",
            "draw curves over one key, or a map of the first output over two; .svg or .png"));
    ResultFiles.describeForce(spec);
    ScreenChoices.describe(spec);
    spec.addOption(
        Options.number(
            "--mounts", "N", MOUNTS, "tool changes to simulate at each point, for scatter"));
    spec.addOption(Options.seed());
    spec.addOption(Options.threads());
    spec.addOption(Options.flag("--json", "print the result as JSON, SI units"));
  }

  @Override
  public int run(ParseResult given, PrintWriter out, PrintWriter err) throws IOException {
    Path name = given.matchedPositionalValue(0, Path.of(""));
    AlterableDesign file = AlterableDesign.read(name);
    for (DesignProblem problem : file.unaltered().problems()) {
      err.println(problem.oneLine(name.toString()));
    }
    Optional<CouplingDesign> design = file.unaltered().design();
    if (design.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    if (given.hasMatchedOption("--list-outputs")) {
      out.print(SweepText.outputs(design.get()));
      return ExitCode.HOLDS;
    }
    try {
      Screen screen = ScreenChoices.of(given, file.unaltered().inInches());
      SweepPlan plan = plan(given, file, design.get());
      new ResultFiles(given).check("--csv", "--picture");
      return run(given, plan, screen, out, err);
    } catch (UnusableChoice | IllegalArgumentException e) {
      err.println(NAME + e.getMessage());
      return ExitCode.BAD_INPUT;
    }
  }

  private static SweepPlan plan(ParseResult given, AlterableDesign file, CouplingDesign design)
      throws UnusableChoice {
    List<SweepAxis> axes = new ArrayList<>();
    for (String text : given.matchedOptionValue("--vary", List.<String>of())) {
      axes.add(SweepAxis.of(file, text));
    }
    if (axes.isEmpty() || axes.size() > 2) {
      throw new UnusableChoice(
          "name one key or two to vary, such as --vary \"preload.force=200 N..1 kN:9\"; found "
              + axes.size(),
          null);
    }
    List<Output> outputs = new ArrayList<>();
    for (String text : given.matchedOptionValue("--output", List.<String>of())) {
      outputs.add(OutputCatalog.named(design, text));
    }
    if (given.hasMatchedOption("--picture")) {
      Optional<String> obstacle = SweepPicture.obstacle(axes);
      if (obstacle.isPresent()) {
        throw new UnusableChoice("--picture: " + obstacle.get(), null);
      }
    }
    return new SweepPlan(
        file,
        axes,
        outputs.isEmpty() ? OutputCatalog.usual(design) : outputs,
        (int) WholeNumber.of(given, "--mounts", 2, MOST_MOUNTS),
        WholeNumber.seed(given),
        WholeNumber.threads(given));
  }

  private int run(
      ParseResult given, SweepPlan plan, Screen screen, PrintWriter out, PrintWriter err)
      throws IOException {
    LongRun run =
        new LongRun(
            err,
            watched,
            plan.points(),
            done ->
                NAME
                    + "stopped after "
                    + done
                    + " of "
                    + plan.points()
                    + " points; nothing was written");
    Optional<SweepStudy> result = run.result(told -> SweepStudy.run(plan, told));
    if (result.isEmpty()) {
      return ExitCode.INTERRUPTED;
    }
    SweepStudy study = result.get();
    write(new ResultFiles(given), study, screen, err);
    String title = plan.file().unaltered().design().orElseThrow().title();
    String file = Screen.word(given.matchedPositionalValue(0, Path.of("")).toString());
    out.print(
        given.hasMatchedOption("--json")
            ? SweepTables.json(study, title)
            : SweepText.of(study, title, file, screen));
    return code(study);
  }

  private static int code(SweepStudy study) {
    boolean nothing =
        study.points().stream()
            .allMatch(
                p ->
                    p.state() == SweepPoint.State.DOES_NOT_STAND
                        || p.state() == SweepPoint.State.CANNOT_BE_MADE);
    return nothing ? ExitCode.NO_SOLUTION : ExitCode.of(study.best());
  }

  private static void write(ResultFiles files, SweepStudy study, Screen screen, PrintWriter err)
      throws IOException {
    Optional<Path> csv = files.named("--csv");
    if (csv.isPresent()) {
      files.write(csv.get(), SweepTables.csv(study));
    }
    Optional<Path> file = files.named("--picture");
    if (file.isPresent()) {
      Optional<Picture> picture = SweepPicture.of(study, screen.units());
      if (picture.isEmpty()) {
        err.println(NAME + "no point has a value to draw, so " + file.get() + " was not written");
        return;
      }
      files.write(file.get(), picture.get());
    }
  }
}
