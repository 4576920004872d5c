package reseat.check;

import java.util.List;
import reseat.check.Finding.Sense;
import reseat.design.Friction;
import reseat.remount.SelfSeating;

/**
 * Whether the holder slides home by itself against friction.
 *
 * <p>Judged is the friction from which it can stand still half seated, set down gently; a holder
 * that is moving goes on a little further. Where it can at less than the nominal friction the check
 * fails; within the range of friction it warns.
 */
public final class SelfSeatingCheck {

  private static final String CHECK = "self-seating";

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
    double limit = worst.restFriction();
    double moving = paths.get(0).limitFriction();
    Severity severity =
        limit < friction.nominal()
            ? Severity.FAIL
            : limit < friction.high() ? Severity.WARNING : Severity.OK;
    String open = String.join(" and ", worst.open());
    return List.of(
        new Finding(
            CHECK,
            severity,
            open,
            limit,
            severity == Severity.FAIL ? friction.nominal() : friction.high(),
            Sense.AT_LEAST,
            Measure.FACTOR,
            "preload and weight pull a holder at rest home up to a friction coefficient of "
                + Measure.FACTOR.showComputed(limit)
                + (limit >= SelfSeating.GREATEST ? " and beyond" : "")
                + ", worst where "
                + open
                + " closes last; a holder that is moving slides home up to "
                + Measure.FACTOR.showComputed(moving)
                + (moving >= SelfSeating.GREATEST ? " and beyond" : "")
                + "; expected is "
                + Measure.FACTOR.show(friction.low())
                + " to "
                + Measure.FACTOR.show(friction.high())
                + ".",
            severity == Severity.OK
                ? ""
                : "Oil the seats or take carbide or ceramic, stand the flanks nearer to 60 deg, or"
                    + " move the preload toward "
                    + worst.lastSeat()
                    + "; or tap it home."));
  }
}
