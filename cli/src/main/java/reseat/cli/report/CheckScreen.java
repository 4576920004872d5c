package reseat.cli.report;

import java.util.List;
import reseat.check.Measure;
import reseat.contact.ContactLimits;
import reseat.design.MachineAxes;
import reseat.equilibrium.CaseResponse;
import reseat.equilibrium.Equilibrium;
import reseat.equilibrium.PreloadScatter;
import reseat.remount.SelfSeating;
import reseat.space.Vec3;
import reseat.study.SeatedCheck;
import reseat.units.QuantityFormat;
import reseat.units.UnitCatalog;

/** The tables of a checked design. */
final class CheckScreen {

  /** Numbers between two bounds. */
  private static final String TO = "..";

  private CheckScreen() {}

  /** Contact forces that have no state of rest. */
  static void forces(Equilibrium standing, StringBuilder out) {
    TextTable table = new TextTable("lrr", "contact", "N", "lbf");
    for (Equilibrium.Contact c : standing.contacts()) {
      table.row(c.line().name(), newtons(c.force()), pounds(c.force()));
    }
    out.append("\nForces under preload and weight (negative: would have to pull)\n");
    out.append(table.text());
  }

  static void contacts(SeatedCheck check, StringBuilder out) {
    TextTable table =
        new TextTable(
            "lrrrrrrr",
            "contact",
            "N",
            "lbf",
            "sink µm",
            "patch mm",
            "peak GPa",
            "of limit",
            "stiff N/µm");
    List<Equilibrium.Contact> contacts = check.standing().contacts();
    for (int i = 0; i < contacts.size(); i++) {
      Equilibrium.Contact c = contacts.get(i);
      double force = c.force();
      double peak = c.peakPressure();
      table.row(
          c.line().name(),
          newtons(force),
          pounds(force),
          QuantityFormat.fixedNumber(c.approach(), UnitCatalog.UM, 2),
          QuantityFormat.fixedNumber(2 * c.hertz().semiMajor(force), UnitCatalog.MM, 2)
              + " x "
              + QuantityFormat.fixedNumber(2 * c.hertz().semiMinor(force), UnitCatalog.MM, 2),
          QuantityFormat.significantNumber(peak, UnitCatalog.GPA, 3),
          partOfLimit(peak, check.limits().get(i)),
          QuantityFormat.significantNumber(c.normalStiffness(), UnitCatalog.N_PER_UM, 3));
    }
    out.append("\nContacts at rest, under preload and weight\n").append(table.text());
  }

  private static String partOfLimit(double peak, ContactLimits limits) {
    return limits.governing().isEmpty()
        ? "unknown"
        : Measure.SHARE.show(peak / limits.governing().get().peakPressure());
  }

  static void stiffness(SeatedCheck check, StringBuilder out) {
    TextTable table = new TextTable("lrrr", "axis", "free N/µm", "stuck N/µm", "free lbf/in");
    MachineAxes axes = check.design().axes();
    for (int i = 0; i < 3; i++) {
      double free = check.frictionless().toolPoint().alongAxes().component(i);
      double stuck = check.sticking().toolPoint().alongAxes().component(i);
      table.row(
          axes.axis(i).name(),
          QuantityFormat.significantNumber(free, UnitCatalog.N_PER_UM, 3),
          QuantityFormat.significantNumber(stuck, UnitCatalog.N_PER_UM, 3),
          QuantityFormat.significantNumber(free, UnitCatalog.LBF_PER_INCH, 3));
    }
    out.append("\nStiffness at the tool point: contacts slide freely, and stick\n");
    out.append(table.text());
    List<Double> free = check.frictionless().frequencies().hertz();
    if (!free.isEmpty()) {
      List<Double> stuck = check.sticking().frequencies().hertz();
      out.append("  first natural frequency ")
          .append(QuantityFormat.significantNumber(free.get(0), UnitCatalog.HERTZ, 3))
          .append(TO)
          .append(QuantityFormat.significant(stuck.get(0), UnitCatalog.HERTZ, 3))
          .append(
              check.frictionless().frequencies().withInertia()
                  ? " (post and machine rigid)\n"
                  : " (mass gathered in its centre; post and machine rigid)\n");
    }
  }

  static void cases(SeatedCheck check, StringBuilder out) {
    MachineAxes axes = check.design().axes();
    TextTable table =
        new TextTable(
            "lrrrrl",
            "load case",
            axes.first().name(),
            axes.second().name(),
            axes.third().name(),
            "lifts at",
            "first to open");
    for (CaseResponse r : check.cases()) {
      Vec3 free = axes.of(r.motion().shift());
      Vec3 stuck = axes.of(r.stickingMotion().shift());
      double factor = r.liftOff().factor();
      table.row(
          r.loadCase().name(),
          r.liftsOff() ? "lifts off" : between(stuck.x(), free.x()),
          r.liftsOff() ? "" : between(stuck.y(), free.y()),
          r.liftsOff() ? "" : between(stuck.z(), free.z()),
          Double.isInfinite(factor) ? "never" : Measure.FACTOR.showComputed(factor) + " x",
          r.liftOff().contact());
    }
    if (!check.cases().isEmpty()) {
      out.append("\nTool point moves, µm (1 µm = 39 µin): contacts stick .. slide freely\n");
      out.append(table.text());
    }
    preloadScatter(check, out);
  }

  private static void preloadScatter(SeatedCheck check, StringBuilder out) {
    MachineAxes axes = check.design().axes();
    TextTable table =
        new TextTable(
            "lrrr", "preload", axes.first().name(), axes.second().name(), axes.third().name());
    for (PreloadScatter p : check.preloadScatter()) {
      Vec3 more = axes.of(p.stronger().shift());
      Vec3 less = axes.of(p.weaker().shift());
      table.row(
          p.preload().name() + " ±" + Measure.SHARE.show(p.preload().forceSpread().limit()),
          between(more.x(), less.x()),
          between(more.y(), less.y()),
          between(more.z(), less.z()));
    }
    if (!check.preloadScatter().isEmpty()) {
      out.append("\nPreload scatter moves it, µm: more force .. less force\n").append(table.text());
    }
  }

  static void closing(SeatedCheck check, StringBuilder out) {
    Vec3 weakest = check.design().axes().of(check.weakest().direction());
    MachineAxes axes = check.design().axes();
    out.append('\n');
    out.append(
        Paragraph.of(
            "",
            "Least force at the tool point that opens a contact: "
                + Measure.FORCE.show(check.weakest().force())
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
                + " opens "
                + check.weakest().contact()
                + "."));
    SelfSeating.Path moving = check.waysHome().get(0);
    SelfSeating.Path atRest = SelfSeating.worstAtRest(check.waysHome());
    out.append(
        Paragraph.of(
            "",
            "Slides home up to a friction of "
                + Measure.FACTOR.showComputed(atRest.restFriction())
                + " set down gently, "
                + Measure.FACTOR.showComputed(moving.limitFriction())
                + " moving; expected "
                + Measure.FACTOR.show(check.design().friction().low())
                + " to "
                + Measure.FACTOR.show(check.design().friction().high())
                + "."));
    out.append(
        Paragraph.of(
            "",
            "Assumed: rigid bodies but for contacts and ball mountings, Hertz contacts, no friction"
                + " in the forces."));
  }

  private static String between(double stuck, double free) {
    return micrometres(stuck) + TO + micrometres(free);
  }

  private static String micrometres(double metres) {
    String text = QuantityFormat.fixedNumber(metres, UnitCatalog.UM, 2);
    return text.equals("-0.00") ? "0.00" : text;
  }

  private static String part(double component) {
    String text = QuantityFormat.fixedNumber(component / 100, UnitCatalog.PERCENT, 2);
    return text.startsWith("-") ? text : "+" + text;
  }

  private static String newtons(double force) {
    return QuantityFormat.significantNumber(force, UnitCatalog.NEWTON, 3);
  }

  private static String pounds(double force) {
    return QuantityFormat.significantNumber(force, UnitCatalog.LBF, 3);
  }
}
