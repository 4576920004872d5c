package reseat.making;

import reseat.design.CouplingDesign;
import reseat.design.Support;
import reseat.design.Tolerances;
import reseat.elementary.Elementary;
import reseat.seat.ConeSeat;
import reseat.seat.CylinderPair;
import reseat.seat.FlatSeat;
import reseat.seat.GothicGroove;
import reseat.seat.Seat;
import reseat.seat.TrihedralSeat;
import reseat.seat.VeeGroove;

/**
 * How far sideways a ball may be off when it is set down and still land on a flank, from where it
 * slides home.
 *
 * <p>Off by e, a ball of radius R rides on one flank at angle a and touches it e + R sin a from the
 * middle; at half the mouth's width it rides on the edge. On pins it is caught until it stands over
 * the top of one. Friction is not looked at here: that the slide starts at all is another check.
 */
public final class CatchRange {

  private CatchRange() {}

  /**
   * Finds the range of one support.
   *
   * @param support ball and seat
   * @return distance off the middle, across the seat, m; infinite for a flat and for plane flanks
   *     or a cone whose mouth is not stated; not above zero if the ball rides on the edge even at
   *     home
   */
  public static double of(Support support) {
    return support.seat().accept(new Kinds(support.ball().radius()));
  }

  /**
   * Finds the range of a coupling.
   *
   * @param design the coupling
   * @return the least of its supports', m; infinite if no seat limits it
   */
  public static double of(CouplingDesign design) {
    double least = Double.POSITIVE_INFINITY;
    for (Support s : design.supports()) {
      least = Math.min(least, of(s));
    }
    return least;
  }

  /**
   * Finds how far the holder must be lifted before it may move sideways.
   *
   * @param design the coupling
   * @return the greatest depth of a ball's underside below the face of its seat, or the tops of its
   *     pins, m; zero if no seat says where its face is
   */
  public static double liftOut(CouplingDesign design) {
    double most = 0;
    for (Support s : design.supports()) {
      double diameter = s.ball().diameter();
      GaugeReading ball = GaugeReading.of(s, Tolerances.NONE, diameter).orElse(null);
      if (ball != null
          && (ball.datum() == GaugeReading.Datum.FACE
              || ball.datum() == GaugeReading.Datum.PIN_TOPS)) {
        most = Math.max(most, diameter - ball.overDatum());
      }
    }
    return most;
  }

  private record Kinds(double radius) implements Seat.Visitor<Double> {

    @Override
    public Double veeGroove(VeeGroove s) {
      double steeper = Math.max(s.leftAngle(), s.rightAngle());
      return s.extent().mouthWidth() / 2 - radius * Elementary.sin(steeper);
    }

    @Override
    public Double gothicGroove(GothicGroove s) {
      double flank = Math.min(s.leftRadius(), s.rightRadius());
      double edge = s.axisOffset() + s.extent().mouthWidth() / 2;
      return Math.min(1, edge / flank) * (flank - radius) - s.axisOffset();
    }

    @Override
    public Double cylinderPair(CylinderPair s) {
      return s.spacing() / 2;
    }

    @Override
    public Double trihedralSeat(TrihedralSeat s) {
      double steepest = Math.max(s.firstAngle(), Math.max(s.secondAngle(), s.thirdAngle()));
      return s.mouthDiameter() / 2 - radius * Elementary.sin(steepest);
    }

    @Override
    public Double coneSeat(ConeSeat s) {
      return s.mouthDiameter() / 2 - radius * Elementary.sin(s.angle());
    }

    @Override
    public Double flatSeat(FlatSeat s) {
      return Double.POSITIVE_INFINITY;
    }
  }
}
