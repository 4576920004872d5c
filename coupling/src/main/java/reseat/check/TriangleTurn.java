package reseat.check;

import java.util.List;
import reseat.design.CouplingDesign;
import reseat.design.LoadCase;
import reseat.design.Support;
import reseat.equilibrium.ContactLines;
import reseat.equilibrium.Equilibrium;
import reseat.equilibrium.LiftOff;
import reseat.space.Pose;
import reseat.space.Vec3;
import reseat.space.Wrench;

/**
 * Whether it would help to turn the supports as a whole, tool and loads staying where they are.
 *
 * <p>Which way the triangle of balls points often matters more than its size. Tried are turns about
 * the line along z through the middle of the balls in steps of 30 degrees; the best is the one for
 * which the worst load case comes nearest to, or farthest past, the factor wanted of it.
 */
final class TriangleTurn {

  private static final int STEPS = 12;

  /** Gain in the worst case from which a turn is worth saying. */
  private static final double WORTHWHILE = 1.2;

  private final Equilibrium standing;
  private final Vec3 middle;
  private final double angle;
  private final boolean helps;

  private TriangleTurn(Equilibrium standing, Vec3 middle, double angle, boolean helps) {
    this.standing = standing;
    this.middle = middle;
    this.angle = angle;
    this.helps = helps;
  }

  /**
   * Finds the best turn.
   *
   * @param standing the coupling at rest, with at least one load case
   * @return the turn
   */
  static TriangleTurn best(Equilibrium standing) {
    Vec3 middle = Vec3.ZERO;
    List<Support> supports = standing.model().design().supports();
    for (Support s : supports) {
      middle = middle.plus(s.ball().centre().times(1.0 / supports.size()));
    }
    double now = 0;
    double best = 0;
    double bestAngle = 0;
    for (int step = 0; step < STEPS; step++) {
      // 0, +30, -30, +60, ...: of equal turns the smallest is kept
      double angle = (step + 1) / 2 * (step % 2 == 0 ? -1 : 1) * 2 * Math.PI / STEPS;
      double worst = Double.POSITIVE_INFINITY;
      for (LoadCase c : standing.model().design().cases()) {
        double wanted = c.wantedFactor(standing.model().design().targets().liftOffFactor());
        worst = Math.min(worst, factor(standing, middle, angle, c) / wanted);
      }
      if (step == 0) {
        now = worst;
        best = worst;
      } else if (worst > best * (1 + 1e-9)) {
        best = worst;
        bestAngle = angle;
      }
    }
    return new TriangleTurn(standing, middle, bestAngle, best > WORTHWHILE * now);
  }

  /** Turning the supports one way is turning the loads the other way. */
  private static double factor(Equilibrium standing, Vec3 middle, double angle, LoadCase c) {
    CouplingDesign design = standing.model().design();
    ContactLines lines = standing.lines();
    Pose back = Pose.of(new Vec3(0, 0, -angle), Vec3.ZERO);
    return new LiftOff(lines, turned(design.standingLoad(), middle, back))
        .factor(turned(c.load(), middle, back))
        .factor();
  }

  private static Wrench turned(Wrench load, Vec3 middle, Pose turn) {
    Wrench w = load.movedTo(middle);
    return new Wrench(turn.rotate(w.force()), turn.rotate(w.moment()), middle);
  }

  /**
   * Says whether a turn is worth saying.
   *
   * @return true if the worst case gains markedly
   */
  boolean helps() {
    return helps;
  }

  /**
   * Returns the turn.
   *
   * @return angle about z, rad
   */
  double angle() {
    return angle;
  }

  /**
   * Returns what a case's factor would be after the turn.
   *
   * @param c the case
   * @return lift-off factor
   */
  double factor(LoadCase c) {
    return factor(standing, middle, angle, c);
  }
}
