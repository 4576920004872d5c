package reseat.check;

import java.util.ArrayList;
import java.util.List;
import reseat.contact.ContactLimits;
import reseat.design.Support;
import reseat.equilibrium.Equilibrium;

/** Pressure limits of every contact of a coupling. */
public final class StandingLimits {

  private StandingLimits() {}

  /**
   * Finds the limits.
   *
   * @param standing the coupling at rest
   * @return limits of each contact, ball first, seat second; contacts alike share them
   */
  public static List<ContactLimits> of(Equilibrium standing) {
    List<ContactLimits> limits = new ArrayList<>();
    List<Support> supports = standing.model().design().supports();
    for (int i = 0; i < standing.contacts().size(); i++) {
      Equilibrium.Contact c = standing.contacts().get(i);
      Support s = supports.get(c.line().ballIndex());
      int twin = twin(standing, i);
      limits.add(
          twin < i
              ? limits.get(twin)
              : ContactLimits.of(c.hertz(), s.ballMaterial(), s.seatMaterial(), s.caseDepth()));
    }
    return limits;
  }

  /** First contact of the same shape between the very same materials. */
  @SuppressWarnings("ReferenceEquality") // equal ones that are not the same only cost a little time
  private static int twin(Equilibrium standing, int contact) {
    Equilibrium.Contact c = standing.contacts().get(contact);
    List<Support> supports = standing.model().design().supports();
    Support s = supports.get(c.line().ballIndex());
    for (int i = 0; i < contact; i++) {
      Equilibrium.Contact other = standing.contacts().get(i);
      Support t = supports.get(other.line().ballIndex());
      if (other.hertz().hasShapeOf(c.hertz())
          && t.ballMaterial() == s.ballMaterial()
          && t.seatMaterial() == s.seatMaterial()
          && t.caseDepth() == s.caseDepth()) {
        return i;
      }
    }
    return contact;
  }
}
