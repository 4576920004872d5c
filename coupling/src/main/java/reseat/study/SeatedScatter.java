package reseat.study;

import java.util.Optional;
import reseat.equilibrium.CouplingModel;
import reseat.numerics.RunningCovariance;
import reseat.remount.RemountSimulation;
import reseat.space.Vec3;

/** Scatter of the tool point over a few simulated tool changes, to set one design beside others. */
public final class SeatedScatter {

  private SeatedScatter() {}

  /**
   * Simulates tool changes, always of the same luck.
   *
   * @param model the coupling
   * @param mounts how many tool changes
   * @return standard deviation of the tool point along the machine axes, m; empty if fewer than two
   *     or fewer than half of them seat, for those that do say nothing of the coupling
   */
  public static Optional<Vec3> of(CouplingModel model, int mounts) {
    RunningCovariance scatter = new RunningCovariance();
    new RemountSimulation(model).positions(1, mounts).forEach(scatter::add);
    return scatter.count() < 2 || 2 * scatter.count() < mounts
        ? Optional.empty()
        : Optional.of(scatter.standardDeviation());
  }
}
