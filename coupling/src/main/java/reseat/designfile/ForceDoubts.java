package reseat.designfile;

import java.util.List;
import reseat.design.CouplingDesign;
import reseat.design.LoadCase;
import reseat.design.Preload;
import reseat.preload.TightenedScrew;
import reseat.space.Vec3;
import reseat.units.QuantityFormat;
import reseat.units.QuantityKind;

/**
 * Looks at forces and the mass. What a preload may be follows from the pressure in the contacts,
 * the weight and the loads; what the holder may weigh from the circle of the balls.
 */
final class ForceDoubts {

  /** Least force that is a preload at all, N. */
  private static final double LEAST = 1;

  /** Share of the limiting pressure at rest up to which a preload is usual, and not doubted. */
  private static final double USUAL_SHARE = 0.95;

  private static final double MOST_SHARE = 1.5;

  /** Share of the limiting pressure under a load that is doubted. */
  private static final double MOST_UNDER_LOAD = 2.5;

  /** Edge of a steel cube of the holder's mass over the circle of the balls. */
  private static final Usual CUBE = Usual.of(0.1, 0.2, 1.35, 3);

  private static final double STEEL = 7850;
  private static final String BASIS = "judgement, from the pressure in the contacts and the loads";
  private static final List<String> SETTINGS = List.of("torque", "mass", "pressure", "deflection");

  private ForceDoubts() {}

  static void look(CouplingDesign d, double circle, Doubts doubts) {
    mass(circle, doubts);
    boolean known = !doubts.doubted("layout.ball.") && !doubts.doubted("support[");
    boolean weighs = !doubts.doubted("holder.");
    double weight = weighs ? d.holder().mass() * CouplingDesign.STANDARD_GRAVITY : 0;
    double total = 0;
    for (Preload p : d.preloads()) {
      total += p.force();
    }
    Vec3 pull = d.preload().force();
    if (known && pull.norm() > 0) {
      RestPressure rest = RestPressure.of(d, pull.norm(), pull.unit());
      double asked = asked(d);
      for (int i = 0; i < d.preloads().size(); i++) {
        Preload p = d.preloads().get(i);
        double even = 1.0 / d.preloads().size();
        Share share = new Share(even, Math.max(even, p.force() / total));
        preload(p, i, share, rest, Math.max(weight, asked), doubts);
      }
    }
    if (known && weighs && !doubts.doubted("preload[")) {
      loads(d, circle, doubts);
    }
  }

  private static void mass(double circle, Doubts doubts) {
    double whole = STEEL * circle * circle * circle;
    Usual kilograms =
        new Usual(
            whole * cube(CUBE.least()),
            whole * cube(CUBE.low()),
            whole * cube(CUBE.high()),
            whole * cube(CUBE.most()),
            "judgement, from a steel cube beside the balls' circle");
    Usual newtons = kilograms.times(CouplingDesign.STANDARD_GRAVITY);
    if (!doubts.isUsual("holder.mass", kilograms) || !doubts.isUsual("holder.weight", newtons)) {
      doubts.look("holder.mass", kilograms, "a holder", onCircle(circle));
      doubts.look("holder.weight", newtons, "a holder", onCircle(circle));
    }
  }

  private static String onCircle(double circle) {
    return " on balls in a circle of " + QuantityFormat.both(circle, QuantityKind.LENGTH);
  }

  private static double cube(double x) {
    return x * x * x;
  }

  /** Greatest load under which the holder has to stay where it is, N. */
  private static double asked(CouplingDesign d) {
    double most = 0;
    for (LoadCase c : d.cases()) {
      if (c.demand() != LoadCase.Demand.SURVIVE) {
        most = Math.max(most, c.load().force().norm());
      }
    }
    return most;
  }

  /** Shares of all preloads together that one should have at least and may have at most. */
  private record Share(double even, double most) {}

  private static void preload(
      Preload p, int i, Share share, RestPressure rest, double against, Doubts doubts) {
    String table = "preload[" + (i + 1) + "].";
    double usualMost = rest.forceAt(USUAL_SHARE);
    double highest = share.most() * usualMost;
    double ofLoads = share.even() * Math.min(against, usualMost);
    double least = Math.max(LEAST, 0.02 * ofLoads);
    double low = Math.min(Math.max(2 * LEAST, 0.15 * ofLoads), highest);
    double most = share.most() * rest.forceAt(MOST_SHARE);
    Usual force = new Usual(least, low, highest, most, BASIS);
    if (doubts.has(table + "force")) {
      if (!doubts.isUsual(table + "force", force)) {
        doubts.look(table + "force", force, "a preload", pressed(rest));
      }
      return;
    }
    for (String setting : SETTINGS) {
      Written w = doubts.at(table + "device." + setting);
      Usual usual = w == null ? force : force.times(w.size() / p.force());
      if (w != null && !doubts.isUsual(w.key(), usual)) {
        doubts.look(w.key(), usual, "a " + setting, making(p.force()) + pressed(rest));
      }
    }
    if (p.modelled().isPresent() && p.modelled().get() instanceof TightenedScrew screw) {
      torque(table + "device.torque", screw, highest, doubts);
    }
  }

  /** A light torque is no slip where more of it would crush the contacts. */
  private static void torque(String key, TightenedScrew screw, double highest, Doubts doubts) {
    Written w = doubts.at(key);
    if (w == null) {
      return;
    }
    double made = screw.nominalForce();
    double atProof = screw.thread().stressArea() * MountingDoubts.PROOF * w.size() / made;
    double high = Math.min(0.9 * atProof, highest * w.size() / made);
    double low = Math.min(0.03 * atProof, high);
    String basis = "proof stress 640 MPa of a screw 8.8, ISO 898-1; the lower end judgement";
    Usual usual = new Usual(1e-3 * atProof, low, high, 1.6 * atProof, basis);
    if (!doubts.isUsual(key, usual)) {
      doubts.look(key, usual, "a torque", making(made));
    }
  }

  private static String making(double force) {
    return " that makes " + QuantityFormat.both(force, QuantityKind.FORCE);
  }

  private static String pressed(RestPressure rest) {
    return ", by which the contacts are pressed with about "
        + QuantityFormat.both(rest.pressure(), QuantityKind.PRESSURE)
        + " at rest";
  }

  private static void loads(CouplingDesign d, double circle, Doubts doubts) {
    double standing = d.standingLoad().force().norm();
    if (!(standing > 0)) {
      return;
    }
    RestPressure rest = RestPressure.of(d, standing, d.standingLoad().force().unit());
    double high = Math.max(standing, rest.forceAt(USUAL_SHARE));
    double most = Math.max(2 * high, rest.forceAt(MOST_UNDER_LOAD));
    Usual force = new Usual(1e-3, 1e-2, high, most, BASIS);
    Usual moment = Usual.of(1e-6, 1e-5, 3 * standing * circle, 30 * standing * circle);
    for (Written w : doubts.written().values()) {
      if (w.key().startsWith("load_case[")) {
        if (w.quantity().kind() == QuantityKind.FORCE) {
          doubts.look(w.key(), force, "a load", "");
        } else if (w.quantity().kind() == QuantityKind.TORQUE) {
          doubts.look(w.key(), moment, "a moment", "");
        }
      }
    }
  }
}
