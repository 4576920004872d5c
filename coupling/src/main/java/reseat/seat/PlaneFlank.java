package reseat.seat;

import java.util.Objects;
import reseat.space.Vec3;

/**
 * A plane flank.
 *
 * @param name name of the flank in its seat
 * @param point any point of the plane, m
 * @param normal unit normal out of the seat
 * @param generator unit vector in the plane, along the groove
 */
public record PlaneFlank(String name, Vec3 point, Vec3 normal, Vec3 generator) implements Flank {

  /** Makes both directions unit vectors, the generator lying in the plane. */
  public PlaneFlank {
    Objects.requireNonNull(name, "name of a plane flank must be given, found null");
    Objects.requireNonNull(point, "point of a plane flank must be given, found null");
    Objects.requireNonNull(normal, "normal of a plane flank must be given, found null");
    Objects.requireNonNull(generator, "generator of a plane flank must be given, found null");
    normal = normal.unit();
    generator = generator.rejectedFrom(normal).unit();
  }

  @Override
  public <T> T accept(Visitor<T> visitor) {
    return visitor.plane(this);
  }

  @Override
  public double gap(Vec3 centre, double ballRadius) {
    return centre.minus(point).dot(normal) - ballRadius;
  }

  @Override
  public Vec3 normal(Vec3 centre) {
    return normal;
  }

  @Override
  public double signedRadius() {
    return Double.POSITIVE_INFINITY;
  }
}
