package reseat.space;

import reseat.numerics.RandomStream;

/** Directions for tests, every solid angle alike. */
public final class RandomDirection {

  private RandomDirection() {}

  /**
   * Draws a direction; two uniform numbers.
   *
   * @param draw the stream
   * @return a unit vector
   */
  public static Vec3 of(RandomStream draw) {
    double z = 2 * draw.uniform() - 1;
    double azimuth = 2 * Math.PI * draw.uniform();
    double r = Math.sqrt((1 - z) * (1 + z));
    return new Vec3(r * Math.cos(azimuth), r * Math.sin(azimuth), z);
  }
}
