package reseat.report.interchange;

import reseat.units.FilledText;
import java.util.Comparator;
import java.util.List;
import reseat.design.CouplingDesign;
import reseat.interchange.ToleranceAdvice;
import reseat.report.form.Paragraph;
import reseat.report.form.Shown;
import reseat.report.form.TextTable;

/** The cheapest tolerances that keep the holders within what is wanted. */
public final class ToleranceAdviceText {

  private ToleranceAdviceText() {}

  public static String of(ToleranceAdvice advice, CouplingDesign design) {
    StringBuilder out = new StringBuilder(2000);
    out.append("\nCheapest tolerances for the spread wanted\n");
    if (!advice.feasible()) {
      return out.append(
              Paragraph.of(
                  "  ",
                  "Out of reach: even with every limit at a tenth of the present one the spread is"
                      + reached(advice, design)
                      + ". Use an offset table, or change the layout."))
          .toString();
    }
    TextTable table = new TextTable("lrrl", "tolerance", "now", "enough", "");
    List<ToleranceAdvice.Line> lines =
        advice.lines().stream()
            .sorted(Comparator.comparingDouble(ToleranceAdvice.Line::ratio))
            .toList();
    for (ToleranceAdvice.Line l : lines) {
      table.row(
          l.contributor().name(),
          ToleranceWords.limit(l.contributor(), l.contributor().spread().limit()),
          ToleranceWords.limit(l.contributor(), l.limit()),
          l.ratio() < 0.99 ? "tighten" : l.ratio() > 1.01 ? "open" : "keep");
    }
    return out.append(table.text())
        .append(
            Paragraph.of(
                "  ",
                FilledText.of(
                    "Cost %s against %s now, under the law cost = (present limit / limit)^p,"
                        + " between a tenth and ten times the present limits (--cost-exponent). Spread"
                        + " then:%s.",
                    Shown.plain(advice.cost(), 3),
                    Shown.plain(advice.costNow(), 3),
                    reached(advice, design))))
        .toString();
  }

  private static String reached(ToleranceAdvice advice, CouplingDesign design) {
    StringBuilder words = new StringBuilder();
    for (int k = 0; k < 3; k++) {
      words
          .append(k == 0 ? " " : ", ")
          .append(design.axes().axis(k).name())
          .append(" s = ")
          .append(Shown.micrometres(advice.reached().component(k)))
          .append(" µm");
    }
    return words.toString();
  }
}
