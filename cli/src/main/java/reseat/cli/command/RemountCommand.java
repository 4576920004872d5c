package reseat.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import reseat.design.CouplingDesign;
import reseat.design.LoadCase;
import reseat.remount.RemountPlan;
import reseat.report.form.Screen;
import reseat.report.remount.RemountJson;
import reseat.report.remount.RemountText;
import reseat.study.RemountStudy;
import reseat.study.SeatedCheck;
import reseat.study.StatedDesign;
import reseat.units.NearestWord;

/** Simulates tool changes with friction: how well the holder comes back, and why no better. */
final class RemountCommand implements FileCommand {

  private static final String NAME = "reseat remount: ";
  private static final long MOUNTS = 10_000;
  private static final long MOST_MOUNTS = 10_000_000_000L;
  private static final long MOST_CAUSE_MOUNTS = 100_000_000L;

  /** Mounts in each set of the search for causes unless told otherwise. */
  private static final long CAUSE_MOUNTS = 1000;

  private final boolean watched;

  /**
   * Makes the command.
   *
   * @param watched whether the error stream is a terminal, and progress is shown there
   */
  RemountCommand(boolean watched) {
    this.watched = watched;
  }

  /** What the options ask for. */
  private record Wish(
      long mounts,
      long seed,
      int threads,
      String cutCase,
      boolean reclamp,
      long causeMounts,
      boolean json,
      Screen screen) {}

  @Override
  public void describe(CommandSpec spec) {
    spec.usageMessage()
        .description(
            "Simulates tool changes with friction: scatter of the tool point, what causes it,"
                + " whether the holder seats itself.");
    spec.addPositional(Options.file("design file (see 'reseat starter')"));
    spec.addOption(Options.number("--mounts", "N", MOUNTS, "tool changes to simulate"));
    spec.addOption(Options.seed());
    spec.addOption(Options.threads());
    spec.addOption(Options.text("--cut", "CASE", "load case that comes and goes after each mount"));
    spec.addOption(
        Options.flag("--reclamp", "let the preload go and clamp again after each mount"));
    spec.addOption(
        Options.value(
            "--causes",
            "N",
            String.class,
            "on",
            "search for causes: on, off, or the number of mounts in each of its sets"));
    ScreenChoices.describe(spec);
    spec.addOption(Options.flag("--json", "print the result as JSON, SI units"));
  }

  @Override
  public int run(Path file, PrintWriter out, PrintWriter err) throws IOException {
    Optional<StatedDesign> design = DesignInput.read(file, err);
    if (design.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    Screen screen = ScreenChoices.of(design.get().inInches());
    int threads = Runtime.getRuntime().availableProcessors();
    Wish wish = new Wish(MOUNTS, 1, threads, "", false, CAUSE_MOUNTS, false, screen);
    return run(design.get(), file, wish, out, err);
  }

  @Override
  public int run(ParseResult given, PrintWriter out, PrintWriter err) throws IOException {
    Path file = given.matchedPositionalValue(0, Path.of(""));
    try {
      Optional<StatedDesign> design = DesignInput.read(file, err);
      if (design.isEmpty()) {
        return ExitCode.BAD_INPUT;
      }
      Wish wish = wish(given, ScreenChoices.of(given, design.get().inInches()));
      return run(design.get(), file, wish, out, err);
    } catch (UnusableChoice e) {
      err.println(NAME + e.getMessage());
      return ExitCode.BAD_INPUT;
    }
  }

  private static Wish wish(ParseResult given, Screen screen) throws UnusableChoice {
    String causes = given.commandSpec().findOption("--causes").getValue();
    long causeMounts =
        switch (causes) {
          case "on" -> CAUSE_MOUNTS;
          case "off" -> 0;
          default -> WholeNumber.of("--causes", causes, 2, MOST_CAUSE_MOUNTS);
        };
    return new Wish(
        WholeNumber.of(given, "--mounts", 2, MOST_MOUNTS),
        WholeNumber.seed(given),
        WholeNumber.threads(given),
        given.matchedOptionValue("--cut", ""),
        given.hasMatchedOption("--reclamp"),
        causeMounts,
        given.hasMatchedOption("--json"),
        screen);
  }

  private int run(StatedDesign design, Path file, Wish wish, PrintWriter out, PrintWriter err)
      throws IOException {
    if (!knowsCase(design.design(), wish.cutCase(), err)) {
      return ExitCode.BAD_INPUT;
    }
    JudgedDesign judged =
        JudgedDesign.of(
            design, file, NAME, new JudgedDesign.Output(wish.screen(), wish.json(), out, err));
    return judged.seated().isEmpty()
        ? judged.code()
        : simulate(judged.seated().get(), file, wish, out, err);
  }

  private static boolean knowsCase(CouplingDesign design, String name, PrintWriter err) {
    List<String> names = design.cases().stream().map(LoadCase::name).toList();
    if (name.isEmpty() || names.contains(name)) {
      return true;
    }
    err.println(
        NAME
            + "--cut: the file has no load case '"
            + name
            + "'"
            + NearestWord.to(name, names).map(n -> "; did you mean '" + n + "'?").orElse("")
            + (names.isEmpty()
                ? "; it has none at all"
                : " (it has: " + String.join(", ", names) + ")"));
    return false;
  }

  private int simulate(SeatedCheck check, Path file, Wish wish, PrintWriter out, PrintWriter err)
      throws IOException {
    RemountPlan plan =
        new RemountPlan(wish.mounts(), wish.seed(), wish.threads(), wish.cutCase(), wish.reclamp());
    LongRun run =
        new LongRun(
            err,
            watched,
            RemountStudy.work(plan, wish.causeMounts()),
            done ->
                NAME
                    + "stopped after "
                    + Math.min(done, plan.mounts())
                    + " of "
                    + plan.mounts()
                    + " mounts; nothing was written");
    Optional<RemountStudy> result =
        run.result(told -> RemountStudy.run(check, plan, wish.causeMounts(), told));
    if (result.isEmpty()) {
      return ExitCode.INTERRUPTED;
    }
    RemountStudy study = result.get();
    out.print(
        wish.json()
            ? RemountJson.of(study)
            : RemountText.of(study, file.toString(), wish.screen()));
    return ExitCode.of(check.verdict());
  }
}
