package reseat.equilibrium;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.contact.BallContact;
import reseat.contact.ContactLimits;
import reseat.contact.Dent;
import reseat.design.LoadCase;
import reseat.design.Support;
import reseat.elementary.Elementary;
import reseat.material.Material;
import reseat.material.MaterialValue;
import reseat.space.Wrench;

/**
 * The dents that the greatest force ever on each contact has left: at rest, or under a load case, a
 * crash that is to be survived too.
 *
 * <p>Contacts that stay elastic cost six comparisons: under a circle nothing flows below 1.295
 * e^(0.736 nu) times the strength, less 0.3 % by which that fit is high, under any ellipse below
 * 1.4 times.
 */
final class WorkedIn {

  /** Peak pressure over strength below which no ellipse flows: 1.42 is the least of any. */
  private static final double SURELY_ELASTIC = 1.4;

  /** Part of the fit for a circle that is surely below the exact value. */
  private static final double BELOW_FIT = 0.997;

  private WorkedIn() {}

  /**
   * Finds the dents.
   *
   * @param elastic the coupling at rest, all contacts elastic
   * @return one per contact; an empty list if nothing flows, or the coupling does not rest
   */
  static List<Optional<Dent>> dents(Equilibrium elastic) {
    List<Equilibrium.Contact> contacts = elastic.contacts();
    if (elastic.lifted()) {
      return List.of();
    }
    double[] greatest = new double[contacts.size()];
    for (int i = 0; i < greatest.length; i++) {
      greatest[i] = contacts.get(i).force();
    }
    List<LoadCase> cases = elastic.model().design().cases();
    if (!cases.isEmpty()) {
      ForceBalance balance = new ForceBalance(elastic.lines());
      Wrench standing = elastic.load();
      for (LoadCase c : cases) {
        double[] under = balance.forces(standing.plus(c.load()));
        for (int i = 0; i < greatest.length; i++) {
          greatest[i] = Math.max(greatest[i], under[i]);
        }
      }
    }
    return dents(elastic, greatest);
  }

  private static List<Optional<Dent>> dents(Equilibrium elastic, double[] greatest) {
    List<Support> supports = elastic.model().design().supports();
    List<Optional<Dent>> dents = new ArrayList<>();
    ContactLimits[] limits = new ContactLimits[greatest.length];
    boolean any = false;
    for (int i = 0; i < greatest.length; i++) {
      Equilibrium.Contact c = elastic.contacts().get(i);
      Support s = supports.get(c.line().ballIndex());
      Optional<Dent> dent = Optional.empty();
      if (!c.line().ring() && mayFlow(c.hertz(), s, greatest[i])) {
        limits[i] = limits(elastic, limits, i);
        dent = limits[i].dent(greatest[i]);
      }
      any |= dent.isPresent();
      dents.add(dent);
    }
    return any ? List.copyOf(dents) : List.of();
  }

  private static boolean mayFlow(BallContact contact, Support s, double force) {
    boolean circle = contact.aspect() == 1;
    double weakest =
        Math.min(elasticTo(s.ballMaterial(), circle), elasticTo(s.seatMaterial(), circle));
    return force > 0 && contact.peakPressure(force) > weakest;
  }

  private static double elasticTo(Material m, boolean circle) {
    double ratio =
        circle ? BELOW_FIT * 1.295 * Elementary.exp(0.736 * m.elastic().poisson()) : SURELY_ELASTIC;
    return ratio * strength(m);
  }

  private static double strength(Material m) {
    return m.brittle()
        ? m.brittleFlow().orElse(Double.POSITIVE_INFINITY)
        : m.pressedStrength().map(MaterialValue::nominal).orElse(Double.POSITIVE_INFINITY);
  }

  /** Limits of a contact; contacts alike share them. */
  @SuppressWarnings("ReferenceEquality") // equal ones that are not the same only cost a little time
  private static ContactLimits limits(Equilibrium elastic, ContactLimits[] found, int contact) {
    List<Support> supports = elastic.model().design().supports();
    BallContact law = elastic.contacts().get(contact).hertz();
    Support s = supports.get(elastic.contacts().get(contact).line().ballIndex());
    for (int i = 0; i < contact; i++) {
      Support t = supports.get(elastic.contacts().get(i).line().ballIndex());
      if (found[i] != null
          && elastic.contacts().get(i).hertz().hasShapeOf(law)
          && t.ballMaterial() == s.ballMaterial()
          && t.seatMaterial() == s.seatMaterial()) {
        return found[i];
      }
    }
    return ContactLimits.of(law, s.ballMaterial(), s.seatMaterial(), s.caseDepth());
  }
}
