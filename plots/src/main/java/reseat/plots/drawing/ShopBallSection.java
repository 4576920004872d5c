package reseat.plots.drawing;

import java.util.List;
import java.util.Optional;
import reseat.design.StudMount;
import reseat.design.Support;
import reseat.making.MadeDimension;
import reseat.plots.dxf.DxfLayer;
import reseat.plots.scene.Anchor;
import reseat.plots.scene.Box;
import reseat.plots.scene.Fill;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Point;
import reseat.plots.scene.Tone;

/** A section along the axis of a ball and what it stands on. */
final class ShopBallSection {

  private final ShopSection section;

  private ShopBallSection(ShopSection section) {
    this.section = section;
  }

  /** Draws the section; the parameters are those of {@link ShopSection#start}. */
  static ShopView of(
      String heading, Support support, List<MadeDimension> sizes, ShopFigures figures, Box area) {
    ShopSection section = ShopSection.start(heading, ballExtent(support), sizes, figures, area);
    new ShopBallSection(section).ball(support);
    return section.drawn();
  }

  private static SheetView.Extent ballExtent(Support support) {
    SheetView.Extent e = new SheetView.Extent();
    double r = support.ball().radius();
    e.include(0, 0, r);
    support
        .mounting()
        .stud()
        .ifPresent(
            m -> {
              StudProfile profile = StudProfile.of(m, r);
              double low = -m.stud().stickOut() - profile.foot();
              double side = bodySide(profile, m);
              e.include(-side, low, 0);
              e.include(side, low, 0);
            });
    return e;
  }

  private static double bodySide(StudProfile profile, StudMount mount) {
    double held = held(profile);
    return Math.max(1.8 * held, held + mount.stud().neckDiameter() / 2);
  }

  private static double held(StudProfile profile) {
    return profile.right().get(profile.right().size() - 2).x();
  }

  private void ball(Support support) {
    SheetView view = section.view();
    double r = support.ball().radius();
    Point centre = view.of(0, 0);
    Fill metal = new Fill(Tone.SKY, 0.12);
    section.add(DxfLayer.BALLS, Mark.Oval.circle(centre, view.length(r), LineStyle.OUTLINE, metal));
    Optional<StudMount> stud = support.mounting().stud();
    stud.ifPresent(m -> stud(m, r));
    double reach = view.length(r) + 5;
    section.add(DxfLayer.CENTRELINES, Sign.centreCross(centre, reach));
    Point rim = centre.toward(view.length(r), 0.7);
    section.diameter(rim, 0.7, section.size(MadeDimension.Kind.DIAMETER).orElseThrow());
    if (stud.isEmpty()) {
      section.add(
          DxfLayer.NOTES,
          Mark.Text.level(
              "how the ball is held is not described",
              new Point(centre.x(), section.room().bottom() + 16),
              Anchor.MIDDLE,
              ShopDimension.FIGURES));
    }
  }

  private void stud(StudMount mount, double ballRadius) {
    SheetView view = section.view();
    StudProfile profile = StudProfile.of(mount, ballRadius);
    double face = -mount.stud().stickOut();
    double foot = face - profile.foot();
    double held = held(profile);
    double side = bodySide(profile, mount);
    for (int s = -1; s <= 1; s += 2) {
      section.body(
          List.of(
              new Point(s * held, face),
              new Point(s * side, face),
              new Point(s * side, foot),
              new Point(s * held, foot)),
          true);
    }
    List<Point> outline = profile.outline().stream().map(p -> view.of(p.x(), p.y())).toList();
    section.add(DxfLayer.OUTLINE, Mark.Path.polygon(outline, LineStyle.NONE, Fill.PAPER));
    section.body(profile.outline(), false);
    mount
        .thread()
        .ifPresent(
            t -> {
              double root = StudProfile.rootRadius(t.limits().thread());
              for (int s = -1; s <= 1; s += 2) {
                Point top = view.of(s * root, face);
                Point bottom = view.of(s * root, foot);
                section.add(DxfLayer.HOLES, Mark.Path.line(top, bottom, LineStyle.THIN));
              }
            });
    section.add(
        DxfLayer.CENTRELINES,
        Mark.Path.line(view.of(0, 0), view.of(0, foot).moved(0, 8), LineStyle.CENTRE));
    section
        .size(MadeDimension.Kind.STICK_OUT)
        .ifPresent(
            d ->
                section.addAll(
                    DxfLayer.DIMENSIONS,
                    ShopDimension.upright(
                        view.of(-side, face),
                        view.of(0, 0).moved(-2, 0),
                        section.room().left() - 14,
                        section.lines(d))));
    section
        .size(MadeDimension.Kind.ENGAGEMENT)
        .ifPresent(
            d ->
                section.addAll(
                    DxfLayer.DIMENSIONS,
                    ShopDimension.upright(
                        view.of(side, face),
                        view.of(side, foot),
                        section.room().right() + 14,
                        section.lines(d))));
  }
}
