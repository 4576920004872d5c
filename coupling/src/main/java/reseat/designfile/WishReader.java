package reseat.designfile;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
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
      double low = s.ratio("low", nominal);
      double high = s.ratio("high", nominal);
      try {
        range = new Friction(low, nominal, high, "given in the design file");
      } catch (IllegalArgumentException e) {
        s.refused(e);
      }
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
    Set<String> sources = new TreeSet<>();
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
    return new Friction(low, nominal, high, String.join("; ", sources));
  }

  /** Reads [targets]. */
  static Targets targets(Section s, MachineAxes axes) {
    Optional<Section> repeatability = s.child("repeatability");
    Targets.AxisLimits limits =
        repeatability.isPresent() ? limits(repeatability.get(), axes) : Targets.AxisLimits.NONE;
    boolean stated = s.has("lift_off_factor");
    double factor = s.ratio("lift_off_factor", Targets.DEFAULT.liftOffFactor());
    double share = s.ratio("pressure_share", Targets.DEFAULT.pressureShare());
    s.close();
    try {
      return new Targets(limits, factor, share, stated);
    } catch (IllegalArgumentException e) {
      s.refused(e);
      return Targets.DEFAULT;
    }
  }

  private static Targets.AxisLimits limits(Section s, MachineAxes axes) {
    double none = Double.POSITIVE_INFINITY;
    double first = s.positiveOr(axes.first().name(), QuantityKind.LENGTH, none);
    double second = s.positiveOr(axes.second().name(), QuantityKind.LENGTH, none);
    double third = s.positiveOr(axes.third().name(), QuantityKind.LENGTH, none);
    s.close();
    return new Targets.AxisLimits(first, second, third);
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
    s.close();
    try {
      return new RemountConditions(force, steps, friction, temperature, film, expansion);
    } catch (IllegalArgumentException e) {
      s.refused(e);
      return d;
    }
  }
}
