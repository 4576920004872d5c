package reseat.designfile;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import reseat.design.Coverage;
import reseat.design.Friction;
import reseat.design.MachineAxes;
import reseat.design.RemountConditions;
import reseat.design.Support;
import reseat.design.Targets;
import reseat.material.FrictionCatalog;
import reseat.material.FrictionPair;
import reseat.material.SurfaceState;
import reseat.units.Quantity;
import reseat.units.QuantityKind;
import reseat.units.QuantityText;

/** Reads friction, targets and the conditions of a tool change. */
final class WishReader {

  private static final Map<String, SurfaceState> SURFACES =
      Map.of("oiled", SurfaceState.OILED, "dry", SurfaceState.DRY);

  private static final String LARGEST = "largest of ";
  private static final String COVERAGES =
      "a share of the tool changes above 0 % and below 100 %, such as \"95 %\", or the largest of"
          + " some, such as \"largest of 50\"";

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
    Coverage coverage = coverage(s);
    s.close();
    try {
      return new Targets(limits, factor, share, stated, coverage);
    } catch (IllegalArgumentException e) {
      s.refused(e);
      return Targets.DEFAULT;
    }
  }

  /** Reads a share of the changes, or the largest of some. */
  private static Coverage coverage(Section s) {
    Optional<String> text = s.plainText("coverage");
    if (text.isEmpty()) {
      s.find("coverage").ifPresent(v -> s.wrongSort("coverage", v, COVERAGES));
      return Coverage.USUAL;
    }
    String typed = text.get().strip();
    try {
      if (typed.startsWith(LARGEST)) {
        return Coverage.ofLargest(Integer.parseInt(typed.substring(LARGEST.length()).strip()));
      }
      if (QuantityText.read(typed, QuantityKind.RATIO) instanceof Quantity share) {
        return Coverage.of(share.value());
      }
    } catch (IllegalArgumentException e) {
      // told below, in the words of the file
    }
    s.error("coverage", "found \"" + typed + "\"; allowed is " + COVERAGES);
    return Coverage.USUAL;
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
