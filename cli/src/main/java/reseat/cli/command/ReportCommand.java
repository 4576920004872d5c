package reseat.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;
import reseat.check.Depth;
import reseat.check.Finding;
import reseat.check.Verdict;
import reseat.design.CouplingDesign;
import reseat.equilibrium.NoEquilibriumException;
import reseat.remedy.Counsel;
import reseat.report.check.CheckJson;
import reseat.report.check.CheckTables;
import reseat.report.check.RemedyWords;
import reseat.report.form.FigureText;
import reseat.report.form.UnitSystem;
import reseat.report.fullreport.ReportPage;
import reseat.report.fullreport.ReportPictures;
import reseat.report.interchange.InterchangeJson;
import reseat.report.page.Page;
import reseat.report.page.PageSource;
import reseat.report.page.PageWriter;
import reseat.report.remount.RemountJson;
import reseat.report.remount.ResponsePicture;
import reseat.study.AssumedShares;
import reseat.study.CheckResult;
import reseat.study.CheckStudy;
import reseat.study.InterchangeStudy;
import reseat.study.ReportStudy;
import reseat.study.ResponseStudy;
import reseat.study.SeatedCheck;
import reseat.study.StatedDesign;
import reseat.units.NearestWord;

/** Writes the report of a design: one page with pictures, tables beside it. */
final class ReportCommand implements Subcommand {

  private static final String NAME = "report";
  private static final long MOUNTS = 10_000;
  private static final long HOLDERS = 100_000;
  private static final long MOST = 10_000_000_000L;

  /** Begins the name of a picture that shows the answer to one dimension. */
  private static final String RESPONSE = "response:";

  private static final String FORCE = "--force";

  @Override
  public void describe(CommandSpec spec) {
    spec.usageMessage()
        .description(
            "Writes a folder with one self-contained HTML page and its numbers as CSV. With"
                + " --picture, writes one picture instead.");
    spec.addPositional(Options.file("design file"));
    spec.addOption(
        OptionSpec.builder("-o", "--output")
            .paramLabel("DIR")
            .type(Path.class)
            .required(true)
            .description("folder to write; with --picture, the file to write")
            .build());
    CheckCommand.describeStrict(spec);
    spec.addOption(Options.number("--mounts", "N", MOUNTS, "tool changes to simulate"));
    spec.addOption(
        Options.number("--holders", "N", HOLDERS, "holders to draw, if tolerances are given"));
    spec.addOption(
        Options.text(
            ScreenChoices.UNITS,
            "mm|inch|both",
            "units of tables, boxes and charts; those that the file uses more"));
    spec.addOption(Options.seed());
    spec.addOption(Options.threads());
    spec.addOption(
        OptionSpec.builder("--picture")
            .paramLabel("NAME")
            .type(String.class)
            .description(
                "write this picture alone, as SVG or with --png as PNG; response:DIMENSION shows how"
                    + " the tool point answers to one toleranced dimension")
            .build());
    spec.addOption(Options.flag("--svg", "with --picture: SVG (the default)"));
    spec.addOption(Options.flag("--png", "with --picture: PNG"));
    spec.addOption(
        Options.flag(
            FORCE,
            "replace what was changed in the folder since; with --picture, a file that exists already"));
    spec.addOption(Options.flag("--watch", "write again whenever the design file is saved"));
  }

  @Override
  public int run(ParseResult given, PrintWriter out, PrintWriter err) throws IOException {
    Path file = given.matchedPositionalValue(0, null);
    Path folder = given.matchedOptionValue("--output", null);
    ReportStudy.Effort effort;
    try {
      effort = effort(given);
      ScreenChoices.of(given, false); // a wrong choice is told before anything is read
    } catch (UnusableChoice e) {
      err.println("reseat report: " + e.getMessage());
      return ExitCode.BAD_INPUT;
    }
    boolean one = given.hasMatchedOption("--picture");
    if (!one) {
      AtomicFolder.check(folder, NAME, given.hasMatchedOption(FORCE));
    }
    Task task =
        () ->
            one
                ? picture(given, file, folder, effort, out, err)
                : write(given, file, folder, effort, out, err);
    boolean again = given.hasMatchedOption("--watch") && !one;
    return again ? watch(file, task, err) : told(file, task, err);
  }

  private static ReportStudy.Effort effort(ParseResult given) throws UnusableChoice {
    return new ReportStudy.Effort(
        WholeNumber.of(given, "--mounts", 2, MOST),
        WholeNumber.of(given, "--holders", 2, MOST),
        WholeNumber.seed(given),
        WholeNumber.threads(given));
  }

  /** What the command does once, or again whenever the file is saved. */
  private interface Task {
    int run() throws IOException, UnusableChoice;
  }

  /** Does it, and says in one line why it cannot be done with this design. */
  private static int told(Path file, Task task, PrintWriter err) throws IOException {
    try {
      return task.run();
    } catch (UnusableChoice e) {
      err.println("reseat report: " + file + ": " + e.getMessage());
      return ExitCode.BAD_INPUT;
    } catch (NoEquilibriumException e) {
      err.println("reseat report: " + file + ": " + e.getMessage());
      return ExitCode.NO_SOLUTION;
    }
  }

  private static int write(
      ParseResult given,
      Path file,
      Path folder,
      ReportStudy.Effort effort,
      PrintWriter out,
      PrintWriter err)
      throws IOException, UnusableChoice {
    Optional<StatedDesign> design = DesignInput.read(file, err);
    if (design.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    FigureText figures = ScreenChoices.of(given, design.get().inInches()).figures();
    Interruption interruption =
        Interruption.expect(err, () -> "reseat report: stopped; nothing was written");
    Written made;
    boolean untouched;
    try {
      CheckResult found = CheckStudy.run(design.get(), Depth.SIMULATED);
      boolean strict = given.hasMatchedOption(CheckCommand.STRICT);
      made = made(file, strict ? AssumedShares.strict(found) : found, effort, figures);
    } finally {
      untouched = interruption.over();
    }
    if (!untouched) {
      return ExitCode.INTERRUPTED;
    }
    AtomicFolder.write(folder, NAME, made.files(), given.hasMatchedOption(FORCE));
    out.println("wrote " + folder.resolve("report.html") + ": " + made.verdict());
    out.flush();
    return ExitCode.of(made.judged());
  }

  /** The files of a report, before they are written. */
  private record Written(Map<String, byte[]> files, String verdict, Verdict judged) {}

  private static Written made(
      Path file, CheckResult check, ReportStudy.Effort effort, FigureText figures)
      throws IOException, UnusableChoice {
    List<String> stamp = PageSource.of(file, effort.seed());
    Map<String, byte[]> files = new LinkedHashMap<>();
    Page page;
    Counsel counsel = TriedChanges.of(file, check);
    if (check instanceof SeatedCheck seated) {
      ReportStudy study = study(seated, effort);
      ReportPictures pictures = ReportPictures.of(study, figures.system());
      page =
          ReportPage.of(
              study, pictures, stamp, figures, RemedyWords.lines(counsel.remedies(), figures));
      files.putAll(CheckTables.of(study));
      files.put("remount.json", utf8(RemountJson.of(study.remount())));
      study
          .interchange()
          .ifPresent(
              i -> files.put("interchange.json", utf8(InterchangeJson.of(i, findings(check, i)))));
    } else {
      page = ReportPage.of(check, stamp, figures, RemedyWords.lines(counsel.remedies(), figures));
    }
    files.put("check.json", utf8(CheckJson.of(check, counsel)));
    files.put("report.html", utf8(PageWriter.html(page)));
    return new Written(files, page.verdict(), check.verdict());
  }

  private static List<Finding> findings(CheckResult check, InterchangeStudy holders) {
    List<Finding> findings = new ArrayList<>(check.findings());
    findings.addAll(holders.findings());
    return findings;
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static ReportStudy study(SeatedCheck seated, ReportStudy.Effort effort)
      throws UnusableChoice {
    try {
      return ReportStudy.run(seated, effort);
    } catch (IllegalArgumentException e) {
      throw new UnusableChoice(e.getMessage(), e); // a tolerance that makes an impossible part
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    }
  }

  private static int picture(
      ParseResult given,
      Path file,
      Path target,
      ReportStudy.Effort effort,
      PrintWriter out,
      PrintWriter err)
      throws IOException, UnusableChoice {
    Optional<StatedDesign> design = DesignInput.read(file, err);
    if (design.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    if (!(CheckStudy.run(design.get(), Depth.STATICS) instanceof SeatedCheck seated)) {
      err.println(
          "reseat report: the coupling does not stand, so there is no picture of it; see reseat check");
      return ExitCode.NO_SOLUTION;
    }
    UnitSystem system = ScreenChoices.of(given, design.get().inInches()).units();
    String name = given.matchedOptionValue("--picture", "");
    if (name.startsWith(RESPONSE)) {
      return response(
          given, design.get().design(), name.substring(RESPONSE.length()), system, target, out, err);
    }
    ReportPictures pictures = ReportPictures.of(seated, system);
    if (pictures.named(name).isEmpty()) {
      pictures = ReportPictures.of(study(seated, effort), system);
    }
    return written(given, target).write(name, pictures, out, err);
  }

  private static OnePicture written(ParseResult given, Path target) {
    return new OnePicture(
        "reseat report",
        "this design",
        target,
        given.hasMatchedOption("--png"),
        given.hasMatchedOption(FORCE));
  }

  private static int response(
      ParseResult given,
      CouplingDesign design,
      String dimension,
      UnitSystem system,
      Path target,
      PrintWriter out,
      PrintWriter err)
      throws IOException {
    Optional<ResponseStudy> study = ResponseStudy.of(design, dimension);
    if (study.isEmpty()) {
      List<String> names = ResponseStudy.names(design);
      err.println(
          "reseat report: no dimension '"
              + dimension
              + "' with a tolerance"
              + NearestWord.to(dimension, names).map(n -> "; did you mean " + n + "?").orElse(""));
      err.println("Dimensions of this design: " + String.join(", ", names));
      return ExitCode.BAD_INPUT;
    }
    return written(given, target).write(ResponsePicture.of(study.get(), design, system), out);
  }

  /** Writes again whenever the file's time changes, until the program is stopped. */
  private static int watch(Path file, Task task, PrintWriter err) throws IOException {
    FileTime written = null;
    int code = ExitCode.HOLDS;
    while (!Thread.currentThread().isInterrupted()) {
      FileTime now = Files.getLastModifiedTime(file);
      if (!now.equals(written)) {
        written = now;
        code = told(file, task, err);
        err.flush();
      }
      try {
        Thread.sleep(300);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
    }
    return code;
  }
}
