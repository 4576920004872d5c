package reseat.contact;

import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import reseat.contact.AxialStressField.Point;
import reseat.numerics.Bounds;

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
  private static final int INTERVALS = 48;

  private final AxialStressField field;
  private final double maxShear;
  private final double maxShearDepth;
  private final double maxVonMises;

  private SubsurfaceStress(double aspect, double poisson) {
    field = new AxialStressField(aspect, poisson);
    Maximum minorPlane = maximum(s -> (s.alongMinor() - s.normal()) / 2, p -> shearSlope(p, false));
    Maximum majorPlane = maximum(s -> (s.alongMajor() - s.normal()) / 2, p -> shearSlope(p, true));
    Maximum shear = majorPlane.value > minorPlane.value ? majorPlane : minorPlane;
    maxShear = shear.value;
    maxShearDepth = shear.depth;
    maxVonMises = maximum(AxialStress::vonMises, SubsurfaceStress::vonMisesSlope).value;
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
          "aspect b/a of the contact ellipse is " + aspect + ": it must be above 0, at most 1");
    }
    if (!(poisson >= 0 && poisson < 0.5)) {
      throw new IllegalArgumentException(
          "Poisson's ratio is " + poisson + ": it must be 0 or more and below 0.5");
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

  private Maximum maximum(ToDoubleFunction<AxialStress> value, ToDoubleFunction<Point> slope) {
    Maximum best = new Maximum(value.applyAsDouble(field.atSurface()), 0);
    double step = Math.pow(DEEPEST / SHALLOWEST, 1.0 / INTERVALS);
    double z = SHALLOWEST;
    double slopeAbove = slope.applyAsDouble(field.at(z));
    for (int i = 0; i < INTERVALS; i++) {
      double next = z * step;
      double slopeBelow = slope.applyAsDouble(field.at(next));
      if (slopeAbove > 0 && slopeBelow <= 0) {
        double depth = root(slope, z, next);
        double found = value.applyAsDouble(field.at(depth).stress());
        if (found > best.value) {
          best = new Maximum(found, depth);
        }
      }
      z = next;
      slopeAbove = slopeBelow;
    }
    return best;
  }

  private double root(ToDoubleFunction<Point> slope, double from, double to) {
    return new BrentSolver(1e-15, 1e-15)
        .solve(100, z -> slope.applyAsDouble(field.at(z)), from, to);
  }

  private static double shearSlope(Point p, boolean major) {
    AxialStress d = p.slope();
    return (major ? d.alongMajor() : d.alongMinor()) - d.normal();
  }

  private static double vonMisesSlope(Point p) {
    AxialStress s = p.stress();
    AxialStress d = p.slope();
    return (s.alongMajor() - s.alongMinor()) * (d.alongMajor() - d.alongMinor())
        + (s.alongMinor() - s.normal()) * (d.alongMinor() - d.normal())
        + (s.normal() - s.alongMajor()) * (d.normal() - d.alongMajor());
  }
}
