package reseat.readings;

import reseat.space.Vec3;
import reseat.units.PrintedNumber;

/**
 * One probe of a set that watches a holder.
 *
 * @param name name of the probe, as in the head of its column
 * @param position point of the holder that the probe touches, m, in the frame of the pose
 * @param direction unit vector along which the touched point must move to make the reading grow
 * @param noise standard deviation of a reading, m, positive
 */
public record Probe(String name, Vec3 position, Vec3 direction, double noise) {

  /** Makes the direction a unit vector and refuses a noise that is not positive. */
  public Probe {
    if (!(noise > 0) || Double.isInfinite(noise)) {
      throw new IllegalArgumentException(
          "probe "
              + name
              + ": the noise must be positive, found "
              + PrintedNumber.shortest(noise)
              + " m");
    }
    direction = direction.unit();
  }
}
