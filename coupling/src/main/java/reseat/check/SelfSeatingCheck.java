package reseat.check;

import static reseat.check.Argument.amount;
import static reseat.check.Argument.computed;

import java.util.List;
import reseat.check.Finding.Sense;
import reseat.design.CheckKind;
import reseat.design.Friction;
import reseat.seating.SelfSeating;

/**
 * Whether the holder slides home by itself against friction.
 *
 * <p>Judged is the friction from which it can stand still half seated, set down gently; a holder
 * that is moving goes on a little further. One that can stand at less than the nominal friction
 * fails; one that can within the range of friction is up for decision.
 */
public final class SelfSeatingCheck {

  private SelfSeatingCheck() {}

  /**
   * Judges the last stage of the slide home.
   *
   * @param friction friction between balls and seats
   * @param paths ways home with one contact open, the worst first
   * @return one finding
   */
  public static List<Finding> of(Friction friction, List<SelfSeating.Path> paths) {
    SelfSeating.Path worst = SelfSeating.worstAtRest(paths);
    double moving = paths.get(0).limitFriction();
    double atRest = worst.restFriction();
    double limit = Math.min(moving, atRest);
    boolean hangs = limit < friction.nominal();
    double allowed = hangs ? friction.nominal() : friction.high();
    LimitBasis basis = hangs ? LimitBasis.MECHANICS : LimitBasis.FRICTION_RANGE;
    Judged judged = Judged.by(limit, allowed, Sense.AT_LEAST, basis);
    String open = String.join(", ", worst.open());
    return List.of(
        new Finding(
            CheckKind.SELF_SEATING,
            judged,
            Subject.contact(open),
            limit,
            allowed,
            Sense.AT_LEAST,
            basis,
            Measure.FACTOR,
            Statement.of(
                limit >= SelfSeating.GREATEST ? Said.SEATS_ALWAYS : Said.SEATS_BELOW,
                computed(Measure.FACTOR, moving),
                computed(Measure.FACTOR, atRest),
                open,
                amount(Measure.FACTOR, friction.low()),
                amount(Measure.FACTOR, friction.high())),
            Statement.NOTHING));
  }
}
