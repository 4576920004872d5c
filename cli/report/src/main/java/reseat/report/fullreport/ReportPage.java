package reseat.report.fullreport;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import reseat.check.Verdict;
import reseat.contact.ContactLimits;
import reseat.design.CouplingDesign;
import reseat.equilibrium.CaseResponse;
import reseat.equilibrium.Equilibrium;
import reseat.plots.PictureKind;
import reseat.remedy.Remedies;
import reseat.report.check.FindingWords;
import reseat.report.check.RemedyWords;
import reseat.report.check.VerdictWords;
import reseat.report.form.FigureText;
import reseat.report.form.Shown;
import reseat.report.page.Page;
import reseat.study.CheckResult;
import reseat.study.ReportStudy;
import reseat.study.SeatedCheck;

/** Sets out a report: verdict, the numbers that matter, what to change, and all the rest. */
public final class ReportPage {

  private ReportPage() {}

  /**
   * Sets out the page of a coupling that stands.
   *
   * @param study all results
   * @param remedies changes after which it holds
   * @param pictures its pictures
   * @param stamp where the page comes from
   * @return the page
   */
  public static Page of(
      ReportStudy study, Remedies remedies, ReportPictures pictures, List<String> stamp) {
    SeatedCheck check = study.check();
    List<Page.Section> sections = new ArrayList<>();
    sections.add(DesignSections.inputs(check.design()));
    sections.add(DesignSections.checks(check));
    List<Page.Block> drawn = new ArrayList<>(pictures.ofKinds(PictureKind.SIDE_VIEW));
    drawn.addAll(
        pictures.ofKinds(
            PictureKind.SEAT_SECTION, PictureKind.STUD_SECTION, PictureKind.PIVOT_SECTION));
    sections.add(MechanicsSections.contacts(check, drawn));
    List<Page.Block> give = new ArrayList<>(pictures.ofKinds(PictureKind.COMPLIANCE_SHARES));
    give.addAll(pictures.ofKinds(PictureKind.FREQUENCIES));
    sections.add(MechanicsSections.stiffness(check, give));
    sections.add(MechanicsSections.cases(check, pictures.ofKinds(PictureKind.LIFT_OFF_MAP)));
    sections.add(MechanicsSections.seating(check));
    sections.add(ScatterSections.remount(study, pictures.ofKinds(PictureKind.REPEAT_ELLIPSE)));
    sections.add(ScatterSections.holders(study, pictures.ofKinds(PictureKind.SENSITIVITY)));
    sections.add(ScatterSections.budget(study, pictures.ofKinds(PictureKind.BUDGET)));
    List<Page.Block> curves = new ArrayList<>(pictures.ofKinds(PictureKind.DEVICE_BAND));
    curves.addAll(pictures.ofKinds(PictureKind.PRELOAD_CURVES));
    curves.addAll(pictures.ofKinds(PictureKind.BALL_SIZE_CURVES));
    if (!curves.isEmpty()) {
      sections.add(new Page.Section("curves", "More preload, another ball", curves));
    }
    sections.addAll(ClosingSections.all());
    return new Page(
        title(check.design()),
        verdict(check),
        tone(check),
        figures(study),
        pictures.figure(PictureKind.PLAN),
        changes(remedies),
        sections,
        stamp);
  }

  /**
   * Sets out the page of a coupling that does not stand.
   *
   * @param check why not
   * @param remedies changes after which it does
   * @param stamp where the page comes from
   * @return the page
   */
  public static Page of(CheckResult check, Remedies remedies, List<String> stamp) {
    List<Page.Section> sections = new ArrayList<>();
    sections.add(DesignSections.inputs(check.design()));
    sections.add(DesignSections.checks(check));
    sections.addAll(ClosingSections.all());
    return new Page(
        title(check.design()),
        verdict(check),
        tone(check),
        List.of(),
        null,
        changes(remedies),
        sections,
        stamp);
  }

  private static String title(CouplingDesign d) {
    return d.title().isBlank() ? "Kinematic coupling" : d.title();
  }

  private static String verdict(CheckResult check) {
    String line = VerdictWords.line(check.findings());
    return check.verdict() == Verdict.HOLDS
        ? line
        : line + " " + FindingWords.of(check.findings().get(0).said(), FigureText.BOTH);
  }

  private static Page.Tone tone(CheckResult check) {
    return switch (check.verdict()) {
      case FAILS -> Page.Tone.BAD;
      case UNDECIDED -> Page.Tone.CAREFUL;
      case HOLDS -> Page.Tone.GOOD;
    };
  }

  private static List<String> changes(Remedies remedies) {
    return RemedyWords.lines(remedies, FigureText.BOTH);
  }

  private static List<Page.KeyFigure> figures(ReportStudy study) {
    SeatedCheck check = study.check();
    CouplingDesign d = check.design();
    List<Page.KeyFigure> figures = new ArrayList<>();
    for (int k = 0; k < 3; k++) {
      double band = study.remount().scatter().toolPoint().band().component(k);
      double target = d.targets().repeatability().limit(k);
      figures.add(
          new Page.KeyFigure(
              "Repeatability along " + d.axes().axis(k).name() + ", 95 % of mounts",
              "± " + Shown.small(band),
              Double.isInfinite(target) ? "no target given" : "wanted ± " + Shown.small(target),
              Double.isInfinite(target)
                  ? Page.Tone.PLAIN
                  : band > target ? Page.Tone.BAD : Page.Tone.GOOD));
    }
    figures.add(pressure(check));
    liftOff(check).ifPresent(figures::add);
    return figures;
  }

  /** The load case that is nearest to the lift-off factor wanted of it. */
  private static Optional<Page.KeyFigure> liftOff(SeatedCheck check) {
    double asked = check.design().targets().liftOffFactor();
    Optional<CaseResponse> worst =
        check.cases().stream()
            .filter(c -> c.liftOff().index() >= 0)
            .min(Comparator.comparingDouble(c -> c.liftOff().factor() / c.wantedFactor(asked)));
    return worst.map(
        c -> {
          double factor = c.liftOff().factor();
          double wanted = c.wantedFactor(asked);
          return new Page.KeyFigure(
              "Lift-off factor nearest to its limit",
              Shown.factor(factor),
              "case " + c.loadCase().name() + ", wanted " + Shown.factor(wanted),
              factor < 1 ? Page.Tone.BAD : factor < wanted ? Page.Tone.CAREFUL : Page.Tone.GOOD);
        });
  }

  private static Page.KeyFigure pressure(SeatedCheck check) {
    double worst = -1;
    String value = "";
    String remark = "no limit known";
    for (int i = 0; i < check.standing().contacts().size(); i++) {
      Equilibrium.Contact c = check.standing().contacts().get(i);
      double p = c.peakPressure();
      ContactLimits limits = check.limits().get(i);
      double share = limits.governing().map(l -> p / l.peakPressure()).orElse(0.0);
      if (share > worst) {
        worst = share;
        value = Shown.pressure(p);
        remark =
            limits
                .governing()
                .map(
                    l -> Shown.percent(share) + " of the limit " + Shown.pressure(l.peakPressure()))
                .orElse("no limit known");
      }
    }
    double wanted = check.design().targets().pressureShare();
    return new Page.KeyFigure(
        "Peak pressure at rest", value, remark, worst > wanted ? Page.Tone.BAD : Page.Tone.GOOD);
  }
}
