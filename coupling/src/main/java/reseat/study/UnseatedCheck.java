package reseat.study;

import java.util.List;
import reseat.check.Finding;
import reseat.equilibrium.ConstraintQuality;
import reseat.equilibrium.Equilibrium;

/**
 * A coupling some of whose contacts are not pressed by preload and weight.
 *
 * @param stated the coupling and what its file says beside it
 * @param constraint which motions are held
 * @param standing contact forces under preload and weight; not a state of rest, since some would
 *     have to pull
 * @param findings what is wrong, worst first
 */
public record UnseatedCheck(
    StatedDesign stated, ConstraintQuality constraint, Equilibrium standing, List<Finding> findings)
    implements CheckResult {

  /** Puts the findings in order. */
  public UnseatedCheck {
    findings = Finding.worstFirst(findings);
  }

  @Override
  public <T> T accept(Visitor<T> visitor) {
    return visitor.unseated(this);
  }
}
