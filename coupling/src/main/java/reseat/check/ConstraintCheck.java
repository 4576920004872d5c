package reseat.check;

import static reseat.check.Argument.amount;

import java.util.List;
import reseat.check.Finding.Sense;
import reseat.design.CheckKind;
import reseat.equilibrium.ConstraintQuality;

/** Whether six contacts hold six motions, and whether they hold them evenly. */
public final class ConstraintCheck {

  private static final int MOTIONS = 6;

  private ConstraintCheck() {}

  /**
   * Judges the layout.
   *
   * @param quality its constraint
   * @return findings; at least one
   */
  public static List<Finding> of(ConstraintQuality quality) {
    int free = MOTIONS - quality.rank();
    if (free > 0) {
      return List.of(freeMotion(quality, free));
    }
    if (quality.contacts() > MOTIONS) {
      return List.of(
          new Finding(
              CheckKind.CONSTRAINT,
              Judged.FAILS,
              Subject.COUPLING,
              quality.contacts(),
              MOTIONS,
              Sense.AT_MOST,
              LimitBasis.MECHANICS,
              Measure.COUNT,
              Statement.of(Said.OVER_CONSTRAINED, amount(Measure.COUNT, quality.contacts())),
              Statement.NOTHING));
    }
    return List.of(evenness(quality));
  }

  private static Finding freeMotion(ConstraintQuality quality, int free) {
    return new Finding(
        CheckKind.CONSTRAINT,
        Judged.FAILS,
        guilty(quality),
        quality.rank(),
        MOTIONS,
        Sense.AT_LEAST,
        LimitBasis.MECHANICS,
        Measure.COUNT,
        Statement.of(
            Said.MOTION_FREE,
            amount(Measure.COUNT, quality.contacts()),
            amount(Measure.COUNT, quality.rank()),
            amount(Measure.COUNT, free),
            weakest(quality)),
        Statement.NOTHING);
  }

  private static Finding evenness(ConstraintQuality quality) {
    Judged judged =
        Judged.by(
            quality.condition(), ConstraintQuality.POOR, Sense.AT_MOST, LimitBasis.COMMON_PRACTICE);
    boolean holds = judged == Judged.HOLDS;
    Argument found = amount(Measure.FACTOR, quality.condition());
    Argument limit = amount(Measure.FACTOR, ConstraintQuality.POOR);
    return new Finding(
        CheckKind.CONSTRAINT,
        judged,
        guilty(quality),
        quality.condition(),
        ConstraintQuality.POOR,
        Sense.AT_MOST,
        LimitBasis.COMMON_PRACTICE,
        Measure.FACTOR,
        holds
            ? Statement.of(Said.ALL_HELD, found, limit)
            : Statement.of(
                quality.weakestUnique() ? Said.BARELY_HELD : Said.BARELY_HELD_SEVERAL,
                weakest(quality),
                found,
                limit),
        Statement.NOTHING);
  }

  private static Subject guilty(ConstraintQuality quality) {
    return quality.guilty().isEmpty()
        ? Subject.COUPLING
        : Subject.support(String.join(", ", quality.guilty()));
  }

  private static Statement weakest(ConstraintQuality quality) {
    return Statement.of(Said.MOTION, quality.weakest().words());
  }
}
