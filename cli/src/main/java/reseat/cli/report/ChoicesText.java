package reseat.cli.report;

import java.util.ArrayList;
import java.util.List;
import reseat.check.Finding;
import reseat.check.Severity;
import reseat.design.CouplingDesign;
import reseat.design.MachineAxes;
import reseat.designfile.SizeWish;
import reseat.remount.SelfSeating;
import reseat.sizing.AllowedPreload;
import reseat.space.Vec3;
import reseat.study.ClassicChoices;
import reseat.study.SeatedCheck;

/** The classic choices side by side. */
public final class ChoicesText {

  private ChoicesText() {}

  /**
   * Writes the tables.
   *
   * @param choices the choices
   * @param design the design as in the file
   * @return text, lines ended by a line feed
   */
  public static String of(ClassicChoices choices, CouplingDesign design) {
    MachineAxes axes = design.axes();
    List<String> names = new ArrayList<>();
    for (int k = 0; k < 3; k++) {
      names.add(axes.axis(k).name());
    }
    TextTable first =
        new TextTable(
            "llrrrrrrrl",
            "",
            "",
            "N",
            "GPa",
            "of limit",
            names.get(0),
            names.get(1),
            names.get(2),
            "seats to µ",
            "verdict");
    TextTable second =
        new TextTable(
            "llrrrrrrrrr",
            "",
            "",
            "s " + names.get(0),
            "s " + names.get(1),
            "s " + names.get(2),
            "+" + names.get(0),
            "-" + names.get(0),
            "+" + names.get(1),
            "-" + names.get(1),
            "+" + names.get(2),
            "-" + names.get(2));
    StringBuilder missing = new StringBuilder();
    String group = "";
    for (ClassicChoices.Row r : choices.rows()) {
      String shown = r.group().equals(group) ? "" : r.group();
      group = r.group();
      if (r.standing().isPresent()) {
        rows(first, second, shown, r.name(), r.standing().get());
      } else {
        missing.append(Paragraph.of("  ", r.group() + ", " + r.name() + ": " + r.reason()));
      }
    }
    return "Classic choices, all else as in the file: greatest force on a contact, peak pressure and"
        + " use\nof the nearest pressure limit, stiffness of the tool point by axis in N/µm, friction"
        + " up to\nwhich it slides home\n"
        + first.text()
        + "\nStandard deviation of the tool point over simulated tool changes by axis in µm; least"
        + " force\nat the tool point that opens a contact by direction in N (-: most mounts do not seat)\n"
        + second.text()
        + (missing.length() == 0 ? "" : "\nWithout figures\n" + missing)
        + AllowedPreload.of(design, SizeWish.NONE)
            .map(b -> "\n" + Paragraph.of("", PreloadBandText.of(b)))
            .orElse("");
  }

  private static void rows(
      TextTable first, TextTable second, String group, String name, ClassicChoices.Figures f) {
    SeatedCheck c = f.check();
    double force = c.standing().contacts().stream().mapToDouble(k -> k.force()).max().orElse(0);
    double use = 0;
    for (Finding finding : c.findings()) {
      if (finding.check().equals("contact pressure") && finding.limit() > 0) {
        use = Math.max(use, finding.value() / finding.limit());
      }
    }
    Vec3 stiff = c.frictionless().toolPoint().alongAxes();
    first.row(
        group,
        name,
        Shown.figures(force, 3),
        Shown.figures(SizeText.peak(c) * 1e-9, 3),
        use > 0 ? Shown.percent(use) : "-",
        Shown.figures(stiff.x() * 1e-6, 3),
        Shown.figures(stiff.y() * 1e-6, 3),
        Shown.figures(stiff.z() * 1e-6, 3),
        Shown.figures(SelfSeating.worstAtRest(c.waysHome()).restFriction(), 2),
        verdict(c));
    List<String> cells = new ArrayList<>(List.of(group, name));
    for (int k = 0; k < 3; k++) {
      int axis = k;
      cells.add(f.scatter().map(s -> Shown.micrometres(s.component(axis), 2)).orElse("-"));
    }
    for (double lifting : f.lifting()) {
      cells.add(Double.isInfinite(lifting) ? "never" : Shown.figures(lifting, 3));
    }
    second.row(cells.toArray(String[]::new));
  }

  private static String verdict(SeatedCheck c) {
    List<String> failing = checks(c, Severity.FAIL);
    List<String> warning = checks(c, Severity.WARNING);
    if (!failing.isEmpty()) {
      return "FAILS: " + String.join(", ", failing);
    }
    return warning.isEmpty() ? "holds" : "holds, warns: " + String.join(", ", warning);
  }

  private static List<String> checks(SeatedCheck c, Severity severity) {
    List<String> named = new ArrayList<>();
    for (Finding f : c.findings()) {
      if (f.severity() == severity && !named.contains(f.check())) {
        named.add(f.check());
      }
    }
    return named;
  }
}
