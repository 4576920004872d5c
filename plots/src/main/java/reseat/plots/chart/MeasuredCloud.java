package reseat.plots.chart;

import java.util.ArrayList;
import java.util.List;
import reseat.plots.NumberText;
import reseat.plots.Picture;
import reseat.plots.PictureKind;
import reseat.plots.scene.Dash;
import reseat.plots.scene.Key;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Scene;
import reseat.plots.scene.Tone;

/**
 * Measured mounts in one plane, drawn over the simulated ones if there are any.
 *
 * <p>The zero of a gauge is arbitrary, so each cloud is drawn about its own mean.
 */
public final class MeasuredCloud {

  private static final double WIDTH = 600;
  private static final double HEIGHT = 470;
  private static final LineStyle MEASURED = LineStyle.solid(Tone.INK, 1.6);
  private static final LineStyle SIMULATED = new LineStyle(Tone.BLUE, 1.6, Dash.DASHED);

  /**
   * Points in the plane, each with both coordinates.
   *
   * @param first coordinates along the first axis, m
   * @param second coordinates along the second axis, m; as many
   */
  public record Cloud(List<Double> first, List<Double> second) {

    /** No points. */
    public static final Cloud NONE = new Cloud(List.of(), List.of());

    /** Copies the coordinates. */
    public Cloud {
      first = List.copyOf(first);
      second = List.copyOf(second);
      if (first.size() != second.size()) {
        throw new IllegalArgumentException(
            "every point needs two coordinates, found " + first.size() + " and " + second.size());
      }
    }

    int size() {
      return first.size();
    }
  }

  private MeasuredCloud() {}

  /**
   * Draws the clouds.
   *
   * @param name short name of the picture
   * @param firstAxis name of the axis to the right
   * @param secondAxis name of the axis upward
   * @param measured at least three mounts
   * @param simulated at least three mounts, or none
   * @return the picture
   * @throws IllegalArgumentException if a cloud has one or two points, or none was measured
   */
  public static Picture draw(
      String name, String firstAxis, String secondAxis, Cloud measured, Cloud simulated) {
    boolean compared = simulated.size() > 0;
    if (measured.size() < 3 || (compared && simulated.size() < 3)) {
      throw new IllegalArgumentException(
          "a cloud needs at least three mounts, found "
              + measured.size()
              + " measured and "
              + simulated.size()
              + " simulated");
    }
    AxisQuantity across = AxisQuantity.micrometres(firstAxis + " less its mean");
    AxisQuantity up = AxisQuantity.micrometres(secondAxis + " less its mean");
    double[][] points = centred(measured, across, up);
    CloudEllipse found = CloudEllipse.of(points[0], points[1]);
    double[][] line = found.outline(CloudEllipse.HOLDS_95);
    AxisRange.Gatherer x = new AxisRange.Gatherer().add(points[0]).add(line[0]);
    AxisRange.Gatherer y = new AxisRange.Gatherer().add(points[1]).add(line[1]);
    double[][] cloud = compared ? centred(simulated, across, up) : new double[2][0];
    CloudEllipse foretold = compared ? CloudEllipse.of(cloud[0], cloud[1]) : null;
    double[][] dashed = new double[2][0];
    if (compared) {
      dashed = foretold.outline(CloudEllipse.HOLDS_95);
      x.add(cloud[0]).add(dashed[0]);
      y.add(cloud[1]).add(dashed[1]);
    }
    PlotPanel panel =
        new PlotPanel(WIDTH, HEIGHT, across.label(), x.range(0.05), up.label(), y.range(0.05))
            .equalScale();
    double[][] thinned = Thinning.of(cloud[0], cloud[1], panel.x(), panel.y());
    double[][] shown = Thinning.of(points[0], points[1], panel.x(), panel.y());
    panel.markerSize(3);
    panel.points(thinned[0], thinned[1], Tone.SKY, Marker.CIRCLE);
    panel.markerSize(measured.size() > 100 ? 3 : 5);
    panel.points(shown[0], shown[1], Tone.VERMILLION, Marker.SQUARE);
    if (compared) {
      panel.line(dashed[0], dashed[1], SIMULATED);
    }
    panel.line(line[0], line[1], MEASURED);
    Scene drawn = panel.scene();
    Scene key = Key.of(key(measured.size(), simulated.size()), WIDTH - 12, 2);
    Scene.Builder scene = new Scene.Builder().place(drawn, 0, 0);
    scene.place(key, 6, drawn.height() + 6);
    String plane = firstAxis + "\u2013" + secondAxis + " plane";
    String deviations = deviations(firstAxis, secondAxis, found, foretold);
    return Picture.of(
        PictureKind.MEASURED_PLANE,
        name,
        (compared ? "Measured mounts over simulated ones, " : "Measured mounts, ") + plane,
        deviations,
        "Cloud of " + measured.size() + " measured mounts, " + plane + ". " + deviations,
        scene.build(WIDTH, drawn.height() + 6 + key.height()));
  }

  private static double[][] centred(Cloud cloud, AxisQuantity across, AxisQuantity up) {
    return new double[][] {centred(cloud.first(), across), centred(cloud.second(), up)};
  }

  private static double[] centred(List<Double> si, AxisQuantity quantity) {
    double origin = si.get(0);
    double mean = 0;
    for (double v : si) {
      mean += (v - origin) / si.size();
    }
    double[] out = new double[si.size()];
    for (int i = 0; i < out.length; i++) {
      out[i] = quantity.of(si.get(i) - origin - mean);
    }
    return out;
  }

  private static List<Key.Entry> key(int measured, int simulated) {
    List<Key.Entry> key = new ArrayList<>();
    key.add(Marker.SQUARE.entry(5, Tone.VERMILLION, measured + " measured mounts"));
    key.add(Key.Entry.line(MEASURED, "holds 95 % of them if they are normal"));
    if (simulated > 0) {
      key.add(Marker.CIRCLE.entry(3.6, Tone.SKY, simulated + " simulated mounts"));
      key.add(Key.Entry.line(SIMULATED, "the same for the simulated ones"));
    }
    return key;
  }

  private static String deviations(
      String first, String second, CloudEllipse measured, CloudEllipse simulated) {
    String head = "Measured s " + pair(first, second, measured);
    return simulated == null
        ? head + "."
        : head + "; simulated s " + pair(first, second, simulated) + ".";
  }

  private static String pair(String first, String second, CloudEllipse e) {
    return NumberText.significant(e.sdX, 2)
        + " \u00b5m along "
        + first
        + ", "
        + NumberText.significant(e.sdY, 2)
        + " \u00b5m along "
        + second;
  }
}
