package reseat.plots;

import java.util.ArrayList;
import java.util.List;
import reseat.numerics.RandomStream;
import reseat.plots.chart.AxisQuantity;
import reseat.plots.chart.ControlChart;
import reseat.plots.chart.MeasuredCloud;

/** Charts of an invented remount test. */
final class RemountChartExamples {

  private RemountChartExamples() {}

  static Picture life() {
    RandomStream random = RandomStream.of(12, 0);
    List<Double> v = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      v.add(0.1e-6 * random.normal() + (i < 25 ? 0 : 0.02e-6 * (i - 25)));
    }
    return ControlChart.draw(
        "control-x",
        AxisQuantity.micrometres("X"),
        v,
        new ControlChart.Control(0, -0.3e-6, 0.3e-6),
        new ControlChart.Life(25, List.of(33, 38)));
  }

  static Picture cloud() {
    RandomStream random = RandomStream.of(13, 0);
    List<List<Double>> all = new ArrayList<>();
    for (int n : new int[] {30, 2000}) {
      List<Double> x = new ArrayList<>();
      List<Double> z = new ArrayList<>();
      for (int i = 0; i < n; i++) {
        double a = random.normal();
        x.add((n == 30 ? 0.12e-6 : 0.08e-6) * a + (n == 30 ? 3e-6 : 0));
        z.add(0.05e-6 * a + 0.06e-6 * random.normal());
      }
      all.add(x);
      all.add(z);
    }
    return MeasuredCloud.draw(
        "measured-x-z",
        "X",
        "Z",
        new MeasuredCloud.Cloud(all.get(0), all.get(1)),
        new MeasuredCloud.Cloud(all.get(2), all.get(3)));
  }
}
