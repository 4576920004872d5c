package reseat.check;

import java.util.ArrayList;
import java.util.List;
import reseat.check.Finding.Sense;
import reseat.mount.BondCaution;
import reseat.mount.BondJoint;

/**
 * Whether an adhesive joint bears its loads with derating, and what may go wrong with it.
 *
 * <p>A tenth of the strength of a fresh test piece is counted for load that stays and a quarter for
 * load that comes and goes (common practice), less near the softening temperature.
 */
public final class BondCheck {

  private static final String CHECK = "bond";
  private static final double FAIR_PART = 0.5;

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
    double sustained = bond.use(loads.sustained(), true);
    double use = sustained;
    String under = "the load that stays, creep counted";
    for (StudLoads.Peak p : loads.peaks()) {
      double peak = bond.use(p.load(), false);
      if (peak > use) {
        use = peak;
        under = p.name();
      }
    }
    Severity severity = use > 1 ? Severity.FAIL : use > FAIR_PART ? Severity.WARNING : Severity.OK;
    return new Finding(
        CHECK,
        severity,
        where,
        use,
        1,
        Sense.AT_MOST,
        Measure.SHARE,
        Sentence.of(
            "the bond of ",
            where,
            " uses ",
            Measure.SHARE.amount(use),
            " of its design strength under ",
            under,
            " (",
            bond.adhesive().name(),
            ", a fresh test piece of this area would break at ",
            Measure.FORCE.amount(bond.testStrength()),
            ")."),
        severity == Severity.OK
            ? Sentence.NONE
            : Sentence.of(
                "Bond a larger area, let the ball bottom on metal, or make ball and stud one"
                    + " piece."));
  }

  private static Finding caution(String where, BondJoint bond, BondCaution caution) {
    double value =
        switch (caution) {
          case GAP_STARVED, GAP_THICK -> bond.gap();
          case WARM -> bond.derating().temperatureShare(bond.adhesive(), bond.temperature());
          case HANGS_ON_ADHESIVE, CREEPS, BREAKS -> 0;
        };
    double limit =
        switch (caution) {
          case GAP_STARVED -> BondJoint.STARVED_GAP;
          case GAP_THICK -> BondJoint.THICK_GAP;
          case WARM, HANGS_ON_ADHESIVE, CREEPS, BREAKS -> 1;
        };
    boolean gap = caution == BondCaution.GAP_STARVED || caution == BondCaution.GAP_THICK;
    return new Finding(
        CHECK,
        Severity.WARNING,
        where,
        value,
        limit,
        caution == BondCaution.GAP_THICK ? Sense.AT_MOST : Sense.AT_LEAST,
        gap ? Measure.LENGTH : Measure.SHARE,
        where + ": " + uncapitalised(caution.text()),
        "");
  }

  private static String uncapitalised(String sentence) {
    return Character.toLowerCase(sentence.charAt(0)) + sentence.substring(1);
  }
}
