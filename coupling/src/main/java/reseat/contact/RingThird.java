package reseat.contact;

import reseat.elementary.Elementary;
import reseat.material.ElasticPair;
import reseat.numerics.Bounds;

/**
 * A third of the ring of contact between ball and cone, told as one contact.
 *
 * <p>A force N on the third is a load per length w = N/L with L a third of the ring's
 * circumference; width, pressure and approach are those of {@link RingContact} under that w:
 *
 * <pre>
 *   delta = A N (1 + ln(B/N)),   d delta/dN = A ln(B/N),   A = 1/(pi E* L),  B = 64 pi E* L r0&#94;2/R exp(-2 c)
 * </pre>
 *
 * <p>Three such contacts, a third of a turn apart, have the forces, the frictionless and the
 * sticking stiffness of the whole ring, whichever way they are turned: all of these are sums of
 * first and second powers of cosine and sine around the ring, and three points sum those exactly.
 *
 * <p>Across the ring and along it the third gives as a long line contact does: as stiff across as
 * along the normal, and 1 - nu of that along the line (for two bodies the mean of their sums). That
 * is the limit of the no-slip stiffness of a long ellipse.
 */
public final class RingThird implements BallContact {

  /** Width over length that stands for an endless line where stresses are asked for. */
  private static final double LINE = 1e-3;

  /** Load beyond which the law goes on straight: part of B at which the ring is a disc. */
  private static final double STRAIGHT = Elementary.exp(-2);

  private final RingContact ring;
  private final ElasticPair elasticity;
  private final double cosine;
  private final double length;
  private final double slope;
  private final double reach;

  private RingThird(RingContact ring, ElasticPair elasticity, double radius, double flankAngle) {
    this.ring = ring;
    this.elasticity = elasticity;
    cosine = Elementary.cos(flankAngle);
    length = 2 * Math.PI * ring.ringRadius() / 3;
    double modulus = Math.PI * elasticity.reducedModulus() * length;
    slope = modulus;
    reach =
        64
            * modulus
            * ring.ringRadius()
            * ring.ringRadius()
            / radius
            * Elementary.exp(-2 * RingContact.correction(flankAngle));
  }

  /**
   * Returns a third of the ring of a ball in a cone.
   *
   * @param ballRadius ball radius, m
   * @param flankAngle angle between the cone's flank and the plane across its axis, rad
   * @param elasticity elastic constants of ball and cone
   * @return the contact
   */
  public static RingThird of(double ballRadius, double flankAngle, ElasticPair elasticity) {
    return new RingThird(
        RingContact.of(ballRadius, flankAngle, elasticity), elasticity, ballRadius, flankAngle);
  }

  /**
   * Returns the whole ring.
   *
   * @return the ring
   */
  public RingContact ring() {
    return ring;
  }

  /**
   * Returns the slope of the law.
   *
   * @return 1/A, N/m
   */
  public double slope() {
    return slope;
  }

  /**
   * Returns the force that scales the logarithm of the law.
   *
   * @return B, N
   */
  public double reach() {
    return reach;
  }

  /**
   * Returns the approach by the law of a third.
   *
   * @param force normal force, zero or more, N
   * @param slope 1/A, N/m
   * @param reach B, N
   * @return approach, m
   */
  public static double approach(double force, double slope, double reach) {
    if (!(force > 0)) {
      return 0;
    }
    double straight = STRAIGHT * reach;
    return force <= straight
        ? force / slope * (1 + Elementary.log(reach / force))
        : (3 * straight + 2 * (force - straight)) / slope;
  }

  /**
   * Returns the tangent stiffness by the law of a third.
   *
   * @param force normal force, zero or more, N
   * @param slope 1/A, N/m
   * @param reach B, N
   * @return dN/d delta, N/m; zero without load
   */
  public static double stiffness(double force, double slope, double reach) {
    return force > 0 ? slope / Math.max(2, Elementary.log(reach / force)) : 0;
  }

  /**
   * Returns the force by the law of a third.
   *
   * @param approach approach, m
   * @param slope 1/A, N/m
   * @param reach B, N
   * @return normal force, N; zero for open bodies
   */
  public static double force(double approach, double slope, double reach) {
    if (!(approach > 0)) {
      return 0;
    }
    // the law is hollow toward larger forces, so Newton's method climbs to the root from below
    double force = Math.min(approach * slope / 50, STRAIGHT * reach);
    for (int round = 0; round < 50; round++) {
      double step = (approach - approach(force, slope, reach)) * stiffness(force, slope, reach);
      force += step;
      if (!(step > 1e-14 * force)) {
        break;
      }
    }
    return force;
  }

  @Override
  public ElasticPair elasticity() {
    return elasticity;
  }

  @Override
  public double approach(double force) {
    return approach(checked(force), slope, reach);
  }

  @Override
  public double force(double approach) {
    return force(approach, slope, reach);
  }

  @Override
  public double normalStiffness(double force) {
    return stiffness(checked(force), slope, reach);
  }

  @Override
  public double tangentialRatioLong() {
    return 1 - elasticity.poissonCompliance() / elasticity.shearCompliance();
  }

  @Override
  public double tangentialRatioShort() {
    return 1;
  }

  @Override
  public double semiMajor(double force) {
    checked(force);
    return length / 2;
  }

  @Override
  public double semiMinor(double force) {
    return ring.halfWidth(axial(force));
  }

  @Override
  public double peakPressure(double force) {
    return ring.peakPressure(axial(force));
  }

  @Override
  public double forceAtPeakPressure(double peakPressure) {
    Bounds.notNegative("peak pressure", peakPressure, "Pa");
    return peakPressure == 0 ? 0 : ring.forceAtPeakPressure(peakPressure) / (3 * cosine);
  }

  @Override
  public double aspect() {
    return LINE;
  }

  @Override
  public <T> T accept(Visitor<T> visitor) {
    return visitor.ringThird(this);
  }

  @Override
  public boolean hasShapeOf(BallContact other) {
    return other instanceof RingThird r && r.slope == slope && r.reach == reach;
  }

  /** Axial force on a ring of which every third carries this force. */
  private double axial(double force) {
    return 3 * cosine * checked(force);
  }

  private static double checked(double force) {
    return Bounds.notNegative("contact force", force, "N");
  }
}
