package reseat.plots.drawing;

import java.util.ArrayList;
import java.util.List;
import reseat.design.CouplingDesign;
import reseat.design.Preload;
import reseat.design.Support;
import reseat.elementary.Elementary;
import reseat.equilibrium.ContactLines;
import reseat.equilibrium.PreloadZone;
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
import reseat.seat.ConeSeat;
import reseat.space.Vec3;

/** The marks of a plan and its key: lines first, signs on them, words last where there is room. */
final class PlanMarks {

  private static final double TOO_SMALL = 3;
  private static final LineStyle RING = new LineStyle(Tone.VERMILLION, 0.9, Dash.DASHED);
  private static final LineStyle TRIANGLE = LineStyle.solid(Tone.BLUE, 1.0);
  private static final LineStyle WANDER = new LineStyle(Tone.GREEN, 1.2, Dash.DOTTED);
  private static final LineStyle ZONE = new LineStyle(Tone.GREEN, 1.0, Dash.DASHED);
  private static final Fill ZONE_FILL = new Fill(Tone.GREEN, 0.10);

  private final CouplingDesign design;
  private final SheetView view;
  private final Projection projection;
  private final Box frame;
  private final LabelPlacer placer;
  private final DrawingUnits units;
  private final List<Mark> marks = new ArrayList<>();
  private final List<Mark> words = new ArrayList<>();
  private final List<Key.Entry> key = new ArrayList<>();

  PlanMarks(CouplingDesign design, SheetView view, Box frame, DrawingUnits units) {
    this.units = units;
    this.design = design;
    this.view = view;
    this.projection = new Projection(view, Vec3.X, Vec3.Y);
    this.frame = frame;
    this.placer = new LabelPlacer(frame);
  }

  void drawAll(List<PreloadZone> zones, List<PlanView.Landmark> landmarks) {
    zones(zones);
    seats();
    triangle();
    circle();
    balls();
    contacts();
    preloads();
    LoadMarks loads = new LoadMarks(design, projection, frame, placer, units);
    loads.drawSigns(landmarks);
    names();
    loads.nameToolPoint();
    circleName();
    loads.balloons();
    words.addAll(0, loads.marks());
    key.addAll(loads.key());
  }

  /** All marks, moved up so that no empty strip is left above them. */
  Scene sheet() {
    List<Mark> all = new ArrayList<>(marks);
    all.addAll(words);
    return Scene.trimmed(frame.right() + 4, 4, all);
  }

  List<Key.Entry> key() {
    return List.copyOf(key);
  }

  /** Where a preload's line meets the coupling plane; its own point if it never does. */
  static Vec3 pierce(Preload p) {
    double down = p.direction().z();
    return Math.abs(down) < LoadMarks.SEEN_END_ON
        ? p.at()
        : p.at().minus(p.direction().times(p.at().z() / down));
  }

  private Point sheet(Vec3 p) {
    return projection.of(p);
  }

  private void zones(List<PreloadZone> zones) {
    boolean shown = false;
    for (PreloadZone z : zones) {
      List<Point> corners = z.corners().stream().map(this::sheet).toList();
      List<Point> seen = frame.clip(corners);
      if (seen.size() > 2 && zones.size() == 1) {
        marks.add(Mark.Path.polygon(seen, LineStyle.NONE, ZONE_FILL));
      }
      for (int i = 0; i < corners.size(); i++) {
        List<Point> edge = frame.clip(corners.get(i), corners.get((i + 1) % corners.size()));
        if (!edge.isEmpty()) {
          marks.add(Mark.Path.open(edge, ZONE));
          placer.avoid(edge.get(0), edge.get(1));
          shown = true;
        }
      }
    }
    if (shown) {
      key.add(Key.Entry.area(ZONE, zones.size() == 1 ? ZONE_FILL : Fill.NONE, zoneWords(zones)));
    }
  }

  private String zoneWords(List<PreloadZone> zones) {
    if (zones.size() > 1) {
      return "where each preload line may stand, the others at their places, before a contact opens";
    }
    return design.preloads().size() > 1
        ? "where the resultant of the preloads may stand before a contact opens"
        : "where the preload line may stand before a contact opens";
  }

  private void seats() {
    boolean groove = false;
    for (Support s : design.supports()) {
      for (Mark m : s.seat().accept(new PlanSeat(view, s.ball()))) {
        marks.add(m);
        if (m instanceof Mark.Path path) {
          placer.avoid(path);
        }
      }
      if (s.seat().isGroove()) {
        groove = true;
        Vec3 along = s.seat().frame().axis().times(PlanSeat.reach(s.seat(), s.ball()) * 1.25);
        Point a = sheet(s.ball().centre().minus(along));
        Point b = sheet(s.ball().centre().plus(along));
        marks.add(Mark.Path.line(a, b, LineStyle.CENTRE));
        placer.avoid(a, b);
      }
    }
    if (groove) {
      key.add(Key.Entry.line(LineStyle.CENTRE, "axis of a groove"));
    }
  }

  private void triangle() {
    List<Point> corners = design.supports().stream().map(s -> sheet(s.ball().centre())).toList();
    if (corners.size() < 3) {
      return;
    }
    marks.add(Mark.Path.polygon(corners, TRIANGLE, Fill.NONE));
    for (int i = 0; i < corners.size(); i++) {
      placer.avoid(corners.get(i), corners.get((i + 1) % corners.size()));
    }
    key.add(Key.Entry.line(TRIANGLE, "coupling triangle, through the ball centres"));
  }

  private boolean onCircle() {
    double r = design.supports().get(0).ball().centre().norm();
    return design.supports().stream()
        .allMatch(s -> Math.abs(s.ball().centre().norm() - r) < 1e-6 * r);
  }

  private void circle() {
    if (onCircle()) {
      double r = view.length(design.couplingRadius());
      marks.add(Mark.Oval.circle(view.origin(), r, LineStyle.CENTRE, Fill.NONE));
      placer.avoidCircle(view.origin(), r);
    }
  }

  private void balls() {
    for (Support s : design.supports()) {
      Point c = sheet(s.ball().centre());
      double r = view.length(s.ball().radius());
      marks.add(Mark.Oval.circle(c, r, LineStyle.OUTLINE, new Fill(Tone.SKY, 0.22)));
      marks.add(Sign.centreCross(c, r + 4));
      placer.keepClear(Box.about(c, Math.max(5, 0.72 * r)));
      placer.avoidCircle(c, r);
    }
  }

  private void contacts() {
    for (ContactLines.Line line : ContactLines.nominal(design).lines()) {
      if (!line.ring()) {
        marks.add(Mark.Oval.circle(sheet(line.point()), 1.9, LineStyle.NONE, Fill.full(Tone.INK)));
      }
    }
    boolean ring = false;
    for (Support s : design.supports()) {
      if (s.seat() instanceof ConeSeat cone) {
        ring = true;
        double radius = view.length(s.ball().radius() * Elementary.sin(cone.angle()));
        marks.add(Mark.Oval.circle(sheet(s.ball().centre()), radius, RING, Fill.NONE));
      }
    }
    key.add(
        new Key.Entry(
            List.of(Mark.Oval.circle(new Point(0, 0), 1.9, LineStyle.NONE, Fill.full(Tone.INK))),
            "contact point under a ball"));
    if (ring) {
      key.add(Key.Entry.line(RING, "ring of contact under a ball"));
    }
  }

  private void preloads() {
    boolean wander = false;
    for (Preload p : design.preloads()) {
      Point at = projection.of(pierce(p));
      double r = view.length(p.lineSpread().limit());
      if (r >= TOO_SMALL) {
        marks.add(Mark.Oval.circle(at, r, WANDER, Fill.NONE));
        wander = true;
      }
      marks.addAll(LoadMarks.direction(projection, p.direction(), at, 34, Tone.GREEN));
      placer.keepClear(Box.about(at, LoadMarks.SIGN));
      String words = LoadMarks.preloadWords(p, units);
      if (r > 0 && r < TOO_SMALL) {
        words +=
            ", wandering \u00b1"
                + units.length(p.lineSpread().limit(), 2)
                + " (too little to show)";
      }
      key.add(
          new Key.Entry(
              Sign.acrossSheet(new Point(0, 0), LoadMarks.SIGN, Tone.GREEN, p.direction().z()),
              words));
    }
    if (wander) {
      key.add(Key.Entry.line(WANDER, "how far the preload line wanders from change to change"));
    }
  }

  private void names() {
    for (Support s : design.supports()) {
      Vec3 c = s.ball().centre();
      Point at = sheet(c);
      double outward = Elementary.atan2(c.y(), c.x());
      List<String> lines =
          List.of(s.name(), "ball \u00d8" + units.briefly(s.ball().diameter()));
      placer
          .place(lines, TextStyle.LABEL, at, view.length(clear(s)) + 5, outward)
          .ifPresent(p -> words.addAll(p.marks()));
    }
  }

  /** How far from the ball's centre a name is clear of ball and seat; a groove is long but narrow. */
  private static double clear(Support s) {
    return s.seat().isGroove() ? s.ball().radius() : PlanSeat.reach(s.seat(), s.ball());
  }

  private void circleName() {
    if (!onCircle()) {
      return;
    }
    double r = design.couplingRadius();
    Vec3 a = design.supports().get(0).ball().centre().unit();
    Vec3 b = design.supports().get(design.supports().size() - 1).ball().centre().unit();
    Vec3 between = a.plus(b);
    double angle = between.norm() > 1e-6 ? Elementary.atan2(between.y(), between.x()) : 0;
    Point at = view.origin().toward(view.length(r), angle);
    placer
        .place(
            List.of("circle of ball centres", "\u00d8" + units.dimension(2 * r)),
            TextStyle.SMALL,
            at,
            4,
            angle)
        .ifPresent(p -> words.addAll(p.marks()));
  }
}
