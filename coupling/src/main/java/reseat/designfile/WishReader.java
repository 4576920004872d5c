package reseat.designfile;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import reseat.design.Friction;
import reseat.design.MachineAxes;
import reseat.design.RemountConditions;
import reseat.design.Support;
import reseat.design.Targets;
import reseat.material.FrictionCatalog;
import reseat.material.FrictionPair;
import reseat.material.SurfaceState;
import reseat.units.QuantityKind;

/** Reads friction, targets and the conditions of a tool change. */
final class WishReader {

  private static final Map<String, SurfaceState> SURFACES =
      Map.of("oiled", SurfaceState.OILED, "dry", SurfaceState.DRY);

  private WishReader() {}

  /** Reads [friction]: a range given by the user, or the catalog's for the materials. */
  static Friction friction(Section s, List<Support> supports) {
    SurfaceState state = s.choice("surface", SURFACES).orElse(SurfaceState.OILED);
    boolean given = s.has("low") || s.has("nominal") || s.has("high");
    Friction range = ofCatalog(supports, state);
    if (given) {
      double nominal = s.ratio("nominal", Double.NaN);
      if (Double.isNaN(nominal)) {
        if (!s.has("nominal")) {
          s.error("nominal", "is missing; write a plain number such as 0.1");
        }
        nominal = 0.1;
      }
      double middle = nominal;
      double low = s.ratio("low", nominal);
      double high = s.ratio("high", nominal);
      range =
          s.build(() -> new Friction(low, middle, high, "given in the design file")).orElse(range);
    }
    s.close();
    return range;
  }

  /** The widest range over the supports' pairs of materials. */
  static Friction ofCatalog(List<Support> supports, SurfaceState state) {
    FrictionCatalog catalog = FrictionCatalog.standard();
    double low = Double.POSITIVE_INFINITY;
    double high = 0;
    double nominal = 0;
    Set<String> sources = new HashSet<>();
    for (Support s : supports) {
      FrictionPair pair = catalog.between(s.ballMaterial(), s.seatMaterial(), state);
      low = Math.min(low, pair.low());
      high = Math.max(high, pair.high());
      nominal = Math.max(nominal, pair.nominal());
      sources.add(pair.source());
    }
    if (supports.isEmpty()) {
      return new Friction(0.1, 0.1, 0.1, "no supports");
    }
    return new Friction(low, nominal, high, String.join("; ", sources.stream().sorted().toList()));
  }

  /** Reads [targets]. */
  static Targets targets(Section s, MachineAxes axes) {
    double none = Double.POSITIVE_INFINITY;
    Targets.AxisLimits limits =
        s.child("repeatability")
            .map(
                t -> {
                  Targets.AxisLimits read =
                      new Targets.AxisLimits(
                          t.positiveOr(axes.first().name(), QuantityKind.LENGTH, none),
                          t.positiveOr(axes.second().name(), QuantityKind.LENGTH, none),
                          t.positiveOr(axes.third().name(), QuantityKind.LENGTH, none));
                  t.close();
                  return read;
                })
            .orElse(Targets.AxisLimits.NONE);
    double factor = s.ratio("lift_off_factor", Targets.DEFAULT.liftOffFactor());
    double share = s.ratio("pressure_share", Targets.DEFAULT.pressureShare());
    Targets targets = s.build(() -> new Targets(limits, factor, share)).orElse(Targets.DEFAULT);
    s.close();
    return targets;
  }

  /** Reads [remount]. */
  static RemountConditions remount(Section s) {
    RemountConditions d = RemountConditions.DEFAULT;
    double force = s.positiveOr("seating_force", QuantityKind.FORCE, d.seatingForce());
    int steps = s.count("ramp_steps", d.rampSteps(), 1, 100_000);
    var friction = SpreadReader.read(s, "friction_scatter", QuantityKind.RATIO, d.friction());
    var temperature =
        SpreadReader.read(
            s, "temperature_scatter", QuantityKind.TEMPERATURE_DIFFERENCE, d.temperature());
    var film = SpreadReader.read(s, "film_scatter", QuantityKind.LENGTH, d.film());
    double expansion = s.quantity("holder_expansion", QuantityKind.EXPANSION, d.holderExpansion());
    RemountConditions read =
        s.build(() -> new RemountConditions(force, steps, friction, temperature, film, expansion))
            .orElse(d);
    s.close();
    return read;
  }
}
