package reseat.material;

import reseat.numerics.Bounds;
import reseat.units.PrintedNumber;

/**
 * Elastic constants of an isotropic body.
 *
 * @param modulus Young's modulus E, Pa
 * @param poisson Poisson's ratio, 0 or more and below 0.5
 */
public record ElasticConstants(double modulus, double poisson) {

  /** Refuses a modulus that is not positive and a Poisson's ratio outside 0 to 0.5. */
  public ElasticConstants {
    Bounds.positive("Young's modulus", modulus, "Pa");
    if (!(poisson >= 0 && poisson < 0.5)) {
      throw new IllegalArgumentException(
          "Poisson's ratio is "
              + PrintedNumber.shortest(poisson)
              + ": it must be 0 or more and below 0.5");
    }
  }

  /**
   * Returns the shear modulus.
   *
   * @return G = E/(2 (1 + nu)), Pa
   */
  public double shearModulus() {
    return modulus / (2 * (1 + poisson));
  }

  // Written out: what Java makes of equals() in a record takes tens of milliseconds the first time,
  // which a command that asks it once would feel.

  @Override
  public boolean equals(Object other) {
    return other instanceof ElasticConstants e
        && Double.compare(modulus, e.modulus) == 0
        && Double.compare(poisson, e.poisson) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * Double.hashCode(modulus) + Double.hashCode(poisson);
  }
}
