package reseat.check;

import java.util.List;
import reseat.check.Finding.Sense;
import reseat.design.CouplingDesign;
import reseat.design.Preload;
import reseat.equilibrium.PreloadScatter;
import reseat.space.Vec3;

/**
 * Whether the scatter of the preload alone moves the tool beyond its targets.
 *
 * <p>Preload scatter is often what first spoils a sub-micrometre height. It is one of several
 * causes, so taking more than half of a target warns (common practice, no source).
 */
public final class PreloadScatterCheck {

  private static final String CHECK = "preload scatter";
  private static final double FAIR_PART = 0.5;

  private PreloadScatterCheck() {}

  /**
   * Judges the motion.
   *
   * @param design the coupling
   * @param scatter effect of every preload that scatters
   * @return one finding for the machine axis that fares worst; none if nothing scatters
   */
  public static List<Finding> of(CouplingDesign design, List<PreloadScatter> scatter) {
    if (scatter.isEmpty()) {
      return List.of();
    }
    Vec3 moved = PreloadScatter.together(scatter, design);
    int axis = WorstAxis.of(moved, design.targets().repeatability());
    double value = Math.abs(moved.component(axis));
    double limit = design.targets().repeatability().limit(axis);
    String name = design.axes().axis(axis).name();
    double part = 0;
    for (PreloadScatter p : scatter) {
      part = Math.max(part, p.preload().forceSpread().limit());
    }
    Sentence what =
        Sentence.of(
            "preload scatter of ±",
            Measure.SHARE.amount(part),
            " moves the tool point by up to ",
            Measure.LENGTH.amount(value),
            " along ",
            name);
    if (Double.isInfinite(limit)) {
      return List.of(
          new Finding(
              CHECK,
              Severity.NOTE,
              name,
              value,
              0,
              Sense.AT_MOST,
              Measure.LENGTH,
              Sentence.of(what, "; no target is set along any axis."),
              Sentence.of("State repeatability targets to have it judged.")));
    }
    Severity severity =
        value > limit ? Severity.FAIL : value > FAIR_PART * limit ? Severity.WARNING : Severity.OK;
    return List.of(
        new Finding(
            CHECK,
            severity,
            name,
            value,
            limit,
            Sense.AT_MOST,
            Measure.LENGTH,
            Sentence.of(
                what,
                "; the target for all causes together is ",
                Measure.LENGTH.amount(limit),
                "."),
            severity == Severity.OK ? Sentence.NONE : advice(part, value, limit, scatter)));
  }

  private static Sentence advice(
      double part, double value, double limit, List<PreloadScatter> scatter) {
    double passing = part * FAIR_PART * limit / value;
    Preload p = scatter.get(0).preload();
    return Sentence.of(
        "Hold the preload within ±",
        Measure.SHARE.amount(passing),
        " (half the target), as a spring stack, a magnet at a stop or a weight does; ",
        p.device().isEmpty() ? p.name() : p.device(),
        " now has ±",
        Measure.SHARE.amount(part),
        ".");
  }
}
