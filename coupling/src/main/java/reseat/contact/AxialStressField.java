package reseat.contact;

import reseat.numerics.CarlsonIntegral;

/**
 * Stresses along the normal through the centre of a contact ellipse with b = 1 and p0 = 1.
 *
 * <p>From the potential of the elliptical pressure (Boussinesq). With s(z) = sqrt((a^2+z^2)
 * (b^2+z^2)) and the integrals, over t from z^2 to infinity,
 *
 * <pre>
 *   Jz = int dt/(t^(3/2) sqrt((a^2+t)(b^2+t)))               = (2/3) RD(a^2+z^2, b^2+z^2, z^2)
 *   Jx = int dt/((a^2+t)^(3/2) sqrt((b^2+t) t))              = (2/3) RD(b^2+z^2, z^2, a^2+z^2)
 *   Hx = int dt/((a^2+t)^(3/2) sqrt(b^2+t))                  = 2/(a^2 + z^2 + s)
 * </pre>
 *
 * <p>and Jy, Hy with a and b exchanged, the stresses are
 *
 * <pre>
 *   sx = a b [-nu z Jz + (1-nu) z Jx - (1/2 - nu) Hx]
 *   sy = a b [-nu z Jz + (1-nu) z Jy - (1/2 - nu) Hy]
 *   sz = -a b/s
 * </pre>
 *
 * <p>No term cancels at the circle, and each has a closed derivative, so the depth of a maximum is
 * found as the root of a derivative and not by trial. Derived here; checked against the closed form
 * for the circle and against quadrature of point loads.
 */
final class AxialStressField {

  private final double a;
  private final double nu;

  /** One point: stresses and their derivatives by depth. */
  record Point(AxialStress stress, AxialStress slope) {}

  AxialStressField(double aspect, double poisson) {
    this.a = 1 / aspect;
    this.nu = poisson;
  }

  /** Returns the stresses at a depth in units of b, and their slopes; depth above zero. */
  Point at(double z) {
    double u = a * a + z * z;
    double v = 1 + z * z;
    double s = Math.sqrt(u * v);
    double jz = 2.0 / 3 * CarlsonIntegral.rd(u, v, z * z);
    double jx = 2.0 / 3 * CarlsonIntegral.rd(v, z * z, u);
    double jy = 2.0 / 3 * CarlsonIntegral.rd(u, z * z, v);
    double shared = -nu * z * jz;
    double sharedSlope = -nu * (jz - 2 / (z * s));
    AxialStress stress =
        new AxialStress(
            a * (shared + (1 - nu) * z * jx - (1 - 2 * nu) / (u + s)),
            a * (shared + (1 - nu) * z * jy - (1 - 2 * nu) / (v + s)),
            -a / s);
    AxialStress slope =
        new AxialStress(
            a * (sharedSlope + (1 - nu) * jx - z / (u * s)),
            a * (sharedSlope + (1 - nu) * jy - z / (v * s)),
            a * z * (1 / u + 1 / v) / s);
    return new Point(stress, slope);
  }

  /** Returns the stresses at the surface, the limit of the above. */
  AxialStress atSurface() {
    double free = 1 - 2 * nu;
    return new AxialStress(-2 * nu - free / (a + 1), -2 * nu - free * a / (a + 1), -1);
  }
}
