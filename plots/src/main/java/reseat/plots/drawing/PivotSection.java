package reseat.plots.drawing;

import java.util.ArrayList;
import java.util.List;
import reseat.ballmount.ConePivot;
import reseat.ballmount.PivotSeat;
import reseat.ballmount.SocketPivot;
import reseat.ballmount.TrihedralPivot;
import reseat.contact.BallContact;
import reseat.contact.RingThird;
import reseat.design.BallMounting;
import reseat.design.PivotDuty;
import reseat.design.Support;
import reseat.elementary.Elementary;
import reseat.equilibrium.ContactLines;
import reseat.equilibrium.Equilibrium;
import reseat.material.Material;
import reseat.plots.Picture;
import reseat.seat.Ball;
import reseat.seat.ConeSeat;
import reseat.seat.Flank;
import reseat.seat.FlatSeat;
import reseat.seat.Seat;
import reseat.seat.SeatFrame;
import reseat.seat.TrihedralSeat;
import reseat.space.Vec3;

/** A section through a ball and the seat that it turns in, pressed along the seat's axis. */
public final class PivotSection {

  private static final String WHOSE = "that the ball turns in";

  private PivotSection() {}

  /**
   * Draws the section.
   *
   * @param name name of the picture
   * @param duty the seat
   * @param ball material of the ball
   * @param force force into the seat, zero or more, N
   * @param units units of its words
   * @return the picture
   */
  public static Picture draw(String name, PivotDuty duty, Material ball, double force, DrawingUnits units) {
    PivotSeat pivot = duty.seat();
    if (pivot instanceof SocketPivot socket) {
      return SocketSection.draw(name, WHOSE, socket, force, units);
    }
    double r = pivot.ballRadius();
    SeatFrame frame = SeatFrame.level(Vec3.ZERO, 0);
    double open = Double.POSITIVE_INFINITY;
    Seat seat;
    double each;
    BallContact contact;
    if (pivot instanceof ConePivot cone) {
      seat = ConeSeat.forBall(frame, r, cone.flankAngle(), open, 0);
      each = force / (3 * Elementary.cos(cone.flankAngle()));
      contact = RingThird.of(r, cone.flankAngle(), cone.elasticity());
    } else {
      seat =
          pivot instanceof TrihedralPivot t
              ? TrihedralSeat.forBall(frame, r, t.flankAngle(), open, 0)
              : FlatSeat.forBall(frame, r, open);
      each = pivot.contactForce(force);
      contact = pivot.point().orElseThrow();
    }
    Support support =
        new Support(
            "seat",
            new Ball(Vec3.ZERO, r),
            ball,
            seat,
            duty.material(),
            open,
            BallMounting.rigid());
    return SeatSection.draw(name, WHOSE, support, contacts(support, contact, each), units);
  }

  private static List<Equilibrium.Contact> contacts(
      Support support, BallContact contact, double force) {
    List<Equilibrium.Contact> all = new ArrayList<>();
    for (Flank f : support.seat().flanks()) {
      Vec3 normal = f.normal(Vec3.ZERO);
      ContactLines.Line line =
          new ContactLines.Line(
              support.name(),
              f.name(),
              0,
              Vec3.ZERO,
              normal,
              normal,
              f.contactPoint(Vec3.ZERO, support.ball().radius()),
              f.longAxis(Vec3.ZERO),
              support.seat().isRing());
      all.add(
          new Equilibrium.Contact(
              line,
              contact,
              contact.tangentialRatioLong(),
              contact.tangentialRatioShort(),
              force,
              contact.approach(force),
              force,
              force));
    }
    return all;
  }
}
