package reseat.numerics;

import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.apache.commons.math3.special.Erf;
import reseat.space.Vec3;

/**
 * A stream of random numbers that belongs to one task of a simulation.
 *
 * <p>The stream is a function of (seed, index) alone: trial 1234 draws the same numbers whichever
 * thread runs it and however many trials there are. The pair is hashed into the 64-bit seed of the
 * JDK's {@code L64X128MixRandom} (period 2^192); two indices of one seed never share a stream,
 * because the hash is one to one.
 *
 * <p>Each scalar draw uses exactly one uniform number and the inverse of the distribution function,
 * so the k-th draw of a stream stays the k-th draw when a distribution is exchanged, and two
 * designs tried with one seed meet the same luck. Mutable, one thread at a time.
 */
public final class RandomStream {

  private static final RandomGeneratorFactory<RandomGenerator> ALGORITHM =
      RandomGeneratorFactory.of("L64X128MixRandom");

  private static final double UNIT = 0x1.0p-52;

  /** Probability that a standard normal number is below -2. */
  private static final double BELOW_MINUS_TWO = 0.02275013194817921;

  private static final double ROOT_TWO = Math.sqrt(2);

  private final RandomGenerator generator;

  private RandomStream(RandomGenerator generator) {
    this.generator = generator;
  }

  /**
   * Opens the stream of one task.
   *
   * @param seed the user's seed, any value
   * @param index number of the task, any value
   * @return a new stream at its start
   */
  public static RandomStream of(long seed, long index) {
    return new RandomStream(ALGORITHM.create(mixed(mixed(seed) + 0x9e3779b97f4a7c15L * index)));
  }

  /** The finishing hash of SplitMix64: one to one on 64 bits, every output bit hangs on all. */
  private static long mixed(long z) {
    z = (z ^ (z >>> 30)) * 0xbf58476d1ce4e5b9L;
    z = (z ^ (z >>> 27)) * 0x94d049bb133111ebL;
    return z ^ (z >>> 31);
  }

  /**
   * Draws from the open unit interval.
   *
   * @return uniform, one of the 2^52 midpoints (k + 1/2)/2^52: never 0, never 1
   */
  public double uniform() {
    return ((generator.nextLong() >>> 12) + 0.5) * UNIT;
  }

  /**
   * Draws from an interval.
   *
   * @param low lower end
   * @param high upper end, not below low
   * @return uniform between the two
   */
  public double uniform(double low, double high) {
    requireOrder(low, high);
    return low + (high - low) * uniform();
  }

  /**
   * Draws a whole number.
   *
   * @param bound above 0
   * @return uniform from 0 to bound - 1
   */
  public int below(int bound) {
    return generator.nextInt(bound);
  }

  /**
   * Draws from the standard normal distribution.
   *
   * @return mean 0, standard deviation 1, between -8.3 and 8.3
   */
  public double normal() {
    return normalAt(uniform());
  }

  /**
   * Draws from a normal distribution.
   *
   * @param mean its mean
   * @param deviation its standard deviation, not negative
   * @return a normal number
   */
  public double normal(double mean, double deviation) {
    if (!(deviation >= 0)) {
      throw new IllegalArgumentException(
          "standard deviation must not be negative, found " + deviation);
    }
    return mean + deviation * normal();
  }

  /**
   * Draws from the standard normal distribution cut off at plus and minus two, quickly.
   *
   * @return a number between -2 and 2; standard deviation 0.8796 after the cut
   */
  public double normalWithinTwo() {
    return normalAt(BELOW_MINUS_TWO + (1 - 2 * BELOW_MINUS_TWO) * uniform());
  }

  /**
   * Draws a direction in space; two uniform numbers.
   *
   * @return a unit vector, every solid angle alike
   */
  public Vec3 unitVector() {
    double z = 2 * uniform() - 1;
    double azimuth = 2 * Math.PI * uniform();
    double r = Math.sqrt((1 - z) * (1 + z));
    return new Vec3(r * Math.cos(azimuth), r * Math.sin(azimuth), z);
  }

  private static double normalAt(double p) {
    return ROOT_TWO * Erf.erfInv(2 * p - 1);
  }

  private static void requireOrder(double low, double high) {
    if (!(low <= high && Double.isFinite(high - low))) {
      throw new IllegalArgumentException(
          "limits must be finite and in rising order, found " + low + " and " + high);
    }
  }
}
