package reseat.plots.drawing;

import java.util.ArrayList;
import java.util.List;
import reseat.ballmount.BallStud;
import reseat.ballmount.BondJoint;
import reseat.ballmount.ScrewThread;
import reseat.design.StudMount;
import reseat.elementary.Elementary;
import reseat.plots.scene.Point;

/**
 * The outline of a stud cut along its axis, in metres: x to the right of the axis, y from the ball
 * centre toward the ball's far side; the body that holds the stud lies below.
 *
 * @param right right-hand half of the outline, from the axis at the top to the axis at the bottom
 * @param bond right-hand half of the bonded surface, from inside to its rim; empty without a bond
 * @param foot how deep the stud reaches below the face of the body
 */
record StudProfile(List<Point> right, List<Point> bond, double foot) {

  private static final double SLEEVE = Elementary.toRadians(85);

  StudProfile {
    right = List.copyOf(right);
    bond = List.copyOf(bond);
  }

  /** Half the width of the body to draw round the stud, which takes in a ball of this radius. */
  double bodyHalfWidth(double radius) {
    double widest = right.stream().mapToDouble(Point::x).max().orElseThrow();
    return 1.15 * Math.max(1.5 * widest, radius);
  }

  static StudProfile of(StudMount mount, double ballRadius) {
    BallStud stud = mount.stud();
    List<Point> bond = mount.bond().map(b -> bonded(b, ballRadius)).orElse(List.of());
    double neck = stud.neckDiameter() / 2;
    List<Point> right = new ArrayList<>();
    if (bond.isEmpty()) {
      double meets = -Math.sqrt(Math.max(0, ballRadius * ballRadius - neck * neck));
      right.add(new Point(0, meets));
      right.add(new Point(neck, meets));
    } else if (mount.bond().get().lean() > SLEEVE) {
      double top = bond.get(0).y();
      Point rim = bond.get(1);
      right.add(new Point(0, top));
      right.add(new Point(rim.x(), top));
      right.add(rim);
      right.add(new Point(neck, rim.y()));
    } else {
      right.add(new Point(0, bond.get(0).y()));
      right.addAll(bond);
      right.add(new Point(neck, bond.get(1).y()));
    }
    double face = -stud.stickOut();
    double shoulderTop = face + stud.shoulderLength();
    right.add(new Point(neck, shoulderTop));
    if (stud.shoulderLength() > 0) {
      right.add(new Point(stud.shoulderDiameter() / 2, shoulderTop));
      right.add(new Point(stud.shoulderDiameter() / 2, face));
    }
    double held = mount.thread().map(t -> t.limits().thread().diameter() / 2).orElse(neck);
    double foot = mount.thread().map(t -> t.engagement()).orElse(1.2 * neck);
    right.add(new Point(held, face));
    right.add(new Point(held, face - foot));
    right.add(new Point(0, face - foot));
    return new StudProfile(right, bond, foot);
  }

  /** Inner end and rim of the bonded surface. */
  private static List<Point> bonded(BondJoint b, double ballRadius) {
    double rim = b.rimDiameter() / 2;
    if (b.lean() > SLEEVE) {
      double length = b.area() / (2 * Math.PI * rim);
      double mouth = -Math.sqrt(Math.max(0, ballRadius * ballRadius - rim * rim));
      return List.of(new Point(rim, mouth + length), new Point(rim, mouth));
    }
    double inner =
        Math.sqrt(Math.max(0, rim * rim - b.area() * Elementary.cos(b.lean()) / Math.PI));
    return List.of(cone(b, ballRadius, inner), cone(b, ballRadius, rim));
  }

  /** A point of the cone (or flat) that lies a bond gap away from the ball. */
  private static Point cone(BondJoint b, double ballRadius, double x) {
    double away = ballRadius + b.gap();
    double y =
        -away * Elementary.cos(b.lean())
            + (x - away * Elementary.sin(b.lean())) * Elementary.tan(b.lean());
    return new Point(x, y);
  }

  /** Both halves of the outline as one polygon. */
  List<Point> outline() {
    List<Point> all = new ArrayList<>(right);
    for (int i = right.size() - 1; i >= 0; i--) {
      Point p = right.get(i);
      if (p.x() > 0) {
        all.add(new Point(-p.x(), p.y()));
      }
    }
    return all;
  }

  /** Half the core diameter of a thread, for its thin inner lines, m. */
  static double rootRadius(ScrewThread thread) {
    return thread.rootDiameter() / 2;
  }
}
