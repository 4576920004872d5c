package reseat.equilibrium;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.contact.BallContact;
import reseat.contact.Dent;
import reseat.design.Support;
import reseat.elementary.Elementary;
import reseat.space.Pose;
import reseat.space.Vec3;
import reseat.space.Wrench;

/**
 * A state of the coupling under one load: where the holder stands and what each contact carries.
 */
public final class Equilibrium {

  /**
   * One contact in this state.
   *
   * @param line where it pushes
   * @param hertz its elastic law along the normal
   * @param ratioLong stiffness along the long axis of the patch over the normal one, sticking
   * @param ratioShort the same along the short axis
   * @param force normal force, N, compression positive; negative where it would have to pull
   * @param approach approach of ball and seat far from the contact, m; zero if lifted
   * @param greatestForce the force; on a third of a ring the greatest anywhere on it, told as one
   *     on the whole third, N
   * @param leastForce the force; on a third of a ring the least anywhere on it, N
   * @param dent what the greatest force ever has left, if the contact flowed; approach and
   *     stiffness are then those after work-in, the approach counted from the dent
   */
  public record Contact(
      ContactLines.Line line,
      BallContact hertz,
      double ratioLong,
      double ratioShort,
      double force,
      double approach,
      double greatestForce,
      double leastForce,
      Optional<Dent> dent) {

    /**
     * An elastic contact.
     *
     * @param line where it pushes
     * @param hertz its elastic law along the normal
     * @param ratioLong stiffness along the long axis of the patch over the normal one, sticking
     * @param ratioShort the same along the short axis
     * @param force normal force, N, compression positive
     * @param approach approach of ball and seat far from the contact, m; zero if lifted
     * @param greatestForce greatest force anywhere on it, N
     * @param leastForce least force anywhere on it, N
     */
    public Contact(
        ContactLines.Line line,
        BallContact hertz,
        double ratioLong,
        double ratioShort,
        double force,
        double approach,
        double greatestForce,
        double leastForce) {
      this(
          line,
          hertz,
          ratioLong,
          ratioShort,
          force,
          approach,
          greatestForce,
          leastForce,
          Optional.empty());
    }

    /**
     * Returns the contact angle: between the flank, or the tangent plane there, and the coupling
     * plane.
     *
     * @return rad, 0 on a flat to pi/2 on an upright wall
     */
    public double angle() {
      return Elementary.acos(Math.min(1, Math.abs(line.normal().z())));
    }

    /**
     * Says whether the contact has opened.
     *
     * @return true if the force is zero or would have to pull
     */
    public boolean lifted() {
      return !(force > 0);
    }

    /**
     * Says whether the contact, or a part of it, has opened.
     *
     * @return true if the least force is zero or would have to pull
     */
    public boolean opens() {
      return !(leastForce > 0);
    }

    /**
     * Returns the greatest pressure by the elastic theory.
     *
     * @return Pa; zero if lifted; in a dent the pressure is less and nearly even
     */
    public double peakPressure() {
      return greatestForce > 0 ? hertz.peakPressure(greatestForce) : 0;
    }

    /**
     * Returns the normal stiffness.
     *
     * @return dN/dδ, N/m; zero if lifted
     */
    public double normalStiffness() {
      return lifted() ? 0 : normalStiffness(force);
    }

    /**
     * Returns the normal stiffness at another force.
     *
     * @param newton the force, above zero, N
     * @return dN/dδ, N/m, after work-in
     */
    public double normalStiffness(double newton) {
      return dent.isPresent() ? dent.get().stiffness(newton) : hertz.normalStiffness(newton);
    }

    /**
     * Returns half of the length of the patch.
     *
     * @return m; of a dent, which keeps its size; zero if lifted and elastic
     */
    public double semiMajor() {
      return dent.isPresent() ? dent.get().semiMajor() : hertz.semiMajor(Math.max(0, force));
    }

    /**
     * Returns half of the width of the patch.
     *
     * @return m; of a dent, which keeps its size; zero if lifted and elastic
     */
    public double semiMinor() {
      return dent.isPresent() ? dent.get().semiMinor() : hertz.semiMinor(Math.max(0, force));
    }

    /**
     * Returns the stiffness along the long axis of the patch, the contact sticking.
     *
     * @return N/m; zero if lifted
     */
    public double tangentialStiffnessLong() {
      return lifted() ? 0 : ratioLong * normalStiffness(force);
    }

    /**
     * Returns the stiffness along the short axis of the patch, the contact sticking.
     *
     * @return N/m; zero if lifted
     */
    public double tangentialStiffnessShort() {
      return lifted() ? 0 : ratioShort * normalStiffness(force);
    }
  }

  private final CouplingModel model;
  private final Wrench load;
  private final Pose holderInBase;
  private final List<Contact> contacts;
  private final ContactLines lines;

  private Equilibrium(
      CouplingModel model,
      Wrench load,
      Pose holderInBase,
      List<Contact> contacts,
      ContactLines lines) {
    this.model = model;
    this.load = load;
    this.holderInBase = holderInBase;
    this.contacts = List.copyOf(contacts);
    this.lines = lines;
  }

  static Equilibrium of(CouplingModel model, Wrench load, EquilibriumSolver solver) {
    Pose pose = solver.holderInBase();
    ContactLines lines =
        ContactLines.of(model.design(), pose, centres(model, solver), model.flanks());
    List<Contact> contacts = new ArrayList<>();
    int third = 0;
    for (int i = 0; i < lines.lines().size(); i++) {
      ContactLines.Line line = lines.lines().get(i);
      double greatest = solver.force(i);
      double least = greatest;
      if (line.ring()) {
        int first = i - third;
        double[] n = {solver.force(first), solver.force(first + 1), solver.force(first + 2)};
        greatest = RingLoad.extreme(n, third, 1);
        least = RingLoad.extreme(n, third, -1);
        third = (third + 1) % 3;
      }
      contacts.add(
          new Contact(
              line,
              model.contacts().get(i),
              model.tangentialRatioLong(i),
              model.tangentialRatioShort(i),
              solver.force(i),
              solver.approach(i),
              greatest,
              least,
              model.dent(i)));
    }
    return new Equilibrium(model, load, pose, contacts, lines);
  }

  /** Where the balls are in the seat half, mountings given way. */
  private static List<Vec3> centres(CouplingModel model, EquilibriumSolver solver) {
    double[] perContact = new double[18];
    solver.copyCentres(perContact);
    List<Vec3> centres = new ArrayList<>();
    int contact = 0;
    for (Support s : model.design().supports()) {
      int i = 3 * contact;
      centres.add(new Vec3(perContact[i], perContact[i + 1], perContact[i + 2]));
      contact += s.seat().contacts();
    }
    return centres;
  }

  /**
   * Returns the model that was asked.
   *
   * @return the model
   */
  public CouplingModel model() {
    return model;
  }

  /**
   * Returns the load.
   *
   * @return wrench on the holder at the base's origin
   */
  public Wrench load() {
    return load;
  }

  /**
   * Returns where the holder stands.
   *
   * @return pose; the identity is the nominal place of undeformed, perfect parts
   */
  public Pose holderInBase() {
    return holderInBase;
  }

  /**
   * Returns the contacts.
   *
   * @return one per flank, support by support
   */
  public List<Contact> contacts() {
    return contacts;
  }

  /**
   * Returns the lines of action.
   *
   * @return lines at this state's pose
   */
  public ContactLines lines() {
    return lines;
  }

  /**
   * Says whether a contact has opened, so that this is not a state of rest.
   *
   * @return true if any contact would have to pull
   */
  public boolean lifted() {
    for (Contact c : contacts) {
      if (c.leastForce() < 0) {
        return true;
      }
    }
    return false;
  }

  /**
   * Returns how far the tool point has settled by the dents, which this state does not count.
   *
   * @return displacement of the tool point by the dents of all contacts, base axes, m; zero where
   *     all stay elastic
   */
  public Vec3 settled() {
    double[] depths = new double[contacts.size()];
    boolean any = false;
    for (int i = 0; i < depths.length; i++) {
      depths[i] = contacts.get(i).dent().map(Dent::depth).orElse(0.0);
      any |= depths[i] > 0;
    }
    return any
        ? lines.settled(depths).displacementOf(placeOf(model.design().toolPoint()))
        : Vec3.ZERO;
  }

  /**
   * Returns where a point of the holder stands.
   *
   * @param point nominal place of the point, m
   * @return its place in this state, base axes, m
   */
  public Vec3 placeOf(Vec3 point) {
    return holderInBase.apply(point);
  }

  /**
   * Returns how far a point of the holder stands from its nominal place.
   *
   * @param point point of the holder, m
   * @return displacement, base axes, m
   */
  public Vec3 displacementOf(Vec3 point) {
    return holderInBase.apply(point).minus(point);
  }
}
