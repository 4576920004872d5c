package reseat.plots.drawing;

import java.util.ArrayList;
import java.util.List;
import reseat.design.CouplingDesign;
import reseat.design.LoadCase;
import reseat.design.MachineAxes;
import reseat.plots.NumberText;
import reseat.space.Vec3;

/** Loads in words, in machine axes. */
final class CaseWords {

  private static final double NEGLIGIBLE = 5e-3;

  private CaseWords() {}

  /** For instance {@code finish: X -6 N, Z -4 N at the tool point}. */
  static String of(CouplingDesign design, LoadCase loadCase, DrawingUnits units) {
    String force = components(
            design.axes(), loadCase.load().force().times(units.forceIn(1)), units.forceUnit());
    String moment = components(
            design.axes(), loadCase.load().moment().times(units.momentIn(1)), units.momentUnit());
    String load =
        moment.isEmpty()
            ? force
            : force.isEmpty() ? "moment " + moment : force + ", moment " + moment;
    return loadCase.name()
        + ": "
        + (load.isEmpty() ? "no load" : load)
        + " at "
        + place(design, loadCase.load().at(), units);
  }

  /** Components that are worth telling, or nothing. */
  static String components(MachineAxes axes, Vec3 v, String unit) {
    Vec3 told = axes.of(v);
    List<String> parts = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      if (Math.abs(told.component(i)) > NEGLIGIBLE * v.norm()) {
        parts.add(axes.axis(i).name() + " " + NumberText.with(told.component(i), 3, unit));
      }
    }
    return String.join(", ", parts);
  }

  private static String place(CouplingDesign design, Vec3 at, DrawingUnits units) {
    if (at.distanceTo(design.toolPoint()) < 1e-9) {
      return "the tool point";
    }
    if (at.distanceTo(design.holder().centreOfMass()) < 1e-9 && design.holder().mass() > 0) {
      return "the centre of mass";
    }
    return "("
        + units.number(at.x(), 4)
        + ", "
        + units.number(at.y(), 4)
        + ", "
        + units.number(at.z(), 4)
        + ") "
        + units.lengthUnit();
  }
}
