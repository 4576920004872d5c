package reseat.interchange;

import java.util.List;
import reseat.design.CouplingDesign;
import reseat.design.Half;
import reseat.design.Support;
import reseat.design.ToleranceKind;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.Equilibrium;
import reseat.seat.Ball;
import reseat.seat.SeatClearance;
import reseat.space.Pose;
import reseat.space.Vec3;
import reseat.space.Wrench;

/** What all trials of one simulation share: read only once built. */
final class SimulatedCoupling {

  /**
   * How many times the movement of a ball a clearance must be before it is taken as safe without
   * looking: on a steep or hollow flank a clearance may shrink faster than the ball moves.
   */
  private static final double SAFE = 5;

  final ToleranceModel tolerances;
  final CouplingDesign design;
  final CouplingModel model;
  final LinearStack stack;
  final double[] load;
  final double[] mounting;
  final Vec3 nominalShift;
  final Vec3 nominalRotation;

  /**
   * How far balls may move against their seats before a holder must be looked at for contacts that
   * run off their flanks and balls that bottom, m.
   */
  final double looselyWithin;

  /**
   * Prepares a coupling.
   *
   * @param tolerances the coupling with its tolerances
   * @throws reseat.equilibrium.NoEquilibriumException if the coupling as drawn finds no rest
   * @throws IllegalArgumentException if a part cannot be made at the limit of its tolerance
   */
  SimulatedCoupling(ToleranceModel tolerances) {
    this.tolerances = tolerances;
    design = tolerances.design();
    model = CouplingModel.of(design).workedIn();
    stack = new LinearStack(Sensitivity.of(tolerances));
    Wrench w = design.standingLoad().movedTo(Vec3.ZERO);
    load =
        new double[] {
          w.force().x(),
          w.force().y(),
          w.force().z(),
          w.moment().x(),
          w.moment().y(),
          w.moment().z()
        };
    mounting = model.mountingCompliances().length == 0 ? null : model.mountingCompliances();
    Equilibrium standing = model.standing();
    nominalShift = standing.displacementOf(design.toolPoint());
    nominalRotation = standing.holderInBase().rotationVector();
    checkLimits();
    looselyWithin = leastClearance(design, standing.holderInBase()) / SAFE;
  }

  private void checkLimits() {
    double[] deviations = new double[tolerances.contributors().size()];
    for (int k = 0; k < deviations.length; k++) {
      Contributor c = tolerances.contributors().get(k);
      for (int sign = -1; sign <= 1; sign += 2) {
        deviations[k] = sign * c.spread().limit();
        try {
          tolerances.made(deviations);
        } catch (IllegalArgumentException e) {
          throw new IllegalArgumentException(
              "tolerance of " + c.name() + ": at its limit, " + e.getMessage(), e);
        }
      }
      deviations[k] = 0;
    }
  }

  /**
   * Bounds how far any ball moves against its seat for one unit of each deviation: by the changed
   * part itself and by the holder's new pose.
   *
   * @return m per m, rad or K; one for each contributor
   */
  double[] movementBounds() {
    double fromCentre = 0;
    double fromSeat = 0;
    for (Support s : design.supports()) {
      Vec3 ball = s.ball().centre();
      fromCentre = Math.max(fromCentre, ball.norm());
      fromSeat = Math.max(fromSeat, ball.distanceTo(s.seat().frame().origin()));
      fromSeat = Math.max(fromSeat, s.ball().radius());
    }
    List<Sensitivity.Effect> effects = stack.sensitivity().effects();
    double[] bounds = new double[effects.size()];
    for (int k = 0; k < bounds.length; k++) {
      Sensitivity.Effect e = effects.get(k);
      if (e.contributor().kind().carrier() == ToleranceKind.Carrier.TOOL) {
        continue; // moves the tool point in its holder, no ball
      }
      Vec3 atOrigin = e.shift().minus(e.rotation().cross(design.toolPoint()));
      double own =
          switch (e.contributor().kind().measure()) {
            case LENGTH -> 1;
            case ANGLE -> 2 * fromSeat;
            case TEMPERATURE -> design.remount().holderExpansion() * fromCentre;
          };
      bounds[k] = own + atOrigin.norm() + e.rotation().norm() * fromCentre;
    }
    return bounds;
  }

  /** Least distance of any contact or ball from what it must not reach, m. */
  static double leastClearance(CouplingDesign made, Pose holderInBase) {
    double least = Double.POSITIVE_INFINITY;
    for (int b = 0; b < made.supports().size(); b++) {
      for (SeatClearance c : clearances(made, b, holderInBase)) {
        least = Math.min(least, c.distance());
      }
    }
    return least;
  }

  private static List<SeatClearance> clearances(CouplingDesign made, int b, Pose holderInBase) {
    Support s = made.supports().get(b);
    Pose ballHalfInSeatHalf = made.ballsOn() == Half.HOLDER ? holderInBase : holderInBase.inverse();
    Vec3 centre = ballHalfInSeatHalf.apply(s.ball().centre());
    return s.seat().clearances(new Ball(centre, s.ball().radius()));
  }

  /** Looks whether a holder as made bottoms or runs off a flank. */
  static Fit look(CouplingDesign made, Pose holderInBase) {
    Fit worst = Fit.FITS;
    for (int b = 0; b < made.supports().size(); b++) {
      for (SeatClearance c : clearances(made, b, holderInBase)) {
        if (!(c.distance() > 0)) {
          if (c.feature() == SeatClearance.Feature.FLOOR) {
            return Fit.BALL_BOTTOMS;
          }
          worst = Fit.OFF_FLANK;
        }
      }
    }
    return worst;
  }
}
