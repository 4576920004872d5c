package reseat.plots.drawing;

import reseat.elementary.Elementary;
import reseat.plots.scene.Point;
import reseat.space.Vec3;

/**
 * A direction of view on the coupling.
 *
 * @param view scale and place of the projected plane on the sheet
 * @param right unit vector of the coupling frame that points to the right on the sheet
 * @param up unit vector that points up on the sheet, at right angles to it
 */
record Projection(SheetView view, Vec3 right, Vec3 up) {

  /** Where a point lies on the sheet. */
  Point of(Vec3 p) {
    return view.of(p.dot(right), p.dot(up));
  }

  /** How much of a vector is seen, in its own unit. */
  double seen(Vec3 v) {
    return Elementary.hypot(v.dot(right), v.dot(up));
  }

  /** The direction of a vector on the sheet, rad. */
  double angle(Vec3 v) {
    return Elementary.atan2(v.dot(up), v.dot(right));
  }

  /** The part of a vector toward the viewer. */
  double towardViewer(Vec3 v) {
    return v.dot(right.cross(up));
  }
}
