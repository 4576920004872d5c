package reseat.equilibrium;

import java.util.List;
import reseat.space.Vec3;
import reseat.space.Wrench;

/**
 * When the first contact opens.
 *
 * <p>Six frictionless contacts answer to a load in proportion, so the contact that opens first and
 * the factor follow exactly: N0 + λ ΔN = 0. A ring of contact opens on one side while its other
 * side is still pressed; it is looked at all round ({@link ContactPlaces}). Not for use by several
 * threads.
 */
public final class LiftOff {

  /** Part by which two contacts must differ for one to be called the first. */
  private static final double TIE = 1e-9;

  private final ContactLines lines;
  private final ForceBalance balance;
  private final ContactPlaces places;
  private final double[] standing;

  /**
   * Prepares the question.
   *
   * @param lines where the contacts push, with the holder at rest
   * @param standingLoad preload and weight
   * @throws ArithmeticException if the contacts do not constrain the holder
   */
  public LiftOff(ContactLines lines, Wrench standingLoad) {
    this.lines = lines;
    this.places = ContactPlaces.of(lines);
    this.balance = new ForceBalance(lines);
    this.standing = balance.forces(standingLoad);
  }

  /**
   * Which contact opens first, and when.
   *
   * @param contact name of the contact; empty if none ever opens
   * @param index index of the contact; -1 if none ever opens
   * @param factor how many times the load must grow; zero or negative if the contact is open
   *     already without it; infinite if none ever opens
   */
  public record First(String contact, int index, double factor) {}

  /**
   * Finds the load factor at which the first contact opens.
   *
   * @param load load on top of preload and weight
   * @return the contact and the factor
   */
  public First factor(Wrench load) {
    double[] change = balance.forces(load);
    int first = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < places.size(); i++) {
      double here = places.force(i, standing);
      double more = places.force(i, change);
      double factor;
      if (here <= 0) {
        factor = here < 0 ? -1 : 0;
      } else if (more < -1e-12 * here) {
        factor = -here / more;
      } else {
        continue;
      }
      // of contacts that open together but for rounding the first is named
      if (factor < least - TIE * Math.abs(factor)) {
        least = factor;
        first = i;
      }
    }
    if (first < 0) {
      return new First("", -1, Double.POSITIVE_INFINITY);
    }
    return new First(places.name(first), places.contact(first), Math.max(least, 0));
  }

  /**
   * Finds the force in a direction that opens the first contact.
   *
   * @param point where the force acts, m
   * @param direction unit vector of the force
   * @return the contact and, as factor, the force in N
   */
  public First forceAlong(Vec3 point, Vec3 direction) {
    return factor(Wrench.ofForce(direction, point));
  }

  /**
   * The smallest force that opens a contact, over all directions.
   *
   * @param contact name of the contact
   * @param force N
   * @param direction unit vector of that force on the holder
   */
  public record Weakest(String contact, double force, Vec3 direction) {}

  /**
   * Finds the direction in which the least force opens a contact.
   *
   * @param point where the force acts, m
   * @return contact, force and direction; zero force if a contact is open already
   */
  public Weakest weakest(Vec3 point) {
    List<Vec3> influence = lines.influenceOfForceAt(point);
    double[][] parts = new double[3][influence.size()];
    for (int i = 0; i < influence.size(); i++) {
      for (int k = 0; k < 3; k++) {
        parts[k][i] = influence.get(i).component(k);
      }
    }
    Weakest weakest = new Weakest("", Double.POSITIVE_INFINITY, Vec3.Z);
    for (int i = 0; i < places.size(); i++) {
      Vec3 answer =
          new Vec3(places.force(i, parts[0]), places.force(i, parts[1]), places.force(i, parts[2]));
      double size = answer.norm();
      if (size == 0) {
        continue;
      }
      double force = Math.max(0, places.force(i, standing) / size);
      if (force < weakest.force() * (1 - TIE)) {
        weakest = new Weakest(places.name(i), force, answer.times(-1 / size));
      }
    }
    return weakest;
  }
}
