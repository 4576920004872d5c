package reseat.designfile;

import java.util.OptionalDouble;
import reseat.design.CouplingDesign;
import reseat.design.Half;
import reseat.design.Support;
import reseat.elementary.Elementary;
import reseat.material.ElasticPair;
import reseat.material.Material;
import reseat.material.MaterialValue;
import reseat.seat.Flank;
import reseat.space.Vec3;

/**
 * A rough peak pressure of the contacts at rest, to tell a force of another order: all contacts
 * share the load alike, and each patch is taken as round. Within some 15 % of the contact theory
 * for the usual seats.
 *
 * @param load force with which preload and weight press the halves together, N
 * @param pressure greatest peak pressure under it, Pa
 * @param limit pressure that hard steel, or the harder of these bodies, stands, Pa
 */
record RestPressure(double load, double pressure, double limit) {

  /** Peak pressure at which hardened bearing steel begins to flow, Pa. */
  private static final double HARD_STEEL = 3.2e9;

  /** Peak pressure over yield strength where flow begins under a round patch (Tresca). */
  private static final double FIRST_YIELD = 1.6;

  /**
   * Finds it.
   *
   * @param d the design
   * @param force size of the pull on the holder, N
   * @param direction unit vector of that pull
   */
  static RestPressure of(CouplingDesign d, double force, Vec3 direction) {
    double sum = 0;
    double worst = 0;
    double limit = HARD_STEEL;
    double sign = d.ballsOn() == Half.HOLDER ? -1 : 1;
    for (Support s : d.supports()) {
      double reduced =
          new ElasticPair(s.ballMaterial().elastic(), s.seatMaterial().elastic()).reducedModulus();
      double stands = Math.min(strength(s.ballMaterial()), strength(s.seatMaterial()));
      limit = Double.isFinite(stands) ? Math.max(limit, stands) : limit;
      for (Flank flank : s.seat().flanks()) {
        sum += Math.max(0, sign * flank.normal(s.ball().centre()).dot(direction));
        double curvature = 1 / s.ball().radius() + 1 / flank.signedRadius() / 2;
        double of = 6 * Elementary.pow(reduced * curvature, 2) / Elementary.pow(Math.PI, 3);
        worst = Math.max(worst, of);
      }
    }
    double each = sum > 0 ? force / sum : force;
    return new RestPressure(force, Elementary.cbrt(worst * each), limit);
  }

  private static double strength(Material m) {
    OptionalDouble flow =
        m.brittle()
            ? m.brittleFlow()
            : m.pressedStrength().stream().mapToDouble(MaterialValue::nominal).findFirst();
    return flow.isEmpty() ? Double.POSITIVE_INFINITY : flow.getAsDouble() * FIRST_YIELD;
  }

  /** Force at which the pressure is a part of the limit, N: it grows with its third power. */
  double forceAt(double part) {
    double over = part * limit / pressure;
    return load * over * over * over;
  }
}
