package reseat.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.check.Verdict;
import reseat.design.CouplingDesign;
import reseat.design.Preload;
import reseat.designfile.SizeWish;
import reseat.elementary.Elementary;

/**
 * The band of preload in which no check fails, all preloads scaled alike, and the check that sets
 * each end: lift-off, friction on the way home, pressure, patch to edge, scatter of the sink,
 * motion under load, stud, thread or bond.
 *
 * @param nominal sum of the sizes of all preloads as designed, N
 * @param least lower end, N; zero if nothing was found to ask for more
 * @param bindsBelow the check that fails below the lower end; empty if none does down to a
 *     hundredth of the design
 * @param most upper end, N; infinite if nothing was found to limit it
 * @param bindsAbove the check that fails above the upper end; empty if none does up to a hundred
 *     times it
 * @param scatter largest share by which a preload differs from mount to mount, with what its device
 *     may be off, added
 */
public record AllowedPreload(
    double nominal,
    double least,
    String bindsBelow,
    double most,
    String bindsAbove,
    double scatter) {

  /** Scales looked at lie between this and its reciprocal. */
  private static final double SMALLEST = 0.01;

  private static final int STEPS = 80;
  private static final int HALVINGS = 40;

  /**
   * Finds the band.
   *
   * @param design a design with at least one preload
   * @param wish further limits
   * @return the band nearest to the preload as designed; empty if no size of the preloads passes
   */
  public static Optional<AllowedPreload> of(CouplingDesign design, SizeWish wish) {
    if (design.preloads().isEmpty()) {
      return Optional.empty();
    }
    DesignFamily family = new DesignFamily(design, wish);
    int start = -1;
    for (int i = 0; i <= STEPS && start < 0; i++) {
      // 0, 1, -1, 2, -2 ... steps away from the design
      int step = i % 2 == 0 ? -i / 2 : (i + 1) / 2;
      if (passes(at(family, design, scale(step)))) {
        start = step + STEPS / 2;
      }
    }
    if (start < 0) {
      return Optional.empty();
    }
    double nominal = 0;
    double scatter = 0;
    for (Preload p : design.preloads()) {
      nominal += p.force();
      double device = p.modelled().map(d -> d.accuracy().halfRange()).orElse(0.0);
      scatter = Math.max(scatter, p.forceSpread().limit() + device);
    }
    End low = end(family, design, start - STEPS / 2, -1);
    End high = end(family, design, start - STEPS / 2, 1);
    return Optional.of(
        new AllowedPreload(
            nominal,
            low.check().isEmpty() ? 0 : nominal * low.scale(),
            low.check(),
            high.check().isEmpty() ? Double.POSITIVE_INFINITY : nominal * high.scale(),
            high.check(),
            scatter));
  }

  private record End(double scale, String check) {}

  private static double scale(int step) {
    return Elementary.pow(SMALLEST, -step / (STEPS / 2.0));
  }

  private static End end(DesignFamily family, CouplingDesign design, int from, int way) {
    int step = from;
    while (Math.abs(step + way) <= STEPS / 2 && passes(at(family, design, scale(step + way)))) {
      step += way;
    }
    if (Math.abs(step + way) > STEPS / 2) {
      return new End(scale(step), "");
    }
    double good = scale(step);
    double bad = scale(step + way);
    String check = at(family, design, bad).check();
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (good + bad) / 2;
      Judgement j = at(family, design, middle);
      if (passes(j)) {
        good = middle;
      } else {
        bad = middle;
        check = j.check();
      }
    }
    return new End(good, check);
  }

  private static boolean passes(Judgement j) {
    return j.verdict() != Verdict.FAILS;
  }

  private static Judgement at(DesignFamily family, CouplingDesign design, double scale) {
    List<Preload> scaled = new ArrayList<>();
    for (Preload p : design.preloads()) {
      scaled.add(p.withForce(scale * p.force()));
    }
    return family.judge(design.toBuilder().preloads(scaled).build());
  }

  /**
   * Returns the force to aim for: the middle of the band by ratio, so that the same share is left
   * on either side.
   *
   * @return N; the force as designed if the band has no two ends
   */
  public double middle() {
    return least > 0 && Double.isFinite(most) ? Math.sqrt(least * most) : nominal;
  }

  /**
   * Says whether the force stays in the band with all its scatter.
   *
   * @return true if neither end is passed
   */
  public boolean coversScatter() {
    return nominal * (1 - scatter) >= least && nominal * (1 + scatter) <= most;
  }
}
