package reseat.interchange;

import java.util.ArrayList;
import java.util.List;
import reseat.design.CouplingDesign;
import reseat.design.Half;
import reseat.design.Support;
import reseat.elementary.Elementary;
import reseat.seat.CylinderFlank;
import reseat.seat.Flank;
import reseat.seat.PlaneFlank;
import reseat.seat.SeatFrame;
import reseat.space.Pose;
import reseat.space.Vec3;

/**
 * How the gap of each contact answers to each dimension, the holder standing still.
 *
 * <p>With c the ball's centre, p a point of the plane or axis, n the normal out of the seat, d the
 * direction of a cylinder's axis, r its radius and s = 1 for a pin, -1 for a hollow:
 *
 * <pre>
 *   plane:    g = (c - p).n - R        dg = n.dc + (c - p).dn - n.dp - dR
 *   cylinder: g = s(|e| - r) - R       dg = n.dc - n.dp - ((c - p).d) n.dd - s dr - dR
 * </pre>
 *
 * <p>where e is the part of c - p across the axis and n = s e/|e|. Derived from the geometry; the
 * design notes' cases (ball radius, lateral shift, depth, flank angle about the apex) are special
 * cases of it.
 */
final class GapDerivative {

  private final CouplingDesign design;
  private final boolean ballsOnHolder;
  private final Pose ballHalfInSeatHalf;
  private final List<Flank> flanks = new ArrayList<>();
  private final List<FlankShape> shapes = new ArrayList<>();
  private final List<Vec3> centres = new ArrayList<>();
  private final List<Vec3> normals = new ArrayList<>();
  private final List<Integer> supportOf = new ArrayList<>();

  /**
   * Prepares the question.
   *
   * @param design the coupling as drawn
   * @param ballHalfInSeatHalf where the ball half rests in the seat half
   */
  GapDerivative(CouplingDesign design, Pose ballHalfInSeatHalf) {
    this.design = design;
    this.ballHalfInSeatHalf = ballHalfInSeatHalf;
    ballsOnHolder = design.ballsOn() == Half.HOLDER;
    for (int b = 0; b < design.supports().size(); b++) {
      Support s = design.supports().get(b);
      Vec3 centre = ballHalfInSeatHalf.apply(s.ball().centre());
      for (Flank f : s.seat().flanks()) {
        flanks.add(f);
        centres.add(centre);
        normals.add(f.normal(centre));
        supportOf.add(b);
      }
      shapes.addAll(List.of(FlankShape.of(s.seat())));
    }
  }

  /** Unit normals out of the seats, seat half. */
  List<Vec3> normals() {
    return normals;
  }

  /** Ball centre of each contact, seat half, m. */
  List<Vec3> centres() {
    return centres;
  }

  /**
   * Finds the change of one gap with one dimension.
   *
   * @param contact index of the contact
   * @param d the dimension
   * @return dg per unit of deviation
   */
  double of(int contact, DeviationLayout.Dimension d) {
    boolean concerns =
        d.support() < 0
            || (d.contact() < 0 ? supportOf.get(contact) == d.support() : contact == d.contact());
    if (!concerns) {
      return 0;
    }
    Support s = design.supports().get(supportOf.get(contact));
    SeatFrame f = s.seat().frame();
    FlankShape shape = shapes.get(contact);
    Vec3 n = normals.get(contact);
    return switch (d.kind()) {
      case BALL_DIAMETER -> -0.5;
      case BALL_FORM, FLANK_POSITION -> -1;
      case BALL_ALONG -> n.dot(ballHalfInSeatHalf.rotate(f.axis()));
      case BALL_ACROSS -> n.dot(ballHalfInSeatHalf.rotate(f.left()));
      case BALL_HEIGHT -> n.dot(ballHalfInSeatHalf.rotate(f.up()));
      case SEAT_ALONG -> -n.dot(f.axis());
      case SEAT_ACROSS -> -n.dot(f.left());
      case SEAT_DEPTH -> n.dot(f.up());
      case SEAT_ROLL -> turned(contact, f.axis(), f.origin());
      case SEAT_PITCH -> turned(contact, f.left(), f.origin());
      case SEAT_DIRECTION -> turned(contact, f.up(), f.origin());
      case FLANK_ANGLE -> steeper(contact, f, shape);
      case PIN_DIAMETER -> -0.5;
      case FLANK_RADIUS -> 1;
      case PIN_SPACING -> -shape.pushLeft() / 2 * n.dot(f.left());
      case ARCH_OFFSET -> -shape.pushLeft() * n.dot(f.left());
      case TOOL_POINT -> 0;
      case TEMPERATURE -> warmer(contact, s);
    };
  }

  private double turned(int contact, Vec3 axis, Vec3 pivot) {
    return flanks
        .get(contact)
        .accept(new Turned(axis, pivot, normals.get(contact), centres.get(contact)));
  }

  /** The seat turns about an axis through a pivot, per radian. */
  private record Turned(Vec3 axis, Vec3 pivot, Vec3 n, Vec3 centre)
      implements Flank.Visitor<Double> {

    @Override
    public Double plane(PlaneFlank flank) {
      Vec3 p = flank.point();
      Vec3 moved = axis.cross(p.minus(pivot));
      return centre.minus(p).dot(axis.cross(flank.normal())) - n.dot(moved);
    }

    @Override
    public Double cylinder(CylinderFlank flank) {
      Vec3 p = flank.axisPoint();
      Vec3 d = flank.generator();
      Vec3 moved = axis.cross(p.minus(pivot));
      return -n.dot(moved) - centre.minus(p).dot(d) * n.dot(axis.cross(d));
    }
  }

  /** The plane turns about the apex, which lies in it, per radian. */
  private double steeper(int contact, SeatFrame f, FlankShape shape) {
    double c = Elementary.cos(shape.angle());
    Vec3 change =
        f.axis()
            .times(shape.pushAlong() * c)
            .plus(f.left().times(shape.pushLeft() * c))
            .minus(f.up().times(Elementary.sin(shape.angle())));
    return centres.get(contact).minus(f.origin()).dot(change);
  }

  /** The holder grows about its origin, per kelvin. */
  private double warmer(int contact, Support s) {
    double expansion = design.remount().holderExpansion();
    Vec3 n = normals.get(contact);
    if (ballsOnHolder) {
      Vec3 outward = ballHalfInSeatHalf.rotate(s.ball().centre());
      return expansion * n.dot(outward)
          - DeviatedDesign.ballExpansion(design, s) * s.ball().radius();
    }
    return -expansion * flanks.get(contact).accept(new Grown(n));
  }

  /** Way of a flank out of its seat along n, per unit that the half with the seats grows. */
  private record Grown(Vec3 n) implements Flank.Visitor<Double> {

    @Override
    public Double plane(PlaneFlank flank) {
      return n.dot(flank.point());
    }

    @Override
    public Double cylinder(CylinderFlank flank) {
      return n.dot(flank.axisPoint()) + flank.signedRadius();
    }
  }
}
