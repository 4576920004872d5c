package reseat.designfile;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import reseat.ballmount.ConePivot;
import reseat.ballmount.FlatPivot;
import reseat.ballmount.IndexedSlotting;
import reseat.ballmount.PivotSeat;
import reseat.ballmount.SocketPivot;
import reseat.ballmount.TrihedralPivot;
import reseat.design.PivotDuty;
import reseat.elementary.Elementary;
import reseat.material.ElasticPair;
import reseat.material.FrictionCatalog;
import reseat.material.FrictionPair;
import reseat.material.Material;
import reseat.material.SurfaceState;
import reseat.units.QuantityKind;

/** Reads the seat a ball turns in, and the film pad behind it. */
final class PivotReader {

  private enum Kind {
    TRIHEDRAL,
    CONE,
    SOCKET,
    FLAT
  }

  private static final Map<String, Kind> KINDS = kinds();
  private static final Map<String, SurfaceState> SURFACES =
      Map.of("oiled", SurfaceState.OILED, "dry", SurfaceState.DRY);

  private final MaterialReader materials;

  PivotReader(MaterialReader materials) {
    this.materials = materials;
  }

  private static Map<String, Kind> kinds() {
    Map<String, Kind> words = new LinkedHashMap<>();
    words.put("trihedral", Kind.TRIHEDRAL);
    words.put("cone", Kind.CONE);
    words.put("socket", Kind.SOCKET);
    words.put("flat", Kind.FLAT);
    return words;
  }

  /**
   * Reads a seat.
   *
   * @param s its table
   * @param ballRadius radius of the ball, m
   * @param ball material of the ball
   * @param film the film pad, if there is one
   * @return the seat, unless something is wrong
   */
  Optional<PivotDuty> read(
      Section s, double ballRadius, Material ball, Optional<PivotDuty.Film> film) {
    Optional<Kind> kind = s.requiredChoice("kind", KINDS);
    Material material = materials.named(s, "material");
    SurfaceState surface = s.choice("surface", SURFACES).orElse(SurfaceState.OILED);
    FrictionPair pair = FrictionCatalog.standard().between(ball, material, surface);
    boolean told = s.has("friction");
    double friction = told ? s.ratio("friction", pair.nominal()) : pair.nominal();
    String basis = told ? "given in the file" : pair.source();
    // asked for even when the seat is wrong, or its table would be called unknown as well
    Optional<Section> table = s.child("slotting");
    Optional<PivotDuty> duty = Optional.empty();
    if (kind.isPresent()) {
      try {
        ElasticPair touching = new ElasticPair(ball.elastic(), material.elastic());
        PivotSeat seat = seat(s, kind.get(), ballRadius, touching);
        Optional<IndexedSlotting> slots =
            table.isPresent() ? slotting(s, table.get(), seat) : Optional.empty();
        duty = Optional.of(new PivotDuty(seat, material, friction, basis, film, slots));
      } catch (IllegalArgumentException e) {
        s.refused(e);
      }
    }
    s.close();
    return duty;
  }

  /** Reads how a trihedral seat is cut by indexed slots. */
  private static Optional<IndexedSlotting> slotting(Section seat, Section s, PivotSeat made) {
    if (!(made instanceof TrihedralPivot trihedral)) {
      seat.error("slotting", "is for a trihedral seat, the only one that three slots make");
      return Optional.empty();
    }
    double spindle = s.quantity("spindle_error", QuantityKind.ANGLE, 0);
    double index = s.quantity("index_error", QuantityKind.ANGLE, 0);
    double axis = s.quantity("axis_error", QuantityKind.ANGLE, 0);
    double depth = s.quantity("depth_error", QuantityKind.LENGTH, 0);
    s.close();
    try {
      IndexedSlotting.Limits limits = new IndexedSlotting.Limits(spindle, index, axis, depth);
      return Optional.of(
          new IndexedSlotting(trihedral.ballRadius(), trihedral.flankAngle(), limits));
    } catch (IllegalArgumentException e) {
      return s.refused(e);
    }
  }

  private static PivotSeat seat(Section s, Kind kind, double radius, ElasticPair pair) {
    return switch (kind) {
      case TRIHEDRAL -> {
        double angle = s.positive("flank_angle", QuantityKind.ANGLE, Elementary.toRadians(45));
        yield new TrihedralPivot(radius, angle, pair);
      }
      case CONE -> {
        double included = s.positive("cone_angle", QuantityKind.ANGLE, Elementary.toRadians(90));
        yield new ConePivot(radius, (Math.PI - included) / 2, pair);
      }
      case SOCKET -> {
        double inner = s.quantity("inner_angle", QuantityKind.ANGLE, 0);
        double outer = s.positive("outer_angle", QuantityKind.ANGLE, Elementary.toRadians(60));
        yield new SocketPivot(radius, inner, outer, pair);
      }
      case FLAT -> new FlatPivot(radius, pair);
    };
  }

  /** Reads a film pad. */
  static Optional<PivotDuty.Film> film(Section s) {
    double stiffness = s.positive("film_stiffness", QuantityKind.STIFFNESS, 25e6);
    double tilt = s.positive("tilt_stiffness", QuantityKind.TURNING_STIFFNESS, 1500);
    double radius = s.positive("pad_diameter", QuantityKind.LENGTH, 40e-3) / 2;
    double thickness = s.positive("film_thickness", QuantityKind.LENGTH, 5e-6);
    s.close();
    try {
      return Optional.of(new PivotDuty.Film(stiffness, tilt, radius, thickness));
    } catch (IllegalArgumentException e) {
      return s.refused(e);
    }
  }
}
