package reseat.ballmount;

import reseat.numerics.Bounds;
import reseat.units.PrintedNumber;

/**
 * From test strength to design strength of an adhesive.
 *
 * @param peakShare share of the test strength for loads that come and go; a quarter is common
 *     practice
 * @param sustainedShare share of the test strength for loads that stay, because of creep; a tenth
 *     is common practice (recalled from memory)
 * @param softeningRange temperature range below softening within which the strength falls to
 *     nothing, K; twenty kelvin by judgement after one measured epoxy
 */
public record BondDerating(double peakShare, double sustainedShare, double softeningRange) {

  /** A quarter for peaks, a tenth for sustained load, 20 K. */
  public static final BondDerating USUAL = new BondDerating(0.25, 0.10, 20);

  private static final double SOFT = 1e-3;

  /** Checks the shares. */
  public BondDerating {
    oneAtMost("share of bond strength for peaks", peakShare);
    oneAtMost("share of bond strength for sustained load", sustainedShare);
    Bounds.positive("softening range of the bond", softeningRange, "K");
  }

  private static void oneAtMost(String what, double share) {
    Bounds.positive(what, share, "");
    if (share > 1) {
      throw new IllegalArgumentException(
          what + " is " + PrintedNumber.shortest(share) + ": it must not exceed 1");
    }
  }

  /**
   * Share of the strength left at a temperature: all of it up to the softening range, then falling
   * in a straight line to a thousandth at softening and above, so that a load on soft adhesive
   * shows as a use far above 1.
   *
   * @param adhesive the adhesive
   * @param temperature service temperature, K
   * @return share, 0.001 to 1
   */
  public double temperatureShare(Adhesive adhesive, double temperature) {
    double left = (adhesive.softeningTemperature() - temperature) / softeningRange;
    return Math.max(SOFT, Math.min(1, left));
  }
}
