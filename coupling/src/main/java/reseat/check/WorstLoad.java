package reseat.check;

import java.util.List;
import reseat.equilibrium.CaseResponse;
import reseat.equilibrium.Equilibrium;

/**
 * The load under which one contact is pressed hardest.
 *
 * @param force force on the contact, N, not negative; on a third of a ring where it is greatest
 * @param loadCase name of the load case; empty if the contact is pressed hardest at rest
 */
record WorstLoad(double force, String loadCase) {

  /**
   * Finds the load.
   *
   * @param standing the coupling at rest
   * @param cases its responses to the load cases
   * @param contact index of the contact
   * @return the worst of all
   */
  static WorstLoad of(Equilibrium standing, List<CaseResponse> cases, int contact) {
    WorstLoad worst =
        new WorstLoad(Math.max(0, standing.contacts().get(contact).greatestForce()), "");
    for (CaseResponse r : cases) {
      double force = r.state().contacts().get(contact).greatestForce();
      if (force > worst.force) {
        worst = new WorstLoad(force, r.loadCase().name());
      }
    }
    return worst;
  }
}
