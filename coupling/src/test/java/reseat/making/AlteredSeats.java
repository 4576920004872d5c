package reseat.making;

import reseat.seat.ConeSeat;
import reseat.seat.CylinderPair;
import reseat.seat.GothicGroove;
import reseat.seat.GrooveExtent;
import reseat.seat.Seat;
import reseat.seat.TrihedralSeat;
import reseat.seat.VeeGroove;

/** Seats drawn with one dimension other than they were. */
final class AlteredSeats {

  private AlteredSeats() {}

  /** The same seat with another mouth. */
  static Seat mouthed(Seat seat, double width) {
    if (seat instanceof VeeGroove s) {
      return new VeeGroove(s.frame(), s.leftAngle(), s.rightAngle(), wide(s.extent(), width));
    }
    if (seat instanceof GothicGroove s) {
      GrooveExtent e = wide(s.extent(), width);
      return new GothicGroove(
          s.frame(), s.leftRadius(), s.rightRadius(), s.axisOffset(), s.axisHeight(), e);
    }
    if (seat instanceof TrihedralSeat s) {
      return new TrihedralSeat(
          s.frame(), s.firstAngle(), s.secondAngle(), s.thirdAngle(), width, s.rootDiameter());
    }
    ConeSeat s = (ConeSeat) seat;
    return new ConeSeat(s.frame(), s.angle(), width, s.rootDiameter());
  }

  private static GrooveExtent wide(GrooveExtent e, double width) {
    return new GrooveExtent(width, e.length(), e.rootWidth(), e.rootDepth());
  }

  static double mouthOf(Seat seat) {
    if (seat instanceof ConeSeat s) {
      return s.mouthDiameter();
    }
    if (seat instanceof VeeGroove s) {
      return s.extent().mouthWidth();
    }
    return seat instanceof GothicGroove s
        ? s.extent().mouthWidth()
        : ((TrihedralSeat) seat).mouthDiameter();
  }

  static Seat steeper(Seat seat, double angle) {
    if (seat instanceof VeeGroove s) {
      return new VeeGroove(s.frame(), s.leftAngle() + angle, s.rightAngle() + angle, s.extent());
    }
    if (seat instanceof TrihedralSeat s) {
      return new TrihedralSeat(
          s.frame(),
          s.firstAngle() + angle,
          s.secondAngle() + angle,
          s.thirdAngle() + angle,
          s.mouthDiameter(),
          s.rootDiameter());
    }
    ConeSeat s = (ConeSeat) seat;
    return new ConeSeat(s.frame(), s.angle() + angle, s.mouthDiameter(), s.rootDiameter());
  }

  /** The same pins, farther apart and thicker. */
  static Seat pins(CylinderPair s, double apart, double thicker) {
    return new CylinderPair(
        s.frame(),
        s.leftRadius() + thicker / 2,
        s.rightRadius() + thicker / 2,
        s.spacing() + apart,
        s.length(),
        s.floorDepth());
  }
}
