package reseat.plots.chart;

import java.util.ArrayList;
import java.util.List;
import reseat.plots.Picture;
import reseat.plots.PictureKind;

/** Any outputs over any one input of a design file, with the limits that bind. */
public final class SweepCurves {

  /**
   * One output.
   *
   * @param quantity what is shown
   * @param values SI, one per value of the input; infinite where there is none
   * @param limits SI, one per value of the input; infinite where there is none
   * @param limitIsUpper whether values must stay below the limit
   */
  public record Curve(
      AxisQuantity quantity, List<Double> values, List<Double> limits, boolean limitIsUpper) {

    /** Copies the lists. */
    public Curve {
      values = List.copyOf(values);
      limits = List.copyOf(limits);
    }

    /**
     * Says whether there is anything to draw.
     *
     * @return true if any value is a finite number
     */
    public boolean hasValues() {
      return values.stream().anyMatch(Double::isFinite);
    }
  }

  /**
   * What is marked along the input.
   *
   * @param from start of the band in which all checks hold, SI; infinite if there is none
   * @param to its end, SI
   * @param chosen the design's own value, SI; infinite for none
   */
  public record Marked(double from, double to, double chosen) {}

  private SweepCurves() {}

  /**
   * Draws the curves.
   *
   * @param input what varies
   * @param values its values, SI, ascending, at least two
   * @param curves at least one with values
   * @param marked band and design
   * @param points whether each value is marked, as for sizes in stock
   * @return the picture {@code sweep}
   */
  public static Picture draw(
      AxisQuantity input, List<Double> values, List<Curve> curves, Marked marked, boolean points) {
    List<CurvePanels.Panel> panels = new ArrayList<>();
    for (Curve c : curves) {
      panels.add(new CurvePanels.Panel(c.quantity(), c.values(), c.limits(), c.limitIsUpper()));
    }
    return CurvePanels.draw(
        PictureKind.SWEEP_CURVES,
        "sweep",
        "Sweep over " + input.name(),
        Double.isFinite(marked.from())
            ? "Every check holds in the shaded band."
            : "No band is shaded: at no two neighbouring values do all checks hold.",
        new CurvePanels.Input(input, values, marked.from(), marked.to(), marked.chosen()),
        panels,
        points);
  }
}
