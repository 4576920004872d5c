package reseat.report.fullreport;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import reseat.budget.BudgetLine;
import reseat.budget.ErrorBudget;
import reseat.budget.TurningEffect;
import reseat.check.Finding;
import reseat.design.CheckKind;
import reseat.design.CouplingDesign;
import reseat.design.TurningRoles;
import reseat.interchange.InterchangeResult;
import reseat.interchange.LinearStack;
import reseat.interchange.Owner;
import reseat.remount.CauseShares;
import reseat.remount.RemountScatter;
import reseat.report.form.PageNumbers;
import reseat.report.page.Page;
import reseat.space.Vec3;
import reseat.study.ReportStudy;
import reseat.units.FilledText;

/** The parts of a page that tell scatter: mountings, holders, the budget, the turned part. */
public final class ScatterSections {

  /** What no gauge of a shop could find is not told of a turned part, m. */
  private static final double LEAST_EFFECT = 1e-9;

  private ScatterSections() {}

  public static Page.Section remount(ReportStudy study, PageFigures f) {
    CouplingDesign d = study.check().design();
    RemountScatter r = study.remount().scatter();
    List<Page.Block> blocks = new ArrayList<>();
    blocks.add(
        new Page.Paragraph(
            FilledText.of(
                "%d tool changes were simulated (seed %d): a random slide home with friction, then the"
                    + " preload in steps. %d seated, %d did not.",
                r.plan().mounts(), r.plan().seed(), r.seated(), r.failed())));
    List<Page.Row> rows = new ArrayList<>();
    for (int k = 0; k < 3; k++) {
      double target = d.targets().repeatability().limit(k);
      double band = r.toolPoint().covered().component(k);
      rows.add(
          new Page.Row(
              List.of(
                  d.axes().axis(k).name(),
                  "±" + f.smallWithUnit(band),
                  f.small(r.toolPoint().deviation().component(k)),
                  f.small(r.toolPoint().range().component(k)),
                  Double.isInfinite(target) ? "none" : "±" + f.smallWithUnit(target)),
              tone(study, d.axes().axis(k).name(), band > target)));
    }
    blocks.add(
        new Page.Table(
            "Repeatability of the tool point: one holder returning to its seats",
            List.of(
                "axis",
                "within, " + d.targets().coverage().written(),
                "standard deviation, " + f.smallUnit(),
                "range, " + f.smallUnit(),
                "wanted"),
            rows));
    List<Page.Row> causes = new ArrayList<>();
    for (CauseShares.Share s : study.remount().causes().orElseThrow().causes()) {
      causes.add(
          Page.Row.of(
              s.cause().words(), f.triple(s.alone()), shares(s.first()), shares(s.total())));
    }
    blocks.add(
        new Page.Table(
            "What causes it, along " + names(d),
            List.of(
                "cause",
                "standard deviation when alone, " + f.smallUnit(),
                "share of variance, first order",
                "share it has a part in"),
            causes));
    r.failures()
        .forEach(
            o -> blocks.add(new Page.Paragraph(o.count() + " mountings: the holder " + o.words())));
    blocks.add(
        new Page.Paragraph(
            "Rule-of-thumb upper bound from friction, for comparison: friction alone could hold"
                + " the tool point off by "
                + f.triple(study.remount().bound().toolPoint())
                + " "
                + f.smallUnit()
                + " along "
                + names(d)
                + " (friction force over normal stiffness, root sum square)."));
    return new Page.Section("remount", "How well it comes back", blocks);
  }

  private static String shares(Vec3 v) {
    return FilledText.of(
        "%.0f, %.0f, %.0f %%",
        100 * Math.max(0, v.x()), 100 * Math.max(0, v.y()), 100 * Math.max(0, v.z()));
  }

  private static String names(CouplingDesign d) {
    return d.axes().first().name()
        + ", "
        + d.axes().second().name()
        + ", "
        + d.axes().third().name();
  }

  public static Page.Section holders(ReportStudy study, PageFigures f) {
    CouplingDesign d = study.check().design();
    List<Page.Block> blocks = new ArrayList<>();
    if (study.interchange().isEmpty()) {
      blocks.add(
          new Page.Paragraph(
              "The design file gives no tolerances, so nothing is said of other holders. One holder"
                  + " returning to its seats (repeatability) says nothing of how alike several are"
                  + " (interchangeability); an offset per holder removes the difference down to the"
                  + " uncertainty with which it was measured."));
      return new Page.Section("holders", "Several holders", blocks);
    }
    InterchangeResult r = study.interchange().get().simulated();
    LinearStack stack = study.interchange().get().stack();
    Vec3 linear = stack.sum(EnumSet.of(Owner.HOLDER)).deviation();
    Vec3 worst = stack.sum(EnumSet.of(Owner.HOLDER)).worstCase();
    List<Page.Row> rows = new ArrayList<>();
    for (int k = 0; k < 3; k++) {
      rows.add(
          Page.Row.of(
              d.axes().axis(k).name(),
              f.smallWithUnit(r.own().deviation().component(k)),
              f.small(linear.component(k)),
              f.small(worst.component(k)),
              f.small(study.remount().scatter().toolPoint().deviation().component(k))));
    }
    blocks.add(
        new Page.Table(
            "Holders against each other on one post, "
                + r.plan().holders()
                + " drawn, "
                + r.misfits()
                + " did not fit",
            List.of(
                "axis",
                "without offset table: standard deviation",
                "linear stack, " + f.smallUnit(),
                "worst case, " + f.smallUnit(),
                "with an offset table: what repeatability leaves, " + f.smallUnit()),
            rows));
    return new Page.Section("holders", "Several holders", blocks);
  }

  public static Page.Section budget(ReportStudy study, PageFigures f) {
    CouplingDesign d = study.check().design();
    ErrorBudget budget = study.budget();
    List<Page.Row> rows = new ArrayList<>();
    for (BudgetLine.Nature nature : BudgetLine.Nature.values()) {
      for (BudgetLine l : budget.lines()) {
        if (l.nature() == nature) {
          rows.add(
              Page.Row.of(
                  l.source(),
                  nature == BudgetLine.Nature.RANDOM ? "random" : "systematic",
                  input(l, f),
                  l.shape(),
                  f.triple(l.contribution())));
        }
      }
      String word = nature == BudgetLine.Nature.RANDOM ? "random" : "systematic";
      if (budget.combined(nature).norm() > 0) {
        rows.add(
            new Page.Row(
                List.of("combined", word, "", "root sum square", f.triple(budget.combined(nature))),
                Page.Tone.NOTE));
        rows.add(
            new Page.Row(
                List.of(
                    "expanded",
                    word,
                    "",
                    FilledText.of("coverage factor %.0f", budget.coverageFactor()),
                    f.triple(budget.expanded(nature))),
                Page.Tone.NOTE));
      }
    }
    List<Page.Block> blocks = new ArrayList<>();
    blocks.add(
        new Page.Table(
            "Form of JCGM 100 (GUM); contribution along " + names(d),
            List.of(
                "source",
                "nature",
                "standard uncertainty",
                "shape",
                "contribution, " + f.smallUnit()),
            rows));
    blocks.add(
        new Page.Paragraph(
            "The bars of the picture show what differs from change to change. Tolerances stay with a holder and go"
                + " into its offset."));
    blocks.addAll(turned(d, f, budget.expanded(BudgetLine.Nature.RANDOM)));
    return new Page.Section("budget", "Error budget", blocks);
  }

  private static String input(BudgetLine l, PageFigures f) {
    if (l.input() == 0) {
      return "-";
    }
    return switch (l.unit()) {
      case "m" -> f.smallWithUnit(l.input());
      case "N" -> f.force(l.input());
      case "1" -> PageNumbers.figures(l.input(), 2);
      default -> (PageNumbers.plain(l.input(), 2) + " " + l.unit()).strip();
    };
  }

  /** What the expanded random error does to a turned part, where the machine turns. */
  private static List<Page.Block> turned(CouplingDesign d, PageFigures f, Vec3 error) {
    if (d.turning().isEmpty()) {
      return List.of();
    }
    TurningRoles roles = d.turning().get();
    double radial = error.component(roles.radial());
    double axial = error.component(roles.axial());
    double height = error.component(roles.height());
    TurningEffect.Ogive ogive = TurningEffect.ogive(0.05, 0.01, radial);
    List<Page.Row> rows = new ArrayList<>();
    effect(rows, f, "diameter (twice the radial error)", TurningEffect.diameterError(radial));
    effect(
        rows,
        f,
        "face position (one to one in " + d.axes().axis(roles.axial()).name() + ")",
        axial);
    effect(
        rows,
        f,
        "radius of a " + f.length(0.025) + " diameter, from the height error (second order)",
        TurningEffect.radiusErrorFromHeight(0.0125, height));
    effect(
        rows,
        f,
        "post or cone left when facing to the centre, diameter",
        TurningEffect.centrePostDiameter(height));
    effect(
        rows,
        f,
        "form error of a sphere of "
            + f.length(0.05)
            + " radius over an aperture of "
            + f.length(0.02)
            + ", after fitting the radius",
        ogive.residual());
    return rows.isEmpty()
        ? List.of()
        : List.of(
            new Page.Table(
                "What the expanded random error does to a turned part",
                List.of("effect", "size"),
                rows));
  }

  /** An effect that a gauge could find; a second-order one of picometres is left out. */
  private static void effect(List<Page.Row> rows, PageFigures f, String name, double size) {
    if (Math.abs(size) >= LEAST_EFFECT) {
      rows.add(Page.Row.of(name, f.smallWithUnit(size)));
    }
  }

  /** An axis is judged by the check, once for all; a range beyond the target is never plain. */
  private static Page.Tone tone(ReportStudy study, String axis, boolean beyond) {
    for (Finding one : study.check().findings()) {
      if (one.check() == CheckKind.REPEATABILITY && one.subject().name().equals(axis)) {
        Page.Tone judged = DesignSections.tone(one.judged());
        return judged == Page.Tone.PLAIN && beyond ? Page.Tone.CAREFUL : judged;
      }
    }
    return beyond ? Page.Tone.CAREFUL : Page.Tone.PLAIN;
  }
}
