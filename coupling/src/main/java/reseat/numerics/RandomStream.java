package reseat.numerics;

import org.apache.commons.math3.special.Erf;
import org.apache.commons.rng.core.source64.L64X128Mix;
import reseat.units.PrintedNumber;

/**
 * A stream of random numbers that belongs to one task of a simulation.
 *
 * <p>The stream is a function of (seed, index) alone: trial 1234 draws the same numbers whichever
 * thread runs it and however many trials there are. The pair is hashed into the 64-bit seed of the
 * generator L64X128Mix (Steele and Vigna 2021; period 2^192), whose state is filled from it as the
 * JDK fills its {@code L64X128MixRandom}, so that both give the same numbers; two indices of one
 * seed never share a stream, because the hash is one to one.
 *
 * <p>Each scalar draw uses exactly one uniform number and the inverse of the distribution function,
 * so the k-th draw of a stream stays the k-th draw when a distribution is exchanged, and two
 * designs tried with one seed meet the same luck. Mutable, one thread at a time.
 */
public final class RandomStream {

  /** Fractional parts of the golden and the silver ratio, times 2^64. */
  private static final long GOLDEN = 0x9e3779b97f4a7c15L;

  private static final long SILVER = 0x6a09e667f3bcc909L;

  private static final double UNIT = 0x1.0p-52;

  /** Probability that a standard normal number is below -2. */
  private static final double BELOW_MINUS_TWO = 0.02275013194817921;

  private static final double ROOT_TWO = Math.sqrt(2);

  private final L64X128Mix generator;

  private RandomStream(L64X128Mix generator) {
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
    return new RandomStream(generator(mixed(mixed(seed) + GOLDEN * index)));
  }

  /**
   * The generator that the JDK makes of a seed: addend, state and the two halves of the xor part.
   */
  private static L64X128Mix generator(long seed) {
    long v = seed ^ SILVER;
    return new L64X128Mix(murmured(v), 1, mixed(v), mixed(v + GOLDEN));
  }

  /** The finishing hash of MurmurHash3. */
  private static long murmured(long z) {
    z = (z ^ (z >>> 33)) * 0xff51afd7ed558ccdL;
    z = (z ^ (z >>> 33)) * 0xc4ceb9fe1a85ec53L;
    return z ^ (z >>> 33);
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
    if (bound <= 0) {
      throw new IllegalArgumentException("the bound must be above 0, found " + bound);
    }
    int drawn = upperHalf();
    int mask = bound - 1;
    if ((bound & mask) == 0) {
      return drawn & mask;
    }
    // numbers of the last, broken round are thrown away: they would favour the small ones
    int positive = drawn >>> 1;
    int result = positive % bound;
    while (positive + mask - result < 0) {
      positive = upperHalf() >>> 1;
      result = positive % bound;
    }
    return result;
  }

  private int upperHalf() {
    return (int) (generator.nextLong() >>> 32);
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
          "standard deviation must not be negative, found " + PrintedNumber.shortest(deviation));
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

  private static double normalAt(double p) {
    return ROOT_TWO * Erf.erfInv(2 * p - 1);
  }

  private static void requireOrder(double low, double high) {
    if (!(low <= high && Double.isFinite(high - low))) {
      throw new IllegalArgumentException(
          "limits must be finite and in rising order, found "
              + PrintedNumber.shortest(low)
              + " and "
              + PrintedNumber.shortest(high));
    }
  }
}
