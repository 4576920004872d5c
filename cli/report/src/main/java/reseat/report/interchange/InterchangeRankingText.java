package reseat.report.interchange;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import reseat.interchange.Contributor;
import reseat.interchange.LinearStack;
import reseat.interchange.Owner;
import reseat.interchange.TighteningGain;
import reseat.report.form.Shown;
import reseat.report.form.TextTable;
import reseat.study.InterchangeStudy;
import reseat.units.FilledText;

/** Which tolerance does how much, and which to tighten first. */
public final class InterchangeRankingText {

  /** Lines told for each axis; the rest is counted. */
  private static final int TOLD = 6;

  private static final int TOLD_OF_POST = 3;

  private InterchangeRankingText() {}

  public static String of(InterchangeStudy study) {
    StringBuilder out = new StringBuilder(4000);
    for (int k = 0; k < 3; k++) {
      ranking(study, LinearStack.BETWEEN_HOLDERS, k, TOLD, "between holders", out);
    }
    for (int k = 0; k < 3; k++) {
      ranking(
          study, EnumSet.of(Owner.POST), k, TOLD_OF_POST, "of the post, all holders alike", out);
    }
    tighten(study, out);
    return out.toString();
  }

  private static void ranking(
      InterchangeStudy study,
      Set<Owner> owners,
      int axis,
      int told,
      String words,
      StringBuilder out) {
    List<LinearStack.Line> lines =
        study.stack().ranking(owners, axis).stream().filter(l -> l.share() > 0).toList();
    if (lines.isEmpty()) {
      return;
    }
    TextTable table =
        new TextTable("lrrlrr", "tolerance", "limit", "moves it", "", "s, µm", "share");
    for (LinearStack.Line l : lines.subList(0, Math.min(told, lines.size()))) {
      Contributor c = l.effect().contributor();
      table.row(
          c.name(),
          ToleranceWords.limit(c, c.spread().limit()),
          ToleranceWords.sensitivity(c, l.sensitivity()),
          ToleranceWords.perUnit(c),
          Shown.micrometres(Math.abs(l.deviation())),
          Shown.percent(l.share()));
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
              "  and %d more with %s of the variance\n", lines.size() - told, Shown.percent(rest)));
    }
  }

  private static void tighten(InterchangeStudy study, StringBuilder out) {
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
              g.contributor().name(),
              ToleranceWords.limit(g.contributor(), g.contributor().spread().limit()),
              Shown.percent(g.gain()));
        }
      }
    }
    if (any) {
      out.append("\nTighten first: what halving one limit takes off the spread between holders\n")
          .append(table.text());
    }
  }
}
