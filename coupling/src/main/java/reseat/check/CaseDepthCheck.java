package reseat.check;

import java.util.ArrayList;
import java.util.List;
import reseat.check.Finding.Sense;
import reseat.contact.ContactLimits;
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
  public static final double FACTOR = 3;

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
    double needed = FACTOR * deepest;
    Severity severity =
        s.caseDepth() < deepest
            ? Severity.FAIL
            : s.caseDepth() < needed ? Severity.WARNING : Severity.OK;
    return new Finding(
        "case depth",
        severity,
        s.name(),
        s.caseDepth(),
        needed,
        Sense.AT_LEAST,
        Measure.LENGTH,
        Sentence.of(
            "the hard layer of ",
            s.name(),
            " is ",
            Measure.LENGTH.amount(s.caseDepth()),
            " deep; the greatest shear lies at ",
            Measure.LENGTH.amount(deepest),
            ", and three times that is wanted: ",
            Measure.LENGTH.amount(needed),
            "."),
        severity == Severity.OK
            ? Sentence.NONE
            : Sentence.of(
                "Harden deeper, to at least ",
                Measure.LENGTH.amount(needed),
                ", or take a through-hardened insert."));
  }
}
