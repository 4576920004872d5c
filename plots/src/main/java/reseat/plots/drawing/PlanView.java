package reseat.plots.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import reseat.design.CouplingDesign;
import reseat.design.Support;
import reseat.elementary.Elementary;
import reseat.equilibrium.PreloadZone;
import reseat.plots.Picture;
import reseat.plots.PictureKind;
import reseat.plots.scene.Box;
import reseat.plots.scene.Key;
import reseat.plots.scene.Scene;
import reseat.space.Vec3;

/**
 * The coupling from above, to scale: balls, seats, triangle, preload and where it may wander,
 * loads, tool point, machine axes.
 */
public final class PlanView {

  private static final double WIDTH = 600;
  private static final double MARGIN = 46;
  private static final double STRIP = 66;

  /**
   * A point worth marking.
   *
   * @param name what it is, for instance {@code centre of stiffness}
   * @param at where, coupling frame, m
   */
  public record Landmark(String name, Vec3 at) {

    /** Refuses a nameless point. */
    public Landmark {
      if (name.isBlank()) {
        throw new IllegalArgumentException("a landmark needs a name");
      }
    }
  }

  private PlanView() {}

  /**
   * Draws the plan.
   *
   * @param design the coupling
   * @param zones where the preload's line, or the resultant of several, may stand before a contact
   *     opens; one zone per preload is drawn too, but is harder to read; or none
   * @param landmarks further points, for instance the centre of stiffness
   * @param units units of its words
   * @return the picture {@code plan}
   */
  public static Picture draw(
      CouplingDesign design,
      List<PreloadZone> zones,
      List<Landmark> landmarks,
      DrawingUnits units) {
    SheetView.Extent extent = extent(design, landmarks);
    double inner = WIDTH - 2 * MARGIN;
    double height = Math.max(300, Math.min(480, inner * extent.height() / extent.width()));
    Box area = new Box(MARGIN, MARGIN, WIDTH - MARGIN, MARGIN + height);
    SheetView view = SheetView.fitting(extent, area);
    PlanMarks marks =
        new PlanMarks(design, view, new Box(4, 4, WIDTH - 4, area.bottom() + MARGIN - 8), units);
    marks.drawAll(zones, landmarks);
    Scene.Builder scene = new Scene.Builder();
    scene.place(marks.sheet(), 0, 0);
    double bottom = marks.sheet().height();
    scene.addAll(AxisTriad.of(design.axes(), Vec3.X, Vec3.Y, 6, bottom + 6));
    scene.addAll(ScaleBar.of(view, WIDTH - 8, bottom + STRIP / 2, 170, units));
    Scene key = Key.of(marks.key(), WIDTH - 12, 2);
    scene.place(key, 6, bottom + STRIP + 8);
    return Picture.of(
        PictureKind.PLAN,
        "plan",
        "Plan of the coupling",
        caption(design),
        altText(design, units),
        scene.build(WIDTH, bottom + STRIP + 8 + key.height()));
  }

  private static SheetView.Extent extent(CouplingDesign design, List<Landmark> landmarks) {
    SheetView.Extent e = new SheetView.Extent();
    double r = design.couplingRadius();
    for (Support s : design.supports()) {
      Vec3 c = s.ball().centre();
      e.include(c.x(), c.y(), PlanSeat.reach(s.seat(), s.ball()));
    }
    List<Vec3> points = new ArrayList<>(List.of(design.toolPoint()));
    design.cases().forEach(c -> points.add(c.load().at()));
    design.preloads().forEach(p -> points.add(PlanMarks.pierce(p)));
    landmarks.forEach(l -> points.add(l.at()));
    if (design.holder().mass() > 0) {
      points.add(design.holder().centreOfMass());
    }
    // A landmark far away must not shrink the coupling to a dot.
    points.removeIf(p -> Elementary.hypot(p.x(), p.y()) > 4 * r + design.toolPoint().norm());
    points.forEach(p -> e.include(p.x(), p.y(), 0.1 * r));
    return e;
  }

  private static String caption(CouplingDesign design) {
    return "Where the balls and seats lie, seen against z, and where preload and loads act on them"
        + (design.title().isBlank() ? "." : ": " + design.title() + ".");
  }

  private static String altText(CouplingDesign design, DrawingUnits units) {
    String balls =
        design.supports().stream()
            .map(
                s ->
                    s.name()
                        + " at ("
                        + units.number(s.ball().centre().x(), 4)
                        + ", "
                        + units.number(s.ball().centre().y(), 4)
                        + ") "
                        + units.lengthUnit()
                        + ", ball "
                        + units.length(s.ball().diameter(), 4))
            .collect(Collectors.joining("; "));
    return "Plan of the coupling to scale. Supports: "
        + balls
        + ". Tool point at ("
        + units.number(design.toolPoint().x(), 4)
        + ", "
        + units.number(design.toolPoint().y(), 4)
        + ") "
        + units.lengthUnit()
        + ". "
        + design.preloads().size()
        + " preloads and "
        + design.cases().size()
        + " load cases are marked.";
  }
}
