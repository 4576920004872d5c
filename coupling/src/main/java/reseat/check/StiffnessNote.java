package reseat.check;

import static reseat.check.Argument.amount;

import java.util.ArrayList;
import java.util.List;
import reseat.design.CheckKind;
import reseat.design.CouplingDesign;
import reseat.equilibrium.CouplingStiffness;
import reseat.equilibrium.Equilibrium;
import reseat.space.Vec3;

/**
 * What makes the tool point soft.
 *
 * <p>Advice on the softest machine axis and the springs that give most, and where ball mountings
 * give more than {@value #MOUNTINGS} of it, for then the studs and not the contacts decide the
 * stiffness (common practice, no source).
 */
public final class StiffnessNote {

  /** Part of the give that ball mountings may have. */
  public static final double MOUNTINGS = 0.5;

  private StiffnessNote() {}

  /**
   * Looks at the softest axis.
   *
   * @param standing the coupling at rest
   * @param frictionless its stiffness if contacts slide freely
   * @return one finding, and one more if mountings give most
   */
  public static List<Finding> of(Equilibrium standing, CouplingStiffness frictionless) {
    CouplingDesign design = standing.model().design();
    Vec3 tool = standing.placeOf(design.toolPoint());
    int softest = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < 3; i++) {
      double k = frictionless.stiffnessAlong(tool, design.axes().axis(i).direction());
      if (k < least * (1 - 1e-9)) {
        least = k;
        softest = i;
      }
    }
    List<CouplingStiffness.Share> shares =
        frictionless.shares(tool, design.axes().axis(softest).direction());
    CouplingStiffness.Share most = shares.get(0);
    double mountings = 0;
    for (CouplingStiffness.Share s : shares) {
      if (s.share() > most.share() + 1e-9) {
        most = s;
      }
      if (s.mounting()) {
        mountings += s.share();
      }
    }
    String axis = design.axes().axis(softest).name();
    List<Finding> found = new ArrayList<>();
    if (mountings > MOUNTINGS) {
      found.add(
          Finding.advice(
              CheckKind.STIFFNESS,
              Subject.axis(axis),
              mountings,
              MOUNTINGS,
              Measure.SHARE,
              Statement.of(
                  Said.MOUNTINGS_GIVE,
                  amount(Measure.SHARE, mountings),
                  amount(Measure.SHARE, MOUNTINGS),
                  axis),
              Statement.of(Said.SHORTEN_STUDS)));
    }
    found.add(
        Finding.advice(
            CheckKind.STIFFNESS,
            Subject.axis(axis),
            least,
            0,
            Measure.STIFFNESS,
            Statement.of(
                Said.SOFTEST_AXIS,
                axis,
                amount(Measure.STIFFNESS, least),
                most.name(),
                most.mounting() ? Subject.Kind.SUPPORT : Subject.Kind.CONTACT,
                amount(Measure.SHARE, most.share())),
            Statement.NOTHING));
    return found;
  }
}
