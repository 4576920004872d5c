package reseat.making;

import java.util.ArrayList;
import java.util.List;
import reseat.check.Argument;
import reseat.check.Finding;
import reseat.check.Finding.Sense;
import reseat.check.Judged;
import reseat.check.LimitBasis;
import reseat.check.Measure;
import reseat.check.Said;
import reseat.check.Statement;
import reseat.check.Subject;
import reseat.design.CheckKind;

/** Whether the gaps that a design states are wide enough for nothing but the contacts to touch. */
public final class ClearanceCheck {

  private ClearanceCheck() {}

  /**
   * Judges the gaps.
   *
   * @param clearances room of what must not touch
   * @return one finding per gap that is stated
   */
  public static List<Finding> of(List<Clearance> clearances) {
    List<Finding> found = new ArrayList<>();
    for (Clearance c : clearances) {
      if (c.place().gap().isPresent()) {
        found.add(finding(c, c.place().gap().getAsDouble()));
      }
    }
    return found;
  }

  private static Finding finding(Clearance c, double gap) {
    double least = c.leastGap();
    Judged judged = Judged.by(gap, least, Sense.AT_LEAST, LimitBasis.MECHANICS);
    return new Finding(
        CheckKind.CLEARANCE,
        judged,
        new Subject(Subject.Kind.GAP, c.place().name()),
        gap,
        least,
        Sense.AT_LEAST,
        LimitBasis.MECHANICS,
        Measure.LENGTH,
        Statement.of(
            Said.GAP,
            c.place().name(),
            Argument.amount(Measure.LENGTH, gap),
            Argument.computed(Measure.LENGTH, least)),
        Statement.NOTHING);
  }
}
