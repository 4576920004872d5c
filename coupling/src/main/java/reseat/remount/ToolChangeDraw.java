package reseat.remount;

import java.util.List;
import java.util.function.Function;
import reseat.design.CouplingDesign;
import reseat.design.Preload;
import reseat.elementary.Elementary;
import reseat.numerics.RandomStream;
import reseat.space.Vec3;

/**
 * The luck of one mounting: friction, preloads, approach, temperature and film.
 *
 * <p>Each cause draws from a stream of its own, so one cause can be exchanged while the others stay
 * as they are. Storage is reused; not for use by several threads.
 */
final class ToolChangeDraw {

  private static final int N = 6;

  final double[] mu = new double[N];
  final double[] film = new double[N];

  /** Sum of the preloads at full size: force, N, and moment about the origin, N·m. */
  final double[] preload = new double[N];

  /** Rate at which each contact closes while the others slide; 0 for those that touch. */
  final double[] closing = new double[N];

  /** Holder warmer than post, K. */
  double temperature;

  private final CouplingDesign design;
  private final double[] straight;

  /**
   * Prepares draws for a design.
   *
   * @param design the coupling
   * @param straight closing rates when the holder comes straight home, all contacts at once
   */
  ToolChangeDraw(CouplingDesign design, double[] straight) {
    this.design = design;
    this.straight = straight;
  }

  /**
   * Draws everything.
   *
   * @param luck gives each cause its stream; null for the nominal value
   */
  void drawAll(Function<Cause, RandomStream> luck) {
    friction(luck.apply(Cause.FRICTION));
    preloads(luck.apply(Cause.PRELOAD_SIZE), luck.apply(Cause.PRELOAD_LINE));
    approach(luck.apply(Cause.APPROACH));
    RandomStream heat = luck.apply(Cause.TEMPERATURE);
    temperature = heat == null ? 0 : design.remount().temperature().draw(heat);
    RandomStream dirt = luck.apply(Cause.FILM);
    for (int i = 0; i < N; i++) {
      film[i] = dirt == null ? 0 : design.remount().film().draw(dirt);
    }
  }

  private void friction(RandomStream stream) {
    for (int i = 0; i < N; i++) {
      double scatter = stream == null ? 0 : design.remount().friction().draw(stream);
      mu[i] = design.friction().nominal() * (1 + scatter);
    }
  }

  private void preloads(RandomStream size, RandomStream line) {
    java.util.Arrays.fill(preload, 0);
    List<Preload> preloads = design.preloads();
    for (Preload p : preloads) {
      double force = p.force() * (1 + (size == null ? 0 : p.forceSpread().draw(size)));
      Vec3 at = p.at();
      Vec3 direction = p.direction();
      if (line != null) {
        Vec3 side = direction.anyPerpendicular();
        Vec3 other = direction.cross(side);
        double wander = p.lineSpread().draw(line);
        double azimuth = Math.PI * line.uniform();
        at =
            at.plus(side.times(wander * Elementary.cos(azimuth)))
                .plus(other.times(wander * Elementary.sin(azimuth)));
        double tilt = p.tiltSpread().draw(line);
        double tiltAzimuth = Math.PI * line.uniform();
        direction =
            direction
                .plus(side.times(tilt * Elementary.cos(tiltAzimuth)))
                .plus(other.times(tilt * Elementary.sin(tiltAzimuth)))
                .unit();
      }
      Vec3 f = direction.times(force);
      Vec3 m = at.cross(f);
      preload[0] += f.x();
      preload[1] += f.y();
      preload[2] += f.z();
      preload[3] += m.x();
      preload[4] += m.y();
      preload[5] += m.z();
    }
  }

  /** One to three contacts, at random rates, close last; without luck all close at once. */
  private void approach(RandomStream stream) {
    if (stream == null) {
      System.arraycopy(straight, 0, closing, 0, N);
      return;
    }
    java.util.Arrays.fill(closing, 0);
    int open = 1 + stream.below(3);
    for (int k = 0; k < open; k++) {
      int i = stream.below(N - k);
      // the i-th of those not yet chosen
      int contact = 0;
      while (closing[contact] > 0 || i > 0) {
        if (!(closing[contact] > 0)) {
          i--;
        }
        contact++;
      }
      closing[contact] = stream.uniform();
    }
  }
}
