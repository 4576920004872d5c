package reseat.plots.drawing;

import java.util.ArrayList;
import java.util.List;
import reseat.design.CouplingDesign;
import reseat.design.Support;
import reseat.elementary.Elementary;
import reseat.making.MadeDimension;
import reseat.making.MadeFeature;
import reseat.making.MadeHalf;
import reseat.plots.dxf.DxfLayer;
import reseat.plots.scene.Anchor;
import reseat.plots.scene.Box;
import reseat.plots.scene.Dash;
import reseat.plots.scene.Fill;
import reseat.plots.scene.LabelPlacer;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Point;
import reseat.plots.scene.TextStyle;
import reseat.plots.scene.TextWidth;
import reseat.plots.scene.Tone;
import reseat.seat.CylinderPair;
import reseat.seat.Seat;
import reseat.space.Vec3;

/** The plan of one half as its maker sees it, to a round scale, with running dimensions. */
final class ShopPlan {

  /** Room for running dimensions, below and to the left, sheet units. */
  static final double FIGURES = 108;

  private static final double SAME = 1e-7;
  private static final double LONGEST_NAME = 150;
  private static final TextStyle NAME = new TextStyle(10, true, Tone.INK);
  private static final TextStyle REMARK = new TextStyle(9.5, false, Tone.INK);
  private static final LineStyle BEHIND = new LineStyle(Tone.INK, 0.9, Dash.DASHED);
  private static final LineStyle RESTING = new LineStyle(Tone.MUTED, 0.8, Dash.DOUBLE_CHAIN);

  private final CouplingDesign design;
  private final MadeHalf half;
  private final ShopFigures figures;
  private final PaperScale scale;
  private final ShopView plan;
  private final LabelPlacer placer;
  private final Box clear;

  private ShopPlan(CouplingDesign design, MadeHalf half, ShopFigures figures, Box area) {
    this.design = design;
    this.half = half;
    this.figures = figures;
    clear = new Box(area.left() + FIGURES, area.top(), area.right(), area.bottom() - FIGURES);
    Box room = new Box(clear.left() + 6, clear.top() + 18, clear.right() - 24, clear.bottom() - 4);
    SheetView.Extent e = extent();
    scale = PaperScale.fitting(e.width(), e.height(), room.width(), room.height());
    SheetView fitted = SheetView.fitting(e, room);
    // the fitted view keeps the extent in the middle; only the scale becomes round
    Point middle = room.middle();
    double shrink = scale.unitsPerMetre() / fitted.scale();
    Point origin = middle.plus(fitted.origin().minus(middle).times(shrink));
    plan = new ShopView(new SheetView(scale.unitsPerMetre(), origin));
    placer = new LabelPlacer(clear.grown(-2));
  }

  /** The plan with its scale. */
  record Drawn(ShopView view, PaperScale scale) {}

  static Drawn of(CouplingDesign design, MadeHalf half, ShopFigures figures, Box area) {
    ShopPlan p = new ShopPlan(design, half, figures, area);
    p.draw();
    return new Drawn(p.plan, p.scale);
  }

  private SheetView.Extent extent() {
    SheetView.Extent e = new SheetView.Extent();
    e.include(0, 0, 0);
    for (Support s : design.supports()) {
      Support seen = half.view().turnedOver(s);
      Vec3 c = seen.ball().centre();
      double r = seen.ball().radius();
      e.include(
          c.x(), c.y(), half.carriesBalls() ? 1.1 * r : PlanSeat.reach(seen.seat(), seen.ball()));
    }
    half.features().forEach(f -> e.include(f.at().x(), f.at().y(), 0));
    return e;
  }

  private Point sheet(Vec3 p) {
    return plan.view().of(p.x(), p.y());
  }

  private void draw() {
    datum();
    double common = commonRadius();
    if (common > 0) {
      Point o = plan.view().of(0, 0);
      plan.add(
          DxfLayer.CENTRELINES,
          Mark.Oval.circle(o, plan.view().length(common), LineStyle.CENTRE, Fill.NONE));
      placer.avoidCircle(o, plan.view().length(common));
    }
    for (Support s : design.supports()) {
      Support seen = half.view().turnedOver(s);
      if (half.carriesBalls()) {
        ball(seen);
      } else {
        seat(seen);
      }
    }
    half.ofKind(MadeFeature.Kind.TOOL_POINT)
        .forEach(t -> plan.addAll(DxfLayer.TOOL_POINT, Sign.target(sheet(t.at()), 5, Tone.PURPLE)));
    pulls().forEach(p -> plan.addAll(DxfLayer.PRELOAD, Sign.landmark(sheet(p.at()), 4, 2)));
    running();
    labels(common);
  }

  private void datum() {
    Point o = plan.view().of(0, 0);
    Point right = new Point(clear.right() - 12, o.y());
    Point top = new Point(o.x(), clear.top() + 14);
    plan.add(
        DxfLayer.CENTRELINES,
        Mark.Path.line(new Point(clear.left(), o.y()), right, LineStyle.CENTRE));
    plan.add(
        DxfLayer.CENTRELINES,
        Mark.Path.line(new Point(o.x(), clear.bottom()), top, LineStyle.CENTRE));
    plan.add(DxfLayer.CENTRELINES, Sign.head(right, 0, Tone.MUTED));
    plan.add(DxfLayer.CENTRELINES, Sign.head(top, Math.PI / 2, Tone.MUTED));
    placer.avoid(o, right);
    placer.avoid(o, top);
    placer.avoid(o, new Point(clear.left(), o.y()));
    placer.avoid(o, new Point(o.x(), clear.bottom()));
    for (Mark.Text t :
        List.of(
            Mark.Text.level("x", right.moved(3, 3), Anchor.START, NAME),
            Mark.Text.level("y", top.moved(0, -3), Anchor.MIDDLE, NAME))) {
      plan.add(DxfLayer.NOTES, t);
      placer.keepClear(t.box().grown(2));
    }
    placer.keepClear(Box.about(o, 4));
  }

  /** Radius of the circle about the datum on which all balls lie, m; zero if there is none. */
  private double commonRadius() {
    double first = -1;
    for (Support s : design.supports()) {
      double r = Elementary.hypot(s.ball().centre().x(), s.ball().centre().y());
      if (first >= 0 && Math.abs(r - first) > SAME) {
        return 0;
      }
      first = first < 0 ? r : first;
    }
    return first > SAME && design.supports().size() > 2 ? first : 0;
  }

  private void ball(Support seen) {
    Point c = sheet(seen.ball().centre());
    double r = plan.view().length(seen.ball().radius());
    plan.add(DxfLayer.BALLS, Mark.Oval.circle(c, r, LineStyle.OUTLINE, new Fill(Tone.SKY, 0.12)));
    plan.add(DxfLayer.CENTRELINES, Sign.centreCross(c, r + 6));
    for (MadeFeature f : half.ofKind(MadeFeature.Kind.STUD_HOLE)) {
      if (f.name().equals(seen.name())) {
        f.sizes().stream()
            .filter(d -> d.kind() == MadeDimension.Kind.THREAD_DIAMETER)
            .forEach(
                d ->
                    plan.add(
                        DxfLayer.HOLES,
                        Mark.Oval.circle(
                            sheet(f.at()), plan.view().length(d.value() / 2), BEHIND, Fill.NONE)));
      }
    }
    placer.keepClear(Box.about(c, 0.72 * r));
    placer.avoidCircle(c, r);
  }

  private void seat(Support seen) {
    Seat seat = seen.seat();
    List<Mark> marks = seat.accept(new PlanSeat(plan.view(), seen.ball()));
    DxfLayer layer =
        seat instanceof CylinderPair
            ? DxfLayer.PINS
            : seat.isGroove() ? DxfLayer.GROOVES : DxfLayer.SEATS;
    plan.addAll(layer, marks);
    Point c = sheet(seen.ball().centre());
    double r = plan.view().length(seen.ball().radius());
    plan.add(DxfLayer.REFERENCE, Mark.Oval.circle(c, r, RESTING, Fill.NONE));
    placer.avoidCircle(c, r);
    for (Mark m : marks) {
      if (m instanceof Mark.Path path) {
        placer.avoid(path);
      }
    }
    if (seat.isGroove()) {
      double reach = plan.view().length(PlanSeat.reach(seat, seen.ball())) + 6;
      Vec3 axis = seat.frame().axis();
      double angle = Elementary.atan2(axis.y(), axis.x());
      Mark.Path line =
          Mark.Path.line(c.toward(-reach, angle), c.toward(reach, angle), LineStyle.CENTRE);
      plan.add(DxfLayer.CENTRELINES, line);
      placer.avoid(line);
    } else {
      plan.add(DxfLayer.CENTRELINES, Sign.centreCross(c, r + 6));
    }
    placer.keepClear(Box.about(c, 0.5 * r));
  }

  /** Lines of pull that do not go through a ball. */
  private List<MadeFeature> pulls() {
    List<MadeFeature> apart = new ArrayList<>();
    for (MadeFeature p : half.ofKind(MadeFeature.Kind.LINE_OF_PULL)) {
      boolean through =
          centres().stream()
              .anyMatch(c -> Elementary.hypot(c.x() - p.at().x(), c.y() - p.at().y()) < SAME);
      if (!through) {
        apart.add(p);
      }
    }
    return apart;
  }

  private List<Vec3> centres() {
    return design.supports().stream().map(s -> half.view().turnedOver(s.ball().centre())).toList();
  }

  private void running() {
    List<Point> points = new ArrayList<>(List.of(new Point(0, 0)));
    centres().forEach(c -> points.add(new Point(c.x(), c.y())));
    half.ofKind(MadeFeature.Kind.TOOL_POINT)
        .forEach(t -> points.add(new Point(t.at().x(), t.at().y())));
    pulls().forEach(p -> points.add(new Point(p.at().x(), p.at().y())));
    List<Mark> all = new ArrayList<>();
    all.addAll(RunningDimensions.below(plan.view(), points, clear.bottom(), figures::length));
    all.addAll(RunningDimensions.leftOf(plan.view(), points, clear.left(), figures::length));
    plan.addAll(DxfLayer.DIMENSIONS, all);
    for (Mark m : all) {
      if (m instanceof Mark.Path path) {
        placer.avoid(path);
      }
    }
  }

  private void labels(double common) {
    for (Support s : design.supports()) {
      Support seen = half.view().turnedOver(s);
      List<String> words = new ArrayList<>();
      words.add(TextWidth.shortened(s.name(), NAME, LONGEST_NAME));
      if (!half.carriesBalls() && seen.seat().isGroove()) {
        words.add(ShopFigures.angle(half.view().azimuth(s.seat().frame().axis())));
      }
      double reach =
          half.carriesBalls() ? s.ball().radius() : PlanSeat.reach(seen.seat(), seen.ball());
      label(words, seen.ball().centre(), plan.view().length(reach) + 4, NAME);
    }
    for (MadeFeature t : half.ofKind(MadeFeature.Kind.TOOL_POINT)) {
      label(List.of("tool point"), t.at(), 9, REMARK);
    }
    for (MadeFeature p : pulls()) {
      label(List.of(TextWidth.shortened(p.name(), REMARK, LONGEST_NAME)), p.at(), 8, REMARK);
    }
    if (common > 0) {
      Vec3 first = half.view().turnedOver(design.supports().get(0).ball().centre());
      double at = Elementary.atan2(first.y(), first.x()) + Math.PI / 3;
      label(
          List.of("\u00d8" + figures.length(2 * common), "circle of ball centres"),
          Vec3.atAzimuth(at).times(common),
          3,
          REMARK);
    }
  }

  private void label(List<String> words, Vec3 at, double clearance, TextStyle style) {
    // running dimensions leave to the left and downward: words stand best above, and outward
    double outward = at.x() < 0 ? 0.75 * Math.PI : 0.25 * Math.PI;
    placer
        .place(words, style, sheet(at), clearance, outward)
        .ifPresent(placed -> plan.addAll(DxfLayer.NOTES, placed.marks()));
  }
}
