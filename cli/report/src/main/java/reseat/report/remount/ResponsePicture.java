package reseat.report.remount;

import java.util.ArrayList;
import java.util.List;
import reseat.design.CouplingDesign;
import reseat.elementary.Elementary;
import reseat.plots.Picture;
import reseat.plots.chart.AxisQuantity;
import reseat.plots.chart.PictureUnits;
import reseat.plots.chart.ResponseCurve;
import reseat.report.form.PictureSet;
import reseat.report.form.UnitSystem;
import reseat.space.Vec3;
import reseat.study.ResponseStudy;

/** The picture of how the tool point answers to one dimension. */
public final class ResponsePicture {

  private ResponsePicture() {}

  /**
   * Draws the curves along the three machine axes.
   *
   * @param study the answers
   * @param design the coupling
   * @param system unit system of its axes
   * @return the picture {@code response}
   */
  public static Picture of(ResponseStudy study, CouplingDesign design, UnitSystem system) {
    PictureUnits units = PictureSet.chart(system);
    List<ResponseCurve.Curve> curves = new ArrayList<>();
    for (int axis = 0; axis < 3; axis++) {
      List<Double> along = new ArrayList<>();
      for (Vec3 shift : study.shifts()) {
        along.add(shift.component(axis));
      }
      curves.add(new ResponseCurve.Curve(design.axes().axis(axis).name(), along));
    }
    double none = Double.POSITIVE_INFINITY;
    return ResponseCurve.draw(
        units.of(input(study)),
        study.deviations(),
        units.of(AxisQuantity.micrometres("shift of the tool point")),
        curves,
        new ResponseCurve.Marked(none, none, 0),
        false);
  }

  private static AxisQuantity input(ResponseStudy study) {
    String name = "deviation of " + study.name();
    return switch (study.measure()) {
      case ANGLE -> new AxisQuantity(name, "arcmin", Elementary.toRadians(1) / 60);
      case TEMPERATURE -> new AxisQuantity(name, "K", 1);
      default -> AxisQuantity.micrometres(name);
    };
  }
}
