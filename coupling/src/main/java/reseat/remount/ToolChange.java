package reseat.remount;

import java.util.ArrayList;
import java.util.List;
import reseat.design.CouplingDesign;
import reseat.design.Half;
import reseat.design.LoadCase;
import reseat.design.Preload;
import reseat.design.Support;
import reseat.elementary.Elementary;
import reseat.equilibrium.ContactGeometry;
import reseat.equilibrium.ContactLines;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.NoEquilibriumException;
import reseat.space.Vec3;
import reseat.space.Wrench;

/**
 * One mounting from the last slide to the full preload, and what may follow it.
 *
 * <p>All positions are told against the frictionless state of rest under nominal preload and
 * weight. Storage is reused; not for use by several threads.
 */
final class ToolChange {

  private static final int N = 6;

  /** Load steps up, and as many down, when a cutting load comes and goes. */
  private static final int CUT_STEPS = 8;

  final ToolChangeDraw draw;

  /** Shift of the tool point, coupling frame, m. */
  final double[] shift = new double[3];

  /** Rotation of the holder against its nominal attitude, coupling frame, rad. */
  final double[] rotation = new double[3];

  /** Further shift of the tool point once the cutting load has come and gone, m. */
  final double[] afterCut = new double[3];

  /** Further shift of the tool point once the preload was let go and applied again, m. */
  final double[] afterReclamp = new double[3];

  private final CouplingDesign design;
  private final ContactGeometry nominal;
  private final FrictionEquilibrium mechanics;
  private final double[] weight = new double[N];
  private final double[] cut = new double[N];
  private final boolean cuts;
  private final boolean reclamps;
  private final double firstShare;
  private final int rampSteps;
  private final double[] reference = new double[3];
  private final double[] referenceTurn = new double[3];
  private final double[] load = new double[N];
  private final double[] guess;

  /** Expansion of the ball or the pins of each support, whichever the holder carries, 1/K. */
  private final double[] expansion;

  private final double[] ownGrowth;
  private final double[] now = new double[3];

  /**
   * Prepares mountings of a design.
   *
   * @param model the coupling, six contacts
   * @param cutCase cutting load that comes and goes after mounting; null for none
   * @param reclamps whether the preload is let go and applied again
   * @throws NoEquilibriumException if there is no frictionless state of rest
   */
  ToolChange(CouplingModel model, LoadCase cutCase, boolean reclamps) {
    design = model.design();
    nominal = model.geometry();
    if (nominal.contactCount() != N) {
      throw NoEquilibriumException.ofContacts("a tool change", nominal.contactCount());
    }
    mechanics = new FrictionEquilibrium(model);
    guess = new double[mechanics.motionSize()];
    expansion = expansion(design);
    ownGrowth = new double[expansion.length];
    flatten(design.weight(), weight);
    cuts = cutCase != null;
    if (cuts) {
      flatten(cutCase.load(), cut);
    }
    this.reclamps = reclamps;
    double total = 0;
    for (Preload p : design.preloads()) {
      total += p.force();
    }
    firstShare = total > 0 ? Math.min(1, design.remount().seatingForce() / total) : 1;
    draw = new ToolChangeDraw(design, straightHome(ContactLines.nominal(design)));
    var standing = model.standing();
    rampSteps = design.preloads().isEmpty() ? 0 : RampSteps.of(design);
    put(standing.displacementOf(design.toolPoint()), reference);
    put(standing.holderInBase().rotationVector(), referenceTurn);
  }

  private static double[] expansion(CouplingDesign design) {
    double holder = design.remount().holderExpansion();
    double[] own = new double[design.supports().size()];
    for (int b = 0; b < own.length; b++) {
      Support s = design.supports().get(b);
      own[b] = design.ballsOn() == Half.HOLDER ? s.ballExpansion(holder) : s.pinExpansion(holder);
    }
    return own;
  }

  /** Closing rates when the holder comes along the standing load, all contacts at once. */
  private double[] straightHome(ContactLines lines) {
    Vec3 way = design.standingLoad().force();
    List<Double> rates = new ArrayList<>();
    for (ContactLines.Line line : lines.lines()) {
      rates.add(way.norm() == 0 ? 1 : -line.push().dot(way.unit()));
    }
    double[] closing = new double[N];
    for (int i = 0; i < N; i++) {
      closing[i] = Math.max(rates.get(i), 1e-9);
    }
    return closing;
  }

  private static void flatten(Wrench wrench, double[] out) {
    Wrench w = wrench.movedTo(Vec3.ZERO);
    for (int k = 0; k < 3; k++) {
      out[k] = w.force().component(k);
      out[k + 3] = w.moment().component(k);
    }
  }

  private static void put(Vec3 v, double[] out) {
    out[0] = v.x();
    out[1] = v.y();
    out[2] = v.z();
  }

  /** Shift of the tool point by the last mounting, along the machine axes, m. */
  Vec3 toolShiftInMachineAxes() {
    return design.axes().of(new Vec3(shift[0], shift[1], shift[2]));
  }

  /** Contact that ended the last mounting badly; -1 if none did. */
  int failedContact() {
    return mechanics.failedContact();
  }

  /**
   * Mounts the holder with the present draw.
   *
   * @return HELD, or why the mounting failed
   */
  FrictionEquilibrium.Outcome run() {
    double growth = design.remount().holderExpansion() * draw.temperature;
    mechanics.state.geometry.copyFrom(nominal);
    if (draw.temperature != 0) {
      for (int b = 0; b < expansion.length; b++) {
        ownGrowth[b] = expansion[b] * draw.temperature;
      }
      mechanics.state.geometry.growHolder(growth, ownGrowth);
    }
    System.arraycopy(draw.mu, 0, mechanics.state.friction.mu, 0, N);
    System.arraycopy(draw.film, 0, mechanics.state.film, 0, N);
    FrictionEquilibrium.Outcome outcome = mechanics.seat(draw.closing, loadAt(firstShare));
    if (outcome != FrictionEquilibrium.Outcome.HELD) {
      return outcome;
    }
    int steps = rampSteps;
    outcome = ramp(firstShare, 1, steps);
    if (outcome != FrictionEquilibrium.Outcome.HELD) {
      return outcome;
    }
    computeToolPoint(growth, now);
    mechanics.state.rotation(rotation);
    for (int k = 0; k < 3; k++) {
      shift[k] = now[k] - reference[k];
      rotation[k] -= referenceTurn[k];
    }
    if (cuts) {
      if (cutAndReturn() != FrictionEquilibrium.Outcome.HELD) {
        return FrictionEquilibrium.Outcome.LOST_IN_CUT;
      }
      computeToolPoint(growth, afterCut);
      further(afterCut);
    }
    if (reclamps) {
      if (ramp(1, firstShare, steps) != FrictionEquilibrium.Outcome.HELD
          || ramp(firstShare, 1, steps) != FrictionEquilibrium.Outcome.HELD) {
        return FrictionEquilibrium.Outcome.LOST_IN_RECLAMP;
      }
      computeToolPoint(growth, afterReclamp);
      further(afterReclamp);
      for (int k = 0; k < 3 && cuts; k++) {
        afterReclamp[k] -= afterCut[k];
      }
    }
    return FrictionEquilibrium.Outcome.HELD;
  }

  /** Turns a shift from the nominal place into one from where the mounting left the tool. */
  private void further(double[] position) {
    for (int k = 0; k < 3; k++) {
      position[k] -= now[k];
    }
  }

  private void computeToolPoint(double growth, double[] out) {
    Vec3 p = design.toolPoint();
    mechanics.state.displacement(
        p.x() * (1 + growth), p.y() * (1 + growth), p.z() * (1 + growth), out);
    out[0] += growth * p.x();
    out[1] += growth * p.y();
    out[2] += growth * p.z();
  }

  private double[] loadAt(double share) {
    for (int k = 0; k < N; k++) {
      load[k] = weight[k] + share * draw.preload[k];
    }
    return load;
  }

  /** Goes from one share of the preload to another in geometric steps. */
  private FrictionEquilibrium.Outcome ramp(double from, double to, int steps) {
    if (steps == 0 || from == to) {
      return FrictionEquilibrium.Outcome.HELD;
    }
    double ratio = Elementary.pow(to / from, 1.0 / steps);
    // in proportional growth every motion is the last one times the ratio to the two thirds
    double stretch = Elementary.cbrt(ratio * ratio);
    double share = from;
    boolean guessed = false;
    for (int s = 1; s <= steps; s++) {
      share = s == steps ? to : share * ratio;
      FrictionEquilibrium.Outcome outcome = mechanics.follow(loadAt(share), guessed ? guess : null);
      if (outcome != FrictionEquilibrium.Outcome.HELD && guessed) {
        outcome = mechanics.follow(loadAt(share), null);
      }
      if (outcome != FrictionEquilibrium.Outcome.HELD) {
        return outcome;
      }
      mechanics.copyMotion(guess);
      for (int k = 0; k < guess.length; k++) {
        guess[k] *= stretch;
      }
      guessed = true;
    }
    return FrictionEquilibrium.Outcome.HELD;
  }

  private FrictionEquilibrium.Outcome cutAndReturn() {
    for (int s = 1; s <= 2 * CUT_STEPS; s++) {
      double part = (s <= CUT_STEPS ? s : 2 * CUT_STEPS - s) / (double) CUT_STEPS;
      loadAt(1);
      for (int k = 0; k < N; k++) {
        load[k] += part * cut[k];
      }
      FrictionEquilibrium.Outcome outcome = mechanics.follow(load, null);
      if (outcome != FrictionEquilibrium.Outcome.HELD) {
        return outcome;
      }
    }
    return FrictionEquilibrium.Outcome.HELD;
  }
}
