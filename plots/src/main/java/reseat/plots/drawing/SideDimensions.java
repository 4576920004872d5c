package reseat.plots.drawing;

import java.util.ArrayList;
import java.util.List;
import reseat.design.CouplingDesign;
import reseat.design.LoadCase;
import reseat.design.Support;
import reseat.plots.scene.LabelPlacer;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Point;
import reseat.space.Vec3;

/** The dimensions of a side view. */
final class SideDimensions {

  private SideDimensions() {}

  /** Radius of the largest ball, m. */
  static double largestRadius(CouplingDesign design) {
    return design.supports().stream().mapToDouble(s -> s.ball().radius()).max().orElseThrow();
  }

  /** A length in millimetres. */
  /** Overhang below, height of the tool point on the right, of the centre of mass on the left. */
  static List<Mark> of(
      CouplingDesign design, Projection p, LabelPlacer placer, DrawingUnits units) {
    List<Mark> marks = new ArrayList<>();
    Vec3 tool = design.toolPoint();
    double out = tool.dot(p.right());
    Point tip = p.of(tool);
    double lowest = p.view().of(0, -2.2 * largestRadius(design)).y();
    if (p.view().length(out) > 4) {
      Point centre = new Point(p.view().of(0, 0).x(), lowest + 6);
      Point under = new Point(tip.x(), lowest + 6);
      add(DimensionLine.of(centre, under, -18, units.dimension(out)), placer, marks);
      marks.add(Mark.Path.line(tip.moved(0, 12), under, LineStyle.THIN));
      marks.add(Mark.Path.line(p.view().of(0, 0), centre, LineStyle.CENTRE));
    }
    if (p.view().length(Math.abs(tool.z())) > 4) {
      double farRight = rightEdge(design, p);
      Point level = new Point(farRight, p.view().of(0, 0).y());
      List<Mark> dimension =
          DimensionLine.of(level, new Point(farRight, tip.y()), -12, units.dimension(tool.z()));
      add(dimension, placer, marks);
      if (farRight > tip.x() + 12) {
        marks.add(Mark.Path.line(tip.moved(12, 0), new Point(farRight, tip.y()), LineStyle.THIN));
      }
    }
    Vec3 mass = design.holder().centreOfMass();
    if (design.holder().mass() > 0 && p.view().length(Math.abs(mass.z())) > 4) {
      Point left = p.view().of(extentLeft(design, p), 0);
      Point at = p.of(mass);
      Point top = new Point(left.x(), at.y());
      add(DimensionLine.of(left, top, 20, units.dimension(mass.z())), placer, marks);
      marks.add(Mark.Path.line(at.moved(-9, 0), top, LineStyle.THIN));
    }
    return marks;
  }

  private static double extentLeft(CouplingDesign design, Projection p) {
    return design.supports().stream()
        .mapToDouble(s -> s.ball().centre().dot(p.right()) - 2.2 * s.ball().radius())
        .min()
        .orElseThrow();
  }

  /** Right of everything that is drawn, where a dimension line stands free. */
  private static double rightEdge(CouplingDesign design, Projection p) {
    double right = p.of(design.toolPoint()).x();
    for (Support s : design.supports()) {
      double edge = s.ball().centre().dot(p.right()) + 2.2 * s.ball().radius();
      right = Math.max(right, p.view().of(edge, 0).x());
    }
    for (LoadCase c : design.cases()) {
      right = Math.max(right, p.of(c.load().at()).x());
    }
    return right + 12;
  }

  private static void add(List<Mark> dimension, LabelPlacer placer, List<Mark> marks) {
    marks.addAll(dimension);
    placer.keepClear(dimension.get(dimension.size() - 1).box().grown(2));
  }
}
