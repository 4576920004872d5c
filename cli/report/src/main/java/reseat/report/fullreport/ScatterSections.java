package reseat.report.fullreport;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import reseat.budget.BudgetLine;
import reseat.budget.ErrorBudget;
import reseat.budget.TurningEffect;
import reseat.design.CouplingDesign;
import reseat.design.TurningRoles;
import reseat.interchange.InterchangeResult;
import reseat.interchange.LinearStack;
import reseat.interchange.Owner;
import reseat.remount.CauseShares;
import reseat.remount.RemountScatter;
import reseat.report.form.Shown;
import reseat.report.page.Page;
import reseat.space.Vec3;
import reseat.study.ReportStudy;
import reseat.units.FilledText;

/** The parts of a page that tell scatter: mountings, holders, the budget, the turned part. */
public final class ScatterSections {

  private ScatterSections() {}

  public static Page.Section remount(ReportStudy study, List<Page.Block> pictures) {
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
      double band = r.toolPoint().band().component(k);
      rows.add(
          new Page.Row(
              List.of(
                  d.axes().axis(k).name(),
                  "± " + Shown.small(band),
                  Shown.micrometres(r.toolPoint().deviation().component(k)),
                  Shown.micrometres(r.toolPoint().range().component(k)),
                  Double.isInfinite(target) ? "none" : "± " + Shown.small(target)),
              band > target ? Page.Tone.BAD : Page.Tone.PLAIN));
    }
    blocks.add(
        new Page.Table(
            "Repeatability of the tool point: one holder returning to its seats",
            List.of(
                "axis", "95 % of mounts within", "standard deviation, µm", "range, µm", "wanted"),
            rows));
    List<Page.Row> causes = new ArrayList<>();
    for (CauseShares.Share s : study.remount().causes().orElseThrow().causes()) {
      causes.add(
          Page.Row.of(
              s.cause().words(),
              MechanicsSections.triple(s.alone()),
              shares(s.first()),
              shares(s.total())));
    }
    blocks.add(
        new Page.Table(
            "What causes it, along " + names(d),
            List.of(
                "cause",
                "standard deviation when alone, µm",
                "share of variance, first order",
                "share it has a part in"),
            causes));
    r.failures()
        .forEach(
            f -> blocks.add(new Page.Paragraph(f.count() + " mountings: the holder " + f.words())));
    blocks.add(
        new Page.Paragraph(
            "Closed upper scale beside the simulation: friction alone could hold the tool point off"
                + " by "
                + MechanicsSections.triple(study.remount().bound().toolPoint())
                + " µm along "
                + names(d)
                + " (friction force over normal stiffness, root sum square)."));
    blocks.addAll(pictures);
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

  public static Page.Section holders(ReportStudy study, List<Page.Block> pictures) {
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
              Shown.small(r.own().deviation().component(k)),
              Shown.micrometres(linear.component(k)),
              Shown.micrometres(worst.component(k)),
              Shown.micrometres(study.remount().scatter().toolPoint().deviation().component(k))));
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
                "linear stack, µm",
                "worst case, µm",
                "with an offset table: what repeatability leaves, µm"),
            rows));
    blocks.addAll(pictures);
    return new Page.Section("holders", "Several holders", blocks);
  }

  public static Page.Section budget(ReportStudy study, List<Page.Block> pictures) {
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
                  input(l),
                  l.shape(),
                  MechanicsSections.triple(l.contribution())));
        }
      }
      String word = nature == BudgetLine.Nature.RANDOM ? "random" : "systematic";
      if (budget.combined(nature).norm() > 0) {
        rows.add(
            new Page.Row(
                List.of(
                    "combined",
                    word,
                    "",
                    "root sum square",
                    MechanicsSections.triple(budget.combined(nature))),
                Page.Tone.NOTE));
        rows.add(
            new Page.Row(
                List.of(
                    "expanded",
                    word,
                    "",
                    FilledText.of("coverage factor %.0f", budget.coverageFactor()),
                    MechanicsSections.triple(budget.expanded(nature))),
                Page.Tone.NOTE));
      }
    }
    List<Page.Block> blocks = new ArrayList<>();
    blocks.add(
        new Page.Table(
            "Form of JCGM 100 (GUM); contribution along " + names(d),
            List.of("source", "nature", "standard uncertainty", "shape", "contribution, µm"),
            rows));
    if (!pictures.isEmpty()) {
      blocks.add(
          new Page.Paragraph(
              "The bars show what differs from mount to mount. Tolerances stay with a holder and go"
                  + " into its offset."));
    }
    blocks.addAll(pictures);
    blocks.addAll(turned(d, budget.expanded(BudgetLine.Nature.RANDOM)));
    return new Page.Section("budget", "Error budget", blocks);
  }

  private static String input(BudgetLine l) {
    if (l.input() == 0) {
      return "-";
    }
    return switch (l.unit()) {
      case "m" -> Shown.small(l.input());
      case "N" -> Shown.force(l.input());
      case "1" -> Shown.figures(l.input(), 2);
      default -> (Shown.plain(l.input(), 2) + " " + l.unit()).strip();
    };
  }

  /** What the expanded random error does to a turned part, where the machine turns. */
  private static List<Page.Block> turned(CouplingDesign d, Vec3 error) {
    if (d.turning().isEmpty()) {
      return List.of();
    }
    TurningRoles roles = d.turning().get();
    double radial = error.component(roles.radial());
    double axial = error.component(roles.axial());
    double height = error.component(roles.height());
    TurningEffect.Ogive ogive = TurningEffect.ogive(0.05, 0.01, radial);
    return List.of(
        new Page.Table(
            "What the expanded random error does to a turned part",
            List.of("effect", "size"),
            List.of(
                Page.Row.of(
                    "diameter (twice the radial error)",
                    Shown.small(TurningEffect.diameterError(radial))),
                Page.Row.of(
                    "face position (one to one in " + d.axes().axis(roles.axial()).name() + ")",
                    Shown.small(axial)),
                Page.Row.of(
                    "radius of a 25 mm diameter, from the height error (second order)",
                    Shown.plain(1e9 * TurningEffect.radiusErrorFromHeight(0.0125, height), 2)
                        + " nm"),
                Page.Row.of(
                    "post or cone left when facing to the centre, diameter",
                    Shown.small(TurningEffect.centrePostDiameter(height))),
                Page.Row.of(
                    "form error of a 50 mm radius sphere over a 20 mm aperture, after fitting the radius",
                    Shown.small(ogive.residual())))));
  }
}
