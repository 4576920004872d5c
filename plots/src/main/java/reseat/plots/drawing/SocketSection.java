package reseat.plots.drawing;

import java.util.ArrayList;
import java.util.List;
import reseat.ballmount.SocketPivot;
import reseat.elementary.Elementary;
import reseat.plots.NumberText;
import reseat.plots.Picture;
import reseat.plots.PictureKind;
import reseat.plots.scene.Box;
import reseat.plots.scene.Fill;
import reseat.plots.scene.Key;
import reseat.plots.scene.LabelPlacer;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Point;
import reseat.plots.scene.Scene;
import reseat.plots.scene.TextStyle;
import reseat.plots.scene.Tone;

/** A section through a ball in a spherical socket: land, and how the pressure lies over it. */
final class SocketSection {

  private static final double WIDTH = 600;
  private static final double HEIGHT = 300;
  private static final int STEPS = 40;
  private static final int ARROWS = 5;

  private SocketSection() {}

  static Picture draw(String name, String whose, SocketPivot socket, double force, DrawingUnits units) {
    double r = socket.ballRadius();
    double rim = -r * Elementary.cos(socket.outerAngle());
    double under = -1.45 * r;
    double side = 1.5 * r;
    SheetView.Extent e = new SheetView.Extent();
    e.include(0, 0, 1.02 * r);
    e.include(-side, under, 0);
    e.include(side, under, 0);
    SheetView view = SheetView.fitting(e, new Box(12, 26, WIDTH - 12, HEIGHT - 16));
    List<Mark> marks = new ArrayList<>();
    List<Point> body = body(socket, rim, side, under, view);
    Hatch.of(body, 7, false).ifPresent(marks::add);
    marks.add(Mark.Path.polygon(body, LineStyle.OUTLINE, Fill.NONE));
    Point centre = view.of(0, 0);
    double drawn = view.length(r);
    marks.add(Mark.Oval.circle(centre, drawn, LineStyle.OUTLINE, new Fill(Tone.SKY, 0.15)));
    marks.add(Sign.centreCross(centre, drawn + 8));
    LabelPlacer placer = new LabelPlacer(new Box(2, 2, WIDTH - 2, HEIGHT));
    placer.avoidCircle(centre, drawn);
    for (int s = -1; s <= 1; s += 2) {
      marks.add(Mark.Path.open(arc(socket, s, view), SectionContact.PATCH));
      pressure(socket, s, view, marks);
    }
    placer
        .place(
            List.of("ball \u00d8" + units.dimension(2 * r)),
            TextStyle.SMALL,
            centre.toward(drawn, Math.PI / 3),
            4,
            Math.PI / 2)
        .ifPresent(p -> marks.addAll(p.marks()));
    Scene.Builder scene = new Scene.Builder().addAll(marks);
    scene.addAll(ScaleBar.of(view, WIDTH - 8, HEIGHT - 14, 130, units));
    String words = words(socket, force, units);
    Scene key =
        Key.of(
            List.of(
                new Key.Entry(
                    List.of(
                        Mark.Path.line(new Point(-9, 0), new Point(9, 0), SectionContact.PATCH)),
                    words)),
            WIDTH - 12,
            1);
    scene.place(key, 6, HEIGHT + 8);
    return Picture.of(
        PictureKind.PIVOT_SECTION,
        name,
        "Section through the seat " + whose,
        "How the ball lies in its socket; arrows show how the pressure lies over the land, taken to"
            + " go with the cosine of the angle from the axis.",
        "Section through a ball in a spherical socket. " + words + ".",
        scene.build(WIDTH, HEIGHT + 8 + key.height()));
  }

  private static String words(SocketPivot socket, double force, DrawingUnits units) {
    return "land from "
        + NumberText.significant(Elementary.toDegrees(socket.innerAngle()), 3)
        + "\u00b0 to "
        + NumberText.significant(Elementary.toDegrees(socket.outerAngle()), 3)
        + "\u00b0 from the axis; "
        + units.force(force)
        + " press it with at most "
        + units.pressure(socket.peakPressure(force));
  }

  private static List<Point> body(
      SocketPivot socket, double rim, double side, double under, SheetView view) {
    List<Point> body = new ArrayList<>();
    body.add(view.of(-side, rim));
    body.addAll(arc(socket, -1, view));
    double x = socket.ballRadius() * Elementary.sin(socket.innerAngle());
    if (x > 0) {
      double floor = -1.12 * socket.ballRadius();
      body.add(view.of(-x, floor));
      body.add(view.of(x, floor));
    }
    List<Point> right = arc(socket, 1, view);
    for (int i = right.size() - 1; i >= 0; i--) {
      body.add(right.get(i));
    }
    body.add(view.of(side, rim));
    body.add(view.of(side, under));
    body.add(view.of(-side, under));
    return body;
  }

  /** The land on one side, from its rim to its inner end. */
  private static List<Point> arc(SocketPivot socket, int side, SheetView view) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= STEPS; i++) {
      double t = socket.outerAngle() + (socket.innerAngle() - socket.outerAngle()) * i / STEPS;
      points.add(at(socket, side * t, view));
    }
    return points;
  }

  private static Point at(SocketPivot socket, double angle, SheetView view) {
    double r = socket.ballRadius();
    return view.of(r * Elementary.sin(angle), -r * Elementary.cos(angle));
  }

  private static void pressure(SocketPivot socket, int side, SheetView view, List<Mark> marks) {
    double longest = view.length(0.4 * socket.ballRadius());
    double least = Math.max(socket.innerAngle(), 1e-9);
    for (int i = 0; i < ARROWS; i++) {
      double t = least + (socket.outerAngle() - least) * (i + 0.5) / ARROWS;
      Point p = at(socket, side * t, view);
      Point c = view.of(0, 0);
      double toCentre = Elementary.atan2(c.y() - p.y(), c.x() - p.x());
      double length = longest * Elementary.cos(t) / Elementary.cos(socket.innerAngle());
      Point end =
          new Point(
              p.x() + length * Elementary.cos(toCentre), p.y() + length * Elementary.sin(toCentre));
      marks.addAll(Sign.arrow(p, end, Tone.VERMILLION, 1.4));
    }
  }
}
