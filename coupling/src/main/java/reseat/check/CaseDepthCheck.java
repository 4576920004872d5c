package reseat.check;

import static reseat.check.Argument.amount;

import java.util.ArrayList;
import java.util.List;
import reseat.check.Finding.Sense;
import reseat.contact.ContactLimits;
import reseat.design.CheckKind;
import reseat.design.Support;
import reseat.equilibrium.CaseResponse;
import reseat.equilibrium.Equilibrium;

/**
 * Whether the hard layer of a case-hardened or plated seat is deep enough.
 *
 * <p>The greatest shear lies below the surface; the layer should reach {@value #FACTOR} times as
 * deep (common practice, no source). A layer that does not even reach the shear fails.
 */
public final class CaseDepthCheck {

  /** Depth of the layer over that of the greatest shear. */
  public static final double FACTOR = ContactLimits.CASE_FACTOR;

  private CaseDepthCheck() {}

  /**
   * Judges the layers.
   *
   * @param standing the coupling at rest
   * @param cases its responses to the load cases
   * @param limits limits of each contact, ball first, seat second
   * @return the worst contact of each support that has a layer
   */
  public static List<Finding> of(
      Equilibrium standing, List<CaseResponse> cases, List<ContactLimits> limits) {
    List<Finding> found = new ArrayList<>();
    int first = 0;
    for (Support s : standing.model().design().supports()) {
      int next = first + s.seat().contacts();
      if (Double.isFinite(s.caseDepth())) {
        double deepest = 0;
        for (int i = first; i < next; i++) {
          double force = WorstLoad.of(standing, cases, i).force();
          deepest =
              Math.max(deepest, limits.get(i).maxShearDepth(ContactLimits.Body.SECOND, force));
        }
        found.add(finding(s, deepest));
      }
      first = next;
    }
    return found;
  }

  private static Finding finding(Support s, double deepest) {
    double wanted = FACTOR * deepest;
    boolean shallow = s.caseDepth() < deepest;
    double limit = shallow ? deepest : wanted;
    LimitBasis basis = shallow ? LimitBasis.STRENGTH : LimitBasis.COMMON_PRACTICE;
    Judged judged = Judged.by(s.caseDepth(), limit, Sense.AT_LEAST, basis);
    return new Finding(
        CheckKind.CASE_DEPTH,
        judged,
        Subject.support(s.name()),
        s.caseDepth(),
        limit,
        Sense.AT_LEAST,
        basis,
        Measure.LENGTH,
        Statement.of(
            Said.CASE_DEPTH,
            s.name(),
            amount(Measure.LENGTH, s.caseDepth()),
            amount(Measure.LENGTH, deepest),
            amount(Measure.LENGTH, wanted)),
        Statement.NOTHING);
  }
}
