package reseat.plots.drawing;

import java.util.ArrayList;
import java.util.List;
import reseat.elementary.Elementary;
import reseat.plots.scene.Dash;
import reseat.plots.scene.Fill;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Point;
import reseat.plots.scene.Tone;
import reseat.seat.Ball;
import reseat.seat.ConeSeat;
import reseat.seat.CylinderPair;
import reseat.seat.FlatSeat;
import reseat.seat.GothicGroove;
import reseat.seat.GrooveExtent;
import reseat.seat.Seat;
import reseat.seat.SeatFrame;
import reseat.seat.TrihedralSeat;
import reseat.seat.VeeGroove;
import reseat.space.Vec3;

/**
 * What is seen of a seat from above.
 *
 * <p>Sizes that the design does not state are drawn a little larger than the ball needs, with their
 * ends left open or dashed.
 */
final class PlanSeat implements Seat.Visitor<List<Mark>> {

  private static final LineStyle EDGE = LineStyle.solid(Tone.INK, 1.1);
  private static final LineStyle UNSTATED = new LineStyle(Tone.MUTED, 0.9, Dash.DASHED);
  private static final Fill METAL = new Fill(Tone.FAINT, 0.25);

  private final SheetView view;
  private final Ball ball;

  PlanSeat(SheetView view, Ball ball) {
    this.view = view;
    this.ball = ball;
  }

  /** How far a seat reaches from the ball's centre, m, for the size of the drawing. */
  static double reach(Seat seat, Ball ball) {
    double r = ball.radius();
    return seat.accept(
        new Seat.Visitor<Double>() {
          @Override
          public Double veeGroove(VeeGroove s) {
            return groove(s.extent());
          }

          @Override
          public Double gothicGroove(GothicGroove s) {
            return groove(s.extent());
          }

          private double groove(GrooveExtent e) {
            return Math.max(1.5 * r, Double.isFinite(e.length()) ? 0.6 * e.length() : 0);
          }

          @Override
          public Double cylinderPair(CylinderPair s) {
            return Math.max(
                1.5 * r,
                Math.max(
                    Double.isFinite(s.length()) ? 0.6 * s.length() : 0,
                    s.spacing() / 2 + Math.max(s.leftRadius(), s.rightRadius())));
          }

          @Override
          public Double trihedralSeat(TrihedralSeat s) {
            return Math.max(1.5 * r, Double.isFinite(s.mouthDiameter()) ? s.mouthDiameter() : 0);
          }

          @Override
          public Double coneSeat(ConeSeat s) {
            return Math.max(
                1.5 * r, Double.isFinite(s.mouthDiameter()) ? s.mouthDiameter() / 2 : 0);
          }

          @Override
          public Double flatSeat(FlatSeat s) {
            return Math.max(1.5 * r, Double.isFinite(s.padDiameter()) ? s.padDiameter() / 2 : 0);
          }
        });
  }

  private Point sheet(Vec3 p) {
    return view.of(p.x(), p.y());
  }

  @Override
  public List<Mark> veeGroove(VeeGroove seat) {
    return groove(seat.frame(), seat.extent(), true);
  }

  @Override
  public List<Mark> gothicGroove(GothicGroove seat) {
    return groove(seat.frame(), seat.extent(), false);
  }

  private List<Mark> groove(SeatFrame frame, GrooveExtent extent, boolean sharpRootSeen) {
    double halfLength =
        Double.isFinite(extent.length()) ? extent.length() / 2 : 1.4 * ball.radius();
    double halfWidth =
        Double.isFinite(extent.mouthWidth()) ? extent.mouthWidth() / 2 : 0.95 * ball.radius();
    boolean stated = Double.isFinite(extent.length()) && Double.isFinite(extent.mouthWidth());
    List<Mark> marks = new ArrayList<>();
    marks.add(strip(frame, -halfWidth, halfWidth, halfLength, stated ? EDGE : UNSTATED));
    if (extent.rootWidth() > 0) {
      double root = extent.rootWidth() / 2;
      marks.add(along(frame, -root, halfLength));
      marks.add(along(frame, root, halfLength));
    } else if (sharpRootSeen) {
      marks.add(along(frame, 0, halfLength));
    }
    return marks;
  }

  private Mark strip(SeatFrame f, double from, double to, double halfLength, LineStyle line) {
    double c = f.along(ball.centre());
    return Mark.Path.polygon(
        List.of(
            sheet(f.point(c - halfLength, from, 0)),
            sheet(f.point(c + halfLength, from, 0)),
            sheet(f.point(c + halfLength, to, 0)),
            sheet(f.point(c - halfLength, to, 0))),
        line,
        METAL);
  }

  private Mark along(SeatFrame f, double left, double halfLength) {
    double c = f.along(ball.centre());
    return Mark.Path.line(
        sheet(f.point(c - halfLength, left, 0)),
        sheet(f.point(c + halfLength, left, 0)),
        LineStyle.solid(Tone.INK, 0.7));
  }

  @Override
  public List<Mark> cylinderPair(CylinderPair seat) {
    boolean stated = Double.isFinite(seat.length());
    double half = stated ? seat.length() / 2 : 1.4 * ball.radius();
    LineStyle line = stated ? EDGE : UNSTATED;
    double s = seat.spacing() / 2;
    return List.of(
        strip(seat.frame(), s - seat.leftRadius(), s + seat.leftRadius(), half, line),
        strip(seat.frame(), -s - seat.rightRadius(), -s + seat.rightRadius(), half, line));
  }

  @Override
  public List<Mark> trihedralSeat(TrihedralSeat seat) {
    boolean stated = Double.isFinite(seat.mouthDiameter());
    double corner = stated ? seat.mouthDiameter() : 2.2 * ball.radius();
    SeatFrame f = seat.frame();
    List<Point> corners = new ArrayList<>();
    List<Mark> marks = new ArrayList<>();
    for (int k = 0; k < 3; k++) {
      double turn = 2 * Math.PI * k / 3;
      corners.add(sheet(f.point(corner * Elementary.cos(turn), corner * Elementary.sin(turn), 0)));
    }
    marks.add(Mark.Path.polygon(corners, stated ? EDGE : UNSTATED, METAL));
    for (Point c : corners) {
      marks.add(Mark.Path.line(sheet(f.origin()), c, LineStyle.solid(Tone.INK, 0.7)));
    }
    return marks;
  }

  @Override
  public List<Mark> coneSeat(ConeSeat seat) {
    boolean stated = Double.isFinite(seat.mouthDiameter());
    double mouth = stated ? seat.mouthDiameter() / 2 : 1.05 * ball.radius();
    Point middle = sheet(seat.frame().origin());
    List<Mark> marks = new ArrayList<>();
    marks.add(Mark.Oval.circle(middle, view.length(mouth), stated ? EDGE : UNSTATED, METAL));
    if (seat.rootDiameter() > 0) {
      marks.add(
          Mark.Oval.circle(
              middle,
              view.length(seat.rootDiameter() / 2),
              LineStyle.solid(Tone.INK, 0.7),
              Fill.NONE));
    }
    return marks;
  }

  @Override
  public List<Mark> flatSeat(FlatSeat seat) {
    boolean stated = Double.isFinite(seat.padDiameter());
    double radius = stated ? seat.padDiameter() / 2 : 1.3 * ball.radius();
    return List.of(
        Mark.Oval.circle(
            sheet(seat.frame().origin()), view.length(radius), stated ? EDGE : UNSTATED, METAL));
  }
}
