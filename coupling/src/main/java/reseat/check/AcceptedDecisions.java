package reseat.check;

import java.util.ArrayList;
import java.util.List;
import reseat.check.Finding.Sense;
import reseat.design.Acceptance;
import reseat.design.CheckKind;
import reseat.design.InputDoubt;

/**
 * Decisions that a design file has taken, laid over what was found: a soft limit that is passed no
 * further than accepted is accepted; one passed further is to be decided again; an acceptance that
 * applies to nothing is told.
 */
public final class AcceptedDecisions {

  private static final double ROUNDING = 1e-9;

  private AcceptedDecisions() {}

  /**
   * Makes findings of doubts about the input.
   *
   * @param doubts values that look like slips
   * @param accepted what the file accepts
   * @return one finding per doubt: accepted with its reason if the file confirms the value, else up
   *     for decision
   */
  public static List<Finding> doubts(List<InputDoubt> doubts, List<Acceptance> accepted) {
    List<Finding> found = new ArrayList<>();
    for (InputDoubt d : doubts) {
      boolean small = Math.abs(d.value()) < d.low();
      double limit = small ? d.low() : Double.isFinite(d.high()) ? d.high() : d.low();
      Finding finding =
          new Finding(
              CheckKind.INPUT,
              Judged.DECIDE,
              new Subject(Subject.Kind.KEY, d.key()),
              Math.abs(d.value()),
              limit,
              small ? Sense.AT_LEAST : Sense.AT_MOST,
              LimitBasis.USUAL_RANGE,
              Measure.of(d.kind()),
              Statement.of(Said.UNUSUAL_VALUE, d.key(), d.message()),
              Statement.of(Said.MEND_OR_ACCEPT, d.confirmation()));
      found.add(d.confirmedBy(accepted) ? finding.accepted(reason(d, accepted)) : finding);
    }
    return found;
  }

  private static String reason(InputDoubt d, List<Acceptance> accepted) {
    for (Acceptance a : accepted) {
      if (d.confirmedBy(List.of(a))) {
        return a.reason();
      }
    }
    throw new IllegalArgumentException("nothing confirms " + d.key());
  }

  /**
   * Lays the accepted decisions over findings.
   *
   * @param findings what was found, doubts about the input among them
   * @param accepted what the file accepts
   * @param doubts values that look like slips
   * @return the same with what is accepted marked so, and advice on what applies to nothing
   */
  public static List<Finding> over(
      List<Finding> findings, List<Acceptance> accepted, List<InputDoubt> doubts) {
    if (accepted.isEmpty()) {
      return findings;
    }
    boolean[] used = new boolean[accepted.size()];
    List<Finding> all = new ArrayList<>();
    for (Finding f : findings) {
      Finding now = f;
      for (int i = 0; i < accepted.size() && now.judged() == Judged.DECIDE; i++) {
        Acceptance a = accepted.get(i);
        if (a.check() == f.check() && f.subject().isCalled(a.where()) && compares(a, f)) {
          used[i] = true;
          now = reaches(a, f) ? f.accepted(a.reason()) : lapsed(f, a);
        }
      }
      all.add(now);
    }
    for (int i = 0; i < used.length; i++) {
      Acceptance a = accepted.get(i);
      boolean confirms = doubts.stream().anyMatch(d -> d.confirmedBy(List.of(a)));
      if (!used[i] && !confirms) {
        all.add(
            Finding.advice(
                a.check(),
                new Subject(Subject.Kind.KEY, "accepted"),
                0,
                0,
                Measure.COUNT,
                Statement.of(Said.ACCEPTANCE_UNUSED, a.check().words(), a.where()),
                Statement.NOTHING));
      }
    }
    return all;
  }

  /** A length says nothing of a force. */
  private static boolean compares(Acceptance a, Finding f) {
    return a.isShare() || Measure.of(a.kind()) == f.measure();
  }

  /** A value with a unit is compared as it is, a pure number as a part of the limit. */
  private static boolean reaches(Acceptance a, Finding f) {
    boolean asPart = a.isShare() && !f.measure().isPureNumber();
    double value = asPart ? f.value() / f.limit() : f.value();
    double room = ROUNDING * Math.abs(a.upTo());
    return f.sense() == Sense.AT_MOST ? value <= a.upTo() + room : value >= a.upTo() - room;
  }

  private static Finding lapsed(Finding f, Acceptance a) {
    boolean asPart = a.isShare() && !f.measure().isPureNumber();
    Measure measure = asPart ? Measure.SHARE : f.measure();
    Statement lapsed =
        Statement.of(
            Said.ACCEPTANCE_LAPSED,
            Argument.computed(measure, asPart ? f.value() / f.limit() : f.value()),
            Argument.amount(measure, a.upTo()));
    return new Finding(
        f.check(),
        f.judged(),
        f.subject(),
        f.value(),
        f.limit(),
        f.sense(),
        f.basis(),
        f.measure(),
        f.said(),
        lapsed);
  }
}
