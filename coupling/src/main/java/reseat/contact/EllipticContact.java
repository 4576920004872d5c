package reseat.contact;

import reseat.elementary.Elementary;
import reseat.material.ElasticPair;
import reseat.numerics.Bounds;

/**
 * A Hertz contact on the true ellipse.
 *
 * <p>With P the force, m = 1 - (b/a)^2, K and E the complete integrals at parameter m, A and B the
 * relative curvatures and E* the reduced modulus:
 *
 * <pre>
 *   a^3   = 3 P (a/b)^2 E/(2 pi E* (A+B)),   b = a (b/a)
 *   delta = 3 P K/(2 pi a E*)
 *   p0    = 3 P/(2 pi a b)
 *   k     = dP/d(delta) = 3 P/(2 delta) = pi a E* / K
 * </pre>
 *
 * <p>so that P = C delta^(3/2) with a constant C of the pair. Relative error below 1e-12 from the
 * circle to a/b = 1000 and beyond, plus that of the curvatures given. Valid for a patch that is
 * small beside the radii ({@link HalfSpaceWarning}).
 *
 * <p>Sources: Pilkey, Formulas for Stress, Strain and Structural Matrices, tables 9-2 and 9-4 (an
 * extract was read); derivation in Johnson, Contact Mechanics, chapters 3 and 4 (recalled, not
 * read).
 */
public final class EllipticContact implements BallContact {

  private final RelativeCurvature curvature;
  private final ElasticPair elasticity;
  private final EllipseShape shape;
  private final double reducedModulus;
  private final double majorOfUnitForce;
  private final double hertzConstant;
  private final double approachOfUnitForce;

  private EllipticContact(RelativeCurvature curvature, ElasticPair elasticity) {
    this.curvature = curvature;
    this.elasticity = elasticity;
    shape = EllipseShape.ofCurvatureRatio(curvature.ratio());
    reducedModulus = elasticity.reducedModulus();
    double elongation = shape.elongation();
    majorOfUnitForce =
        Elementary.cbrt(
            3
                * elongation
                * elongation
                * shape.integralE()
                / (2 * Math.PI * reducedModulus * (curvature.lesser() + curvature.greater())));
    approachOfUnitForce = 3 * shape.integralK() / (2 * Math.PI * majorOfUnitForce * reducedModulus);
    hertzConstant = 1 / (approachOfUnitForce * Math.sqrt(approachOfUnitForce));
  }

  /**
   * Returns the contact of two bodies.
   *
   * @param curvature shape of the gap
   * @param elasticity elastic constants of the two bodies
   * @return the contact, for any force
   */
  public static EllipticContact of(RelativeCurvature curvature, ElasticPair elasticity) {
    return new EllipticContact(curvature, elasticity);
  }

  /**
   * Returns the shape of the gap.
   *
   * @return relative curvatures
   */
  public RelativeCurvature curvature() {
    return curvature;
  }

  /**
   * Returns the elastic constants.
   *
   * @return those of the two bodies
   */
  @Override
  public ElasticPair elasticity() {
    return elasticity;
  }

  /**
   * Returns the shape of the ellipse, which no force changes.
   *
   * @return aspect and integrals
   */
  public EllipseShape shape() {
    return shape;
  }

  /**
   * Returns the constant of the pair.
   *
   * @return C in P = C delta^(3/2), N/m^(3/2)
   */
  public double hertzConstant() {
    return hertzConstant;
  }

  /**
   * Returns how far the bodies approach.
   *
   * @param force compression, zero or more, N
   * @return mutual approach of points far from the contact, m
   */
  @Override
  public double approach(double force) {
    double root = Elementary.cbrt(checked(force));
    return approachOfUnitForce * root * root;
  }

  /**
   * Returns the force that makes an approach.
   *
   * @param approach m; zero or less means apart
   * @return compression C approach^(3/2), N, zero when apart
   */
  @Override
  public double force(double approach) {
    return approach > 0 ? hertzConstant * approach * Math.sqrt(approach) : 0;
  }

  /**
   * Returns the stiffness against a further approach.
   *
   * @param force compression, zero or more, N
   * @return dP/d(delta), N/m, zero at no force
   */
  @Override
  public double normalStiffness(double force) {
    return 1.5 * Elementary.cbrt(checked(force)) / approachOfUnitForce;
  }

  /**
   * Returns the major semi-axis.
   *
   * @param force compression, zero or more, N
   * @return a, m, along the lesser curvature
   */
  @Override
  public double semiMajor(double force) {
    return majorOfUnitForce * Elementary.cbrt(checked(force));
  }

  /**
   * Returns the minor semi-axis.
   *
   * @param force compression, zero or more, N
   * @return b, m, along the greater curvature
   */
  @Override
  public double semiMinor(double force) {
    return semiMajor(force) * shape.aspect();
  }

  /**
   * Returns the pressure at the centre.
   *
   * @param force compression, zero or more, N
   * @return p0 = 3 P/(2 pi a b), Pa
   */
  @Override
  public double peakPressure(double force) {
    return 1.5 * meanPressure(force);
  }

  /**
   * Returns the force over the area of the ellipse.
   *
   * @param force compression, zero or more, N
   * @return mean pressure, two thirds of the peak, Pa
   */
  public double meanPressure(double force) {
    return Elementary.cbrt(checked(force))
        / (Math.PI * majorOfUnitForce * majorOfUnitForce * shape.aspect());
  }

  /**
   * Returns the force at which the pressure at the centre has a given value.
   *
   * @param peakPressure p0, zero or more, Pa
   * @return compression, N; it grows with the cube of the pressure
   */
  @Override
  public double forceAtPeakPressure(double peakPressure) {
    double ratio = Bounds.notNegative("peak pressure", peakPressure, "Pa") / peakPressure(1);
    return ratio * ratio * ratio;
  }

  @Override
  public double tangentialRatioLong() {
    return TangentialContact.of(this).majorRatio();
  }

  @Override
  public double tangentialRatioShort() {
    return TangentialContact.of(this).minorRatio();
  }

  @Override
  public double aspect() {
    return shape.aspect();
  }

  @Override
  public <T> T accept(Visitor<T> visitor) {
    return visitor.point(this);
  }

  @Override
  public boolean hasShapeOf(BallContact other) {
    return other instanceof EllipticContact e
        && e.curvature.lesser() == curvature.lesser()
        && e.curvature.greater() == curvature.greater();
  }

  private static double checked(double force) {
    return Bounds.notNegative("contact force", force, "N");
  }
}
