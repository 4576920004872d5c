package reseat.study;

import java.util.List;
import java.util.Optional;
import reseat.ballmount.AdjustingScrews;
import reseat.ballmount.FluidFilmPad;
import reseat.ballmount.GimbalFriction;
import reseat.ballmount.LockNut;
import reseat.ballmount.StudCompliance;
import reseat.ballmount.ThreadComparison;
import reseat.ballmount.ThreadStrength;
import reseat.check.Finding;
import reseat.check.StudLoads;
import reseat.check.Verdict;
import reseat.design.AssumedValue;
import reseat.design.BallMountDesign;
import reseat.design.PivotDuty;
import reseat.space.Matrix6;

/**
 * Everything about one ball mount.
 *
 * @param design the mount
 * @param loads what its stud bears
 * @param compliance give of the ball on stud and bond
 * @param threadForce axial force counted on the thread, N; zero without a thread
 * @param strength strength of the thread; empty without one, or if a strength is not known
 * @param lockNut the nut with the push of the load; empty without one
 * @param comparison the thread beside another; empty if not asked for or a strength is not known
 * @param pivot state of the seat the ball turns in; empty without one
 * @param steps what to turn, screw by screw; empty without indicators
 * @param assumed defaults that results rest on
 * @param findings what was found, worst first
 */
public record BallMountResult(
    BallMountDesign design,
    StudLoads loads,
    StudCompliance compliance,
    double threadForce,
    Optional<ThreadStrength> strength,
    Optional<LockNut> lockNut,
    Optional<ThreadComparison> comparison,
    Optional<PivotState> pivot,
    List<AdjustingScrews.Step> steps,
    List<AssumedValue> assumed,
    List<Finding> findings) {

  /**
   * A pivot seat under its force.
   *
   * @param duty the seat
   * @param force force into the seat, N
   * @param sliding stiffness while it slides; empty where it is not modelled
   * @param sticking stiffness while it sticks; empty where it is not modelled
   * @param friction its friction moments
   * @param pad the film pad it aligns; empty if there is none
   */
  public record PivotState(
      PivotDuty duty,
      double force,
      Optional<Matrix6> sliding,
      Optional<Matrix6> sticking,
      GimbalFriction friction,
      Optional<FluidFilmPad> pad) {}

  /** Copies the lists and puts the findings in order. */
  public BallMountResult {
    steps = List.copyOf(steps);
    assumed = List.copyOf(assumed);
    findings = Finding.worstFirst(findings);
  }

  /**
   * Returns the verdict.
   *
   * @return what the findings come to
   */
  public Verdict verdict() {
    return Verdict.of(findings);
  }

  /**
   * Says whether every check holds.
   *
   * @return true if no finding is a failure and none is left to be decided
   */
  public boolean holds() {
    return verdict() == Verdict.HOLDS;
  }
}
