package reseat.plots.drawing;

import reseat.plots.scene.Box;
import reseat.plots.scene.Point;

/**
 * How a plane of the real thing lies on the sheet.
 *
 * @param scale sheet units per metre
 * @param origin where the plane's origin lies on the sheet
 */
record SheetView(double scale, Point origin) {

  /** Gathers what a view must show. Not for use by several threads. */
  static final class Extent {
    private double left = Double.POSITIVE_INFINITY;
    private double right = Double.NEGATIVE_INFINITY;
    private double low = Double.POSITIVE_INFINITY;
    private double high = Double.NEGATIVE_INFINITY;

    /** Takes in a square about a point; all in metres. */
    void include(double toRight, double upward, double halfWidth) {
      left = Math.min(left, toRight - halfWidth);
      right = Math.max(right, toRight + halfWidth);
      low = Math.min(low, upward - halfWidth);
      high = Math.max(high, upward + halfWidth);
    }

    double width() {
      return right - left;
    }

    double height() {
      return high - low;
    }
  }

  /** The largest view of an extent that fits into an area, the extent in its middle. */
  static SheetView fitting(Extent e, Box area) {
    double scale = Math.min(area.width() / e.width(), area.height() / e.height());
    Point middle = area.middle();
    return new SheetView(
        scale,
        new Point(
            middle.x() - scale * (e.left + e.right) / 2,
            middle.y() + scale * (e.low + e.high) / 2));
  }

  /** The place of a point given in metres to the right and upward. */
  Point of(double toRight, double upward) {
    return new Point(origin.x() + scale * toRight, origin.y() - scale * upward);
  }

  /** A length on the sheet. */
  double length(double metres) {
    return scale * metres;
  }
}
