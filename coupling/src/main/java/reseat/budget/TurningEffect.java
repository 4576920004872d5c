package reseat.budget;

import reseat.elementary.Elementary;
import reseat.units.PrintedNumber;

/**
 * What an error of the tool's place does to a turned part.
 *
 * <p>Radial: one to one in radius, twice in diameter. Height: second order in radius (Pythagoras),
 * but when facing to the centre a post of twice the error in diameter is left. On a spherical
 * surface a radial offset of the generating arc makes an ogive; part of its error is a change of
 * radius that a best fit removes. Axial: one to one in the place of a face.
 */
public final class TurningEffect {

  private static final int GRID = 2000;

  private TurningEffect() {}

  /**
   * Returns the error of a turned diameter.
   *
   * @param radialError error of the tool across the spindle axis, m
   * @return change of the diameter, m
   */
  public static double diameterError(double radialError) {
    return 2 * radialError;
  }

  /**
   * Returns the error of a turned radius for a tool off centre height.
   *
   * @param radius distance of the tool from the spindle axis as set, m; positive
   * @param heightError tool above or below centre, m
   * @return turned radius less the set one, m; never negative
   */
  public static double radiusErrorFromHeight(double radius, double heightError) {
    if (!(radius > 0)) {
      throw new IllegalArgumentException(
          "radius must be positive, found " + PrintedNumber.shortest(radius) + " m");
    }
    // sqrt(R² + h²) - R without cancellation
    return heightError * heightError / (Elementary.hypot(radius, heightError) + radius);
  }

  /**
   * Returns the diameter of the post or cone left when facing to the centre off height.
   *
   * @param heightError tool above or below centre, m
   * @return diameter, m; a tool too low leaves a small cone, one too high a post that rubs (common
   *     guidance in diamond turning, from memory)
   */
  public static double centrePostDiameter(double heightError) {
    return 2 * Math.abs(heightError);
  }

  /**
   * Form error of a spherical surface turned with the arc's centre off the spindle axis.
   *
   * @param peakToValley error against the wanted sphere, m
   * @param residual least peak to valley that another radius leaves, m
   * @param radiusChange best-fitting radius less the wanted one, m
   */
  public record Ogive(double peakToValley, double residual, double radiusChange) {}

  /**
   * Finds the form error of a spherical surface.
   *
   * @param sphereRadius radius of the wanted surface, m
   * @param semiAperture largest distance from the axis, m; under the radius
   * @param offset radial offset of the arc's centre, m
   * @return the error before and after fitting the radius
   */
  public static Ogive ogive(double sphereRadius, double semiAperture, double offset) {
    if (!(semiAperture > 0) || !(semiAperture + Math.abs(offset) < sphereRadius)) {
      throw new IllegalArgumentException(
          "the aperture must lie inside the sphere: radius "
              + PrintedNumber.shortest(sphereRadius)
              + " m, semi-aperture "
              + PrintedNumber.shortest(semiAperture)
              + " m");
    }
    double raw = peakToValley(sphereRadius, semiAperture, offset, 0);
    // the peak to valley over the fitted curvature has a single valley: narrow in by thirds
    double low = -4 * raw * sphereRadius * sphereRadius / (semiAperture * semiAperture);
    double high = -low;
    for (int i = 0; i < 200; i++) {
      double a = low + (high - low) / 3;
      double b = high - (high - low) / 3;
      if (peakToValley(sphereRadius, semiAperture, offset, a)
          < peakToValley(sphereRadius, semiAperture, offset, b)) {
        high = b;
      } else {
        low = a;
      }
    }
    double change = (low + high) / 2;
    double left = peakToValley(sphereRadius, semiAperture, offset, change);
    return new Ogive(raw, left, change);
  }

  private static double peakToValley(
      double sphereRadius, double semiAperture, double offset, double radiusChange) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i <= GRID; i++) {
      double r = semiAperture * i / GRID;
      double e = sag(sphereRadius, r + offset) - sag(sphereRadius + radiusChange, r);
      least = Math.min(least, e);
      most = Math.max(most, e);
    }
    return most - least;
  }

  /** Depth of a sphere at a distance from its axis, without cancellation, m. */
  private static double sag(double radius, double r) {
    return r * r / (radius + Math.sqrt((radius - r) * (radius + r)));
  }
}
