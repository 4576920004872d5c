package reseat.preload;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.elementary.Elementary;
import reseat.numerics.Bounds;
import reseat.units.PrintedNumber;

/**
 * A helical compression spring of round wire, with the rate {@code k = G d⁴/(8 D³ n)} and the shear
 * stress at the inside of the coil corrected by Wahl's factor {@code (4C-1)/(4C-4) + 0.615/C},
 * {@code C = D/d} (recalled from memory, computed independently).
 *
 * <p>Opening of the halves compresses the spring further; it is reckoned no further than slack or
 * solid. Side load and buckling are not covered.
 *
 * @param wire wire diameter d, m
 * @param meanDiameter mean coil diameter D, m
 * @param activeCoils number of active coils n
 * @param totalCoils number of coils including the dead ones at the ends
 * @param freeLength free length, m
 * @param deflection compression from the free length, m
 * @param deflectionTolerance half range of the deflection from one mounting to the next, m
 * @param shearModulus shear modulus G, Pa; 79.3 GPa for spring steel
 * @param rateAccuracy relative half range of the maker's rate; 10 % is usual (common practice)
 * @param modulusPerKelvin relative change of the shear modulus, 1/K; about -2.5e-4 for steel
 * @param shearStrength shear stress the wire may bear, Pa
 */
public record HelicalSpring(
    double wire,
    double meanDiameter,
    double activeCoils,
    double totalCoils,
    double freeLength,
    double deflection,
    double deflectionTolerance,
    double shearModulus,
    double rateAccuracy,
    double modulusPerKelvin,
    double shearStrength)
    implements PreloadDevice {

  /** Checks that the spring exists and is not compressed past solid. */
  public HelicalSpring {
    Bounds.positive("wire diameter of the spring", wire, "m");
    Bounds.positive("mean coil diameter of the spring", meanDiameter, "m");
    Bounds.positive("active coils of the spring", activeCoils, "");
    Bounds.positive("total coils of the spring", totalCoils, "");
    Bounds.positive("free length of the spring", freeLength, "m");
    Bounds.positive("deflection of the spring", deflection, "m");
    Bounds.notNegative("tolerance of the deflection", deflectionTolerance, "m");
    Bounds.positive("shear modulus of the spring", shearModulus, "Pa");
    Bounds.fromUpTo("relative accuracy of the spring rate", rateAccuracy, "", 0, 1);
    Bounds.positive("shear strength of the spring wire", shearStrength, "Pa");
    if (!(meanDiameter > 1.5 * wire)) {
      throw new IllegalArgumentException(
          "mean coil diameter "
              + PrintedNumber.shortest(meanDiameter)
              + " m is not above one and a half wire diameters of "
              + PrintedNumber.shortest(wire)
              + " m: check radius, outer and mean diameter");
    }
    if (!(totalCoils >= activeCoils)) {
      throw new IllegalArgumentException(
          "total coils "
              + PrintedNumber.shortest(totalCoils)
              + " are fewer than active coils "
              + PrintedNumber.shortest(activeCoils));
    }
    if (!(freeLength - deflection >= wire * totalCoils)) {
      throw new IllegalArgumentException(
          "spring of "
              + PrintedNumber.shortest(freeLength)
              + " m compressed by "
              + PrintedNumber.shortest(deflection)
              + " m is shorter than its solid length of "
              + PrintedNumber.shortest(wire * totalCoils)
              + " m");
    }
  }

  /**
   * Spring rate.
   *
   * @return rate, N/m
   */
  public double rate() {
    return shearModulus
        * Elementary.pow(wire, 4)
        / (8 * Elementary.pow(meanDiameter, 3) * activeCoils);
  }

  /**
   * Wahl's factor.
   *
   * @return factor, above 1
   */
  public double wahlFactor() {
    double c = meanDiameter / wire;
    return (4 * c - 1) / (4 * c - 4) + 0.615 / c;
  }

  /**
   * Shear stress at the inside of the coil under a force.
   *
   * @param force force, N
   * @return stress, Pa
   */
  public double shearStress(double force) {
    return wahlFactor() * 8 * force * meanDiameter / (Math.PI * Elementary.pow(wire, 3));
  }

  /**
   * Length at which the coils touch, wire diameter times total coils (ground ends).
   *
   * @return length, m
   */
  public double solidLength() {
    return wire * totalCoils;
  }

  @Override
  public double force(double opening) {
    double most = freeLength - solidLength();
    return rate() * Math.max(0, Math.min(most, deflection + opening));
  }

  @Override
  public double axialStiffness() {
    return rate();
  }

  @Override
  public ForceScatter scatter() {
    return ForceScatter.uniform(
        Math.min(0.999, deflectionTolerance / deflection), "tolerance of the deflection");
  }

  @Override
  public ForceScatter accuracy() {
    return ForceScatter.uniform(rateAccuracy, "stated accuracy of the spring rate");
  }

  @Override
  public double relativeChangePerKelvin() {
    return modulusPerKelvin;
  }

  @Override
  public double storedEnergy() {
    return rate() * deflection * deflection / 2;
  }

  @Override
  public List<DeviceCaution> cautions() {
    List<DeviceCaution> found = new ArrayList<>();
    found.add(DeviceCaution.STORED_SPRING_ENERGY);
    if (shearStress(nominalForce()) > shearStrength) {
      found.add(DeviceCaution.OVERSTRESSED);
    }
    return List.copyOf(found);
  }

  @Override
  public Optional<CautionFigure> figureOf(DeviceCaution caution) {
    return caution == DeviceCaution.OVERSTRESSED
        ? Optional.of(CautionFigure.atMost(shearStress(nominalForce()), shearStrength))
        : Optional.empty();
  }

  @Override
  public Optional<Double> mostForce() {
    return Optional.of(rate() * (freeLength - solidLength()));
  }

  @Override
  public Optional<BenchSetting> settingFor(double wanted) {
    return deflectionFor(wanted).map(s -> new BenchSetting(BenchSetting.Kind.DEFLECTION, s));
  }

  @Override
  public Optional<HelicalSpring> setTo(double wanted) {
    return deflectionFor(wanted)
        .map(
            s ->
                new HelicalSpring(
                    wire,
                    meanDiameter,
                    activeCoils,
                    totalCoils,
                    freeLength,
                    s,
                    deflectionTolerance,
                    shearModulus,
                    rateAccuracy,
                    modulusPerKelvin,
                    shearStrength));
  }

  @Override
  public <T> T accept(Visitor<T> visitor) {
    return visitor.helicalSpring(this);
  }

  private Optional<Double> deflectionFor(double wanted) {
    double s = wanted / rate();
    return s > 0 && s <= freeLength - solidLength() ? Optional.of(s) : Optional.empty();
  }
}
