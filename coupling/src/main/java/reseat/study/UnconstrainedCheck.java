package reseat.study;

import java.util.List;
import reseat.check.Finding;
import reseat.equilibrium.ConstraintQuality;

/**
 * A coupling whose contacts are not six or leave a motion free, so that forces have no one answer.
 *
 * @param stated the coupling and what its file says beside it
 * @param constraint which motions are held
 * @param findings what is wrong, worst first
 */
public record UnconstrainedCheck(
    StatedDesign stated, ConstraintQuality constraint, List<Finding> findings)
    implements CheckResult {

  /** Puts the findings in order. */
  public UnconstrainedCheck {
    findings = Finding.worstFirst(findings);
  }

  @Override
  public <T> T accept(Visitor<T> visitor) {
    return visitor.unconstrained(this);
  }
}
