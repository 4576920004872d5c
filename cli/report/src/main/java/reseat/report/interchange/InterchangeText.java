package reseat.report.interchange;

import java.util.List;
import reseat.report.form.Screen;
import reseat.check.Finding;
import reseat.report.check.VerdictWords;
import java.util.Locale;
import java.util.Map;
import reseat.design.CouplingDesign;
import reseat.interchange.Fit;
import reseat.interchange.InterchangePlan;
import reseat.interchange.InterchangeResult;
import reseat.interchange.InterchangeScatter;
import reseat.interchange.LinearComparison;
import reseat.interchange.LinearStack;
import reseat.interchange.OffsetPrediction;
import reseat.report.form.Paragraph;
import reseat.report.form.Shown;
import reseat.report.form.TextTable;
import reseat.space.Vec3;
import reseat.study.InterchangeStudy;
import reseat.units.FilledText;

/**
 * Several holders on one post, on one screen: verdict, the three words kept apart, spread, linear
 * stack, what causes it, advice, offsets.
 */
public final class InterchangeText {

  /** Holders of a small shop, for which a range is told. */
  private static final int FEW = 5;

  private final InterchangeStudy study;
  private final CouplingDesign design;
  private final InterchangeResult result;
  private final List<Finding> findings;
  private final Screen screen;

  private InterchangeText(InterchangeStudy study, List<Finding> findings, Screen screen) {
    this.study = study;
    this.findings = findings;
    this.screen = screen;
    design = study.design();
    result = study.simulated();
  }

  /**
   * Tells a result.
   *
   * @param study what came of it
   * @param findings those of the check of the design, and of the holders
   * @param screen how it is asked for
   * @return lines with their ends
   */
  public static String of(InterchangeStudy study, List<Finding> findings, Screen screen) {
    return new InterchangeText(study, findings, screen).text();
  }

  private String text() {
    StringBuilder out = new StringBuilder(8000);
    if (!design.title().isEmpty()) {
      out.append(Paragraph.of("", design.title()));
    }
    out.append(Paragraph.of("", VerdictWords.line(findings)));
    out.append(Paragraph.of("", drawn()));
    misfits(out);
    words(out);
    spread(out);
    if (screen.all()) {
      linear(out);
      out.append(InterchangeRankingText.of(study));
    }
    study.advice().ifPresent(a -> out.append(ToleranceAdviceText.of(a, design)));
    offsets(out);
    out.append('\n')
        .append(
            Paragraph.of(
                "",
                "Errors of the parts are taken as independent unless the design file calls them"
                    + " shared, and bodies as rigid but for contacts and ball mountings. Measuring"
                    + " the holders shows what the tolerances only bound."));
    return out.toString();
  }

  private String drawn() {
    InterchangePlan plan = result.plan();
    String drawn =
        plan.posts() == 1
            ? plan.holders() + " holders drawn on one post"
            : plan.holders() + " holders drawn on each of " + plan.posts() + " posts";
    String fit =
        result.misfits() == 0
            ? "all fit"
            : result.misfits()
                + " do not fit ("
                + Shown.figures(100.0 * result.misfits() / (plan.posts() * plan.holders()), 2)
                + " %)";
    return drawn
        + " (seed "
        + plan.seed()
        + "), "
        + fit
        + "; "
        + kept();
  }

  private String kept() {
    if (Double.isInfinite(study.wish().within())) {
      return "no spread is wanted (--within).";
    }
    StringBuilder missed = new StringBuilder();
    for (int k = 0; k < 3; k++) {
      if (!study.keepsWithin(k)) {
        missed.append(missed.length() == 0 ? "" : " and ").append(axis(k));
      }
    }
    String wanted = "± " + Shown.small(study.wish().within());
    return missed.length() == 0
        ? "95 % of them stand within " + wanted + " of their mean."
        : "they spread beyond " + wanted + " along " + missed + ".";
  }

  private void misfits(StringBuilder out) {
    if (result.misfits() == 0) {
      return;
    }
    out.append("\nHolders that do not fit, not in the figures below\n");
    for (Map.Entry<Fit, Long> e : result.fits().entrySet()) {
      if (e.getKey() != Fit.FITS) {
        out.append(Paragraph.of("  ", e.getValue() + ": " + e.getKey().words()));
      }
    }
  }

  private void words(StringBuilder out) {
    InterchangeScatter s = study.scatter();
    TextTable table =
        new TextTable(
            "lllll",
            "axis",
            "back to itself",
            "between holders",
            "with offset table",
            "to drawing");
    for (int k = 0; k < 3; k++) {
      table.row(
          axis(k),
          Shown.small(s.repeatability().component(k)),
          Shown.small(s.withoutTable().component(k)),
          Shown.small(s.withTable().component(k)),
          Shown.small(s.againstDrawing().component(k)));
    }
    out.append("\nTool point, standard deviations\n").append(table.text());
    out.append(
        Paragraph.of(
            "  ",
            "Back to itself (repeatability): one holder mounted again and again, from "
                + study.wish().mounts()
                + " simulated tool changes. Between holders (interchangeability): different holders"
                + " on one post, each at its own place. With offset table: what is left once each"
                + " holder's place is entered, to "
                + Shown.small(study.wish().calibration())
                + " standard uncertainty (--calibration). To drawing (accuracy): errors of the post"
                + " included."));
  }

  private void spread(StringBuilder out) {
    Vec3 worst = study.stack().sum(LinearStack.BETWEEN_HOLDERS).worstCase();
    TextTable table =
        new TextTable("lllll", "axis", "± 95 %", "s", "worst case", "range of five holders");
    for (int k = 0; k < 3; k++) {
      double s = result.own().deviation().component(k);
      table.row(
          axis(k),
          "± " + Shown.small(result.own().band().component(k)),
          Shown.small(s),
          "± " + Shown.small(worst.component(k)),
          Shown.small(InterchangeScatter.expectedRange(FEW) * s));
    }
    out.append("\nSpread between holders on one post, without offset table\n")
        .append(table.text())
        .append(
            Paragraph.of(
                "  ",
                "± 95 %: half-width about the mean that holds 95 % of the holders. Worst case: every"
                    + " tolerance at its limit. Range of five holders: first to last, on average."));
  }

  private void linear(StringBuilder out) {
    LinearComparison c = result.linear();
    TextTable table =
        new TextTable("lrrrrr", "axis", "linear s", "simulated s", "by luck", "mean", "by luck");
    for (int k = 0; k < 3; k++) {
      table.row(
          axis(k),
          number(c.linear(), k),
          number(c.simulated(), k),
          "± " + number(c.deviationBound(), k),
          number(c.mean(), k),
          "± " + number(c.meanBound(), k));
    }
    out.append("\nLinear stack beside the exact simulation, µm\n").append(table.text());
    if (c.differs()) {
      StringBuilder axes = new StringBuilder();
      for (int k = 0; k < 3; k++) {
        if (c.differs(k)) {
          axes.append(axes.length() == 0 ? "" : " and ").append(axis(k));
        }
      }
      out.append(
          Paragraph.of(
              "  ",
              "WARNING: along "
                  + axes
                  + " the two differ by more than luck explains (99.9 %). Believe the simulation;"
                  + " the geometry is too curved for a linear stack at these tolerances."));
    } else {
      out.append(
          Paragraph.of("  ", "They differ by no more than luck explains (99.9 % per figure)."));
    }
  }

  private static String number(Vec3 v, int axis) {
    return Shown.micrometres(v.component(axis), 3);
  }

  private void offsets(StringBuilder out) {
    if (study.offsets().isEmpty()) {
      return;
    }
    TextTable table =
        new TextTable("lrrrr", "holder", axis(0) + " µm", axis(1) + " µm", axis(2) + " µm", "");
    for (OffsetPrediction.Offset o : study.offsets()) {
      table.row(
          o.holder(),
          entry(o, 0),
          entry(o, 1),
          entry(o, 2),
          o.lifted() ? "a contact lifts off" : "");
    }
    Vec3 common = study.offsets().get(0).common();
    out.append("\nPredicted place of each measured holder, against the drawing\n")
        .append(table.text())
        .append(
            Paragraph.of(
                "  ",
                FilledText.of(
                    "±: expanded uncertainty, coverage factor %.0f, of the holder alone. The post"
                        + " moves all holders together by a further ± %s, %s, %s µm.",
                    InterchangeStudy.COVERAGE,
                    expanded(common, 0),
                    expanded(common, 1),
                    expanded(common, 2))));
  }

  private static String entry(OffsetPrediction.Offset o, int axis) {
    return Shown.micrometres(o.offset().component(axis), 3) + " ± " + expanded(o.own(), axis);
  }

  private static String expanded(Vec3 v, int axis) {
    return Shown.micrometres(InterchangeStudy.COVERAGE * v.component(axis), 2);
  }

  private String axis(int k) {
    return design.axes().axis(k).name();
  }
}
