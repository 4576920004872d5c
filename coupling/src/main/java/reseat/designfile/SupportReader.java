package reseat.designfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import reseat.design.BallMounting;
import reseat.design.Half;
import reseat.design.Support;
import reseat.material.Material;
import reseat.seat.Ball;
import reseat.seat.Seat;
import reseat.seat.SeatFrame;
import reseat.space.Vec3;
import reseat.units.QuantityKind;

/** Reads balls in seats, one by one or by the shorthand for a usual layout. */
final class SupportReader {

  /** Usual layouts; all but the first have a seat for one ball's place, a groove and a flat. */
  private enum Layout {
    THREE_VEE("groove", null),
    TRIHEDRAL_VEE_FLAT("trihedral", SeatReader.Kind.TRIHEDRAL),
    CONE_VEE_FLAT("cone", SeatReader.Kind.CONE);

    final String firstSeat;
    final SeatReader.Kind firstKind;

    Layout(String firstSeat, SeatReader.Kind firstKind) {
      this.firstSeat = firstSeat;
      this.firstKind = firstKind;
    }
  }

  private static final Map<String, Layout> LAYOUTS =
      Map.of(
          "three-vee",
          Layout.THREE_VEE,
          "trihedral-vee-flat",
          Layout.TRIHEDRAL_VEE_FLAT,
          "cone-vee-flat",
          Layout.CONE_VEE_FLAT);

  private final MaterialReader materials;
  private final Vec3 opens;
  private final MountingReader mountings;

  SupportReader(MaterialReader materials, Half ballsOn) {
    this.materials = materials;
    this.opens = ballsOn == Half.HOLDER ? Vec3.Z : Vec3.Z.negated();
    this.mountings = new MountingReader(materials, opens.negated());
  }

  /** Reads [[support]] tables. */
  List<Support> each(List<Section> sections) {
    List<Support> supports = new ArrayList<>();
    for (Section s : sections) {
      String name = s.requiredText("name", "support " + (supports.size() + 1));
      Vec3 at = s.vector("at", QuantityKind.LENGTH).orElse(Vec3.ZERO);
      if (!s.has("at")) {
        s.error("at", "is missing; write the centre of the ball, [\"x\", \"y\", \"z\"]");
      }
      Optional<Section> ball =
          s.requiredChild("ball", "{ diameter = \"12.7 mm\", material = \"52100\" }");
      Optional<Section> seat =
          s.requiredChild(
              "seat", "{ kind = \"vee\", axis = \"90 deg\", flank_angle = \"45 deg\", ... }");
      BallMounting mounting = mounting(s);
      if (ball.isPresent() && seat.isPresent()) {
        add(supports, support(name, at, ball.get(), seat.get(), null, null, mounting));
        ball.get().close();
        seat.get().close();
      }
      s.close();
    }
    return supports;
  }

  /** Reads the [layout] shorthand. */
  List<Support> layout(Section s) {
    List<Support> supports = new ArrayList<>();
    Optional<Layout> stated = s.requiredChoice("kind", LAYOUTS);
    double radius = s.positive("circle_diameter", QuantityKind.LENGTH, 0.07) / 2;
    double first = s.quantity("first_ball_at", QuantityKind.ANGLE, 0);
    Optional<Section> ball =
        s.requiredChild("ball", "{ diameter = \"12.7 mm\", material = \"52100\" }");
    BallMounting mounting = mounting(s);
    List<Vec3> at = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      at.add(Vec3.atAzimuth(first + 2 * Math.PI * i / 3).times(radius));
    }
    Layout layout = stated.isPresent() ? stated.get() : guess(s);
    if (ball.isPresent()) {
      if (layout == Layout.THREE_VEE) {
        List<String> names = names(s, List.of("ball 1", "ball 2", "ball 3"));
        Optional<Section> groove =
            s.requiredChild("groove", "{ kind = \"vee\", flank_angle = \"45 deg\", ... }");
        if (groove.isPresent()) {
          Section seat = groove.get();
          for (int i = 0; i < 3; i++) {
            Vec3 centre = at.get(i);
            add(supports, support(names.get(i), centre, ball.get(), seat, null, centre, mounting));
          }
          seat.close();
        }
      } else {
        List<String> names = names(s, List.of(layout.firstSeat, "vee", "flat"));
        SeatReader.Kind[] kinds = {layout.firstKind, SeatReader.Kind.VEE, SeatReader.Kind.FLAT};
        String[] keys = {layout.firstSeat, "groove", "flat"};
        Vec3[] axes = {at.get(0), at.get(0).minus(at.get(1)), at.get(2)};
        for (int i = 0; i < 3; i++) {
          Optional<Section> seat = s.requiredChild(keys[i], "a table for that seat");
          if (seat.isPresent()) {
            SeatReader.Kind kind = kinds[i] == SeatReader.Kind.VEE ? null : kinds[i];
            Vec3 centre = at.get(i);
            add(
                supports,
                support(names.get(i), centre, ball.get(), seat.get(), kind, axes[i], mounting));
            seat.get().close();
          }
        }
      }
      ball.get().close();
    } else {
      // without a ball no seat is read, but that does not make its key unknown
      for (String key : List.of("names", "groove", "cone", "trihedral", "flat")) {
        s.has(key);
      }
    }
    s.close();
    return supports;
  }

  private BallMounting mounting(Section s) {
    Optional<Section> mounting = s.child("mounting");
    return mounting.isPresent() ? mountings.read(mounting.get()) : BallMounting.rigid();
  }

  private static void add(List<Support> supports, Optional<Support> read) {
    if (read.isPresent()) {
      supports.add(read.get());
    }
  }

  /** What a layout without a kind is likely to be, so that the rest of it is read all the same. */
  private static Layout guess(Section s) {
    if (s.has("cone")) {
      return Layout.CONE_VEE_FLAT;
    }
    return s.has("groove") && !s.has("flat") ? Layout.THREE_VEE : Layout.TRIHEDRAL_VEE_FLAT;
  }

  private static List<String> names(Section s, List<String> otherwise) {
    List<String> names = s.texts("names", otherwise);
    if (names.size() != 3) {
      s.error("names", "found " + names.size() + " names; three are wanted");
      return otherwise;
    }
    return names;
  }

  private Optional<Support> support(
      String name,
      Vec3 at,
      Section ball,
      Section seat,
      SeatReader.Kind fixedKind,
      Vec3 defaultAxis,
      BallMounting mounting) {
    double radius = ball.positive("diameter", QuantityKind.LENGTH, 0.0127) / 2;
    Material ballMaterial = materials.named(ball, "material");
    SeatReader.Kind kind = fixedKind;
    if (kind == null) {
      Optional<SeatReader.Kind> read = seat.requiredChoice("kind", SeatReader.KINDS);
      if (read.isEmpty()) {
        return Optional.empty();
      }
      kind = read.get();
    }
    Material seatMaterial = materials.named(seat, "material");
    double caseDepth = seat.positiveOr("case_depth", QuantityKind.LENGTH, Double.POSITIVE_INFINITY);
    double madeFor = seat.positiveOr("made_for_ball", QuantityKind.LENGTH, 2 * radius) / 2;
    Vec3 seatAt = seat.vector("at", QuantityKind.LENGTH).orElse(at);
    SeatFrame frame = SeatReader.frame(seat, kind, seatAt, opens, defaultAxis);
    Optional<Seat> built = SeatReader.read(seat, kind, frame, madeFor);
    if (built.isEmpty()) {
      return Optional.empty();
    }
    try {
      Ball made = new Ball(at, radius);
      return Optional.of(
          new Support(name, made, ballMaterial, built.get(), seatMaterial, caseDepth, mounting));
    } catch (IllegalArgumentException e) {
      return ball.refused(e);
    }
  }
}
