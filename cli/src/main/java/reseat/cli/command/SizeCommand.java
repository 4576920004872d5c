package reseat.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import reseat.check.Depth;
import reseat.designfile.AlterableDesign;
import reseat.designfile.DesignProblem;
import reseat.designfile.SizeTargets;
import reseat.plots.Picture;
import reseat.report.form.Screen;
import reseat.report.form.UnitSystem;
import reseat.report.search.ChoicesText;
import reseat.report.search.SizeJson;
import reseat.report.search.SizePicture;
import reseat.report.search.SizeText;
import reseat.search.CandidateFile;
import reseat.search.ClassicChoices;
import reseat.search.SizingPlan;
import reseat.search.SizingSearch;
import reseat.search.SizingSpace;
import reseat.search.SizingStudy;
import reseat.search.SizingTally;
import reseat.study.CheckStudy;
import reseat.study.StatedDesign;

/** Searches for the best design over stock sizes and ranges. */
final class SizeCommand implements Subcommand {

  private static final String NAME = "reseat size: ";
  private static final int MOST_PARTS = 1_000_000;

  private final boolean watched;

  /**
   * Makes the command.
   *
   * @param watched whether the error stream is a terminal, and progress is shown there
   */
  SizeCommand(boolean watched) {
    this.watched = watched;
  }

  @Override
  public void describe(CommandSpec spec) {
    spec.usageMessage()
        .description(
            "Searches for the best design: every combination of what [size] of the design file lets"
                + " vary, then between the values. Tells which limit binds in each and why others"
                + " fail.");
    spec.addPositional(Options.file("design file with [size] (see 'reseat starter')"));
    spec.addOption(
        Options.several(
            "--vary",
            "KEY=VALUES",
            "in place of vary in [size], as often as needed, such as"
                + " \"layout.ball.diameter=stock:ball-inch\" or \"preload.force=200 N..1 kN:9\""));
    spec.addOption(
        Options.text(
            "--rank",
            "RULE",
            "margin, repeatability, stiffness, pressure or size; else as [size]"));
    spec.addOption(
        Options.flag("--choices", "set the classic choices side by side instead of a search"));
    spec.addOption(
        Options.text("--winner", "OUT", "write the recommended design to this file, remarks kept"));
    spec.addOption(
        Options.text("--picture", "OUT", "draw candidates by scatter and stiffness; .svg or .png"));
    spec.addOption(
        Options.text("--candidates", "CSV", "write every candidate as it is judged, SI units"));
    spec.addOption(
        Options.flag("--resume", "go on with the file of --candidates where it was stopped"));
    spec.addOption(Options.text("--part", "K/N", "judge part K of N only, to be joined later"));
    spec.addOption(
        Options.several("--merge", "CSV", "join the candidates of all parts instead of judging"));
    ResultFiles.describeForce(spec);
    ScreenChoices.describe(spec);
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
    if (file.unaltered().design().isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    try {
      Screen screen = ScreenChoices.of(given, file.unaltered().inInches());
      if (given.hasMatchedOption("--choices")) {
        out.print(
            ChoicesText.of(
                ClassicChoices.of(file),
                CheckStudy.run(StatedDesign.of(file.unaltered()), Depth.SIMULATED),
                ScreenChoices.again(given, "--choices"),
                screen));
        return ExitCode.HOLDS;
      }
      SizingPlan plan = plan(given, file);
      checkTargets(given);
      return run(given, plan, screen, out, err);
    } catch (UnusableChoice | IllegalArgumentException e) {
      err.println(NAME + e.getMessage());
      return ExitCode.BAD_INPUT;
    }
  }

  private static SizingPlan plan(ParseResult given, AlterableDesign file) throws UnusableChoice {
    SizeTargets wish = file.size();
    List<String> vary = given.matchedOptionValue("--vary", List.<String>of());
    if (!vary.isEmpty()) {
      wish = wish.withVary(vary);
    }
    String rank = given.matchedOptionValue("--rank", "");
    if (!rank.isEmpty()) {
      Optional<SizeTargets.RankBy> rule = SizeTargets.RankBy.named(rank);
      if (rule.isEmpty()) {
        throw new UnusableChoice(
            "--rank is '"
                + rank
                + "'; allowed is margin, repeatability, stiffness, pressure or size",
            null);
      }
      wish = wish.withRankBy(rule.get());
    }
    int[] part = part(given.matchedOptionValue("--part", "1/1"));
    int threads = WholeNumber.threads(given);
    return new SizingPlan(SizingSpace.of(file, wish), wish, part[0], part[1], threads);
  }

  private static int[] part(String text) throws UnusableChoice {
    String[] parts = text.split("/", -1);
    if (parts.length != 2) {
      throw new UnusableChoice("--part is '" + text + "'; write K/N, for instance 1/4", null);
    }
    int of = (int) WholeNumber.of("--part", parts[1], 1, MOST_PARTS);
    return new int[] {(int) WholeNumber.of("--part", parts[0], 1, of), of};
  }

  private static void checkTargets(ParseResult given) throws UnusableChoice, IOException {
    ResultFiles files = new ResultFiles(given);
    files.check("--winner", "--picture");
    if (given.hasMatchedOption("--resume") && files.named("--candidates").isEmpty()) {
      throw new UnusableChoice("--resume goes on with a file; name it by --candidates", null);
    }
    if (given.hasMatchedOption("--merge") && files.named("--candidates").isPresent()) {
      throw new UnusableChoice("--merge judges nothing, so leave --candidates out", null);
    }
  }

  private int run(
      ParseResult given, SizingPlan plan, Screen screen, PrintWriter out, PrintWriter err)
      throws IOException, UnusableChoice {
    SizingTally tally = new SizingTally(plan.wish().rankBy());
    List<String> merge = given.matchedOptionValue("--merge", List.<String>of());
    if (!merge.isEmpty()) {
      if (plan.parts() > 1) {
        throw new UnusableChoice("--merge joins all parts, so leave --part out", null);
      }
      SizingSearch.merge(plan, merge.stream().map(Path::of).toList(), tally);
    } else if (!search(given, plan, tally, err)) {
      return ExitCode.INTERRUPTED;
    }
    SizingStudy study;
    try {
      study = SizingStudy.of(plan, tally);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return ExitCode.INTERRUPTED;
    }
    write(new ResultFiles(given), study, screen.units(), err);
    String typed =
        ScreenChoices.again(
            given, "--winner", "--picture", "--candidates", "--resume", "--part", "--force");
    out.print(
        given.hasMatchedOption("--json") ? SizeJson.of(study) : SizeText.of(study, typed, screen));
    return ExitCode.of(study.verdict());
  }

  /** Judges all candidates; false if it was stopped. */
  private boolean search(ParseResult given, SizingPlan plan, SizingTally tally, PrintWriter err)
      throws IOException {
    Path candidates = new ResultFiles(given).named("--candidates").orElse(null);
    LongRun run =
        new LongRun(
            err,
            watched,
            plan.count(),
            done ->
                NAME
                    + "stopped after "
                    + done
                    + " of "
                    + plan.count()
                    + " candidates; "
                    + (candidates == null
                        ? "nothing was written"
                        : "go on with --candidates " + candidates + " --resume"));
    try (CandidateFile rows = open(given, candidates, plan, tally)) {
      return run.result(
              told -> {
                SizingSearch.run(
                    plan,
                    tally,
                    c -> {
                      if (rows != null) {
                        rows.write(c);
                      }
                    },
                    told);
                return plan;
              })
          .isPresent();
    } catch (FileSystemException e) {
      throw e;
    } catch (IOException e) {
      // judged rows that could not be written name no file; what stands in it is not lost
      throw candidates == null
          ? e
          : new FileSystemException(
              candidates.toString(), null, e.getMessage() + "; make room, then add --resume");
    }
  }

  private static CandidateFile open(
      ParseResult given, Path file, SizingPlan plan, SizingTally tally) throws IOException {
    if (file == null) {
      return null;
    }
    if (given.hasMatchedOption("--resume") && Files.exists(file)) {
      return CandidateFile.resume(file, plan, tally::add);
    }
    // The old file stays until the new one has begun, so that a stop finds one of them whole.
    new ResultFiles(given).write(file, CandidateFile.beginning(plan));
    return CandidateFile.resume(file, plan, tally::add);
  }

  private static void write(
      ResultFiles files, SizingStudy study, UnitSystem system, PrintWriter err)
      throws IOException {
    Optional<Path> winner = files.named("--winner");
    if (winner.isPresent() && study.winner().isEmpty()) {
      err.println(NAME + "no design passes every check, so " + winner.get() + " was not written");
    } else if (winner.isPresent()) {
      files.write(
          winner.get(),
          study.plan().space().file().textWith(study.winner().orElseThrow().alterations()));
    }
    Optional<Path> file = files.named("--picture");
    if (file.isPresent()) {
      Optional<Picture> picture = SizePicture.of(study, system);
      if (picture.isEmpty()) {
        err.println(NAME + "no design passes every check, so " + file.get() + " was not written");
      } else {
        files.write(file.get(), picture.get());
      }
    }
  }
}
