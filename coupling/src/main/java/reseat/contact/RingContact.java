package reseat.contact;

import reseat.elementary.Elementary;
import reseat.material.ElasticPair;
import reseat.numerics.Bounds;
import reseat.space.Matrix6;
import reseat.space.Vec3;
import reseat.units.FilledText;

/**
 * A ball in a cone: a ring of contact.
 *
 * <p>Contact normals lean by phi from the axis (phi is also the angle between flank and coupling
 * plane), so the ring has radius {@code r0 = R sin phi}. Around the ring ball and cone agree; along
 * a generator the ball's radius R meets a straight line. The pressure is therefore taken as that of
 * a line contact under the normal load per length {@code w}:
 *
 * <pre>
 *   w  = F/(2 pi r0 cos phi)
 *   b  = sqrt(4 w R/(pi E*))          half width
 *   p0 = 2 w/(pi b) = sqrt(w E*&#47;(pi R))
 * </pre>
 *
 * <p>A line contact has no approach of its own: it depends on the size of the bodies. Here the ring
 * itself sets that size. A ring of Hertz pressure on a half-space sinks, for {@code b << r0}, by
 *
 * <pre>
 *   delta = (2 w/(pi E*)) [ ln(16 r0/b) + 1/2 - c ],   d delta/d w = (2/(pi E*)) [ ln(16 r0/b) - c ]
 * </pre>
 *
 * <p>with c = 0, derived here from the potential of a ring, {@code (2 w/(pi E*)) ln(8 r0/rho)} at
 * distance rho from it, and checked by quadrature. Ball and cone are no half-spaces at that
 * distance: the ball is pressed all round and the cone embraces it, which makes the ring 1.3 to 1.6
 * times stiffer. An axisymmetric finite-element computation gives {@code c} = 1.64, 2.29 and 2.59
 * (each within 0.15) at flank angles of 30, 45 and 60 degrees, which is good to about 5 % of the
 * ring's approach; it was fitted for b/R from 0.003 to 0.02. Between these angles a parabola is
 * taken, beyond them their value: an estimate, as is the law for other widths. Pressure and width
 * do not depend on it. Sideways the same give per length is used. Line-contact formulas recalled
 * from memory (Johnson, Contact Mechanics, chapter 4).
 *
 * <p>The ring over-determines the ball: a cone out of round, or a ball, by more than the approach
 * touches in two or three places only and then has the stress and stiffness of point contacts.
 */
public final class RingContact {

  /**
   * Peak pressure over yield strength at which a line contact begins to flow, after Tresca: the
   * greatest shear is 0.300 p0 at 0.786 b below the surface (recalled from memory, confirmed by
   * computation of a long ellipse).
   */
  public static final double FIRST_YIELD = 1 / (2 * 0.300);

  /** Flank angles, rad, at which the correction was computed, 15 degrees apart. */
  private static final double LEAST_ANGLE = Math.PI / 6;

  private static final double MOST_ANGLE = Math.PI / 3;

  private static final double[] CORRECTION = {1.64, 2.29, 2.59};

  private final double ballRadius;
  private final double flankAngle;
  private final double reducedModulus;

  private RingContact(double ballRadius, double flankAngle, double reducedModulus) {
    this.ballRadius = ballRadius;
    this.flankAngle = flankAngle;
    this.reducedModulus = reducedModulus;
  }

  /**
   * Returns the contact of a ball and a cone.
   *
   * @param ballRadius ball radius R, m
   * @param flankAngle angle phi of the contact normals from the axis, rad, 0.05 to 1.5; the cone's
   *     included angle is pi - 2 phi
   * @param elasticity elastic constants of ball and cone
   * @return the contact, for any force
   */
  public static RingContact of(double ballRadius, double flankAngle, ElasticPair elasticity) {
    Bounds.positive("ball radius", ballRadius, "m");
    Bounds.between(
        "angle of the cone's contact normals from its axis", flankAngle, "rad", 0.05, 1.5);
    return new RingContact(ballRadius, flankAngle, elasticity.reducedModulus());
  }

  /**
   * Returns the radius of the ring.
   *
   * @return r0 = R sin phi, m
   */
  public double ringRadius() {
    return ballRadius * Elementary.sin(flankAngle);
  }

  /**
   * Returns by how much the logarithm of the law is less than that of half-spaces.
   *
   * @param flankAngle flank angle, rad
   * @return c; from 30 to 60 degrees within 0.15, beyond the value at that end
   */
  public static double correction(double flankAngle) {
    double within = Math.max(LEAST_ANGLE, Math.min(MOST_ANGLE, flankAngle));
    double t = (within - LEAST_ANGLE) / (MOST_ANGLE - LEAST_ANGLE) * 2;
    double first = CORRECTION[1] - CORRECTION[0];
    double second = CORRECTION[2] - 2 * CORRECTION[1] + CORRECTION[0];
    return CORRECTION[0] + t * first + t * (t - 1) / 2 * second;
  }

  /**
   * Returns the normal load on each metre of the ring.
   *
   * @param axialForce force along the axis, zero or more, N
   * @return w, N/m
   */
  public double lineLoad(double axialForce) {
    Bounds.notNegative("axial force on the ball", axialForce, "N");
    return axialForce / (2 * Math.PI * ringRadius() * Elementary.cos(flankAngle));
  }

  /**
   * Returns half of the width of the ring.
   *
   * @param axialForce force along the axis, zero or more, N
   * @return b, m
   */
  public double halfWidth(double axialForce) {
    return Math.sqrt(4 * lineLoad(axialForce) * ballRadius / (Math.PI * reducedModulus));
  }

  /**
   * Returns the pressure in the middle of the ring.
   *
   * @param axialForce force along the axis, zero or more, N
   * @return p0, Pa
   */
  public double peakPressure(double axialForce) {
    return Math.sqrt(lineLoad(axialForce) * reducedModulus / (Math.PI * ballRadius));
  }

  /**
   * Returns the axial force at which the pressure reaches a value.
   *
   * @param peakPressure pressure in the middle of the ring, Pa
   * @return force, N
   */
  public double forceAtPeakPressure(double peakPressure) {
    Bounds.positive("peak pressure", peakPressure, "Pa");
    double w = peakPressure * peakPressure * Math.PI * ballRadius / reducedModulus;
    return w * 2 * Math.PI * ringRadius() * Elementary.cos(flankAngle);
  }

  /**
   * Returns the approach along the contact normals.
   *
   * @param axialForce force along the axis, zero or more, N
   * @return approach, m, zero at no force
   */
  public double normalApproach(double axialForce) {
    double w = lineLoad(axialForce);
    return w == 0 ? 0 : 2 * w / (Math.PI * reducedModulus) * (logarithm(axialForce) + 0.5);
  }

  /**
   * Returns the stiffness along the axis.
   *
   * @param axialForce force along the axis, above zero, N
   * @return dF/dz, N/m
   */
  public double axialStiffness(double axialForce) {
    double c = Elementary.cos(flankAngle);
    return 2 * Math.PI * ringRadius() * c * c * stiffnessPerLength(axialForce);
  }

  /**
   * Returns the stiffness across the axis, frictionless, while no part of the ring lifts.
   *
   * @param axialForce force along the axis, above zero, N
   * @return dF/dx, N/m
   */
  public double lateralStiffness(double axialForce) {
    double s = Elementary.sin(flankAngle);
    return Math.PI * ringRadius() * s * s * stiffnessPerLength(axialForce);
  }

  /**
   * Returns the frictionless stiffness of the ball in the cone; the ball may turn freely.
   *
   * @param axialForce force along the axis, above zero, N
   * @param ballCentre reference point, m
   * @return 6x6 stiffness in axes with z along the cone's axis
   */
  public Matrix6 stiffness(double axialForce, Vec3 ballCentre) {
    double[] k = new double[36];
    k[0] = lateralStiffness(axialForce);
    k[7] = k[0];
    k[14] = axialStiffness(axialForce);
    return Matrix6.of(k, ballCentre);
  }

  private double stiffnessPerLength(double axialForce) {
    Bounds.positive("axial force on the ball", axialForce, "N");
    return Math.PI * reducedModulus / (2 * logarithm(axialForce));
  }

  private double logarithm(double axialForce) {
    double ratio =
        16 * ringRadius() / halfWidth(axialForce) * Elementary.exp(-correction(flankAngle));
    if (!(ratio > Math.E)) {
      throw new IllegalArgumentException(
          FilledText.of(
              "axial force of %.6g N makes the ring of contact wider than the cone: the ball is"
                  + " pressed through",
              axialForce));
    }
    return Elementary.log(ratio);
  }
}
