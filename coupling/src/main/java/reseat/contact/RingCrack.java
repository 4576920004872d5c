package reseat.contact;

import reseat.elementary.Elementary;
import reseat.numerics.Bounds;

/**
 * The peak pressure up to which no ring crack runs in a brittle body beside a contact.
 *
 * <p>Just outside the patch the surface is in tension, and sliding adds to it at the trailing edge.
 * A crack needs that tension over some depth; it runs where {@code K = k p0 sqrt(a)} reaches the
 * fracture toughness. Here k is the greatest stress intensity of a straight crack along the circle,
 * at its worst place (1.05 to 1.20 a from the centre) and its worst depth (0.03 to 0.1 a): below
 * the pressure that it gives, no crack of any depth runs. For a ball on a flat that is a force of
 * {@code A K_Ic^2 R/E*}, {@code A = pi^2/(3 k^2)}, which is the law of Auerbach.
 *
 * <p>A crack of known depth that is shallow bears more: {@code p0 = K_Ic/(1.1215 sqrt(pi c) t)}
 * with t the tension at the edge over p0, {@code (1-2 nu)/3 + mu pi (4+nu)/8} for a circle. Both
 * are lower bounds, so the greater counts.
 *
 * <p>k was computed for this table from the closed field of Hertz and Cerruti's point loads summed
 * over the patch, full sliding, with the weight function {@code 1.3 - 0.3 s^1.25} of an edge crack
 * (docs/reference/dents.py does it again); between its points ln k is taken straight. Like bodies
 * only: unlike ones exchange shear at the edge without sliding too, some 10 % (judgement). An
 * ellipse is an estimate: k is scaled by the tension at its edge, a is the geometric mean of the
 * semi-axes, for a ring of contact its half width.
 */
public final class RingCrack {

  /**
   * Force over that of the lower bound at which a polished surface cracks: 8600 over 2240 at a
   * Poisson's ratio of 0.22 without friction (Rhee and others 2001, recalled).
   */
  public static final double POLISHED = 3.84;

  /** Stress intensity of a shallow crack at an edge over that of one in an endless body. */
  private static final double EDGE = 1.1215;

  private static final double[] POISSON = {0.10, 0.14, 0.18, 0.22, 0.26, 0.30, 0.34};
  private static final double[] FRICTION = {0, 0.05, 0.10, 0.15, 0.20, 0.30, 0.40};
  private static final double[][] INTENSITY = {
    {0.06462, 0.08380, 0.10516, 0.12862, 0.15414, 0.21196, 0.28040},
    {0.05537, 0.07401, 0.09488, 0.11794, 0.14312, 0.20003, 0.26737},
    {0.04661, 0.06462, 0.08497, 0.10761, 0.13243, 0.18855, 0.25481},
    {0.03830, 0.05562, 0.07543, 0.09762, 0.12204, 0.17739, 0.24251},
    {0.03054, 0.04707, 0.06629, 0.08797, 0.11196, 0.16652, 0.23059},
    {0.02336, 0.03900, 0.05756, 0.07868, 0.10220, 0.15595, 0.21914},
    {0.01681, 0.03143, 0.04923, 0.06975, 0.09275, 0.14574, 0.20801}
  };

  private final double lowerBound;
  private final double edgeTension;
  private final double toughness;

  private RingCrack(double lowerBound, double edgeTension, double toughness) {
    this.lowerBound = lowerBound;
    this.edgeTension = edgeTension;
    this.toughness = toughness;
  }

  /**
   * Looks at a contact.
   *
   * @param contact the contact
   * @param poisson Poisson's ratio of the brittle body
   * @param friction coefficient of friction with which the contact slides home, zero or more
   * @param toughness fracture toughness of the body, Pa m^0.5
   * @return its pressures
   */
  public static RingCrack of(
      BallContact contact, double poisson, double friction, double toughness) {
    Bounds.notNegative("coefficient of friction", friction, "");
    Bounds.positive("fracture toughness", toughness, "Pa m^0.5");
    double tension = slidingTension(contact.aspect(), poisson, friction);
    double scaled = intensity(poisson, friction) * tension / slidingTension(1, poisson, friction);
    // semi-axes grow as p0, so K grows as its 3/2th power
    double unit = contact.forceAtPeakPressure(1e9);
    double size = contact.accept(new CrackSize(unit));
    double root = Elementary.cbrt(toughness / (scaled * Math.sqrt(size / 1e9)));
    return new RingCrack(root * root, tension, toughness);
  }

  /**
   * Returns the tension at the trailing edge of a sliding contact.
   *
   * <p>The part of sliding is that of a circle, {@code mu pi (4+nu)/8}, and of a line contact, 2
   * mu, taken straight between: an estimate for ellipses.
   *
   * @param aspect b/a, above 0 to 1
   * @param poisson Poisson's ratio
   * @param friction coefficient of friction
   * @return tension over the peak pressure
   */
  public static double slidingTension(double aspect, double poisson, double friction) {
    double circle = Math.PI * (4 + poisson) / 8;
    return EdgeTension.of(aspect, poisson).greatest() + friction * (2 + (circle - 2) * aspect);
  }

  /**
   * Returns the greatest stress intensity of a crack beside a circular contact.
   *
   * @param poisson Poisson's ratio; the ends of the table, 0.10 and 0.34, stand for what is beyond
   * @param friction coefficient of friction; 0.4 stands for what is beyond
   * @return K over p0 sqrt(a)
   */
  public static double intensity(double poisson, double friction) {
    int i = below(POISSON, poisson);
    int j = below(FRICTION, friction);
    double u = part(POISSON, i, poisson);
    double v = part(FRICTION, j, friction);
    double near = between(INTENSITY[i][j], INTENSITY[i][j + 1], v);
    double far = between(INTENSITY[i + 1][j], INTENSITY[i + 1][j + 1], v);
    return between(near, far, u);
  }

  private static int below(double[] points, double x) {
    int i = 0;
    while (i < points.length - 2 && x >= points[i + 1]) {
      i++;
    }
    return i;
  }

  private static double part(double[] points, int i, double x) {
    return Math.min(1, Math.max(0, (x - points[i]) / (points[i + 1] - points[i])));
  }

  private static double between(double from, double to, double part) {
    return Elementary.exp((1 - part) * Elementary.log(from) + part * Elementary.log(to));
  }

  /**
   * Returns the pressure below which no crack of any depth runs.
   *
   * @return p0, Pa
   */
  public double lowerBound() {
    return lowerBound;
  }

  /**
   * Returns the pressure below which no crack of a depth runs.
   *
   * @param flaw depth of the deepest scratch, m, above zero
   * @return p0, Pa, not below {@link #lowerBound()}
   */
  public double limit(double flaw) {
    Bounds.positive("depth of surface flaws", flaw, "m");
    return Math.max(lowerBound, toughness / (EDGE * Math.sqrt(Math.PI * flaw) * edgeTension));
  }

  /**
   * Returns the depth of an edge crack that runs under an even tension.
   *
   * @param toughness fracture toughness, Pa m^0.5
   * @param tension tension at the surface, Pa
   * @return depth, m
   */
  static double runningFlaw(double toughness, double tension) {
    double ratio = toughness / (EDGE * tension);
    return ratio * ratio / Math.PI;
  }

  /**
   * Returns the pressure at which even a polished surface cracks.
   *
   * @return p0, Pa: that of {@value #POLISHED} times the force of the lower bound
   */
  public double polished() {
    return lowerBound * Elementary.cbrt(POLISHED);
  }

  /** The length that a crack beside a patch is measured by, m. */
  private record CrackSize(double force) implements BallContact.Visitor<Double> {

    @Override
    public Double point(EllipticContact contact) {
      return Math.sqrt(contact.semiMajor(force) * contact.semiMinor(force));
    }

    @Override
    public Double ringThird(RingThird contact) {
      return contact.semiMinor(force);
    }
  }
}
