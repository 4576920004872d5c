package reseat.study;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import reseat.contact.ContactLimits;
import reseat.design.CouplingDesign;
import reseat.design.Preload;
import reseat.design.Support;
import reseat.elementary.Elementary;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.CouplingStiffness;
import reseat.equilibrium.Equilibrium;
import reseat.equilibrium.NoEquilibriumException;
import reseat.equilibrium.PointStiffness;
import reseat.space.Vec3;

/**
 * How pressure, stiffness, sink and scatter go with one input: the preload, or the size of the
 * balls.
 *
 * @param points one point per value, in rising order; values at which the coupling does not stand
 *     are left out
 */
public record DesignCurve(List<Point> points) {

  /** Most mountings simulated at each point; the scatter is then good to about 4 %. */
  private static final int MOUNTS = 300;

  /** Ball diameters that are commonly stocked, mm; inch sizes among them. Common practice. */
  private static final double[] STOCK_BALLS_MM = {
    3, 3.175, 4, 4.7625, 5, 6, 6.35, 7.9375, 8, 9.525, 10, 12, 12.7, 15, 15.875, 16, 19.05, 20, 22,
    25, 25.4, 30
  };

  /** Copies the list. */
  public DesignCurve {
    points = List.copyOf(points);
  }

  /**
   * The coupling at one value of the input.
   *
   * @param value the input: total preload, N, or ball diameter, m
   * @param peakPressure largest peak pressure of any contact at rest, Pa
   * @param pressureShare that pressure over the governing limit of its contact
   * @param stiffness stiffness at the tool point along the machine axes, contacts sliding, N/m
   * @param sink distance the tool point sinks under the standing load, m
   * @param scatter standard deviation of the tool point from mount to mount along the machine axes,
   *     m; empty if fewer than half of them seat
   */
  public record Point(
      double value,
      double peakPressure,
      double pressureShare,
      Vec3 stiffness,
      double sink,
      Optional<Vec3> scatter) {}

  /**
   * Varies all preloads together.
   *
   * @param design the coupling; at least one preload
   * @param count number of points
   * @param mounts mountings simulated at each point, if that is under {@value #MOUNTS}
   * @return points from a fifth to four times the present preload, evenly in proportion
   */
  public static DesignCurve overPreload(CouplingDesign design, int count, long mounts) {
    Map<Double, CouplingDesign> designs = new LinkedHashMap<>();
    double total = design.preloads().stream().mapToDouble(Preload::force).sum();
    for (int i = 0; i < count; i++) {
      double factor = 0.2 * Elementary.pow(20, i / (count - 1.0));
      List<Preload> scaled =
          design.preloads().stream().map(p -> p.withForce(factor * p.force())).toList();
      designs.put(factor * total, design.toBuilder().preloads(scaled).build());
    }
    return over(designs, mounts);
  }

  /**
   * Varies the size of all balls over stock sizes, each seat cut anew for its ball.
   *
   * @param design the coupling
   * @param mounts mountings simulated at each point, if that is under {@value #MOUNTS}
   * @return stock sizes from a third to three times the present ball
   */
  public static DesignCurve overStockBalls(CouplingDesign design, long mounts) {
    Map<Double, CouplingDesign> designs = new LinkedHashMap<>();
    double present = design.supports().get(0).ball().diameter();
    for (double mm : STOCK_BALLS_MM) {
      double diameter = mm * 1e-3;
      if (diameter > present / 3 && diameter < 3 * present) {
        ResizedBalls.of(design, diameter / 2).ifPresent(d -> designs.put(diameter, d));
      }
    }
    return over(designs, mounts);
  }

  /** The points do not know each other, so they are computed side by side and kept in order. */
  private static DesignCurve over(Map<Double, CouplingDesign> designs, long mounts) {
    return new DesignCurve(
        designs.entrySet().parallelStream()
            .map(e -> point(e.getKey(), e.getValue(), mounts))
            .flatMap(Optional::stream)
            .toList());
  }

  private static Optional<Point> point(double value, CouplingDesign design, long mounts) {
    CouplingModel model = CouplingModel.of(design);
    Equilibrium standing;
    try {
      standing = model.standing();
    } catch (NoEquilibriumException e) {
      return Optional.empty();
    }
    if (standing.contacts().stream().anyMatch(Equilibrium.Contact::lifted)) {
      return Optional.empty();
    }
    double pressure = 0;
    double share = 0;
    for (Equilibrium.Contact c : standing.contacts()) {
      double p = c.peakPressure();
      Support s = design.supports().get(c.line().ballIndex());
      ContactLimits limits =
          ContactLimits.of(c.hertz(), s.ballMaterial(), s.seatMaterial(), s.caseDepth());
      pressure = Math.max(pressure, p);
      share = Math.max(share, limits.governing().map(l -> p / l.peakPressure()).orElse(0.0));
    }
    CouplingStiffness soft = CouplingStiffness.of(standing, CouplingStiffness.Bound.FRICTIONLESS);
    return Optional.of(
        new Point(
            value,
            pressure,
            share,
            PointStiffness.alongAxes(soft, standing.placeOf(design.toolPoint()), design.axes()),
            standing.displacementOf(design.toolPoint()).norm(),
            SeatedScatter.of(model, (int) Math.min(MOUNTS, mounts))));
  }
}
