package reseat.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import reseat.design.CouplingDesign;
import reseat.design.Preload;
import reseat.design.Support;
import reseat.designfile.Alteration;
import reseat.elementary.Elementary;
import reseat.space.Vec3;
import reseat.study.NeededSeatingForce;
import reseat.study.RecutSeats;
import reseat.units.PrintedNumber;
import reseat.units.Quantity;
import reseat.units.QuantityKind;
import reseat.units.Unit;
import reseat.units.UnitCatalog;

/** Ladders of what pulls the coupling home, and of how it is put on. */
final class PullLadders {

  /** Parts of the way by which a line is moved or turned. */
  private static final double[] PARTS = {0.15, 0.3, 0.45, 0.6, 0.8, 1};

  private final FileKeys file;
  private final CouplingDesign design;

  private PullLadders(FileKeys file) {
    this.file = file;
    this.design = file.design();
  }

  static List<Ladder> of(FileKeys file) {
    PullLadders pull = new PullLadders(file);
    List<Ladder> found = new ArrayList<>();
    List<String> preloads = file.preloads();
    found.addAll(
        Steps.preferred(
            file, Lever.PRELOAD, FileKeys.below(preloads, "force"), QuantityKind.FORCE, 0.1, 10));
    found.addAll(pull.places());
    found.addAll(pull.directions());
    found.addAll(pull.ratios(Lever.PRELOAD_SCATTER, preloads, "scatter"));
    found.addAll(pull.wander());
    found.addAll(
        pull.stated(
            Lever.SEATING_FORCE,
            "remount.seating_force",
            QuantityKind.FORCE,
            pull.design.remount().seatingForce(),
            UnitCatalog.NEWTON,
            q -> NeededSeatingForce.larger(q.value())));
    found.addAll(
        pull.stated(
            Lever.TEMPERATURE,
            "remount.temperature_scatter",
            QuantityKind.TEMPERATURE_DIFFERENCE,
            pull.design.remount().temperature().limit(),
            UnitCatalog.KELVIN,
            q -> Steps.preferred(q, 0.03, 1)));
    found.addAll(pull.lubrication());
    return found;
  }

  /** The line of a single pull, or all lines, nearer to the middle of the balls or aside. */
  private List<Ladder> places() {
    List<Preload> preloads = design.preloads();
    if (preloads.isEmpty()) {
      return List.of();
    }
    Vec3 middle = Vec3.ZERO;
    for (Support s : design.supports()) {
      middle = middle.plus(s.ball().centre().times(1.0 / design.supports().size()));
    }
    Vec3 mean = Vec3.ZERO;
    for (Preload p : preloads) {
      mean = mean.plus(crossing(p).times(1.0 / preloads.size()));
    }
    List<Rung> rungs = new ArrayList<>();
    Vec3 home = new Vec3(middle.x() - mean.x(), middle.y() - mean.y(), 0);
    for (double part : PARTS) {
      rung(rungs, home.times(part));
    }
    double reach = design.couplingRadius();
    for (double part : new double[] {0.1, 0.2, 0.35, 0.5}) {
      for (int k = 0; k < 4; k++) {
        rung(rungs, Vec3.atAzimuth(k * Math.PI / 2).times(part * reach));
      }
    }
    return List.of(new Ladder(Lever.LINE_OF_PULL, "", rungs));
  }

  /** Where a line of pull crosses the coupling plane. */
  private static Vec3 crossing(Preload p) {
    Vec3 d = p.direction();
    return Math.abs(d.z()) < 0.1 ? p.at() : p.at().minus(d.times(p.at().z() / d.z()));
  }

  private void rung(List<Rung> rungs, Vec3 shift) {
    double step = unit().equals(UnitCatalog.INCH) ? 0.01 * 25.4e-3 : 0.5e-3;
    List<Alteration> all = new ArrayList<>();
    String told = "";
    double moved = 0;
    for (int i = 0; i < design.preloads().size(); i++) {
      Vec3 at = design.preloads().get(i).at();
      double x = step * Elementary.rint((at.x() + shift.x()) / step);
      double y = step * Elementary.rint((at.y() + shift.y()) / step);
      String value = "[" + length(x) + ", " + length(y) + ", " + length(at.z()) + "]";
      moved = Math.max(moved, Elementary.hypot(x - at.x(), y - at.y()));
      all.add(FileKeys.word("preload[" + (i + 1) + "].at", value));
      told = told.isEmpty() ? value : told;
    }
    if (moved > 0.5 * step) {
      rungs.add(new Rung(told, Elementary.log1p(moved / design.couplingRadius()), 0, all));
    }
  }

  private Unit unit() {
    Optional<Quantity> place = file.quantity("preload[1].at[x]", QuantityKind.LENGTH);
    Optional<Quantity> told =
        place.isPresent() ? place : file.quantity("layout.circle_diameter", QuantityKind.LENGTH);
    boolean inch = told.isPresent() && told.get().unit().symbol().contains("in");
    return inch ? UnitCatalog.INCH : UnitCatalog.MM;
  }

  private String length(double si) {
    return '"' + RecutSeats.text(si, unit()) + '"';
  }

  /** Tilted pulls, turned toward the coupling's axis. */
  private List<Ladder> directions() {
    List<Rung> rungs = new ArrayList<>();
    double most = 0;
    for (Preload p : design.preloads()) {
      most = Math.max(most, tilt(p.direction()));
    }
    if (most < Elementary.toRadians(0.5)) {
      return List.of();
    }
    for (double part : PARTS) {
      List<Alteration> all = new ArrayList<>();
      String told = "";
      for (int i = 0; i < design.preloads().size(); i++) {
        Vec3 d = design.preloads().get(i).direction();
        Vec3 straight = Vec3.Z.times(Math.signum(d.z()));
        if (tilt(d) > 0) {
          Vec3 turned = d.times(1 - part).plus(straight.times(part)).unit();
          String value =
              part == 1
                  ? (d.z() < 0 ? "-z" : "+z")
                  : "["
                      + plain(turned.x())
                      + ", "
                      + plain(turned.y())
                      + ", "
                      + plain(turned.z())
                      + "]";
          all.add(FileKeys.word("preload[" + (i + 1) + "].direction", value));
          told = told.isEmpty() ? value : told;
        }
      }
      rungs.add(new Rung(told, part * Elementary.toDegrees(most) / 10, 1, all));
    }
    return List.of(new Ladder(Lever.DIRECTION_OF_PULL, "", rungs));
  }

  private static double tilt(Vec3 d) {
    return d.z() == 0 ? 0 : Elementary.atan2(Elementary.hypot(d.x(), d.y()), Math.abs(d.z()));
  }

  private static String plain(double component) {
    return PrintedNumber.shortest(Elementary.rint(1000 * component) / 1000);
  }

  private List<Ladder> ratios(Lever lever, List<String> tables, String name) {
    List<String> paths = FileKeys.below(tables, name);
    paths.addAll(FileKeys.below(tables, name + ".limit"));
    return Steps.preferred(file, lever, paths, QuantityKind.RATIO, 0.1, 1);
  }

  private List<Ladder> wander() {
    List<String> paths = FileKeys.below(file.preloads(), "line_wander");
    paths.addAll(FileKeys.below(file.preloads(), "line_wander.limit"));
    return Steps.preferred(file, Lever.LINE_WANDER, paths, QuantityKind.LENGTH, 0.1, 1);
  }

  /** A key that has a usual value where the file leaves it out. */
  private List<Ladder> stated(
      Lever lever,
      String path,
      QuantityKind kind,
      double now,
      Unit usual,
      Function<Quantity, List<Double>> values) {
    Optional<Quantity> plain = file.quantity(path, kind);
    Optional<Quantity> limit = file.quantity(path + ".limit", kind);
    String key = plain.isEmpty() && limit.isPresent() ? path + ".limit" : path;
    if (!(now > 0)) {
      return List.of();
    }
    Quantity from =
        plain.or(() -> limit).orElse(new Quantity(now, kind, RecutSeats.text(now, usual), usual));
    return Steps.scaled(lever, List.of(new FileKeys.Held(key, from)), values.apply(from));
  }

  private List<Ladder> lubrication() {
    Optional<String> surface = file.typed("friction.surface");
    return surface.filter("dry"::equals).isPresent()
        ? List.of(
            new Ladder(
                Lever.LUBRICATION,
                "dry",
                List.of(
                    new Rung(
                        "oiled",
                        SeatLadders.OTHER,
                        0,
                        List.of(FileKeys.word("friction.surface", "oiled"))))))
        : List.of();
  }
}
