package reseat.report.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import reseat.check.Measure;
import reseat.contact.ContactLimits;
import reseat.design.MachineAxes;
import reseat.equilibrium.CaseResponse;
import reseat.equilibrium.Equilibrium;
import reseat.equilibrium.PreloadScatter;
import reseat.report.form.FigureText;
import reseat.report.form.Paragraph;
import reseat.report.form.Screen;
import reseat.report.form.TextTable;
import reseat.report.form.UnitSystem;
import reseat.space.Vec3;
import reseat.study.SeatedCheck;
import reseat.units.QuantityFormat;
import reseat.units.Unit;
import reseat.units.UnitCatalog;

/** The parts of the check's screen that tell of contacts, stiffness and load cases. */
final class CheckScreen {

  private static final String TO = "..";

  /** Contacts told on a short screen where they differ; the rest is counted. */
  private static final int CONTACTS = 3;

  /** Place of the share of the limit among the figures of a contact. */
  private static final int SHARE = 4;

  /** Load cases told on a short screen; the rest is counted. */
  private static final int CASES = 5;

  private CheckScreen() {}

  /** Contact forces that have no state of rest. */
  static void forces(Equilibrium standing, Screen screen, StringBuilder out) {
    TextTable table = new TextTable("lr", "contact", forceUnit(screen).symbol());
    for (Equilibrium.Contact c : standing.contacts()) {
      table.row(c.line().name(), number(c.force(), forceUnit(screen)));
    }
    out.append("\nForces under preload and weight (negative: would have to pull)\n");
    out.append(table.text());
  }

  /** Contacts, stiffness, load cases; with everything also the preload scatter and weakest push. */
  static void body(SeatedCheck check, Screen screen, StringBuilder out) {
    contacts(check, screen, out);
    stiffness(check, screen, out);
    cases(check, screen, out);
    if (screen.all()) {
      preloadScatter(check, screen, out);
      closing(check, screen, out);
    }
  }

  private static Unit forceUnit(Screen screen) {
    return screen.units() == UnitSystem.INCH ? UnitCatalog.LBF : UnitCatalog.NEWTON;
  }

  private static Unit stiffnessUnit(Screen screen) {
    return screen.units() == UnitSystem.INCH ? UnitCatalog.LBF_PER_INCH : UnitCatalog.N_PER_UM;
  }

  private static Unit motionUnit(Screen screen) {
    return screen.units() == UnitSystem.INCH ? UnitCatalog.UIN : UnitCatalog.UM;
  }

  private static String number(double si, Unit unit) {
    return QuantityFormat.significantNumber(si, unit, 3);
  }

  /** Contacts that read alike are told once. */
  private static void contacts(SeatedCheck check, Screen screen, StringBuilder out) {
    boolean inch = screen.units() == UnitSystem.INCH;
    Unit small = motionUnit(screen);
    Unit patch = inch ? UnitCatalog.INCH : UnitCatalog.MM;
    Unit pressure = inch ? UnitCatalog.KSI : UnitCatalog.GPA;
    TextTable table =
        new TextTable(
            "lrrrrrrr",
            dented(check) ? "contacts after work-in" : "contacts at rest",
            forceUnit(screen).symbol(),
            "sink " + small.symbol(),
            "patch " + patch.symbol(),
            "peak " + pressure.symbol(),
            "of limit",
            "stiff " + stiffnessUnit(screen).symbol(),
            "angle");
    List<List<String>> rows = new ArrayList<>();
    List<List<String>> names = new ArrayList<>();
    List<Equilibrium.Contact> contacts = check.standing().contacts();
    for (int i = 0; i < contacts.size(); i++) {
      Equilibrium.Contact c = contacts.get(i);
      List<String> row =
          List.of(
              number(c.force(), forceUnit(screen)),
              number(c.approach(), small),
              QuantityFormat.significantNumber(2 * c.semiMajor(), patch, 2)
                  + " x "
                  + QuantityFormat.significantNumber(2 * c.semiMinor(), patch, 2),
              c.dent().isPresent() ? "dented" : number(c.peakPressure(), pressure),
              partOfLimit(c.peakPressure(), check.limits().get(i)),
              number(c.normalStiffness(), stiffnessUnit(screen)),
              QuantityFormat.significantNumber(c.angle(), UnitCatalog.DEGREE, 3) + "°");
      int same = screen.all() ? -1 : rows.indexOf(row);
      if (same < 0) {
        rows.add(row);
        names.add(new ArrayList<>(List.of(c.line().name())));
      } else {
        names.get(same).add(c.line().name());
      }
    }
    List<Integer> told = worst(rows, screen.all() ? rows.size() : CONTACTS);
    for (int i : told) {
      List<String> cells = new ArrayList<>(List.of(joined(names.get(i))));
      cells.addAll(rows.get(i));
      table.row(cells.toArray(String[]::new));
    }
    out.append(table.text());
    if (told.size() < rows.size()) {
      out.append("  and ")
          .append(rows.size() - told.size())
          .append(" more that bear less (--all)\n");
    }
  }

  private static boolean dented(SeatedCheck check) {
    return check.standing().contacts().stream().anyMatch(c -> c.dent().isPresent());
  }

  /** Places of the rows with the greatest share of their limit, in their own order. */
  private static List<Integer> worst(List<List<String>> rows, int most) {
    List<Integer> places = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      places.add(i);
    }
    places.sort(Comparator.comparingDouble(i -> -share(rows.get(i).get(SHARE))));
    List<Integer> told = new ArrayList<>(places.subList(0, Math.min(most, places.size())));
    told.sort(Comparator.naturalOrder());
    return told;
  }

  /** A share as it stands in its cell; what is unknown comes first. */
  private static double share(String cell) {
    return cell.endsWith(" %")
        ? Double.parseDouble(cell.substring(0, cell.length() - 2).replace("over ", ""))
        : Double.POSITIVE_INFINITY;
  }

  /** Names of contacts, both flanks of a seat as the seat. */
  private static String joined(List<String> names) {
    List<String> seats = new ArrayList<>();
    for (String name : names) {
      int bracket = name.indexOf(" (");
      String seat = bracket < 0 ? name : name.substring(0, bracket);
      boolean alone = names.stream().filter(n -> n.startsWith(seat + " (")).count() < 2;
      String told = alone ? name : seat;
      if (!seats.contains(told)) {
        seats.add(told);
      }
    }
    return String.join(", ", seats);
  }

  private static String partOfLimit(double peak, ContactLimits limits) {
    return limits.governing().isEmpty()
        ? "unknown"
        : FigureText.percent(peak / limits.governing().get().peakPressure());
  }

  private static void stiffness(SeatedCheck check, Screen screen, StringBuilder out) {
    MachineAxes axes = check.design().axes();
    Unit unit = stiffnessUnit(screen);
    List<String> told = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      told.add(
          axes.axis(i).name()
              + " "
              + number(check.frictionless().toolPoint().alongAxes().component(i), unit)
              + TO
              + number(check.sticking().toolPoint().alongAxes().component(i), unit));
    }
    String frequency = "";
    List<Double> free = check.frictionless().frequencies().hertz();
    if (!free.isEmpty()) {
      frequency =
          "; first frequency "
              + number(free.get(0), UnitCatalog.HERTZ)
              + TO
              + number(check.sticking().frequencies().hertz().get(0), UnitCatalog.HERTZ)
              + " Hz"
              + (check.frictionless().frequencies().withInertia()
                  ? ""
                  : " (mass taken as a point)");
    }
    out.append(
        Paragraph.of(
            "",
            "Stiffness at the tool point"
                + (dented(check) ? " after work-in, " : ", ")
                + unit.symbol()
                + ", sliding..sticking contacts: "
                + String.join(", ", told)
                + frequency
                + "."));
  }

  private static void cases(SeatedCheck check, Screen screen, StringBuilder out) {
    if (check.cases().isEmpty()) {
      return;
    }
    MachineAxes axes = check.design().axes();
    Unit unit = motionUnit(screen);
    TextTable table =
        new TextTable(
            "lrrrrl",
            "tool point moves, " + unit.symbol(),
            axes.first().name(),
            axes.second().name(),
            axes.third().name(),
            "lifts at",
            "first to lift");
    int told = 0;
    for (CaseResponse r : check.cases()) {
      if (!screen.all() && told == CASES) {
        break;
      }
      told++;
      Vec3 free = axes.of(r.motion().shift());
      Vec3 stuck = axes.of(r.stickingMotion().shift());
      double factor = r.liftOff().factor();
      table.row(
          r.loadCase().name(),
          r.liftsOff() ? "lifts off" : between(stuck.x(), free.x(), unit),
          r.liftsOff() ? "" : between(stuck.y(), free.y(), unit),
          r.liftsOff() ? "" : between(stuck.z(), free.z(), unit),
          Double.isInfinite(factor)
              ? "never"
              : screen.figures().of(Measure.FACTOR, factor, true) + " ×",
          r.liftOff().contact());
    }
    out.append(table.text());
    int left = check.cases().size() - told;
    if (left > 0) {
      out.append("  and ").append(left).append(" more load cases (--all)\n");
    }
  }

  private static void preloadScatter(SeatedCheck check, Screen screen, StringBuilder out) {
    MachineAxes axes = check.design().axes();
    Unit unit = motionUnit(screen);
    TextTable table =
        new TextTable(
            "lrrr",
            "preload scatter moves it, " + unit.symbol(),
            axes.first().name(),
            axes.second().name(),
            axes.third().name());
    for (PreloadScatter p : check.preloadScatter()) {
      Vec3 more = axes.of(p.stronger().shift());
      Vec3 less = axes.of(p.weaker().shift());
      table.row(
          p.preload().name() + " ±" + FigureText.percent(p.preload().forceSpread().limit()),
          between(more.x(), less.x(), unit),
          between(more.y(), less.y(), unit),
          between(more.z(), less.z(), unit));
    }
    if (!check.preloadScatter().isEmpty()) {
      out.append(table.text());
    }
  }

  private static void closing(SeatedCheck check, Screen screen, StringBuilder out) {
    Vec3 weakest = check.design().axes().of(check.weakest().direction());
    MachineAxes axes = check.design().axes();
    out.append(
        Paragraph.of(
            "",
            "Least force at the tool point that lifts a contact off: "
                + screen.figures().of(Measure.FORCE, check.weakest().force())
                + " along "
                + axes.first().name()
                + " "
                + part(weakest.x())
                + ", "
                + axes.second().name()
                + " "
                + part(weakest.y())
                + ", "
                + axes.third().name()
                + " "
                + part(weakest.z())
                + "; "
                + check.weakest().contact()
                + " lifts."));
    out.append(
        Paragraph.of(
            "",
            "Model: rigid bodies but for contacts and ball mountings, Hertz contacts, no friction in"
                + " the forces."));
  }

  private static String between(double stuck, double free, Unit unit) {
    String one = motion(stuck, unit);
    String other = motion(free, unit);
    return one.equals(other) ? one : one + TO + other;
  }

  private static String motion(double metres, Unit unit) {
    String text = QuantityFormat.fixedNumber(metres, unit, unit.equals(UnitCatalog.UM) ? 2 : 1);
    return text.matches("-0\\.0+") ? text.substring(1) : text;
  }

  private static String part(double component) {
    String text = QuantityFormat.fixedNumber(component / 100, UnitCatalog.PERCENT, 2);
    return text.startsWith("-") ? text : "+" + text;
  }
}
