package reseat.plots.dxf;

import java.util.ArrayList;
import java.util.List;
import reseat.elementary.Elementary;
import reseat.plots.scene.Mark;
import reseat.plots.scene.MarkPainter;
import reseat.plots.scene.Point;
import reseat.plots.scene.TextWidth;

/**
 * Puts marks of a sheet into a drawing in true size, each kind as the entity that is it: straight
 * lines as lines, bent ones as polylines, circles, arcs, words. Colours, widths and fills are left
 * to the layer. Ellipses, which release 12 has not, become polylines of 72 sides.
 */
public final class DxfMarks implements MarkPainter {

  private static final int SIDES = 72;

  private final DxfDrawing drawing;
  private final DxfLayer layer;
  private final double scale;
  private final Point origin;
  private final Point shift;

  /**
   * Starts a painter.
   *
   * @param drawing where to
   * @param layer layer of what is painted
   * @param scale sheet units for a metre of the true thing
   * @param origin place on the sheet of the true thing's origin
   * @param shift where that origin comes in the drawing, m, y upward
   */
  public DxfMarks(DxfDrawing drawing, DxfLayer layer, double scale, Point origin, Point shift) {
    this.drawing = drawing;
    this.layer = layer;
    this.scale = scale;
    this.origin = origin;
    this.shift = shift;
  }

  private Point real(Point p) {
    return new Point(
        shift.x() + (p.x() - origin.x()) / scale, shift.y() - (p.y() - origin.y()) / scale);
  }

  @Override
  public void path(Mark.Path path) {
    for (List<Point> part : path.parts()) {
      List<Point> points = part.stream().map(this::real).toList();
      if (points.size() == 2) {
        drawing.line(layer, points.get(0), points.get(1));
      } else {
        drawing.polyline(layer, points, path.closed());
      }
    }
  }

  @Override
  public void oval(Mark.Oval oval) {
    if (oval.rx() == oval.ry()) {
      drawing.circle(layer, real(oval.centre()), oval.rx() / scale);
      return;
    }
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < SIDES; i++) {
      double a = 2 * Math.PI * i / SIDES;
      Point along = oval.centre().toward(oval.rx() * Elementary.cos(a), oval.turn());
      points.add(real(along.toward(oval.ry() * Elementary.sin(a), oval.turn() + Math.PI / 2)));
    }
    drawing.polyline(layer, points, true);
  }

  @Override
  public void arc(Mark.Arc arc) {
    drawing.arc(layer, real(arc.centre()), arc.radius() / scale, arc.start(), arc.sweep());
  }

  @Override
  public void text(Mark.Text text) {
    double capital = TextWidth.CAPITAL * text.style().size() / scale;
    drawing.text(layer, text.words(), real(text.at()), text.anchor(), capital, text.turn());
  }

  @Override
  public void bitmap(Mark.Bitmap bitmap) {
    throw new IllegalArgumentException("a DXF drawing holds lines and words, no bitmaps");
  }
}
