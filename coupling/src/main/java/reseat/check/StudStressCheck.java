package reseat.check;

import static reseat.check.Argument.amount;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.check.Finding.Sense;
import reseat.design.CheckKind;
import reseat.design.StudMount;
import reseat.material.MaterialValue;
import reseat.mount.BondJoint;
import reseat.mount.StudCompliance;

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
    List<Object> what = new ArrayList<>();
    what.add(where);
    what.add(amount(Measure.STIFFNESS, give.lateralStiffness()));
    what.add(amount(Measure.STIFFNESS, give.axialStiffness()));
    what.add(amount(Measure.PRESSURE, stress));
    what.add(under);
    Optional<MaterialValue> yield = mount.material().flowStrength();
    if (yield.isEmpty()) {
      what.add(mount.material().name());
      return Finding.advice(
          CheckKind.BALL_STUD,
          Subject.support(where),
          stress,
          0,
          Measure.PRESSURE,
          Statement.of(Said.STUD_STRESS_UNJUDGED, what.toArray()),
          Statement.of(Said.STATE_YIELD));
    }
    double limit = yield.get().nominal();
    Judged judged = Judged.by(stress, limit, Sense.AT_MOST, LimitBasis.STRENGTH);
    what.add(amount(Measure.SHARE, stress / limit));
    what.add(amount(Measure.PRESSURE, limit));
    what.add(mount.material().name());
    return new Finding(
        CheckKind.BALL_STUD,
        judged,
        Subject.support(where),
        stress,
        limit,
        Sense.AT_MOST,
        LimitBasis.STRENGTH,
        Measure.PRESSURE,
        Statement.of(Said.STUD_STRESS, what.toArray()),
        judged == Judged.HOLDS ? Statement.NOTHING : Statement.of(Said.THICKEN_NECK));
  }
}
