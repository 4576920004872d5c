package reseat.check;

import static reseat.check.Argument.amount;

import java.util.ArrayList;
import java.util.List;
import reseat.check.Finding.Sense;
import reseat.contact.HalfSpaceWarning;
import reseat.design.CheckKind;
import reseat.equilibrium.CaseResponse;
import reseat.equilibrium.Equilibrium;

/** Whether the contacts are small enough for the theory that their numbers come from. */
public final class HalfSpaceCheck {

  private HalfSpaceCheck() {}

  /**
   * Looks for contacts that strain the theory under any load.
   *
   * @param standing the coupling at rest
   * @param cases its responses to the load cases
   * @return the worst contact of each kind of strain; none if all is well
   */
  public static List<Finding> of(Equilibrium standing, List<CaseResponse> cases) {
    List<Finding> found = new ArrayList<>();
    for (HalfSpaceWarning.Kind kind : HalfSpaceWarning.Kind.values()) {
      HalfSpaceWarning worst = null;
      String where = "";
      for (int i = 0; i < standing.contacts().size(); i++) {
        Equilibrium.Contact c = standing.contacts().get(i);
        for (HalfSpaceWarning w :
            HalfSpaceWarning.of(c.hertz(), WorstLoad.of(standing, cases, i).force())) {
          if (w.kind() == kind && (worst == null || w.value() > worst.value())) {
            worst = w;
            where = c.line().name();
          }
        }
      }
      if (worst != null) {
        found.add(finding(worst, where));
      }
    }
    return found;
  }

  private static Finding finding(HalfSpaceWarning w, String where) {
    boolean patch = w.kind() == HalfSpaceWarning.Kind.PATCH_OVER_RADIUS;
    return new Finding(
        CheckKind.CONTACT_THEORY,
        Judged.by(w.value(), w.limit(), Sense.AT_MOST, LimitBasis.THEORY),
        Subject.contact(where),
        w.value(),
        w.limit(),
        Sense.AT_MOST,
        LimitBasis.THEORY,
        Measure.SHARE,
        Statement.of(
            patch ? Said.PATCH_OVER_RADIUS : Said.CLOSE_CONFORMITY,
            where,
            amount(Measure.SHARE, w.value()),
            amount(Measure.SHARE, w.limit())),
        Statement.NOTHING);
  }
}
