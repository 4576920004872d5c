package reseat.making;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import reseat.design.CouplingDesign;
import reseat.design.KeepClear;
import reseat.design.Tolerance;
import reseat.design.ToleranceKind;
import reseat.design.Tolerances;
import reseat.elementary.Elementary;
import reseat.equilibrium.CaseResponse;
import reseat.equilibrium.Equilibrium;
import reseat.equilibrium.ErrorMotion;
import reseat.equilibrium.PreloadScatter;
import reseat.interchange.Sensitivity;
import reseat.interchange.ToleranceModel;
import reseat.space.Twist;
import reseat.space.Vec3;

/**
 * The room that the motion of the holder against the base takes at one place, so that nothing but
 * the six contacts ever touches.
 *
 * <p>Four parts are added at their worst: the way from first touch to rest, the motion under the
 * load case that moves most, the scatter of the preloads, and where the holder stands by the
 * tolerances of all parts. Load cases that lift a contact off are left out, since the holder then
 * has no place; see {@link reseat.equilibrium.LiftOff}. The contacts are taken to slide freely,
 * which moves most.
 *
 * @param place what must not touch, and where
 * @param rest from first touch to rest
 * @param loads from rest, under the worst load case
 * @param scatter by the scatter of the preloads
 * @param tolerances by the tolerances; zero without any
 */
public record Clearance(KeepClear place, Room rest, Room loads, Room scatter, Room tolerances) {

  /**
   * Room that a motion takes.
   *
   * @param sideways in the coupling plane, either way, m
   * @param along out of the coupling plane, either way, m
   * @param across in the direction of the gap, either way, m; zero where it lies all round
   */
  public record Room(double sideways, double along, double across) {

    private static final Room NONE = new Room(0, 0, 0);

    private static Room of(Vec3 motion, KeepClear place) {
      return new Room(
          Elementary.hypot(motion.x(), motion.y()),
          Math.abs(motion.z()),
          place.across().map(d -> Math.abs(motion.dot(d))).orElse(0.0));
    }

    private Room plus(Room other) {
      return new Room(sideways + other.sideways, along + other.along, across + other.across);
    }

    private Room times(double factor) {
      return new Room(factor * sideways, factor * along, factor * across);
    }

    private Room or(Room other) {
      return new Room(
          Math.max(sideways, other.sideways),
          Math.max(along, other.along),
          Math.max(across, other.across));
    }
  }

  /**
   * Finds the room at every place that the design names or has by its nature.
   *
   * @param standing the coupling at rest
   * @param cases its responses to the load cases
   * @param preloads what the scatter of each preload does
   * @return what the user names first, then pulls, faces and floors
   */
  public static List<Clearance> all(
      Equilibrium standing, List<CaseResponse> cases, List<PreloadScatter> preloads) {
    List<Clearance> all = new ArrayList<>();
    for (KeepClear place : PlacesToKeepClear.of(standing.model().design())) {
      all.add(of(place, standing, cases, preloads));
    }
    return all;
  }

  /**
   * Finds the room at a place.
   *
   * @param place what must not touch, and where
   * @param standing the coupling at rest
   * @param cases its responses to the load cases
   * @param preloads what the scatter of each preload does
   * @return the room
   */
  public static Clearance of(
      KeepClear place,
      Equilibrium standing,
      List<CaseResponse> cases,
      List<PreloadScatter> preloads) {
    Vec3 at = place.at();
    Vec3 tool = standing.model().design().toolPoint();
    Vec3 home = standing.displacementOf(at);
    Room loads = Room.NONE;
    for (CaseResponse c : cases) {
      if (!c.liftsOff()) {
        loads = loads.or(Room.of(c.state().displacementOf(at).minus(home), place));
      }
    }
    Room scatter = Room.NONE;
    for (PreloadScatter p : preloads) {
      Room stronger = Room.of(moved(p.stronger(), tool, at), place);
      scatter = scatter.plus(stronger.or(Room.of(moved(p.weaker(), tool, at), place)));
    }
    Room tolerances = ofTolerances(standing.model().design(), place);
    return new Clearance(place, Room.of(home, place), loads, scatter, tolerances);
  }

  /** Told of a tool point at the place, so that the growth of a warmer holder there counts too. */
  private static Room ofTolerances(CouplingDesign design, KeepClear place) {
    List<Tolerance> parts = new ArrayList<>();
    for (Tolerance t : design.tolerances().entries()) {
      if (t.kind() != ToleranceKind.TOOL_POINT) {
        parts.add(t);
      }
    }
    CouplingDesign there =
        design.toBuilder().toolPoint(place.at()).tolerances(new Tolerances(parts)).build();
    Room sum = Room.NONE;
    for (Sensitivity.Effect e : Sensitivity.of(ToleranceModel.of(there)).effects()) {
      sum = sum.plus(Room.of(e.shift(), place).times(e.contributor().spread().limit()));
    }
    return sum;
  }

  private static Vec3 moved(ErrorMotion motion, Vec3 from, Vec3 to) {
    return new Twist(motion.shift(), motion.rotation(), from).displacementOf(to);
  }

  /**
   * Returns all parts together.
   *
   * @return the least room
   */
  public Room least() {
    return rest.plus(loads).plus(scatter).plus(tolerances);
  }

  /**
   * Returns the least gap: in its direction, or whatever direction the halves come closest in.
   *
   * @return m
   */
  public double leastGap() {
    Room least = least();
    return place.across().isPresent()
        ? least.across()
        : Elementary.hypot(least.sideways(), least.along());
  }

  /**
   * Says whether the gap drawn is enough.
   *
   * @return false if it is stated and smaller than the least one
   */
  public boolean holds() {
    OptionalDouble drawn = place.gap();
    return drawn.isEmpty() || drawn.getAsDouble() >= leastGap();
  }
}
