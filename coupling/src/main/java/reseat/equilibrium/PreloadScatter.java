package reseat.equilibrium;

import java.util.ArrayList;
import java.util.List;
import reseat.design.CouplingDesign;
import reseat.design.Preload;
import reseat.space.Vec3;
import reseat.space.Wrench;

/**
 * How the tool moves when a preload comes out stronger or weaker than nominal.
 *
 * <p>Each limit is an exact equilibrium of its own. Sink grows with the force to the 2/3, so a
 * weaker preload lifts the tool by more than a stronger one sinks it.
 *
 * @param preload the preload
 * @param stronger motion from rest with the preload at the upper limit of its scatter
 * @param weaker motion from rest with the preload at the lower limit
 */
public record PreloadScatter(Preload preload, ErrorMotion stronger, ErrorMotion weaker) {

  /**
   * Finds the effect of every preload that scatters.
   *
   * @param standing the coupling at rest
   * @return one entry per preload with scatter; possibly none
   * @throws NoEquilibriumException if no pose fits
   */
  public static List<PreloadScatter> all(Equilibrium standing) {
    CouplingDesign design = standing.model().design();
    List<PreloadScatter> all = new ArrayList<>();
    for (Preload p : design.preloads()) {
      double part = p.forceSpread().limit();
      if (part > 0) {
        all.add(
            new PreloadScatter(
                p,
                motion(standing, p.load().times(part)),
                motion(standing, p.load().times(-part))));
      }
    }
    return List.copyOf(all);
  }

  private static ErrorMotion motion(Equilibrium standing, Wrench change) {
    Equilibrium changed = standing.model().equilibriumUnder(standing.load().plus(change));
    return ErrorMotion.between(standing, changed, standing.model().design().toolPoint());
  }

  /**
   * Returns the farthest that the preloads together may move the tool from its mean place.
   *
   * @param all effects of the single preloads
   * @param design the coupling
   * @return along each machine axis the sum over the preloads of the greater of the two motions, m,
   *     not negative
   */
  public static Vec3 together(List<PreloadScatter> all, CouplingDesign design) {
    Vec3 sum = Vec3.ZERO;
    for (PreloadScatter p : all) {
      Vec3 up = design.axes().of(p.stronger.shift());
      Vec3 down = design.axes().of(p.weaker.shift());
      sum =
          sum.plus(
              new Vec3(
                  Math.max(Math.abs(up.x()), Math.abs(down.x())),
                  Math.max(Math.abs(up.y()), Math.abs(down.y())),
                  Math.max(Math.abs(up.z()), Math.abs(down.z()))));
    }
    return sum;
  }
}
