package reseat.study;

import java.util.Optional;
import reseat.check.Finding;
import reseat.check.Measure;
import reseat.design.CheckKind;
import reseat.design.LoadCase;
import reseat.equilibrium.CaseResponse;
import reseat.equilibrium.Equilibrium;

/** Reads outputs off a check together with the limits by which it judges them. */
final class CheckedOutputs {

  private CheckedOutputs() {}

  static Optional<OutputValue> pressure(SeatedCheck check) {
    Optional<Finding> worst = tightest(check, CheckKind.CONTACT_PRESSURE, Measure.PRESSURE);
    if (worst.isPresent()) {
      return Optional.of(OutputValue.atMost(worst.get().value(), worst.get().limit()));
    }
    double most = 0;
    for (Equilibrium.Contact c : check.standing().contacts()) {
      most = Math.max(most, c.hertz().peakPressure(c.force()));
    }
    return Optional.of(OutputValue.free(most));
  }

  /** The worst finding of a check, by judgement and then by how much of its limit it uses up. */
  static Optional<Finding> tightest(SeatedCheck check, CheckKind kind, Measure measure) {
    return check.findings().stream()
        .filter(f -> f.check() == kind && f.measure() == measure)
        .findFirst();
  }

  static OutputValue liftOff(SeatedCheck check, CaseResponse r) {
    return OutputValue.atLeast(
        r.liftOff().factor(), r.wantedFactor(check.design().targets().liftOffFactor()));
  }

  static Optional<OutputValue> motion(SeatedCheck check, CaseResponse r, int axis) {
    if (r.liftsOff()) {
      return Optional.empty();
    }
    double moved = Math.abs(check.design().axes().of(r.motion().shift()).component(axis));
    return Optional.of(
        r.loadCase().demand() == LoadCase.Demand.HOLD_POSITION
            ? OutputValue.atMost(moved, check.design().targets().repeatability().limit(axis))
            : OutputValue.free(moved));
  }
}
