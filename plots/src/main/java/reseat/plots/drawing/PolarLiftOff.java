package reseat.plots.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import reseat.design.CouplingDesign;
import reseat.design.MachineAxes;
import reseat.design.MachineAxis;
import reseat.elementary.Elementary;
import reseat.equilibrium.ContactLines;
import reseat.equilibrium.LiftOff;
import reseat.plots.Picture;
import reseat.plots.PictureKind;
import reseat.plots.scene.Fill;
import reseat.plots.scene.Key;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Point;
import reseat.plots.scene.Scene;
import reseat.plots.scene.Tone;
import reseat.space.Vec3;
import reseat.units.FilledText;
import reseat.units.PrintedNumber;

/**
 * How much force at the tool point opens the first contact, by its direction in each machine plane.
 *
 * <p>Polar maps at one common scale; the outermost ring cuts off what is far beyond the weakest
 * direction.
 */
public final class PolarLiftOff {

  private static final double WIDTH = 600;
  private static final int RAYS = 360;
  private static final double MOST_SHOWN = 5;

  /**
   * One direction.
   *
   * @param angle from the plane's first axis toward its second, rad
   * @param force force that opens the first contact, N; infinite if none ever opens
   * @param contact name of that contact; empty if none ever opens
   */
  public record Ray(double angle, double force, String contact) {

    /** Refuses forces below zero. */
    public Ray {
      if (!(force >= 0) || !Double.isFinite(angle)) {
        throw new IllegalArgumentException(
            "lift-off force must not be negative, found " + PrintedNumber.shortest(force));
      }
    }
  }

  /**
   * All directions in one plane.
   *
   * @param first name of the axis to the right
   * @param second name of the axis upward
   * @param rays directions in order, a full turn
   */
  public record Plane(String first, String second, List<Ray> rays) {

    /** Copies the rays. */
    public Plane {
      rays = List.copyOf(rays);
    }
  }

  private PolarLiftOff() {}

  /**
   * Draws the map of one design in its three machine planes.
   *
   * @param design the coupling
   * @param units units of its words
   * @return the picture {@code lift-off-map}
   * @throws ArithmeticException if the contacts do not constrain the holder
   */
  public static Picture of(CouplingDesign design, DrawingUnits units) {
    MachineAxes axes = design.axes();
    int[][] pairs = {{0, 1}, {0, 2}, {1, 2}};
    List<Plane> planes = new ArrayList<>();
    for (int[] pair : pairs) {
      MachineAxis u = axes.axis(pair[0]);
      MachineAxis v = axes.axis(pair[1]);
      planes.add(new Plane(u.name(), v.name(), rays(design, u.direction(), v.direction())));
    }
    return draw(planes, units);
  }

  private static List<Ray> rays(CouplingDesign design, Vec3 u, Vec3 v) {
    LiftOff liftOff = new LiftOff(ContactLines.nominal(design), design.standingLoad());
    List<Ray> rays = new ArrayList<>();
    for (int i = 0; i < RAYS; i++) {
      double angle = 2 * Math.PI * i / RAYS;
      Vec3 d = u.times(Elementary.cos(angle)).plus(v.times(Elementary.sin(angle)));
      LiftOff.First first = liftOff.forceAlong(design.toolPoint(), d);
      rays.add(new Ray(angle, first.factor(), first.contact()));
    }
    return rays;
  }

  /**
   * Draws maps from forces by direction.
   *
   * @param planes one to four planes
   * @param units units of its words
   * @return the picture {@code lift-off-map}
   */
  public static Picture draw(List<Plane> planes, DrawingUnits units) {
    double outer = outerRing(planes, units);
    double panel = WIDTH / 2 - 4;
    Scene.Builder scene = new Scene.Builder();
    double rowTop = 0;
    double bottom = 0;
    for (int i = 0; i < planes.size(); i++) {
      boolean leftHand = i % 2 == 0;
      rowTop = leftHand ? bottom : rowTop;
      Scene drawn = PolarPanel.of(planes.get(i), outer, panel, units);
      scene.place(drawn, leftHand ? 0 : panel + 8, rowTop);
      bottom = Math.max(bottom, rowTop + drawn.height() + 6);
    }
    boolean roomBeside = planes.size() % 2 == 1;
    Scene key = Key.of(key(outer, units), roomBeside ? panel - 20 : WIDTH - 12, 2);
    double top = roomBeside ? rowTop + 60 : bottom;
    scene.place(key, roomBeside ? panel + 20 : 6, top);
    Optional<Weakest> weakest = weakest(planes);
    return Picture.of(
        PictureKind.LIFT_OFF_MAP,
        "lift-off-map",
        "Force at the tool point that opens the first contact, by direction",
        caption(weakest, units),
        altText(planes, units),
        scene.build(WIDTH, Math.max(bottom, top + key.height())));
  }

  private static List<Key.Entry> key(double outer, DrawingUnits units) {
    List<Key.Entry> entries = new ArrayList<>();
    entries.add(Key.Entry.line(PolarPanel.CURVE, "force that opens the first contact"));
    entries.add(
        new Key.Entry(
            List.of(
                Mark.Oval.circle(
                    new Point(0, 0), 3.5, LineStyle.solid(Tone.INK, 1), Fill.full(Tone.BLUE))),
            "weakest direction in the plane"));
    entries.add(
        Key.Entry.line(
            LineStyle.THIN, "outer ring: " + units.force(outer) + " or more is cut off here"));
    entries.add(
        new Key.Entry(List.of(), "names round the ring: the contact that opens first there"));
    return entries;
  }

  /** A round force that shows the weak directions well. */
  private static double outerRing(List<Plane> planes, DrawingUnits units) {
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (Plane p : planes) {
      for (Ray r : p.rays()) {
        if (Double.isFinite(r.force())) {
          least = r.force() > 0 ? Math.min(least, r.force()) : least;
          most = Math.max(most, r.force());
        }
      }
    }
    if (most == 0) {
      return 1;
    }
    double wanted = units.forceIn(Math.min(1.05 * most, MOST_SHOWN * least));
    double decade = Elementary.pow(10, Math.floor(Elementary.log10(wanted)));
    for (double step : new double[] {1, 1.2, 1.6, 2, 2.4, 3.2, 4, 6, 8}) {
      if (step * decade >= wanted) {
        return step * decade * units.oneForce();
      }
    }
    return 10 * decade * units.oneForce();
  }

  private record Weakest(Plane plane, Ray ray) {}

  private static Optional<Weakest> weakest(List<Plane> planes) {
    Weakest best = null;
    for (Plane p : planes) {
      for (Ray r : p.rays()) {
        if (Double.isFinite(r.force()) && (best == null || r.force() < best.ray().force())) {
          best = new Weakest(p, r);
        }
      }
    }
    return Optional.ofNullable(best);
  }

  private static String caption(Optional<Weakest> weakest, DrawingUnits units) {
    return weakest
        .map(
            w ->
                w.ray().force() == 0
                    ? "Contact " + w.ray().contact() + " is open already without any load."
                    : "The nearer a curve comes to the middle, the weaker the coupling in that"
                        + " direction: least in these planes is "
                        + units.force(w.ray().force())
                        + " in the "
                        + w.plane().first()
                        + "\u2013"
                        + w.plane().second()
                        + " plane, where "
                        + w.ray().contact()
                        + " opens first.")
        .orElse("No force in these planes opens a contact.");
  }

  private static String altText(List<Plane> planes, DrawingUnits units) {
    return "Polar maps of the force at the tool point that opens the first contact. "
        + planes.stream().map(p -> extremes(p, units)).collect(Collectors.joining(" "));
  }

  private static String extremes(Plane p, DrawingUnits units) {
    double least = p.rays().stream().mapToDouble(Ray::force).min().orElse(Double.POSITIVE_INFINITY);
    double most = p.rays().stream().mapToDouble(Ray::force).max().orElse(0);
    return FilledText.of(
        "Plane %s\u2013%s: least %s, most %s.", p.first(), p.second(), forceText(least, units), forceText(most, units));
  }

  private static String forceText(double force, DrawingUnits units) {
    return Double.isInfinite(force) ? "without limit" : units.force(force);
  }
}
