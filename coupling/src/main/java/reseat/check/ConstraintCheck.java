package reseat.check;

import java.util.List;
import reseat.check.Finding.Sense;
import reseat.equilibrium.ConstraintQuality;

/** Whether six contacts hold six motions, and whether they hold them evenly. */
public final class ConstraintCheck {

  private static final String CHECK = "constraint";
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
              CHECK,
              Severity.FAIL,
              "",
              quality.contacts(),
              MOTIONS,
              Sense.AT_MOST,
              Measure.COUNT,
              "over-constrained: "
                  + quality.contacts()
                  + " contacts for 6 motions, so the holder rests now on these, now on those.",
              "Take contacts away until six are left; a cone counts as a ring, a trihedral seat as"
                  + " three."));
    }
    return List.of(evenness(quality));
  }

  private static Finding freeMotion(ConstraintQuality quality, int free) {
    String motions =
        free == 1
            ? "one motion is free: " + quality.weakest().words()
            : free + " motions are free, one of them " + quality.weakest().words();
    return new Finding(
        CHECK,
        Severity.FAIL,
        String.join(", ", quality.guilty()),
        quality.rank(),
        MOTIONS,
        Sense.AT_LEAST,
        Measure.COUNT,
        quality.contacts()
            + " contacts hold only "
            + quality.rank()
            + " of 6 motions; "
            + motions
            + ".",
        quality.contacts() < MOTIONS
            ? "Add contacts: three grooves give six, and so do trihedral seat, groove and flat."
            : turn(quality, "would hold it"));
  }

  private static Finding evenness(ConstraintQuality quality) {
    boolean poor = quality.condition() > ConstraintQuality.POOR;
    String number = Measure.FACTOR.show(quality.condition());
    String limit = Measure.FACTOR.show(ConstraintQuality.POOR);
    return new Finding(
        CHECK,
        poor ? Severity.WARNING : Severity.OK,
        String.join(", ", quality.guilty()),
        quality.condition(),
        ConstraintQuality.POOR,
        Sense.AT_MOST,
        Measure.FACTOR,
        poor
            ? (quality.weakestUnique()
                    ? "all 6 motions are held, but one barely: "
                    : "all 6 motions are held, but several alike barely, one of them ")
                + quality.weakest().words()
                + " (condition number "
                + number
                + ", poor above "
                + limit
                + ")."
            : "6 contacts hold all 6 motions, condition number "
                + number
                + " (poor above "
                + limit
                + ").",
        poor ? turn(quality, "would hold it far better") : "");
  }

  private static String turn(ConstraintQuality quality, String effect) {
    if (quality.guilty().isEmpty()) {
      return "Change where the supports stand or which way they face.";
    }
    String turn =
        "turned by "
            + Measure.COUNT.show(ConstraintQuality.TRIAL_TURN_DEG)
            + " deg "
            + effect
            + ".";
    return quality.guilty().size() == 1
        ? "The groove of " + quality.guilty().get(0) + " " + turn
        : "The groove of any one of " + String.join(", ", quality.guilty()) + " " + turn;
  }
}
