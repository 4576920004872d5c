package reseat.equilibrium;

import java.util.List;
import java.util.Optional;
import reseat.contact.ContactLimits;
import reseat.design.CouplingDesign;

/**
 * How far all preloads together may be scaled: down to where a load case loses its lift-off factor,
 * up to where a contact bears no more, at rest or under a load case.
 *
 * @param least smallest scale, not negative; infinite if no size of these preloads does
 * @param most largest scale; infinite if no strength is known, negative if loads alone exceed it
 */
public record PreloadBand(double least, double most) {

  /**
   * Finds the band.
   *
   * @param standing the coupling at rest
   * @param cases its responses to the load cases
   * @param limits pressure limits of each contact
   * @return the band
   */
  public static PreloadBand of(
      Equilibrium standing, List<CaseResponse> cases, List<ContactLimits> limits) {
    CouplingDesign design = standing.model().design();
    PreloadRange range = PreloadRange.of(standing);
    double least = 0;
    for (CaseResponse c : cases) {
      double factor = c.wantedFactor(design.targets().liftOffFactor());
      least = Math.max(least, range.leastPreload(c.loadCase().load(), factor));
    }
    double[] bears = new double[limits.size()];
    for (int i = 0; i < bears.length; i++) {
      Optional<ContactLimits.Limit> limit = limits.get(i).governing();
      double share = design.targets().pressureShare();
      bears[i] =
          limit.isPresent()
              ? standing
                  .contacts()
                  .get(i)
                  .hertz()
                  .forceAtPeakPressure(share * limit.get().peakPressure())
              : Double.POSITIVE_INFINITY;
    }
    double most = range.mostPreload(bears, null);
    for (CaseResponse c : cases) {
      most = Math.min(most, range.mostPreload(bears, c.loadCase().load()));
    }
    return new PreloadBand(least, most);
  }

  /**
   * Says whether some size of the preloads meets both ends.
   *
   * @return true if the band is not empty
   */
  public boolean isOpen() {
    return least <= most && !Double.isInfinite(least);
  }
}
