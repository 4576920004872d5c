package reseat.designfile;

import java.util.Optional;
import reseat.design.CouplingDesign;
import reseat.design.Preload;
import reseat.design.Support;
import reseat.units.FilledText;
import reseat.units.Quantity;
import reseat.units.QuantityFormat;
import reseat.units.QuantityKind;

/**
 * Looks at a design for inputs far outside what the trade uses, which are mostly slips of unit.
 *
 * <p>Every warning names the likely slip and both readings. The windows are common practice, no
 * source; nothing is changed, and a design outside them is computed as it stands.
 */
final class Plausibility {

  private static final double INCH = 0.0254;

  private Plausibility() {}

  static void look(CouplingDesign d, Section root, Problems problems) {
    circle(d, root);
    for (Support s : d.supports()) {
      ball(d, s, root);
    }
    preloads(d, root);
    tool(d, root);
    Angles.look(root, problems);
  }

  private static void circle(CouplingDesign d, Section root) {
    double diameter = 2 * d.couplingRadius();
    Optional<Section> layout = root.isTable("layout") ? root.child("layout") : Optional.empty();
    Section where = layout.orElse(root);
    Optional<Quantity> typed =
        layout.isPresent()
            ? typed(where, "circle_diameter", QuantityKind.LENGTH)
            : Optional.empty();
    String key = layout.isPresent() ? "circle_diameter" : "support";
    if (diameter < 0.015) {
      String other =
          typed
              .map(q -> other(q, INCH / 1e-3, "in", "mm"))
              .orElse("check the unit of the ball positions");
      where.warn(key, "the balls stand on a circle of only " + length(diameter) + "; " + other);
    } else if (diameter > 1.5) {
      String other =
          typed
              .map(q -> other(q, 1e-3 / INCH, "mm", "in"))
              .orElse("check the unit of the ball positions");
      where.warn(key, "the balls stand on a circle of " + length(diameter) + "; " + other);
    }
  }

  /** What the same number means in another unit. */
  private static String other(Quantity q, double factor, String unit, String typedUnit) {
    String number = q.text().replaceAll("[^0-9.+\\-eE/ ]", "").strip();
    return q.unit().symbol().equals(typedUnit)
        ? "did you mean " + number + " " + unit + " (" + length(q.value() * factor) + ")?"
        : "check the unit: as written it is " + q.understoodAs();
  }

  private static void ball(CouplingDesign d, Support s, Section root) {
    double diameter = s.ball().diameter();
    Section where = root;
    String key = root.has("layout") ? "layout" : "support";
    String name = "the ball of " + s.name() + " has a diameter of " + length(diameter);
    if (diameter < 0.5e-3) {
      where.warn(
          key,
          name
              + "; a thousand times more is "
              + length(1e3 * diameter)
              + ": was a micrometre written for a millimetre?");
    } else if (diameter > 0.1) {
      where.warn(
          key,
          name
              + "; divided by 25.4 it is "
              + length(diameter / 25.4)
              + ": was an inch written for a millimetre?");
    }
    if (diameter > 0.9 * d.couplingRadius() && d.supports().size() > 1) {
      where.warn(
          key,
          name
              + ", and the balls stand only "
              + length(d.couplingRadius())
              + " from their middle; was the radius of the circle written for its diameter?");
    }
  }

  private static void preloads(CouplingDesign d, Section root) {
    int i = 0;
    for (Section s : root.children("preload")) {
      if (i >= d.preloads().size()) {
        return;
      }
      Preload p = d.preloads().get(i++);
      Optional<Quantity> typed = typed(s, "force", QuantityKind.FORCE);
      String unit = typed.isPresent() ? typed.get().unit().symbol() : "N";
      if (p.force() > 20e3) {
        String other =
            switch (unit) {
              case "kN" -> "did you mean " + force(p.force() / 1e3) + " (N, not kN)?";
              case "kgf" -> "did you mean " + force(p.force() / 9.80665) + " (N, not kgf)?";
              default -> "check the unit";
            };
        s.warn(
            "force", "a preload of " + force(p.force()) + " is far beyond a tool post; " + other);
      } else if (unit.equals("kgf") && p.force() > 3e3) {
        s.warn(
            "force",
            "a preload of "
                + force(p.force())
                + " is high; did you mean "
                + force(p.force() / 9.80665)
                + " (N, not kgf)?");
      } else if (p.force() < 1) {
        s.warn(
            "force",
            "a preload of "
                + force(p.force())
                + " is hardly more than nothing; a thousand times more is "
                + force(1e3 * p.force()));
      }
      if (p.forceSpread().limit() > 0.5) {
        s.warn(
            "scatter",
            FilledText.of(
                "a scatter of %.0f %% is more than any usual device; did you mean %.2g %%?",
                100 * p.forceSpread().limit(), p.forceSpread().limit()));
      }
    }
  }

  private static void tool(CouplingDesign d, Section root) {
    double away = d.toolPoint().norm();
    if (away > 20 * d.couplingRadius()) {
      Section where = root.child("tool_point").orElse(root);
      where.warn(
          "at",
          "the tool point is "
              + length(away)
              + " from the middle of a coupling of "
              + length(2 * d.couplingRadius())
              + "; was an inch written for a millimetre, or a millimetre for a micrometre?");
    }
  }

  private static Optional<Quantity> typed(Section s, String key, QuantityKind kind) {
    s.quantity(key, kind);
    return s.asTyped(key);
  }

  private static String length(double metres) {
    return QuantityFormat.both(metres, QuantityKind.LENGTH);
  }

  private static String force(double newtons) {
    return QuantityFormat.both(newtons, QuantityKind.FORCE);
  }
}
