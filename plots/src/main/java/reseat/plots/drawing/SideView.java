package reseat.plots.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import reseat.design.CouplingDesign;
import reseat.design.Half;
import reseat.design.Preload;
import reseat.design.Support;
import reseat.plots.Picture;
import reseat.plots.PictureKind;
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
import reseat.space.Vec3;

/**
 * The coupling from the side on which the tool overhangs, to scale: heights, overhang, preload,
 * loads. Only what the design states is drawn; the plates are sketched.
 */
public final class SideView {

  private static final double WIDTH = 600;
  private static final double MARGIN = 62;
  private static final LineStyle SKETCH = new LineStyle(Tone.MUTED, 0.9, Dash.DASHED);

  private SideView() {}

  /**
   * Draws the view.
   *
   * @param design the coupling
   * @param units units of its words
   * @return the picture {@code side}
   */
  public static Picture draw(CouplingDesign design, DrawingUnits units) {
    Vec3 right = rightHand(design);
    SheetView.Extent extent = extent(design, right);
    double height =
        Math.max(170, Math.min(380, (WIDTH - 2 * MARGIN) * extent.height() / extent.width()));
    SheetView view =
        SheetView.fitting(
            extent, new Box(MARGIN, MARGIN + 12, WIDTH - MARGIN, MARGIN + 12 + height));
    Projection projection = new Projection(view, right, Vec3.Z);
    Box frame = new Box(4, 4, WIDTH - 4, height + 2 * MARGIN + 12);
    LabelPlacer placer = new LabelPlacer(frame);
    List<Mark> marks = new ArrayList<>();
    List<Key.Entry> key = new ArrayList<>();
    plates(design, projection, placer, marks);
    balls(design, projection, placer, marks);
    plane(design, projection, marks);
    marks.addAll(SideDimensions.of(design, projection, placer, units));
    preloads(design, projection, placer, marks, key, units);
    LoadMarks loads = new LoadMarks(design, projection, frame, placer, units);
    loads.drawSigns(List.of());
    names(design, projection, placer, marks);
    loads.nameToolPoint();
    loads.balloons();
    marks.addAll(loads.marks());
    key.addAll(loads.key());
    key.add(Key.Entry.line(SKETCH, "plates and carriers, sketched"));
    key.add(Key.Entry.line(LineStyle.CENTRE, "plane through the ball centres"));
    Scene drawing = Scene.trimmed(WIDTH, 6, marks);
    Scene.Builder scene = new Scene.Builder().place(drawing, 0, 0);
    double bottom = drawing.height() + 4;
    scene.addAll(AxisTriad.of(design.axes(), right, Vec3.Z, 6, bottom + 2));
    scene.addAll(ScaleBar.of(view, WIDTH - 8, bottom + 34, 170, units));
    Scene keySheet = Key.of(key, WIDTH - 12, 2);
    scene.place(keySheet, 6, bottom + 74);
    return Picture.of(
        PictureKind.SIDE_VIEW,
        "side",
        "Side view of the coupling",
        "How far the tool point stands out from the coupling and above its plane, and how preload"
            + " and loads act on it.",
        altText(design, right, units),
        scene.build(WIDTH, bottom + 74 + keySheet.height()));
  }

  /** The level machine axis along which the tool overhangs most, pointing toward the tool. */
  private static Vec3 rightHand(CouplingDesign design) {
    Vec3 tool = design.toolPoint();
    Vec3 best = Vec3.X;
    double most = -1;
    for (int i = 0; i < 3; i++) {
      Vec3 d = design.axes().axis(i).direction();
      if (Math.abs(d.z()) < 1e-6 && Math.abs(tool.dot(d)) > most + 1e-12) {
        most = Math.abs(tool.dot(d));
        best = tool.dot(d) < 0 ? d.negated() : d;
      }
    }
    return best;
  }

  private static SheetView.Extent extent(CouplingDesign design, Vec3 right) {
    SheetView.Extent e = new SheetView.Extent();
    for (Support s : design.supports()) {
      Vec3 c = s.ball().centre();
      e.include(c.dot(right), c.z(), 2.2 * s.ball().radius());
    }
    List<Vec3> points = new ArrayList<>(List.of(design.toolPoint()));
    design.cases().forEach(c -> points.add(c.load().at()));
    if (design.holder().mass() > 0) {
      points.add(design.holder().centreOfMass());
    }
    points.forEach(p -> e.include(p.dot(right), p.z(), 0));
    return e;
  }

  private static void plates(
      CouplingDesign design, Projection p, LabelPlacer placer, List<Mark> marks) {
    double r = SideDimensions.largestRadius(design);
    double left = Double.POSITIVE_INFINITY;
    double right = Double.NEGATIVE_INFINITY;
    for (Support s : design.supports()) {
      double x = s.ball().centre().dot(p.right());
      left = Math.min(left, x - 1.9 * r);
      right = Math.max(right, x + 1.9 * r);
    }
    for (int side = -1; side <= 1; side += 2) {
      Point a = p.view().of(left, side * 1.7 * r);
      Point b = p.view().of(right, side * 2.2 * r);
      Box plate = new Box(a.x(), Math.min(a.y(), b.y()), b.x(), Math.max(a.y(), b.y()));
      Mark.Path outline = Mark.Path.rectangle(plate, SKETCH, Fill.NONE);
      marks.add(outline);
      placer.avoid(outline);
    }
  }

  private static void balls(
      CouplingDesign design, Projection p, LabelPlacer placer, List<Mark> marks) {
    List<Support> farFirst = new ArrayList<>(design.supports());
    farFirst.sort(Comparator.comparingDouble(s -> p.towardViewer(s.ball().centre())));
    for (Support s : farFirst) {
      double r = s.ball().radius();
      double x = s.ball().centre().dot(p.right());
      double z = s.ball().centre().z();
      double seatSide = design.ballsOn() == Half.HOLDER ? -1 : 1;
      double plate = SideDimensions.largestRadius(design) * 1.7;
      carrier(p, x, z + seatSide * 0.62 * r, seatSide * plate, 1.25 * r, placer, marks);
      carrier(p, x, z - seatSide * 0.75 * r, -seatSide * plate, 0.55 * r, placer, marks);
      Point c = p.of(s.ball().centre());
      marks.add(Mark.Oval.circle(c, p.view().length(r), LineStyle.OUTLINE, Fill.PAPER));
      marks.add(Mark.Oval.circle(c, p.view().length(r), LineStyle.NONE, new Fill(Tone.SKY, 0.22)));
      marks.add(Sign.centreCross(c, p.view().length(r) + 4));
      placer.keepClear(Box.about(c, 0.72 * p.view().length(r)));
      placer.avoidCircle(c, p.view().length(r));
    }
  }

  /** A block between a ball and a plate. */
  private static void carrier(
      Projection p,
      double x,
      double from,
      double to,
      double halfWidth,
      LabelPlacer placer,
      List<Mark> marks) {
    Point a = p.view().of(x - halfWidth, Math.max(from, to));
    Point b = p.view().of(x + halfWidth, Math.min(from, to));
    Mark.Path outline =
        Mark.Path.rectangle(new Box(a.x(), a.y(), b.x(), b.y()), SKETCH, Fill.PAPER);
    marks.add(outline);
    placer.avoid(outline);
  }

  private static void plane(CouplingDesign design, Projection p, List<Mark> marks) {
    SheetView.Extent e = extent(design, p.right());
    Point a = p.view().of(-e.width(), 0);
    Point b = p.view().of(e.width(), 0);
    Box sheet = new Box(20, 0, WIDTH - 20, 2000);
    List<Point> line = sheet.clip(a, b);
    if (!line.isEmpty()) {
      marks.add(Mark.Path.open(line, LineStyle.CENTRE));
    }
  }

  private static void preloads(
      CouplingDesign design,
      Projection p,
      LabelPlacer placer,
      List<Mark> marks,
      List<Key.Entry> key,
      DrawingUnits units) {
    double top = 2.2 * SideDimensions.largestRadius(design);
    for (Preload preload : design.preloads()) {
      Vec3 d = preload.direction();
      Vec3 through = PlanMarks.pierce(preload);
      if (Math.abs(d.z()) < LoadMarks.SEEN_END_ON) {
        marks.addAll(LoadMarks.direction(p, d, p.of(preload.at()), 34, Tone.GREEN));
      } else {
        Point tip = p.of(through.plus(d.times(top / d.z())));
        Point tail = tip.toward(-38, p.angle(d));
        marks.addAll(Sign.arrow(tail, tip, Tone.GREEN, 2));
        marks.add(
            Mark.Path.line(
                tip,
                p.of(through.minus(d.times(top / d.z()))),
                new LineStyle(Tone.GREEN, 0.9, Dash.CHAIN)));
        placer.avoid(tail, tip);
      }
      key.add(
          new Key.Entry(
              Sign.arrow(new Point(0, -7), new Point(0, 7), Tone.GREEN, 2),
              LoadMarks.preloadWords(preload, units)));
    }
  }

  private static void names(
      CouplingDesign design, Projection p, LabelPlacer placer, List<Mark> marks) {
    List<Support> told = new ArrayList<>();
    for (Support s : design.supports()) {
      if (told.contains(s)) {
        continue;
      }
      // one ball stands behind another: one label names both
      List<String> names = new ArrayList<>();
      for (Support other : design.supports()) {
        if (p.of(other.ball().centre()).distanceTo(p.of(s.ball().centre())) < 1) {
          names.add(other.name());
          told.add(other);
        }
      }
      placer
          .place(
              List.of(String.join(", ", names)),
              TextStyle.LABEL,
              p.of(s.ball().centre()),
              p.view().length(s.ball().radius()) + 4,
              -Math.PI / 3)
          .ifPresent(l -> marks.addAll(l.marks()));
    }
  }

  private static String altText(CouplingDesign design, Vec3 right, DrawingUnits units) {
    Vec3 tool = design.toolPoint();
    return "Side view of the coupling to scale. The tool point stands "
        + units.dimension(tool.dot(right))
        + " from the middle of the coupling and "
        + units.dimension(tool.z())
        + " above the plane of the ball centres. "
        + design.preloads().size()
        + " preloads and "
        + design.cases().size()
        + " load cases are marked.";
  }
}
