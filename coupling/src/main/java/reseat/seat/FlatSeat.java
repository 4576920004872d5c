package reseat.seat;

import java.util.List;
import java.util.Objects;
import reseat.space.Vec3;
import reseat.units.PrintedNumber;

/**
 * A flat on which a ball rests at one point.
 *
 * @param frame axes; origin in the plane of the flat, at the middle of the pad, m
 * @param padDiameter diameter of the flat pad, m; infinite if not stated
 */
public record FlatSeat(SeatFrame frame, double padDiameter) implements Seat {

  /** Name of its one flank. */
  public static final String FLANK = "flat";

  /** Refuses a pad without size. */
  public FlatSeat {
    Objects.requireNonNull(frame, "frame of a flat seat must be given, found null");
    if (!(padDiameter > 0)) {
      throw new IllegalArgumentException(
          "flat pad diameter must be positive, found "
              + PrintedNumber.shortest(padDiameter)
              + " m");
    }
  }

  /**
   * Returns the flat on which a given ball rests with its centre at the frame's origin.
   *
   * @param atBallCentre axes with the origin at the wanted ball centre, m
   * @param ballRadius radius of that ball, m
   * @param padDiameter diameter of the pad, m; infinite if not stated
   * @return the flat
   */
  public static FlatSeat forBall(SeatFrame atBallCentre, double ballRadius, double padDiameter) {
    return new FlatSeat(atBallCentre.at(atBallCentre.point(0, 0, -ballRadius)), padDiameter);
  }

  @Override
  public int contacts() {
    return 1;
  }

  @Override
  public List<Flank> flanks() {
    return List.of(new PlaneFlank(FLANK, frame.origin(), frame.up(), frame.axis()));
  }

  @Override
  public List<SeatClearance> clearances(Ball ball) {
    if (Double.isInfinite(padDiameter)) {
      return List.of();
    }
    Vec3 contact = flanks().get(0).contactPoint(ball.centre(), ball.radius());
    double fromMiddle = contact.minus(frame.origin()).rejectedFrom(frame.up()).norm();
    return List.of(
        new SeatClearance(SeatClearance.Feature.END, FLANK, padDiameter / 2 - fromMiddle));
  }

  @Override
  public Seat withFrame(SeatFrame newFrame) {
    return new FlatSeat(newFrame, padDiameter);
  }

  @Override
  public <T> T accept(Visitor<T> visitor) {
    return visitor.flatSeat(this);
  }
}
