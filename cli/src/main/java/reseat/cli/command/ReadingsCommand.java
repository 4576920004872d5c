package reseat.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import reseat.csv.CsvProblem;
import reseat.csv.UnreadableCsv;
import reseat.design.CouplingDesign;
import reseat.equilibrium.NoEquilibriumException;
import reseat.readings.BetweenHolders;
import reseat.readings.ColumnAnalysis;
import reseat.readings.ControlChart;
import reseat.readings.MeasuredSeries;
import reseat.readings.OffsetTable;
import reseat.readings.OffsetTable.AxisRule;
import reseat.readings.OffsetTable.Conditions;
import reseat.readings.PoseScatter;
import reseat.readings.Probe;
import reseat.readings.ProbeLayout;
import reseat.readings.ProbeLayoutReader;
import reseat.readings.ReaderWishes;
import reseat.readings.ReadingColumn;
import reseat.readings.ReadingsReader;
import reseat.readings.Repeatability;
import reseat.readings.SeriesAnalysis;
import reseat.remount.RemountPlan;
import reseat.report.form.Screen;
import reseat.report.page.PageSource;
import reseat.report.readings.AcceptanceTestPlan;
import reseat.report.readings.OffsetTableText;
import reseat.report.readings.ReadingsJson;
import reseat.report.readings.ReadingsReport;
import reseat.report.readings.ReadingsText;
import reseat.space.Vec3;
import reseat.study.AcceptanceStudy;
import reseat.study.PredictionStudy;
import reseat.study.StatedDesign;

/** {@code readings FILE}: what a measured remount series shows. */
final class ReadingsCommand implements FileCommand {

  /** Tool changes simulated for a comparison: a standard deviation is then good to 1 %. */
  private static final int SIMULATED = 5000;

  @Override
  public void describe(CommandSpec spec) {
    spec.usageMessage()
        .description(
            "Says what a measured remount test shows: scatter with its bounds, wear-in, drift,"
                + " readings that stand out, holders beside one another.");
    spec.addPositional(
        Options.file(
            "CSV file, or - for text on standard input. Its head names the columns, 'cycle, X [um],"
                + " Z [um], temperature [degC], holder'; then a row for each mount."));
    ReadingsChoices.describe(spec);
    ReadingsFiles.describe(spec);
  }

  @Override
  public int run(Path file, PrintWriter out, PrintWriter err) throws IOException {
    return run(file, new ReadingsChoices(null), null, out, err);
  }

  @Override
  public int run(ParseResult given, PrintWriter out, PrintWriter err) throws IOException {
    Path file = given.matchedPositionalValue(0, Path.of(""));
    return run(file, new ReadingsChoices(given), given, out, err);
  }

  private static int run(
      Path file, ReadingsChoices choices, ParseResult given, PrintWriter out, PrintWriter err)
      throws IOException {
    ReadingsReport report;
    ReadingsFiles files = new ReadingsFiles(given, choices);
    try {
      files.check();
      if (choices.plan()) {
        return plan(file, choices, out, err);
      }
      report = report(file, choices, err);
    } catch (UnreadableCsv e) {
      e.problems().stream().map(CsvProblem::text).forEach(err::println);
      return ExitCode.BAD_INPUT;
    } catch (UnusableChoice e) {
      err.println("reseat readings: " + e.getMessage());
      return ExitCode.BAD_INPUT;
    }
    if (!choices.text("--offsets").isEmpty()) {
      write(choices, "--offsets", OffsetTableText.csv(report.offsets().get(0)));
    }
    if (!choices.text("--sheet").isEmpty()) {
      write(choices, "--sheet", files.sheet(file, report));
    }
    if (files.wanted()) {
      return files.write(file, report, out, err);
    }
    String typed =
        given == null
            ? Screen.word(file.toString())
            : ScreenChoices.again(given, "--offsets", "--sheet", "--force", "--date");
    out.print(
        choices.json()
            ? ReadingsJson.of(report)
            : ReadingsText.of(
                report, typed, choices.screen(report.analysis().series().inInches())));
    return ExitCode.of(report.verdict());
  }

  private static int plan(Path file, ReadingsChoices choices, PrintWriter out, PrintWriter err)
      throws IOException, UnusableChoice {
    String design = choices.text(ReadingsChoices.AGAINST);
    AcceptanceTestPlan form;
    if (design.isEmpty()) {
      form = choices.form(Map.of(), false);
    } else {
      StatedDesign stated = DesignPlan.design(Path.of(design), err);
      form = choices.form(Map.of(design, DesignPlan.of(stated.design())), stated.inInches());
    }
    AtomicFile.write(file, form.csv().getBytes(StandardCharsets.UTF_8), choices.force());
    out.print(form.text());
    out.println("wrote " + file + ": write the readings into it, then");
    out.print(
        choices
            .screen(false)
            .next(
                "readings",
                Screen.word(file.toString()),
                design.isEmpty() ? "" : " --against " + Screen.word(design)));
    return ExitCode.HOLDS;
  }

  private static void write(ReadingsChoices choices, String option, String content)
      throws IOException {
    AtomicFile.write(
        Path.of(choices.text(option)), content.getBytes(StandardCharsets.UTF_8), choices.force());
  }

  private static MeasuredSeries read(Path file, ReaderWishes wishes)
      throws IOException, UnreadableCsv {
    return PageSource.isStandardInput(file)
        ? ReadingsReader.read("standard input", System.in, wishes)
        : ReadingsReader.read(file, wishes);
  }

  private static ReadingsReport report(Path file, ReadingsChoices choices, PrintWriter err)
      throws IOException, UnreadableCsv, UnusableChoice {
    MeasuredSeries series = choices.told(read(file, choices.wishes()));
    if (series.mounts() < 2) {
      throw new UnreadableCsv(
          List.of(
              new CsvProblem(
                  series.source(),
                  series.line(0),
                  0,
                  "one mount says nothing about scatter; at least 2 are needed, and 30 to know it"
                      + " within a third")));
    }
    SeriesAnalysis analysis;
    List<AxisRule> axes;
    String designFile = choices.text(ReadingsChoices.AGAINST);
    Optional<CouplingDesign> design =
        designFile.isEmpty()
            ? Optional.empty()
            : Optional.of(DesignPlan.design(Path.of(designFile), err).design());
    try {
      axes = choices.axes(series);
      analysis =
          SeriesAnalysis.of(
              series,
              choices.facts(series, design.map(AcceptanceStudy::targets).orElse(Map.of())),
              choices.options(series));
    } catch (IllegalArgumentException e) {
      throw new UnusableChoice(e.getMessage(), e);
    }
    return new ReadingsReport(
        analysis,
        offsets(analysis, axes, choices),
        choices.text("--later"),
        later(analysis, choices),
        poses(analysis, choices),
        points(choices),
        predictions(analysis, design));
  }

  private static List<PredictionStudy> predictions(
      SeriesAnalysis analysis, Optional<CouplingDesign> design) throws UnusableChoice {
    if (design.isEmpty()) {
      return List.of();
    }
    try {
      return List.of(
          PredictionStudy.of(
              analysis,
              design.get(),
              RemountPlan.of(SIMULATED, 1, Runtime.getRuntime().availableProcessors())));
    } catch (IllegalArgumentException | NoEquilibriumException e) {
      throw new UnusableChoice(ReadingsChoices.AGAINST + ": " + e.getMessage(), e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    }
  }

  private static List<Vec3> points(ReadingsChoices choices) throws UnusableChoice {
    try {
      return PoseChoices.points(choices.text(PoseChoices.TOOL_POINT));
    } catch (IllegalArgumentException e) {
      throw new UnusableChoice(e.getMessage(), e);
    }
  }

  private static List<PoseScatter> poses(SeriesAnalysis analysis, ReadingsChoices choices)
      throws IOException, UnreadableCsv, UnusableChoice {
    String file = choices.text("--probes");
    if (file.isEmpty()) {
      if (!choices.text("--tool-point").isEmpty() || !choices.text("--motions").isEmpty()) {
        throw new UnusableChoice(
            "--tool-point and --motions need --probes, which tells where the probes stand", null);
      }
      return List.of();
    }
    List<Probe> probes = ProbeLayoutReader.read(Path.of(file));
    try {
      ProbeLayout layout =
          ProbeLayout.of(probes, PoseChoices.motions(choices.text(PoseChoices.MOTIONS)), Vec3.ZERO);
      return List.of(PoseScatter.of(layout, analysis.series(), analysis.wearIn()));
    } catch (IllegalArgumentException e) {
      throw new UnusableChoice("--probes: " + e.getMessage(), e);
    }
  }

  private static List<OffsetTable> offsets(
      SeriesAnalysis analysis, List<AxisRule> axes, ReadingsChoices choices) throws UnusableChoice {
    List<AxisRule> compared = new ArrayList<>();
    List<BetweenHolders> holders = new ArrayList<>();
    for (AxisRule axis : axes) {
      Optional<BetweenHolders> found =
          analysis.columns().stream()
              .filter(c -> c.column().name().equals(axis.axis()))
              .findFirst()
              .flatMap(ColumnAnalysis::holders);
      if (found.isPresent()) {
        compared.add(axis);
        holders.add(found.get());
      }
    }
    if (holders.isEmpty()) {
      for (String option : List.of("--offsets", "--reference")) {
        if (!choices.text(option).isEmpty()) {
          throw new UnusableChoice(
              option
                  + ": an offset table needs a column named holder with at least two holders, one"
                  + " of them mounted twice",
              null);
        }
      }
      return List.of();
    }
    Conditions when =
        analysis
            .series()
            .temperatures()
            .map(
                t ->
                    new Conditions(
                        choices.text("--date"), true, Repeatability.of(present(t)).mean()))
            .orElse(new Conditions(choices.text("--date"), false, 0));
    try {
      return List.of(
          OffsetTable.of(
              compared,
              holders,
              choices.text("--reference"),
              analysis.options().confidence(),
              when));
    } catch (IllegalArgumentException e) {
      throw new UnusableChoice("--reference: " + e.getMessage(), e);
    }
  }

  private static double[] present(double[] readings) {
    return Arrays.stream(readings).filter(v -> !Double.isNaN(v)).toArray();
  }

  private static Map<String, ControlChart> later(SeriesAnalysis analysis, ReadingsChoices choices)
      throws IOException, UnreadableCsv, UnusableChoice {
    String file = choices.text("--later");
    Map<String, ControlChart> charts = new LinkedHashMap<>();
    if (file.isEmpty()) {
      return charts;
    }
    MeasuredSeries later = read(Path.of(file), choices.wishes());
    for (ColumnAnalysis c : analysis.columns()) {
      Optional<ReadingColumn> more = later.column(c.column().name());
      if (more.isPresent() && more.get().quantity() == c.column().quantity()) {
        c.chart()
            .ifPresent(
                chart -> charts.put(c.column().name(), chart.with(present(more.get().values()))));
      }
    }
    if (charts.isEmpty()) {
      throw new UnusableChoice(
          "--later: "
              + file
              + " has no probe of the same name and kind whose readings, of one holder, scatter in "
              + analysis.series().source(),
          null);
    }
    return charts;
  }
}
