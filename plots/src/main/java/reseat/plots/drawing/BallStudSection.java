package reseat.plots.drawing;

import java.util.ArrayList;
import java.util.List;
import reseat.design.StudMount;
import reseat.design.StudThread;
import reseat.design.Support;
import reseat.plots.Picture;
import reseat.plots.PictureKind;
import reseat.plots.scene.Anchor;
import reseat.plots.scene.Box;
import reseat.plots.scene.Dash;
import reseat.plots.scene.Fill;
import reseat.plots.scene.Key;
import reseat.plots.scene.LabelPlacer;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Point;
import reseat.plots.scene.Scene;
import reseat.plots.scene.TextStyle;
import reseat.plots.scene.Tone;

/** A section along the axis of a ball stud, to scale: ball, bond, neck, shoulder, thread. */
public final class BallStudSection {

  private static final double WIDTH = 600;
  private static final double HEIGHT = 360;
  private static final double SIDE = 150;

  /** Room for the words right of the body. */
  private static final double LABELS = 195;

  private static final double THINNEST_BOND = 1.6;
  private static final LineStyle SKETCH = new LineStyle(Tone.MUTED, 0.9, Dash.DASHED);

  private BallStudSection() {}

  /**
   * Draws the section.
   *
   * @param name name of the picture, for instance {@code stud-front}
   * @param support a support whose ball stands on a described stud
   * @param units units of its words
   * @return the picture
   * @throws IllegalArgumentException if the stud is not described
   */
  public static Picture draw(String name, Support support, DrawingUnits units) {
    StudMount mount =
        support
            .mounting()
            .stud()
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "the stud of ball " + support.name() + " is not described"));
    return draw(name, "of ball " + support.name(), mount, support.ball().radius(), units);
  }

  /**
   * Draws the section of a stud by itself.
   *
   * @param name name of the picture
   * @param whose which stud, as the heading goes on: {@code of ball front}
   * @param mount the stud and what holds it
   * @param radius radius of its ball, m
   * @param units units of its words
   * @return the picture
   */
  public static Picture draw(
      String name, String whose, StudMount mount, double radius, DrawingUnits units) {
    StudProfile profile = StudProfile.of(mount, radius);
    SheetView view = view(mount, profile, radius);
    List<Mark> marks = new ArrayList<>();
    LabelPlacer placer = new LabelPlacer(new Box(2, 2, WIDTH - 2, HEIGHT));
    body(mount, profile, radius, view, marks, placer);
    ball(view, radius, marks, placer);
    stud(mount, profile, view, marks, placer);
    bond(mount, profile, view, marks);
    dimensions(mount, profile, view, marks, placer, units);
    labels(mount, profile, radius, view, marks, placer, units);
    Scene.Builder scene = new Scene.Builder().addAll(marks);
    scene.addAll(ScaleBar.of(view, WIDTH - 8, HEIGHT - 22, 130, units));
    Scene key = Key.of(StudWords.key(mount, SKETCH, units), WIDTH - 12, 1);
    scene.place(key, 6, HEIGHT + 4);
    return Picture.of(
        PictureKind.STUD_SECTION,
        name,
        "Stud " + whose,
        StudWords.caption(mount, units),
        StudWords.altText(whose, mount, units),
        scene.build(WIDTH, HEIGHT + 4 + key.height()));
  }

  private static SheetView view(StudMount mount, StudProfile profile, double radius) {
    SheetView.Extent e = new SheetView.Extent();
    double side = profile.bodyHalfWidth(radius);
    e.include(0, radius, 0);
    e.include(-side, -mount.stud().stickOut() - profile.foot(), 0);
    e.include(side, -mount.stud().stickOut() - profile.foot(), 0);
    return SheetView.fitting(e, new Box(SIDE - 20, 24, WIDTH - LABELS, HEIGHT - 16));
  }

  private static List<Point> onSheet(SheetView view, List<Point> points) {
    return points.stream().map(p -> view.of(p.x(), p.y())).toList();
  }

  private static void body(
      StudMount mount,
      StudProfile profile,
      double ballRadius,
      SheetView view,
      List<Mark> marks,
      LabelPlacer placer) {
    double face = -mount.stud().stickOut();
    double bottom = face - profile.foot();
    double held = profile.right().get(profile.right().size() - 2).x();
    double side = Math.max(1.8 * held, held + mount.stud().neckDiameter() / 2);
    for (int s = -1; s <= 1; s += 2) {
      List<Point> half =
          onSheet(
              view,
              List.of(
                  new Point(s * held, face),
                  new Point(s * side, face),
                  new Point(s * side, bottom),
                  new Point(s * held, bottom)));
      Hatch.of(half, 7, true).ifPresent(marks::add);
      marks.add(Mark.Path.polygon(half, LineStyle.OUTLINE, Fill.NONE));
    }
    if (mount.thread().flatMap(StudThread::lockNut).isPresent()) {
      double d = 2 * held;
      double room = Math.max(0.2 * d, mount.stud().stickOut() - ballRadius);
      double high = Math.min(0.55 * d, 0.8 * room);
      Point a = view.of(-0.85 * d, face + high);
      Point b = view.of(0.85 * d, face);
      Box nut = new Box(a.x(), a.y(), b.x(), b.y());
      marks.add(Mark.Path.rectangle(nut, SKETCH, Fill.NONE));
      placer.keepClear(nut);
    }
  }

  private static void ball(SheetView view, double radius, List<Mark> marks, LabelPlacer placer) {
    Point c = view.of(0, 0);
    double r = view.length(radius);
    marks.add(Mark.Oval.circle(c, r, LineStyle.OUTLINE, new Fill(Tone.SKY, 0.15)));
    placer.avoidCircle(c, r);
  }

  private static void stud(
      StudMount mount, StudProfile profile, SheetView view, List<Mark> marks, LabelPlacer placer) {
    List<Point> outline = onSheet(view, profile.outline());
    marks.add(Mark.Path.polygon(outline, LineStyle.NONE, Fill.PAPER));
    Hatch.of(outline, 5, false).ifPresent(marks::add);
    Mark.Path edge = Mark.Path.polygon(outline, LineStyle.OUTLINE, Fill.NONE);
    marks.add(edge);
    placer.avoid(edge);
    double face = -mount.stud().stickOut();
    mount
        .thread()
        .ifPresent(
            t -> {
              double root = StudProfile.rootRadius(t.limits().thread());
              for (int s = -1; s <= 1; s += 2) {
                marks.add(
                    Mark.Path.line(
                        view.of(s * root, face),
                        view.of(s * root, face - profile.foot()),
                        LineStyle.THIN));
              }
            });
    Point top = view.of(0, 0).moved(0, -12);
    Point bottom = view.of(0, face - profile.foot()).moved(0, 8);
    marks.add(Mark.Path.line(top, bottom, LineStyle.CENTRE));
    marks.add(Sign.centreCross(view.of(0, 0), 9));
  }

  private static void bond(StudMount mount, StudProfile profile, SheetView view, List<Mark> marks) {
    if (mount.bond().isEmpty()) {
      return;
    }
    double width = Math.max(THINNEST_BOND, view.length(mount.bond().get().gap()));
    List<Point> right = onSheet(view, profile.bond());
    List<Point> left =
        onSheet(view, profile.bond().stream().map(p -> new Point(-p.x(), p.y())).toList());
    LineStyle line = LineStyle.solid(Tone.ORANGE, width);
    marks.add(new Mark.Path(List.of(right, left), false, line, Fill.NONE));
  }

  private static void dimensions(
      StudMount mount,
      StudProfile profile,
      SheetView view,
      List<Mark> marks,
      LabelPlacer placer,
      DrawingUnits units) {
    double left = profile.bodyHalfWidth(0);
    double face = -mount.stud().stickOut();
    Point centre = new Point(view.of(-left, 0).x() - 26, view.of(0, 0).y());
    Point atFace = new Point(centre.x(), view.of(0, face).y());
    marks.add(Mark.Path.line(centre, view.of(0, 0).moved(-14, 0), LineStyle.THIN));
    marks.add(Mark.Path.line(atFace, view.of(-left, face), LineStyle.THIN));
    add(
        DimensionLine.of(atFace, centre, 4, units.dimension(mount.stud().stickOut())),
        marks,
        placer);
    if (mount.thread().isPresent()) {
      double bottom = face - profile.foot();
      // short words on a line of their own: the figures may be longer than the dimension
      Point upper = atFace.moved(-24, 0);
      Point atBottom = new Point(upper.x(), view.of(0, bottom).y());
      marks.add(Mark.Path.line(atBottom, view.of(-left, bottom), LineStyle.THIN));
      marks.add(Mark.Path.line(upper, atFace, LineStyle.THIN));
      String engaged = units.length(profile.foot(), 4);
      add(DimensionLine.of(atBottom, upper, 4, engaged), marks, placer);
    }
  }

  private static void add(List<Mark> dimension, List<Mark> marks, LabelPlacer placer) {
    marks.addAll(dimension);
    placer.keepClear(dimension.get(dimension.size() - 1).box().grown(2));
  }

  private static void labels(
      StudMount mount,
      StudProfile profile,
      double radius,
      SheetView view,
      List<Mark> marks,
      LabelPlacer placer,
      DrawingUnits units) {
    double face = -mount.stud().stickOut();
    double shoulderTop = face + mount.stud().shoulderLength();
    double neck = mount.stud().neckDiameter() / 2;
    double neckMiddle = (shoulderTop - radius) / 2;
    label(
        "ball \u00d8" + units.dimension(2 * radius),
        0.7 * radius,
        0.7 * radius,
        view,
        marks,
        placer);
    double beside = view.of(profile.bodyHalfWidth(0), 0).x() + 14;
    addLabel("neck \u00d8" + units.dimension(2 * neck), view.of(neck, neckMiddle), beside, marks);
    if (mount.stud().shoulderLength() > 0) {
      double shoulder = mount.stud().shoulderDiameter();
      addLabel(
          "shoulder \u00d8" + units.dimension(shoulder),
          view.of(shoulder / 2, (face + shoulderTop) / 2),
          beside,
          marks);
    }
  }

  /** Words on the level of what they name, right of body and nut, where nothing else stands. */
  private static void addLabel(String words, Point named, double x, List<Mark> marks) {
    Point to = new Point(x, named.y());
    marks.add(Mark.Path.line(named, to, LineStyle.THIN));
    marks.add(Mark.Text.level(words, to.moved(3, 4), Anchor.START, TextStyle.SMALL));
  }

  private static void label(
      String words, double x, double y, SheetView view, List<Mark> marks, LabelPlacer placer) {
    placer
        .place(List.of(words), TextStyle.SMALL, view.of(x, y), 22, 0)
        .ifPresent(
            p -> {
              marks.addAll(p.marks());
              Point to = new Point(p.box().left() - 2, p.box().middle().y());
              marks.add(Mark.Path.line(view.of(x, y), to, LineStyle.THIN));
            });
  }
}
