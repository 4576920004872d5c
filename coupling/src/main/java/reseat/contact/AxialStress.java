package reseat.contact;

/**
 * The three principal stresses at a point under the centre of a contact ellipse, over the peak
 * pressure; tension positive.
 *
 * @param alongMajor stress in the direction of the major axis, over p0
 * @param alongMinor stress in the direction of the minor axis, over p0
 * @param normal stress in the direction of the contact normal, over p0
 */
public record AxialStress(double alongMajor, double alongMinor, double normal) {

  /**
   * Returns the greatest shear stress at the point.
   *
   * @return half the difference of the extreme principal stresses, over p0
   */
  public double maxShear() {
    double high = Math.max(alongMajor, Math.max(alongMinor, normal));
    double low = Math.min(alongMajor, Math.min(alongMinor, normal));
    return (high - low) / 2;
  }

  /**
   * Returns the equivalent stress of von Mises.
   *
   * @return equivalent tensile stress, over p0
   */
  public double vonMises() {
    double xy = alongMajor - alongMinor;
    double yz = alongMinor - normal;
    double zx = normal - alongMajor;
    return Math.sqrt((xy * xy + yz * yz + zx * zx) / 2);
  }
}
