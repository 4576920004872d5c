package reseat.report.search;

import java.util.ArrayList;
import java.util.List;
import reseat.check.Finding;
import reseat.check.Judged;
import reseat.check.Measure;
import reseat.design.CheckKind;
import reseat.design.CouplingDesign;
import reseat.design.MachineAxes;
import reseat.report.check.FindingWords;
import reseat.report.check.PreloadBandText;
import reseat.report.form.FigureText;
import reseat.report.form.Paragraph;
import reseat.report.form.Screen;
import reseat.report.form.TextTable;
import reseat.search.ClassicChoices;
import reseat.space.Vec3;
import reseat.study.CheckResult;
import reseat.study.SeatedCheck;
import reseat.units.QuantityKind;

/** The classic choices side by side: what each does to the user's own design. */
public final class ChoicesText {

  private static final String UNSEATED = "-";

  private final ClassicChoices choices;
  private final CheckResult check;
  private final CouplingDesign design;
  private final Screen screen;
  private final FigureText figures;

  private ChoicesText(ClassicChoices choices, CheckResult check, Screen screen) {
    this.choices = choices;
    this.check = check;
    design = check.design();
    this.screen = screen;
    figures = screen.figures();
  }

  /**
   * Writes the tables.
   *
   * @param choices the choices
   * @param check the design as in the file, checked
   * @param file the design file as it was named, for the next step
   * @param screen how it is asked for
   * @return text, lines ended by a line feed
   */
  public static String of(ClassicChoices choices, CheckResult check, String file, Screen screen) {
    return new ChoicesText(choices, check, screen).text(file);
  }

  private String text(String file) {
    StringBuilder out = new StringBuilder(4000);
    out.append(
        Paragraph.of(
            "",
            "Classic choices, all else as in the file. Of limit: peak pressure at rest or under load."
                + " Stiff: softest machine axis, "
                + figures.column(QuantityKind.STIFFNESS).symbol()
                + ". Axes: standard deviation of the tool point over tool changes, "
                + figures.column(QuantityKind.LENGTH).symbol()
                + " (-: most do not seat). Groove: included angle."));
    TextTable table =
        new TextTable(
            "lrrrrrrl",
            "",
            "of limit",
            "stiff",
            axis(0),
            axis(1),
            axis(2),
            "seats to µ",
            "verdict");
    StringBuilder missing = new StringBuilder();
    List<String> asFiled = List.of();
    List<String> same = new ArrayList<>();
    for (ClassicChoices.Row r : choices.rows()) {
      if (r.standing().isEmpty()) {
        missing.append(Paragraph.of("  ", named(r) + ": " + FindingWords.of(r.reason(), figures)));
        continue;
      }
      List<String> cells = cells(r.standing().get());
      if (asFiled.isEmpty()) {
        asFiled = cells;
      } else if (cells.equals(asFiled) && !screen.all()) {
        same.add(named(r));
        continue;
      }
      List<String> row = new ArrayList<>(List.of(named(r)));
      row.addAll(cells);
      table.row(row.toArray(String[]::new));
    }
    out.append(table.text());
    if (!same.isEmpty()) {
      out.append(Paragraph.of("", "The same as the file: " + String.join("; ", same) + "."));
    }
    if (screen.all()) {
      forces(out);
    }
    out.append(missing.length() == 0 ? "" : "Without figures\n" + missing);
    if (check instanceof SeatedCheck seated) {
      seated
          .preload()
          .get()
          .ifPresent(b -> out.append(Paragraph.of("", PreloadBandText.of(b, figures))));
    }
    return out.append(screen.next("size", file, screen.all() ? "" : " --choices --all")).toString();
  }

  private static String named(ClassicChoices.Row r) {
    return switch (r.group()) {
      case "groove, included angle" -> "groove " + r.name();
      case "layout", "preload" -> r.name();
      default -> r.name().isEmpty() ? r.group() : r.group() + ": " + r.name();
    };
  }

  private String axis(int k) {
    return design.axes().axis(k).name();
  }

  private List<String> cells(ClassicChoices.Figures f) {
    SeatedCheck c = f.check();
    double use = 0;
    for (Finding finding : c.findings()) {
      if (finding.check() == CheckKind.CONTACT_PRESSURE && finding.limit() > 0) {
        use = Math.max(use, finding.value() / finding.limit());
      }
    }
    Vec3 stiff = c.frictionless().toolPoint().alongAxes();
    double softest = Math.min(stiff.x(), Math.min(stiff.y(), stiff.z()));
    List<String> cells = new ArrayList<>();
    cells.add(use > 0 ? FigureText.percent(use) : UNSEATED);
    cells.add(figures.number(softest, QuantityKind.STIFFNESS, 3));
    for (int k = 0; k < 3; k++) {
      int axis = k;
      cells.add(
          f.scatter()
              .map(s -> figures.number(s.component(axis), QuantityKind.LENGTH, 2))
              .orElse(UNSEATED));
    }
    cells.add(figures.of(Measure.FACTOR, c.waysHome().get(0).limitFriction(), true));
    cells.add(verdict(c));
    return cells;
  }

  /** Contact forces, pressures, stiffness by axis, and what lifts a contact off. */
  private void forces(StringBuilder out) {
    MachineAxes axes = design.axes();
    String force = figures.column(QuantityKind.FORCE).symbol();
    List<String> head = new ArrayList<>(List.of("", force));
    head.add(figures.column(QuantityKind.PRESSURE).symbol());
    for (int k = 0; k < 3; k++) {
      head.add("stiff " + axes.axis(k).name());
    }
    for (int k = 0; k < 3; k++) {
      head.add("+" + axes.axis(k).name());
      head.add("-" + axes.axis(k).name());
    }
    TextTable table = new TextTable("l" + "r".repeat(head.size() - 1), head.toArray(String[]::new));
    for (ClassicChoices.Row r : choices.rows()) {
      if (r.standing().isPresent()) {
        SeatedCheck c = r.standing().get().check();
        List<String> row = new ArrayList<>(List.of(named(r)));
        row.add(
            number(c.standing().contacts().stream().mapToDouble(k -> k.force()).max().orElse(0)));
        row.add(figures.number(SizeText.peak(c), QuantityKind.PRESSURE, 3));
        for (int k = 0; k < 3; k++) {
          double stiff = c.frictionless().toolPoint().alongAxes().component(k);
          row.add(figures.number(stiff, QuantityKind.STIFFNESS, 3));
        }
        for (double lifting : r.standing().get().lifting()) {
          row.add(Double.isInfinite(lifting) ? "never" : number(lifting));
        }
        table.row(row.toArray(String[]::new));
      }
    }
    out.append(
        Paragraph.of(
            "",
            "Greatest contact force and pressure, stiffness by axis, and the least force at the tool"
                + " point in each direction that lifts a contact off, "
                + force));
    out.append(table.text());
  }

  private String number(double newtons) {
    return figures.number(newtons, QuantityKind.FORCE, 3);
  }

  private String verdict(SeatedCheck c) {
    List<String> failing = checks(c, Judged.FAILS);
    if (!failing.isEmpty()) {
      return "FAILS: " + told(failing);
    }
    List<String> undecided = checks(c, Judged.DECIDE);
    return undecided.isEmpty() ? "holds" : "decide: " + told(undecided);
  }

  /** The worst, and how many there are besides. */
  private String told(List<String> checks) {
    return screen.all() || checks.size() == 1
        ? String.join(", ", checks)
        : checks.get(0) + " +" + (checks.size() - 1);
  }

  private static List<String> checks(SeatedCheck c, Judged judged) {
    List<String> named = new ArrayList<>();
    for (Finding f : c.findings()) {
      if (f.judged() == judged && !named.contains(f.check().words())) {
        named.add(f.check().words());
      }
    }
    return named;
  }
}
