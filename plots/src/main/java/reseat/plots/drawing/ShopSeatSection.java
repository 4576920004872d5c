package reseat.plots.drawing;

import java.util.List;
import java.util.Optional;
import reseat.design.Support;
import reseat.elementary.Elementary;
import reseat.making.MadeDimension;
import reseat.plots.dxf.DxfLayer;
import reseat.plots.scene.Anchor;
import reseat.plots.scene.Box;
import reseat.plots.scene.Dash;
import reseat.plots.scene.Fill;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Point;
import reseat.plots.scene.Tone;
import reseat.seat.CylinderPair;
import reseat.seat.Seat;
import reseat.seat.VeeGroove;

/** A section through a seat, with the ball that rests in it for reference. */
final class ShopSeatSection {

  private static final double ROOM_FOR_ANGLE = 70;
  private static final LineStyle RESTING = new LineStyle(Tone.MUTED, 0.8, Dash.DOUBLE_CHAIN);

  private final ShopSection section;

  private ShopSeatSection(ShopSection section) {
    this.section = section;
  }

  /** Draws the section; the parameters are those of {@link ShopSection#start}. */
  static ShopView of(
      String heading, Support support, List<MadeDimension> sizes, ShopFigures figures, Box area) {
    ShopSection section = ShopSection.start(heading, seatExtent(support), sizes, figures, area);
    new ShopSeatSection(section).seat(support);
    return section.drawn();
  }

  private static SheetView.Extent seatExtent(Support support) {
    SeatProfile.Cut cut = SeatProfile.of(support.seat(), support.ball());
    Point c = SeatProfile.inCut(support.seat(), support.ball().centre());
    SheetView.Extent e = new SheetView.Extent();
    e.include(c.x(), c.y(), support.ball().radius());
    cut.bodies().forEach(b -> b.forEach(p -> e.include(p.x(), p.y(), 0)));
    return e;
  }

  private void seat(Support support) {
    Seat seat = support.seat();
    SeatProfile.Cut cut = SeatProfile.of(seat, support.ball());
    boolean falling = false;
    for (List<Point> body : cut.bodies()) {
      section.body(body, falling);
      falling = !falling;
    }
    SheetView view = section.view();
    Point c = SeatProfile.inCut(seat, support.ball().centre());
    Point centre = view.of(c.x(), c.y());
    double r = view.length(support.ball().radius());
    section.add(DxfLayer.REFERENCE, Mark.Oval.circle(centre, r, RESTING, Fill.NONE));
    section.add(DxfLayer.CENTRELINES, Sign.centreCross(centre, r + 5));
    double face = section.size(MadeDimension.Kind.DEPTH).map(MadeDimension::value).orElse(0.0);
    for (MadeDimension.Kind kind :
        List.of(
            MadeDimension.Kind.BALL_OVER_FACE,
            MadeDimension.Kind.BALL_OVER_AXES,
            MadeDimension.Kind.BALL_OVER_FLAT)) {
      section
          .size(kind)
          .ifPresent(
              d -> {
                Point foot = new Point(section.room().left(), view.of(0, c.y() - d.value()).y());
                section.addAll(
                    DxfLayer.DIMENSIONS,
                    ShopDimension.upright(
                        foot, centre.moved(-2, 0), section.room().left() - 14, section.lines(d)));
              });
    }
    Optional<MadeDimension> floor = section.size(MadeDimension.Kind.FLOOR_DEPTH);
    Optional<MadeDimension> depth =
        floor.isPresent() ? floor : section.size(MadeDimension.Kind.DEPTH);
    if (depth.isPresent()) {
      Point top = new Point(section.room().right(), view.of(0, face).y());
      Point bottom = view.of(0, face - depth.get().value());
      section.addAll(
          DxfLayer.DIMENSIONS,
          ShopDimension.upright(
              top, bottom, section.room().right() + 14, section.lines(depth.get())));
    }
    section
        .size(MadeDimension.Kind.POCKET_DEPTH)
        .ifPresent(
            d -> {
              Point axis = view.of(((CylinderPair) seat).spacing() / 2, 0);
              Point bottom = new Point(section.room().right(), view.of(0, -d.value()).y());
              section.addAll(
                  DxfLayer.DIMENSIONS,
                  ShopDimension.upright(
                      axis, bottom, section.room().right() + 14, section.lines(d)));
            });
    widths(cut, seat);
    if (seat instanceof VeeGroove vee) {
      flankAngle(vee, face);
    }
  }

  private void widths(SeatProfile.Cut cut, Seat seat) {
    SheetView view = section.view();
    double y = section.room().bottom() + 10;
    if (cut.mouth().size() == 2) {
      Point a = cut.mouth().get(0);
      Point b = cut.mouth().get(1);
      String words = section.figures().length(b.x() - a.x());
      section.addAll(
          DxfLayer.DIMENSIONS,
          ShopDimension.level(view.of(a.x(), a.y()), view.of(b.x(), b.y()), y, words));
    }
    section
        .size(MadeDimension.Kind.SPACING)
        .ifPresent(
            d -> {
              double half = d.value() / 2;
              section.addAll(
                  DxfLayer.DIMENSIONS,
                  ShopDimension.level(
                      view.of(-half, 0),
                      view.of(half, 0),
                      y,
                      section.figures().length(d.value(), d.tolerance())));
              for (int s = -1; s <= 1; s += 2) {
                section.add(DxfLayer.CENTRELINES, Sign.centreCross(view.of(s * half, 0), 9));
              }
            });
    if (seat instanceof CylinderPair pins) {
      Point at = view.of(pins.spacing() / 2, 0).toward(view.length(pins.rightRadius()), 1.2);
      section.sizes().stream()
          .filter(d -> d.kind() == MadeDimension.Kind.DIAMETER && d.part().equals("right"))
          .forEach(d -> section.diameter(at, 1.2, d));
    }
  }

  /** The angle between the face and the left flank, drawn in the groove from its edge. */
  private void flankAngle(VeeGroove vee, double face) {
    SheetView view = section.view();
    if (view.length(2 * face / Elementary.tan(vee.leftAngle())) < ROOM_FOR_ANGLE) {
      return;
    }
    Point edge = view.of(-face / Elementary.tan(vee.leftAngle()), face);
    double radius = Math.max(14, view.length(0.35 * face / Elementary.tan(vee.leftAngle())));
    LineStyle thin = LineStyle.THIN;
    section.add(DxfLayer.DIMENSIONS, Mark.Path.line(edge, edge.toward(radius + 5, 0), thin));
    section.add(
        DxfLayer.DIMENSIONS, new Mark.Arc(edge, radius, -vee.leftAngle(), vee.leftAngle(), thin));
    Point middle = edge.toward(radius + 4, -vee.leftAngle() / 2);
    section.add(
        DxfLayer.DIMENSIONS,
        new Mark.Text(
            ShopFigures.degrees(vee.leftAngle()),
            middle.moved(0, 3),
            Anchor.START,
            ShopDimension.FIGURES,
            0,
            true));
  }
}
