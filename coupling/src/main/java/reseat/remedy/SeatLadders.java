package reseat.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.check.GrooveDirectionCheck;
import reseat.design.CouplingDesign;
import reseat.design.Support;
import reseat.designfile.Alteration;
import reseat.elementary.Elementary;
import reseat.space.Vec3;
import reseat.study.RecutSeats;
import reseat.study.StockSizes;
import reseat.units.PrintedNumber;
import reseat.units.Quantity;
import reseat.units.QuantityKind;
import reseat.units.QuantityReading;

/** Ladders of balls, seats and their places. */
final class SeatLadders {

  /** Steps in stock that are looked at on either side. */
  private static final int STOCK_STEPS = 8;

  private static final double ONE_STEP = 0.1;

  /** Distance of another material. */
  static final double OTHER = 0.3;

  private static final double[] FLANKS = {30, 35, 40, 45, 50, 55, 60};
  private static final List<String> BALLS =
      List.of("52100", "440C", "silicon nitride", "tungsten carbide");
  private static final List<String> SEATS =
      List.of("A2", "D2", "M2", "440C", "52100", "tungsten carbide");

  private final FileKeys file;
  private final CouplingDesign design;
  private final RecutSeats following;

  private SeatLadders(FileKeys file) {
    this.file = file;
    this.design = file.design();
    this.following = new RecutSeats(file.file());
  }

  static List<Ladder> of(FileKeys file) {
    SeatLadders seats = new SeatLadders(file);
    List<Ladder> found = new ArrayList<>();
    found.addAll(seats.balls());
    found.addAll(seats.pinDiameters());
    found.addAll(seats.flanks());
    found.addAll(
        Steps.lengths(
            file,
            Lever.PIN_SPACING,
            FileKeys.below(file.seats(), "spacing"),
            0.5,
            2,
            0.5e-3,
            25.4e-3 / 64));
    found.addAll(
        Steps.lengths(
            file, Lever.CIRCLE, List.of("layout.circle_diameter"), 0.5, 2, 1e-3, 0.05 * 25.4e-3));
    found.addAll(seats.turns());
    found.addAll(seats.grooveDirections());
    found.addAll(
        seats.materials(Lever.BALL_MATERIAL, FileKeys.below(seats.balled(), "material"), BALLS));
    found.addAll(
        seats.materials(Lever.SEAT_MATERIAL, FileKeys.below(file.seats(), "material"), SEATS));
    found.addAll(seats.widths());
    return found;
  }

  private List<String> balled() {
    return FileKeys.below(file.supports(), "ball");
  }

  private List<Ladder> balls() {
    List<FileKeys.Held> keys = file.held(FileKeys.below(balled(), "diameter"), QuantityKind.LENGTH);
    return stock(Lever.BALL, keys, "ball", this::cutAnew);
  }

  private List<Ladder> pinDiameters() {
    List<FileKeys.Held> keys =
        file.held(FileKeys.below(file.seats(), "pin_diameter"), QuantityKind.LENGTH);
    return stock(Lever.PINS, keys, "pin", this::spacedAnew);
  }

  /** What follows from a size in stock. */
  private interface Followed {
    List<Alteration> by(double ratio, List<Alteration> sizes);
  }

  private List<Ladder> stock(
      Lever lever, List<FileKeys.Held> keys, String list, Followed followed) {
    if (keys.isEmpty()) {
      return List.of();
    }
    Quantity now = keys.get(0).quantity();
    boolean inch = now.unit().symbol().contains("in");
    String name =
        list.equals("pin") ? (inch ? "pin-inch" : "pin") : inch ? "ball-inch" : "ball-metric";
    List<String> stock = StockSizes.named(name).sizes();
    List<Double> sizes = new ArrayList<>();
    int at = 0;
    for (String size : stock) {
      QuantityReading read = file.file().quantity(size, QuantityKind.LENGTH);
      double value = read instanceof Quantity q ? q.value() : 0;
      sizes.add(value);
      at += value < now.value() * (1 - 1e-6) ? 1 : 0;
    }
    List<Rung> rungs = new ArrayList<>();
    for (int i = 0; i < stock.size(); i++) {
      double ratio = sizes.get(i) / now.value();
      int steps = Math.abs(i - at);
      if (steps > STOCK_STEPS || Math.abs(ratio - 1) < 1e-6) {
        continue;
      }
      List<Alteration> all = new ArrayList<>();
      for (FileKeys.Held key : keys) {
        all.add(key.to(stock.get(i)));
      }
      rungs.add(
          new Rung(
              stock.get(i),
              Math.max(1, steps) * ONE_STEP,
              ratio > 1 ? 1 : -1,
              followed.by(ratio, all)));
    }
    return List.of(new Ladder(lever, now.text(), rungs));
  }

  private List<Alteration> cutAnew(double ratio, List<Alteration> balls) {
    List<Alteration> all = new ArrayList<>(balls);
    all.addAll(pins(ratio, 1));
    return following.with(all);
  }

  private List<Alteration> spacedAnew(double ratio, List<Alteration> pins) {
    List<Alteration> all = new ArrayList<>(pins);
    all.addAll(pins(1, ratio));
    for (FileKeys.Held depth :
        file.held(FileKeys.below(file.seats(), "floor_depth"), QuantityKind.LENGTH)) {
      Quantity q = depth.quantity();
      all.add(depth.to(RecutSeats.text(ratio * q.value(), q.unit())));
    }
    return all;
  }

  /** Pins stand so that the contact angle stays. */
  private List<Alteration> pins(double balls, double pins) {
    List<Alteration> all = new ArrayList<>();
    List<String> seats = file.seats();
    for (String seat : seats) {
      Optional<Quantity> spacing = file.quantity(seat + ".spacing", QuantityKind.LENGTH);
      Optional<Quantity> pin = file.quantity(seat + ".pin_diameter", QuantityKind.LENGTH);
      String ball =
          (seat.startsWith("layout") ? "layout" : seat.substring(0, seat.lastIndexOf('.')))
              + ".ball.diameter";
      Optional<Quantity> diameter = file.quantity(ball, QuantityKind.LENGTH);
      if (spacing.isPresent() && pin.isPresent() && diameter.isPresent()) {
        double was = diameter.get().value();
        double wider = (balls * was + pins * pin.get().value()) / (was + pin.get().value());
        all.add(
            FileKeys.quantity(
                seat + ".spacing",
                QuantityKind.LENGTH,
                RecutSeats.text(wider * spacing.get().value(), spacing.get().unit())));
      }
    }
    return all;
  }

  private List<Ladder> flanks() {
    List<String> grooves = new ArrayList<>();
    List<String> firsts = new ArrayList<>();
    for (String seat : file.seats()) {
      String kind = file.typed(seat + ".kind").orElse("");
      boolean groove =
          kind.equals("vee")
              || kind.equals("gothic")
              || kind.equals("pins")
              || seat.endsWith(".groove");
      (groove ? grooves : firsts).add(seat);
    }
    List<Ladder> found = new ArrayList<>(flanks(Lever.FLANK_ANGLE, grooves));
    found.addAll(flanks(Lever.FIRST_SEAT_ANGLE, firsts));
    return found;
  }

  private List<Ladder> flanks(Lever lever, List<String> seats) {
    List<FileKeys.Held> keys = file.held(FileKeys.below(seats, "flank_angle"), QuantityKind.ANGLE);
    if (keys.isEmpty()) {
      return List.of();
    }
    Quantity now = keys.get(0).quantity();
    List<Rung> rungs = new ArrayList<>();
    for (double degrees : FLANKS) {
      double off = Math.abs(degrees - Elementary.toDegrees(now.value()));
      if (off > 1e-6) {
        List<Alteration> all = new ArrayList<>();
        String value = Elementary.round(degrees) + " deg";
        for (FileKeys.Held key : keys) {
          all.add(key.to(value));
        }
        int way = Elementary.toRadians(degrees) > now.value() ? 1 : -1;
        rungs.add(new Rung(value, off / 10, way, following.with(all)));
      }
    }
    return List.of(new Ladder(lever, now.text(), rungs));
  }

  /** The whole triangle turned about the coupling's axis, with its seats. */
  private List<Ladder> turns() {
    Optional<Quantity> first = file.quantity("layout.first_ball_at", QuantityKind.ANGLE);
    if (!file.supports().contains("layout")) {
      return List.of();
    }
    double now = first.isPresent() ? Elementary.toDegrees(first.get().value()) : 0;
    List<Rung> rungs = new ArrayList<>();
    for (int turn = 15; turn <= 180; turn += 15) {
      for (int way = -1; way <= 1; way += 2) {
        double to = now + way * turn;
        if (turn < 180 || way > 0) {
          double plain =
              Elementary.rint(100 * (to > 180 ? to - 360 : to <= -180 ? to + 360 : to)) / 100;
          String value = degrees(plain);
          rungs.add(
              new Rung(
                  value,
                  turn / 10.0,
                  0,
                  List.of(FileKeys.quantity("layout.first_ball_at", QuantityKind.ANGLE, value))));
        }
      }
    }
    return List.of(new Ladder(Lever.TURN, first.map(Quantity::text).orElse("0 deg"), rungs));
  }

  private static String degrees(double angle) {
    return angle == Elementary.rint(angle)
        ? Elementary.round(angle) + " deg"
        : PrintedNumber.shortest(angle) + " deg";
  }

  /** All grooves off their bisectors turned to them at once. */
  private List<Ladder> grooveDirections() {
    List<Support> supports = design.supports();
    if (supports.size() != 3 || file.supports().size() != 3) {
      return List.of();
    }
    List<Alteration> all = new ArrayList<>();
    List<String> told = new ArrayList<>();
    double worst = 0;
    for (int i = 0; i < 3; i++) {
      Support s = supports.get(i);
      Vec3 bisector = GrooveDirectionCheck.bisector(supports, i);
      if (!s.seat().isGroove()) {
        continue;
      }
      if (!(bisector.norm() > 1e-9) || Math.abs(s.seat().frame().up().z()) < 0.999) {
        return List.of();
      }
      double cosine = Math.abs(s.seat().frame().axis().dot(bisector.unit()));
      double off = Elementary.toDegrees(Elementary.acos(Math.min(1, cosine)));
      if (off > 0.1) {
        double angle = Elementary.toDegrees(Elementary.atan2(bisector.y(), bisector.x()));
        double turned = Elementary.rint(100 * (angle < 0 ? angle + 180 : angle)) / 100;
        String value = degrees(turned >= 180 ? 0 : turned);
        all.add(FileKeys.quantity("support[" + (i + 1) + "].seat.axis", QuantityKind.ANGLE, value));
        told.add(s.name() + " " + value);
        worst = Math.max(worst, off);
      }
    }
    return all.isEmpty()
        ? List.of()
        : List.of(
            new Ladder(
                Lever.GROOVE_DIRECTION,
                "",
                List.of(new Rung(String.join(", ", told), worst / 10, 0, all))));
  }

  private List<Ladder> materials(Lever lever, List<String> paths, List<String> materials) {
    List<String> present = new ArrayList<>();
    for (String path : paths) {
      if (file.typed(path).isPresent()) {
        present.add(path);
      }
    }
    if (present.isEmpty()) {
      return List.of();
    }
    String from = file.typed(present.get(0)).orElseThrow();
    List<Rung> rungs = new ArrayList<>();
    for (String material : materials) {
      List<Alteration> all = new ArrayList<>();
      for (String path : present) {
        if (file.typed(path).filter(material::equals).isEmpty()) {
          all.add(FileKeys.word(path, material));
        }
      }
      if (!all.isEmpty()) {
        rungs.add(new Rung(material, OTHER, 0, all));
      }
    }
    return List.of(new Ladder(lever, from, rungs));
  }

  private List<Ladder> widths() {
    List<String> seats = file.seats();
    List<Ladder> found = new ArrayList<>();
    List<String> mouths = FileKeys.below(seats, "mouth_width");
    mouths.addAll(FileKeys.below(seats, "mouth_diameter"));
    mouths.addAll(FileKeys.below(seats, "pad_diameter"));
    found.addAll(Steps.lengths(file, Lever.MOUTH, mouths, 0.8, 2.5, 0.1e-3, 0.005 * 25.4e-3));
    List<String> roots = FileKeys.below(seats, "root_width");
    roots.addAll(FileKeys.below(seats, "root_diameter"));
    found.addAll(Steps.lengths(file, Lever.RELIEF, roots, 0.2, 1.5, 0.1e-3, 0.005 * 25.4e-3));
    found.addAll(
        Steps.lengths(
            file,
            Lever.SEAT_LENGTH,
            FileKeys.below(seats, "length"),
            0.9,
            3,
            0.5e-3,
            0.05 * 25.4e-3));
    List<String> depths = FileKeys.below(seats, "root_depth");
    depths.addAll(FileKeys.below(seats, "floor_depth"));
    found.addAll(Steps.lengths(file, Lever.SEAT_DEPTH, depths, 0.8, 3, 0.1e-3, 0.01 * 25.4e-3));
    found.addAll(
        Steps.lengths(
            file,
            Lever.CASE_DEPTH,
            FileKeys.below(seats, "case_depth"),
            1,
            10,
            0.05e-3,
            0.002 * 25.4e-3));
    List<String> gaps = new ArrayList<>();
    for (int i = 1; i <= design.shop().keepClear().size(); i++) {
      gaps.add("keep_clear[" + i + "].gap");
    }
    found.addAll(Steps.lengths(file, Lever.CLEARANCE, gaps, 1, 30, 0.05e-3, 0.002 * 25.4e-3));
    return found;
  }
}
