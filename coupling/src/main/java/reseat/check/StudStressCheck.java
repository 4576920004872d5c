package reseat.check;

import static reseat.check.Argument.amount;

import java.util.Optional;
import reseat.ballmount.BondJoint;
import reseat.ballmount.StudCompliance;
import reseat.check.Finding.Sense;
import reseat.design.CheckKind;
import reseat.design.StudMount;
import reseat.material.MaterialValue;

/**
 * Whether the neck of a ball stud bears its loads.
 *
 * <p>The stress is the plain sum of axial stress and bending at the foot of the neck; a sharp
 * corner there can double it.
 */
public final class StudStressCheck {

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
    String under = "";
    BondJoint.Load stays = loads.sustained();
    double stress = mount.stud().neckStress(stays.pull(), stays.lateral());
    for (StudLoads.Peak p : loads.peaks()) {
      double s = mount.stud().neckStress(p.load().pull(), p.load().lateral());
      if (s > stress) {
        stress = s;
        under = p.name();
      }
    }
    StudCompliance give = mount.stud().compliance();
    Argument sideways = amount(Measure.STIFFNESS, give.lateralStiffness());
    Argument along = amount(Measure.STIFFNESS, give.axialStiffness());
    Argument found = amount(Measure.PRESSURE, stress);
    String material = mount.material().name();
    Optional<MaterialValue> yield = mount.material().flowStrength();
    if (yield.isEmpty()) {
      return Finding.advice(
          CheckKind.BALL_STUD,
          Subject.support(where),
          stress,
          0,
          Measure.PRESSURE,
          Statement.of(Said.STUD_STRESS_UNJUDGED, where, sideways, along, found, under, material),
          Statement.of(Said.STATE_YIELD));
    }
    double limit = yield.get().nominal();
    Judged judged = Judged.by(stress, limit, Sense.AT_MOST, LimitBasis.STRENGTH);
    return new Finding(
        CheckKind.BALL_STUD,
        judged,
        Subject.support(where),
        stress,
        limit,
        Sense.AT_MOST,
        LimitBasis.STRENGTH,
        Measure.PRESSURE,
        Statement.of(
            Said.STUD_STRESS,
            where,
            sideways,
            along,
            found,
            under,
            amount(Measure.SHARE, stress / limit),
            amount(Measure.PRESSURE, limit),
            material),
        judged == Judged.HOLDS ? Statement.NOTHING : Statement.of(Said.THICKEN_NECK));
  }
}
