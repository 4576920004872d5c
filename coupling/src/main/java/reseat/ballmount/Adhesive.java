package reseat.ballmount;

import java.util.Objects;
import reseat.material.ElasticConstants;
import reseat.numerics.Bounds;

/**
 * An adhesive: what a test piece bears, how stiff it is, when it softens.
 *
 * @param name name to print
 * @param shearStrength short-term shear strength of a lap-joint test, Pa
 * @param tensileStrength short-term tensile strength of a butt-joint test, Pa
 * @param elasticity elastic constants of the cured adhesive
 * @param softeningTemperature temperature at which it softens (glass transition), K
 * @param cureShrinkage shrinkage of volume on curing, 0 to below 1
 * @param basis where the figures come from
 */
public record Adhesive(
    String name,
    double shearStrength,
    double tensileStrength,
    ElasticConstants elasticity,
    double softeningTemperature,
    double cureShrinkage,
    String basis) {

  /**
   * A two-part epoxy cured at room temperature: 18 MPa in shear, G = 1 GPa. At least 13 MPa on
   * clean steel was measured for four epoxies (Cusens and Smith 1980, abstract read); 15 to 25 MPa,
   * modulus, tensile strength and shrinkage of 1 to 5 % are recalled from memory. One epoxy lost
   * much of its strength between 30 and 50 °C (abstract read).
   */
  public static final Adhesive EPOXY =
      new Adhesive(
          "room-temperature epoxy",
          18e6,
          30e6,
          new ElasticConstants(2.7e9, 0.35),
          328.15,
          0.03,
          "typical values recalled from memory; shear at least 13 MPa measured by Cusens and Smith"
              + " (1980)");

  /**
   * An anaerobic retaining compound: 14 MPa in shear, the low end of 14 to 34 MPa quoted in trade
   * literature; the rest recalled from memory.
   */
  public static final Adhesive ANAEROBIC =
      new Adhesive(
          "anaerobic retaining compound",
          14e6,
          14e6,
          new ElasticConstants(1.0e9, 0.4),
          373.15,
          0.06,
          "low end of 14 to 34 MPa in trade literature; the rest recalled from memory");

  /** Checks the figures. */
  public Adhesive {
    Objects.requireNonNull(name, "name of an adhesive must be given, found null");
    Objects.requireNonNull(elasticity, "elasticity of an adhesive must be given, found null");
    Objects.requireNonNull(basis, "basis of an adhesive must be given, found null");
    Bounds.positive("shear strength of the adhesive", shearStrength, "Pa");
    Bounds.positive("tensile strength of the adhesive", tensileStrength, "Pa");
    Bounds.positive("softening temperature of the adhesive", softeningTemperature, "K");
    Bounds.fromUpTo("cure shrinkage of the adhesive", cureShrinkage, "", 0, 1);
  }

  /**
   * Modulus of a thin layer held sideways by the metal on both faces, {@code E (1-nu)/((1+nu)(1-2
   * nu))}.
   *
   * @return modulus across the layer, Pa
   */
  public double constrainedModulus() {
    double nu = elasticity.poisson();
    return elasticity.modulus() * (1 - nu) / ((1 + nu) * (1 - 2 * nu));
  }
}
