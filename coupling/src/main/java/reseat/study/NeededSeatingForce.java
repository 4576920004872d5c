package reseat.study;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import reseat.check.Depth;
import reseat.design.CouplingDesign;
import reseat.design.Preload;
import reseat.design.RemountConditions;
import reseat.elementary.Elementary;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.Equilibrium;
import reseat.equilibrium.NoEquilibriumException;
import reseat.remount.RemountPlan;
import reseat.remount.RemountSimulation;
import reseat.repeatability.SeatingDoubt;
import reseat.repeatability.ToolChangeOutlook;

/**
 * The force by hand that closes a coupling which hangs up with the one stated: against friction,
 * and on a wall or a ceiling against its weight.
 */
public final class NeededSeatingForce {

  /** No hand presses harder while it sets a holder down, N; a judgement. */
  static final double HAND = 200;

  /** Rounded values of the series R10 of ISO 3 within a decade (from memory, not read). */
  private static final double[] PREFERRED = {1, 1.25, 1.6, 2, 2.5, 3.2, 4, 5, 6.3, 8};

  /** Changes that are simulated before all of them are: a force that is too small shows soon. */
  private static final long[] FIRST = {20, 200};

  private NeededSeatingForce() {}

  /**
   * Looks for the force, and tries it. Forces that the closed form rules out are passed over.
   *
   * @param design a design of which tool changes hang up
   * @return the smallest preferred number at which, by simulated tool changes, at most one in a
   *     thousand hangs up, N; empty if none does within what a hand gives
   */
  static OptionalDouble of(CouplingDesign design) {
    double all = 0;
    for (Preload p : design.preloads()) {
      all += p.force();
    }
    for (double force : larger(design.remount().seatingForce())) {
      if (closes(design, force)) {
        return OptionalDouble.of(force);
      }
      if (force >= all) {
        break; // no hand presses harder than all preloads: every further force does the same
      }
    }
    return OptionalDouble.empty();
  }

  /**
   * Lists the forces that are looked at.
   *
   * @param now the force stated, N
   * @return preferred numbers above it within what a hand gives, N, rising
   */
  public static List<Double> larger(double now) {
    List<Double> forces = new ArrayList<>();
    for (double decade = 1e-3; decade <= HAND; decade *= 10) {
      for (double preferred : PREFERRED) {
        double force = Elementary.rint(1e6 * preferred * decade) / 1e6;
        if (force > now * (1 + 1e-9) && force <= HAND) {
          forces.add(force);
        }
      }
    }
    return forces;
  }

  private static boolean closes(CouplingDesign design, double force) {
    RemountConditions r = design.remount();
    CouplingDesign pushed =
        design.toBuilder()
            .remount(
                new RemountConditions(
                    force,
                    r.rampSteps(),
                    r.friction(),
                    r.temperature(),
                    r.film(),
                    r.holderExpansion()))
            .build();
    try {
      CouplingModel model = CouplingModel.of(pushed);
      Equilibrium standing = model.standing();
      if (SeatingDoubt.of(standing).answer() == SeatingDoubt.Answer.HANGS_UP) {
        return false;
      }
      RemountSimulation simulation = new RemountSimulation(model);
      for (long changes : FIRST) {
        if (simulation.run(RemountPlan.of(changes, 1, 1)).failed() > 0) {
          return false;
        }
      }
      return Depth.SIMULATED.of(standing).hungUpMost() <= ToolChangeOutlook.MAY_HANG_UP;
    } catch (NoEquilibriumException e) {
      return false;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("the simulation was stopped", e);
    }
  }
}
