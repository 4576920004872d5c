package reseat.check;

import static reseat.check.Argument.amount;

import java.util.ArrayList;
import java.util.List;
import reseat.ballmount.BondCaution;
import reseat.ballmount.BondJoint;
import reseat.check.Finding.Sense;
import reseat.design.CheckKind;

/**
 * Whether an adhesive joint bears its loads with derating, and what may go wrong with it.
 *
 * <p>A tenth of the strength of a fresh test piece is counted for load that stays and a quarter for
 * load that comes and goes (common practice), less near the softening temperature.
 */
public final class BondCheck {

  private BondCheck() {}

  /**
   * Judges a joint.
   *
   * @param where name of the support
   * @param bond the joint
   * @param loads what it bears
   * @return one finding on its strength, and one for every caution on how it is made
   */
  public static List<Finding> of(String where, BondJoint bond, StudLoads loads) {
    List<Finding> found = new ArrayList<>();
    found.add(strength(where, bond, loads));
    BondJoint.Load idle = new BondJoint.Load(0, 0);
    for (BondCaution caution : bond.cautions(idle, idle)) {
      found.add(caution(where, bond, caution));
    }
    return found;
  }

  private static Finding strength(String where, BondJoint bond, StudLoads loads) {
    double use = bond.use(loads.sustained(), true);
    String under = "";
    for (StudLoads.Peak p : loads.peaks()) {
      double peak = bond.use(p.load(), false);
      if (peak > use) {
        use = peak;
        under = p.name();
      }
    }
    Judged judged = Judged.by(use, 1, Sense.AT_MOST, LimitBasis.DERATED_STRENGTH);
    return new Finding(
        CheckKind.BOND,
        judged,
        Subject.support(where),
        use,
        1,
        Sense.AT_MOST,
        LimitBasis.DERATED_STRENGTH,
        Measure.SHARE,
        Statement.of(
            Said.BOND_USE,
            where,
            amount(Measure.SHARE, use),
            under,
            bond.adhesive().name(),
            amount(Measure.FORCE, bond.testStrength())),
        judged == Judged.HOLDS ? Statement.NOTHING : Statement.of(Said.BOND_MORE));
  }

  private static Finding caution(String where, BondJoint bond, BondCaution caution) {
    return switch (caution) {
      case GAP_STARVED -> gap(where, bond, caution, BondJoint.STARVED_GAP, Sense.AT_LEAST);
      case GAP_THICK -> gap(where, bond, caution, BondJoint.THICK_GAP, Sense.AT_MOST);
      case WARM ->
          advice(
              where,
              caution,
              bond.derating().temperatureShare(bond.adhesive(), bond.temperature()),
              1);
      case HANGS_ON_ADHESIVE, CREEPS, BREAKS -> advice(where, caution, 0, 0);
    };
  }

  private static Finding gap(
      String where, BondJoint bond, BondCaution caution, double limit, Sense sense) {
    return new Finding(
        CheckKind.BOND,
        Judged.by(bond.gap(), limit, sense, LimitBasis.COMMON_PRACTICE),
        Subject.support(where),
        bond.gap(),
        limit,
        sense,
        LimitBasis.COMMON_PRACTICE,
        Measure.LENGTH,
        said(where, caution, Measure.LENGTH, bond.gap(), limit),
        Statement.NOTHING);
  }

  private static Finding advice(String where, BondCaution caution, double value, double limit) {
    return Finding.advice(
        CheckKind.BOND,
        Subject.support(where),
        value,
        limit,
        Measure.SHARE,
        said(where, caution, Measure.SHARE, value, limit),
        Statement.NOTHING);
  }

  private static Statement said(
      String where, BondCaution caution, Measure measure, double value, double limit) {
    return Statement.of(
        Said.BOND_CAUTION, where, caution, amount(measure, value), amount(measure, limit));
  }
}
