package reseat.plots.scene;

import java.util.ArrayList;
import java.util.List;
import reseat.units.PrintedNumber;

/**
 * An upright rectangle on the sheet.
 *
 * @param left least x
 * @param top least y
 * @param right greatest x
 * @param bottom greatest y
 */
public record Box(double left, double top, double right, double bottom) {

  /** Refuses rectangles turned inside out. */
  public Box {
    if (!(right >= left) || !(bottom >= top)) {
      throw new IllegalArgumentException(
          "a box must have left <= right and top <= bottom, found "
              + PrintedNumber.shortest(left)
              + ", "
              + PrintedNumber.shortest(top)
              + ", "
              + PrintedNumber.shortest(right)
              + ", "
              + PrintedNumber.shortest(bottom));
    }
  }

  /**
   * Returns the least box about points.
   *
   * @param points at least one
   * @return the box
   */
  public static Box around(List<Point> points) {
    double l = Double.POSITIVE_INFINITY;
    double t = Double.POSITIVE_INFINITY;
    double r = Double.NEGATIVE_INFINITY;
    double b = Double.NEGATIVE_INFINITY;
    for (Point p : points) {
      l = Math.min(l, p.x());
      t = Math.min(t, p.y());
      r = Math.max(r, p.x());
      b = Math.max(b, p.y());
    }
    return new Box(l, t, r, b);
  }

  /**
   * Returns the box about a point.
   *
   * @param middle middle
   * @param halfWidth half the side
   * @return a square
   */
  public static Box about(Point middle, double halfWidth) {
    return new Box(
        middle.x() - halfWidth,
        middle.y() - halfWidth,
        middle.x() + halfWidth,
        middle.y() + halfWidth);
  }

  /**
   * Returns the width.
   *
   * @return sheet units
   */
  public double width() {
    return right - left;
  }

  /**
   * Returns the height.
   *
   * @return sheet units
   */
  public double height() {
    return bottom - top;
  }

  /**
   * Returns the middle.
   *
   * @return the point
   */
  public Point middle() {
    return new Point((left + right) / 2, (top + bottom) / 2);
  }

  /**
   * Returns the box made larger on all sides.
   *
   * @param margin sheet units; negative to shrink
   * @return the box
   */
  public Box grown(double margin) {
    return new Box(left - margin, top - margin, right + margin, bottom + margin);
  }

  /**
   * Returns the box moved.
   *
   * @param dx to the right
   * @param dy down
   * @return the box
   */
  public Box moved(double dx, double dy) {
    return new Box(left + dx, top + dy, right + dx, bottom + dy);
  }

  /**
   * Returns the least box about this and another.
   *
   * @param other the other
   * @return the box
   */
  public Box joined(Box other) {
    return new Box(
        Math.min(left, other.left),
        Math.min(top, other.top),
        Math.max(right, other.right),
        Math.max(bottom, other.bottom));
  }

  /**
   * Says whether two boxes share any area.
   *
   * @param other the other
   * @return true if they overlap
   */
  public boolean overlaps(Box other) {
    return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
  }

  /**
   * Says whether another box lies wholly inside.
   *
   * @param other the other
   * @return true if it does
   */
  public boolean contains(Box other) {
    return other.left >= left && other.right <= right && other.top >= top && other.bottom <= bottom;
  }

  /**
   * Says whether a point lies inside.
   *
   * @param p the point
   * @return true if it does, or lies on the edge
   */
  public boolean contains(Point p) {
    return p.x() >= left && p.x() <= right && p.y() >= top && p.y() <= bottom;
  }

  /**
   * Returns the part of a straight line that lies inside (Liang and Barsky's method).
   *
   * @param a one end
   * @param b the other end
   * @return both ends of the part, or nothing if the line misses the box
   */
  public List<Point> clip(Point a, Point b) {
    double[] p = {a.x() - b.x(), b.x() - a.x(), a.y() - b.y(), b.y() - a.y()};
    double[] q = {a.x() - left, right - a.x(), a.y() - top, bottom - a.y()};
    double from = 0;
    double to = 1;
    for (int i = 0; i < 4; i++) {
      if (p[i] == 0) {
        if (q[i] < 0) {
          return List.of();
        }
      } else if (p[i] < 0) {
        from = Math.max(from, q[i] / p[i]);
      } else {
        to = Math.min(to, q[i] / p[i]);
      }
    }
    if (from > to) {
      return List.of();
    }
    Point along = b.minus(a);
    return List.of(a.plus(along.times(from)), a.plus(along.times(to)));
  }

  /**
   * Returns the part of a polygon that lies inside (Sutherland and Hodgman's method).
   *
   * @param polygon corners in order; convex, or parts may come out joined along the edge
   * @return corners in order, possibly none
   */
  public List<Point> clip(List<Point> polygon) {
    List<Point> kept = polygon;
    for (int side = 0; side < 4; side++) {
      List<Point> next = new ArrayList<>();
      for (int i = 0; i < kept.size(); i++) {
        Point p = kept.get(i);
        Point q = kept.get((i + 1) % kept.size());
        double fp = depth(side, p);
        double fq = depth(side, q);
        if (fp >= 0) {
          next.add(p);
        }
        if ((fp > 0 && fq < 0) || (fp < 0 && fq > 0)) {
          next.add(p.plus(q.minus(p).times(fp / (fp - fq))));
        }
      }
      kept = next;
    }
    return List.copyOf(kept);
  }

  private double depth(int side, Point p) {
    return switch (side) {
      case 0 -> p.x() - left;
      case 1 -> right - p.x();
      case 2 -> p.y() - top;
      default -> bottom - p.y();
    };
  }
}
