package reseat.elementary;

import org.apache.commons.math3.util.FastMath;

/**
 * The elementary functions of the whole program, computed in plain Java arithmetic.
 *
 * <p>{@code java.lang.Math} may answer differently by a last bit on another processor or another
 * Java, and engines that compile Java for a browser have faults of their own in it. Of {@code Math}
 * only what IEEE 754 fixes to the bit is used elsewhere (abs, min, max, sqrt, floor, ceil, signum).
 * The transcendental functions are those of Commons Math, within 1 ulp of {@code Math} (2 for log10
 * near 1 and for atan2 of numbers that almost vanish); rounding and the remainder follow the
 * contract of {@code Math} to the bit. NaN in, NaN out, unless told otherwise.
 */
public final class Elementary {

  /** From here on every double is a whole number. */
  private static final double ALL_WHOLE = 0x1p52;

  private static final double LOG10_OF_E = 0.4342944819032518;
  private static final double RADIANS_PER_DEGREE = 0.017453292519943295;
  private static final double DEGREES_PER_RADIAN = 57.29577951308232;

  private Elementary() {}

  /**
   * Returns the sine.
   *
   * @param angle rad
   * @return from -1 to 1
   */
  public static double sin(double angle) {
    return FastMath.sin(angle);
  }

  /**
   * Returns the cosine.
   *
   * @param angle rad
   * @return from -1 to 1
   */
  public static double cos(double angle) {
    return FastMath.cos(angle);
  }

  /**
   * Returns the tangent.
   *
   * @param angle rad
   * @return any number
   */
  public static double tan(double angle) {
    return FastMath.tan(angle);
  }

  /**
   * Returns the arc sine.
   *
   * @param x from -1 to 1; NaN beyond
   * @return rad, from -pi/2 to pi/2
   */
  public static double asin(double x) {
    return FastMath.asin(x);
  }

  /**
   * Returns the arc cosine.
   *
   * @param x from -1 to 1; NaN beyond
   * @return rad, from 0 to pi
   */
  public static double acos(double x) {
    return FastMath.acos(x);
  }

  /**
   * Returns the arc tangent.
   *
   * @param x any number
   * @return rad, from -pi/2 to pi/2
   */
  public static double atan(double x) {
    return FastMath.atan(x);
  }

  /**
   * Returns the angle of a direction in the plane.
   *
   * @param y its second coordinate
   * @param x its first coordinate
   * @return rad from the first axis, from -pi to pi
   */
  public static double atan2(double y, double x) {
    return FastMath.atan2(y, x);
  }

  /**
   * Returns the exponential.
   *
   * @param x any number
   * @return e to the power x
   */
  public static double exp(double x) {
    return FastMath.exp(x);
  }

  /**
   * Returns the exponential less one, exact also near zero.
   *
   * @param x any number
   * @return e to the power x, less 1
   */
  public static double expm1(double x) {
    return FastMath.expm1(x);
  }

  /**
   * Returns the natural logarithm.
   *
   * @param x above 0; minus infinity at 0, NaN below
   * @return its logarithm to the base e
   */
  public static double log(double x) {
    return FastMath.log(x);
  }

  /**
   * Returns the natural logarithm of one more, exact also near zero.
   *
   * @param x above -1
   * @return logarithm of 1 + x
   */
  public static double log1p(double x) {
    return FastMath.log1p(x);
  }

  /**
   * Returns the decimal logarithm.
   *
   * @param x above 0; minus infinity at 0, NaN below
   * @return its logarithm to the base 10; whole at the powers of ten
   */
  public static double log10(double x) {
    // near 1 the decimal logarithm of Commons Math keeps half its digits, the natural one all
    return x > 0.9 && x < 1.1 ? FastMath.log(x) * LOG10_OF_E : FastMath.log10(x);
  }

  /**
   * Returns a power.
   *
   * @param base any number
   * @param exponent any number; beyond 1000 the last digits are lost where the base is next to 1
   * @return base to the power exponent; NaN for a negative base with a broken exponent
   */
  public static double pow(double base, double exponent) {
    return FastMath.pow(base, exponent);
  }

  /**
   * Returns the cube root.
   *
   * @param x any number
   * @return its real cube root, of the sign of x
   */
  public static double cbrt(double x) {
    return FastMath.cbrt(x);
  }

  /**
   * Returns the length of a vector in the plane, without overflow in between.
   *
   * @param x one coordinate
   * @param y the other
   * @return root of the sum of squares
   */
  public static double hypot(double x, double y) {
    return FastMath.hypot(x, y);
  }

  /**
   * Multiplies by a power of two.
   *
   * @param x any number
   * @param power whole exponent
   * @return x times 2 to that power, rounded once
   */
  public static double scalb(double x, int power) {
    // beyond this every number vanishes or is infinite
    int left = Math.max(-2100, Math.min(2100, power));
    int rest = left % 512;
    double product = x * twoTo(rest);
    for (left -= rest; left != 0; left -= left > 0 ? 512 : -512) {
      product *= twoTo(left > 0 ? 512 : -512);
    }
    return product;
  }

  private static double twoTo(int power) {
    return Double.longBitsToDouble((1023L + power) << 52);
  }

  /**
   * Returns the next larger double.
   *
   * @param x any number
   * @return the least double above x; infinity stays
   */
  public static double nextUp(double x) {
    return FastMath.nextUp(x);
  }

  /**
   * Puts a sign on a number.
   *
   * @param size the number
   * @param sign whose sign is taken, that of -0.0 too
   * @return the first number with the sign of the second
   */
  public static double copySign(double size, double sign) {
    return FastMath.copySign(size, sign);
  }

  /**
   * Rounds to the nearest whole number, halves to the even one.
   *
   * @param x any number
   * @return a whole number with the sign of x; zeros and infinities stay
   */
  public static double rint(double x) {
    double size = Math.abs(x);
    if (!(size < ALL_WHOLE)) {
      return x;
    }
    double below = Math.floor(size);
    double part = size - below;
    boolean up = part > 0.5 || (part == 0.5 && below / 2 != Math.floor(below / 2));
    return copySign(up ? below + 1 : below, x);
  }

  /**
   * Rounds to the nearest whole number, halves upward.
   *
   * @param x any number
   * @return that number; the nearest {@code long} beyond the range, 0 for NaN
   */
  public static long round(double x) {
    if (Double.isNaN(x)) {
      return 0;
    }
    // the casts of some engines do not stop at the ends of the range
    if (x >= 0x1p63) {
      return Long.MAX_VALUE;
    }
    if (x <= -0x1p63) {
      return Long.MIN_VALUE;
    }
    double below = Math.floor(x);
    return (long) (x - below >= 0.5 ? below + 1 : below);
  }

  /**
   * Returns what is left after the nearest multiple is taken away, as IEEE 754 defines it.
   *
   * @param x a finite number; NaN otherwise
   * @param period not 0; NaN at 0
   * @return exactly x less the multiple of the period nearest to x, at half-way the even multiple
   */
  public static double remainder(double x, double period) {
    double p = Math.abs(period);
    if (!(Math.abs(x) <= Double.MAX_VALUE) || !(p > 0)) {
      return Double.NaN;
    }
    if (p == Double.POSITIVE_INFINITY) {
      return x;
    }
    // below two periods first, so that what is compared afterwards is exact
    double rest = Math.abs(p <= Double.MAX_VALUE / 2 ? x % (2 * p) : x);
    if (p < 2 * Double.MIN_NORMAL) {
      if (rest + rest > p) {
        rest -= p;
        if (rest + rest >= p) {
          rest -= p;
        }
      }
    } else if (rest > p / 2) {
      rest -= p;
      if (rest >= p / 2) {
        rest -= p;
      }
    }
    return Math.signum(x) < 0 || 1 / x < 0 ? -rest : rest;
  }

  /**
   * Turns degrees into radians.
   *
   * @param degrees deg
   * @return rad
   */
  public static double toRadians(double degrees) {
    return degrees * RADIANS_PER_DEGREE;
  }

  /**
   * Turns radians into degrees.
   *
   * @param radians rad
   * @return deg
   */
  public static double toDegrees(double radians) {
    return radians * DEGREES_PER_RADIAN;
  }
}
