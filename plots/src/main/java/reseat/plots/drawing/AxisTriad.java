package reseat.plots.drawing;

import java.util.ArrayList;
import java.util.List;
import reseat.design.MachineAxes;
import reseat.design.MachineAxis;
import reseat.elementary.Elementary;
import reseat.plots.scene.Anchor;
import reseat.plots.scene.Fill;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Point;
import reseat.plots.scene.TextStyle;
import reseat.plots.scene.TextWidth;
import reseat.plots.scene.Tone;
import reseat.space.Vec3;

/** The machine's axes as they lie on the sheet. */
final class AxisTriad {

  private static final double LENGTH = 26;
  private static final double SEEN_END_ON = 0.2;
  private static final TextStyle STYLE = TextStyle.SMALL;

  private AxisTriad() {}

  /**
   * Draws the axes with their names, in a space of their own.
   *
   * @param axes the axes
   * @param toRight unit vector that points to the right on the sheet
   * @param upward unit vector that points up on the sheet
   * @param left left edge of the space
   * @param top top edge of the space
   * @return the marks; their least box begins at the given corner
   */
  static List<Mark> of(MachineAxes axes, Vec3 toRight, Vec3 upward, double left, double top) {
    Vec3 toViewer = toRight.cross(upward);
    Point origin = new Point(0, 0);
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      MachineAxis axis = axes.axis(i);
      double x = axis.direction().dot(toRight);
      double y = axis.direction().dot(upward);
      double seen = Elementary.hypot(x, y);
      String name = TextWidth.shortened(axis.name(), STYLE, 120);
      if (seen < SEEN_END_ON) {
        double side = axis.direction().dot(toViewer);
        marks.addAll(Sign.acrossSheet(origin, 5, Tone.INK, side));
        double away = freeDirection(axes, toRight, upward);
        marks.add(word(name, origin.toward(9, away), away));
      } else {
        double angle = Elementary.atan2(y, x);
        Point from = origin.toward(5 * seen, angle);
        Point tip = origin.toward(LENGTH * seen, angle);
        marks.addAll(Sign.arrow(from, tip, Tone.INK, 1.2));
        marks.add(word(name, tip.toward(4, angle), angle));
      }
    }
    marks.add(Mark.Oval.circle(origin, 1.2, LineStyle.NONE, Fill.full(Tone.INK)));
    double dx = left - marks.stream().mapToDouble(m -> m.box().left()).min().orElse(0);
    double dy = top - marks.stream().mapToDouble(m -> m.box().top()).min().orElse(0);
    return marks.stream().map(m -> m.moved(dx, dy)).toList();
  }

  /** The direction in which no axis is drawn. */
  private static double freeDirection(MachineAxes axes, Vec3 toRight, Vec3 upward) {
    double x = 0;
    double y = 0;
    for (int i = 0; i < 3; i++) {
      x -= axes.axis(i).direction().dot(toRight);
      y -= axes.axis(i).direction().dot(upward);
    }
    return Elementary.atan2(y, x);
  }

  private static Mark word(String name, Point at, double angle) {
    double c = Elementary.cos(angle);
    Anchor anchor = c > 0.4 ? Anchor.START : c < -0.4 ? Anchor.END : Anchor.MIDDLE;
    double down = STYLE.size() * TextWidth.CAPITAL * (0.5 - 0.5 * Elementary.sin(angle));
    return Mark.Text.level(name, at.moved(0, down), anchor, STYLE);
  }
}
