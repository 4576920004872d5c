package reseat.report.interchange;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import reseat.interchange.Contributor;
import reseat.interchange.LinearStack;
import reseat.interchange.Owner;
import reseat.interchange.TighteningGain;
import reseat.report.form.FigureText;
import reseat.report.form.PageNumbers;
import reseat.report.form.TextTable;
import reseat.report.form.UnitSystem;
import reseat.study.InterchangeStudy;
import reseat.units.FilledText;
import reseat.units.QuantityKind;

/** Which tolerance does how much, and which to tighten first. */
public final class InterchangeRankingText {

  /** Lines told for each axis; the rest is counted. */
  private static final int TOLD = 6;

  private static final int TOLD_OF_POST = 3;

  private InterchangeRankingText() {}

  /**
   * Tells the ranking.
   *
   * @param study what came of it
   * @param system the units asked for; metric ones where both are
   * @return lines with their ends
   */
  public static String of(InterchangeStudy study, UnitSystem system) {
    StringBuilder out = new StringBuilder(4000);
    for (int k = 0; k < 3; k++) {
      ranking(study, LinearStack.BETWEEN_HOLDERS, k, TOLD, "between holders", system, out);
    }
    for (int k = 0; k < 3; k++) {
      ranking(
          study,
          EnumSet.of(Owner.POST),
          k,
          TOLD_OF_POST,
          "of the post, all holders alike",
          system,
          out);
    }
    tighten(study, system, out);
    return out.toString();
  }

  private static void ranking(
      InterchangeStudy study,
      Set<Owner> owners,
      int axis,
      int told,
      String words,
      UnitSystem system,
      StringBuilder out) {
    List<LinearStack.Line> lines =
        study.stack().ranking(owners, axis).stream().filter(l -> l.share() > 0).toList();
    if (lines.isEmpty()) {
      return;
    }
    FigureText figures = new FigureText(system);
    TextTable table =
        new TextTable(
            "lrrlrr",
            "tolerance",
            "limit",
            "moves it",
            "",
            "s, " + figures.column(QuantityKind.LENGTH).symbol(),
            "share");
    for (LinearStack.Line l : lines.subList(0, Math.min(told, lines.size()))) {
      Contributor c = l.effect().contributor();
      table.row(
          ToleranceWords.name(c, system),
          ToleranceWords.limit(c, c.spread().limit(), system),
          ToleranceWords.sensitivity(c, l.sensitivity(), system),
          ToleranceWords.perUnit(c, system),
          figures.number(Math.abs(l.deviation()), QuantityKind.LENGTH, 2),
          PageNumbers.percent(l.share()));
    }
    out.append("\nWhat moves the tool point along ")
        .append(study.design().axes().axis(axis).name())
        .append(", ")
        .append(words)
        .append('\n')
        .append(table.text());
    if (lines.size() > told) {
      double rest =
          lines.subList(told, lines.size()).stream().mapToDouble(LinearStack.Line::share).sum();
      out.append(
          FilledText.of(
              "  and %d more with %s of the variance\n",
              lines.size() - told, PageNumbers.percent(rest)));
    }
  }

  private static void tighten(InterchangeStudy study, UnitSystem system, StringBuilder out) {
    TextTable table = new TextTable("llrr", "axis", "tolerance", "limit", "spread falls by");
    boolean any = false;
    for (int k = 0; k < 3; k++) {
      List<TighteningGain> gains =
          TighteningGain.ranking(study.stack(), LinearStack.BETWEEN_HOLDERS, k);
      for (TighteningGain g : gains.subList(0, Math.min(2, gains.size()))) {
        if (g.gain() > 0.005) {
          any = true;
          table.row(
              study.design().axes().axis(k).name(),
              ToleranceWords.name(g.contributor(), system),
              ToleranceWords.limit(g.contributor(), g.contributor().spread().limit(), system),
              PageNumbers.percent(g.gain()));
        }
      }
    }
    if (any) {
      out.append("\nTighten first: what halving one limit takes off the spread between holders\n")
          .append(table.text());
    }
  }
}
