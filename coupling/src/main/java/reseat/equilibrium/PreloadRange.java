package reseat.equilibrium;

import reseat.design.CouplingDesign;
import reseat.design.Preload;
import reseat.space.Wrench;

/**
 * How much preload a coupling needs, and how much it may have.
 *
 * <p>Six frictionless contacts share loads in proportion, so with all preloads scaled alike by p
 * each contact carries weight + p preload + load: the scale at which a contact reaches any given
 * force follows in closed form. Not for use by several threads.
 */
public final class PreloadRange {

  private final ForceBalance balance;
  private final ContactPlaces places;
  private final double preload;
  private final double[] perPreload;
  private final double[] weight;

  private PreloadRange(ContactLines lines, CouplingDesign design) {
    this.balance = new ForceBalance(lines);
    this.places = ContactPlaces.of(lines);
    this.perPreload = balance.forces(design.preload());
    this.weight = balance.forces(design.weight());
    double sum = 0;
    for (Preload p : design.preloads()) {
      sum += p.force();
    }
    this.preload = sum;
  }

  /**
   * Prepares the question.
   *
   * @param standing the coupling at rest
   * @return the range
   */
  public static PreloadRange of(Equilibrium standing) {
    return new PreloadRange(standing.lines(), standing.model().design());
  }

  /**
   * Returns the present preload.
   *
   * @return sum of the sizes of all preloads, N
   */
  public double preload() {
    return preload;
  }

  /**
   * Says whether the preloads press a contact.
   *
   * @param contact index of the contact
   * @return false if they pull it open or leave it alone; on a third of a ring, anywhere on it
   */
  public boolean presses(int contact) {
    for (int i = 0; i < places.size(); i++) {
      if (places.contact(i) == contact && !(places.force(i, perPreload) > 0)) {
        return false;
      }
    }
    return true;
  }

  /**
   * Finds the least preload with which a load can grow so many times before a contact opens.
   *
   * @param load the load
   * @param factor how many times it must be bearable
   * @return scale of all preloads, not negative; infinite if no size of these preloads does it
   */
  public double leastPreload(Wrench load, double factor) {
    double[] change = balance.forces(load);
    double least = 0;
    for (int i = 0; i < places.size(); i++) {
      double lacking = -places.force(i, weight) - factor * places.force(i, change);
      if (lacking > 0) {
        double pressed = places.force(i, perPreload);
        least = pressed > 0 ? Math.max(least, lacking / pressed) : Double.POSITIVE_INFINITY;
      }
    }
    return least;
  }

  /**
   * Finds the greatest preload with which a contact carries no more than a force at rest.
   *
   * @param contact index of the contact; on a third of a ring the force holds everywhere on it
   * @param force N
   * @return scale of all preloads; negative if weight alone exceeds the force, infinite if the
   *     preloads do not press the contact
   */
  public double mostPreload(int contact, double force) {
    return most(contact, force, new double[weight.length]);
  }

  /**
   * Finds the greatest preload with which no contact carries more than its force.
   *
   * @param forces greatest force of each contact, N; infinite where there is none
   * @param load load on top of preload and weight; null at rest
   * @return scale of all preloads; negative or infinite as for one contact
   */
  double mostPreload(double[] forces, Wrench load) {
    double[] change = load == null ? new double[weight.length] : balance.forces(load);
    double most = Double.POSITIVE_INFINITY;
    for (int contact = 0; contact < forces.length; contact++) {
      if (!Double.isInfinite(forces[contact])) {
        most = Math.min(most, most(contact, forces[contact], change));
      }
    }
    return most;
  }

  private double most(int contact, double force, double[] change) {
    double most = Double.POSITIVE_INFINITY;
    for (int i = 0; i < places.size(); i++) {
      double pressed = places.force(i, perPreload);
      if (places.contact(i) == contact && pressed > 0) {
        double spare = force - places.force(i, weight) - places.force(i, change);
        most = Math.min(most, spare / pressed);
      }
    }
    return most;
  }

  /**
   * Finds the greatest preload with which a contact carries no more than a force under a load.
   *
   * @param contact index of the contact
   * @param force N
   * @param load load on top of preload and weight
   * @return scale of all preloads; negative if weight and load alone exceed the force, infinite if
   *     the preloads do not press the contact
   */
  public double mostPreload(int contact, double force, Wrench load) {
    return most(contact, force, balance.forces(load));
  }
}
