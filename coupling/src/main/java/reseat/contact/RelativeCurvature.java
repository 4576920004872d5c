package reseat.contact;

import reseat.elementary.Elementary;
import reseat.numerics.Bounds;
import reseat.units.FilledText;
import reseat.units.PrintedNumber;

/**
 * Shape of the gap between two bodies that touch at a point: gap = A x^2 + B y^2.
 *
 * <p>A and B are half the principal relative curvatures. Curvature is positive for a convex body,
 * negative for a hollow. For bodies of principal radii R, R' whose first principal planes make the
 * angle psi:
 *
 * <pre>
 *   A + B = (1/R1 + 1/R1' + 1/R2 + 1/R2')/2
 *   B - A = sqrt(c1^2 + c2^2 + 2 c1 c2 cos 2 psi)/2,   ci = 1/Ri - 1/Ri'
 * </pre>
 *
 * <p>A is found from the product A B rather than from the difference of the two lines, so that it
 * keeps its digits when it is a thousandth of B and smaller.
 *
 * @param lesser A, along the major axis of the contact ellipse, 1/m
 * @param greater B, along the minor axis, 1/m
 * @param majorAngle direction of the major axis, rad, 0 to below pi: from the cylinder's axis for a
 *     ball on a cylinder, from body 1's first principal direction toward body 2's in the general
 *     case; 0 where the ellipse is a circle
 * @param smallestRadius smallest convex radius of either body, m: the size against which the patch
 *     must stay small
 */
public record RelativeCurvature(
    double lesser, double greater, double majorAngle, double smallestRadius) {

  /** Refuses surfaces that conform, where there is no contact at a point. */
  public RelativeCurvature {
    if (!(lesser > 0)) {
      throw new IllegalArgumentException(
          FilledText.of(
              "the smaller relative curvature is %.6g 1/m: it must be positive, so a hollow must"
                  + " have a larger radius than the ball in it",
              2 * lesser));
    }
    if (!(greater >= lesser && Double.isFinite(greater))) {
      throw new IllegalArgumentException(
          "relative curvatures must be finite and in rising order, found "
              + PrintedNumber.shortest(lesser)
              + " and "
              + PrintedNumber.shortest(greater)
              + " 1/m");
    }
    Bounds.positive("smallest convex radius", smallestRadius, "m");
  }

  /**
   * Returns the gap of a given pair of curvatures.
   *
   * @param lesser A, 1/m
   * @param greater B, 1/m
   * @return the gap; the smallest radius is taken as 1/(2 B), as of a ball on a flat
   */
  public static RelativeCurvature of(double lesser, double greater) {
    return new RelativeCurvature(lesser, greater, 0, 1 / (2 * greater));
  }

  /**
   * Returns the gap between a ball and a flat.
   *
   * @param ballRadius radius, m
   * @return the gap
   */
  public static RelativeCurvature ballOnPlane(double ballRadius) {
    double k = 1 / Bounds.positive("ball radius", ballRadius, "m");
    return new RelativeCurvature(k / 2, k / 2, 0, ballRadius);
  }

  /**
   * Returns the gap between a ball and a cylinder.
   *
   * @param ballRadius radius, m
   * @param cylinderRadius m; positive for a pin, negative for a groove, infinite for a flat
   * @return the gap; the major axis runs along a pin and across a groove
   * @throws IllegalArgumentException if the groove's radius is not above the ball's
   */
  public static RelativeCurvature ballOnCylinder(double ballRadius, double cylinderRadius) {
    double k = 1 / Bounds.positive("ball radius", ballRadius, "m");
    double kc = curvature("cylinder radius", cylinderRadius);
    if (kc > 0) {
      return new RelativeCurvature(k / 2, (k + kc) / 2, 0, Math.min(ballRadius, cylinderRadius));
    }
    requireLarger("groove radius", -cylinderRadius, ballRadius);
    return new RelativeCurvature((k + kc) / 2, k / 2, kc < 0 ? Math.PI / 2 : 0, ballRadius);
  }

  /**
   * Returns the gap between a ball and a hollow sphere.
   *
   * @param ballRadius radius, m
   * @param seatRadius radius of the hollow, a positive number, m
   * @return the gap
   * @throws IllegalArgumentException if the seat's radius is not above the ball's
   */
  public static RelativeCurvature ballInSphericalSeat(double ballRadius, double seatRadius) {
    Bounds.positive("ball radius", ballRadius, "m");
    Bounds.positive("seat radius", seatRadius, "m");
    requireLarger("seat radius", seatRadius, ballRadius);
    double half = (1 / ballRadius - 1 / seatRadius) / 2;
    return new RelativeCurvature(half, half, 0, ballRadius);
  }

  /**
   * Returns the gap between two bodies of any principal radii.
   *
   * @param first body 1, radius along its first principal direction, m; positive convex, negative
   *     hollow, infinite flat
   * @param firstAcross body 1, radius at right angles to that, m
   * @param second body 2, radius along its first principal direction, m
   * @param secondAcross body 2, radius at right angles to that, m
   * @param psi angle from body 1's first principal direction to body 2's, rad
   * @return the gap
   * @throws IllegalArgumentException if the surfaces conform or cut each other
   */
  public static RelativeCurvature general(
      double first, double firstAcross, double second, double secondAcross, double psi) {
    double k1 = curvature("radius of body 1", first);
    double k1a = curvature("radius across of body 1", firstAcross);
    double k2 = curvature("radius of body 2", second);
    double k2a = curvature("radius across of body 2", secondAcross);
    if (!Double.isFinite(psi)) {
      throw new IllegalArgumentException(
          "angle between the bodies must be finite, found " + PrintedNumber.shortest(psi));
    }
    double c1 = k1 - k1a;
    double c2 = k2 - k2a;
    double along = c1 + c2 * Elementary.cos(2 * psi);
    double across = c2 * Elementary.sin(2 * psi);
    double sin2 = Elementary.sin(psi) * Elementary.sin(psi);
    double cos2 = Elementary.cos(psi) * Elementary.cos(psi);
    double product =
        (k1 * k1a + k2 * k2a + k1 * (k2 * sin2 + k2a * cos2) + k1a * (k2 * cos2 + k2a * sin2)) / 4;
    double greater = (k1 + k1a + k2 + k2a + Elementary.hypot(along, across)) / 4;
    if (!(greater > 0 && product > 0)) {
      throw new IllegalArgumentException(
          "these surfaces do not touch at a point only: along some direction the hollow one has the"
              + " smaller radius");
    }
    double angle = (Elementary.atan2(across, along) + Math.PI) / 2;
    double radius = Double.POSITIVE_INFINITY;
    for (double r : new double[] {first, firstAcross, second, secondAcross}) {
      radius = r > 0 ? Math.min(radius, r) : radius;
    }
    // rounding may put A an ulp above B for a circle
    double lesser = Math.min(product / greater, greater);
    return new RelativeCurvature(lesser, greater, lesser == greater ? 0 : angle % Math.PI, radius);
  }

  /**
   * Returns how much sharper the gap is across the ellipse than along it.
   *
   * @return B/A, 1 or more
   */
  public double ratio() {
    return greater / lesser;
  }

  /**
   * Returns how closely the hollow wraps the convex body.
   *
   * @return convex radius over hollow radius, 0 for a flat and for two convex bodies, below 1
   */
  public double conformity() {
    return Math.max(0, 1 - 2 * lesser * smallestRadius);
  }

  private static double curvature(String quantity, double radius) {
    if (Double.isNaN(radius) || radius == 0) {
      throw new IllegalArgumentException(
          quantity
              + " is "
              + PrintedNumber.shortest(radius)
              + " m: it must not be zero; use infinity for a flat");
    }
    return 1 / radius;
  }

  private static void requireLarger(String quantity, double hollow, double ball) {
    if (!(hollow > ball || Double.isInfinite(hollow))) {
      throw new IllegalArgumentException(
          FilledText.of(
              "%s is %.4f mm: it must be larger than the ball radius %.4f mm, or the ball touches"
                  + " along a line and not at a point",
              quantity, hollow * 1e3, ball * 1e3));
    }
  }
}
