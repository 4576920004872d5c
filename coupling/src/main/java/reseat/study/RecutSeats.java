package reseat.study;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import reseat.designfile.AlterableDesign;
import reseat.designfile.Alteration;
import reseat.designfile.DesignKey;
import reseat.elementary.Elementary;
import reseat.units.Quantity;
import reseat.units.QuantityKind;
import reseat.units.Unit;

/**
 * Seats cut anew when their ball or flank angle changes, as alterations of the design file.
 *
 * <p>Widths at the mouth and the root go with ball diameter times the sine of the flank angle,
 * which keeps the place of the contact between the edges; hollow radii, depths and pads go with the
 * ball. Groove lengths stay. A gothic groove without a stated flank radius gets {@value #GOTHIC}
 * times the ball's; a trihedral seat or a cone and a flat that a layout lacks are made of the
 * groove's material, at its flank angle.
 */
public final class RecutSeats {

  /** Radius of a gothic flank over that of the ball where the file has none; a usual choice. */
  public static final double GOTHIC = 1.2;

  private static final List<String> WITH_CONTACT =
      List.of("mouth_width", "root_width", "mouth_diameter", "root_diameter");
  private static final List<String> WITH_BALL =
      List.of("flank_radius", "root_depth", "pad_diameter");

  /** The seat that holds a ball at three places, or all round, by kind of layout. */
  private static final Map<String, String> FIRST_SEAT =
      Map.of("trihedral-vee-flat", "trihedral", "cone-vee-flat", "cone");

  private final AlterableDesign file;
  private final List<Seat> seats = new ArrayList<>();

  /**
   * A table of a seat: paths of it, of its flank angle and of the diameter of its ball, and what
   * the file has there.
   */
  private record Seat(
      String path,
      String ball,
      Optional<Quantity> diameter,
      String flank,
      Optional<Quantity> angle,
      List<Length> lengths) {}

  /** A length of a seat as the file has it. */
  private record Length(DesignKey key, double value, Unit unit, boolean withContact) {}

  /**
   * Finds the seats of a file.
   *
   * @param file the design file, without errors
   */
  public RecutSeats(AlterableDesign file) {
    this.file = file;
    for (String seat : List.of("groove", "trihedral", "flat")) {
      seats.add(seat("layout." + seat, "layout.ball"));
    }
    int supports = file.unaltered().design().map(d -> d.supports().size()).orElse(0);
    for (int i = 1; i <= supports; i++) {
      seats.add(seat("support[" + i + "].seat", "support[" + i + "].ball"));
    }
  }

  private Seat seat(String path, String ball) {
    List<Length> lengths = new ArrayList<>();
    for (String name : WITH_CONTACT) {
      length(path + "." + name, true).ifPresent(lengths::add);
    }
    for (String name : WITH_BALL) {
      length(path + "." + name, false).ifPresent(lengths::add);
    }
    String diameter = ball + ".diameter";
    String angle = path + ".flank_angle";
    return new Seat(
        path,
        diameter,
        typed(table(diameter)).flatMap(t -> read(t, QuantityKind.LENGTH)),
        angle,
        typed(table(angle)).flatMap(t -> read(t, QuantityKind.ANGLE)),
        lengths);
  }

  private Optional<Length> length(String path, boolean withContact) {
    DesignKey key = key(path, QuantityKind.LENGTH);
    return typed(key)
        .flatMap(text -> read(text, QuantityKind.LENGTH))
        .map(q -> new Length(key, q.value(), q.unit(), withContact));
  }

  private static DesignKey key(String path, QuantityKind kind) {
    return new DesignKey(path, path, Optional.of(kind));
  }

  private static DesignKey table(String path) {
    return new DesignKey(path, path, Optional.empty());
  }

  private Optional<String> typed(DesignKey key) {
    try {
      return file.typed(key);
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private Optional<Quantity> read(String text, QuantityKind kind) {
    return file.quantity(text, kind) instanceof Quantity q ? Optional.of(q) : Optional.empty();
  }

  /**
   * Adds what follows from alterations.
   *
   * @param changes alterations of the file
   * @return the same with those of the seats behind them
   */
  public List<Alteration> with(List<Alteration> changes) {
    List<Alteration> all = new ArrayList<>(changes);
    layout(changes, all);
    for (Seat s : seats) {
      double ball = ratio(changes, s.ball(), s.diameter(), QuantityKind.LENGTH, false);
      double sine = ratio(changes, s.flank(), s.angle(), QuantityKind.ANGLE, true);
      for (Length l : s.lengths()) {
        double factor = l.withContact() ? ball * sine : ball;
        if (factor != 1 && altered(changes, l.key().path()).isEmpty()) {
          all.add(new Alteration(l.key(), text(l.value() * factor, l.unit())));
        }
      }
      boolean gothic = altered(changes, s.path() + ".kind").filter("gothic"::equals).isPresent();
      DesignKey radius = key(s.path() + ".flank_radius", QuantityKind.LENGTH);
      if (gothic && typed(radius).isEmpty() && altered(changes, radius.path()).isEmpty()) {
        value(changes, s.ball(), QuantityKind.LENGTH)
            .ifPresent(
                q -> all.add(new Alteration(radius, text(GOTHIC * q.value() / 2, q.unit()))));
      }
    }
    return List.copyOf(all);
  }

  /** Tables that another kind of layout needs. */
  private void layout(List<Alteration> changes, List<Alteration> all) {
    Optional<String> first = altered(changes, "layout.kind").map(FIRST_SEAT::get);
    boolean other =
        first.isPresent() && typed(table("layout.kind")).filter("three-vee"::equals).isPresent();
    Optional<String> angle = text(changes, "layout.groove.flank_angle");
    Optional<String> material = text(changes, "layout.groove.material");
    if (other && angle.isPresent() && material.isPresent()) {
      String made = "material = \"" + material.get() + "\" }";
      all.add(
          new Alteration(
              table("layout." + first.get()), "{ flank_angle = \"" + angle.get() + "\", " + made));
      all.add(new Alteration(table("layout.flat"), "{ " + made));
    }
  }

  private Optional<String> text(List<Alteration> changes, String path) {
    Optional<String> changed = altered(changes, path);
    return changed.isPresent() ? changed : typed(table(path));
  }

  private Optional<Quantity> value(List<Alteration> changes, String path, QuantityKind kind) {
    return text(changes, path).flatMap(t -> read(t, kind));
  }

  private static Optional<String> altered(List<Alteration> changes, String path) {
    for (Alteration a : changes) {
      if (a.key().inFile().equals(path) || a.key().path().equals(path)) {
        return Optional.of(a.value());
      }
    }
    return Optional.empty();
  }

  private double ratio(
      List<Alteration> changes,
      String path,
      Optional<Quantity> was,
      QuantityKind kind,
      boolean sine) {
    Optional<Quantity> now = altered(changes, path).flatMap(t -> read(t, kind));
    if (now.isEmpty() || was.isEmpty() || now.get().value() == was.get().value()) {
      return 1;
    }
    return sine
        ? Elementary.sin(now.get().value()) / Elementary.sin(was.get().value())
        : now.get().value() / was.get().value();
  }

  /**
   * A quantity as it would be typed, to four figures.
   *
   * @param si its value, SI
   * @param unit the unit to write it in
   * @return for instance {@code 12.7 mm}
   */
  public static String text(double si, Unit unit) {
    BigDecimal number =
        new BigDecimal(unit.fromSi(si)).round(new MathContext(4)).stripTrailingZeros();
    return number.setScale(Math.max(0, number.scale())).toPlainString()
        + " "
        + unit.symbol().replace("°", "deg").replace("µ", "u");
  }
}
