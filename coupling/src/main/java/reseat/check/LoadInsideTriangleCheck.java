package reseat.check;

import static reseat.check.Argument.amount;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.check.Finding.Sense;
import reseat.design.CheckKind;
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
      found.add(atRest(rest.get()));
    }
    for (CaseResponse r : cases) {
      Optional<Place> loaded = place(design.supports(), r.state().load());
      if (loaded.isPresent() && loaded.get().inside() < 0) {
        found.add(outside(loaded.get(), r));
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

  private static Finding atRest(Place p) {
    Judged judged = Judged.by(p.inside(), 0, Sense.AT_LEAST, LimitBasis.MECHANICS);
    return new Finding(
        CheckKind.LOAD_INSIDE_TRIANGLE,
        judged,
        Subject.COUPLING,
        p.inside(),
        0,
        Sense.AT_LEAST,
        LimitBasis.MECHANICS,
        Measure.LENGTH,
        said(p, ""),
        Statement.NOTHING);
  }

  private static Finding outside(Place p, CaseResponse r) {
    String name = r.loadCase().name();
    return r.liftsOff()
        ? new Finding(
            CheckKind.LOAD_INSIDE_TRIANGLE,
            Judged.FAILS,
            Subject.loadCase(name),
            p.inside(),
            0,
            Sense.AT_LEAST,
            LimitBasis.MECHANICS,
            Measure.LENGTH,
            said(p, name),
            Statement.NOTHING)
        : Finding.advice(
            CheckKind.LOAD_INSIDE_TRIANGLE,
            Subject.loadCase(name),
            p.inside(),
            0,
            Measure.LENGTH,
            said(p, name),
            Statement.of(Said.WIDEN_TRIANGLE));
  }

  private static Statement said(Place p, String loadCase) {
    return Statement.of(
        p.inside() < 0 ? Said.LOAD_OUTSIDE : Said.LOAD_INSIDE,
        loadCase,
        amount(Measure.LENGTH, Math.abs(p.inside())),
        p.edge());
  }
}
