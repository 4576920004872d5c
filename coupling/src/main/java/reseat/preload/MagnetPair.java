package reseat.preload;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import reseat.numerics.Bounds;
import reseat.numerics.EllipticIntegrals;
import reseat.units.PrintedNumber;

/**
 * Two equal cylinder magnets face to face on one axis, or one magnet facing thick soft iron.
 *
 * <p>Uniform axial magnetisation J, radius R, length L, gap g between the faces:
 *
 * <pre>
 *   F = (J²/mu0) pi R² [ f(g) + f(g + 2L) - 2 f(g + L) ]
 *   f(z) = Int_0^inf J1(x)² exp(-x z/R)/x dx = 1/2 - (zeta k/pi) D(k²),
 *   zeta = z/R,  k² = 4/(4 + zeta²),  D = (K - E)/k²
 *   f'(z) = -(k³/(pi R)) C(k²)
 * </pre>
 *
 * <p>The integral is exact for this magnetisation; its closed form in complete elliptic integrals
 * was derived through {@code J1² = (2/pi) Int J2(2 x cos t) dt} and is checked against quadrature.
 * Soft iron that is thick and not saturated acts as the mirror image of the magnet, so a magnet at
 * gap g from iron pulls like a pair at 2g. The formula of a far-away bar magnet must not be used at
 * gaps below R.
 *
 * <p>Opening widens the gap, so the stiffness is negative: of the order of -0.01 N/um, little
 * against any contact, but the force varies with the gap from one mounting to the next.
 *
 * @param counterpart what stands opposite
 * @param radius radius R, m
 * @param length length L along the axis, m
 * @param remanence polarisation J, taken as the remanence, T
 * @param gap gap between the faces, m
 * @param gapTolerance half range of the gap from one mounting to the next, m
 * @param remanenceAccuracy relative half range of the maker's remanence
 * @param remanencePerKelvin relative change of the remanence, 1/K; about -0.0011 for
 *     neodymium-iron-boron (recalled from memory)
 */
public record MagnetPair(
    Counterpart counterpart,
    double radius,
    double length,
    double remanence,
    double gap,
    double gapTolerance,
    double remanenceAccuracy,
    double remanencePerKelvin)
    implements PreloadDevice {

  /** Relative change of remanence of neodymium-iron-boron, 1/K, recalled from memory. */
  public static final double NEODYMIUM_PER_KELVIN = -0.0011;

  private static final double MU0 = 4e-7 * Math.PI;
  private static final double FARTHEST_GAP = 40;

  /** What stands opposite the magnet. */
  public enum Counterpart {
    /** An equal magnet, poles attracting. */
    EQUAL_MAGNET(1),
    /** Thick, unsaturated soft iron, wider than the magnet. */
    SOFT_IRON(2);

    private final int gapFactor;

    Counterpart(int gapFactor) {
      this.gapFactor = gapFactor;
    }
  }

  /** Checks sizes and that the tolerance leaves a gap. */
  public MagnetPair {
    Objects.requireNonNull(counterpart, "counterpart of a magnet pair must be given, found null");
    Bounds.positive("radius of the magnet", radius, "m");
    Bounds.positive("length of the magnet", length, "m");
    Bounds.between("remanence of the magnet", remanence, "T", 0, 2.5);
    Bounds.positive("gap of the magnet", gap, "m");
    Bounds.notNegative("tolerance of the gap", gapTolerance, "m");
    Bounds.fromUpTo("relative accuracy of the remanence", remanenceAccuracy, "", 0, 0.5);
    if (!(gapTolerance < gap)) {
      throw new IllegalArgumentException(
          "tolerance of the magnet gap "
              + PrintedNumber.shortest(gapTolerance)
              + " m is not below the gap "
              + PrintedNumber.shortest(gap)
              + " m: the faces may touch");
    }
  }

  /**
   * Pull over a gap with uniform flux density, {@code B² A/(2 mu0)}.
   *
   * @param fluxDensity flux density in the gap, T
   * @param area pole area, m²
   * @return force, N
   */
  public static double poleForce(double fluxDensity, double area) {
    return fluxDensity * fluxDensity * area / (2 * MU0);
  }

  @Override
  public double force(double opening) {
    return pull(Math.max(0, gap + opening));
  }

  @Override
  public double axialStiffness() {
    double z = counterpart.gapFactor * gap;
    return counterpart.gapFactor
        * strength()
        * (slope(z) + slope(z + 2 * length) - 2 * slope(z + length));
  }

  @Override
  public ForceScatter scatter() {
    double half = (pull(gap - gapTolerance) - pull(gap + gapTolerance)) / (2 * nominalForce());
    return ForceScatter.uniform(Math.min(0.999, half), "force over the tolerance of the gap");
  }

  @Override
  public ForceScatter accuracy() {
    return ForceScatter.uniform(
        2 * remanenceAccuracy, "stated accuracy of the remanence, which counts twice");
  }

  @Override
  public double relativeChangePerKelvin() {
    return 2 * remanencePerKelvin;
  }

  /**
   * Work to pull the magnet from its gap out of reach (40 radii), which it gives back on snapping
   * in.
   */
  @Override
  public double storedEnergy() {
    IterativeLegendreGaussIntegrator integrator =
        new IterativeLegendreGaussIntegrator(16, 1e-9, 1e-14);
    double near = integrator.integrate(100_000, this::pull, gap, gap + 2 * radius);
    double far =
        integrator.integrate(100_000, this::pull, gap + 2 * radius, gap + FARTHEST_GAP * radius);
    return near + far;
  }

  /**
   * Force with the faces touching, what fingers may have to bear.
   *
   * @return force, N
   */
  public double touchingForce() {
    return pull(0);
  }

  @Override
  public List<DeviceCaution> cautions() {
    return List.of(DeviceCaution.MAGNET_PINCH, DeviceCaution.MAGNET_NEVER_TOUCHES);
  }

  @Override
  public Optional<Double> mostForce() {
    return Optional.of(pull(0));
  }

  @Override
  public Optional<BenchSetting> settingFor(double wanted) {
    return gapFor(wanted).map(g -> new BenchSetting(BenchSetting.Kind.GAP, g));
  }

  /** The same magnet at another gap; empty if that gap is not larger than its tolerance. */
  @Override
  public Optional<MagnetPair> setTo(double wanted) {
    return gapFor(wanted)
        .filter(g -> g > gapTolerance)
        .map(
            g ->
                new MagnetPair(
                    counterpart,
                    radius,
                    length,
                    remanence,
                    g,
                    gapTolerance,
                    remanenceAccuracy,
                    remanencePerKelvin));
  }

  @Override
  public <T> T accept(Visitor<T> visitor) {
    return visitor.magnetPair(this);
  }

  private Optional<Double> gapFor(double wanted) {
    double widest = FARTHEST_GAP * radius;
    if (!(wanted < pull(0) && wanted > pull(widest))) {
      return Optional.empty();
    }
    BrentSolver solver = new BrentSolver(1e-13, 1e-13 * radius);
    return Optional.of(solver.solve(300, g -> pull(g) - wanted, 0, widest));
  }

  private double pull(double distance) {
    double z = counterpart.gapFactor * distance;
    return strength() * (overlap(z) + overlap(z + 2 * length) - 2 * overlap(z + length));
  }

  /** {@code J² pi R²/mu0}, N. */
  private double strength() {
    return remanence * remanence * Math.PI * radius * radius / MU0;
  }

  /** The function f. */
  private double overlap(double z) {
    double zeta = z / radius;
    if (zeta == 0) {
      return 0.5;
    }
    double k = 2 / Math.sqrt(4 + zeta * zeta);
    return 0.5 - zeta * k / Math.PI * EllipticIntegrals.completeD(complement(zeta));
  }

  /** The derivative of f, 1/m. */
  private double slope(double z) {
    double zeta = z / radius;
    double k = 2 / Math.sqrt(4 + zeta * zeta);
    return -k * k * k / (Math.PI * radius) * EllipticIntegrals.completeC(complement(zeta));
  }

  private static double complement(double zeta) {
    return zeta * zeta / (4 + zeta * zeta);
  }
}
