package reseat.designfile;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import reseat.elementary.Elementary;
import reseat.seat.ConeSeat;
import reseat.seat.CylinderPair;
import reseat.seat.FlatSeat;
import reseat.seat.GothicGroove;
import reseat.seat.GrooveExtent;
import reseat.seat.Seat;
import reseat.seat.SeatFrame;
import reseat.seat.TrihedralSeat;
import reseat.seat.VeeGroove;
import reseat.space.Vec3;
import reseat.units.QuantityKind;

/** Reads one seat of whatever kind. */
final class SeatReader {

  /** Kinds of seat by the word for them in the file. */
  enum Kind {
    VEE,
    GOTHIC,
    PINS,
    TRIHEDRAL,
    CONE,
    FLAT
  }

  static final Map<String, Kind> KINDS = kinds();

  private SeatReader() {}

  private static Map<String, Kind> kinds() {
    Map<String, Kind> words = new LinkedHashMap<>();
    words.put("vee", Kind.VEE);
    words.put("gothic", Kind.GOTHIC);
    words.put("pins", Kind.PINS);
    words.put("trihedral", Kind.TRIHEDRAL);
    words.put("cone", Kind.CONE);
    words.put("flat", Kind.FLAT);
    return words;
  }

  /**
   * Reads the dimensions of a seat.
   *
   * @param s the table of the seat
   * @param kind which kind it is
   * @param frame axes with the origin at the centre of the ball the seat is made for
   * @param ballRadius radius of that ball, m
   * @return the seat, unless something is wrong
   */
  static Optional<Seat> read(Section s, Kind kind, SeatFrame frame, double ballRadius) {
    try {
      return Optional.of(seat(s, kind, frame, ballRadius));
    } catch (IllegalArgumentException e) {
      return s.refused(e);
    }
  }

  private static Seat seat(Section s, Kind kind, SeatFrame frame, double ballRadius) {
    return switch (kind) {
      case VEE -> {
        double angle = s.positive("flank_angle", QuantityKind.ANGLE, Elementary.toRadians(45));
        GrooveExtent extent = extent(s);
        yield VeeGroove.forBall(frame, ballRadius, angle, extent);
      }
      case GOTHIC -> {
        double angle = s.positive("flank_angle", QuantityKind.ANGLE, Elementary.toRadians(45));
        double radius = s.positive("flank_radius", QuantityKind.LENGTH, 2 * ballRadius);
        GrooveExtent extent = extent(s);
        yield GothicGroove.forBall(frame, ballRadius, radius, angle, extent);
      }
      case PINS -> {
        double pin = s.positive("pin_diameter", QuantityKind.LENGTH, ballRadius) / 2;
        double spacing = spacing(s, ballRadius + pin);
        double length = s.positiveOr("length", QuantityKind.LENGTH, Double.POSITIVE_INFINITY);
        double floor = s.positiveOr("floor_depth", QuantityKind.LENGTH, pin);
        yield CylinderPair.forBall(frame, ballRadius, pin, spacing, length, floor);
      }
      case TRIHEDRAL -> {
        double angle = s.positive("flank_angle", QuantityKind.ANGLE, Elementary.toRadians(45));
        double mouth =
            s.positiveOr("mouth_diameter", QuantityKind.LENGTH, Double.POSITIVE_INFINITY);
        double root = s.quantity("root_diameter", QuantityKind.LENGTH, 0);
        yield TrihedralSeat.forBall(frame, ballRadius, angle, mouth, root);
      }
      case CONE -> {
        double angle = coneAngle(s);
        double mouth =
            s.positiveOr("mouth_diameter", QuantityKind.LENGTH, Double.POSITIVE_INFINITY);
        double root = s.quantity("root_diameter", QuantityKind.LENGTH, 0);
        yield ConeSeat.forBall(frame, ballRadius, angle, mouth, root);
      }
      case FLAT -> {
        double pad = s.positiveOr("pad_diameter", QuantityKind.LENGTH, Double.POSITIVE_INFINITY);
        yield FlatSeat.forBall(frame, ballRadius, pad);
      }
    };
  }

  /** Angle between flank and coupling plane, told so or as the included angle of the cone. */
  private static double coneAngle(Section s) {
    if (!s.has("cone_angle")) {
      return s.positive("flank_angle", QuantityKind.ANGLE, Elementary.toRadians(45));
    }
    if (s.has("flank_angle")) {
      s.error("flank_angle", "the cone angle says this already; leave one of the two out");
    }
    double included = s.positive("cone_angle", QuantityKind.ANGLE, Elementary.toRadians(90));
    return (Math.PI - included) / 2;
  }

  /** Distance of the pin axes, told so or by the angle of the contacts to the coupling plane. */
  private static double spacing(Section s, double centres) {
    if (s.has("spacing") || !s.has("flank_angle")) {
      if (s.has("flank_angle")) {
        s.error("flank_angle", "the spacing says this already; leave one of the two out");
      }
      return s.positive("spacing", QuantityKind.LENGTH, 1.42 * centres);
    }
    return 2 * centres * Elementary.sin(s.positive("flank_angle", QuantityKind.ANGLE, Math.PI / 4));
  }

  private static GrooveExtent extent(Section s) {
    double mouth = s.positiveOr("mouth_width", QuantityKind.LENGTH, Double.POSITIVE_INFINITY);
    double length = s.positiveOr("length", QuantityKind.LENGTH, Double.POSITIVE_INFINITY);
    double root = s.quantity("root_width", QuantityKind.LENGTH, 0);
    double depth = s.quantity("root_depth", QuantityKind.LENGTH, 0);
    try {
      return new GrooveExtent(mouth, length, root, depth);
    } catch (IllegalArgumentException e) {
      s.refused(e);
      return GrooveExtent.unlimited();
    }
  }

  /** Axes of a seat at a ball; grooves run along an azimuth, seats open along a direction. */
  static SeatFrame frame(Section s, Kind kind, Vec3 ballCentre, Vec3 opens, Vec3 defaultAxis) {
    Vec3 axis = defaultAxis;
    boolean runs = kind != Kind.FLAT && kind != Kind.CONE;
    if (runs && s.has("axis")) {
      if (s.isList("axis")) {
        axis = s.direction("axis").orElse(defaultAxis);
      } else {
        axis = Vec3.atAzimuth(s.quantity("axis", QuantityKind.ANGLE, 0));
      }
    } else if (runs && defaultAxis == null) {
      s.error("axis", "is missing; write the direction of the groove, for instance \"30 deg\"");
    }
    Vec3 up = s.direction("opens").orElse(opens);
    Vec3 along = axis == null || axis.cross(up).norm() < 1e-6 ? up.anyPerpendicular() : axis;
    if (axis != null && runs && axis.cross(up).norm() < 1e-6) {
      s.error("axis", "the groove must not run along the direction the seat opens to");
    }
    return new SeatFrame(ballCentre, along, up);
  }
}
