package reseat.remount;

import java.util.List;
import reseat.design.CouplingDesign;
import reseat.design.RemountConditions;
import reseat.seating.SeatingPaths;
import reseat.seating.SelfSeating;

/**
 * In how many load steps the preload is put on.
 *
 * <p>A number that the design states is taken. Otherwise the nearer friction comes to where the
 * slide home stalls, the more steps: the error of a step grows with the memory of the approach,
 * which is the longer the nearer they are. See the table of steps on the theory page.
 */
public final class RampSteps {

  /** Steps where friction is far from where the slide stalls. */
  private static final int FAR = 12;

  private static final int NEAR = 96;

  /** Friction over the stalling friction from which on more steps are taken. */
  private static final double NEAR_SHARE = 0.75;

  private RampSteps() {}

  /**
   * Chooses the number of steps.
   *
   * @param design the coupling, six contacts that constrain the holder
   * @return number of load steps from the seating force to the full preload
   */
  public static int of(CouplingDesign design) {
    int stated = design.remount().rampSteps();
    if (stated != RemountConditions.AS_NEEDED) {
      return stated;
    }
    if (design.friction().nominal() == 0) {
      return FAR;
    }
    List<SelfSeating.Path> ways = SeatingPaths.lastStages(design, design.standingLoad());
    double share = design.friction().nominal() / ways.get(0).limitFriction();
    return share < NEAR_SHARE ? FAR : NEAR;
  }
}
