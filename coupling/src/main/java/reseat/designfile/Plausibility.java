package reseat.designfile;

import java.util.List;
import java.util.Map;
import reseat.design.BallMountDesign;
import reseat.design.CouplingDesign;
import reseat.design.InputDoubt;
import reseat.design.Preload;
import reseat.numerics.Distribution;
import reseat.units.FilledText;

/**
 * Looks at a design for inputs far outside what the trade uses, which are mostly slips of unit.
 *
 * <p>Every doubt names what is usual and the likely slip. Nothing is changed, and a design outside
 * is computed as it stands.
 */
final class Plausibility {

  private static final Usual SCATTER = Usual.of(0, 0, 0.5, 0.5);

  private Plausibility() {}

  /**
   * Looks at a coupling.
   *
   * @param d the design
   * @param written what its file has, with places
   * @return the doubts in the order of the file
   */
  static List<InputDoubt> of(CouplingDesign d, Map<String, Written> written) {
    Doubts doubts = new Doubts(written);
    FixedWindows.look(doubts);
    BallDoubts.look(d, doubts);
    double circle = PlaceDoubts.look(d, doubts);
    ForceDoubts.look(d, circle, doubts);
    scatters(d, doubts);
    Angles.look(doubts);
    return doubts.inOrder();
  }

  /**
   * Looks at a ball mount.
   *
   * @param d the mount
   * @param written what its file has, with places
   * @return the doubts in the order of the file
   */
  static List<InputDoubt> of(BallMountDesign d, Map<String, Written> written) {
    Doubts doubts = new Doubts(written);
    FixedWindows.look(doubts);
    MountingDoubts.mount(d, doubts);
    Angles.look(doubts);
    return doubts.inOrder();
  }

  private static void scatters(CouplingDesign d, Doubts doubts) {
    for (int i = 0; i < d.preloads().size(); i++) {
      Preload p = d.preloads().get(i);
      String key = "preload[" + (i + 1) + "].scatter";
      Written w = doubts.has(key) ? doubts.at(key) : doubts.at(key + ".limit");
      if (w == null) {
        continue;
      }
      if (p.forceSpread().limit() > SCATTER.high()) {
        String reason =
            FilledText.of(
                "a scatter of %.0f %% is more than any usual device",
                100 * p.forceSpread().limit());
        String less = FilledText.of("%.2g %%", p.forceSpread().limit());
        doubts.add(w, SCATTER, reason, new LikelyValue(less, p.forceSpread().limit() / 100));
      } else if (p.modelled().isPresent()) {
        ofDevice(p, w, doubts);
      }
    }
  }

  private static void ofDevice(Preload p, Written w, Doubts doubts) {
    Distribution device = p.modelled().get().scatter().spread();
    if (p.forceSpread().limit() < 0.5 * device.limit()) {
      String reason =
          FilledText.of(
              "%.2g %% is told, but the device as described scatters by %.2g %% (%s); leave scatter"
                  + " out to have that counted",
              100 * p.forceSpread().limit(),
              100 * device.limit(),
              p.modelled().get().scatter().basis());
      double low = 0.5 * device.limit();
      Usual usual = new Usual(low, low, 1, 1, "half of what follows from the device");
      doubts.add(w, usual, reason, LikelyValue.NONE);
    }
  }
}
