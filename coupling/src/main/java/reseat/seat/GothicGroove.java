package reseat.seat;

import reseat.elementary.Elementary;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import reseat.space.Vec3;
import reseat.units.PrintedNumber;

/**
 * A groove with two hollow cylindrical flanks that meet in a pointed arch.
 *
 * <p>The closer fit spreads the load. The frame's origin lies half-way between the two cylinder
 * axes in height zero of the seat; {@code axisOffset} moves each cylinder's axis sideways across
 * the middle and {@code axisHeight} moves both up.
 *
 * @param frame axes; origin at the centre of the ball the groove was designed for, m
 * @param leftRadius radius of the left flank, m; larger than the ball's
 * @param rightRadius radius of the right flank, m; the same as the left but for errors of making
 * @param axisOffset distance of each flank's axis from the middle, on the far side, m
 * @param axisHeight height of the flank axes over the origin, m
 * @param extent how far the flanks reach
 */
public record GothicGroove(
    SeatFrame frame,
    double leftRadius,
    double rightRadius,
    double axisOffset,
    double axisHeight,
    GrooveExtent extent)
    implements Seat {

  /** Refuses arches that do not close. */
  public GothicGroove {
    Objects.requireNonNull(frame, "frame of a gothic groove must be given, found null");
    Objects.requireNonNull(extent, "extent of a gothic groove must be given, found null");
    double flankRadius = Math.min(leftRadius, rightRadius);
    if (!(flankRadius > 0) || !(axisOffset > 0) || !(axisOffset < flankRadius)) {
      throw new IllegalArgumentException(
          "gothic groove: the axis offset must lie between zero and the flank radius, found "
              + PrintedNumber.shortest(axisOffset)
              + " m and "
              + PrintedNumber.shortest(flankRadius)
              + " m");
    }
  }

  /**
   * Returns the groove in which a given ball rests with its centre at the frame's origin.
   *
   * @param atBallCentre axes with the origin at the wanted ball centre, m
   * @param ballRadius radius of that ball, m
   * @param flankRadius radius of the flanks, m; larger than the ball's
   * @param angle angle of the contact normal from the opening direction, rad
   * @param extent how far the flanks reach
   * @return the groove
   */
  public static GothicGroove forBall(
      SeatFrame atBallCentre,
      double ballRadius,
      double flankRadius,
      double angle,
      GrooveExtent extent) {
    FlankAngle.checked(angle);
    if (!(flankRadius > ballRadius)) {
      throw new IllegalArgumentException(
          "gothic groove: flank radius "
              + PrintedNumber.shortest(flankRadius)
              + " m must be larger than the ball radius "
              + PrintedNumber.shortest(ballRadius)
              + " m");
    }
    double play = flankRadius - ballRadius;
    return new GothicGroove(
        atBallCentre,
        flankRadius,
        flankRadius,
        play * Elementary.sin(angle),
        play * Elementary.cos(angle),
        extent);
  }

  @Override
  public int contacts() {
    return 2;
  }

  @Override
  public List<Flank> flanks() {
    return List.of(flank("left", -1, leftRadius), flank("right", 1, rightRadius));
  }

  private Flank flank(String name, int push, double radius) {
    Vec3 axis = frame.point(0, push * axisOffset, axisHeight);
    return new CylinderFlank(name, axis, frame.axis(), radius, true);
  }

  @Override
  public List<SeatClearance> clearances(Ball ball) {
    List<SeatClearance> found = new ArrayList<>();
    double arch = Double.NEGATIVE_INFINITY;
    for (Flank flank : flanks()) {
      double flankRadius = Math.abs(flank.signedRadius());
      double edge = (axisOffset + extent.mouthWidth() / 2) / flankRadius;
      double root =
          Elementary.asin(Math.min(1, (axisOffset + extent.rootWidth() / 2) / flankRadius));
      arch = Math.max(arch, axisHeight - flankRadius * Elementary.cos(root) - extent.rootDepth());
      Vec3 normal = flank.normal(ball.centre());
      double angle = Elementary.acos(Math.max(-1, Math.min(1, normal.dot(frame.up()))));
      if (edge <= 1) {
        found.add(
            new SeatClearance(
                SeatClearance.Feature.MOUTH_EDGE,
                flank.name(),
                flankRadius * (Elementary.asin(edge) - angle)));
      }
      found.add(
          new SeatClearance(
              SeatClearance.Feature.ROOT_EDGE, flank.name(), flankRadius * (angle - root)));
      if (Double.isFinite(extent.length())) {
        Vec3 contact = flank.contactPoint(ball.centre(), ball.radius());
        found.add(
            new SeatClearance(
                SeatClearance.Feature.END,
                flank.name(),
                extent.length() / 2 - Math.abs(frame.along(contact))));
      }
    }
    found.add(
        new SeatClearance(
            SeatClearance.Feature.FLOOR, "", undersideAbove(ball, frame.point(0, 0, arch))));
    return List.copyOf(found);
  }

  @Override
  public Seat withFrame(SeatFrame newFrame) {
    return new GothicGroove(newFrame, leftRadius, rightRadius, axisOffset, axisHeight, extent);
  }

  @Override
  public <T> T accept(Visitor<T> visitor) {
    return visitor.gothicGroove(this);
  }
}
