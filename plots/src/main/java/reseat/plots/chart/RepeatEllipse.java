package reseat.plots.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.plots.NumberText;
import reseat.plots.Picture;
import reseat.plots.PictureKind;
import reseat.plots.scene.Key;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Scene;
import reseat.plots.scene.Tone;

/** Where the tool point comes to lie over many mounts, in one plane, with its 95 % ellipse. */
public final class RepeatEllipse {

  private static final double WIDTH = 600;
  private static final double HEIGHT = 470;
  private static final LineStyle ELLIPSE = LineStyle.solid(Tone.INK, 1.6);

  /**
   * The plane.
   *
   * @param first name of the machine axis to the right
   * @param second name of the machine axis upward
   * @param firstLimit half-width wanted along the first, m; infinite for none
   * @param secondLimit half-width wanted along the second, m; infinite for none
   * @param units unit system of axes and words
   */
  public record Plane(
      String first, String second, double firstLimit, double secondLimit, PictureUnits units) {

    /** A plane in metric units. */
    public Plane(String first, String second, double firstLimit, double secondLimit) {
      this(first, second, firstLimit, secondLimit, PictureUnits.METRIC);
    }

    private AxisQuantity across() {
      return units.of(AxisQuantity.micrometres(first));
    }

    private AxisQuantity up() {
      return units.of(AxisQuantity.micrometres(second));
    }
  }

  private RepeatEllipse() {}

  /**
   * Draws the cloud.
   *
   * @param name short name of the picture, for instance {@code remount-xz}
   * @param what what is repeated, for instance {@code mounts of one holder}
   * @param plane axes and limits
   * @param first displacements along the first axis, m
   * @param second displacements along the second axis, m; as many
   * @return the picture
   * @throws IllegalArgumentException if there are fewer than three points or the arrays differ
   */
  public static Picture draw(
      String name, String what, Plane plane, double[] first, double[] second) {
    if (first.length < 3 || first.length != second.length) {
      throw new IllegalArgumentException(
          "a cloud needs at least three points with two coordinates each, found "
              + first.length
              + " and "
              + second.length);
    }
    AxisQuantity across = plane.across();
    AxisQuantity up = plane.up();
    double[] xs = scaled(first, across);
    double[] ys = scaled(second, up);
    CloudEllipse e = CloudEllipse.of(xs, ys);
    double[][] outline = e.outline(CloudEllipse.HOLDS_95);
    double limitX = across.of(plane.firstLimit());
    double limitY = up.of(plane.secondLimit());
    AxisRange.Gatherer xRange = new AxisRange.Gatherer().add(outline[0]).add(xs);
    AxisRange.Gatherer yRange = new AxisRange.Gatherer().add(outline[1]).add(ys);
    boolean limits = limitShown(xRange, e.meanX, limitX) || limitShown(yRange, e.meanY, limitY);
    PlotPanel panel =
        new PlotPanel(
                WIDTH, HEIGHT, across.label(), xRange.range(0.05), up.label(), yRange.range(0.05))
            .equalScale();
    panel.markerSize(3);
    double[][] kept = Thinning.of(xs, ys, panel.x(), panel.y());
    panel.points(kept[0], kept[1], Tone.BLUE, Marker.CIRCLE);
    panel.vertical(e.meanX - limitX, LineStyle.LIMIT).vertical(e.meanX + limitX, LineStyle.LIMIT);
    panel
        .horizontal(e.meanY - limitY, LineStyle.LIMIT)
        .horizontal(e.meanY + limitY, LineStyle.LIMIT);
    panel.line(outline[0], outline[1], ELLIPSE);
    Scene drawn = panel.scene();
    List<Key.Entry> key = new ArrayList<>();
    String shown =
        kept[0].length < xs.length
            ? xs.length + " " + what + ", points that hide each other left out"
            : xs.length + " " + what;
    key.add(Marker.CIRCLE.entry(3.6, Tone.BLUE, shown));
    key.add(Key.Entry.line(ELLIPSE, "ellipse that holds 95 % if the scatter is normal"));
    if (limits) {
      key.add(Key.Entry.line(LineStyle.LIMIT, limitWords(plane, across, up)));
    }
    Scene keySheet = Key.of(key, WIDTH - 12, 2);
    Scene.Builder scene = new Scene.Builder().place(drawn, 0, 0);
    scene.place(keySheet, 6, drawn.height() + 6);
    return Picture.of(
        PictureKind.REPEAT_ELLIPSE,
        name,
        "Tool point over " + what + ", " + plane.first() + "\u2013" + plane.second() + " plane",
        caption(plane, e, xs, ys, limitX, limitY),
        altText(plane, xs.length, what, e),
        scene.build(WIDTH, drawn.height() + 6 + keySheet.height()));
  }

  /** The target counts from the mean, which is what the offset table holds. */
  private static boolean limitShown(AxisRange.Gatherer range, double mean, double limit) {
    if (!Double.isFinite(limit)
        || !range.near(mean + limit, 2.5)
        || !range.near(mean - limit, 2.5)) {
      return false;
    }
    range.add(mean + limit).add(mean - limit);
    return true;
  }

  private static double[] scaled(double[] si, AxisQuantity quantity) {
    double[] scaled = new double[si.length];
    for (int i = 0; i < si.length; i++) {
      scaled[i] = quantity.of(si[i]);
    }
    return scaled;
  }

  private static String limitWords(Plane plane, AxisQuantity across, AxisQuantity up) {
    List<String> words = new ArrayList<>();
    limitOf(plane.firstLimit(), across).ifPresent(words::add);
    limitOf(plane.secondLimit(), up).ifPresent(words::add);
    return "target about the mean: " + String.join(", ", words);
  }

  private static Optional<String> limitOf(double limit, AxisQuantity quantity) {
    return Double.isFinite(limit)
        ? Optional.of(quantity.name() + " \u00b1" + quantity.text(limit, 3))
        : Optional.empty();
  }

  private static String caption(
      Plane plane, CloudEllipse e, double[] xs, double[] ys, double limitX, double limitY) {
    String ellipse =
        "The ellipse is "
            + NumberText.significant(2 * CloudEllipse.HOLDS_95 * e.major, 2)
            + " "
            + plane.across().unit()
            + " long and "
            + NumberText.significant(2 * CloudEllipse.HOLDS_95 * e.minor, 2)
            + " "
            + plane.across().unit()
            + " wide in the "
            + plane.first()
            + "\u2013"
            + plane.second()
            + " plane";
    if (Double.isInfinite(limitX) && Double.isInfinite(limitY)) {
      return ellipse + ".";
    }
    int within = 0;
    for (int i = 0; i < xs.length; i++) {
      if (Math.abs(xs[i] - e.meanX) <= limitX && Math.abs(ys[i] - e.meanY) <= limitY) {
        within++;
      }
    }
    return ellipse
        + "; "
        + (within == xs.length ? "all" : within + " of " + xs.length)
        + " points keep the target about their mean.";
  }

  private static String altText(Plane plane, int n, String what, CloudEllipse e) {
    return "Cloud of the tool point over "
        + n
        + " "
        + what
        + ". Standard deviation along "
        + plane.first()
        + " "
        + NumberText.significant(e.sdX, 2)
        + " "
        + plane.across().unit()
        + ", along "
        + plane.second()
        + " "
        + NumberText.significant(e.sdY, 2)
        + " "
        + plane.up().unit()
        + ", correlation "
        + NumberText.decimals(e.correlation, 2)
        + ".";
  }
}
