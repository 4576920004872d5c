package reseat.check;

import java.util.ArrayList;
import java.util.List;
import reseat.check.Finding.Sense;
import reseat.design.Preload;
import reseat.equilibrium.PreloadZone;

/** Whether the preload's line of action may wander as far as it does before a contact opens. */
public final class PreloadLineCheck {

  private static final String CHECK = "preload line";

  private PreloadLineCheck() {}

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
        CHECK,
        holds ? Severity.OK : Severity.FAIL,
        preload.name(),
        margin,
        wander,
        Sense.AT_LEAST,
        Measure.LENGTH,
        "the line of action of "
            + preload.name()
            + " may move sideways "
            + Measure.LENGTH.show(Math.max(0, margin))
            + " before "
            + nearest
            + " opens"
            + (wander > 0 ? "; it wanders by " + Measure.LENGTH.show(wander) + "." : "."),
        holds ? "" : "Guide the line of action, or move it away from that contact's edge.");
  }
}
