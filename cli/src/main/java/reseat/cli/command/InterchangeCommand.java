package reseat.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import reseat.check.Finding;
import reseat.check.Verdict;
import reseat.csv.CsvProblem;
import reseat.csv.UnreadableCsv;
import reseat.design.CouplingDesign;
import reseat.design.Support;
import reseat.equilibrium.NoEquilibriumException;
import reseat.interchange.InterchangePlan;
import reseat.interchange.MeasuredParts;
import reseat.report.form.Screen;
import reseat.report.interchange.InterchangeJson;
import reseat.report.interchange.InterchangeText;
import reseat.study.InterchangeStudy;
import reseat.study.StatedDesign;
import reseat.units.Quantity;
import reseat.units.QuantityKind;
import reseat.units.QuantityReading;
import reseat.units.QuantityText;
import reseat.units.UnitProblem;

/** Draws holders within their tolerances: how alike they are, and which dimension matters. */
final class InterchangeCommand implements FileCommand {

  private static final String NAME = "reseat interchange: ";
  private static final long HOLDERS = 100_000;
  private static final long MOST = 10_000_000_000L;

  /** Mountings from which repeatability is taken: its standard deviation is then good to 2 %. */
  private static final long MOUNTS = 2000;

  private final boolean watched;

  /**
   * Makes the command.
   *
   * @param watched whether the error stream is a terminal, and progress is shown there
   */
  InterchangeCommand(boolean watched) {
    this.watched = watched;
  }

  @Override
  public void describe(CommandSpec spec) {
    spec.usageMessage()
        .description(
            "Draws holders on one post within the tolerances of the design file: how alike they"
                + " are, with and without an offset table, and which dimension matters.");
    spec.addPositional(Options.file("design file with [tolerances] (see 'reseat starter')"));
    spec.addOption(Options.number("--holders", "N", HOLDERS, "holders to draw on a post"));
    spec.addOption(Options.number("--posts", "P", 1, "posts to draw"));
    spec.addOption(Options.seed());
    spec.addOption(Options.threads());
    spec.addOption(
        Options.text(
            "--within",
            "LENGTH",
            "half-width about their mean within which the holders are wanted (at the coverage of the targets) along every"
                + " machine axis, such as \"10 um\"; adds the cheapest tolerances for it"));
    spec.addOption(
        Options.value(
            "--cost-exponent",
            "E",
            String.class,
            "1",
            "with --within: cost of a limit goes with its reciprocal to this power"));
    spec.addOption(
        Options.value(
            "--calibration",
            "LENGTH",
            String.class,
            "0 um",
            "standard uncertainty of an entry of the offset table"));
    spec.addOption(
        Options.text(
            "--measured",
            "CSV",
            "balls and seats as measured: part, feature, x [mm], y [mm], z [mm], diameter [mm],"
                + " uncertainty [um]; adds the predicted place of each holder"));
    ScreenChoices.describe(spec);
    spec.addOption(Options.flag("--json", "print the result as JSON, SI units"));
  }

  @Override
  public int run(Path file, PrintWriter out, PrintWriter err) throws IOException {
    int threads = Runtime.getRuntime().availableProcessors();
    InterchangeStudy.Wish wish =
        InterchangeStudy.Wish.plain(InterchangePlan.onePost(HOLDERS, 1, threads), MOUNTS);
    Optional<StatedDesign> design = design(file, err);
    return design.isEmpty()
        ? ExitCode.BAD_INPUT
        : run(
            file,
            design.get(),
            wish,
            Screen.word(file.toString()),
            new JudgedDesign.Output(ScreenChoices.of(design.get().inInches()), false, out, err));
  }

  @Override
  public int run(ParseResult given, PrintWriter out, PrintWriter err) throws IOException {
    Path file = given.matchedPositionalValue(0, Path.of(""));
    Optional<StatedDesign> design = design(file, err);
    if (design.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    try {
      InterchangeStudy.Wish wish = wish(given, design.get().design());
      Screen screen = ScreenChoices.of(given, design.get().inInches());
      return run(
          file,
          design.get(),
          wish,
          ScreenChoices.again(given),
          new JudgedDesign.Output(screen, given.hasMatchedOption("--json"), out, err));
    } catch (UnusableChoice e) {
      err.println(NAME + e.getMessage());
      return ExitCode.BAD_INPUT;
    } catch (UnreadableCsv e) {
      e.problems().stream().map(CsvProblem::text).forEach(err::println);
      return ExitCode.BAD_INPUT;
    }
  }

  private static Optional<StatedDesign> design(Path file, PrintWriter err) throws IOException {
    Optional<StatedDesign> design = DesignInput.read(file, err);
    if (design.isPresent() && design.get().design().tolerances().entries().isEmpty()) {
      err.println(
          NAME
              + file
              + ": the design states no tolerances, so all holders are alike; add [tolerances]"
              + " ('reseat starter tool-post' shows how)");
      return Optional.empty();
    }
    return design;
  }

  private static InterchangeStudy.Wish wish(ParseResult given, CouplingDesign design)
      throws UnusableChoice, UnreadableCsv, IOException {
    long posts = WholeNumber.of(given, "--posts", 1, MOST);
    InterchangePlan plan =
        new InterchangePlan(
            posts,
            WholeNumber.of(given, "--holders", 2, MOST / posts),
            WholeNumber.seed(given),
            WholeNumber.threads(given));
    String within = given.matchedOptionValue("--within", "");
    double calibration = length("--calibration", value(given, "--calibration"));
    if (calibration < 0) {
      throw new UnusableChoice("--calibration must not be negative", null);
    }
    String measured = given.matchedOptionValue("--measured", "");
    return new InterchangeStudy.Wish(
        plan,
        MOUNTS,
        calibration,
        within.isEmpty() ? Double.POSITIVE_INFINITY : positive("--within", within),
        exponent(value(given, "--cost-exponent")),
        measured.isEmpty()
            ? Optional.empty()
            : Optional.of(
                MeasuredParts.read(
                    Path.of(measured), design.supports().stream().map(Support::name).toList())));
  }

  private static String value(ParseResult given, String option) {
    return given.commandSpec().findOption(option).getValue();
  }

  private static double positive(String option, String text) throws UnusableChoice {
    double length = length(option, text);
    if (!(length > 0)) {
      throw new UnusableChoice(option + " is '" + text + "'; it must be above zero", null);
    }
    return length;
  }

  private static double length(String option, String text) throws UnusableChoice {
    QuantityReading reading = QuantityText.read(text, QuantityKind.LENGTH);
    if (reading instanceof Quantity q) {
      return q.value();
    }
    throw new UnusableChoice(option + ": " + ((UnitProblem) reading).message(), null);
  }

  private static double exponent(String text) throws UnusableChoice {
    try {
      double p = Double.parseDouble(text);
      if (p > 0 && p <= 10) {
        return p;
      }
    } catch (NumberFormatException e) {
      throw new UnusableChoice(
          "--cost-exponent is '" + text + "'; a plain number such as 1 or 2 is wanted", e);
    }
    throw new UnusableChoice(
        "--cost-exponent is " + text + "; it must be above 0 and at most 10", null);
  }

  private int run(
      Path file,
      StatedDesign stated,
      InterchangeStudy.Wish wish,
      String typed,
      JudgedDesign.Output output)
      throws IOException {
    JudgedDesign judged = JudgedDesign.of(stated, file, NAME, output);
    if (judged.seated().isEmpty()) {
      return judged.code();
    }
    CouplingDesign design = stated.design();
    PrintWriter err = output.err();
    long holders = wish.plan().posts() * wish.plan().holders();
    LongRun run =
        new LongRun(
            err,
            watched,
            holders,
            done ->
                NAME
                    + "stopped after "
                    + done
                    + " of "
                    + holders
                    + " holders; nothing was written");
    Optional<InterchangeStudy> result;
    try {
      result = run.result(told -> InterchangeStudy.run(design, wish, told));
    } catch (IllegalArgumentException e) {
      err.println(NAME + file + ": " + e.getMessage());
      return ExitCode.BAD_INPUT;
    } catch (NoEquilibriumException e) {
      err.println(NAME + file + ": " + e.getMessage());
      return ExitCode.NO_SOLUTION;
    }
    if (result.isEmpty()) {
      return ExitCode.INTERRUPTED;
    }
    InterchangeStudy study = result.get();
    List<Finding> findings = new ArrayList<>(judged.seated().get().findings());
    findings.addAll(study.findings());
    output
        .out()
        .print(
            output.json()
                ? InterchangeJson.of(study, findings)
                : InterchangeText.of(study, findings, typed, output.screen()));
    return ExitCode.of(Verdict.of(findings));
  }
}
