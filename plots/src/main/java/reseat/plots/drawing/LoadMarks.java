package reseat.plots.drawing;

import java.util.ArrayList;
import java.util.List;
import reseat.design.CouplingDesign;
import reseat.design.LoadCase;
import reseat.design.Preload;
import reseat.plots.scene.Box;
import reseat.plots.scene.Key;
import reseat.plots.scene.LabelPlacer;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Point;
import reseat.plots.scene.TextStyle;
import reseat.plots.scene.Tone;
import reseat.space.Vec3;

/** What acts on the moving half, in any view: weight, loads, and the points that matter. */
final class LoadMarks {

  /** Radius of signs, sheet units. */
  static final double SIGN = 5.5;

  /** Share of a vector below which it counts as seen end on. */
  static final double SEEN_END_ON = 0.03;

  private final CouplingDesign design;
  private final Projection projection;
  private final Box frame;
  private final LabelPlacer placer;
  private final DrawingUnits units;
  private final List<Mark> marks = new ArrayList<>();
  private final List<Key.Entry> key = new ArrayList<>();
  private List<Point> tips = List.of();

  LoadMarks(
      CouplingDesign design,
      Projection projection,
      Box frame,
      LabelPlacer placer,
      DrawingUnits units) {
    this.units = units;
    this.design = design;
    this.projection = projection;
    this.frame = frame;
    this.placer = placer;
  }

  /** Draws signs and arrows; words and balloons come later, when all signs are known. */
  void drawSigns(List<PlanView.Landmark> landmarks) {
    mass();
    landmarks(landmarks);
    toolPoint();
    tips = loads();
  }

  List<Mark> marks() {
    return List.copyOf(marks);
  }

  List<Key.Entry> key() {
    return List.copyOf(key);
  }

  /** An arrow for a direction: along the sheet where it is seen, a sign where it is seen end on. */
  static List<Mark> direction(Projection projection, Vec3 d, Point at, double length, Tone tone) {
    List<Mark> marks = new ArrayList<>();
    if (projection.seen(d) > SEEN_END_ON) {
      Point tip = at.toward(length * projection.seen(d), projection.angle(d));
      marks.addAll(Sign.arrow(at, tip, tone, 1.6));
    }
    if (Math.abs(projection.towardViewer(d)) > SEEN_END_ON) {
      marks.addAll(Sign.acrossSheet(at, SIGN, tone, projection.towardViewer(d)));
    }
    return marks;
  }

  static String preloadWords(Preload p, DrawingUnits units) {
    return (p.name().isBlank() ? "preload" : p.name()) + ": " + units.force(p.force());
  }

  private void mass() {
    if (design.holder().mass() == 0) {
      return;
    }
    Point at = projection.of(design.holder().centreOfMass());
    Vec3 g = design.gravity();
    double seen = projection.seen(g);
    if (seen > SEEN_END_ON) {
      Point tip = at.toward(SIGN + 32 * seen, projection.angle(g));
      marks.addAll(Sign.arrow(at, tip, Tone.INK, 1.3));
      placer.avoid(at, tip);
      placer.keepClear(Box.about(tip, 4));
    }
    marks.addAll(Sign.centreOfMass(at, SIGN));
    placer.keepClear(Box.about(at, SIGN));
    double weight = design.weight().force().norm();
    key.add(
        new Key.Entry(
            Sign.centreOfMass(new Point(0, 0), SIGN),
            "centre of mass of the moving half, weight " + units.force(weight)));
  }

  private void landmarks(List<PlanView.Landmark> landmarks) {
    for (int i = 0; i < landmarks.size(); i++) {
      Point at = projection.of(landmarks.get(i).at());
      String words = landmarks.get(i).name();
      if (frame.contains(Box.about(at, SIGN))) {
        marks.addAll(Sign.landmark(at, SIGN, i));
        placer.keepClear(Box.about(at, SIGN));
      } else {
        words += " (off the sheet)";
      }
      key.add(new Key.Entry(Sign.landmark(new Point(0, 0), SIGN, i), words));
    }
  }

  private void toolPoint() {
    Point at = projection.of(design.toolPoint());
    marks.addAll(Sign.target(at, SIGN, Tone.VERMILLION));
    placer.keepClear(Box.about(at, SIGN + 3));
    key.add(
        new Key.Entry(
            Sign.target(new Point(0, 0), SIGN, Tone.VERMILLION),
            "tool point, "
                + units.length(design.toolPoint().z(), 4)
                + " above the ball centres"));
  }

  /** Draws the arrows of the cases; returns where each one's balloon belongs. */
  private List<Point> loads() {
    List<Point> found = new ArrayList<>();
    for (int i = 0; i < design.cases().size(); i++) {
      LoadCase c = design.cases().get(i);
      Point at = projection.of(c.load().at());
      Vec3 f = c.load().force();
      if (projection.seen(f) > SEEN_END_ON * f.norm()) {
        double angle = projection.angle(f);
        Point tip = at.toward(44 + 16 * (i % 3), angle);
        marks.addAll(Sign.arrow(at.toward(SIGN + 2, angle), tip, Tone.VERMILLION, 1.6));
        placer.keepClear(Box.about(tip, 4));
        placer.avoid(at, tip);
        found.add(tip);
      } else {
        found.add(at);
      }
    }
    return found;
  }

  /** Names the tool point. */
  void nameToolPoint() {
    placer
        .place(
            List.of("tool point"),
            TextStyle.LABEL.in(Tone.VERMILLION),
            projection.of(design.toolPoint()),
            SIGN + 5,
            Math.PI / 2)
        .ifPresent(p -> marks.addAll(p.marks()));
  }

  /** Numbers the cases, and explains the numbers in the key. */
  void balloons() {
    for (int i = 0; i < tips.size(); i++) {
      LoadCase c = design.cases().get(i);
      String number = Integer.toString(i + 1);
      Vec3 f = c.load().force();
      double toward = projection.towardViewer(f);
      double across = Math.abs(toward) > SEEN_END_ON * f.norm() ? toward : 0;
      double width = 2 * Sign.BALLOON + (across != 0 ? 15 : 0);
      Point tip = tips.get(i);
      placer
          .findRoom(width, 2 * Sign.BALLOON, tip, 4, projection.angle(f))
          .ifPresent(
              box -> {
                placer.keepClear(box);
                if (!box.grown(6).contains(tip)) {
                  marks.add(Mark.Path.line(tip, box.middle(), LineStyle.THIN));
                }
                marks.addAll(balloon(box.middle(), number, across));
              });
      key.add(new Key.Entry(balloon(new Point(0, 0), number, across), CaseWords.of(design, c, units)));
    }
  }

  /** A number, and beside it a sign for a part across the sheet; zero for none. */
  private static List<Mark> balloon(Point middle, String number, double across) {
    Point at = across != 0 ? middle.moved(-7.5, 0) : middle;
    List<Mark> all = new ArrayList<>(Sign.balloon(at, number, Tone.VERMILLION));
    if (across != 0) {
      Point beside = at.moved(Sign.BALLOON + 7.5, 0);
      all.addAll(Sign.acrossSheet(beside, SIGN, Tone.VERMILLION, across));
    }
    return all;
  }
}
