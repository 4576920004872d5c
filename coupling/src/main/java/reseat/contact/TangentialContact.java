package reseat.contact;

import reseat.material.ElasticPair;
import reseat.numerics.Bounds;
import reseat.numerics.EllipticIntegrals;

/**
 * Tangential and spin stiffness of a Hertz contact, and the loads at which it slips.
 *
 * <p><strong>No slip.</strong> Uniform tangential displacement of the patch; per body, with B and D
 * of {@link EllipticIntegrals} at m = 1 - (b/a)^2:
 *
 * <pre>
 *   1/k along the major axis = [(1-nu) B + D]/(2 pi G a)
 *   1/k along the minor axis = [B + (1-nu) D]/(2 pi G a)
 * </pre>
 *
 * <p>summed over the two bodies. This is the result of Mindlin (1949), here derived from Cerruti's
 * solution and checked by quadrature; on a circle it is kt = 8 G* a. The ratio kt/kn does not
 * depend on the force.
 *
 * <p><strong>Spin.</strong> A twist about the normal with no slip needs tractions q = (-c1 y, c2
 * x)/sqrt(1 - (x/a)^2 - (y/b)^2); the two constants follow from the condition that the patch turns
 * rigidly (derived here, checked by the circle, 16 G a^3/3 per body, and by quadrature). Full slip
 * is at the moment (3/8) mu N a E(m), which for the circle is (3 pi/16) mu N a (derived; checked by
 * quadrature).
 *
 * <p>Assumed: the tangential load does not change the normal pressure, exact for equal bodies.
 */
public final class TangentialContact {

  private final EllipticContact contact;
  private final double majorPerSemiAxis;
  private final double minorPerSemiAxis;
  private final double spinPerCube;

  private TangentialContact(EllipticContact contact) {
    this.contact = contact;
    EllipseShape s = contact.shape();
    ElasticPair pair = contact.elasticity();
    double full = pair.shearCompliance();
    double reduced = full - pair.poissonCompliance();
    majorPerSemiAxis = 2 * Math.PI / (reduced * s.integralB() + full * s.integralD());
    minorPerSemiAxis = 2 * Math.PI / (full * s.integralB() + reduced * s.integralD());
    spinPerCube = spinPerCube(s, full, full - reduced);
  }

  /**
   * Returns the tangential behaviour of a contact.
   *
   * @param contact the contact under normal force
   * @return its tangential behaviour
   */
  public static TangentialContact of(EllipticContact contact) {
    return new TangentialContact(contact);
  }

  private static double spinPerCube(EllipseShape s, double full, double poisson) {
    double kc = s.aspect();
    double mc = kc * kc;
    // integrals over all chord directions t of (cos^2 t/a^2 + sin^2 t/b^2)^(-3/2), in units of b^3:
    // weighed with cos^2 (chords along a), sin^2 and their product
    double alongMajor = EllipticIntegrals.cel(kc, mc, 0, 1);
    double alongMinor = EllipticIntegrals.cel(kc, mc, 1, 0);
    double mixed = EllipticIntegrals.completeC(mc);
    double shear = full - poisson;
    double a11 = shear * alongMajor + poisson * (alongMajor - mixed);
    double a22 = shear * alongMinor + poisson * (alongMinor - mixed);
    double a12 = poisson * mixed;
    // rigid turn by 1: a11 C1 + a12 C2 = 1 = a12 C1 + a22 C2; moment = (2 pi/3) a^3 b^3 (C1 + C2)
    double sum = (a11 + a22 - 2 * a12) / (a11 * a22 - a12 * a12);
    return 2 * Math.PI / 3 * sum;
  }

  /**
   * Returns the contact under normal force.
   *
   * @return the contact
   */
  public EllipticContact contact() {
    return contact;
  }

  /**
   * Returns the stiffness along the major axis while nothing slips.
   *
   * @param force compression, zero or more, N
   * @return N/m, zero at no force
   */
  public double stiffnessAlongMajor(double force) {
    return majorPerSemiAxis * contact.semiMajor(force);
  }

  /**
   * Returns the stiffness along the major axis over the normal stiffness.
   *
   * @return kt/kn, the same at any force; 2 (1 - nu)/(2 - nu) for a circle between equal bodies
   */
  public double majorRatio() {
    return majorPerSemiAxis / normalPerSemiAxis();
  }

  /**
   * Returns the stiffness along the minor axis over the normal stiffness.
   *
   * @return kt/kn, the same at any force, not below {@link #majorRatio()}
   */
  public double minorRatio() {
    return minorPerSemiAxis / normalPerSemiAxis();
  }

  /**
   * Returns the torsional stiffness about the normal while nothing slips.
   *
   * @param force compression, zero or more, N
   * @return N·m/rad, zero at no force
   */
  public double spinStiffness(double force) {
    double a = contact.semiMajor(force);
    return spinPerCube * a * a * a;
  }

  /**
   * Returns the moment about the normal at which the whole patch slips.
   *
   * @param force compression, zero or more, N
   * @param friction coefficient of friction, zero or more
   * @return N·m
   */
  public double fullSlipSpinMoment(double force, double friction) {
    return 0.375
        * Bounds.notNegative("coefficient of friction", friction, "")
        * force
        * contact.semiMajor(force)
        * contact.shape().integralE();
  }

  /**
   * Returns the slip behaviour along the major axis.
   *
   * @param force compression, above zero, N
   * @param friction coefficient of friction, above zero
   * @return the law of displacement
   */
  public PartialSlip slipAlongMajor(double force, double friction) {
    return new PartialSlip(friction * force, stiffnessAlongMajor(force));
  }

  private double normalPerSemiAxis() {
    return Math.PI * contact.elasticity().reducedModulus() / contact.shape().integralK();
  }
}
