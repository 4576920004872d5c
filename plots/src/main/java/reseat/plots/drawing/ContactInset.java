package reseat.plots.drawing;

import java.util.ArrayList;
import java.util.List;
import reseat.design.Support;
import reseat.plots.NumberText;
import reseat.plots.scene.Anchor;
import reseat.plots.scene.Box;
import reseat.plots.scene.Fill;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Point;
import reseat.plots.scene.Scene;
import reseat.plots.scene.TextStyle;
import reseat.plots.scene.Tone;

/**
 * One contact enlarged, its surface turned level: patch and distance to the edge at one scale.
 *
 * <p>The magnification is a round number times that of the section beside it.
 */
final class ContactInset {

  private static final double HEIGHT = 190;
  private static final double[] TIMES = {1, 2, 5, 10, 20, 50, 100, 200, 500, 1000};
  private static final double SIDE = 10;
  private static final double WORDS = 66;

  private ContactInset() {}

  static Scene of(Support support, SectionContact c, SheetView view, double width, DrawingUnits units) {
    double patch = Math.max(c.halfPatch(), 1e-3 * support.ball().radius());
    double edge = c.edgeDistance();
    boolean edgeShown = edge > -3 * patch && edge < 14 * patch;
    double toRight = edgeShown ? Math.max(edge, 0) + 1.5 * patch : 2.5 * patch;
    double toLeft = 2.5 * patch;
    double times = largest((width - 2 * SIDE - WORDS) / (toLeft + toRight) / view.scale());
    double scale = times * view.scale();
    double spare = width - WORDS - scale * (toLeft + toRight);
    Point origin = new Point(spare / 2 + scale * toLeft, 96);
    Box frame = new Box(1, 22, width - 1, HEIGHT);
    Scene.Builder scene = new Scene.Builder();
    surface(scene, frame, origin, scale, c, edgeShown);
    ball(scene, frame, origin, scale, support.ball().radius());
    double half = scale * c.halfPatch();
    if (half > 0) {
      scene.add(
          Mark.Path.line(origin.moved(-half, 0), origin.moved(half, 0), SectionContact.PATCH));
      scene.addAll(
          DimensionLine.of(
              origin.moved(-half, 0),
              origin.moved(half, 0),
              38,
              units.length(2 * c.halfPatch(), 3)));
    }
    if (edgeShown && edge > 0) {
      scene.addAll(
          DimensionLine.of(
              origin, origin.moved(scale * edge, 0), -44, units.length(edge, 3)));
    }
    scene.add(Mark.Path.rectangle(frame, LineStyle.THIN, Fill.NONE));
    String heading =
        c.flank() + " contact, " + NumberText.significant(times, 4) + " \u00d7 the section";
    scene.add(Mark.Text.level(heading, new Point(1, 14), Anchor.START, TextStyle.LABEL));
    String words =
        c.edgeName().isEmpty()
            ? "patch; no edge is stated"
            : edgeShown
                ? "patch, and contact point to " + c.edgeName()
                : "patch; "
                    + c.edgeName()
                    + " is "
                    + units.length(edge, 3)
                    + " away";
    scene.add(Mark.Text.level(words, new Point(1, HEIGHT + 15), Anchor.START, TextStyle.NOTE));
    return scene.build(width, HEIGHT + 20);
  }

  private static double largest(double atMost) {
    double best = TIMES[0];
    for (double t : TIMES) {
      if (t <= atMost) {
        best = t;
      }
    }
    return best;
  }

  /** The seat below; beyond the edge it falls away. */
  private static void surface(
      Scene.Builder scene,
      Box frame,
      Point origin,
      double scale,
      SectionContact c,
      boolean edgeShown) {
    double end =
        edgeShown ? Math.min(frame.right(), origin.x() + scale * c.edgeDistance()) : frame.right();
    List<Point> line = new ArrayList<>();
    int n = 40;
    for (int i = 0; i <= n; i++) {
      double x = frame.left() + (end - frame.left()) * i / n;
      double off = (x - origin.x()) / scale;
      double drop = Double.isInfinite(c.surfaceRadius()) ? 0 : off * off / (2 * c.surfaceRadius());
      line.add(new Point(x, Math.min(frame.bottom(), origin.y() + scale * drop)));
    }
    if (edgeShown && end < frame.right()) {
      double down = frame.bottom() - origin.y();
      double across = Math.min(frame.right() - end, down * 0.8);
      line.add(new Point(end + across, line.get(n).y() + across / 0.8));
    }
    List<Point> body = new ArrayList<>(line);
    Point last = line.get(line.size() - 1);
    body.add(new Point(last.x(), frame.bottom()));
    body.add(new Point(frame.left(), frame.bottom()));
    Hatch.of(frame.clip(body), 7, false).ifPresent(scene::add);
    scene.add(Mark.Path.open(line, LineStyle.OUTLINE));
  }

  private static void ball(
      Scene.Builder scene, Box frame, Point origin, double scale, double radius) {
    List<Point> line = new ArrayList<>();
    int n = 60;
    for (int i = 0; i <= n; i++) {
      double x = frame.left() + frame.width() * i / n;
      double off = Math.min(1, Math.abs((x - origin.x()) / scale / radius));
      double rise = radius * (1 - Math.sqrt(1 - off * off));
      double y = origin.y() - scale * rise;
      if (y >= frame.top()) {
        line.add(new Point(x, y));
      }
    }
    scene.add(Mark.Path.open(line, LineStyle.solid(Tone.SKY, 1.4)));
  }
}
