package reseat.plots;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import reseat.numerics.RandomStream;
import reseat.plots.chart.AxisQuantity;
import reseat.plots.chart.BallSizeCurves;
import reseat.plots.chart.BudgetBars;
import reseat.plots.chart.ComplianceShares;
import reseat.plots.chart.ContourMap;
import reseat.plots.chart.ControlChart;
import reseat.plots.chart.CurveRow;
import reseat.plots.chart.FrequencyList;
import reseat.plots.chart.HistogramChart;
import reseat.plots.chart.ParetoChart;
import reseat.plots.chart.PreloadCurves;
import reseat.plots.chart.RepeatEllipse;
import reseat.plots.chart.ResponseCurve;
import reseat.plots.chart.SensitivityRanking;
import reseat.plots.chart.SeriesChart;
import reseat.plots.chart.SweepCurves;

/** Charts of invented numbers that follow the laws of the real ones. */
final class ChartExamples {

  private static final double NONE = Double.POSITIVE_INFINITY;

  private ChartExamples() {}

  /** Charts that are marks alone. */
  static List<Picture> ofMarks() {
    return List.of(
        preload(),
        ballSize(),
        compliance(),
        budget(),
        sensitivity(),
        frequencies(),
        response(),
        repeat(),
        series(),
        control(),
        RemountChartExamples.life(),
        RemountChartExamples.cloud(),
        contours(),
        sweep());
  }

  /** Charts that hold a bitmap of the charting library. */
  static List<Picture> withBitmaps() {
    return List.of(histogram(), pareto());
  }

  private static Picture preload() {
    List<CurveRow> rows = new ArrayList<>();
    for (int i = 0; i <= 40; i++) {
      double f = 100 + 35 * i;
      double third = Math.cbrt(f / 600);
      rows.add(
          new CurveRow(
              f, 2.07e9 * third, 27e6 * third, 7.3e-6 * third * third, 0.11e-6 * third * third));
    }
    return PreloadCurves.draw(
        rows, new PreloadCurves.Band(420, 980, 600), new CurveRow.Limits(2.5e9, 20e6, 0.15e-6));
  }

  private static Picture ballSize() {
    List<CurveRow> rows = new ArrayList<>();
    for (double inches : new double[] {0.25, 0.3125, 0.375, 0.4375, 0.5, 0.5625, 0.625, 0.75, 1}) {
      double ratio = inches / 0.5;
      rows.add(
          new CurveRow(
              inches * 0.0254,
              2.07e9 * Math.pow(ratio, -2 / 3.0),
              27e6 * Math.cbrt(ratio),
              7.3e-6 / Math.cbrt(ratio),
              NONE));
    }
    return BallSizeCurves.draw(rows, 0.0127, new CurveRow.Limits(2.5e9, NONE, NONE));
  }

  private static Picture compliance() {
    List<ComplianceShares.Direction> directions = new ArrayList<>();
    String[] axes = {"X", "Z", "height"};
    for (int a = 0; a < 3; a++) {
      List<ComplianceShares.Part> parts = new ArrayList<>();
      for (int i = 0; i < 6; i++) {
        parts.add(
            new ComplianceShares.Part(
                (i < 2 ? "front" : i < 4 ? "rear left" : "rear right")
                    + (i % 2 == 0 ? " left" : " right"),
                (1 + (i + a) % 6) / 30.0));
      }
      parts.add(new ComplianceShares.Part("mounting of ball front", 0.3));
      directions.add(new ComplianceShares.Direction(axes[a], 30e6 + 11e6 * a, parts));
    }
    return ComplianceShares.draw(directions);
  }

  private static Picture budget() {
    List<BudgetBars.Line> lines =
        List.of(
            new BudgetBars.Line("friction at the contacts", 0.061e-6),
            new BudgetBars.Line("preload scatter \u00b12 %", 0.055e-6),
            new BudgetBars.Line("temperature of the holder against the post, \u00b10.5 K", 0.21e-6),
            new BudgetBars.Line("setting of the tool-offset table", 0.12e-6),
            new BudgetBars.Line("dirt", 0));
    return BudgetBars.draw(
        List.of(
            new BudgetBars.Axis("X", lines, 0.52e-6, 0.5e-6),
            new BudgetBars.Axis("height", lines.subList(0, 2), 0.17e-6, NONE)));
  }

  private static Picture sensitivity() {
    List<SensitivityRanking.Row> rows = new ArrayList<>();
    for (int i = 0; i < 18; i++) {
      double size = 12.5e-6 * Math.pow(0.75, i) * (i % 3 == 1 ? -1 : 1);
      rows.add(
          new SensitivityRanking.Row("height of ball " + (char) ('a' + i), "10 \u00b5m", size));
    }
    return SensitivityRanking.draw("sensitivity-height", "height", rows);
  }

  private static Picture frequencies() {
    return FrequencyList.draw(
        List.of(
            new FrequencyList.Mode(812, 640),
            new FrequencyList.Mode(905, 713),
            new FrequencyList.Mode(1340, 1228)));
  }

  private static Picture response() {
    List<Double> inputs = new ArrayList<>();
    List<Double> up = new ArrayList<>();
    List<Double> aside = new ArrayList<>();
    for (int i = 0; i <= 30; i++) {
      double angle = Math.toRadians(20 + 1.5 * i);
      inputs.add(angle);
      up.add(i == 30 ? NONE : 54e6 * Math.pow(Math.cos(angle), 2));
      aside.add(54e6 * Math.pow(Math.sin(angle), 2));
    }
    return ResponseCurve.draw(
        new AxisQuantity("flank angle", "deg", Math.toRadians(1)),
        inputs,
        AxisQuantity.STIFFNESS,
        List.of(
            new ResponseCurve.Curve("in height", up), new ResponseCurve.Curve("along X", aside)),
        new ResponseCurve.Marked(20e6, NONE, Math.toRadians(45)),
        false);
  }

  private static Picture repeat() {
    RandomStream random = RandomStream.of(7, 0);
    double[] x = new double[4000];
    double[] z = new double[4000];
    for (int i = 0; i < x.length; i++) {
      double a = random.normal();
      double b = random.normal();
      x[i] = 0.08e-6 * a + 0.02e-6;
      z[i] = 0.05e-6 * a + 0.06e-6 * b;
    }
    return RepeatEllipse.draw(
        "remount-x-z",
        "mounts of one holder",
        new RepeatEllipse.Plane("X", "Z", 0.25e-6, 0.25e-6),
        x,
        z);
  }

  private static Picture series() {
    RandomStream random = RandomStream.of(8, 0);
    List<Double> x = new ArrayList<>();
    List<Double> h = new ArrayList<>();
    for (int i = 0; i < 50; i++) {
      x.add(12.34e-3 + 1e-6 * Math.exp(-i / 6.0) + 0.1e-6 * random.normal());
      h.add(0.2e-6 * random.normal() + 4e-9 * i);
    }
    return SeriesChart.draw(
        List.of(
            new SeriesChart.Column(
                new AxisQuantity("X", "mm", 1e-3), x, NONE, NONE, 14, 12.34001e-3, 12.34e-3),
            new SeriesChart.Column(
                AxisQuantity.micrometres("height"), h, -0.5e-6, 0.5e-6, 0, NONE, NONE)),
        "limit");
  }

  private static Picture histogram() {
    RandomStream random = RandomStream.of(9, 0);
    double[] v = new double[3000];
    for (int i = 0; i < v.length; i++) {
      v[i] = 0.2e-6 * random.normal() + 0.05e-6;
    }
    return HistogramChart.draw(
        "interchange-x",
        AxisQuantity.micrometres("tool point along X"),
        v,
        new HistogramChart.Marked(-0.34e-6, 0.44e-6, "95 % of all holders"));
  }

  private static Picture control() {
    RandomStream random = RandomStream.of(10, 0);
    List<Double> v = new ArrayList<>();
    for (int i = 0; i < 30; i++) {
      v.add(0.1e-6 * random.normal() + (i == 22 ? 0.45e-6 : 0));
    }
    return ControlChart.draw(
        "control-chart",
        AxisQuantity.micrometres("check master along X"),
        v,
        new ControlChart.Control(0, -0.3e-6, 0.3e-6),
        new ControlChart.Life(0, List.of()));
  }

  private static Picture pareto() {
    RandomStream random = RandomStream.of(11, 0);
    double[] a = new double[2500];
    double[] b = new double[2500];
    for (int i = 0; i < a.length; i++) {
      double t = random.uniform();
      double worse = 1 + Math.abs(random.normal());
      a[i] = (0.05 + t) * worse * 0.3e-6;
      b[i] = (0.9 + 0.6 / (0.3 + t)) * worse * 1e9;
    }
    List<ParetoChart.Best> best = new ArrayList<>();
    for (int i = 0; i <= 8; i++) {
      double t = (i * 5 % 9) / 8.0;
      best.add(
          new ParetoChart.Best(
              "design " + (i + 1), (0.05 + t) * 0.3e-6, (0.9 + 0.6 / (0.3 + t)) * 1e9));
    }
    return ParetoChart.draw(
        AxisQuantity.SCATTER,
        AxisQuantity.PRESSURE,
        a,
        b,
        best,
        new ParetoChart.Limits(1e-6, 5e9),
        false);
  }

  private static Picture contours() {
    double[] x = new double[25];
    double[] y = new double[21];
    double[][] v = new double[25][21];
    for (int i = 0; i < x.length; i++) {
      x[i] = 0.006 + 0.0008 * i;
      for (int j = 0; j < y.length; j++) {
        y[j] = 100 + 60 * j;
        v[i][j] =
            i < 2 && j > 15
                ? Double.NaN
                : 2.07e9 * Math.cbrt(y[j] / 600) * Math.pow(x[i] / 0.0127, -2 / 3.0);
      }
    }
    double[][] limits = new double[25][21];
    boolean[][] failing = new boolean[25][21];
    for (int i = 0; i < x.length; i++) {
      for (int j = 0; j < y.length; j++) {
        limits[i][j] = 2.5e9 + 1e10 * x[i];
        failing[i][j] = j < 3 || !(v[i][j] < 1.2 * limits[i][j]);
      }
    }
    return ContourMap.draw(
        AxisQuantity.BALL_DIAMETER,
        x,
        AxisQuantity.PRELOAD,
        y,
        AxisQuantity.PRESSURE,
        v,
        limits,
        failing,
        new ContourMap.Marked(NONE, true, 0.0127, 600));
  }

  /** One limit that goes with the input, one that does not, values that are missing at an end. */
  private static Picture sweep() {
    List<Double> angles = new ArrayList<>();
    List<Double> pressure = new ArrayList<>();
    List<Double> limit = new ArrayList<>();
    List<Double> factor = new ArrayList<>();
    for (int deg = 20; deg <= 70; deg += 5) {
      angles.add(Math.toRadians(deg));
      pressure.add(deg > 65 ? NONE : 1.9e9 / Math.cbrt(Math.cos(Math.toRadians(deg))));
      limit.add(deg > 65 ? NONE : 2.3e9 + 2e6 * deg);
      factor.add(deg > 65 ? NONE : 5 * Math.sin(Math.toRadians(deg)));
    }
    return SweepCurves.draw(
        new AxisQuantity("layout.groove.flank_angle", "°", Math.toRadians(1)),
        angles,
        List.of(
            new SweepCurves.Curve(AxisQuantity.PRESSURE, pressure, limit, true),
            new SweepCurves.Curve(
                new AxisQuantity("lift-off", "", 1),
                factor,
                Collections.nCopies(angles.size(), 2.0),
                false)),
        new SweepCurves.Marked(Math.toRadians(25), Math.toRadians(60), Math.toRadians(45)),
        true);
  }
}
