package reseat.contact;

import reseat.contact.AxialStressField.Point;
import reseat.elementary.Elementary;
import reseat.numerics.Bounds;
import reseat.units.PrintedNumber;

/**
 * Where a contact yields first: the greatest shear under the centre of the true ellipse.
 *
 * <p>Stresses are over the peak pressure p0 and depths over the minor semi-axis b, so one instance
 * serves every force. They are taken along the normal through the centre, where the greatest shear
 * of a frictionless Hertz contact lies for the Poisson's ratios of engineering materials.
 *
 * <p>Whether the shear lies in the plane of the minor axis (common) or of the major axis (long
 * ellipses of a material with small Poisson's ratio, such as carbide and ceramics) is found and not
 * assumed; for the latter the maximum rises toward the surface.
 *
 * <p>For the circle at nu = 0.30 the shear is 0.3100 p0 at 0.481 a, so yield begins at p0 = 1.613
 * Y; the 1.60 of textbooks is a rounding, 2.5 % on the safe side in load. Using the circle's value
 * for an ellipse is unsafe by up to 5 %.
 */
public final class SubsurfaceStress {

  private static final double SHALLOWEST = 1e-3;
  private static final double DEEPEST = 4;
  private static final int INTERVALS = 24;

  private final AxialStressField field;
  private final double maxShear;
  private final double maxShearDepth;
  private final double maxVonMises;

  private SubsurfaceStress(double aspect, double poisson) {
    field = new AxialStressField(aspect, poisson);
    double step = Elementary.pow(DEEPEST / SHALLOWEST, 1.0 / INTERVALS);
    double[] depths = new double[INTERVALS + 1];
    Point[] points = new Point[INTERVALS + 1];
    for (int i = 0; i <= INTERVALS; i++) {
      depths[i] = SHALLOWEST * Elementary.pow(step, i);
      points[i] = field.at(depths[i]);
    }
    Maximum minorPlane = maximum(Measure.SHEAR_ACROSS_MINOR, depths, points);
    Maximum majorPlane = maximum(Measure.SHEAR_ACROSS_MAJOR, depths, points);
    Maximum shear = majorPlane.value > minorPlane.value ? majorPlane : minorPlane;
    maxShear = shear.value;
    maxShearDepth = shear.depth;
    maxVonMises = maximum(Measure.VON_MISES, depths, points).value;
  }

  /** What is to be greatest; its slope need only have the right sign and zero. */
  private enum Measure {
    SHEAR_ACROSS_MINOR,
    SHEAR_ACROSS_MAJOR,
    VON_MISES;

    double value(AxialStress s) {
      return switch (this) {
        case SHEAR_ACROSS_MINOR -> (s.alongMinor() - s.normal()) / 2;
        case SHEAR_ACROSS_MAJOR -> (s.alongMajor() - s.normal()) / 2;
        case VON_MISES -> s.vonMises();
      };
    }

    double slope(Point p) {
      AxialStress s = p.stress();
      AxialStress d = p.slope();
      return switch (this) {
        case SHEAR_ACROSS_MINOR -> d.alongMinor() - d.normal();
        case SHEAR_ACROSS_MAJOR -> d.alongMajor() - d.normal();
        case VON_MISES ->
            (s.alongMajor() - s.alongMinor()) * (d.alongMajor() - d.alongMinor())
                + (s.alongMinor() - s.normal()) * (d.alongMinor() - d.normal())
                + (s.normal() - s.alongMajor()) * (d.normal() - d.alongMajor());
      };
    }
  }

  private record Maximum(double value, double depth) {}

  /**
   * Returns the stresses under a contact of a given shape.
   *
   * @param aspect b/a, above 0 to 1
   * @param poisson Poisson's ratio of the body looked into, 0 or more and below 0.5
   * @return the stresses
   */
  public static SubsurfaceStress of(double aspect, double poisson) {
    if (!(aspect > 0 && aspect <= 1)) {
      throw new IllegalArgumentException(
          "aspect b/a of the contact ellipse is "
              + PrintedNumber.shortest(aspect)
              + ": it must be above 0, at most 1");
    }
    if (!(poisson >= 0 && poisson < 0.5)) {
      throw new IllegalArgumentException(
          "Poisson's ratio is "
              + PrintedNumber.shortest(poisson)
              + ": it must be 0 or more and below 0.5");
    }
    return new SubsurfaceStress(aspect, poisson);
  }

  /**
   * Returns the stresses at a depth.
   *
   * @param depth depth below the surface over the minor semi-axis, zero or more
   * @return principal stresses over p0
   */
  public AxialStress at(double depth) {
    return Bounds.notNegative("depth over semi-axis", depth, "") == 0
        ? field.atSurface()
        : field.at(depth).stress();
  }

  /**
   * Returns the greatest shear stress.
   *
   * @return shear over p0
   */
  public double maxShear() {
    return maxShear;
  }

  /**
   * Returns the depth of the greatest shear stress.
   *
   * @return depth over the minor semi-axis b; zero if the shear is greatest at the surface
   */
  public double maxShearDepth() {
    return maxShearDepth;
  }

  /**
   * Returns the peak pressure at which the material first yields after Tresca.
   *
   * @return p0/Y = 1/(2 max shear)
   */
  public double firstYieldTresca() {
    return 1 / (2 * maxShear);
  }

  /**
   * Returns the peak pressure at which the material first yields after von Mises.
   *
   * @return p0/Y, equal to Tresca's for the circle and above it for an ellipse
   */
  public double firstYieldVonMises() {
    return 1 / maxVonMises;
  }

  private Maximum maximum(Measure measure, double[] depths, Point[] points) {
    Maximum best = new Maximum(measure.value(field.atSurface()), 0);
    for (int i = 0; i < INTERVALS; i++) {
      if (measure.slope(points[i]) > 0 && measure.slope(points[i + 1]) <= 0) {
        double depth = root(measure, depths[i], depths[i + 1]);
        double found = measure.value(field.at(depth).stress());
        if (found > best.value) {
          best = new Maximum(found, depth);
        }
      }
    }
    return best;
  }

  /**
   * Finds where the slope changes sign: false position with the Illinois rule, which cannot leave
   * the bracket. Written here because the library's solver, alone in using that library, would add
   * 15 ms of class loading to the start of every check.
   */
  private double root(Measure measure, double from, double to) {
    double opposite = from;
    double latest = to;
    double atOpposite = measure.slope(field.at(opposite));
    double atLatest = measure.slope(field.at(latest));
    for (int i = 0; i < 60 && atLatest != 0; i++) {
      double z = latest - atLatest * (latest - opposite) / (atLatest - atOpposite);
      if (Math.abs(z - latest) <= 1e-15 * z) {
        break;
      }
      double at = measure.slope(field.at(z));
      if (at * atLatest < 0) {
        opposite = latest;
        atOpposite = atLatest;
      } else {
        atOpposite /= 2;
      }
      latest = z;
      atLatest = at;
    }
    return latest;
  }
}
