package reseat.seat;

import reseat.elementary.Elementary;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import reseat.space.Vec3;
import reseat.units.FilledText;
import reseat.units.PrintedNumber;

/**
 * A cone: the ball touches it along a ring.
 *
 * <p>The frame's origin is the apex. A ring takes three components of force, as three contacts do,
 * and is told as three: each flank here is the plane that touches the cone in the middle of a third
 * of the ring and stands for that third. For a ball that moves by v off its rest on the axis the
 * gap at an azimuth of the ring changes by n.v with n the normal there, for cone and tangent plane
 * alike, so what the three planes tell is exact to first order in v over the radius of the ring.
 * What a ring does between the middles of its thirds is in {@code reseat.equilibrium.RingLoad}.
 *
 * <p>The frame's axis only says where the thirds lie; turning it about the opening direction
 * changes the seat's description, not the seat.
 *
 * @param frame axes; origin at the apex, m
 * @param angle angle between flank and coupling plane, rad; the included angle is pi - 2 angle
 * @param mouthDiameter diameter of the mouth, m; infinite if not stated
 * @param rootDiameter diameter of the relief at the root, m; zero for a sharp root
 */
public record ConeSeat(SeatFrame frame, double angle, double mouthDiameter, double rootDiameter)
    implements Seat {

  /** Names of the thirds of the ring, after their azimuth from the frame's axis. */
  public static final List<String> THIRDS =
      List.of("ring at 0 deg", "ring at 120 deg", "ring at 240 deg");

  private static final double LEAST_DEG = 3;
  private static final double MOST_DEG = 85;

  /** Refuses an angle on which no ball rests in a ring and a root wider than the mouth. */
  public ConeSeat {
    Objects.requireNonNull(frame, "frame of a cone seat must be given, found null");
    double degrees = Elementary.toDegrees(angle);
    if (!(degrees >= LEAST_DEG && degrees <= MOST_DEG)) {
      throw new IllegalArgumentException(
          FilledText.of(
              "flank angle of a cone must be between %.0f and %.0f deg, found %.4g deg (included"
                  + " angle %.4g deg)",
              LEAST_DEG, MOST_DEG, degrees, 180 - 2 * degrees));
    }
    if (!(mouthDiameter > 0) || !(rootDiameter >= 0) || rootDiameter >= mouthDiameter) {
      throw new IllegalArgumentException(
          "cone: the root relief must be narrower than the mouth, found "
              + PrintedNumber.shortest(rootDiameter)
              + " m and "
              + PrintedNumber.shortest(mouthDiameter)
              + " m");
    }
  }

  /**
   * Returns the cone in which a given ball rests with its centre at the frame's origin.
   *
   * @param atBallCentre axes with the origin at the wanted ball centre, m
   * @param ballRadius radius of that ball, m
   * @param angle angle between flank and coupling plane, rad
   * @param mouthDiameter diameter of the mouth, m; infinite if not stated
   * @param rootDiameter diameter of the relief, m; zero for a sharp root
   * @return the seat
   */
  public static ConeSeat forBall(
      SeatFrame atBallCentre,
      double ballRadius,
      double angle,
      double mouthDiameter,
      double rootDiameter) {
    Vec3 apex = atBallCentre.point(0, 0, -ballRadius / Elementary.cos(angle));
    return new ConeSeat(atBallCentre.at(apex), angle, mouthDiameter, rootDiameter);
  }

  @Override
  public int contacts() {
    return 3;
  }

  @Override
  public List<Flank> flanks() {
    return List.of(third(0), third(1), third(2));
  }

  private Flank third(int number) {
    double turn = number * 2 * Math.PI / 3;
    Vec3 push =
        frame.axis().times(Elementary.cos(turn)).plus(frame.left().times(Elementary.sin(turn)));
    Vec3 normal = push.times(Elementary.sin(angle)).plus(frame.up().times(Elementary.cos(angle)));
    return new PlaneFlank(THIRDS.get(number), frame.origin(), normal, frame.up().cross(push));
  }

  /**
   * Returns the seat with its thirds elsewhere on the ring.
   *
   * @param turn how far they are turned about the opening direction, rad
   * @return the same cone
   */
  public ConeSeat withThirdsTurned(double turn) {
    Vec3 axis =
        frame.axis().times(Elementary.cos(turn)).plus(frame.left().times(Elementary.sin(turn)));
    return new ConeSeat(
        new SeatFrame(frame.origin(), axis, frame.up()), angle, mouthDiameter, rootDiameter);
  }

  /**
   * {@inheritDoc}
   *
   * <p>All of the ring is as far from an edge as the middles of the thirds are, but for a ball off
   * the axis, whose ring leans: there the distance is taken at the middles.
   */
  @Override
  public List<SeatClearance> clearances(Ball ball) {
    List<SeatClearance> found = new ArrayList<>();
    for (Flank flank : flanks()) {
      Vec3 contact = flank.contactPoint(ball.centre(), ball.radius()).minus(frame.origin());
      double fromAxis = contact.rejectedFrom(flank.generator()).norm() * Elementary.cos(angle);
      if (Double.isFinite(mouthDiameter)) {
        found.add(
            new SeatClearance(
                SeatClearance.Feature.MOUTH_EDGE,
                flank.name(),
                (mouthDiameter / 2 - fromAxis) / Elementary.cos(angle)));
      }
      if (rootDiameter > 0) {
        found.add(
            new SeatClearance(
                SeatClearance.Feature.ROOT_EDGE,
                flank.name(),
                (fromAxis - rootDiameter / 2) / Elementary.cos(angle)));
      }
    }
    if (rootDiameter > 0) {
      Vec3 floor = frame.point(0, 0, rootDiameter / 2 * Elementary.tan(angle));
      found.add(new SeatClearance(SeatClearance.Feature.FLOOR, "", undersideAbove(ball, floor)));
    }
    return List.copyOf(found);
  }

  @Override
  public boolean isRing() {
    return true;
  }

  @Override
  public Seat withFrame(SeatFrame newFrame) {
    return new ConeSeat(newFrame, angle, mouthDiameter, rootDiameter);
  }

  @Override
  public <T> T accept(Visitor<T> visitor) {
    return visitor.coneSeat(this);
  }
}
