package reseat.seat;

import reseat.elementary.Elementary;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import reseat.space.Vec3;

/**
 * A groove with two plane flanks.
 *
 * <p>The frame's origin lies on the line where the flanks would meet (the apex line), under the
 * middle of the groove. With a flank at angle α to the coupling plane a ball of radius R rests with
 * its centre R/cos α above that line when both flanks are alike.
 *
 * @param frame axes; origin on the apex line, m
 * @param leftAngle angle between the left flank and the coupling plane, rad
 * @param rightAngle the same for the right flank, rad
 * @param extent how far the flanks reach
 */
public record VeeGroove(SeatFrame frame, double leftAngle, double rightAngle, GrooveExtent extent)
    implements Seat {

  /** Refuses flank angles on which no ball can rest. */
  public VeeGroove {
    Objects.requireNonNull(frame, "frame of a vee groove must be given, found null");
    Objects.requireNonNull(extent, "extent of a vee groove must be given, found null");
    FlankAngle.checked(leftAngle);
    FlankAngle.checked(rightAngle);
  }

  /**
   * Returns the groove in which a given ball rests with its centre at the frame's origin.
   *
   * @param atBallCentre axes with the origin at the wanted ball centre, m
   * @param ballRadius radius of that ball, m
   * @param angle angle between each flank and the coupling plane, rad
   * @param extent how far the flanks reach
   * @return the groove
   */
  public static VeeGroove forBall(
      SeatFrame atBallCentre, double ballRadius, double angle, GrooveExtent extent) {
    FlankAngle.checked(angle);
    Vec3 apex = atBallCentre.point(0, 0, -ballRadius / Elementary.cos(angle));
    return new VeeGroove(atBallCentre.at(apex), angle, angle, extent);
  }

  @Override
  public int contacts() {
    return 2;
  }

  @Override
  public List<Flank> flanks() {
    return List.of(flank("left", leftAngle, -1), flank("right", rightAngle, 1));
  }

  private Flank flank(String name, double angle, int push) {
    Vec3 normal =
        frame
            .left()
            .times(push * Elementary.sin(angle))
            .plus(frame.up().times(Elementary.cos(angle)));
    return new PlaneFlank(name, frame.origin(), normal, frame.axis());
  }

  @Override
  public List<SeatClearance> clearances(Ball ball) {
    List<SeatClearance> found = new ArrayList<>();
    for (Flank flank : flanks()) {
      double angle = flank.name().equals("left") ? leftAngle : rightAngle;
      Vec3 contact = flank.contactPoint(ball.centre(), ball.radius());
      double fromApex = Math.abs(frame.toLeft(contact));
      if (Double.isFinite(extent.mouthWidth())) {
        found.add(
            new SeatClearance(
                SeatClearance.Feature.MOUTH_EDGE,
                flank.name(),
                (extent.mouthWidth() / 2 - fromApex) / Elementary.cos(angle)));
      }
      if (extent.rootWidth() > 0) {
        found.add(
            new SeatClearance(
                SeatClearance.Feature.ROOT_EDGE,
                flank.name(),
                (fromApex - extent.rootWidth() / 2) / Elementary.cos(angle)));
      }
      if (Double.isFinite(extent.length())) {
        found.add(
            new SeatClearance(
                SeatClearance.Feature.END,
                flank.name(),
                extent.length() / 2 - Math.abs(frame.along(contact))));
      }
    }
    if (extent.rootWidth() > 0) {
      double flanksEnd = extent.rootWidth() / 2 * Elementary.tan(Math.min(leftAngle, rightAngle));
      Vec3 floor = frame.point(0, 0, flanksEnd - extent.rootDepth());
      found.add(new SeatClearance(SeatClearance.Feature.FLOOR, "", undersideAbove(ball, floor)));
    }
    return List.copyOf(found);
  }

  @Override
  public Seat withFrame(SeatFrame newFrame) {
    return new VeeGroove(newFrame, leftAngle, rightAngle, extent);
  }

  @Override
  public <T> T accept(Visitor<T> visitor) {
    return visitor.veeGroove(this);
  }
}
