package reseat.plots.drawing;

import java.util.ArrayList;
import java.util.List;
import reseat.elementary.Elementary;
import reseat.plots.scene.Point;
import reseat.seat.Ball;
import reseat.seat.ConeSeat;
import reseat.seat.CylinderPair;
import reseat.seat.FlatSeat;
import reseat.seat.GothicGroove;
import reseat.seat.Seat;
import reseat.seat.SeatFrame;
import reseat.seat.TrihedralSeat;
import reseat.seat.VeeGroove;
import reseat.space.Vec3;

/**
 * What a cut through a seat shows, in metres: across the groove through the ball's centre, seen
 * along the groove axis; for a trihedral seat, the plane of its first flank's normal, and for a
 * cone that through its axis and the middle of the first third of the ring.
 *
 * <p>Points have x to the right and y upward from the seat's origin. Sizes that the design does not
 * state are drawn a little larger than the ball needs.
 */
final class SeatProfile {

  /**
   * The cut.
   *
   * @param bodies cut material, each a polygon
   * @param mouth both edges of the mouth if its width is stated, else none
   * @param low height of the lowest thing drawn
   */
  record Cut(List<List<Point>> bodies, List<Point> mouth, double low) {
    Cut {
      bodies = List.copyOf(bodies);
      mouth = List.copyOf(mouth);
    }
  }

  private SeatProfile() {}

  /** Whether the drawing's right-hand direction runs along the seat's axis instead of across it. */
  static boolean cutAlongAxis(Seat seat) {
    return seat instanceof TrihedralSeat || seat.isRing();
  }

  /** A point of the seat's half as it lies in the cut, m. */
  static Point inCut(Seat seat, Vec3 p) {
    SeatFrame f = seat.frame();
    return new Point(cutAlongAxis(seat) ? f.along(p) : -f.toLeft(p), f.upward(p));
  }

  /** A direction as it lies in the cut. */
  static Point directionInCut(Seat seat, Vec3 d) {
    SeatFrame f = seat.frame();
    Vec3 right = cutAlongAxis(seat) ? f.axis() : f.left().negated();
    return new Point(d.dot(right), d.dot(f.up()));
  }

  static Cut of(Seat seat, Ball ball) {
    return seat.accept(
        new Seat.Visitor<Cut>() {
          @Override
          public Cut veeGroove(VeeGroove s) {
            return vee(s, ball);
          }

          @Override
          public Cut gothicGroove(GothicGroove s) {
            return gothic(s, ball);
          }

          @Override
          public Cut cylinderPair(CylinderPair s) {
            return pins(s, ball);
          }

          @Override
          public Cut trihedralSeat(TrihedralSeat s) {
            return trihedral(s, ball);
          }

          @Override
          public Cut coneSeat(ConeSeat s) {
            return cone(s, ball);
          }

          @Override
          public Cut flatSeat(FlatSeat s) {
            return flat(s, ball);
          }
        });
  }

  private static Cut cone(ConeSeat s, Ball ball) {
    boolean stated = Double.isFinite(s.mouthDiameter());
    double half = stated ? s.mouthDiameter() / 2 : 1.05 * ball.radius();
    double root = s.rootDiameter() / 2;
    double tan = Elementary.tan(s.angle());
    List<Point> surface = new ArrayList<>();
    surface.add(new Point(-half, half * tan));
    if (root > 0) {
      surface.add(new Point(-root, root * tan));
      surface.add(new Point(root, root * tan));
    } else {
      surface.add(new Point(0, 0));
    }
    surface.add(new Point(half, half * tan));
    return groove(surface, stated, ball);
  }

  private static Cut vee(VeeGroove s, Ball ball) {
    double half =
        Double.isFinite(s.extent().mouthWidth())
            ? s.extent().mouthWidth() / 2
            : 1.05 * ball.radius();
    double root = s.extent().rootWidth() / 2;
    double tanLeft = Elementary.tan(s.leftAngle());
    double tanRight = Elementary.tan(s.rightAngle());
    List<Point> surface = new ArrayList<>();
    surface.add(new Point(-half, half * tanLeft));
    if (root > 0) {
      double floor = root * Math.min(tanLeft, tanRight) - s.extent().rootDepth();
      surface.add(new Point(-root, root * tanLeft));
      surface.add(new Point(-root, floor));
      surface.add(new Point(root, floor));
      surface.add(new Point(root, root * tanRight));
    } else {
      surface.add(new Point(0, 0));
    }
    surface.add(new Point(half, half * tanRight));
    return groove(surface, Double.isFinite(s.extent().mouthWidth()), ball);
  }

  private static Cut gothic(GothicGroove s, Ball ball) {
    boolean stated = Double.isFinite(s.extent().mouthWidth());
    double half = stated ? s.extent().mouthWidth() / 2 : 0.95 * ball.radius();
    double root = s.extent().rootWidth() / 2;
    List<Point> leftSide = gothicFlank(s, s.leftRadius(), half);
    List<Point> rightSide = gothicFlank(s, s.rightRadius(), half);
    List<Point> surface = new ArrayList<>();
    for (int i = leftSide.size() - 1; i >= 0; i--) {
      surface.add(new Point(-leftSide.get(i).x(), leftSide.get(i).y()));
    }
    if (root > 0) {
      double arch = Math.max(leftSide.get(0).y(), rightSide.get(0).y());
      double floor = arch - s.extent().rootDepth();
      surface.add(new Point(-root, floor));
      surface.add(new Point(root, floor));
    }
    surface.addAll(rightSide);
    return groove(surface, stated, ball);
  }

  /** One hollow flank from the root outward, as if it were the right one. */
  private static List<Point> gothicFlank(GothicGroove s, double radius, double half) {
    double root = s.extent().rootWidth() / 2;
    List<Point> points = new ArrayList<>();
    int n = 24;
    for (int i = 0; i <= n; i++) {
      double x = root + (half - root) * i / n;
      double reach = Math.min(radius, x + s.axisOffset());
      points.add(new Point(x, s.axisHeight() - Math.sqrt(radius * radius - reach * reach)));
    }
    return points;
  }

  /** Adds the faces on both sides and the underside to a surface that runs from left to right. */
  private static Cut groove(List<Point> surface, boolean mouthStated, Ball ball) {
    Point left = surface.get(0);
    Point right = surface.get(surface.size() - 1);
    double lowest = surface.stream().mapToDouble(Point::y).min().orElseThrow();
    double under = lowest - 0.45 * ball.radius();
    double side = Math.max(right.x(), ball.radius()) + 0.5 * ball.radius();
    List<Point> body = new ArrayList<>();
    body.add(new Point(-side, left.y()));
    body.addAll(surface);
    body.add(new Point(side, right.y()));
    body.add(new Point(side, under));
    body.add(new Point(-side, under));
    return new Cut(List.of(body), mouthStated ? List.of(left, right) : List.of(), under);
  }

  private static Cut pins(CylinderPair s, Ball ball) {
    List<List<Point>> bodies = new ArrayList<>();
    bodies.add(circle(new Point(-s.spacing() / 2, 0), s.leftRadius()));
    bodies.add(circle(new Point(s.spacing() / 2, 0), s.rightRadius()));
    double reach = s.spacing() / 2 + Math.max(s.leftRadius(), s.rightRadius());
    double low = -Math.max(s.leftRadius(), s.rightRadius());
    if (Double.isFinite(s.floorDepth())) {
      double floor = -s.floorDepth();
      double under = floor - 0.3 * ball.radius();
      double side = reach + 0.25 * ball.radius();
      bodies.add(
          List.of(
              new Point(-side, floor),
              new Point(side, floor),
              new Point(side, under),
              new Point(-side, under)));
      low = Math.min(low, under);
    }
    return new Cut(bodies, List.of(), low);
  }

  private static List<Point> circle(Point centre, double radius) {
    List<Point> points = new ArrayList<>();
    int n = 72;
    for (int i = 0; i < n; i++) {
      double a = 2 * Math.PI * i / n;
      points.add(centre.moved(radius * Elementary.cos(a), radius * Elementary.sin(a)));
    }
    return points;
  }

  /** The first flank falls from the left; on the right the other two meet in a valley. */
  private static Cut trihedral(TrihedralSeat s, Ball ball) {
    boolean stated = Double.isFinite(s.mouthDiameter());
    double half = stated ? s.mouthDiameter() / 2 : 1.1 * ball.radius();
    double root = s.rootDiameter() / 2;
    double tan = Elementary.tan(s.firstAngle());
    double valley = 0.5 * Math.min(Elementary.tan(s.secondAngle()), Elementary.tan(s.thirdAngle()));
    double face = half * tan;
    List<Point> surface = new ArrayList<>();
    surface.add(new Point(-half, face));
    if (root > 0) {
      double floor = root * tan;
      surface.add(new Point(-root, floor));
      surface.add(new Point(floor / valley, floor));
    } else {
      surface.add(new Point(0, 0));
    }
    surface.add(new Point(face / valley, face));
    return groove(surface, false, ball);
  }

  private static Cut flat(FlatSeat s, Ball ball) {
    boolean stated = Double.isFinite(s.padDiameter());
    double half = stated ? s.padDiameter() / 2 : 1.3 * ball.radius();
    double step = stated ? -0.25 * ball.radius() : 0;
    double under = -0.7 * ball.radius();
    double side = half + 0.4 * ball.radius();
    List<Point> body = new ArrayList<>();
    if (stated) {
      body.add(new Point(-side, step));
      body.add(new Point(-half, step));
    }
    body.add(new Point(-half, 0));
    body.add(new Point(half, 0));
    if (stated) {
      body.add(new Point(half, step));
      body.add(new Point(side, step));
      body.add(new Point(side, under));
      body.add(new Point(-side, under));
    } else {
      body.add(new Point(half, under));
      body.add(new Point(-half, under));
    }
    List<Point> mouth = stated ? List.of(new Point(-half, 0), new Point(half, 0)) : List.of();
    return new Cut(List.of(body), mouth, under);
  }
}
