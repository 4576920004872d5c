package reseat.repeatability;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import reseat.design.CouplingDesign;
import reseat.design.Friction;
import reseat.design.Preload;
import reseat.design.RemountConditions;
import reseat.designfile.AlterableDesign;
import reseat.designfile.Alteration;
import reseat.designfile.DesignFile;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.NoEquilibriumException;
import reseat.material.MaterialProperty;
import reseat.numerics.Distribution;
import reseat.numerics.RandomStream;
import reseat.seating.SeatingPaths;
import reseat.seating.SelfSeating;
import reseat.space.Vec3;
import reseat.space.Wrench;

/**
 * The shipped couplings, and designs drawn round them.
 *
 * <p>All with a holder that grows as its balls do, so that they tell of the scatter alone whether
 * or not balls grow by themselves; that has a test of its own.
 */
final class DrawnDesigns {

  static final List<String> SHIPPED =
      List.of("tool-post", "pallet", "sensor-mount", "cone-vee-flat");

  private DrawnDesigns() {}

  static Path file(String name) {
    Path p = Path.of("docs", "examples", name + ".toml");
    return Files.exists(p) ? p : Path.of("..").resolve(p);
  }

  static CouplingDesign shipped(String name) {
    try {
      return even(DesignFile.read(file(name)).design().orElseThrow());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static CouplingDesign even(CouplingDesign d) {
    RemountConditions r = d.remount();
    double own =
        d.supports()
            .get(0)
            .ballMaterial()
            .nominal(MaterialProperty.EXPANSION)
            .orElse(r.holderExpansion());
    return d.toBuilder()
        .remount(
            new RemountConditions(
                r.seatingForce(), r.rampSteps(), r.friction(), r.temperature(), r.film(), own))
        .build();
  }

  /** A design drawn round a shipped one, held down; jamming is not looked at. */
  static CouplingDesign drawn(String name, long seed) {
    for (long attempt = 0; attempt < 500; attempt++) {
      Optional<CouplingDesign> d = attempt(name, RandomStream.of(seed, attempt));
      if (d.isPresent() && stands(d.get())) {
        return even(d.get());
      }
    }
    throw new IllegalStateException("no design round " + name + " with seed " + seed);
  }

  private static boolean stands(CouplingDesign d) {
    try {
      return d.remount().seatingForce() < d.preloads().get(0).force()
          && !CouplingModel.of(d).standing().lifted();
    } catch (NoEquilibriumException e) {
      return false;
    }
  }

  private static Optional<CouplingDesign> attempt(String name, RandomStream luck) {
    try {
      AlterableDesign file = AlterableDesign.read(file(name));
      List<Alteration> changes = new ArrayList<>();
      double size = luck.uniform(0.8, 1.25);
      double angle = luck.uniform(38, 56);
      switch (name) {
        case "tool-post" -> {
          set(file, changes, "layout.ball.diameter", 12.7 * Math.min(size, 1.0), "mm");
          set(file, changes, "layout.groove.flank_angle", angle, "deg");
          set(file, changes, "layout.circle_diameter", luck.uniform(55, 100), "mm");
        }
        case "pallet" -> {
          set(file, changes, "support[*].seat.pin_diameter", luck.uniform(8, 12), "mm");
          set(file, changes, "support[*].seat.spacing", luck.uniform(18, 22.5), "mm");
        }
        case "sensor-mount" -> {
          set(file, changes, "support[2].seat.flank_angle", Math.min(angle, 48), "deg");
        }
        default -> {
          set(file, changes, "layout.cone.cone_angle", 2 * luck.uniform(40, 50), "deg");
          set(file, changes, "layout.groove.flank_angle", luck.uniform(40, 50), "deg");
          set(file, changes, "layout.circle_diameter", luck.uniform(50, 100), "mm");
        }
      }
      CouplingDesign d = file.with(changes).design().orElse(null);
      return d == null ? Optional.empty() : Optional.of(varied(d, luck));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private static void set(
      AlterableDesign file, List<Alteration> changes, String key, double value, String unit) {
    changes.add(new Alteration(file.key(key), String.format(Locale.ROOT, "%.6f %s", value, unit)));
  }

  private static double factor(RandomStream luck, double most) {
    return Math.exp(luck.uniform(-Math.log(most), Math.log(most)));
  }

  private static CouplingDesign varied(CouplingDesign d, RandomStream luck) {
    double pull = factor(luck, 2.5);
    double size = factor(luck, 3);
    double line = factor(luck, 3);
    List<Preload> preloads = new ArrayList<>();
    for (Preload p : d.preloads()) {
      Preload moved =
          new Preload(
              p.name(),
              p.force() * pull,
              p.direction(),
              p.at().plus(new Vec3(luck.uniform(-3e-3, 3e-3), luck.uniform(-3e-3, 3e-3), 0)),
              p.forceSpread().times(size, 0.2),
              new Distribution(2e-4 * line, p.lineSpread().shape()),
              new Distribution(3e-3 * line, p.tiltSpread().shape()),
              p.device());
      preloads.add(moved);
    }
    // the bracket hangs up as shipped: with the usual friction nothing could be compared
    boolean jams = d.gravity().y() != 0;
    double rub = factor(luck, 1.6) * (jams ? 0.4 : 1);
    Friction f = d.friction();
    RemountConditions r = d.remount();
    Vec3 tool =
        d.toolPoint()
            .plus(
                new Vec3(
                    luck.uniform(-0.02, 0.02),
                    luck.uniform(-0.02, 0.02),
                    luck.uniform(-0.02, 0.02)));
    return d.toBuilder()
        .preloads(preloads)
        .friction(new Friction(f.low() * rub, f.nominal() * rub, f.high() * rub, "drawn"))
        .toolPoint(tool)
        .remount(
            new RemountConditions(
                r.seatingForce() * factor(luck, 2) * (jams ? 3 : 1),
                r.rampSteps(),
                r.friction().times(luck.uniform(0.4, 1.8), 0.4),
                r.temperature().times(factor(luck, 3), 5),
                r.film().times(factor(luck, 3), 1e-6),
                r.holderExpansion()))
        .build();
  }

  /** Greatest friction expected over the friction at which the worst way home stalls. */
  static double jamming(CouplingDesign d) {
    double limit = SelfSeating.GREATEST;
    for (Wrench load : loads(d)) {
      for (SelfSeating.Path p : SeatingPaths.byContact(d, load)) {
        limit = Math.min(limit, p.limitFriction());
      }
    }
    return d.friction().high() / limit;
  }

  static List<Wrench> loads(CouplingDesign d) {
    double all = 0;
    for (Preload p : d.preloads()) {
      all += p.force();
    }
    double share = Math.min(1, d.remount().seatingForce() / all);
    Wrench hand = d.weight();
    for (Preload p : d.preloads()) {
      hand = hand.plus(p.load().movedTo(hand.at()).times(share));
    }
    return List.of(hand, d.standingLoad());
  }
}
