package reseat.seat;

import reseat.elementary.Elementary;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import reseat.space.Vec3;
import reseat.units.PrintedNumber;

/**
 * A seat with three plane flanks, a third of a turn apart, that meet in a point.
 *
 * <p>The frame's origin is that point (the apex). The contact normal of flank k has its horizontal
 * part at the frame's axis turned by k thirds of a turn about the opening direction.
 *
 * @param frame axes; origin at the apex, m
 * @param firstAngle angle between the first flank and the coupling plane, rad
 * @param secondAngle the same for the second flank, rad
 * @param thirdAngle the same for the third flank, rad
 * @param mouthDiameter circle inscribed in the mouth, m; infinite if not stated
 * @param rootDiameter circle inscribed in the relief at the root, m; zero for a sharp root
 */
public record TrihedralSeat(
    SeatFrame frame,
    double firstAngle,
    double secondAngle,
    double thirdAngle,
    double mouthDiameter,
    double rootDiameter)
    implements Seat {

  /** Refuses angles on which no ball can rest and a root wider than the mouth. */
  public TrihedralSeat {
    Objects.requireNonNull(frame, "frame of a trihedral seat must be given, found null");
    FlankAngle.checked(firstAngle);
    FlankAngle.checked(secondAngle);
    FlankAngle.checked(thirdAngle);
    if (!(mouthDiameter > 0) || !(rootDiameter >= 0) || rootDiameter >= mouthDiameter) {
      throw new IllegalArgumentException(
          "trihedral seat: the root relief must be narrower than the mouth, found "
              + PrintedNumber.shortest(rootDiameter)
              + " m and "
              + PrintedNumber.shortest(mouthDiameter)
              + " m");
    }
  }

  /**
   * Returns the seat in which a given ball rests with its centre at the frame's origin.
   *
   * @param atBallCentre axes with the origin at the wanted ball centre, m
   * @param ballRadius radius of that ball, m
   * @param angle angle between each flank and the coupling plane, rad
   * @param mouthDiameter circle inscribed in the mouth, m; infinite if not stated
   * @param rootDiameter circle inscribed in the relief, m; zero for a sharp root
   * @return the seat
   */
  public static TrihedralSeat forBall(
      SeatFrame atBallCentre,
      double ballRadius,
      double angle,
      double mouthDiameter,
      double rootDiameter) {
    FlankAngle.checked(angle);
    Vec3 apex = atBallCentre.point(0, 0, -ballRadius / Elementary.cos(angle));
    return new TrihedralSeat(
        atBallCentre.at(apex), angle, angle, angle, mouthDiameter, rootDiameter);
  }

  @Override
  public int contacts() {
    return 3;
  }

  @Override
  public List<Flank> flanks() {
    return List.of(
        flank("first", firstAngle, 0),
        flank("second", secondAngle, 1),
        flank("third", thirdAngle, 2));
  }

  private Flank flank(String name, double angle, int third) {
    double turn = third * 2 * Math.PI / 3;
    Vec3 push =
        frame.axis().times(Elementary.cos(turn)).plus(frame.left().times(Elementary.sin(turn)));
    Vec3 normal = push.times(Elementary.sin(angle)).plus(frame.up().times(Elementary.cos(angle)));
    return new PlaneFlank(name, frame.origin(), normal, frame.up().cross(push));
  }

  @Override
  public List<SeatClearance> clearances(Ball ball) {
    List<SeatClearance> found = new ArrayList<>();
    double[] angles = {firstAngle, secondAngle, thirdAngle};
    List<Flank> flanks = flanks();
    for (int i = 0; i < 3; i++) {
      Flank flank = flanks.get(i);
      Vec3 contact = flank.contactPoint(ball.centre(), ball.radius()).minus(frame.origin());
      double fromApex = contact.rejectedFrom(flank.generator()).norm() * Elementary.cos(angles[i]);
      if (Double.isFinite(mouthDiameter)) {
        found.add(
            new SeatClearance(
                SeatClearance.Feature.MOUTH_EDGE,
                flank.name(),
                (mouthDiameter / 2 - fromApex) / Elementary.cos(angles[i])));
      }
      if (rootDiameter > 0) {
        found.add(
            new SeatClearance(
                SeatClearance.Feature.ROOT_EDGE,
                flank.name(),
                (fromApex - rootDiameter / 2) / Elementary.cos(angles[i])));
      }
    }
    if (rootDiameter > 0) {
      double lowest = Math.min(firstAngle, Math.min(secondAngle, thirdAngle));
      Vec3 floor = frame.point(0, 0, rootDiameter / 2 * Elementary.tan(lowest));
      found.add(new SeatClearance(SeatClearance.Feature.FLOOR, "", undersideAbove(ball, floor)));
    }
    return List.copyOf(found);
  }

  @Override
  public Seat withFrame(SeatFrame newFrame) {
    return new TrihedralSeat(
        newFrame, firstAngle, secondAngle, thirdAngle, mouthDiameter, rootDiameter);
  }

  @Override
  public <T> T accept(Visitor<T> visitor) {
    return visitor.trihedralSeat(this);
  }
}
