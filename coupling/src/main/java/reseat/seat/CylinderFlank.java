package reseat.seat;

import java.util.Objects;
import reseat.space.Vec3;
import reseat.units.PrintedNumber;

/**
 * A circular cylinder as a flank: a pin (convex) or a round-bottomed groove flank (hollow).
 *
 * @param name name of the flank in its seat
 * @param axisPoint any point of the cylinder's axis, m
 * @param generator unit vector along the axis
 * @param radius radius of the cylinder, m; positive
 * @param hollow whether the ball lies inside the cylinder
 */
public record CylinderFlank(
    String name, Vec3 axisPoint, Vec3 generator, double radius, boolean hollow) implements Flank {

  /** Makes the axis a unit vector and refuses a cylinder without size. */
  public CylinderFlank {
    Objects.requireNonNull(name, "name of a cylinder flank must be given, found null");
    Objects.requireNonNull(axisPoint, "axis point of a cylinder flank must be given, found null");
    Objects.requireNonNull(generator, "generator of a cylinder flank must be given, found null");
    generator = generator.unit();
    if (!(radius > 0) || Double.isInfinite(radius)) {
      throw new IllegalArgumentException(
          "flank cylinder radius must be positive, found " + PrintedNumber.shortest(radius) + " m");
    }
  }

  private Vec3 offset(Vec3 centre) {
    return centre.minus(axisPoint).rejectedFrom(generator);
  }

  @Override
  public <T> T accept(Visitor<T> visitor) {
    return visitor.cylinder(this);
  }

  @Override
  public double gap(Vec3 centre, double ballRadius) {
    double distance = offset(centre).norm();
    return hollow ? radius - distance - ballRadius : distance - radius - ballRadius;
  }

  @Override
  public Vec3 normal(Vec3 centre) {
    Vec3 outward = offset(centre).unit();
    return hollow ? outward.negated() : outward;
  }

  @Override
  public double signedRadius() {
    return hollow ? -radius : radius;
  }
}
