package reseat.contact;

import reseat.elementary.Elementary;
import reseat.numerics.Bounds;

/**
 * A contact of which one body flows: how far it sinks at first, what dent stays, how it springs
 * afterwards.
 *
 * <p>With R the ball's radius (for an ellipse 1/(A+B)), Y the flow strength of the softer body and
 * C Y its peak pressure at first yield after von Mises, w_c and P_c the elastic approach and force
 * at that pressure and x = w/w_c:
 *
 * <pre>
 *   P/P_c   = x^1.5                                                              to x = 1.9
 *   P/P_c   = exp(-x^(5/12)/4) x^1.5 + 4 H/(C Y) [1 - exp(-x^(5/9)/25)] x        beyond
 *   a       = a_elastic(w) (x/1.9)^(B/2),  B = 0.14 exp(23 Y/E*)                 beyond 1.9
 *   H/Y     = 2.84 {1 - exp[-0.82 (a/R)^-0.7]}
 *   w_res/w = (1 - x^-0.28) (1 - x^-0.69)                                        beyond 1
 *   N/N_max = [(w - w_res)/(w_max - w_res)]^n,  n = k (w_max - w_res)/N_max,  k = 2 E* a
 * </pre>
 *
 * <p>The last line is one law for unloading and loading again, up to the greatest force ever; k is
 * the stiffness there (pi a E*&#47;K(m) for an ellipse). Sources: Jackson and Green, J. Tribol. 127
 * (2005) 343 (abstract read, coefficients seen in two public implementations); Etsion, Kligerman
 * and Kadin, Int. J. Solids Struct. 42 (2005) 3716 (abstract read, formula recalled). Set against
 * finite elements for half-inch balls on 6061-T6 and 1045, 50 to 500 N: approach within 2.4 %,
 * radius within 3.2 %, stiffness within 3.2 %, what stays within 9.2 %. For an ellipse no published
 * law of that standing was found: the same curve on the true ellipse's elastic law, an estimate.
 * Perfectly plastic: metals that harden much take 15 to 20 % less.
 */
public final class DentedContact {

  /** Approach over that at first yield up to which loading stays that of Hertz. */
  private static final double ELASTIC = 1.9;

  /**
   * Part of the depth that the lip is high: {@code LIP x^LIP_GROWTH}, fitted to finite elements.
   */
  private static final double LIP = 0.03;

  private static final double LIP_GROWTH = 0.37;

  /** Mean pressure over flow strength of a fully plastic dent. */
  private static final double PLASTIC = 2.84;

  /** Mean pressure over flow strength from which a dent is called fully plastic. */
  private static final double FULLY = 2.7;

  /** Radius of the dent over that of the ball from which it is called fully plastic. */
  private static final double DEEP = 0.1;

  /**
   * Hertz pressure over that of first yield up to which a contact that lands elsewhere each time
   * ceases to flow: 4.68 k (elastic shakedown without friction; Johnson and others, recalled).
   */
  public static final double SHAKEDOWN = 1.67;

  private final EllipticContact contact;
  private final double flow;
  private final double firstYield;
  private final double onset;
  private final double yieldForce;
  private final double yieldApproach;
  private final double radius;
  private final double growth;

  private DentedContact(EllipticContact contact, double flow, double poisson, double onset) {
    this.contact = contact;
    this.flow = flow;
    firstYield =
        flow
            * (isCircle(contact)
                ? 1.295 * Elementary.exp(0.736 * poisson)
                : SubsurfaceStress.of(contact.aspect(), poisson).firstYieldVonMises());
    this.onset = onset;
    yieldForce = contact.forceAtPeakPressure(firstYield);
    yieldApproach = contact.approach(yieldForce);
    radius = 1 / (contact.curvature().lesser() + contact.curvature().greater());
    growth = 0.14 * Elementary.exp(23 * flow / contact.elasticity().reducedModulus());
  }

  /**
   * Looks at a contact of which one body may flow.
   *
   * @param contact the elastic contact
   * @param flow strength of the softer body: 1 % proof stress, else 0.2 %, Pa
   * @param poisson Poisson's ratio of that body
   * @param onset peak pressure up to which nothing yields, after Tresca, Pa
   * @return its law
   */
  public static DentedContact of(
      EllipticContact contact, double flow, double poisson, double onset) {
    Bounds.positive("flow strength", flow, "Pa");
    Bounds.positive("peak pressure at first yield", onset, "Pa");
    return new DentedContact(contact, flow, poisson, onset);
  }

  private static boolean isCircle(EllipticContact contact) {
    return contact.aspect() > 0.999;
  }

  /**
   * Says whether the contact is a circle, for which the law is established.
   *
   * @return false for an ellipse, whose dent is an estimate
   */
  public boolean established() {
    return isCircle(contact);
  }

  /**
   * Returns the force at which the softer body first flows, after von Mises.
   *
   * @return N
   */
  public double firstYieldForce() {
    return yieldForce;
  }

  /**
   * Returns the approach at first yield.
   *
   * @return m
   */
  public double firstYieldApproach() {
    return yieldApproach;
  }

  /**
   * Returns the approach of ball and seat at the first loading.
   *
   * @param force compression, zero or more, N
   * @return m
   */
  public double approach(double force) {
    Bounds.notNegative("contact force", force, "N");
    double ratio = force / yieldForce;
    double root = Elementary.cbrt(ratio);
    double x = root * root;
    if (x <= ELASTIC) {
      return contact.approach(force);
    }
    // the law rises and is steeper than a straight line: from Hertz's value, its least, upward
    double low = x;
    double high = x;
    while (loading(high) < ratio) {
      low = high;
      high *= 1.5;
    }
    double below = loading(low) - ratio;
    double above = loading(high) - ratio;
    for (int i = 0; i < 80 && high - low > 1e-14 * high; i++) {
      double next = above == below ? high : high - above * (high - low) / (above - below);
      if (!(next > low && next < high)) {
        next = (low + high) / 2;
      }
      double at = loading(next) - ratio;
      if (at > 0) {
        high = next;
        above = at;
        below /= 2;
      } else {
        low = next;
        below = at;
        above /= 2;
      }
      if (at == 0) {
        return next * yieldApproach;
      }
    }
    return (low + high) / 2 * yieldApproach;
  }

  /** Force over that at first yield, x the approach over that there, beyond the elastic part. */
  private double loading(double x) {
    double scale = Elementary.pow(mean(x) / radius, -0.7);
    double hardness = PLASTIC * (1 - Elementary.exp(-0.82 * scale));
    return Elementary.exp(-Elementary.pow(x, 5.0 / 12) / 4) * x * Math.sqrt(x)
        + 4
            * hardness
            * flow
            / firstYield
            * (1 - Elementary.exp(-Elementary.pow(x, 5.0 / 9) / 25))
            * x;
  }

  /** Geometric mean of the semi-axes at an approach, m. */
  private double mean(double x) {
    double elastic = contact.force(x * yieldApproach);
    return contact.semiMajor(elastic) * Math.sqrt(contact.aspect()) * spread(x);
  }

  private double spread(double x) {
    return x > ELASTIC ? Elementary.pow(x / ELASTIC, growth / 2) : 1;
  }

  /**
   * Returns what the greatest force ever leaves behind.
   *
   * @param greatest that force, above zero, N
   * @return the dent
   */
  public Dent under(double greatest) {
    Bounds.positive("greatest force on the contact", greatest, "N");
    double w = approach(greatest);
    double x = w / yieldApproach;
    double stays = x > 1 ? w * (1 - Elementary.pow(x, -0.28)) * (1 - Elementary.pow(x, -0.69)) : 0;
    double wide = spread(x);
    double elastic = contact.force(w);
    double major = contact.semiMajor(elastic) * wide;
    double minor = contact.semiMinor(elastic) * wide;
    double stiffness =
        Math.PI * major * contact.elasticity().reducedModulus() / contact.shape().integralK();
    double exponent = stays == 0 ? 1.5 : stiffness * (w - stays) / greatest;
    return new Dent(
        state(greatest, major, minor),
        greatest,
        w,
        stays,
        exponent,
        major,
        minor,
        stays == 0 ? 0 : LIP * Elementary.pow(x, LIP_GROWTH) * stays,
        established());
  }

  private Dent.State state(double force, double major, double minor) {
    double ratio = contact.peakPressure(force) / onset;
    if (ratio <= 1) {
      return Dent.State.ELASTIC;
    }
    if (ratio <= SHAKEDOWN) {
      return Dent.State.SETTLES;
    }
    double mean = force / (Math.PI * major * minor);
    return mean >= FULLY * flow || Math.sqrt(major * minor) > DEEP * radius
        ? Dent.State.DENTS_FULLY
        : Dent.State.DENTS;
  }
}
