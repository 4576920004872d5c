package reseat.study;

import java.util.List;
import reseat.check.Finding;
import reseat.check.Verdict;
import reseat.design.CouplingDesign;
import reseat.equilibrium.ConstraintQuality;

/**
 * What came of looking at a design: as much as its state allows.
 *
 * <p>A coupling that does not constrain the holder has no contact forces; one whose contacts do not
 * all press has forces but no state of rest; only a seated one has stiffness, frequencies and
 * answers to its load cases.
 */
public sealed interface CheckResult permits UnconstrainedCheck, UnseatedCheck, SeatedCheck {

  /**
   * Returns the design and what its file says beside it.
   *
   * @return what was looked at
   */
  StatedDesign stated();

  /**
   * Returns the design.
   *
   * @return the coupling looked at
   */
  default CouplingDesign design() {
    return stated().design();
  }

  /**
   * Returns its constraint.
   *
   * @return which motions are held, and how evenly
   */
  ConstraintQuality constraint();

  /**
   * Returns what was found.
   *
   * @return findings, worst first; at least one
   */
  List<Finding> findings();

  /**
   * Returns the verdict.
   *
   * @return what the findings come to
   */
  default Verdict verdict() {
    return Verdict.of(findings());
  }

  /**
   * Says whether every check holds.
   *
   * @return true if no finding is a failure and none is left to be decided
   */
  default boolean holds() {
    return verdict() == Verdict.HOLDS;
  }

  /**
   * Calls the visitor's method for this kind of result.
   *
   * @param visitor the visitor
   * @param <T> what the visitor returns
   * @return its answer
   */
  <T> T accept(Visitor<T> visitor);

  /**
   * One method per kind of result.
   *
   * @param <T> what the visitor returns
   */
  interface Visitor<T> {
    /**
     * Visits a coupling that does not constrain the holder, or constrains it more than once.
     *
     * @param result the result
     * @return the answer
     */
    T unconstrained(UnconstrainedCheck result);

    /**
     * Visits a coupling that preload and weight do not seat.
     *
     * @param result the result
     * @return the answer
     */
    T unseated(UnseatedCheck result);

    /**
     * Visits a seated coupling.
     *
     * @param result the result
     * @return the answer
     */
    T seated(SeatedCheck result);
  }
}
