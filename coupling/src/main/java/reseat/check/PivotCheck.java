package reseat.check;

import static reseat.check.Argument.amount;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import reseat.ballmount.ConePivot;
import reseat.ballmount.FluidFilmPad;
import reseat.ballmount.PivotSeat;
import reseat.check.Finding.Sense;
import reseat.contact.ContactLimits;
import reseat.contact.EllipticContact;
import reseat.contact.RingContact;
import reseat.design.CheckKind;
import reseat.design.PivotDuty;
import reseat.material.Material;
import reseat.material.MaterialValue;

/**
 * Whether the seat a ball turns in bears the force, holds the ball where it should and lets a pad
 * align itself.
 *
 * <p>The greatest pressure under any load, the load sideways included, counts. That of a point is
 * set against the limits of both bodies, that of a ring against first yield of a line contact, that
 * of a socket against the yield strength itself. A set of a point or a ring needs a decision; it
 * fails where a body cracks, where the ball sinks in like a Brinell ball, and in a socket, which
 * flows over its whole face.
 */
public final class PivotCheck {

  /** Part of the film that a tilt may take at the edge; common practice, no source. */
  private static final double FAIR_PART = 0.5;

  private PivotCheck() {}

  /**
   * Judges a seat.
   *
   * @param duty the seat
   * @param ball material of the ball
   * @param loads what the ball bears: the load that stays presses it into the seat
   * @return findings on pressure under the worst load, on how the seat holds the ball, and none on
   *     a pad
   */
  public static List<Finding> of(PivotDuty duty, Material ball, StudLoads loads) {
    Subject subject = seat(duty);
    List<Finding> found = new ArrayList<>();
    found.add(pressure(duty, ball, worst(duty.seat(), loads)));
    for (StudLoads.Peak p : loads.all()) {
      opening(duty, p).ifPresent(found::add);
    }
    if (duty.seat().overDetermined()) {
      found.add(
          Finding.advice(
              CheckKind.PIVOT_SEAT,
              subject,
              1,
              0,
              Measure.COUNT,
              Statement.of(Said.PIVOT_OVER_DETERMINED, duty.seat().words()),
              Statement.of(Said.TAKE_TRIHEDRAL)));
    }
    if (!duty.seat().locates()) {
      found.add(
          Finding.advice(
              CheckKind.PIVOT_SEAT,
              subject,
              0,
              1,
              Measure.COUNT,
              Statement.of(Said.PIVOT_BY_FRICTION, duty.seat().words()),
              Statement.of(Said.GUIDE_SIDEWAYS)));
    }
    return found;
  }

  private static Subject seat(PivotDuty duty) {
    return new Subject(Subject.Kind.PIVOT, duty.seat().words());
  }

  /** Force into the seat; none where the load draws the ball out of it. */
  private static double press(StudLoads.Peak p) {
    return Math.max(0, -p.load().pull());
  }

  private static double across(StudLoads.Peak p) {
    return Math.abs(p.load().lateral());
  }

  private static double pressure(PivotSeat seat, StudLoads.Peak p) {
    return seat.peakPressure(press(p), across(p));
  }

  private static StudLoads.Peak worst(PivotSeat seat, StudLoads loads) {
    StudLoads.Peak worst = loads.all().get(0);
    for (StudLoads.Peak p : loads.peaks()) {
      if (pressure(seat, p) > pressure(seat, worst)) {
        worst = p;
      }
    }
    return worst;
  }

  /** Whether a load takes the ball from its seat, friction apart. */
  private static Optional<Finding> opening(PivotDuty duty, StudLoads.Peak p) {
    PivotSeat seat = duty.seat();
    double opens = seat.openingForce(press(p));
    boolean drawn = p.load().pull() >= 0;
    if (!drawn && across(p) <= opens) {
      return Optional.empty();
    }
    return Optional.of(
        new Finding(
            CheckKind.PIVOT_SEAT,
            Judged.DECIDE,
            seat(duty),
            drawn ? p.load().pull() : across(p),
            drawn ? 0 : opens,
            Sense.AT_MOST,
            LimitBasis.FRICTION_RANGE,
            Measure.FORCE,
            drawn
                ? Statement.of(Said.DRAWN_OUT, p.name(), seat.words())
                : Statement.of(
                    Said.LEAVES_PIVOT,
                    p.name(),
                    seat.words(),
                    amount(Measure.FORCE, across(p)),
                    amount(Measure.FORCE, opens)),
            Statement.of(Said.PRESS_HARDER)));
  }

  private static Finding pressure(PivotDuty duty, Material ball, StudLoads.Peak worst) {
    PivotSeat seat = duty.seat();
    double pressure = pressure(seat, worst);
    OptionalDouble limit = limit(duty, ball);
    if (limit.isEmpty()) {
      return Finding.advice(
          CheckKind.PIVOT_SEAT,
          seat(duty),
          pressure,
          0,
          Measure.PRESSURE,
          Statement.of(
              Said.PIVOT_UNJUDGED,
              seat.words(),
              worst.name(),
              amount(Measure.FORCE, press(worst)),
              amount(Measure.FORCE, across(worst)),
              amount(Measure.PRESSURE, pressure),
              ball.name(),
              duty.material().name()),
          Statement.of(Said.STATE_PIVOT_YIELD));
    }
    double bears = limit.getAsDouble();
    LimitBasis basis = basis(duty, ball, pressure);
    Judged judged = Judged.by(pressure, bears, Sense.AT_MOST, basis);
    return new Finding(
        CheckKind.PIVOT_SEAT,
        judged,
        seat(duty),
        pressure,
        bears,
        Sense.AT_MOST,
        basis,
        Measure.PRESSURE,
        Statement.of(
            Said.PIVOT_PRESSURE,
            seat.words(),
            worst.name(),
            amount(Measure.FORCE, press(worst)),
            amount(Measure.FORCE, across(worst)),
            amount(Measure.PRESSURE, pressure),
            amount(Measure.SHARE, pressure / bears),
            amount(Measure.PRESSURE, bears)),
        judged == Judged.HOLDS ? Statement.NOTHING : Statement.of(Said.EASE_PIVOT));
  }

  /** By whose judgement the limit stands: a hard one where the seat is ruined. */
  private static LimitBasis basis(PivotDuty duty, Material ball, double pressure) {
    PivotSeat seat = duty.seat();
    if (seat.point().isEmpty()) {
      return seat instanceof ConePivot ? LimitBasis.FIRST_YIELD : LimitBasis.STRENGTH;
    }
    EllipticContact point = seat.point().get();
    ContactLimits limits = ContactLimits.of(point, ball, duty.material());
    return switch (limits.surface(point.forceAtPeakPressure(pressure))) {
      case ELASTIC, SETTLES, DENTS -> LimitBasis.FIRST_YIELD;
      case MAY_CRACK -> LimitBasis.BRITTLE_BOUND;
      case DENTS_FULLY, CRACKS -> LimitBasis.STRENGTH;
    };
  }

  private static OptionalDouble limit(PivotDuty duty, Material ball) {
    if (duty.seat().point().isPresent()) {
      Optional<ContactLimits.Limit> governing =
          ContactLimits.of(duty.seat().point().get(), ball, duty.material()).governing();
      return governing.isPresent()
          ? OptionalDouble.of(governing.get().peakPressure())
          : OptionalDouble.empty();
    }
    double weakest = Double.POSITIVE_INFINITY;
    for (Material m : List.of(ball, duty.material())) {
      weakest =
          Math.min(
              weakest,
              m.pressedStrength().map(MaterialValue::nominal).orElse(Double.POSITIVE_INFINITY));
    }
    boolean ring = duty.seat() instanceof ConePivot;
    return Double.isInfinite(weakest)
        ? OptionalDouble.empty()
        : OptionalDouble.of(weakest * (ring ? RingContact.FIRST_YIELD : 1));
  }

  /**
   * Judges whether a pad aligns itself and what the pivot costs in stiffness.
   *
   * @param pad the pad
   * @param tilt tilt it may keep, rad; infinite if none is stated
   * @return findings on tilt, on the edge of the film and on stiffness
   */
  public static List<Finding> pad(FluidFilmPad pad, double tilt) {
    List<Finding> found = new ArrayList<>();
    found.add(tilt(pad, tilt));
    if (pad.edgeLoss() > FAIR_PART) {
      found.add(edge(pad.edgeLoss()));
    }
    found.add(stiffness(pad));
    return found;
  }

  private static Finding tilt(FluidFilmPad pad, double allowed) {
    Subject subject = new Subject(Subject.Kind.PIVOT, "tilt");
    if (Double.isInfinite(allowed)) {
      return Finding.advice(
          CheckKind.FILM_PAD,
          subject,
          pad.heldTilt(),
          0,
          Measure.ANGLE,
          held(pad, 0, 0),
          Statement.NOTHING);
    }
    Judged judged = Judged.by(pad.heldTilt(), allowed, Sense.AT_MOST, LimitBasis.STATED);
    return new Finding(
        CheckKind.FILM_PAD,
        judged,
        subject,
        pad.heldTilt(),
        allowed,
        Sense.AT_MOST,
        LimitBasis.STATED,
        Measure.ANGLE,
        held(pad, allowed, pad.excessOver(allowed)),
        judged == Judged.HOLDS ? Statement.NOTHING : cures(pad, allowed));
  }

  private static Statement held(FluidFilmPad pad, double allowed, double excess) {
    return Statement.of(
        Said.PAD_TILT,
        amount(Measure.ANGLE, pad.heldTilt()),
        amount(Measure.LENGTH, pad.pressureOffset()),
        amount(Measure.ANGLE, allowed),
        amount(Measure.FACTOR, excess));
  }

  private static Finding edge(double edge) {
    boolean touches = edge >= 1;
    return new Finding(
        CheckKind.FILM_PAD,
        touches ? Judged.FAILS : Judged.DECIDE,
        new Subject(Subject.Kind.PIVOT, "film"),
        edge,
        touches ? 1 : FAIR_PART,
        Sense.AT_MOST,
        touches ? LimitBasis.MECHANICS : LimitBasis.COMMON_PRACTICE,
        Measure.SHARE,
        Statement.of(Said.PAD_EDGE, amount(Measure.SHARE, edge)),
        touches ? Statement.of(Said.DO_NOT_RUN) : Statement.NOTHING);
  }

  private static Finding stiffness(FluidFilmPad pad) {
    Subject subject = new Subject(Subject.Kind.PIVOT, "stiffness");
    double ratio = pad.pivotStiffness() / pad.filmStiffness();
    Statement said =
        Statement.of(
            Said.PAD_STIFFNESS,
            amount(Measure.FACTOR, ratio),
            amount(Measure.STIFFNESS, pad.pivotStiffness()),
            amount(Measure.STIFFNESS, pad.filmStiffness()),
            amount(Measure.STIFFNESS, pad.seriesStiffness()),
            amount(Measure.SHARE, pad.pivotShare()));
    return Finding.advice(
        CheckKind.FILM_PAD,
        subject,
        ratio,
        FluidFilmPad.STIFF_PIVOT,
        Measure.FACTOR,
        said,
        pad.pivotIsStiff()
            ? Statement.NOTHING
            : Statement.of(Said.PAD_CURES, FluidFilmPad.Remedy.STIFFEN_PIVOT));
  }

  /** What makes the pad align itself; its stiffness has a finding of its own. */
  private static Statement cures(FluidFilmPad pad, double tilt) {
    return Statement.of(
        Said.PAD_CURES,
        pad.remedies(tilt).stream().filter(r -> r != FluidFilmPad.Remedy.STIFFEN_PIVOT).toArray());
  }
}
