package reseat.plots.drawing;

import java.util.List;
import reseat.elementary.Elementary;
import reseat.plots.scene.Anchor;
import reseat.plots.scene.Fill;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Point;
import reseat.plots.scene.TextStyle;
import reseat.plots.scene.Tone;

/** Signs of drawings: arrows, points and numbers in balloons. */
final class Sign {

  private static final double HEAD = 8;
  private static final double HEAD_HALF_ANGLE = Elementary.toRadians(14);

  private Sign() {}

  /** A filled arrow head with its point at a place, pointing in a direction. */
  static Mark head(Point tip, double direction, Tone tone) {
    return Mark.Path.polygon(
        List.of(
            tip,
            tip.toward(HEAD, direction + Math.PI - HEAD_HALF_ANGLE),
            tip.toward(HEAD, direction + Math.PI + HEAD_HALF_ANGLE)),
        LineStyle.NONE,
        Fill.full(tone));
  }

  /** An arrow from one point to another. */
  static List<Mark> arrow(Point from, Point to, Tone tone, double width) {
    double direction = from.angleTo(to);
    Point neck = to.toward(-0.8 * HEAD, direction);
    return List.of(
        Mark.Path.line(from, neck, LineStyle.solid(tone, width)), head(to, direction, tone));
  }

  /** An arrow seen from behind: a cross in a circle. */
  static List<Mark> awayFromViewer(Point at, double radius, Tone tone) {
    LineStyle line = LineStyle.solid(tone, 1.2);
    double r = radius * Math.sqrt(0.5);
    return List.of(
        Mark.Oval.circle(at, radius, line, Fill.PAPER),
        new Mark.Path(
            List.of(
                List.of(at.moved(-r, -r), at.moved(r, r)),
                List.of(at.moved(-r, r), at.moved(r, -r))),
            false,
            line,
            Fill.NONE));
  }

  /** An arrow seen from the front: a dot in a circle. */
  static List<Mark> towardViewer(Point at, double radius, Tone tone) {
    return List.of(
        Mark.Oval.circle(at, radius, LineStyle.solid(tone, 1.2), Fill.PAPER),
        Mark.Oval.circle(at, radius * 0.3, LineStyle.NONE, Fill.full(tone)));
  }

  /** A direction across the sheet: toward the viewer if positive, else away. */
  static List<Mark> acrossSheet(Point at, double radius, Tone tone, double towardViewer) {
    return towardViewer > 0 ? towardViewer(at, radius, tone) : awayFromViewer(at, radius, tone);
  }

  /** A centre of mass: a circle with two opposite quarters filled. */
  static List<Mark> centreOfMass(Point at, double radius) {
    return List.of(
        Mark.Oval.circle(at, radius, LineStyle.solid(Tone.INK, 1.1), Fill.PAPER),
        quarter(at, radius, 0),
        quarter(at, radius, Math.PI));
  }

  private static Mark quarter(Point at, double radius, double start) {
    List<Point> points = new java.util.ArrayList<>(List.of(at));
    for (int i = 0; i <= 8; i++) {
      points.add(at.toward(radius, start + i * Math.PI / 16));
    }
    return Mark.Path.polygon(points, LineStyle.NONE, Fill.full(Tone.INK));
  }

  /** The tool point: a ring with cross hairs. */
  static List<Mark> target(Point at, double radius, Tone tone) {
    double out = 1.8 * radius;
    LineStyle line = LineStyle.solid(tone, 1.3);
    return List.of(
        Mark.Oval.circle(at, radius, line, Fill.NONE),
        new Mark.Path(
            List.of(
                List.of(at.moved(-out, 0), at.moved(out, 0)),
                List.of(at.moved(0, -out), at.moved(0, out))),
            false,
            line,
            Fill.NONE));
  }

  /**
   * A named place: diamond, square or triangle by its number; open, so that what lies under it is
   * seen.
   */
  static List<Mark> landmark(Point at, double radius, int number) {
    Tone tone = List.of(Tone.PURPLE, Tone.ORANGE, Tone.GREEN).get(number % 3);
    int corners = number % 3 == 2 ? 3 : 4;
    double start = number % 3 == 1 ? Math.PI / 4 : Math.PI / 2;
    List<Point> points = new java.util.ArrayList<>();
    for (int i = 0; i < corners; i++) {
      points.add(at.toward(1.5 * radius, start + 2 * Math.PI * i / corners));
    }
    return List.of(Mark.Path.polygon(points, LineStyle.solid(tone, 2), Fill.NONE));
  }

  /** A number in a balloon. */
  static List<Mark> balloon(Point at, String number, Tone tone) {
    TextStyle style = new TextStyle(10, true, tone);
    return List.of(
        Mark.Oval.circle(at, BALLOON, LineStyle.solid(tone, 1.1), Fill.PAPER),
        Mark.Text.level(number, at.moved(0, 3.6), Anchor.MIDDLE, style));
  }

  /** Radius of a balloon. */
  static final double BALLOON = 8;

  /** Short cross of centre lines that stand out over a circle. */
  static Mark centreCross(Point at, double reach) {
    return new Mark.Path(
        List.of(
            List.of(at.moved(-reach, 0), at.moved(reach, 0)),
            List.of(at.moved(0, -reach), at.moved(0, reach))),
        false,
        LineStyle.CENTRE,
        Fill.NONE);
  }
}
