package reseat.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import reseat.check.Finding.Sense;
import reseat.contact.ContactLimits;
import reseat.contact.RingContact;
import reseat.design.PivotDuty;
import reseat.material.Material;
import reseat.material.MaterialValue;
import reseat.mount.ConePivot;
import reseat.mount.FluidFilmPad;
import reseat.mount.PivotSeat;

/**
 * Whether the seat a ball turns in bears the force, holds the ball where it should and lets a pad
 * align itself.
 *
 * <p>The pressure of a point is set against the limits of both bodies, that of a ring against first
 * yield of a line contact, that of a socket against the yield strength itself.
 */
public final class PivotCheck {

  private static final String CHECK = "pivot seat";
  private static final String PAD = "film pad";
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
    List<Finding> found = new ArrayList<>();
    found.add(pressure(duty, ball, worst(duty.seat(), loads)));
    for (StudLoads.Peak p : loads.all()) {
      opening(duty.seat(), p).ifPresent(found::add);
    }
    if (duty.seat().overDetermined()) {
      found.add(
          new Finding(
              CHECK,
              Severity.WARNING,
              duty.seat().words(),
              1,
              0,
              Sense.AT_MOST,
              Measure.COUNT,
              duty.seat().words()
                  + " touches the ball along more than three points: unless both are round to less"
                  + " than they press together, the ball rests on two or three places that nobody"
                  + " chose.",
              "Where the place must repeat take a trihedral seat, which has three points."));
    }
    if (!duty.seat().locates()) {
      found.add(
          new Finding(
              CHECK,
              Severity.WARNING,
              duty.seat().words(),
              0,
              1,
              Sense.AT_LEAST,
              Measure.COUNT,
              duty.seat().words() + " holds the ball by friction only; it may creep sideways.",
              "Guide the part sideways by a flexure or a second ball."));
    }
    return found;
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

  private static Optional<Finding> opening(PivotSeat seat, StudLoads.Peak p) {
    double opens = seat.openingForce(press(p));
    boolean drawn = p.load().pull() >= 0;
    if (!drawn && across(p) <= opens) {
      return Optional.empty();
    }
    return Optional.of(
        new Finding(
            CHECK,
            Severity.WARNING,
            seat.words(),
            drawn ? p.load().pull() : across(p),
            drawn ? 0 : opens,
            Sense.AT_MOST,
            Measure.FORCE,
            drawn
                ? p.name() + " draws the ball out of " + seat.words() + "."
                : p.name()
                    + " has "
                    + Measure.FORCE.show(across(p))
                    + " sideways; beyond "
                    + Measure.FORCE.show(opens)
                    + " the ball begins to leave "
                    + seat.words()
                    + ", but for friction.",
            "Press harder, or take up the load elsewhere."));
  }

  private static Finding pressure(PivotDuty duty, Material ball, StudLoads.Peak worst) {
    PivotSeat seat = duty.seat();
    double pressure = pressure(seat, worst);
    OptionalDouble limit = limit(duty, ball);
    String what =
        "peak pressure in "
            + seat.words()
            + " under "
            + worst.name()
            + " ("
            + Measure.FORCE.show(press(worst))
            + (across(worst) > 0 ? " and " + Measure.FORCE.show(across(worst)) + " sideways" : "")
            + ")"
            + " is "
            + Measure.PRESSURE.show(pressure);
    if (limit.isEmpty()) {
      return new Finding(
          CHECK,
          Severity.NOTE,
          seat.words(),
          pressure,
          0,
          Sense.AT_MOST,
          Measure.PRESSURE,
          what
              + "; no strength is known for "
              + ball.name()
              + " or "
              + duty.material().name()
              + ".",
          "State a yield strength to have it judged.");
    }
    double bears = limit.getAsDouble();
    return new Finding(
        CHECK,
        pressure > bears ? Severity.FAIL : Severity.OK,
        seat.words(),
        pressure,
        bears,
        Sense.AT_MOST,
        Measure.PRESSURE,
        what
            + ", "
            + Measure.SHARE.show(pressure / bears)
            + " of "
            + Measure.PRESSURE.show(bears)
            + ", where the weaker of ball and seat is first harmed.",
        pressure > bears ? "Take a larger ball, a harder seat or less force." : "");
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
              m.flowStrength().map(MaterialValue::nominal).orElse(Double.POSITIVE_INFINITY));
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
    boolean judged = Double.isFinite(tilt);
    boolean aligns = judged && pad.alignsWithin(tilt);
    String held =
        "friction of the pivot can hold the pad "
            + Measure.ANGLE.show(pad.heldTilt())
            + " out of line (centre of pressure "
            + Measure.LENGTH.show(pad.pressureOffset())
            + " off)";
    found.add(
        new Finding(
            PAD,
            !judged ? Severity.NOTE : aligns ? Severity.OK : Severity.FAIL,
            "tilt",
            pad.heldTilt(),
            judged ? tilt : 0,
            Sense.AT_MOST,
            Measure.ANGLE,
            held
                + (judged
                    ? "; "
                        + Measure.ANGLE.show(tilt)
                        + " is allowed, "
                        + Measure.FACTOR.show(pad.excessOver(tilt))
                        + " times that is held."
                    : "; no tilt is allowed or forbidden in the file."),
            judged && !aligns ? remedies(pad, tilt) : ""));
    double edge = pad.edgeLoss();
    if (edge > FAIR_PART) {
      found.add(
          new Finding(
              PAD,
              edge >= 1 ? Severity.FAIL : Severity.WARNING,
              "film",
              edge,
              1,
              Sense.AT_MOST,
              Measure.SHARE,
              "that tilt takes "
                  + Measure.SHARE.show(edge)
                  + " of the film at the edge of the pad"
                  + (edge >= 1 ? ": it touches." : "."),
              edge >= 1 ? "Do not run the pad before this is cured." : ""));
    }
    boolean stiff = pad.pivotIsStiff();
    double ratio = pad.pivotStiffness() / pad.filmStiffness();
    found.add(
        new Finding(
            PAD,
            stiff ? Severity.OK : Severity.WARNING,
            "stiffness",
            ratio,
            FluidFilmPad.STIFF_PIVOT,
            Sense.AT_LEAST,
            Measure.FACTOR,
            "seat and stud are "
                + Measure.FACTOR.show(ratio)
                + " times as stiff as the film ("
                + Measure.STIFFNESS.show(pad.pivotStiffness())
                + " on "
                + Measure.STIFFNESS.show(pad.filmStiffness())
                + "); together "
                + Measure.STIFFNESS.show(pad.seriesStiffness())
                + ", of whose give the pivot has "
                + Measure.SHARE.show(pad.pivotShare())
                + ".",
            stiff ? "" : FluidFilmPad.Remedy.STIFFEN_PIVOT.text()));
    return found;
  }

  /** What makes the pad align itself; its stiffness has a finding of its own. */
  private static String remedies(FluidFilmPad pad, double tilt) {
    return pad.remedies(tilt).stream()
        .filter(r -> r != FluidFilmPad.Remedy.STIFFEN_PIVOT)
        .map(FluidFilmPad.Remedy::text)
        .collect(Collectors.joining(" Or: "));
  }
}
