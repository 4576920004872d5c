package reseat.report.readings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import reseat.design.InputDoubt;
import reseat.readings.AnalysisOptions;
import reseat.readings.ColumnAnalysis;
import reseat.readings.Drift;
import reseat.readings.GaugeNoise;
import reseat.readings.ProofOfTarget;
import reseat.readings.Repeatability;
import reseat.readings.ScatterBounds;
import reseat.readings.SeriesAnalysis;
import reseat.readings.SeriesDecision;
import reseat.readings.SeriesVersion;
import reseat.readings.Settling;
import reseat.report.form.Paragraph;
import reseat.report.form.Screen;
import reseat.report.form.TextTable;
import reseat.units.QuantityFormat;

/**
 * A remount series on one screen: the verdict, a table with a column for each probe, what stands
 * out and what to do; on request every figure.
 */
public final class ReadingsText {

  private static final String NONE = "-";

  /** Rows of a short screen. */
  private static final List<String> SHORT =
      List.of(
          "settled: s",
          "one holder: s",
          "true s below",
          "of mounts within mean",
          "between holders",
          "reversal",
          "drift",
          "without flagged",
          "trend removed",
          "without both",
          "target");

  private final ReadingsReport report;
  private final SeriesAnalysis analysis;
  private final SeriesDecision decision;
  private final AnalysisOptions options;
  private final List<ColumnAnalysis> columns;
  private final boolean all;

  private ReadingsText(ReadingsReport report, boolean all) {
    this.report = report;
    this.all = all;
    this.analysis = report.analysis();
    this.decision = report.decision();
    this.options = analysis.options();
    this.columns = analysis.columns();
  }

  /**
   * Writes everything, for papers.
   *
   * @param report what is reported
   * @return text of whole lines
   */
  public static String of(ReadingsReport report) {
    return new ReadingsText(report, true).text();
  }

  /**
   * Writes the screen.
   *
   * @param report what is reported
   * @param typed the file as a shell takes it, and what else was typed, for the next step
   * @param screen how it is asked for
   * @return text of whole lines, short unless everything is asked for
   */
  public static String of(ReadingsReport report, String typed, Screen screen) {
    return new ReadingsText(report, screen.all()).text()
        + screen.next(
            "readings", typed, report.holds() && !screen.all() ? " -o my-test" : " --all");
  }

  private String text() {
    StringBuilder out = new StringBuilder();
    understood().forEach(t -> out.append(Paragraph.of("", t)));
    out.append(Paragraph.of("", report.headline()));
    for (InputDoubt doubt : report.doubts()) {
      out.append(Paragraph.of("", "Decide first, column " + doubt.key() + ": " + doubt.message()));
    }
    out.append(Paragraph.of("", settled()));
    out.append(table().text());
    for (String remark : all ? ReadingsRemarks.of(report) : ReadingsRemarks.brief(report)) {
      out.append(Paragraph.of("", remark));
    }
    report
        .predictions()
        .forEach(p -> out.append(PredictionText.of(p, analysis.series(), report.figures(), all)));
    report.poses().forEach(p -> out.append(PoseText.of(p, report.points(), report.figures(), all)));
    if (!report.offsets().isEmpty()) {
      out.append(OffsetTableText.of(report.offsets().get(0), report.figures()));
    }
    return out.toString();
  }

  private List<String> understood() {
    return UnderstoodText.of(analysis.series());
  }

  private String settled() {
    int n = analysis.series().mounts() - analysis.wearIn();
    if (!analysis.hasSettled()) {
      return "Not settled within the test: the readings were still running at the end. All mounts"
          + " are counted below, so the scatter holds that run; make more mounts.";
    }
    if (options.wearIn() >= 0) {
      return options.wearIn() == 0
          ? "No mounts are left out."
          : "The first " + options.wearIn() + " mounts are left out as told; " + n + " count.";
    }
    if (analysis.series().mounts() < Settling.LEAST_MOUNTS) {
      return "Too few mounts to look for wear-in: at least "
          + Settling.LEAST_MOUNTS
          + " are needed.";
    }
    String alarm =
        all
            ? " (chance of a false alarm " + ReadingsRemarks.percent(options.falseAlarm()) + ")"
            : "";
    return analysis.wearIn() == 0
        ? "Settled from the first mount: no wear-in is seen" + alarm + "."
        : "Settled after mount "
            + analysis.series().cycle(analysis.wearIn() - 1)
            + alarm
            + "; "
            + n
            + " mounts count as settled.";
  }

  public static String counted(int n, String word) {
    return n + " " + word + (n == 1 ? "" : "s");
  }

  /**
   * Makes the table of figures.
   *
   * @param report what is reported
   * @return a column for each probe
   */
  public static TextTable table(ReadingsReport report) {
    return new ReadingsText(report, true).table();
  }

  /**
   * Says what was read and which mounts are counted.
   *
   * @param report what is reported
   * @return two or three sentences
   */
  public static List<String> head(ReadingsReport report) {
    ReadingsText text = new ReadingsText(report, true);
    List<String> head = new ArrayList<>(text.understood());
    head.add(text.settled());
    return head;
  }

  private TextTable table() {
    String unit = columns.get(0).column().unit().symbol();
    boolean same = columns.stream().allMatch(c -> c.column().unit().symbol().equals(unit));
    List<String> head = new ArrayList<>(List.of(same ? unit : ""));
    columns.forEach(
        c ->
            head.add(
                same ? c.column().name() : c.column().name() + ", " + c.column().unit().symbol()));
    TextTable table = new TextTable("l" + "r".repeat(columns.size()), head.toArray(String[]::new));
    boolean several = columns.get(0).holders().isPresent();
    if (!several) {
      wholeSeries(table);
    }
    String confidence = ReadingsRemarks.percent(options.confidence());
    String part = several ? "one holder: " : "settled: ";
    if (!several) {
      row(table, part + "mean", c -> c.settled().map(r -> ReadingFigures.mean(c, r)));
    }
    row(table, part + "s", c -> scatter(c).map(s -> ReadingFigures.scatterNumber(c, s)));
    row(
        table,
        part + "4 s (ISO 230-2 form)",
        c ->
            scatter(c)
                .map(s -> ReadingFigures.scatterNumber(c, Repeatability.ISO_230_MULTIPLIER * s)));
    if (!several) {
      row(
          table,
          part + "range",
          c -> c.settled().map(r -> ReadingFigures.readingNumber(c, r.range())));
    }
    row(
        table,
        "true s below, " + confidence,
        c ->
            c.bounds()
                .map(ScatterBounds::upperOneSided)
                .map(s -> ReadingFigures.scatterNumber(c, s)));
    row(
        table,
        "target",
        c ->
            c.hasTarget()
                ? Optional.of(verdict(c, decision.of(c.column().name())))
                : Optional.empty());
    if (!several) {
      row(
          table,
          ReadingsRemarks.percent(options.share()) + " of mounts within mean ±",
          c -> c.toleranceFactor().map(k -> ReadingFigures.scatterNumber(c, k * c.scatter().s())));
    }
    row(
        table,
        "gauge noise, s",
        c ->
            c.gauge()
                .filter(g -> c.isGaugeStated())
                .map(GaugeNoise::gauge)
                .filter(s -> s > 0)
                .map(s -> ReadingFigures.scatterNumber(c, s)));
    row(
        table,
        "rounding of the readings, s",
        c ->
            c.gauge()
                .filter(g -> !c.isGaugeStated() && g.gauge() > 0)
                .map(g -> ReadingFigures.scatterNumber(c, g.gauge())));
    row(table, "mount alone, s", this::alone);
    if (several) {
      row(
          table,
          "between holders, s",
          c -> c.holders().map(h -> ReadingFigures.scatterNumber(c, h.interchangeability())));
    }
    row(
        table,
        several ? "reversal, mean of holders" : "reversal, two directions",
        c -> c.directions().map(d -> ReadingFigures.scatterNumber(c, d.meanReversal())));
    row(
        table,
        several ? "both directions, worst holder" : "both directions (ISO 230-2 form)",
        c -> c.directions().map(d -> ReadingFigures.scatterNumber(c, d.repeatability())));
    boolean drifts =
        columns.stream()
            .anyMatch(c -> c.drift().filter(d -> d.verdict() != Drift.Verdict.STEADY).isPresent());
    if (all || drifts) {
      row(table, "drift", c -> c.drift().map(ReadingsText::drift));
    }
    row(table, "flagged", ReadingsText::flagged);
    version(table, "without flagged: s (below)", SeriesVersion.Way.WITHOUT_FLAGGED);
    version(table, "trend removed: s (below)", SeriesVersion.Way.TREND_REMOVED);
    version(table, "without both: s (below)", SeriesVersion.Way.BOTH);
    return table;
  }

  /** Figures over all mounts, which mean something where there is one holder. */
  private void wholeSeries(TextTable table) {
    row(table, "all: mean", c -> c.all().map(r -> ReadingFigures.mean(c, r)));
    row(table, "all: s", c -> c.all().map(r -> ReadingFigures.scatterNumber(c, r.s())));
    row(table, "all: range", c -> c.all().map(r -> ReadingFigures.readingNumber(c, r.range())));
  }

  private void row(TextTable table, String name, Function<ColumnAnalysis, Optional<String>> cell) {
    if (!all && SHORT.stream().noneMatch(name::contains)) {
      return;
    }
    List<String> cells = new ArrayList<>(List.of(name));
    columns.forEach(c -> cells.add(cell.apply(c).orElse(NONE)));
    if (cells.subList(1, cells.size()).stream().anyMatch(s -> !s.equals(NONE))) {
      table.row(cells.toArray(String[]::new));
    }
  }

  private static Optional<Double> scatter(ColumnAnalysis c) {
    return c.scatter().freedom() < 1 ? Optional.empty() : Optional.of(c.scatter().s());
  }

  private Optional<String> alone(ColumnAnalysis c) {
    return c.gauge()
        .filter(g -> g.gauge() > 0 || g.s() == 0)
        .map(
            g ->
                g.mount().isPresent()
                    ? ReadingFigures.scatterNumber(c, g.mount().getAsDouble())
                    : "not resolvable");
  }

  private static String drift(Drift d) {
    return switch (d.verdict()) {
      case STEADY -> "none seen";
      case RISING -> "rising";
      case FALLING -> "falling";
      case WANDERING -> "wandering";
      case ALTERNATING -> "alternating";
    };
  }

  private static Optional<String> flagged(ColumnAnalysis c) {
    return c.drift().isEmpty()
        ? Optional.empty()
        : Optional.of(c.flagged().isEmpty() ? "none" : String.valueOf(c.flagged().size()));
  }

  /** One of the ways to count the series: s, in brackets what the true s is below. */
  private void version(TextTable table, String name, SeriesVersion.Way way) {
    row(
        table,
        name,
        c -> c.versions().stream().filter(v -> v.way() == way).findFirst().map(v -> version(c, v)));
  }

  private static String version(ColumnAnalysis c, SeriesVersion v) {
    String below =
        v.bounds()
            .map(b -> " (" + ReadingFigures.scatterNumber(c, b.upperOneSided()) + ")")
            .orElse("");
    boolean proven = v.proof().filter(p -> p.verdict() == ProofOfTarget.Verdict.PROVEN).isPresent();
    return ReadingFigures.scatterNumber(c, v.scatter().s())
        + below
        + (v.proof().isEmpty() ? "" : proven ? " within" : " not within");
  }

  private static String verdict(ColumnAnalysis c, SeriesDecision.OfColumn decision) {
    return "s "
        + QuantityFormat.significantNumber(c.target(), c.column().unit(), 3)
        + " "
        + DecisionText.word(decision);
  }
}
