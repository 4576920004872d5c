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
import reseat.equilibrium.Equilibrium;
import reseat.remount.RemountPlan;
import reseat.report.remount.RemountJson;
import reseat.report.remount.RemountText;
import reseat.study.RemountStudy;
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
      boolean json) {}

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
    spec.addOption(Options.flag("--json", "print the result as JSON, SI units"));
  }

  @Override
  public int run(Path file, PrintWriter out, PrintWriter err) throws IOException {
    int threads = Runtime.getRuntime().availableProcessors();
    return run(file, new Wish(MOUNTS, 1, threads, "", false, CAUSE_MOUNTS, false), out, err);
  }

  @Override
  public int run(ParseResult given, PrintWriter out, PrintWriter err) throws IOException {
    try {
      return run(given.matchedPositionalValue(0, Path.of("")), wish(given), out, err);
    } catch (UnusableChoice e) {
      err.println(NAME + e.getMessage());
      return ExitCode.BAD_INPUT;
    }
  }

  private static Wish wish(ParseResult given) throws UnusableChoice {
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
        given.hasMatchedOption("--json"));
  }

  private int run(Path file, Wish wish, PrintWriter out, PrintWriter err) throws IOException {
    Optional<CouplingDesign> design = DesignInput.read(file, err);
    if (design.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    if (!knowsCase(design.get(), wish.cutCase(), err)) {
      return ExitCode.BAD_INPUT;
    }
    Optional<Equilibrium> standing = StandingDesign.of(design.get(), NAME + file + ": ", err);
    return standing.isEmpty() ? ExitCode.NO_SOLUTION : simulate(standing.get(), wish, out, err);
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

  private int simulate(Equilibrium standing, Wish wish, PrintWriter out, PrintWriter err)
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
        run.result(told -> RemountStudy.run(standing, plan, wish.causeMounts(), told));
    if (result.isEmpty()) {
      return ExitCode.INTERRUPTED;
    }
    RemountStudy study = result.get();
    out.print(wish.json() ? RemountJson.of(study) : RemountText.of(study));
    return study.holds() ? ExitCode.HOLDS : ExitCode.CHECK_FAILS;
  }
}
