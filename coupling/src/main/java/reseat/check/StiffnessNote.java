package reseat.check;

import java.util.ArrayList;
import java.util.List;
import reseat.check.Finding.Sense;
import reseat.design.CouplingDesign;
import reseat.equilibrium.CouplingStiffness;
import reseat.equilibrium.Equilibrium;
import reseat.space.Vec3;

/**
 * What makes the tool point soft.
 *
 * <p>A note on the softest machine axis and the springs that give most; a warning where ball
 * mountings give more than {@value #MOUNTINGS} of it, for then the studs and not the contacts
 * decide the stiffness (common practice, no source).
 */
public final class StiffnessNote {

  /** Part of the give that ball mountings may have. */
  public static final double MOUNTINGS = 0.5;

  private static final String CHECK = "stiffness";

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
          new Finding(
              CHECK,
              Severity.WARNING,
              axis,
              mountings,
              MOUNTINGS,
              Sense.AT_MOST,
              Measure.SHARE,
              "ball mountings give "
                  + Measure.SHARE.show(mountings)
                  + " of the motion along "
                  + axis
                  + ", the contacts only the rest.",
              "Shorten or thicken the ball studs, or seat the balls in the holder itself."));
    }
    found.add(
        new Finding(
            CHECK,
            Severity.NOTE,
            axis,
            least,
            0,
            Sense.AT_LEAST,
            Measure.STIFFNESS,
            "the tool point is softest along "
                + axis
                + ", "
                + Measure.STIFFNESS.show(least)
                + " at least; "
                + most.name()
                + " gives "
                + Measure.SHARE.show(most.share())
                + " of it.",
            ""));
    return found;
  }
}
