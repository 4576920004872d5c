package reseat.report.fullreport;

import java.util.ArrayList;
import java.util.List;
import reseat.check.Finding;
import reseat.check.Verdict;
import reseat.design.CouplingDesign;
import reseat.plots.PictureKind;
import reseat.report.check.AssumedWords;
import reseat.report.check.DecidingFigures;
import reseat.report.check.FindingsText;
import reseat.report.check.VerdictWords;
import reseat.report.form.FigureText;
import reseat.report.page.Page;
import reseat.study.CheckResult;
import reseat.study.ReportStudy;
import reseat.study.SeatedCheck;

/** Sets out a report: verdict, the numbers that matter, what to change, and all the rest. */
public final class ReportPage {

  /** Scatter below is that of nothing but rounding, m. */
  private static final double LEAST_SCATTER = 1e-10;

  /** Assumptions told on the first screen. */
  private static final int ASSUMED = 5;

  private ReportPage() {}

  /**
   * Sets out the page of a coupling that stands.
   *
   * @param study all results
   * @param remedies changes after which it holds
   * @param pictures its pictures
   * @param stamp where the page comes from
   * @param figures how numbers are written
   * @return the page
   */
  public static Page of(
      ReportStudy study,
      ReportPictures pictures,
      List<String> stamp,
      FigureText figures,
      List<String> remedies) {
    SeatedCheck check = study.check();
    PageFigures f = new PageFigures(figures);
    List<Page.Section> sections = new ArrayList<>();
    List<Page.Block> drawings = new ArrayList<>(pictures.ofKinds(PictureKind.SIDE_VIEW));
    drawings.addAll(pictures.seats(check));
    drawings.addAll(pictures.ofKinds(PictureKind.STUD_SECTION, PictureKind.PIVOT_SECTION));
    sections.add(new Page.Section("drawings", "How it is built", drawings));
    sections.add(
        new Page.Section(
            "charts",
            "How it behaves",
            pictures.ofKinds(
                PictureKind.LIFT_OFF_MAP,
                PictureKind.COMPLIANCE_SHARES,
                PictureKind.FREQUENCIES,
                PictureKind.REPEAT_ELLIPSE,
                PictureKind.BUDGET,
                PictureKind.SENSITIVITY,
                PictureKind.DEVICE_BAND,
                PictureKind.PRELOAD_CURVES,
                PictureKind.BALL_SIZE_CURVES)));
    sections.add(DesignSections.checks(check, f));
    sections.add(DesignSections.inputs(check.design(), f));
    DesignSections.assumed(check, figures).ifPresent(sections::add);
    sections.add(MechanicsSections.contacts(check, f));
    sections.add(MechanicsSections.stiffness(check, f));
    sections.add(MechanicsSections.cases(check, f));
    sections.add(MechanicsSections.seating(check));
    sections.add(ScatterSections.remount(study, f));
    sections.add(ScatterSections.holders(study, f));
    sections.add(ScatterSections.budget(study, f));
    sections.addAll(ClosingSections.of(check.design()));
    return new Page(
        title(check.design()),
        VerdictWords.line(check.findings()),
        tone(check.verdict()),
        boxes(study, figures),
        findings(check, figures),
        remedies,
        assumed(check, figures),
        pictures.figure(PictureKind.PLAN),
        sections,
        stamp);
  }

  /**
   * Sets out the page of a coupling that does not stand.
   *
   * @param check why not
   * @param remedies changes after which it does
   * @param stamp where the page comes from
   * @param figures how numbers are written
   * @return the page
   */
  public static Page of(
      CheckResult check, List<String> stamp, FigureText figures, List<String> remedies) {
    PageFigures f = new PageFigures(figures);
    List<Page.Section> sections = new ArrayList<>();
    sections.add(DesignSections.checks(check, f));
    sections.add(DesignSections.inputs(check.design(), f));
    DesignSections.assumed(check, figures).ifPresent(sections::add);
    sections.addAll(ClosingSections.of(check.design()));
    return new Page(
        title(check.design()),
        VerdictWords.line(check.findings()),
        tone(check.verdict()),
        List.of(),
        findings(check, figures),
        remedies,
        assumed(check, figures),
        null,
        sections,
        stamp);
  }

  private static String title(CouplingDesign d) {
    return d.title().isBlank() ? "Kinematic coupling" : d.title();
  }

  private static Page.Tone tone(Verdict verdict) {
    return switch (verdict) {
      case FAILS -> Page.Tone.BAD;
      case UNDECIDED -> Page.Tone.CAREFUL;
      case HOLDS -> Page.Tone.GOOD;
    };
  }

  /** What does not simply hold, worst first, what reads alike once. */
  private static List<Page.Remark> findings(CheckResult check, FigureText figures) {
    List<Page.Remark> told = new ArrayList<>();
    for (Finding f : check.findings()) {
      Page.Remark remark =
          new Page.Remark(FindingsText.words(f, figures), DesignSections.tone(f.judged()));
      if (DesignSections.told(f) && !told.contains(remark)) {
        told.add(remark);
      }
    }
    return told;
  }

  /** What carries most; all of it stands in a table with its sources. */
  private static List<String> assumed(CheckResult check, FigureText figures) {
    List<String> told = new ArrayList<>(AssumedWords.most(check, figures, ASSUMED));
    if (check.stated().assumed().size() > told.size()) {
      told.add("and more, all with their sources, under Assumptions");
    }
    return told;
  }

  /** The deciding figures, each in the tone of its judgement: never green beside a broken limit. */
  private static List<Page.KeyFigure> boxes(ReportStudy study, FigureText figures) {
    List<Page.KeyFigure> boxes = new ArrayList<>();
    for (DecidingFigures.Figure f : DecidingFigures.of(study.check(), figures)) {
      boolean scatter = f.name().equals(DecidingFigures.COMES_BACK);
      if (!scatter || scatters(study.check())) {
        long hungUp = scatter ? study.remount().scatter().failed() : 0;
        boxes.add(box(f, hungUp, study.remount().scatter().plan().mounts()));
      }
    }
    return boxes;
  }

  /** Where nothing scatters there is no half-width to tell. */
  private static boolean scatters(SeatedCheck check) {
    return check
        .toolChanges()
        .halfWidth()
        .map(h -> Math.max(h.x(), Math.max(h.y(), h.z())) >= LEAST_SCATTER)
        .orElse(true);
  }

  private static Page.KeyFigure box(DecidingFigures.Figure f, long hungUp, long mounts) {
    String remark = f.limit() + (f.where().isEmpty() ? "" : "; " + f.where());
    Page.Tone tone =
        switch (f.judged()) {
          case FAILS -> Page.Tone.BAD;
          case DECIDE, ACCEPTED -> Page.Tone.CAREFUL;
          case HOLDS -> Page.Tone.GOOD;
          case ADVICE -> Page.Tone.PLAIN;
        };
    if (hungUp == 0) {
      return new Page.KeyFigure(f.name(), f.value(), remark, tone);
    }
    return new Page.KeyFigure(
        f.name(),
        f.value(),
        remark + "; " + hungUp + " of " + mounts + " simulated changes hang up",
        tone == Page.Tone.BAD ? tone : Page.Tone.CAREFUL);
  }
}
