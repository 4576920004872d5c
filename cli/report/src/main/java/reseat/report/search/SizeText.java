package reseat.report.search;

import reseat.report.form.FigureText;
import reseat.report.check.FindingWords;
import reseat.check.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.designfile.Alteration;
import reseat.designfile.SizeWish.RankBy;
import reseat.report.check.PreloadBandText;
import reseat.report.form.Paragraph;
import reseat.report.form.Shown;
import reseat.report.form.TextTable;
import reseat.sizing.AllowedPreload;
import reseat.sizing.Candidate;
import reseat.sizing.CandidateCheck;
import reseat.sizing.Judgement;
import reseat.sizing.Merits;
import reseat.study.SeatedCheck;
import reseat.study.SizingSpace;
import reseat.study.SizingStudy;
import reseat.study.SizingStudy.Choice;
import reseat.study.SizingStudy.NearMiss;
import reseat.units.FilledText;

/** A search for the best design on one screen. */
public final class SizeText {

  private final SizingStudy study;
  private final SizingSpace space;
  private final boolean targets;

  private SizeText(SizingStudy study) {
    this.study = study;
    space = study.plan().space();
    targets = space.file().unaltered().design().map(CandidateCheck::targets).orElse(false);
  }

  /**
   * Writes the screen.
   *
   * @param study the search
   * @return text, lines ended by a line feed
   */
  public static String of(SizingStudy study) {
    return new SizeText(study).text();
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
      winner(out);
      pareto(out);
    }
    misses(out);
    out.append('\n').append(Paragraph.of("", words()));
    return out.toString();
  }

  private String verdict() {
    String of =
        study.plan().parts() > 1
            ? " (part " + study.plan().part() + " of " + study.plan().parts() + ")"
            : "";
    return (study.holding() > 0 ? "FOUND: " : "NONE: ")
        + study.holding()
        + " of "
        + study.judged()
        + " candidates"
        + of
        + " fail no check.";
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
    List<String> head = new ArrayList<>(List.of(""));
    head.addAll(heads(space));
    head.addAll(List.of("nearest limit", "bound", "N/µm", "GPa", "size mm"));
    TextTable table =
        new TextTable(
            "r" + "l".repeat(space.varied().size()) + "lrrrr", head.toArray(String[]::new));
    int place = 0;
    for (Choice c : study.ranked()) {
      place++;
      table.row(row(Integer.toString(place), c));
    }
    study.refined().ifPresent(c -> table.row(row("R", c)));
    out.append("\nRanked by ")
        .append(study.plan().wish().rankBy().word())
        .append(", the best of each kind")
        .append(study.refined().isPresent() ? "; R is refined between the values\n" : "\n")
        .append(table.text());
  }

  private String[] row(String place, Choice c) {
    List<String> cells = new ArrayList<>(List.of(place));
    cells.addAll(c.values());
    Merits m = c.judgement().merits().orElseThrow();
    cells.add(nearest(c.judgement()));
    cells.add(repeatability(m));
    cells.add(Shown.figures(m.stiffness() * 1e-6, 3));
    cells.add(Shown.figures(peak(c.check()) * 1e-9, 3));
    cells.add(FilledText.of("%.1f", 1e3 * m.size()));
    return cells.toArray(new String[0]);
  }

  private static String scatter(Choice c) {
    if (c.scatter().isEmpty()) {
      return "Most of " + SizingStudy.MOUNTS + " simulated tool changes do not seat.";
    }
    String[] axes = new String[3];
    for (int k = 0; k < 3; k++) {
      axes[k] =
          c.check().design().axes().axis(k).name()
              + " "
              + Shown.micrometres(c.scatter().get().component(k), 2);
    }
    return "Standard deviation of the tool point over "
        + SizingStudy.MOUNTS
        + " simulated tool changes, µm: "
        + String.join(", ", axes)
        + ".";
  }

  private static String nearest(Judgement j) {
    return j.check() + " " + Shown.percent(j.used()) + (j.used() > 1 ? ", warns" : "");
  }

  private String repeatability(Merits m) {
    return targets
        ? Shown.percent(m.repeatability())
        : Shown.micrometres(m.repeatability()) + " µm";
  }

  /** Peak pressure at rest. */
  public static double peak(SeatedCheck check) {
    return check.standing().contacts().stream()
        .mapToDouble(c -> c.hertz().peakPressure(c.force()))
        .max()
        .orElse(0);
  }

  private void winner(StringBuilder out) {
    Optional<Choice> winner = study.winner();
    if (winner.isEmpty()) {
      return;
    }
    Choice w = winner.get();
    out.append("\nRecommended: ")
        .append(study.refined().isPresent() ? "R" : "1")
        .append(", with these changes to the file\n");
    for (Alteration a : w.alterations()) {
      out.append("  ").append(a.key().path()).append(" = ").append(a.value()).append('\n');
    }
    if (w.alterations().isEmpty()) {
      out.append("  none: the file has it already\n");
    }
    out.append(Paragraph.of("  ", scatter(w)));
    AllowedPreload.of(w.check().design(), study.plan().wish())
        .ifPresent(b -> out.append(Paragraph.of("  ", PreloadBandText.of(b))));
  }

  private void pareto(StringBuilder out) {
    List<Candidate> all = study.pareto();
    out.append("\nNot beaten in repeatability, stiffness, pressure and size at once: ")
        .append(all.size())
        .append(" candidates; the ends are\n");
    List<String> head = new ArrayList<>(List.of("best in", "no."));
    head.addAll(heads(space));
    head.addAll(List.of("nearest limit", "bound", "N/µm", "of limit", "size mm"));
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
        cells.add(Shown.figures(m.stiffness() * 1e-6, 3));
        cells.add(Shown.percent(m.pressure()));
        cells.add(FilledText.of("%.1f", 1e3 * m.size()));
        table.row(cells.toArray(String[]::new));
      }
    }
    out.append(table.text());
  }

  private void misses(StringBuilder out) {
    if (study.misses().isEmpty()) {
      return;
    }
    out.append("\nWhy the others fail, and the one of each that misses least\n");
    for (NearMiss m : study.misses()) {
      String excess =
          Double.isInfinite(m.used())
              ? ""
              : ", over by " + Shown.figures(100 * (m.used() - 1), 2) + " %";
      out.append(
          Paragraph.of(
              "  ",
              m.check() + ": " + m.count() + " fail; " + String.join(", ", m.values()) + excess));
      for (Statement reason : m.reasons()) {
        out.append(Paragraph.of("    ", FindingWords.of(reason, FigureText.BOTH)));
      }
    }
  }

  private String words() {
    return "nearest limit: part of it that is used; one that warns is passed without failing, as that of brittle balls, and wants a decision. bound: what preload scatter and friction can do to the"
        + " tool point, added, "
        + (targets ? "as a part of the target on the worst axis" : "on the worst axis")
        + "; an upper scale, simulated scatter is less. N/µm: softest machine axis, contacts"
        + " sliding. GPa: peak pressure at rest. size: circle about the balls. A check that fails"
        + " first hides others.";
  }
}
