package reseat.report.interchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import reseat.design.CouplingDesign;
import reseat.interchange.ToleranceAdvice;
import reseat.report.form.PageNumbers;
import reseat.report.form.Paragraph;
import reseat.report.form.Screen;
import reseat.report.form.TextTable;
import reseat.units.FilledText;
import reseat.units.QuantityKind;

/** The cheapest tolerances that keep the holders within what is wanted. */
public final class ToleranceAdviceText {

  /** Rows on a short screen. */
  private static final int ROWS = 3;

  private final ToleranceAdvice advice;
  private final CouplingDesign design;
  private final Screen screen;

  private ToleranceAdviceText(ToleranceAdvice advice, CouplingDesign design, Screen screen) {
    this.advice = advice;
    this.design = design;
    this.screen = screen;
  }

  /**
   * Tells the tolerances: those to tighten first, then those to open most.
   *
   * @param advice the tolerances
   * @param design the design, for the names of its axes
   * @param screen how it is asked for
   * @return lines with their ends
   */
  public static String of(ToleranceAdvice advice, CouplingDesign design, Screen screen) {
    return new ToleranceAdviceText(advice, design, screen).text();
  }

  private String text() {
    StringBuilder out = new StringBuilder(2000);
    if (!advice.feasible()) {
      return Paragraph.of(
          "",
          "Tolerances alone will not do: with every limit at a tenth of the present one the spread is"
              + " still"
              + reached()
              + ". Use an offset table, or change the layout.");
    }
    TextTable table = new TextTable("lrrl", "cheapest tolerances for it", "now", "enough", "");
    List<ToleranceAdvice.Line> lines =
        advice.lines().stream()
            .sorted(Comparator.comparingDouble(ToleranceAdvice.Line::ratio))
            .toList();
    int told = screen.all() ? lines.size() : Math.min(ROWS, lines.size());
    for (ToleranceAdvice.Line l : lines.subList(0, told)) {
      table.row(
          ToleranceWords.name(l.contributor(), screen.units()),
          ToleranceWords.limit(l.contributor(), l.contributor().spread().limit(), screen.units()),
          ToleranceWords.limit(l.contributor(), l.limit(), screen.units()),
          word(l));
    }
    out.append(table.text());
    if (told < lines.size()) {
      out.append(rest(lines.subList(told, lines.size())));
    }
    return out.append(
            Paragraph.of(
                "  ",
                FilledText.of(
                    "Cost: %s times that of now (--cost-exponent). Spread then:%s.",
                    PageNumbers.plain(advice.cost() / advice.costNow(), 2), reached())))
        .toString();
  }

  private static String word(ToleranceAdvice.Line l) {
    return l.ratio() < 0.99 ? "tighten" : l.ratio() > 1.01 ? "open" : "keep";
  }

  private static String rest(List<ToleranceAdvice.Line> lines) {
    List<String> counted = new ArrayList<>();
    for (String word : List.of("tighten", "keep", "open")) {
      long n = lines.stream().filter(l -> word(l).equals(word)).count();
      if (n > 0) {
        counted.add(n + " to " + word);
      }
    }
    return "  and " + String.join(", ", counted) + " (--all)\n";
  }

  private String reached() {
    String unit = screen.figures().column(QuantityKind.LENGTH).symbol();
    StringBuilder words = new StringBuilder();
    for (int k = 0; k < 3; k++) {
      words
          .append(k == 0 ? " s " : ", ")
          .append(design.axes().axis(k).name())
          .append(' ')
          .append(screen.figures().number(advice.reached().component(k), QuantityKind.LENGTH, 2));
    }
    return words.append(' ').append(unit).toString();
  }
}
