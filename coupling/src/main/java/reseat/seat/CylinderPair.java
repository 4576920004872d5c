package reseat.seat;

import reseat.elementary.Elementary;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import reseat.space.Vec3;
import reseat.units.FilledText;

/**
 * Two parallel cylindrical pins that carry a ball between them.
 *
 * <p>The frame's origin lies midway between the pin axes. With pins of radius r at spacing s, a
 * ball of radius R touches each pin where the contact normal stands at the angle asin(s/(2(R+r)))
 * from the opening direction.
 *
 * @param frame axes; origin midway between the pin axes, m
 * @param leftRadius radius of the left pin, m
 * @param rightRadius radius of the right pin, m
 * @param spacing distance between the pin axes, m
 * @param length length of the pins, m; infinite if not stated
 * @param floorDepth depth of the floor under the pin axes, m; infinite for no floor
 */
public record CylinderPair(
    SeatFrame frame,
    double leftRadius,
    double rightRadius,
    double spacing,
    double length,
    double floorDepth)
    implements Seat {

  /** Refuses pins that overlap or have no size. */
  public CylinderPair {
    Objects.requireNonNull(frame, "frame of a cylinder pair must be given, found null");
    if (!(leftRadius > 0) || !(rightRadius > 0) || !(length > 0) || !(floorDepth > 0)) {
      throw new IllegalArgumentException("pin radii, length and floor depth must be positive");
    }
    if (!(spacing >= leftRadius + rightRadius)) {
      throw new IllegalArgumentException(
          FilledText.of(
              "pins of %.6g mm and %.6g mm diameter cannot stand %.6g mm apart (they overlap)",
              2e3 * leftRadius, 2e3 * rightRadius, 1e3 * spacing));
    }
  }

  /**
   * Returns the pair on which a given ball rests with its centre at the frame's origin.
   *
   * @param atBallCentre axes with the origin at the wanted ball centre, m
   * @param ballRadius radius of that ball, m
   * @param pinRadius radius of both pins, m
   * @param spacing distance between the pin axes, m
   * @param length length of the pins, m; infinite if not stated
   * @param floorDepth depth of the floor under the pin axes, m; infinite for no floor
   * @return the pair
   * @throws IllegalArgumentException if the ball would fall through
   */
  public static CylinderPair forBall(
      SeatFrame atBallCentre,
      double ballRadius,
      double pinRadius,
      double spacing,
      double length,
      double floorDepth) {
    double sine = spacing / (2 * (ballRadius + pinRadius));
    if (!(sine < 1)) {
      throw new IllegalArgumentException(
          FilledText.of(
              "a ball of %.6g mm falls through pins of %.6g mm spaced %.6g mm; the spacing must be"
                  + " under %.6g mm",
              2e3 * ballRadius, 2e3 * pinRadius, 1e3 * spacing, 2e3 * (ballRadius + pinRadius)));
    }
    double rise = (ballRadius + pinRadius) * Math.sqrt(1 - sine * sine);
    SeatFrame frame = atBallCentre.at(atBallCentre.point(0, 0, -rise));
    return new CylinderPair(frame, pinRadius, pinRadius, spacing, length, floorDepth);
  }

  /**
   * Returns the angle of the contact normals from the opening direction.
   *
   * @param ballRadius radius of the ball, m
   * @return rad; the mean pin radius is used
   */
  public double contactAngle(double ballRadius) {
    return Elementary.asin(Math.min(1, spacing / (2 * ballRadius + leftRadius + rightRadius)));
  }

  @Override
  public int contacts() {
    return 2;
  }

  @Override
  public List<Flank> flanks() {
    return List.of(
        new CylinderFlank("left", frame.point(0, spacing / 2, 0), frame.axis(), leftRadius, false),
        new CylinderFlank(
            "right", frame.point(0, -spacing / 2, 0), frame.axis(), rightRadius, false));
  }

  @Override
  public List<SeatClearance> clearances(Ball ball) {
    List<SeatClearance> found = new ArrayList<>();
    if (Double.isFinite(length)) {
      for (Flank flank : flanks()) {
        Vec3 contact = flank.contactPoint(ball.centre(), ball.radius());
        found.add(
            new SeatClearance(
                SeatClearance.Feature.END,
                flank.name(),
                length / 2 - Math.abs(frame.along(contact))));
      }
    }
    if (Double.isFinite(floorDepth)) {
      found.add(
          new SeatClearance(
              SeatClearance.Feature.FLOOR,
              "",
              undersideAbove(ball, frame.point(0, 0, -floorDepth))));
    }
    return List.copyOf(found);
  }

  @Override
  public Seat withFrame(SeatFrame newFrame) {
    return new CylinderPair(newFrame, leftRadius, rightRadius, spacing, length, floorDepth);
  }

  @Override
  public <T> T accept(Visitor<T> visitor) {
    return visitor.cylinderPair(this);
  }
}
