package reseat.report.remount;

import java.util.Locale;
import reseat.check.Finding;
import reseat.check.Said;
import reseat.design.CheckKind;
import reseat.design.CouplingDesign;
import reseat.design.Coverage;
import reseat.numerics.VectorScatter;
import reseat.remount.RemountScatter;
import reseat.report.check.FindingWords;
import reseat.report.check.VerdictWords;
import reseat.report.form.FigureText;
import reseat.report.form.PageNumbers;
import reseat.report.form.Paragraph;
import reseat.report.form.Screen;
import reseat.report.form.TextTable;
import reseat.space.Vec3;
import reseat.study.RemountStudy;
import reseat.units.FilledText;

/** Simulated tool changes on one screen: the verdict, the scatter, its causes, will it seat. */
public final class RemountText {

  /** Mounts from which a standard deviation is known well enough for a second figure. */
  private static final long TWO_FIGURES_FROM = 201;

  private final RemountStudy study;
  private final Screen screen;
  private final CouplingDesign design;
  private final RemountScatter scatter;
  private final int figures;

  private RemountText(RemountStudy study, Screen screen) {
    this.study = study;
    this.screen = screen;
    design = study.design();
    scatter = study.scatter();
    figures = figures(scatter.seated());
  }

  /** The figures that a sample deserves: two if its scatter is known within 5 %, else one. */
  public static int figures(long mounts) {
    return mounts < TWO_FIGURES_FROM ? 1 : 2;
  }

  /**
   * Writes the result.
   *
   * @param study what came of the simulation
   * @param file the design file as it was named, for the next step
   * @param screen how it is asked for
   * @return text of whole lines
   */
  public static String of(RemountStudy study, String file, Screen screen) {
    return new RemountText(study, screen).text(file);
  }

  private String text(String file) {
    StringBuilder out = new StringBuilder(6000);
    if (!design.title().isEmpty()) {
      out.append(Paragraph.of("", design.title()));
    }
    out.append(Paragraph.of("", VerdictWords.line(study.check().findings())));
    out.append(Paragraph.of("", simulated()));
    failures(out);
    if (study.tellsScatter()) {
      repeatability(out);
      if (screen.all()) {
        place(out);
        rotation(out);
      }
      after(out);
    }
    if (study.tellsScatter()) {
      study.causes().ifPresent(c -> out.append(RemountCauseText.of(design, c, screen)));
    }
    out.append(SeatingText.of(study, screen));
    if (study.tellsScatter() && screen.all()) {
      bounds(out);
    }
    out.append(
        Paragraph.of(
            "",
            screen.all()
                ? "Not in the model: partial slip inside a contact patch, wear and wear-in, creep of"
                    + " bonds, impact, vibration, bending of plate and holder, dirt beyond the film"
                    + " stated. A remount test shows what these add."
                : "Not in the model: wear, creep, impact, bending, dirt beyond the film stated. A"
                    + " remount test shows what these add."));
    out.append(screen.next("check", Screen.word(file), ""));
    return out.toString();
  }

  private String simulated() {
    long all = scatter.plan().mounts();
    return all
        + " tool changes simulated (seed "
        + scatter.plan().seed()
        + "): "
        + (scatter.failed() == 0
            ? "all seat."
            : scatter.failed()
                + " do not seat ("
                + percent(scatter.failed(), all)
                + ")"
                + (study.tellsScatter()
                    ? "."
                    : "; no scatter is told of a coupling that hangs up."))
        + (workedIn() ? " Contacts dent: these are changes of the worked-in coupling." : "");
  }

  private boolean workedIn() {
    return study.check().findings().stream().anyMatch(f -> f.said().key() == Said.DENTED);
  }

  private static String percent(long part, long whole) {
    return PageNumbers.figures(100.0 * part / whole, 2) + " %";
  }

  private void failures(StringBuilder out) {
    if (scatter.failures().isEmpty()) {
      return;
    }
    out.append("\nTool changes that do not seat, not in the figures below\n");
    for (RemountScatter.Failure f : scatter.failures()) {
      out.append(Paragraph.of("  ", f.count() + ": the holder " + f.words()));
    }
    for (Finding f : study.check().findings()) {
      if (f.check() == CheckKind.TOOL_CHANGE_SEATING && !f.advice().isEmpty()) {
        out.append(Paragraph.of("  ", FindingWords.of(f.advice(), screen.figures())));
      }
    }
  }

  private void repeatability(StringBuilder out) {
    VectorScatter tool = scatter.toolPoint();
    Coverage coverage = design.targets().coverage();
    double largest = largest(tool.covered());
    FigureText f = screen.figures();
    String unit = f.scatterUnit(largest);
    TextTable table =
        new TextTable(
            "lrrrr",
            "tool point, " + unit,
            "within ±, " + coverage.written(),
            "s",
            "target ±",
            "mean shift");
    for (int k = 0; k < 3; k++) {
      table.row(
          axis(k),
          f.scatterNumber(tool.covered().component(k), largest),
          f.scatterNumber(tool.deviation().component(k), largest),
          Double.isInfinite(target(k)) ? "-" : f.scatterNumber(target(k), largest),
          f.scatterNumber(known(tool, k), largest));
    }
    out.append(table.text());
    out.append(Paragraph.of("  ", capital(coverage.words()) + ". " + sampleWords()));
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  private String sampleWords() {
    double part = 1.96 / Math.sqrt(2.0 * (scatter.seated() - 1));
    return FilledText.of(
        "With %d changes s is known to about %s %%.",
        scatter.seated(), PageNumbers.plain(100 * part, 2));
  }

  private void place(StringBuilder out) {
    VectorScatter tool = scatter.toolPoint();
    double largest = largest(tool.range());
    FigureText f = screen.figures();
    TextTable table =
        new TextTable(
            "lrrrr",
            "place of the tool point, " + f.scatterUnit(largest),
            "mean shift",
            "range",
            "least",
            "greatest");
    for (int k = 0; k < 3; k++) {
      table.row(
          axis(k),
          f.scatterNumber(known(tool, k), largest),
          f.scatterNumber(tool.range().component(k), largest),
          f.scatterNumber(tool.least().component(k), largest),
          f.scatterNumber(tool.greatest().component(k), largest));
    }
    out.append(table.text());
    out.append(Paragraph.of("  ", "Against rest without friction under the stated preload."));
  }

  private static double largest(Vec3 v) {
    return Math.max(Math.abs(v.x()), Math.max(Math.abs(v.y()), Math.abs(v.z())));
  }

  /** A mean, or zero where the sample does not tell it from zero (two standard errors). */
  private static double known(VectorScatter v, int axis) {
    double mean = v.mean().component(axis);
    double error = v.deviation().component(axis) / Math.sqrt((double) v.count());
    return Math.abs(mean) < 2 * error ? 0 : mean;
  }

  private void rotation(StringBuilder out) {
    VectorScatter turn = scatter.rotation();
    TextTable table = new TextTable("lrrrr", "about", "mean", "± 95 %", "s", "range");
    for (int k = 0; k < 3; k++) {
      table.row(
          axis(k),
          PageNumbers.figures(1e6 * known(turn, k), figures),
          microradians(turn.band(), k),
          microradians(turn.deviation(), k),
          microradians(turn.range(), k));
    }
    out.append("\nRotation of the holder, µrad\n").append(table.text());
  }

  private String microradians(Vec3 v, int axis) {
    return PageNumbers.figures(1e6 * v.component(axis), figures);
  }

  private void after(StringBuilder out) {
    if (scatter.afterCut().count() > 1) {
      out.append(further("after " + scatter.plan().cutCase(), scatter.afterCut()));
    }
    if (scatter.afterReclamp().count() > 1) {
      out.append(further("further after clamping again", scatter.afterReclamp()));
    }
  }

  private String further(String when, VectorScatter v) {
    double largest = largest(v.range());
    FigureText f = screen.figures();
    TextTable table =
        new TextTable(
            "lrrr", when + ", " + f.scatterUnit(largest), "off by", "± 95 % about it", "range");
    for (int k = 0; k < 3; k++) {
      table.row(
          axis(k),
          f.scatterNumber(known(v, k), largest),
          f.scatterNumber(v.band().component(k), largest),
          f.scatterNumber(v.range().component(k), largest));
    }
    return table.text();
  }

  private void bounds(StringBuilder out) {
    Vec3 bound = study.bound().toolPoint();
    double largest = largest(bound);
    FigureText f = screen.figures();
    TextTable table =
        new TextTable(
            "lrr", "± tool point, " + f.scatterUnit(largest), "bound from friction", "simulated");
    for (int k = 0; k < 3; k++) {
      table.row(
          axis(k),
          f.scatterNumber(bound.component(k), largest),
          f.scatterNumber(scatter.toolPoint().band().component(k), largest));
    }
    out.append("\nRule-of-thumb upper bound from friction, for comparison\n")
        .append(table.text())
        .append(
            Paragraph.of(
                "  ",
                "Bound: friction force over normal stiffness, at most "
                    + f.length(study.bound().perContact())
                    + " at a contact, carried to the tool point, root sum square. A contact slips"
                    + " fully from "
                    + f.length(study.bound().fullSlip())
                    + ". The simulation also counts preload, temperature and film."));
  }

  private String axis(int k) {
    return design.axes().axis(k).name();
  }

  private double target(int k) {
    return design.targets().repeatability().limit(k);
  }
}
