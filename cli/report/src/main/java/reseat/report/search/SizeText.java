package reseat.report.search;

import java.util.ArrayList;
import java.util.List;
import reseat.check.Statement;
import reseat.designfile.Alteration;
import reseat.designfile.SizeTargets.RankBy;
import reseat.report.check.DecidingFigures;
import reseat.report.check.FindingWords;
import reseat.report.check.PreloadBandText;
import reseat.report.form.FigureText;
import reseat.report.form.PageNumbers;
import reseat.report.form.Paragraph;
import reseat.report.form.Screen;
import reseat.report.form.TextTable;
import reseat.report.form.UnitSystem;
import reseat.search.Candidate;
import reseat.search.CandidateCheck;
import reseat.search.Judgement;
import reseat.search.Merits;
import reseat.search.SizingSpace;
import reseat.search.SizingStudy;
import reseat.search.SizingStudy.Choice;
import reseat.search.SizingStudy.NearMiss;
import reseat.study.SeatedCheck;
import reseat.units.QuantityFormat;
import reseat.units.QuantityKind;
import reseat.units.Unit;
import reseat.units.UnitCatalog;

/**
 * A search for the best design on one screen: how many designs hold, the best of them, what to
 * change in the file, its figures beside their limits, why others fail; on request everything.
 */
public final class SizeText {

  /** Ranked designs on a short screen. */
  private static final int RANKED = 3;

  /** Closest misses on a short screen where no design holds. */
  private static final int MISSES = 4;

  private final SizingStudy study;
  private final String file;
  private final Screen screen;
  private final FigureText figures;
  private final SizingSpace space;
  private final boolean targets;

  private SizeText(SizingStudy study, String file, Screen screen) {
    this.study = study;
    this.file = file;
    this.screen = screen;
    figures = screen.figures();
    space = study.plan().space();
    targets = space.file().unaltered().design().map(CandidateCheck::targets).orElse(false);
  }

  /**
   * Writes the screen.
   *
   * @param study the search
   * @param file the design file as it was named, for the next step
   * @param screen how it is asked for
   * @return text, lines ended by a line feed
   */
  public static String of(SizingStudy study, String file, Screen screen) {
    return new SizeText(study, file, screen).text();
  }

  private String text() {
    StringBuilder out = new StringBuilder(4000);
    space
        .file()
        .unaltered()
        .design()
        .filter(d -> !d.title().isEmpty())
        .ifPresent(d -> out.append(Paragraph.of("", d.title())));
    out.append(Paragraph.of("", verdict()));
    if (!study.ranked().isEmpty()) {
      ranking(out);
      study.winner().ifPresent(w -> winner(w, out));
      pareto(out);
    }
    misses(out);
    if (!study.ranked().isEmpty()) {
      out.append(Paragraph.of("", words()));
    }
    out.append(
        study.winner().isPresent()
            ? screen.next("size", file, " --winner better.toml")
            : screen.next("size", file, " --all"));
    return out.toString();
  }

  private String verdict() {
    String of =
        study.plan().parts() > 1
            ? " (part " + study.plan().part() + " of " + study.plan().parts() + ")"
            : "";
    String counts =
        study.holding()
            + " of "
            + study.judged()
            + (study.judged() == 1 ? " design" : " designs")
            + of
            + (study.judged() == 1 || study.holding() == 1 ? " passes" : " pass")
            + " every check"
            + (study.undecided() == 0
                ? "."
                : ", "
                    + study.undecided()
                    + (study.undecided() == 1 ? " needs a decision." : " need a decision."));
    return switch (study.verdict()) {
      case HOLDS -> "FOUND: " + counts;
      case UNDECIDED -> "NEEDS A DECISION: " + counts;
      case FAILS ->
          "NONE: each of the " + study.judged() + " designs" + of + " fails at least one check.";
    };
  }

  /** Last name of each key without what its values tell anyway. */
  public static List<String> heads(SizingSpace space) {
    List<String> heads = new ArrayList<>();
    for (SizingSpace.Varied v : space.varied()) {
      String[] steps = v.axis().key().path().split("\\.", -1);
      String name = steps[steps.length - 1].replace('_', ' ');
      String above = steps.length > 1 ? steps[steps.length - 2].replaceAll("\\[.*]", "") + " " : "";
      heads.add(
          switch (name) {
            case "diameter" -> above.strip();
            case "material", "kind", "scatter" -> above + name;
            default -> name.replaceAll(" (diameter|angle|at)$", "");
          });
    }
    return heads;
  }

  private void ranking(StringBuilder out) {
    int told = screen.all() ? study.ranked().size() : Math.min(RANKED, study.ranked().size());
    TextTable table = ranking(told, true);
    if (!screen.all() && table.width() > Paragraph.WIDTH) {
      table = ranking(told, false);
    }
    out.append(table.text());
  }

  private TextTable ranking(int told, boolean wide) {
    List<String> head = new ArrayList<>(List.of("best"));
    head.addAll(heads(space));
    head.addAll(List.of("nearest limit", "scatter"));
    if (wide) {
      head.add(figures.column(QuantityKind.STIFFNESS).symbol());
      head.add(figures.column(QuantityKind.PRESSURE).symbol());
      head.add("size " + dimension().symbol());
    }
    TextTable table =
        new TextTable(
            "r" + "l".repeat(space.varied().size()) + (wide ? "lrrrr" : "lr"),
            head.toArray(String[]::new));
    study.refined().ifPresent(c -> table.row(row("R", c, wide)));
    for (int i = 0; i < told; i++) {
      table.row(row(Integer.toString(i + 1), study.ranked().get(i), wide));
    }
    return table;
  }

  private String[] row(String place, Choice c, boolean wide) {
    List<String> cells = new ArrayList<>(List.of(place));
    cells.addAll(c.values());
    Merits m = c.judgement().merits().orElseThrow();
    cells.add(nearest(c.judgement()));
    cells.add(repeatability(m));
    if (wide) {
      cells.add(figures.number(m.stiffness(), QuantityKind.STIFFNESS, 3));
      cells.add(figures.number(peak(c.check()), QuantityKind.PRESSURE, 3));
      cells.add(size(m));
    }
    return cells.toArray(String[]::new);
  }

  private Unit dimension() {
    return screen.units() == UnitSystem.INCH ? UnitCatalog.INCH : UnitCatalog.MM;
  }

  private String size(Merits m) {
    return QuantityFormat.fixedNumber(
        m.size(), dimension(), screen.units() == UnitSystem.INCH ? 2 : 1);
  }

  private static String nearest(Judgement j) {
    return j.check() + " " + FigureText.percent(j.used()) + (j.used() > 1 ? ", decide" : "");
  }

  private String repeatability(Merits m) {
    return targets ? FigureText.percent(m.repeatability()) : figures.length(m.repeatability());
  }

  /** Peak pressure at rest. */
  public static double peak(SeatedCheck check) {
    return check.standing().contacts().stream()
        .mapToDouble(c -> c.hertz().peakPressure(c.force()))
        .max()
        .orElse(0);
  }

  private void winner(Choice w, StringBuilder out) {
    String which = study.refined().isPresent() ? "R (refined between the values)" : "1";
    if (w.alterations().isEmpty()) {
      out.append(Paragraph.of("", "Take " + which + ": the file has it already."));
    } else if (screen.all()) {
      out.append("Take ").append(which).append("; change in the file:\n");
      for (Alteration a : w.alterations()) {
        out.append("  ").append(a.key().path()).append(" = ").append(a.value()).append('\n');
      }
    } else {
      List<String> changes = new ArrayList<>();
      for (Alteration a : w.alterations()) {
        changes.add(a.key().path() + " = " + a.value());
      }
      out.append(
          Paragraph.of(
              "", "Take " + which + "; change in the file: " + String.join("; ", changes)));
    }
    TextTable table = new TextTable("llll", "", "", "", "");
    for (DecidingFigures.Figure f : DecidingFigures.of(w.check(), figures)) {
      table.row(f.name(), f.value(), f.limit(), f.where());
    }
    out.append(table.text());
    w.check()
        .preload()
        .get()
        .ifPresent(b -> out.append(Paragraph.of("", PreloadBandText.of(b, figures))));
  }

  private void pareto(StringBuilder out) {
    List<Candidate> all = study.pareto();
    if (all.isEmpty()) {
      return;
    }
    String count = all.size() == 1 ? "1 design" : all.size() + " designs";
    if (!screen.all()) {
      out.append(
          Paragraph.of(
              "",
              "Best trade-offs of repeatability, stiffness, pressure and size: "
                  + count
                  + " (--all)."));
      return;
    }
    out.append("Best trade-offs: ").append(count).append("; best in each\n");
    List<String> head = new ArrayList<>(List.of("best in", "no."));
    head.addAll(heads(space));
    head.addAll(
        List.of(
            "nearest limit",
            "scatter",
            figures.column(QuantityKind.STIFFNESS).symbol(),
            "of limit",
            "size " + dimension().symbol()));
    TextTable table =
        new TextTable(
            "lr" + "l".repeat(space.varied().size()) + "lrrrr", head.toArray(String[]::new));
    for (RankBy rule : RankBy.values()) {
      if (rule != RankBy.MARGIN) {
        Candidate best = all.get(0);
        for (Candidate c : all) {
          if (c.judgement().score(rule) < best.judgement().score(rule)) {
            best = c;
          }
        }
        List<String> cells = new ArrayList<>(List.of(rule.word(), Long.toString(best.number())));
        cells.addAll(space.values(best.number()));
        Merits m = best.judgement().merits().orElseThrow();
        cells.add(nearest(best.judgement()));
        cells.add(repeatability(m));
        cells.add(figures.number(m.stiffness(), QuantityKind.STIFFNESS, 3));
        cells.add(FigureText.percent(m.pressure()));
        cells.add(size(m));
        table.row(cells.toArray(String[]::new));
      }
    }
    out.append(table.text());
  }

  private void misses(StringBuilder out) {
    if (study.misses().isEmpty()) {
      return;
    }
    if (!screen.all() && !study.ranked().isEmpty()) {
      List<String> counts = new ArrayList<>();
      study.misses().forEach(m -> counts.add(m.check() + " " + m.count()));
      out.append(
          Paragraph.of(
              "", "Others fail: " + String.join(", ", counts) + " (closest misses: --all)."));
      return;
    }
    out.append("Why others fail, and the closest miss of each\n");
    int told = screen.all() ? study.misses().size() : Math.min(MISSES, study.misses().size());
    for (NearMiss m : study.misses().subList(0, told)) {
      String excess =
          Double.isInfinite(m.used())
              ? ""
              : ", over by " + PageNumbers.figures(100 * (m.used() - 1), 2) + " %";
      out.append(
          Paragraph.of(
              "  ",
              m.check() + ": " + m.count() + " fail; " + String.join(", ", m.values()) + excess));
      List<Statement> reasons =
          screen.all() ? m.reasons() : m.reasons().subList(0, Math.min(1, m.reasons().size()));
      for (Statement reason : reasons) {
        out.append(Paragraph.of("    ", FindingWords.of(reason, figures)));
      }
    }
  }

  private String words() {
    String scatter =
        "Scatter: upper bound of what preload and friction do to the tool point"
            + (targets ? ", as a share of the target, on the worst axis." : " on the worst axis.");
    return screen.all()
        ? scatter
            + " Nearest limit: share of it that is used; \"decide\" is over a soft limit. Stiffness:"
            + " softest machine axis, contacts sliding. Pressure: peak at rest. Size: circle about the"
            + " balls. A check that fails first hides others."
        : scatter;
  }
}
