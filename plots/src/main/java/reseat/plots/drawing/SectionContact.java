package reseat.plots.drawing;

import java.util.ArrayList;
import java.util.List;
import reseat.design.Support;
import reseat.elementary.Elementary;
import reseat.equilibrium.Equilibrium;
import reseat.plots.NumberText;
import reseat.plots.scene.Box;
import reseat.plots.scene.Dash;
import reseat.plots.scene.Fill;
import reseat.plots.scene.LabelPlacer;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Point;
import reseat.plots.scene.TextStyle;
import reseat.plots.scene.Tone;
import reseat.seat.Flank;
import reseat.seat.Seat;
import reseat.seat.SeatClearance;
import reseat.space.Vec3;

/**
 * One contact as a section shows it.
 *
 * @param flank name of the flank
 * @param at contact point in the cut, m
 * @param normal direction out of the seat in the cut; shorter than one if it leaves the plane
 * @param inPlane whether the normal lies in the plane of the cut
 * @param force N; zero or less if open
 * @param pressure greatest pressure, Pa
 * @param halfPatch half the width of the patch in the cut, m
 * @param halfAcross half its width at right angles to the cut, m
 * @param edgeDistance from the contact point to the nearest stated edge of the surface, m; infinite
 *     if none is stated
 * @param edgeName which edge that is; empty if none is stated
 * @param edgeUphill whether that edge lies up the flank
 * @param surfaceRadius radius of the surface in the cut, m: infinite for a plane, negative if
 *     hollow
 */
record SectionContact(
    String flank,
    Point at,
    Point normal,
    boolean inPlane,
    double force,
    double pressure,
    double halfPatch,
    double halfAcross,
    double edgeDistance,
    String edgeName,
    boolean edgeUphill,
    double surfaceRadius) {

  static final LineStyle PATCH = LineStyle.solid(Tone.VERMILLION, 3.2);

  static List<SectionContact> of(Support support, List<Equilibrium.Contact> contacts) {
    if (support.seat().isRing()) {
      return bothSidesOfRing(support, contacts);
    }
    List<SectionContact> drawn = new ArrayList<>();
    Seat seat = support.seat();
    Vec3 centre = support.ball().centre();
    for (int i = 0; i < contacts.size(); i++) {
      Equilibrium.Contact c = contacts.get(i);
      Flank f = seat.flanks().get(i);
      Vec3 n = f.normal(centre);
      Point seen = SeatProfile.directionInCut(seat, n);
      double force = Math.max(0, c.force());
      boolean longAlongAxis =
          Math.abs(f.longAxis(centre).dot(seat.frame().axis())) > 0.7 * f.longAxis(centre).norm();
      double a = c.hertz().semiMajor(force);
      double b = c.hertz().semiMinor(force);
      SeatClearance edge = nearestEdge(support, f.name());
      drawn.add(
          new SectionContact(
              f.name(),
              SeatProfile.inCut(seat, f.contactPoint(centre, support.ball().radius())),
              seen,
              Elementary.hypot(seen.x(), seen.y()) > 0.999,
              c.force(),
              c.peakPressure(),
              longAlongAxis ? b : a,
              longAlongAxis ? a : b,
              edge == null ? Double.POSITIVE_INFINITY : edge.distance(),
              edge == null ? "" : words(edge.feature()),
              edge == null || edge.feature() != SeatClearance.Feature.ROOT_EDGE,
              f.signedRadius()));
    }
    return drawn;
  }

  /**
   * The ring where the cut meets it: in the middle of the first third, and opposite to that,
   * between the two others, whose forces tell that of the place between them.
   */
  private static List<SectionContact> bothSidesOfRing(
      Support support, List<Equilibrium.Contact> thirds) {
    Seat seat = support.seat();
    Vec3 centre = support.ball().centre();
    Vec3 n = seat.flanks().get(0).normal(centre);
    SeatClearance edge = nearestEdge(support, seat.flanks().get(0).name());
    double first = thirds.get(0).force();
    double between = (2 * (thirds.get(1).force() + thirds.get(2).force()) - first) / 3;
    List<SectionContact> drawn = new ArrayList<>();
    for (int side = 0; side < 2; side++) {
      double here = side == 0 ? first : between;
      double force = Math.max(0, here);
      Point touch =
          SeatProfile.inCut(
              seat, seat.flanks().get(0).contactPoint(centre, support.ball().radius()));
      Point seen = SeatProfile.directionInCut(seat, n);
      drawn.add(
          new SectionContact(
              side == 0 ? "ring at 0\u00b0" : "ring at 180\u00b0",
              side == 0 ? touch : new Point(-touch.x(), touch.y()),
              side == 0 ? seen : new Point(-seen.x(), seen.y()),
              true,
              here,
              thirds.get(0).hertz().peakPressure(force),
              thirds.get(0).hertz().semiMinor(force),
              thirds.get(0).hertz().semiMajor(force),
              edge == null ? Double.POSITIVE_INFINITY : edge.distance(),
              edge == null ? "" : words(edge.feature()),
              edge == null || edge.feature() != SeatClearance.Feature.ROOT_EDGE,
              Double.POSITIVE_INFINITY));
    }
    return drawn;
  }

  private static String words(SeatClearance.Feature edge) {
    return edge == SeatClearance.Feature.END ? "edge of the pad" : edge.words();
  }

  private static SeatClearance nearestEdge(Support support, String flank) {
    SeatClearance best = null;
    boolean flat = support.seat().flanks().size() == 1;
    for (SeatClearance c : support.seat().clearances(support.ball())) {
      boolean edge =
          c.feature() == SeatClearance.Feature.MOUTH_EDGE
              || c.feature() == SeatClearance.Feature.ROOT_EDGE
              || (flat && c.feature() == SeatClearance.Feature.END);
      if (edge && c.flank().equals(flank) && (best == null || c.distance() < best.distance())) {
        best = c;
      }
    }
    return best;
  }

  private Point onSheet(SheetView view) {
    return view.of(at.x(), at.y());
  }

  /** Direction of the normal on the sheet, rad. */
  private double direction() {
    return Elementary.atan2(normal.y(), normal.x());
  }

  List<Mark> marks(SheetView view, Point centre, double ballRadius) {
    List<Mark> marks = new ArrayList<>();
    Point p = onSheet(view);
    double d = direction();
    if (!inPlane) {
      marks.add(
          Mark.Oval.circle(p, 3, new LineStyle(Tone.VERMILLION, 1.2, Dash.SOLID), Fill.PAPER));
      return marks;
    }
    marks.add(
        Mark.Path.line(
            p.toward(-0.3 * ballRadius, d), centre, new LineStyle(Tone.MUTED, 0.8, Dash.CHAIN)));
    double half = view.length(halfPatch);
    if (half > 0) {
      marks.add(
          Mark.Path.line(p.toward(half, d + Math.PI / 2), p.toward(-half, d + Math.PI / 2), PATCH));
    }
    if (force > 0) {
      marks.addAll(Sign.arrow(p, p.toward(0.55 * ballRadius, d), Tone.VERMILLION, 1.6));
    }
    double down = Elementary.toDegrees(d) - 90;
    if (Math.abs(down) > 1) {
      double sweep = Elementary.toRadians(-down);
      marks.add(new Mark.Arc(centre, 0.36 * ballRadius, d + Math.PI, sweep, LineStyle.THIN));
    }
    return marks;
  }

  void avoid(LabelPlacer placer, SheetView view, Point centre) {
    Point p = onSheet(view);
    placer.avoid(p, centre);
    placer.keepClear(Box.about(p, 3));
  }

  List<Mark> label(LabelPlacer placer, SheetView view, Point centre, double ballRadius, DrawingUnits units) {
    List<Mark> marks = new ArrayList<>();
    Point p = onSheet(view);
    if (inPlane) {
      double d = direction();
      double lean = Math.abs(Elementary.toDegrees(d) - 90);
      if (lean > 1) {
        Point middle = centre.toward(0.36 * ballRadius, (d + Math.PI + 1.5 * Math.PI) / 2);
        placer
            .place(
                List.of(NumberText.significant(lean, 4) + "\u00b0"),
                TextStyle.SMALL,
                middle,
                3,
                -Math.PI / 2)
            .ifPresent(l -> marks.addAll(l.marks()));
      }
      List<String> words = List.of(flank, force > 0 ? units.force(force) : "open");
      placer
          .place(words, TextStyle.LABEL, p, 5, d + Math.PI)
          .ifPresent(l -> marks.addAll(l.marks()));
    }
    return marks;
  }

  /** The contact in one sentence. */
  String words(DrawingUnits units) {
    if (!(force > 0)) {
      return flank + ": open, it would have to pull";
    }
    String patch =
        flank.startsWith("ring")
            ? "ring " + units.length(2 * halfPatch, 3) + " wide"
            : patchWords(units);
    return flank
        + ": "
        + units.force(force)
        + (flank.startsWith("ring") ? " on a third" : "")
        + ", peak pressure "
        + units.pressure(pressure)
        + ", "
        + patch
        + (edgeName.isEmpty()
            ? ""
            : ", " + edgeName + " " + units.length(edgeDistance, 3) + " away");
  }

  private String patchWords(DrawingUnits units) {
    return Math.abs(halfAcross - halfPatch) < 1e-3 * halfPatch
        ? "patch \u00d8" + units.length(2 * halfPatch, 3)
        : "patch "
            + units.number(2 * halfPatch, 3)
            + " \u00d7 "
            + units.length(2 * halfAcross, 3);
  }
}
