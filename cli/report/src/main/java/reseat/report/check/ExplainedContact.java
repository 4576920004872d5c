package reseat.report.check;

import java.util.ArrayList;
import java.util.List;
import reseat.check.Measure;
import reseat.design.CouplingDesign;
import reseat.design.Preload;
import reseat.design.Support;
import reseat.equilibrium.Equilibrium;
import reseat.report.check.ExplainText.Explained;
import reseat.report.check.ExplainText.Figures;
import reseat.report.form.SeatWords;

/** The figures of the contact with the highest pressure, each with its formula. */
final class ExplainedContact {

  private static final String HERTZ =
      "Hertz's theory of elastic contact, with complete elliptic integrals; check values: reseat"
          + " verify";

  static final List<String> BODIES = List.of("ball.material", "groove.", "seat.", ".seat");

  private static final String RING =
      "pressed as a line contact around the ring, force shared over its length (docs/theory)";

  private static final String DENT =
      "after work-in, on its dent: F = Fmax (δ / δmax)^n, k = n F / δ, n so that k is 2 E* a at the"
          + " greatest force ever (docs/theory)";

  private ExplainedContact() {}

  private static int worst(Figures f) {
    int worst = 0;
    List<Equilibrium.Contact> contacts = f.check().standing().contacts();
    for (int i = 1; i < contacts.size(); i++) {
      if (contacts.get(i).peakPressure() > contacts.get(worst).peakPressure() * (1 + 1e-9)) {
        worst = i;
      }
    }
    return worst;
  }

  private static Equilibrium.Contact contact(Figures f) {
    return f.check().standing().contacts().get(worst(f));
  }

  static Explained force(Figures f) {
    Equilibrium.Contact c = contact(f);
    CouplingDesign d = f.check().design();
    List<String> inputs = new ArrayList<>();
    for (Preload p : d.preloads()) {
      inputs.add(p.name() + ": " + f.text().of(Measure.FORCE, p.force()) + " (design file)");
    }
    inputs.add(
        "mass of holder with tool: "
            + f.text().of(Measure.MASS, d.holder().mass())
            + " (design file)");
    inputs.add(
        f.check().standing().contacts().size()
            + " contact lines from ball centres, seats and flank angles (design file)");
    return new Explained(
        "contact force at " + c.line().name() + ", at rest",
        f.text().of(Measure.FORCE, c.force()),
        "the contact forces along their normals balance preload and weight: W F + w = 0, W the"
            + " wrenches of unit forces along the six normals, w the wrench of preload and weight",
        inputs,
        "balance of forces and moments; no friction",
        List.of("preload", "holder", "gravity", "device"));
  }

  private static List<String> common(Figures f) {
    Equilibrium.Contact c = contact(f);
    Support s = f.check().design().supports().get(c.line().ballIndex());
    List<String> inputs = new ArrayList<>();
    inputs.add("F = " + f.text().of(Measure.FORCE, c.force()) + " (see --explain contact-force)");
    inputs.add(
        "ball "
            + f.text().length(s.ball().diameter())
            + " in "
            + SeatWords.of(s.seat(), f.text())
            + " (design file)");
    inputs.add(
        "E* = "
            + f.text().of(Measure.PRESSURE, c.hertz().elasticity().reducedModulus())
            + ", reduced modulus of "
            + s.ballMaterial().name()
            + " on "
            + s.seatMaterial().name()
            + " (reseat materials NAME tells the source)");
    return inputs;
  }

  private static String axes(Figures f) {
    Equilibrium.Contact c = contact(f);
    return "a = "
        + f.text().length(c.semiMajor())
        + ", b = "
        + f.text().length(c.semiMinor())
        + ", half axes of the patch (see --explain patch)";
  }

  static Explained approach(Figures f) {
    Equilibrium.Contact c = contact(f);
    return new Explained(
        "approach of ball and seat at " + c.line().name(),
        f.text().length(c.approach()),
        c.line().ring()
            ? RING
            : c.dent().isPresent()
                ? DENT
                : "δ = (F / K)^(2/3), K from E*, the relative curvatures and the elliptic integrals K(m), E(m)",
        common(f),
        HERTZ,
        BODIES);
  }

  static Explained pressure(Figures f) {
    Equilibrium.Contact c = contact(f);
    List<String> inputs = common(f);
    inputs.add(axes(f));
    f.check()
        .limits()
        .get(worst(f))
        .governing()
        .ifPresent(
            l ->
                inputs.add(
                    "compare with "
                        + f.text().of(Measure.PRESSURE, l.peakPressure())
                        + ", the limit"));
    return new Explained(
        "peak pressure at " + c.line().name() + ", at rest",
        f.text().of(Measure.PRESSURE, c.peakPressure(), true),
        c.line().ring() ? RING : "p0 = 3 F / (2 π a b), in the middle of the patch",
        inputs,
        HERTZ,
        BODIES);
  }

  static Explained patch(Figures f) {
    Equilibrium.Contact c = contact(f);
    return new Explained(
        "contact patch at " + c.line().name() + ", full length by full width",
        f.text().length(2 * c.semiMajor()) + " by " + f.text().length(2 * c.semiMinor()),
        c.line().ring()
            ? RING
            : "a and b grow with F^(1/3); b / a = (1 - m)^(1/2), m from the relative curvatures",
        common(f),
        HERTZ,
        BODIES);
  }

  static Explained stiffness(Figures f) {
    Equilibrium.Contact c = contact(f);
    List<String> inputs = common(f);
    inputs.add("δ = " + f.text().length(c.approach()) + " (see --explain approach)");
    return new Explained(
        "normal stiffness of the contact " + c.line().name() + ", at rest",
        f.text().of(Measure.STIFFNESS, c.normalStiffness()),
        c.line().ring() ? RING : c.dent().isPresent() ? DENT : "k = dF/dδ = 3 F / (2 δ)",
        inputs,
        HERTZ,
        BODIES);
  }
}
