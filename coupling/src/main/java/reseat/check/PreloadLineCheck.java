package reseat.check;

import static reseat.check.Argument.amount;

import java.util.ArrayList;
import java.util.List;
import reseat.check.Finding.Sense;
import reseat.design.CheckKind;
import reseat.design.CouplingDesign;
import reseat.design.Preload;
import reseat.equilibrium.Equilibrium;
import reseat.equilibrium.PreloadZone;
import reseat.space.Vec3;
import reseat.space.Wrench;

/** Whether the preload's line of action may wander as far as it does before a contact opens. */
public final class PreloadLineCheck {

  /**
   * Half the side of the square in which a preload's line is followed, over the coupling radius.
   */
  private static final double WINDOW = 5;

  private PreloadLineCheck() {}

  /**
   * Follows the lines of all preloads that do not pull along the coupling plane.
   *
   * @param standing the coupling at rest
   * @return each preload with the zone its line of action must cross
   */
  public static List<Line> lines(Equilibrium standing) {
    CouplingDesign design = standing.model().design();
    List<Line> lines = new ArrayList<>();
    for (Preload p : design.preloads()) {
      Wrench others = standing.load().plus(p.load().times(-1));
      Vec3 force = p.load().force();
      // a pull along the coupling plane has no place in it where it passes
      if (Math.abs(p.direction().z()) > 0.1) {
        lines.add(
            new Line(
                p,
                PreloadZone.of(
                    standing.lines(), others, force, p.at(), WINDOW * design.couplingRadius(), 0)));
      }
    }
    return lines;
  }

  /**
   * One preload and the zone of its line of action.
   *
   * @param preload the preload
   * @param zone where its line may pass
   */
  public record Line(Preload preload, PreloadZone zone) {}

  /**
   * Judges each preload.
   *
   * @param lines preloads with the zones of their lines
   * @return one finding per preload
   */
  public static List<Finding> of(List<Line> lines) {
    List<Finding> found = new ArrayList<>();
    for (Line line : lines) {
      double margin = line.zone().margin();
      if (Double.isFinite(margin)) {
        found.add(finding(line.preload(), margin, line.zone().nearest()));
      }
    }
    return found;
  }

  private static Finding finding(Preload preload, double margin, String nearest) {
    double wander = preload.lineSpread().limit();
    boolean holds = margin > wander;
    return new Finding(
        CheckKind.PRELOAD_LINE,
        holds ? Judged.HOLDS : Judged.FAILS,
        Subject.preload(preload.name()),
        margin,
        wander,
        Sense.AT_LEAST,
        LimitBasis.MECHANICS,
        Measure.LENGTH,
        Statement.of(
            Said.PRELOAD_LINE,
            preload.name(),
            amount(Measure.LENGTH, Math.max(0, margin)),
            nearest,
            amount(Measure.LENGTH, wander)),
        Statement.NOTHING);
  }
}
