package reseat.equilibrium;

import java.util.ArrayList;
import java.util.List;
import reseat.elementary.Elementary;
import reseat.space.Vec3;
import reseat.space.Wrench;

/**
 * Where a preload's line of action may wander in the coupling plane before a contact opens.
 *
 * <p>Moved parallel to itself, a force changes each contact force in proportion to the shift, so
 * the allowed points form a convex polygon: one straight edge per contact.
 *
 * @param corners corners of the polygon in the coupling plane, in order, m; empty when no place in
 *     the window searched keeps all contacts closed
 * @param margin how far the line may move sideways, m, across itself, before a contact opens;
 *     negative if one is open. A line that leans has less of it than the polygon is wide
 * @param nearest name of the contact that opens first
 */
public record PreloadZone(List<Vec3> corners, double margin, String nearest) {

  /** Copies the corners. */
  public PreloadZone {
    corners = List.copyOf(corners);
  }

  /**
   * Finds the zone.
   *
   * @param lines where the contacts push
   * @param others all other loads that are always there (weight, other preloads)
   * @param moving the preload that wanders
   * @param through a point of its present line of action, m
   * @param halfWindow half the side of the square about the origin that is searched, m
   * @param share least share of its present force that every contact is to keep, 0 to less than 1
   * @return the zone
   * @throws IllegalArgumentException if the force runs along the coupling plane
   * @throws ArithmeticException if the contacts do not constrain the holder
   */
  public static PreloadZone of(
      ContactLines lines,
      Wrench others,
      Vec3 moving,
      Vec3 through,
      double halfWindow,
      double share) {
    if (!(Math.abs(moving.z()) > 1e-9 * moving.norm())) {
      throw new IllegalArgumentException("the preload runs along the coupling plane");
    }
    Vec3 pierce = through.minus(moving.times(through.z() / moving.z()));
    ForceBalance balance = new ForceBalance(lines);
    double[] here = balance.forces(others.plus(Wrench.ofForce(moving, pierce)));
    double[] perX = balance.forces(new Wrench(Vec3.ZERO, Vec3.X.cross(moving), Vec3.ZERO));
    double[] perY = balance.forces(new Wrench(Vec3.ZERO, Vec3.Y.cross(moving), Vec3.ZERO));
    List<Vec3> polygon =
        List.of(
            new Vec3(-halfWindow, -halfWindow, 0),
            new Vec3(halfWindow, -halfWindow, 0),
            new Vec3(halfWindow, halfWindow, 0),
            new Vec3(-halfWindow, halfWindow, 0));
    double margin = Double.POSITIVE_INFINITY;
    String nearest = "";
    ContactPlaces places = ContactPlaces.of(lines);
    for (int i = 0; i < places.size(); i++) {
      double gx = places.force(i, perX);
      double gy = places.force(i, perY);
      // a shift along the line changes nothing, which tells the part along z
      double gz = -(gx * moving.x() + gy * moving.y()) / moving.z();
      double slope = Elementary.hypot(Elementary.hypot(gx, gy), gz);
      double pressed = places.force(i, here);
      double spare = pressed - share * Math.max(0, pressed);
      if (slope > 0) {
        if (spare / slope < margin) {
          margin = spare / slope;
          nearest = places.name(i);
        }
        polygon = clip(polygon, pierce, spare, gx, gy);
      } else if (spare < 0) {
        return new PreloadZone(List.of(), Double.NEGATIVE_INFINITY, places.name(i));
      }
    }
    return new PreloadZone(corners(polygon), margin, nearest);
  }

  /** Leaves out points that lie on the straight line between their neighbours. */
  private static List<Vec3> corners(List<Vec3> polygon) {
    List<Vec3> kept = new ArrayList<>();
    int n = polygon.size();
    for (int i = 0; i < n; i++) {
      Vec3 p = polygon.get(i);
      Vec3 before = p.minus(polygon.get((i + n - 1) % n));
      Vec3 after = polygon.get((i + 1) % n).minus(p);
      if (before.cross(after).norm() > 1e-9 * before.norm() * after.norm()) {
        kept.add(p);
      }
    }
    return kept;
  }

  /** Keeps the part of a convex polygon where spare + gx (x - x0) + gy (y - y0) is positive. */
  private static List<Vec3> clip(
      List<Vec3> polygon, Vec3 from, double spare, double gx, double gy) {
    List<Vec3> kept = new ArrayList<>();
    for (int i = 0; i < polygon.size(); i++) {
      Vec3 p = polygon.get(i);
      Vec3 q = polygon.get((i + 1) % polygon.size());
      double fp = spare + gx * (p.x() - from.x()) + gy * (p.y() - from.y());
      double fq = spare + gx * (q.x() - from.x()) + gy * (q.y() - from.y());
      if (fp >= 0) {
        kept.add(p);
      }
      if ((fp > 0 && fq < 0) || (fp < 0 && fq > 0)) {
        kept.add(p.plus(q.minus(p).times(fp / (fp - fq))));
      }
    }
    return kept;
  }
}
