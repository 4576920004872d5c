package reseat.equilibrium;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import reseat.contact.BallContact;
import reseat.contact.Dent;
import reseat.contact.EllipticContact;
import reseat.contact.RingThird;
import reseat.elementary.Elementary;

/**
 * How every contact of a coupling gives way along its normal, in plain arrays.
 *
 * <p>At a point N = C δ^(3/2); a third of a ring follows {@link RingThird}; a worked-in {@link
 * Dent} has N = C δ^n, δ from where the ball touches the dent. Constants may be overwritten, which
 * is how toleranced copies are made; not for use by several threads then.
 */
public final class NormalLaws {

  private final double[] constant;
  private final double[] reach;

  /** Exponents n of worked-in contacts, zero of others; empty where all are elastic. */
  private final double[] exponent;

  /** Constants of worked-in contacts over those of the elastic ones, N/m^n over N/m^1.5. */
  private final double[] scale;

  private NormalLaws(double[] constant, double[] reach, double[] exponent, double[] scale) {
    this.constant = constant;
    this.reach = reach;
    this.exponent = exponent;
    this.scale = scale;
  }

  /**
   * Takes the laws of contacts.
   *
   * @param contacts the contacts, those of a ring one after the other
   * @return their laws
   */
  public static NormalLaws of(List<BallContact> contacts) {
    double[] constant = new double[contacts.size()];
    double[] reach = new double[constant.length];
    for (int i = 0; i < constant.length; i++) {
      Law law = contacts.get(i).accept(Law.READER);
      constant[i] = law.constant();
      reach[i] = law.reach();
    }
    return new NormalLaws(constant, reach, new double[0], new double[0]);
  }

  /**
   * Takes the laws of the same contacts after work-in.
   *
   * @param dents one per contact; empty where the contact is elastic
   * @return the laws
   */
  NormalLaws workedIn(List<Optional<Dent>> dents) {
    double[] worked = constant.clone();
    double[] n = new double[constant.length];
    double[] over = new double[constant.length];
    for (int i = 0; i < n.length; i++) {
      if (dents.get(i).isPresent()) {
        Dent d = dents.get(i).get();
        n[i] = d.exponent();
        worked[i] = d.greatestForce() / Elementary.pow(d.sink() - d.depth(), n[i]);
        over[i] = worked[i] / constant[i];
      }
    }
    return new NormalLaws(worked, reach.clone(), n, over);
  }

  /** Whether a contact stands on a dent. */
  boolean dented(int contact) {
    return exponent.length > 0 && exponent[contact] > 0;
  }

  /** The law of one contact; no reach at a point. */
  private record Law(double constant, double reach) {

    private static final BallContact.Visitor<Law> READER =
        new BallContact.Visitor<>() {
          @Override
          public Law point(EllipticContact contact) {
            return new Law(contact.hertzConstant(), 0);
          }

          @Override
          public Law ringThird(RingThird contact) {
            return new Law(contact.slope(), contact.reach());
          }
        };
  }

  /**
   * Returns an independent copy.
   *
   * @return the same laws
   */
  public NormalLaws copy() {
    return new NormalLaws(constant.clone(), reach.clone(), exponent, scale);
  }

  /**
   * Replaces the constants.
   *
   * @param values C of N = C δ^(3/2), N/m^1.5, for a contact at a point; slope of the law, N/m, for
   *     a third of a ring; a dent changes in the same proportion
   */
  public void setConstants(double[] values) {
    System.arraycopy(values, 0, constant, 0, constant.length);
    for (int i = 0; i < exponent.length; i++) {
      if (exponent[i] > 0) {
        constant[i] *= scale[i];
      }
    }
  }

  /** Whether a contact stands for a third of a ring. */
  boolean onRing(int contact) {
    return reach[contact] > 0;
  }

  /** Constant of a contact's law, as {@link #setConstants} takes it. */
  double constant(int contact) {
    return constant[contact];
  }

  /**
   * Returns an approach.
   *
   * @param contact index of the contact
   * @param force its normal force, N
   * @return m, zero for a force that is not positive
   */
  public double approach(int contact, double force) {
    if (reach[contact] > 0) {
      return RingThird.approach(force, constant[contact], reach[contact]);
    }
    double ratio = force / constant[contact];
    if (dented(contact)) {
      return ratio > 0 ? Elementary.pow(ratio, 1 / exponent[contact]) : 0;
    }
    double root = ratio > 0 ? Elementary.cbrt(ratio) : 0;
    return root * root;
  }

  /**
   * Returns a force.
   *
   * @param contact index of the contact
   * @param approach its approach, m, above zero
   * @return N
   */
  public double force(int contact, double approach) {
    if (dented(contact)) {
      return constant[contact] * Elementary.pow(approach, exponent[contact]);
    }
    return reach[contact] > 0
        ? RingThird.force(approach, constant[contact], reach[contact])
        : constant[contact] * approach * Math.sqrt(approach);
  }

  /**
   * Returns a tangent stiffness.
   *
   * @param contact index of the contact
   * @param force its normal force, N, above zero
   * @param approach its approach under that force, m
   * @return N/m
   */
  public double stiffness(int contact, double force, double approach) {
    if (dented(contact)) {
      return exponent[contact] * force / approach;
    }
    return reach[contact] > 0
        ? RingThird.stiffness(force, constant[contact], reach[contact])
        : 1.5 * force / approach;
  }

  /**
   * Says whether some contact, or some part of a ring, would have to pull.
   *
   * @param forces normal forces of all contacts, N
   * @return true if the forces are not those of a state of rest
   */
  boolean anyLifted(double[] forces) {
    for (int i = 0; i < constant.length; i++) {
      if (forces[i] < 0) {
        return true;
      }
      if (reach[i] > 0) {
        if (RingLoad.least(forces[i], forces[i + 1], forces[i + 2]) < 0) {
          return true;
        }
        i += 2;
      }
    }
    return false;
  }

  @Override
  public String toString() {
    return Arrays.toString(constant);
  }
}
