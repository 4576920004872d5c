package reseat.check;

import reseat.design.CouplingDesign;
import reseat.design.Preload;
import reseat.equilibrium.PreloadBand;

/**
 * The band of preload in which every check holds, all preloads scaled alike, and the check that
 * sets each end. The one source of every such figure: check, device, search, report, papers.
 *
 * <p>What the devices that make the preloads can be set to is not among these checks: it is judged
 * against this band.
 *
 * @param nominal sum of the sizes of all preloads as designed, N
 * @param least lower end of the band in which everything holds
 * @param most upper end of it
 * @param failsBelow lower end of the band in which nothing fails, though a person may have to
 *     decide
 * @param failsAbove upper end of it
 * @param scatter largest share by which a preload differs from mount to mount, with what its device
 *     may be off, added
 */
public record AllowedPreload(
    double nominal, End least, End most, End failsBelow, End failsAbove, double scatter) {

  /**
   * One end of a band.
   *
   * @param force N; zero or infinite if there is no such end
   * @param check words of the check that is broken beyond it; empty if there is no such end
   * @param where what that check is about there; may be empty
   */
  public record End(double force, String check, String where) {}

  /**
   * Returns the force to aim for: the middle of the band by ratio, so that the same share is left
   * on either side.
   *
   * @return N; the force as designed if the band has no two ends
   */
  public double aim() {
    return least.force() > 0 && Double.isFinite(most.force())
        ? Math.sqrt(least.force() * most.force())
        : nominal;
  }

  /**
   * Says whether the preload as designed lies in the band.
   *
   * @return true if neither end is passed
   */
  public boolean inside() {
    return nominal >= least.force() && nominal <= most.force();
  }

  /**
   * Says whether the force stays in the band with all its scatter.
   *
   * @return true if neither end is passed
   */
  public boolean coversScatter() {
    return nominal * (1 - scatter) >= least.force() && nominal * (1 + scatter) <= most.force();
  }

  /**
   * Returns the ends as scales on all preloads.
   *
   * @return the band as parts of the preload as designed
   */
  public PreloadBand scales() {
    return new PreloadBand(least.force() / nominal, most.force() / nominal);
  }

  /** Largest share by which one of the preloads of a design may differ from what is set. */
  static double scatter(CouplingDesign design) {
    double scatter = 0;
    for (Preload p : design.preloads()) {
      double device = p.modelled().isPresent() ? p.modelled().get().accuracy().halfRange() : 0;
      scatter = Math.max(scatter, p.forceSpread().limit() + device);
    }
    return scatter;
  }
}
