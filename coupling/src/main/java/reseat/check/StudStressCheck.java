package reseat.check;

import java.util.Optional;
import reseat.check.Finding.Sense;
import reseat.design.StudMount;
import reseat.material.MaterialValue;
import reseat.mount.StudCompliance;

/**
 * Whether the neck of a ball stud bears its loads.
 *
 * <p>The stress is the plain sum of axial stress and bending at the foot of the neck; a sharp
 * corner there can double it, so more than half of the yield strength warns (common practice, no
 * source).
 */
public final class StudStressCheck {

  private static final String CHECK = "ball stud";
  private static final double FAIR_PART = 0.5;

  private StudStressCheck() {}

  /**
   * Judges a stud.
   *
   * @param where name of the support
   * @param mount the stud
   * @param loads what it bears
   * @return the finding for the worst load
   */
  public static Finding of(String where, StudMount mount, StudLoads loads) {
    StudLoads.Peak worst = null;
    double stress = -1;
    for (StudLoads.Peak p : loads.all()) {
      double s = mount.stud().neckStress(p.load().pull(), p.load().lateral());
      if (s > stress) {
        stress = s;
        worst = p;
      }
    }
    Optional<MaterialValue> yield = mount.material().flowStrength();
    Sentence what =
        Sentence.of(
            "the stud of ",
            where,
            " (",
            stiffness(mount.stud().compliance()),
            ") is stressed to ",
            Measure.PRESSURE.amount(stress),
            " at the foot of its neck under ",
            worst == null ? "its load" : worst.name());
    if (yield.isEmpty()) {
      return new Finding(
          CHECK,
          Severity.NOTE,
          where,
          stress,
          0,
          Sense.AT_MOST,
          Measure.PRESSURE,
          Sentence.of(what, "; the yield strength of ", mount.material().name(), " is not known."),
          Sentence.of("State its yield strength to have it judged."));
    }
    double limit = yield.get().nominal();
    Severity severity =
        stress > limit
            ? Severity.FAIL
            : stress > FAIR_PART * limit ? Severity.WARNING : Severity.OK;
    return new Finding(
        CHECK,
        severity,
        where,
        stress,
        limit,
        Sense.AT_MOST,
        Measure.PRESSURE,
        Sentence.of(
            what,
            ", ",
            Measure.SHARE.amount(stress / limit),
            " of the yield strength of ",
            mount.material().name(),
            "."),
        severity == Severity.OK
            ? Sentence.NONE
            : Sentence.of(
                "Thicken or shorten the neck: bending stress falls with the cube of its"
                    + " diameter."));
  }

  private static Sentence stiffness(StudCompliance c) {
    return Sentence.of(
        Measure.STIFFNESS.amount(c.lateralStiffness()),
        " sideways, ",
        Measure.STIFFNESS.amount(c.axialStiffness()),
        " along");
  }
}
