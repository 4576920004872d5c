package reseat.report.readings;

import java.util.ArrayList;
import java.util.List;
import reseat.plots.PictureKind;
import reseat.readings.ColumnAnalysis;
import reseat.readings.PoseScatter;
import reseat.readings.SeriesDecision;
import reseat.report.form.FigureText;
import reseat.report.page.Page;
import reseat.study.PredictionStudy;
import reseat.units.FilledText;

/** Sets out the page of a remount series: what it proves, what stands out, and all its figures. */
public final class ReadingsPage {

  /** Readings beyond which the page leaves their table out; the file has them. */
  private static final int MOST_ROWS = 400;

  private ReadingsPage() {}

  /**
   * Sets out the page.
   *
   * @param report what is reported
   * @param pictures its pictures
   * @param stamp where the page comes from
   * @return the page
   */
  public static Page of(ReadingsReport report, ReadingsPictures pictures, List<String> stamp) {
    List<Page.Section> sections = new ArrayList<>();
    sections.add(figures(report));
    sections.add(
        new Page.Section(
            "remarks", "What stands out", List.of(new Page.Points(ReadingsRemarks.of(report)))));
    List<Page.Block> planes = pictures.ofKinds(PictureKind.MEASURED_PLANE);
    for (PredictionStudy study : report.predictions()) {
      sections.add(prediction(study, planes, report.figures()));
    }
    if (report.predictions().isEmpty() && !planes.isEmpty()) {
      sections.add(new Page.Section("planes", "Scatter in the plane", planes));
    }
    for (PoseScatter pose : report.poses()) {
      sections.add(
          new Page.Section(
              "pose",
              "Motion of the holder",
              List.of(
                  new Page.Paragraph(PoseText.head(pose)),
                  PoseText.table(pose, report.points(), report.figures())
                      .forPage("Scatter of the motions from mount to mount"))));
    }
    if (!report.offsets().isEmpty()) {
      sections.add(
          new Page.Section(
              "offsets",
              "Offset table",
              List.of(
                  new Page.Paragraph(
                      OffsetTableText.explanation(report.offsets().get(0), report.figures())),
                  OffsetTableText.table(report.offsets().get(0), report.figures())
                      .forPage("Offsets by holder"))));
    }
    add(sections, "spread", "How the readings are spread", pictures.ofKinds(PictureKind.HISTOGRAM));
    add(sections, "control", "Control charts", pictures.ofKinds(PictureKind.CONTROL_CHART));
    sections.add(later(report));
    if (report.analysis().series().mounts() <= MOST_ROWS) {
      sections.add(
          new Page.Section(
              "readings",
              "Readings",
              List.of(AcceptanceSheet.readings(report.analysis()).forPage("As read"))));
    }
    return new Page(
        "Remount test " + report.analysis().series().source(),
        report.headline(),
        tone(report),
        keys(report),
        List.of(),
        changes(report),
        List.of(),
        pictures.figure(PictureKind.READINGS),
        sections,
        stamp);
  }

  private static void add(
      List<Page.Section> sections, String id, String title, List<Page.Block> blocks) {
    if (!blocks.isEmpty()) {
      sections.add(new Page.Section(id, title, blocks));
    }
  }

  private static Page.Section figures(ReadingsReport report) {
    List<Page.Block> blocks = new ArrayList<>();
    ReadingsText.head(report).forEach(t -> blocks.add(new Page.Paragraph(t)));
    blocks.add(ReadingsText.table(report).forPage("s: standard deviation with n - 1"));
    return new Page.Section("figures", "Figures", blocks);
  }

  private static Page.Section prediction(
      PredictionStudy study, List<Page.Block> planes, FigureText figures) {
    List<Page.Block> blocks = new ArrayList<>();
    blocks.add(
        PredictionText.tests(study, figures)
            .forPage(study.mounts() + " simulated tool changes beside"));
    study
        .fit()
        .ifPresent(
            f -> {
              blocks.add(
                  PredictionText.amounts(f, figures)
                      .forPage(
                          "Amounts from mount to mount with which the simulation scatters as"
                              + " measured"));
              PredictionText.told(f, study, figures)
                  .forEach(t -> blocks.add(new Page.Paragraph(t)));
            });
    blocks.addAll(planes);
    return new Page.Section("prediction", "Against the prediction", blocks);
  }

  private static Page.Section later(ReadingsReport report) {
    List<Page.Block> blocks = new ArrayList<>();
    List<String> limits = AcceptanceSheet.limits(report.analysis());
    blocks.add(
        limits.isEmpty()
            ? new Page.Paragraph(
                "Limits for later checks need readings of one holder that scatter.")
            : new Page.Points(limits));
    return new Page.Section("limits", "Limits for later checks", blocks);
  }

  private static List<String> changes(ReadingsReport report) {
    return report.predictions().isEmpty()
        ? List.of()
        : PredictionText.advice(report.predictions().get(0), report.analysis().series());
  }

  private static Page.Tone tone(ReadingsReport report) {
    return switch (report.verdict()) {
      case FAILS -> Page.Tone.BAD;
      case UNDECIDED -> Page.Tone.CAREFUL;
      case HOLDS ->
          report.decision().word() == SeriesDecision.Word.PROVEN ? Page.Tone.GOOD : Page.Tone.PLAIN;
    };
  }

  private static Page.Tone tone(SeriesDecision.OfColumn decision) {
    return switch (decision.word()) {
      case PROVEN -> Page.Tone.GOOD;
      case MISSED -> Page.Tone.BAD;
      case NOT_PROVEN -> Page.Tone.CAREFUL;
      case NO_TARGET -> Page.Tone.PLAIN;
    };
  }

  private static List<Page.KeyFigure> keys(ReadingsReport report) {
    List<Page.KeyFigure> keys = new ArrayList<>();
    SeriesDecision decision = report.decision();
    for (ColumnAnalysis c : report.analysis().columns()) {
      if (c.scatter().freedom() < 1) {
        continue;
      }
      String bound =
          c.bounds()
              .map(
                  b ->
                      "true s below "
                          + ReadingFigures.scatter(c, b.upperOneSided())
                          + " with "
                          + ReadingsRemarks.percent(b.confidence())
                          + " confidence")
              .orElse(
                  c.isSkewed()
                      ? "the readings are too skewed for a bound"
                      : "the gauge does not resolve it");
      String wanted = c.hasTarget() ? ", wanted " + ReadingFigures.given(c, c.target()) : "";
      keys.add(
          new Page.KeyFigure(
              FilledText.of("Standard deviation of %s", c.column().name()),
              ReadingFigures.scatter(c, c.scatter().s()),
              bound + wanted,
              tone(decision.of(c.column().name()))));
    }
    return keys;
  }
}
