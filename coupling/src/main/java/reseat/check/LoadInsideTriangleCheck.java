package reseat.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.check.Finding.Sense;
import reseat.design.CouplingDesign;
import reseat.design.Support;
import reseat.equilibrium.CaseResponse;
import reseat.equilibrium.Equilibrium;
import reseat.space.Vec3;
import reseat.space.Wrench;

/**
 * Whether the resultant of all loads passes through the triangle of the three balls.
 *
 * <p>Where it passes outside, it tips the holder over the nearest edge; only flanks that hold
 * sideways can still keep it seated. This gives the reason behind many a lift-off.
 */
public final class LoadInsideTriangleCheck {

  private static final String CHECK = "load inside triangle";

  private LoadInsideTriangleCheck() {}

  /**
   * Judges preload with weight, and each load case with them.
   *
   * @param standing the coupling at rest
   * @param cases its responses to the load cases
   * @return one finding per load that passes outside, or one that the load at rest passes inside;
   *     none unless there are three supports
   */
  public static List<Finding> of(Equilibrium standing, List<CaseResponse> cases) {
    CouplingDesign design = standing.model().design();
    if (design.supports().size() != 3) {
      return List.of();
    }
    List<Finding> found = new ArrayList<>();
    Optional<Place> rest = place(design.supports(), standing.load());
    if (rest.isPresent()) {
      Severity severity = rest.get().inside() < 0 ? Severity.FAIL : Severity.OK;
      found.add(finding(rest.get(), "preload with weight", "", severity));
    }
    for (CaseResponse r : cases) {
      Optional<Place> loaded = place(design.supports(), r.state().load());
      if (loaded.isPresent() && loaded.get().inside() < 0) {
        found.add(
            finding(
                loaded.get(),
                Sentence.of(r.loadCase().name(), " with preload and weight"),
                r.loadCase().name(),
                r.liftsOff() ? Severity.FAIL : Severity.WARNING));
      }
    }
    return found;
  }

  /**
   * Where a resultant passes.
   *
   * @param inside distance from the nearest edge line, m; negative outside the triangle
   * @param edge names of the two supports at that edge
   */
  private record Place(double inside, String edge) {}

  /** Finds where a load meets the plane of the balls; empty if it does not press on it. */
  private static Optional<Place> place(List<Support> supports, Wrench load) {
    Vec3 a = supports.get(0).ball().centre();
    Vec3 b = supports.get(1).ball().centre();
    Vec3 c = supports.get(2).ball().centre();
    Vec3 normal = b.minus(a).cross(c.minus(a));
    if (!(normal.norm() > 1e-9 * a.distanceTo(b) * a.distanceTo(c))) {
      return Optional.empty();
    }
    Vec3 up = normal.unit();
    Wrench w = load.movedTo(a);
    double push = w.force().dot(up);
    if (!(Math.abs(push) > 1e-9 * w.force().norm())) {
      return Optional.empty();
    }
    Vec3 at = a.plus(up.cross(w.moment()).times(1 / push));
    Vec3[] corner = {a, b, c};
    double least = Double.POSITIVE_INFINITY;
    String edge = "";
    for (int i = 0; i < 3; i++) {
      Vec3 from = corner[i];
      Vec3 to = corner[(i + 1) % 3];
      Vec3 inward = corner[(i + 2) % 3].minus(from).rejectedFrom(to.minus(from).unit()).unit();
      double distance = at.minus(from).dot(inward);
      if (distance < least - 1e-12) {
        least = distance;
        edge = supports.get(i).name() + " - " + supports.get((i + 1) % 3).name();
      }
    }
    return Optional.of(new Place(least, edge));
  }

  private static Finding finding(Place p, Object what, String where, Severity severity) {
    boolean outside = p.inside() < 0;
    return new Finding(
        CHECK,
        severity,
        where,
        p.inside(),
        0,
        Sense.AT_LEAST,
        Measure.LENGTH,
        Sentence.of(
            "the resultant of ",
            what,
            " passes ",
            Measure.LENGTH.amount(Math.abs(p.inside())),
            outside ? " outside" : " inside",
            " the edge ",
            p.edge(),
            " of the ball triangle."),
        outside
            ? Sentence.of(
                "Widen the triangle past the load, move the preload toward it, or raise the"
                    + " preload.")
            : Sentence.NONE);
  }
}
