package reseat.making;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import reseat.design.CouplingDesign;
import reseat.design.KeepClear;
import reseat.design.Preload;
import reseat.design.Support;
import reseat.preload.AirCylinder;
import reseat.preload.DeadWeight;
import reseat.preload.DiscSpringStack;
import reseat.preload.HelicalSpring;
import reseat.preload.MagnetPair;
import reseat.preload.PlainForce;
import reseat.preload.PreloadDevice;
import reseat.preload.TightenedScrew;
import reseat.seat.SeatClearance;
import reseat.space.Vec3;

/** Where the two halves of a coupling come close without being meant to touch. */
final class PlacesToKeepClear {

  private PlacesToKeepClear() {}

  /**
   * What the user names, then what every design has: its pulls, its faces, its floors. A place that
   * the user names after a preload takes the place of that preload's.
   */
  static List<KeepClear> of(CouplingDesign design) {
    List<KeepClear> places = new ArrayList<>(design.shop().keepClear());
    for (Preload p : design.preloads()) {
      if (named(p, design.shop().keepClear())) {
        continue;
      }
      String what =
          p.modelled().map(d -> d.accept(new What())).orElse("bolt shank or magnet faces");
      OptionalDouble gap =
          p.modelled().isPresent() && p.modelled().get() instanceof MagnetPair m
              ? OptionalDouble.of(m.gap() - m.gapTolerance())
              : OptionalDouble.empty();
      Optional<Vec3> across = gap.isPresent() ? Optional.of(p.direction()) : Optional.empty();
      places.add(new KeepClear(p.name() + ": " + what, p.at(), gap, across));
    }
    for (Support s : design.supports()) {
      places.add(
          new KeepClear(
              s.name() + ": faces of the halves",
              s.ball().centre(),
              OptionalDouble.empty(),
              Optional.of(s.seat().frame().up())));
    }
    for (Support s : design.supports()) {
      for (SeatClearance c : s.seat().clearances(s.ball())) {
        if (c.feature() == SeatClearance.Feature.FLOOR && c.distance() >= 0) {
          places.add(
              new KeepClear(
                  s.name() + ": ball over the floor of its seat",
                  s.ball().centre(),
                  OptionalDouble.of(c.distance()),
                  Optional.of(s.seat().frame().up())));
        }
      }
    }
    return places;
  }

  private static boolean named(Preload p, List<KeepClear> places) {
    String name = p.name().toLowerCase(Locale.ROOT);
    return places.stream().anyMatch(k -> k.name().toLowerCase(Locale.ROOT).contains(name));
  }

  private record What() implements PreloadDevice.Visitor<String> {

    private static final String SHANK = "bolt shank in its hole";

    @Override
    public String plainForce(PlainForce device) {
      return "bolt shank or magnet faces";
    }

    @Override
    public String tightenedScrew(TightenedScrew device) {
      return SHANK;
    }

    @Override
    public String discSpringStack(DiscSpringStack device) {
      return SHANK;
    }

    @Override
    public String helicalSpring(HelicalSpring device) {
      return SHANK;
    }

    @Override
    public String magnetPair(MagnetPair device) {
      return "magnet faces";
    }

    @Override
    public String deadWeight(DeadWeight device) {
      return "hanger of the weight";
    }

    @Override
    public String airCylinder(AirCylinder device) {
      return "piston rod";
    }
  }
}
