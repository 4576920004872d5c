package reseat.report.interchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import reseat.check.Finding;
import reseat.design.CouplingDesign;
import reseat.interchange.Fit;
import reseat.interchange.InterchangePlan;
import reseat.interchange.InterchangeResult;
import reseat.interchange.InterchangeScatter;
import reseat.interchange.LinearComparison;
import reseat.interchange.LinearStack;
import reseat.interchange.OffsetPrediction;
import reseat.report.check.FindingsText;
import reseat.report.check.VerdictWords;
import reseat.report.form.FigureText;
import reseat.report.form.PageNumbers;
import reseat.report.form.Paragraph;
import reseat.report.form.Screen;
import reseat.report.form.TextTable;
import reseat.report.form.UnitSystem;
import reseat.space.Vec3;
import reseat.study.InterchangeStudy;
import reseat.units.FilledText;
import reseat.units.QuantityKind;

/**
 * Several holders on one post, on one screen: verdict, how alike they are, what to tighten,
 * offsets; on request the linear stack and what causes the spread.
 */
public final class InterchangeText {

  /** Holders of a small shop, for which a range is told. */
  private static final int FEW = 5;

  /** Measured holders on a short screen. */
  private static final int HOLDERS = 5;

  private final InterchangeStudy study;
  private final CouplingDesign design;
  private final InterchangeResult result;
  private final List<Finding> findings;
  private final Screen screen;
  private final FigureText figures;

  private InterchangeText(InterchangeStudy study, List<Finding> findings, Screen screen) {
    this.study = study;
    this.findings = findings;
    this.screen = screen;
    figures = screen.figures();
    design = study.design();
    result = study.simulated();
  }

  /**
   * Tells a result.
   *
   * @param study what came of it
   * @param findings those of the check of the design, and of the holders
   * @param file the design file as it was named, for the next step
   * @param screen how it is asked for
   * @return lines with their ends
   */
  public static String of(
      InterchangeStudy study, List<Finding> findings, String file, Screen screen) {
    return new InterchangeText(study, findings, screen).text(file);
  }

  private String text(String file) {
    StringBuilder out = new StringBuilder(8000);
    if (!design.title().isEmpty()) {
      out.append(Paragraph.of("", design.title()));
    }
    out.append(Paragraph.of("", VerdictWords.line(findings)));
    out.append(Paragraph.of("", drawn()));
    // what the spread misses stands in the line before and in the table
    List<Finding> told = new ArrayList<>(findings);
    if (!screen.all()) {
      told.removeAll(study.findings());
    }
    out.append(FindingsText.paragraphs(told, figures, screen.all()));
    misfits(out);
    spread(out);
    if (screen.all()) {
      linear(out);
      out.append(InterchangeRankingText.of(study, screen.units()));
    }
    study.advice().ifPresent(a -> out.append(ToleranceAdviceText.of(a, design, screen)));
    offsets(out);
    out.append(
        Paragraph.of(
            "",
            "Assumed: errors of parts independent unless called shared; bodies rigid but at the"
                + " balls."));
    out.append(
        screen.next(
            "interchange",
            file,
            Double.isInfinite(study.wish().within()) ? wish() : screen.all() ? "" : " --all"));
    return out.toString();
  }

  /** A spread worth asking for: half of that of the worst axis, in a round number. */
  private String wish() {
    double worst = 0;
    for (int k = 0; k < 3; k++) {
      worst = Math.max(worst, result.own().band().component(k));
    }
    String unit = screen.units() == UnitSystem.INCH ? "uin" : "um";
    return worst > 0
        ? " --within \"" + figures.number(worst / 2, QuantityKind.LENGTH, 1) + " " + unit + "\""
        : " --all";
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
                + PageNumbers.figures(100.0 * result.misfits() / (plan.posts() * plan.holders()), 2)
                + " %)";
    return drawn + " (seed " + plan.seed() + "), " + fit + "; " + kept();
  }

  private String kept() {
    if (Double.isInfinite(study.wish().within())) {
      return screen.all()
          ? "no limit of their spread is given (--within)."
          : "no limit of their spread is given; --within takes one, for instance half of the widest.";
    }
    StringBuilder missed = new StringBuilder();
    for (int k = 0; k < 3; k++) {
      if (!study.keepsWithin(k)) {
        missed.append(missed.length() == 0 ? "" : ", ").append(axis(k));
      }
    }
    String wanted = "±" + figures.length(study.wish().within());
    return missed.length() == 0
        ? study.design().targets().coverage().written()
            + " of them lie within "
            + wanted
            + " of their mean."
        : "they spread beyond " + wanted + " of their mean along " + missed + ".";
  }

  private void misfits(StringBuilder out) {
    if (result.misfits() == 0) {
      return;
    }
    out.append("Holders that do not fit, not in the figures below\n");
    for (Map.Entry<Fit, Long> e : result.fits().entrySet()) {
      if (e.getKey() != Fit.FITS) {
        out.append(Paragraph.of("  ", e.getValue() + ": " + e.getKey().words()));
      }
    }
  }

  private void spread(StringBuilder out) {
    InterchangeScatter s = study.scatter();
    Vec3 worst = study.stack().sum(LinearStack.BETWEEN_HOLDERS).worstCase();
    TextTable table =
        new TextTable(
            "lrrrrrrr",
            "tool point, " + figures.column(QuantityKind.LENGTH).symbol(),
            "95 % within ±",
            "worst case ±",
            "s: itself",
            "between",
            "with table",
            "to drawing",
            screen.all() ? "span of five" : "");
    for (int k = 0; k < 3; k++) {
      double span = InterchangeScatter.expectedRange(FEW) * result.own().deviation().component(k);
      table.row(
          axis(k),
          number(result.own().band(), k),
          number(worst, k),
          number(s.repeatability(), k),
          number(s.withoutTable(), k),
          number(s.withTable(), k),
          number(s.againstDrawing(), k),
          screen.all() ? figures.number(span, QuantityKind.LENGTH, 2) : "");
    }
    out.append(table.text());
    double entry = study.wish().calibration();
    out.append(
        Paragraph.of(
            "  ",
            "Standard deviations s: one holder mounted again and again (repeatability), different"
                + " holders on one post (interchangeability), once each holder's offset is entered"
                + (entry > 0 ? " to " + figures.length(entry) : "")
                + ", and against the drawing (accuracy)."
                + (screen.all()
                    ? " Worst case ±: every tolerance at its limit. Span of five: from the first to the"
                        + " last of five holders, on average. Repeatability is from "
                        + study.wish().mounts()
                        + " simulated tool changes."
                    : "")));
  }

  private String number(Vec3 v, int axis) {
    return figures.number(v.component(axis), QuantityKind.LENGTH, 2);
  }

  private void linear(StringBuilder out) {
    LinearComparison c = result.linear();
    TextTable table =
        new TextTable("lrrrrr", "axis", "linear s", "simulated s", "by luck", "mean", "by luck");
    for (int k = 0; k < 3; k++) {
      table.row(
          axis(k),
          finer(c.linear(), k),
          finer(c.simulated(), k),
          "± " + finer(c.deviationBound(), k),
          finer(c.mean(), k),
          "± " + finer(c.meanBound(), k));
    }
    out.append("\nLinear stack beside the exact simulation, ")
        .append(figures.column(QuantityKind.LENGTH).symbol())
        .append('\n')
        .append(table.text());
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

  private String finer(Vec3 v, int axis) {
    return figures.number(v.component(axis), QuantityKind.LENGTH, 3);
  }

  private void offsets(StringBuilder out) {
    if (study.offsets().isEmpty()) {
      return;
    }
    TextTable table =
        new TextTable(
            "lrrrr",
            "offset to drawing, " + figures.column(QuantityKind.LENGTH).symbol(),
            axis(0),
            axis(1),
            axis(2),
            "");
    int told = screen.all() ? study.offsets().size() : Math.min(HOLDERS, study.offsets().size());
    for (OffsetPrediction.Offset o : study.offsets().subList(0, told)) {
      table.row(
          o.holder(),
          entry(o, 0),
          entry(o, 1),
          entry(o, 2),
          o.lifted() ? "a contact lifts off" : "");
    }
    Vec3 common = study.offsets().get(0).common();
    out.append(table.text());
    if (told < study.offsets().size()) {
      out.append("  and ").append(study.offsets().size() - told).append(" more holders (--all)\n");
    }
    out.append(
        Paragraph.of(
            "  ",
            FilledText.of(
                "±: expanded uncertainty (factor %.0f) of the holder; the post moves all by"
                    + " another ±%s, %s, %s.",
                InterchangeStudy.COVERAGE,
                expanded(common, 0),
                expanded(common, 1),
                expanded(common, 2))));
  }

  private String entry(OffsetPrediction.Offset o, int axis) {
    double own = InterchangeStudy.COVERAGE * o.own().component(axis);
    return figures.scatterNumber(o.offset().component(axis), own)
        + " ± "
        + figures.scatterNumber(own, own);
  }

  private String expanded(Vec3 v, int axis) {
    return figures.number(InterchangeStudy.COVERAGE * v.component(axis), QuantityKind.LENGTH, 2);
  }

  private String axis(int k) {
    return design.axes().axis(k).name();
  }
}
